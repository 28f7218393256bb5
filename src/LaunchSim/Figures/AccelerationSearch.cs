using System.Buffers;
using LaunchSim.Dynamics;
using LaunchSim.Launch;

namespace LaunchSim.Figures;

/// <summary>
/// The acceleration at the nodes as far as its largest value needs it. The slope of the speed's dense course is the
/// acceleration but for the error of integration; only where that comes near the largest are the equations of motion
/// asked, and the difference found there says how near is near.
/// </summary>
internal static class AccelerationSearch
{
    // What counts as near at first, as a share of the largest; and by how many times the largest difference it is widened.
    private const double LeastSlack = 1e-4, Times = 8;

    /// <summary>Values that are right at every node that the largest, or one hidden between nodes, may stand at.</summary>
    /// <param name="launch">The launch.</param>
    /// <param name="values">Memory for the values, a number for each node.</param>
    public static ReadOnlySpan<double> NearLargest(LaunchReading launch, Span<double> values)
    {
        ReadSlopes(launch, values);
        bool[] memory = ArrayPool<bool>.Shared.Rent(values.Length);
        Span<bool> right = memory.AsSpan(0, values.Length);
        right.Clear();
        double widest = 0, slack;
        do
        {
            double largest = double.NegativeInfinity;
            foreach (double value in values)
            {
                largest = Math.Max(largest, value);
            }

            slack = Math.Max(LeastSlack * Math.Abs(largest), Times * widest);
            for (int node = 0; node < values.Length; node++)
            {
                if (!(ExtremumSearch.Possible(launch.Segments, values, node) < largest - slack))
                {
                    widest = Math.Max(widest, Correct(launch, values, right, node));
                }
            }
        }
        while (Times * widest > slack);

        ArrayPool<bool>.Shared.Return(memory);
        return values;
    }

    private static void ReadSlopes(LaunchReading launch, Span<double> values)
    {
        LaunchSolution solution = launch.Solution;
        ReadOnlySpan<double> times = launch.Times;
        for (int node = 0; node < values.Length;)
        {
            int step = launch.ReadBy(node), count = 1;
            while (node + count < values.Length && launch.ReadBy(node + count) == step)
            {
                count++;
            }

            solution.Slopes(step, StateLayout.XRate, times.Slice(node, count), values.Slice(node, count));
            node += count;
        }
    }

    /// <summary>Asks the equations of motion at a node and its neighbours, and says by how much the slopes were wrong.</summary>
    private static double Correct(LaunchReading launch, Span<double> values, Span<bool> right, int node)
    {
        double widest = 0;
        int last = launch.Segments[node] >= 0 ? node + 1 : node;
        for (int i = node > 0 && launch.Segments[node - 1] >= 0 ? node - 1 : node; i <= last; i++)
        {
            if (!right[i])
            {
                double value = launch.Solution.AccelerationAt(launch.ReadBy(i), launch.Times[i]);
                widest = Math.Max(widest, Math.Abs(value - values[i]));
                values[i] = value;
                right[i] = true;
            }
        }

        return widest;
    }
}
