using System.Runtime.CompilerServices;
using LaunchSim.Vehicle;

namespace LaunchSim.Dynamics;

/// <summary>
/// A piecewise-linear function whose segment is held by the caller: within a segment it is a straight line that goes on
/// beyond the segment's borders, so that a step never sees a kink.
/// </summary>
public sealed class PiecewiseLinear
{
    private readonly Segment[] _segments;

    private PiecewiseLinear(Segment[] segments) => _segments = segments;

    /// <summary>Number of segments.</summary>
    public int Count => _segments.Length;

    /// <summary>A table that holds its end values beyond its ends.</summary>
    /// <param name="table">The table.</param>
    public static PiecewiseLinear Holding(Table table)
    {
        ArgumentNullException.ThrowIfNull(table);
        ReadOnlySpan<double> x = table.X, y = table.Y;
        if (x.Length == 1)
        {
            return new PiecewiseLinear([new Segment(double.NegativeInfinity, double.PositiveInfinity, 0, y[0], 0)]);
        }

        var segments = new List<Segment> { new(double.NegativeInfinity, x[0], x[0], y[0], 0) };
        for (int i = 1; i < x.Length; i++)
        {
            segments.Add(new Segment(x[i - 1], x[i], x[i - 1], y[i - 1], (y[i] - y[i - 1]) / (x[i] - x[i - 1])));
        }

        segments.Add(new Segment(x[^1], double.PositiveInfinity, x[^1], y[^1], 0));
        return new PiecewiseLinear(segments.ToArray());
    }

    /// <summary>
    /// A damper's two tables as one function of shaft speed, extension positive, with the last slope beyond either end.
    /// </summary>
    /// <param name="tables">The tables.</param>
    public static PiecewiseLinear Damper(DamperTables tables)
    {
        ArgumentNullException.ThrowIfNull(tables);
        var points = new List<(double X, double Y)>();
        for (int i = tables.Compression.Count - 1; i > 0; i--)
        {
            points.Add((-tables.Compression.X[i], -tables.Compression.Y[i]));
        }

        for (int i = 0; i < tables.Extension.Count; i++)
        {
            points.Add((tables.Extension.X[i], tables.Extension.Y[i]));
        }

        if (points.Count == 1)
        {
            return new PiecewiseLinear([new Segment(double.NegativeInfinity, double.PositiveInfinity, 0, 0, 0)]);
        }

        var segments = new Segment[points.Count - 1];
        for (int i = 0; i < segments.Length; i++)
        {
            (double x0, double y0) = points[i];
            (double x1, double y1) = points[i + 1];
            segments[i] = new Segment(
                i == 0 ? double.NegativeInfinity : x0,
                i == segments.Length - 1 ? double.PositiveInfinity : x1,
                x0, y0, (y1 - y0) / (x1 - x0));
        }

        return new PiecewiseLinear(segments);
    }

    /// <summary>The segment that holds at x; at a border the one above it.</summary>
    /// <param name="x">The argument.</param>
    public int Find(double x)
    {
        int i = 0;
        while (i < _segments.Length - 1 && x >= _segments[i].To)
        {
            i++;
        }

        return i;
    }

    /// <summary>The value on a segment's line.</summary>
    /// <param name="segment">The segment.</param>
    /// <param name="x">The argument.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double At(int segment, double x)
    {
        ref readonly Segment s = ref _segments[segment];
        return s.Y + (s.Slope * (x - s.X));
    }

    /// <summary>How far x is from the nearer border of its segment, negative beyond it.</summary>
    /// <param name="segment">The segment.</param>
    /// <param name="x">The argument.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Guard(int segment, double x)
    {
        ref readonly Segment s = ref _segments[segment];
        return Math.Min(x - s.From, s.To - x);
    }

    /// <summary>The segment next to this one on the side on which x left it.</summary>
    /// <param name="segment">The segment.</param>
    /// <param name="x">The argument, at or beyond a border.</param>
    public int Neighbour(int segment, double x)
    {
        ref readonly Segment s = ref _segments[segment];
        return Math.Clamp(x - s.From < s.To - x ? segment - 1 : segment + 1, 0, _segments.Length - 1);
    }

    /// <summary>Where the segment ends.</summary>
    /// <param name="segment">The segment.</param>
    public double End(int segment) => _segments[segment].To;

    private readonly struct Segment(double from, double to, double x, double y, double slope)
    {
        public readonly double From = from, To = to, X = x, Y = y, Slope = slope;
    }
}
