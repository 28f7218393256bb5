using OxyPlot;

namespace LaunchSim.Charts.Drawing;

/// <summary>Cuts lines to an area: what lies a mile outside never reaches a canvas (Liang and Barsky's way, from memory).</summary>
internal static class Clip
{
    /// <summary>The part of a line that lies in an area.</summary>
    /// <param name="area">The area.</param>
    /// <param name="from">One end; receives where the part begins.</param>
    /// <param name="to">The other end; receives where the part ends.</param>
    /// <returns>False when no part of it does, or an end is not finite.</returns>
    public static bool Line(OxyRect area, ref ScreenPoint from, ref ScreenPoint to)
    {
        double low = 0, high = 1, dx = to.X - from.X, dy = to.Y - from.Y;
        if (!double.IsFinite(dx) || !double.IsFinite(dy)
            || !Within(-dx, from.X - area.Left, ref low, ref high) || !Within(dx, area.Right - from.X, ref low, ref high)
            || !Within(-dy, from.Y - area.Top, ref low, ref high) || !Within(dy, area.Bottom - from.Y, ref low, ref high))
        {
            return false;
        }

        ScreenPoint start = from;
        from = new ScreenPoint(start.X + (low * dx), start.Y + (low * dy));
        to = new ScreenPoint(start.X + (high * dx), start.Y + (high * dy));
        return true;
    }

    /// <summary>Whether any part of a line lies in an area.</summary>
    /// <param name="area">The area.</param>
    /// <param name="from">One end.</param>
    /// <param name="to">The other end.</param>
    public static bool Meets(OxyRect area, ScreenPoint from, ScreenPoint to) => Line(area, ref from, ref to);

    /// <summary>Whether two areas have a part in common.</summary>
    /// <param name="one">One area.</param>
    /// <param name="other">The other area.</param>
    public static bool Overlap(OxyRect one, OxyRect other) =>
        one.Left < other.Right && one.Right > other.Left && one.Top < other.Bottom && one.Bottom > other.Top;

    /// <summary>Whether two lines cross, their ends left out: lines that begin at one point do not.</summary>
    /// <param name="from">One end of the one line.</param>
    /// <param name="to">Its other end.</param>
    /// <param name="start">One end of the other line.</param>
    /// <param name="end">Its other end.</param>
    public static bool Cross(ScreenPoint from, ScreenPoint to, ScreenPoint start, ScreenPoint end) =>
        Side(from, to, start) * Side(from, to, end) < 0 && Side(start, end, from) * Side(start, end, to) < 0;

    /// <summary>An area made larger on all sides.</summary>
    /// <param name="area">The area.</param>
    /// <param name="by">By how much.</param>
    public static OxyRect Grown(this OxyRect area, double by) =>
        new(area.Left - by, area.Top - by, Math.Max(0, area.Width + (2 * by)), Math.Max(0, area.Height + (2 * by)));

    private static double Side(ScreenPoint from, ScreenPoint to, ScreenPoint point) =>
        ((to.X - from.X) * (point.Y - from.Y)) - ((to.Y - from.Y) * (point.X - from.X));

    private static bool Within(double towards, double room, ref double low, ref double high)
    {
        if (towards == 0)
        {
            return room >= 0;
        }

        double share = room / towards;
        if (towards < 0)
        {
            low = Math.Max(low, share);
        }
        else
        {
            high = Math.Min(high, share);
        }

        return low <= high;
    }
}
