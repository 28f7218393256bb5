using LaunchSim.Charts.Drawing;
using OxyPlot;

namespace LaunchSim.Charts.Studies;

/// <summary>A setting laid along an edge of a plot: where its values are, and which of them have room for their names.</summary>
/// <param name="axis">The setting.</param>
/// <param name="from">Where it begins on the canvas.</param>
/// <param name="to">Where it ends; less than the beginning for an axis that goes up.</param>
/// <param name="ends">What lies beyond its first and last value.</param>
internal sealed class SettingScale(SweepAxis axis, double from, double to, SettingEnds ends)
{
    // Share of the stretch that is left free at the ends of a scale.
    private const double Free = 0.03;

    // Between two names at the least.
    private const double Between = 6;

    // Of many values every so many-th has its name; a range by a round step gives round names so.
    private static readonly int[] Strides = [1, 2, 5, 10, 20, 25, 50, 100, 200, 500, 1000];

    private readonly (double Low, double High) _extent = Extent(axis, ends);
    private readonly int[] _order = [.. Enumerable.Range(0, axis.Names.Count).OrderBy(axis.At)];
    private readonly int[] _ranks = Ranks(axis);

    /// <summary>The lowest and the highest number on it.</summary>
    public (double Low, double High) Ends => _extent;

    /// <summary>Where a number, or the place of a name, is on the canvas.</summary>
    public double At(double value) => from + ((value - _extent.Low) / (_extent.High - _extent.Low) * (to - from));

    /// <summary>Where a value is on the canvas.</summary>
    public double At(int place) => At(axis.At(place));

    /// <summary>From where to where a value reaches: half way to its neighbours.</summary>
    public (double Low, double High) Reach(int place)
    {
        double at = axis.At(place);
        int rank = _ranks[place];
        double below = rank > 0 ? (at + axis.At(_order[rank - 1])) / 2 : at, above = rank + 1 < _order.Length ? (at + axis.At(_order[rank + 1])) / 2 : at;
        return axis.Numbers is null ? (At(at - 0.5), At(at + 0.5)) : (At(rank > 0 ? below : _extent.Low), At(rank + 1 < _order.Length ? above : _extent.High));
    }

    /// <summary>The values that get their names, so that none covers another: all, or every second, third …</summary>
    /// <param name="room">How much room a name takes along the axis.</param>
    public IEnumerable<int> Named(Func<string, double> room)
    {
        double[] halves = [.. axis.Names.Select(name => room(name) / 2)];
        int every = 1;
        for (int i = 0; i < Strides.Length && !Fits(every); i++)
        {
            every = Strides[i];
        }

        return _order.Where((_, i) => i % every == 0);

        bool Fits(int stride)
        {
            for (int i = stride; i < _order.Length; i += stride)
            {
                (int one, int next) = (_order[i - stride], _order[i]);
                if (Math.Abs(At(next) - At(one)) < halves[one] + halves[next] + Between)
                {
                    return false;
                }
            }

            return true;
        }
    }

    private static int[] Ranks(SweepAxis axis)
    {
        int[] ranks = new int[axis.Names.Count];
        int next = 0;
        foreach (int place in Enumerable.Range(0, axis.Names.Count).OrderBy(axis.At))
        {
            ranks[place] = next++;
        }

        return ranks;
    }

    private static (double Low, double High) Extent(SweepAxis axis, SettingEnds ends)
    {
        if (axis.Numbers is null)
        {
            return (-0.5, axis.Names.Count - 0.5);
        }

        double low = axis.Numbers.Min(), high = axis.Numbers.Max(), wide = high - low;
        if (axis.Present is { } present && present >= low - (0.25 * wide) && present <= high + (0.25 * wide))
        {
            (low, high) = (Math.Min(low, present), Math.Max(high, present));
        }

        if (low == high)
        {
            double some = low == 0 ? 1 : 0.1 * Math.Abs(low);
            return (low - some, high + some);
        }

        double[] sorted = [.. axis.Numbers.Order()];
        return ends switch
        {
            SettingEnds.Tight => (low, high),
            SettingEnds.Cells when sorted.Length > 1 => (Math.Min(low, sorted[0] - ((sorted[1] - sorted[0]) / 2)), Math.Max(high, sorted[^1] + ((sorted[^1] - sorted[^2]) / 2))),
            _ => (low - (Free * (high - low)), high + (Free * (high - low))),
        };
    }
}

/// <summary>What lies beyond the first and the last value of a setting that is laid along an edge.</summary>
internal enum SettingEnds
{
    /// <summary>Nothing.</summary>
    Tight,

    /// <summary>A little room, for dots.</summary>
    Free,

    /// <summary>Half a cell.</summary>
    Cells,
}
