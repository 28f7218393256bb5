using LaunchSim.Dynamics;
using LaunchSim.Launch;

namespace LaunchSim.Studies.Comparing;

/// <summary>Takes an observation with the time that it stands for.</summary>
/// <param name="seen">The launch at an instant.</param>
/// <param name="weight">The time that it stands for, s.</param>
internal delegate void WeighedObservation(in Observation seen, double weight);

/// <summary>
/// Integrals over a launch on its dense solution. No piece goes across the end of a step, and no point lies on one, so that
/// jumps are never looked across (Gauss's rule of two points, from memory: exact for cubics).
/// </summary>
internal static class Quadrature
{
    // Pieces no longer than that, s: dampers change direction within a few milliseconds.
    private const double Longest = 2e-3;

    private static readonly double Place = 0.5 / Math.Sqrt(3);

    public static void Over(LaunchSolution solution, double from, double until, WeighedObservation add)
    {
        for (int step = from > 0 ? solution.Find(from) : 0; step < solution.Steps; step++)
        {
            (double start, double end) = solution.Step(step);
            double low = Math.Max(start, from), high = Math.Min(end, until);
            if (start >= until)
            {
                return;
            }

            int pieces = Math.Max(1, (int)Math.Ceiling((high - low) / Longest));
            double length = (high - low) / pieces;
            for (int piece = 0; piece < pieces && length > 0; piece++)
            {
                double middle = low + ((piece + 0.5) * length);
                solution.At(step, middle - (Place * length), out Observation seen);
                add(seen, 0.5 * length);
                solution.At(step, middle + (Place * length), out seen);
                add(seen, 0.5 * length);
            }
        }
    }
}
