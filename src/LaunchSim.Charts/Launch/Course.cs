using LaunchSim.Dynamics;
using LaunchSim.Launch;
using LaunchSim.Reports.Numbers;
using OxyPlot;

namespace LaunchSim.Charts.Launch;

/// <summary>
/// A launch laid out for drawing: observed at the ends of every step and in between at least every millisecond. Where two
/// steps meet there are both values at one instant, so that a jump is drawn as one.
/// </summary>
internal sealed class Course
{
    private const double Finest = 1e-3;

    private readonly Observation[] _seen;

    /// <summary>Observes a launch.</summary>
    /// <param name="solution">The launch; not read by another thread meanwhile.</param>
    public Course(LaunchSolution solution)
    {
        int count = 0, at = 0;
        for (int step = 0; step < solution.Steps; step++)
        {
            count += Parts(solution.Step(step)) + 1;
        }

        _seen = new Observation[count];
        for (int step = 0; step < solution.Steps; step++)
        {
            (double start, double end) = solution.Step(step);
            int parts = Parts((start, end));
            for (int part = 0; part <= parts; part++)
            {
                solution.At(step, part == parts ? end : start + ((end - start) * part / parts), out _seen[at++]);
            }
        }
    }

    /// <summary>All observations in order of time.</summary>
    public ReadOnlySpan<Observation> Seen => _seen;

    /// <summary>The largest of all values of a quantity.</summary>
    /// <param name="read">Reads it; what is not finite is passed over.</param>
    /// <returns>Not a number when there is none.</returns>
    public double Largest(ObservationReader read)
    {
        double largest = double.NaN;
        foreach (ref readonly Observation one in Seen)
        {
            double value = read(one);
            largest = double.IsFinite(value) && !(largest >= value) ? value : largest;
        }

        return largest;
    }

    private static int Parts((double Start, double End) step) => Math.Max(1, (int)Math.Ceiling((step.End - step.Start) / Finest));

    /// <summary>A quantity against time.</summary>
    /// <param name="read">Reads it.</param>
    /// <param name="scale">Its unit.</param>
    /// <returns>Time, s, and value in the unit; not a number where it has none.</returns>
    public DataPoint[] Against(ObservationReader read, Scale scale)
    {
        var points = new DataPoint[_seen.Length];
        for (int i = 0; i < points.Length; i++)
        {
            double value = read(_seen[i]) / scale.Factor;
            points[i] = new DataPoint(_seen[i].Time, double.IsFinite(value) ? value : double.NaN);
        }

        return points;
    }
}
