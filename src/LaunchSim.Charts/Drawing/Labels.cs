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

    /// <summary>Whether the text is best right on its point, as the name of an area is.</summary>
    public bool On { get; init; }

    /// <summary>Whether a line leads back to its point even from nearby.</summary>
    public bool HasLeader { get; init; }

    /// <summary>How much farther than its gap an offered label may go to find a place.</summary>
    public double Farthest { get; init; } = 150;
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
    private const double Covering = 1e6, Crossing = 60, ForDistance = 1, ForSide = 4, ForAnchor = 2;
    private const double LeaderFrom = 16;

    // A label must not stand on another one's line, nor its own line run through another label or across curves.
    private const double OnLeader = 300, LeaderThroughLabel = 300, LeaderOverCurve = 25;

    // Curves are kept by columns of this width, in pieces of no less than this length: labels ask often.
    private const double ColumnWidth = 24, Piece = 3;

    private readonly List<OxyRect> _taken = [];
    private readonly List<(ScreenPoint From, ScreenPoint To)>?[] _curves = new List<(ScreenPoint, ScreenPoint)>?[Math.Max(1, (int)Math.Ceiling(bounds.Width / ColumnWidth))];
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
        ScreenPoint? from = null;
        for (int i = 0; i < points.Count; i++)
        {
            ScreenPoint to = points[i];
            if (!IsDrawn(to))
            {
                from = null;
            }
            else if (from is not { } start)
            {
                from = to;
            }
            else if (Math.Abs(to.X - start.X) + Math.Abs(to.Y - start.Y) >= Piece || i + 1 == points.Count || !IsDrawn(points[i + 1]))
            {
                Add(start, to);
                from = to;
            }
        }
    }

    /// <summary>Puts a label beside a point and draws it.</summary>
    /// <param name="text">What it says; may have several lines.</param>
    /// <param name="at">Its point.</param>
    /// <param name="style">How it is written.</param>
    public PlacedLabel Place(string text, ScreenPoint at, LabelStyle? style = null) => Place(text, [at], style);

    /// <summary>Puts a label beside one of several points and draws it.</summary>
    /// <param name="text">What it says; may have several lines.</param>
    /// <param name="anchors">The points to choose from, best first; at least one.</param>
    /// <param name="style">How it is written.</param>
    public PlacedLabel Place(string text, IReadOnlyList<ScreenPoint> anchors, LabelStyle? style = null)
    {
        style ??= new LabelStyle();
        OxySize size = SizeOf(text, style);
        Candidate best = Beside(size, anchors, style, double.PositiveInfinity);
        if (best.Cost >= Covering)
        {
            Anywhere(anchors[0], size, ref best);
        }

        return Put(text, style, best);
    }

    /// <summary>Puts a label beside a point only where it covers nothing; otherwise it is among the dropped.</summary>
    /// <param name="text">What it says; may have several lines.</param>
    /// <param name="at">Its point.</param>
    /// <param name="style">How it is written.</param>
    /// <returns>Whether it was put.</returns>
    public bool Offer(string text, ScreenPoint at, LabelStyle? style = null)
    {
        style ??= new LabelStyle();
        Candidate best = Beside(SizeOf(text, style), [at], style, style.Farthest);
        if (best.Cost >= Covering)
        {
            _dropped.Add(text);
            return false;
        }

        _ = Put(text, style, best);
        return true;
    }

    /// <summary>Puts a label right beside or on a point, if it covers nothing there and crosses nothing.</summary>
    /// <param name="text">What it says; may have several lines.</param>
    /// <param name="at">The point.</param>
    /// <param name="direction">Where beside it, in degrees counter-clockwise from the right; on it when null.</param>
    /// <param name="style">How it is written.</param>
    /// <returns>Whether it was put.</returns>
    public bool TryPut(string text, ScreenPoint at, double? direction, LabelStyle style)
    {
        OxySize size = SizeOf(text, style);
        var candidate = new Candidate(direction is { } degrees ? Beside(at, size, degrees, style.Gap) : Around(at, size), at, 0, 0);
        bool isFree = Cost(candidate, Crossing) == 0;
        if (isFree)
        {
            _ = Put(text, style, candidate);
        }

        return isFree;
    }

    private OxySize SizeOf(string text, LabelStyle style) => canvas.MeasureText(text, Theme.FontFamily, style.Size, style.Weight);

    private Candidate Beside(OxySize size, IReadOnlyList<ScreenPoint> anchors, LabelStyle style, double farthest)
    {
        double[] directions = style.Directions.Count > 0 ? [.. style.Directions, .. AllAround.Except(style.Directions)] : AllAround;
        var best = new Candidate(default, anchors[0], 0, double.PositiveInfinity);
        for (int d = 0; d < Distances.Length && Distances[d] <= farthest && best.Cost > ForDistance * Distances[d]; d++)
        {
            for (int a = 0; a < anchors.Count; a++)
            {
                double already = (ForDistance * Distances[d]) + (ForAnchor * a);
                if (style.On && d == 0)
                {
                    Try(new(Around(anchors[a], size), anchors[a], 0, already), ref best);
                }

                for (int i = 0; i < directions.Length; i++)
                {
                    Try(new(Beside(anchors[a], size, directions[i], style.Gap + Distances[d]), anchors[a], Distances[d], already + (ForSide * i)), ref best);
                }
            }
        }

        return best;
    }

    private PlacedLabel Put(string text, LabelStyle style, Candidate best)
    {
        Draw(text, best.At, style, best.Area, best.Far);
        _taken.Add(best.Area.Grown(2));
        var placed = new PlacedLabel(text, best.Area, best.Cost < Covering);
        _placed.Add(placed);
        return placed;
    }

    private void Try(Candidate candidate, ref Candidate best)
    {
        if (candidate.Cost < best.Cost && candidate.Cost + Cost(candidate, best.Cost - candidate.Cost) is double cost && cost < best.Cost)
        {
            best = candidate with { Cost = cost };
        }
    }

    // Nothing was free near its points: the nearest free place in the whole area, so long as there is one.
    private void Anywhere(ScreenPoint at, OxySize size, ref Candidate best)
    {
        for (double top = bounds.Top; top + size.Height <= bounds.Bottom; top += 6)
        {
            for (double left = bounds.Left; left + size.Width <= bounds.Right; left += 12)
            {
                var area = new OxyRect(left, top, size.Width, size.Height);
                double far = Math.Sqrt(Squared(left + (size.Width / 2) - at.X) + Squared(top + (size.Height / 2) - at.Y));
                Try(new(area, at, far, ForDistance * far), ref best);
            }
        }
    }

    private static double Squared(double x) => x * x;

    private static OxyRect Around(ScreenPoint at, OxySize size) => new(at.X - (size.Width / 2), at.Y - (size.Height / 2), size.Width, size.Height);

    private void Add(ScreenPoint from, ScreenPoint to)
    {
        int first = Column(Math.Min(from.X, to.X)), last = Column(Math.Max(from.X, to.X));
        for (int column = first; column <= last; column++)
        {
            (_curves[column] ??= []).Add((from, to));
        }
    }

    private int Column(double x) => (int)Math.Clamp((x - bounds.Left) / ColumnWidth, 0, _curves.Length - 1);

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
        if (far >= LeaderFrom || style.HasLeader)
        {
            ScreenPoint end = Nearest(at, area);
            _leaders.Add((at, end));
            canvas.DrawLine([at, end], Theme.Line, 1, EdgeRenderingMode.PreferGeometricAccuracy);
        }

        canvas.DrawRectangle(area.Grown(1), OxyColor.FromAColor(215, Theme.Paper), OxyColors.Undefined, 0, EdgeRenderingMode.PreferGeometricAccuracy);
        canvas.DrawText(new ScreenPoint(area.Left, area.Top), text, style.Color, Theme.FontFamily, style.Size, style.Weight);
    }

    // Never more than it takes to know that the place is not the best one.
    private double Cost(Candidate candidate, double enough)
    {
        OxyRect area = candidate.Area;
        double cost = area.Left < bounds.Left || area.Right > bounds.Right || area.Top < bounds.Top || area.Bottom > bounds.Bottom ? Covering : 0;
        foreach (OxyRect taken in _taken)
        {
            cost += Clip.Overlap(area, taken) ? Covering : 0;
        }

        OxyRect grown = area.Grown(1);
        foreach ((ScreenPoint from, ScreenPoint to) in _leaders)
        {
            cost += Clip.Meets(grown, from, to) ? OnLeader : 0;
        }

        int first = Column(grown.Left), last = Column(grown.Right);
        for (int column = first; column <= last; column++)
        {
            foreach ((ScreenPoint from, ScreenPoint to) in _curves[column] ?? [])
            {
                if (cost >= enough)
                {
                    return cost;
                }

                cost += IsFirst(column, first, from, to) && Clip.Meets(grown, from, to) ? Crossing : 0;
            }
        }

        return candidate.Far < LeaderFrom || cost >= enough ? cost : cost + LeaderCost(candidate.At, Nearest(candidate.At, area));
    }

    private double LeaderCost(ScreenPoint at, ScreenPoint end)
    {
        double cost = 0;
        foreach (PlacedLabel label in _placed)
        {
            cost += Clip.Meets(label.Area, at, end) ? LeaderThroughLabel : 0;
        }

        int first = Column(Math.Min(at.X, end.X)), last = Column(Math.Max(at.X, end.X));
        for (int column = first; column <= last; column++)
        {
            foreach ((ScreenPoint from, ScreenPoint to) in _curves[column] ?? [])
            {
                cost += IsFirst(column, first, from, to) && Clip.Cross(at, end, from, to) ? LeaderOverCurve : 0;
            }
        }

        return cost;
    }

    // A long line stands in many columns and counts once.
    private bool IsFirst(int column, int first, ScreenPoint from, ScreenPoint to) =>
        column == Math.Max(first, Column(Math.Min(from.X, to.X)));

    private static ScreenPoint Nearest(ScreenPoint at, OxyRect area) =>
        new(Math.Clamp(at.X, area.Left, area.Right), Math.Clamp(at.Y, area.Top, area.Bottom));

    // A place for a label, the point that it belongs to, how far away that is, and what it costs so far.
    private readonly record struct Candidate(OxyRect Area, ScreenPoint At, double Far, double Cost);
}
