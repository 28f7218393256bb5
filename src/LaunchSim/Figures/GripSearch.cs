using System.Buffers;

namespace LaunchSim.Figures;

/// <summary>
/// The grip margin at the nodes as far as its lowest value needs it. The slip curve rises to its peak and falls beyond it,
/// so the margin can be lowest only where the slip ratio comes nearest to the peak or passes it; the curve is evaluated
/// there alone.
/// </summary>
internal static class GripSearch
{
    /// <summary>Values that are right at every node that the lowest, or one hidden between nodes, may stand at; infinite elsewhere.</summary>
    /// <param name="launch">The launch.</param>
    /// <param name="values">Memory for the values, a number for each node.</param>
    public static ReadOnlySpan<double> NearLowest(LaunchReading launch, Span<double> values)
    {
        ReadOnlySpan<double> slips = launch.Column(Signal.RearSlip), loads = launch.Column(Signal.RearLoad);
        ReadOnlySpan<int> segments = launch.Segments;
        double peak = launch.Solution.Car.Model.RearTire.PeakSlip, least = SignalReader.LeastRearLoad(launch.Solution.Car);
        double nearest = double.NegativeInfinity;
        for (int node = 0; node < values.Length; node++)
        {
            // How near the peak, as a negative number.
            values[node] = loads[node] > least ? -Math.Abs(slips[node] - peak) : double.NegativeInfinity;
            nearest = Math.Max(nearest, values[node]);
        }

        bool[] memory = ArrayPool<bool>.Shared.Rent(values.Length);
        Span<bool> matters = memory.AsSpan(0, values.Length);
        matters.Clear();
        for (int node = 0; node < values.Length; node++)
        {
            bool toNext = segments[node] >= 0, passes = toNext && (slips[node] < peak) != (slips[node + 1] < peak);
            if (passes || !(ExtremumSearch.Possible(segments, values, node) < nearest))
            {
                matters[node] = true;
                if (toNext)
                {
                    matters[node + 1] = true;
                }

                if (node > 0 && segments[node - 1] >= 0)
                {
                    matters[node - 1] = true;
                }

                if (passes && segments[node + 1] >= 0)
                {
                    matters[node + 2] = true;
                }
            }
        }

        for (int node = 0; node < values.Length; node++)
        {
            values[node] = matters[node] ? launch.At(Signal.GripMargin, launch.ReadBy(node), launch.Times[node]) : double.PositiveInfinity;
        }

        ArrayPool<bool>.Shared.Return(memory);
        return values;
    }
}
