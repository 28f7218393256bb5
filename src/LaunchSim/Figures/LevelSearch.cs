using LaunchSim.Integration;

namespace LaunchSim.Figures;

/// <summary>
/// Where a signal crosses a level: found between two nodes, located on the dense solution. A crossing there and back
/// between two neighbouring nodes, within a millisecond, is not seen.
/// </summary>
internal static class LevelSearch
{
    // How closely a crossing is located, s.
    private const double Tolerance = 1e-12;

    /// <summary>The first instant at or above a level; not a number when there is none.</summary>
    public static double FirstAt(LaunchReading launch, Signal signal, double level)
    {
        ReadOnlySpan<double> values = launch.Column(signal);
        for (int i = 0; i < values.Length; i++)
        {
            if (values[i] >= level)
            {
                return i == 0 ? launch.Times[0] : Crossing(launch, signal, level, i - 1);
            }
        }

        return double.NaN;
    }

    /// <summary>The next spell strictly above a level, from a node on.</summary>
    public static bool NextAbove(LaunchReading launch, Signal signal, double level, ref int node, out (double From, double To) spell)
    {
        ReadOnlySpan<double> values = launch.Column(signal);
        int i = node;
        while (i < values.Length && !(values[i] > level))
        {
            i++;
        }

        if (i >= values.Length)
        {
            node = i;
            spell = (double.NaN, double.NaN);
            return false;
        }

        double from = i == 0 ? launch.Times[0] : Crossing(launch, signal, level, i - 1);
        while (i < values.Length && values[i] > level)
        {
            i++;
        }

        node = i;
        spell = (from, i >= values.Length ? double.NaN : Crossing(launch, signal, level, i - 1));
        return true;
    }

    /// <summary>Where between a node and the next the signal passes the level; at a change of modes there.</summary>
    private static double Crossing(LaunchReading launch, Signal signal, double level, int node)
    {
        ReadOnlySpan<double> times = launch.Times, values = launch.Column(signal);
        int step = launch.Segments[node];
        if (step < 0)
        {
            return times[node + 1];
        }

        var above = new Above(launch, signal, step, level);
        int evaluations = 0;
        return EventLocator.FarSide(
            ref above, times[node], values[node] - level, times[node + 1], values[node + 1] - level, Tolerance, ref evaluations);
    }

    private readonly struct Above(LaunchReading launch, Signal signal, int step, double level) : IScalarFunction
    {
        public double At(double x) => launch.At(signal, step, x) - level;
    }
}
