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
    private const double Covering = 1e6, Crossing = 60, CrossingLeader = 300, ForDistance = 1, ForSide = 4;
    private const double LeaderFrom = 16;

    private readonly List<OxyRect> _taken = [];
    private readonly List<(ScreenPoint From, ScreenPoint To)> _curves = [];
    private readonly List<(ScreenPoint From, ScreenPoint To)> _leaders = [];
    private readonly List<PlacedLabel> _placed = [];
    private readonly List<string> _dropped = [];

    /// <summary>The labels so far.</summary>
    public IReadOnlyList<PlacedLabel> Placed => _placed;

    /// <summary>What was offered and found no free place.</summary>
    public IReadOnlyList<string> Dropped => _dropped;

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

    /// <summary>Puts a label beside a point and draws it, in the least bad place when no free one is left.</summary>
    /// <param name="text">What it says; may have several lines.</param>
    /// <param name="at">Its point.</param>
    /// <param name="style">How it is written.</param>
    public PlacedLabel Place(string text, ScreenPoint at, LabelStyle? style = null)
    {
        style ??= new LabelStyle();
        return Put(text, at, style, Best(text, at, style));
    }

    /// <summary>Puts a label beside a point only where it covers nothing; otherwise it is among the dropped.</summary>
    /// <param name="text">What it says; may have several lines.</param>
    /// <param name="at">Its point.</param>
    /// <param name="style">How it is written.</param>
    /// <returns>Whether it was put.</returns>
    public bool Offer(string text, ScreenPoint at, LabelStyle? style = null)
    {
        style ??= new LabelStyle();
        (OxyRect Area, double Distance, double Cost) best = Best(text, at, style);
        if (best.Cost >= Covering)
        {
            _dropped.Add(text);
            return false;
        }

        _ = Put(text, at, style, best);
        return true;
    }

    private PlacedLabel Put(string text, ScreenPoint at, LabelStyle style, (OxyRect Area, double Distance, double Cost) best)
    {
        Draw(text, at, style, best.Area, best.Distance);
        _taken.Add(best.Area.Grown(2));
        var placed = new PlacedLabel(text, best.Area, best.Cost < Covering);
        _placed.Add(placed);
        return placed;
    }

    private (OxyRect Area, double Distance, double Cost) Best(string text, ScreenPoint at, LabelStyle style)
    {
        OxySize size = canvas.MeasureText(text, Theme.FontFamily, style.Size, style.Weight);
        double[] directions = style.Directions.Count > 0 ? [.. style.Directions, .. AllAround.Except(style.Directions)] : AllAround;
        (OxyRect Area, double Distance, double Cost) best = (default, 0, double.PositiveInfinity);
        for (int d = 0; d < Distances.Length && best.Cost > ForDistance * Distances[d]; d++)
        {
            for (int i = 0; i < directions.Length; i++)
            {
                OxyRect area = Beside(at, size, directions[i], style.Gap + Distances[d]);
                double cost = (ForDistance * Distances[d]) + (ForSide * i) + Cost(area);
                if (cost < best.Cost && Distances[d] >= LeaderFrom)
                {
                    cost += LeaderCost(at, area);
                }

                if (cost < best.Cost)
                {
                    best = (area, Distances[d], cost);
                }
            }
        }

        return best;
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
            ScreenPoint end = Nearest(at, area);
            _leaders.Add((at, end));
            canvas.DrawLine([at, end], Theme.Line, 1, EdgeRenderingMode.PreferGeometricAccuracy);
        }

        canvas.DrawRectangle(area.Grown(1), OxyColor.FromAColor(215, Theme.Paper), OxyColors.Undefined, 0, EdgeRenderingMode.PreferGeometricAccuracy);
        canvas.DrawText(new ScreenPoint(area.Left, area.Top), text, style.Color, Theme.FontFamily, style.Size, style.Weight);
    }

    private double Cost(OxyRect area)
    {
        double cost = area.Left < bounds.Left || area.Right > bounds.Right || area.Top < bounds.Top || area.Bottom > bounds.Bottom ? Covering : 0;
        foreach (OxyRect taken in _taken)
        {
            cost += Clip.Overlap(area, taken) ? Covering : 0;
        }

        OxyRect grown = area.Grown(1);
        foreach ((ScreenPoint from, ScreenPoint to) in _curves)
        {
            cost += Clip.Meets(grown, from, to) ? Crossing : 0;
        }

        foreach ((ScreenPoint from, ScreenPoint to) in _leaders)
        {
            cost += Clip.Meets(grown, from, to) ? CrossingLeader : 0;
        }

        return cost;
    }

    // A line back to the point that runs through another label is taken for that label's.
    private double LeaderCost(ScreenPoint at, OxyRect area)
    {
        ScreenPoint end = Nearest(at, area);
        double cost = 0;
        foreach (PlacedLabel label in _placed)
        {
            cost += Clip.Meets(label.Area, at, end) ? CrossingLeader : 0;
        }

        return cost;
    }

    private static ScreenPoint Nearest(ScreenPoint at, OxyRect area) =>
        new(Math.Clamp(at.X, area.Left, area.Right), Math.Clamp(at.Y, area.Top, area.Bottom));
}
