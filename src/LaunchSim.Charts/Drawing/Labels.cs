using OxyPlot;

namespace LaunchSim.Charts.Drawing;

/// <summary>How a label is written.</summary>
internal sealed record LabelStyle
{
    /// <summary>Its colour.</summary>
    public OxyColor Color { get; init; } = Theme.Ink;

    /// <summary>Height of the text.</summary>
    public double Size { get; init; } = Theme.Small;

    /// <summary>Weight of the text.</summary>
    public double Weight { get; init; } = Theme.Normal;

    /// <summary>Directions to try, best first, in degrees counter-clockwise from the right; all around when empty.</summary>
    public IReadOnlyList<double> Directions { get; init; } = [];

    /// <summary>How far the text keeps from its point at least.</summary>
    public double Gap { get; init; } = 6;
}

/// <summary>A label where it was put.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Area">Where it stands.</param>
/// <param name="IsClear">Whether nothing else is in its place.</param>
internal readonly record struct PlacedLabel(string Text, OxyRect Area, bool IsClear);

/// <summary>
/// Puts labels beside their points so that they cover neither each other nor what must stay readable, and keep off curves
/// where they can. A label that has to go far gets a thin line back to its point.
/// </summary>
/// <param name="canvas">Where they are drawn.</param>
/// <param name="bounds">What they must not leave.</param>
internal sealed class Labels(IRenderContext canvas, OxyRect bounds)
{
    private static readonly double[] AllAround = [0, 45, 315, 90, 270, 135, 225, 180, 22, 338, 158, 202, 67, 113, 247, 293];
    private static readonly double[] Distances = [0, 6, 14, 24, 38, 56, 80, 110, 150];

    // What a label pays: covering text is out of the question, crossing a curve is bad, distance and a worse side cost a little.
    private const double Covering = 1e6, Crossing = 60, ForDistance = 1, ForSide = 4;
    private const double LeaderFrom = 16;

    private readonly List<OxyRect> _taken = [];
    private readonly List<(ScreenPoint From, ScreenPoint To)> _curves = [];
    private readonly List<PlacedLabel> _placed = [];

    /// <summary>The labels so far.</summary>
    public IReadOnlyList<PlacedLabel> Placed => _placed;

    /// <summary>Nothing may be put here.</summary>
    /// <param name="area">Where.</param>
    public void Keep(OxyRect area) => _taken.Add(area);

    /// <summary>Labels avoid this line where they can.</summary>
    /// <param name="points">Its points.</param>
    public void Avoid(IReadOnlyList<ScreenPoint> points)
    {
        for (int i = 1; i < points.Count; i++)
        {
            if (IsDrawn(points[i - 1]) && IsDrawn(points[i]))
            {
                _curves.Add((points[i - 1], points[i]));
            }
        }
    }

    /// <summary>Puts a label beside a point and draws it.</summary>
    /// <param name="text">What it says; may have several lines.</param>
    /// <param name="at">Its point.</param>
    /// <param name="style">How it is written.</param>
    public PlacedLabel Place(string text, ScreenPoint at, LabelStyle? style = null)
    {
        style ??= new LabelStyle();
        OxySize size = canvas.MeasureText(text, Theme.FontFamily, style.Size, style.Weight);
        double[] directions = style.Directions.Count > 0 ? [.. style.Directions, .. AllAround.Except(style.Directions)] : AllAround;
        OxyRect best = default;
        double least = double.PositiveInfinity, far = 0;
        for (int d = 0; d < Distances.Length && least > ForDistance * Distances[d]; d++)
        {
            for (int i = 0; i < directions.Length; i++)
            {
                OxyRect area = Beside(at, size, directions[i], style.Gap + Distances[d]);
                double cost = (ForDistance * Distances[d]) + (ForSide * i) + Cost(area);
                if (cost < least)
                {
                    (least, best, far) = (cost, area, Distances[d]);
                }
            }
        }

        Draw(text, at, style, best, far);
        _taken.Add(Grown(best, 2));
        var placed = new PlacedLabel(text, best, least < Covering);
        _placed.Add(placed);
        return placed;
    }

    private static bool IsDrawn(ScreenPoint point) => double.IsFinite(point.X) && double.IsFinite(point.Y);

    private static OxyRect Beside(ScreenPoint at, OxySize size, double degrees, double distance)
    {
        double angle = degrees * Math.PI / 180, x = Math.Cos(angle), y = -Math.Sin(angle);

        // The text's edge, not its middle, is to be that far away.
        return new OxyRect(
            at.X + (x * distance) + ((x - 1) * size.Width / 2), at.Y + (y * distance) + ((y - 1) * size.Height / 2), size.Width, size.Height);
    }

    private void Draw(string text, ScreenPoint at, LabelStyle style, OxyRect area, double far)
    {
        if (far >= LeaderFrom)
        {
            var end = new ScreenPoint(Math.Clamp(at.X, area.Left, area.Right), Math.Clamp(at.Y, area.Top, area.Bottom));
            canvas.DrawLine([at, end], Theme.Line, 1, EdgeRenderingMode.PreferGeometricAccuracy);
        }

        canvas.DrawRectangle(Grown(area, 1), OxyColor.FromAColor(215, Theme.Paper), OxyColors.Undefined, 0, EdgeRenderingMode.PreferGeometricAccuracy);
        canvas.DrawText(new ScreenPoint(area.Left, area.Top), text, style.Color, Theme.FontFamily, style.Size, style.Weight);
    }

    private double Cost(OxyRect area)
    {
        double cost = area.Left < bounds.Left || area.Right > bounds.Right || area.Top < bounds.Top || area.Bottom > bounds.Bottom ? Covering : 0;
        foreach (OxyRect taken in _taken)
        {
            if (area.Left < taken.Right && area.Right > taken.Left && area.Top < taken.Bottom && area.Bottom > taken.Top)
            {
                cost += Covering;
            }
        }

        OxyRect grown = Grown(area, 1);
        foreach ((ScreenPoint from, ScreenPoint to) in _curves)
        {
            if (Meets(grown, from, to))
            {
                cost += Crossing;
            }
        }

        return cost;
    }

    private static OxyRect Grown(OxyRect area, double by) => new(area.Left - by, area.Top - by, area.Width + (2 * by), area.Height + (2 * by));

    // Clips the line to the area, side by side.
    private static bool Meets(OxyRect area, ScreenPoint from, ScreenPoint to)
    {
        double low = 0, high = 1, dx = to.X - from.X, dy = to.Y - from.Y;
        return Within(-dx, from.X - area.Left, ref low, ref high) && Within(dx, area.Right - from.X, ref low, ref high)
            && Within(-dy, from.Y - area.Top, ref low, ref high) && Within(dy, area.Bottom - from.Y, ref low, ref high);
    }

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
