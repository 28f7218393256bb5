using LaunchSim.Launch;
using LaunchSim.Passes.Measured;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Passes.Aligning;

/// <summary>A measured quantity as it was predicted, at any instant: what data are laid over.</summary>
/// <param name="at">The value at a time since release, s; not a number behind the end.</param>
/// <param name="slope">Its change per second there.</param>
/// <param name="duration">Where the prediction ends, s.</param>
internal sealed class PredictedCourse(Func<double, double> at, Func<double, double> slope, double duration)
{
    // Finer than any logger, and fine enough that straight lines between the points are within a hundredth of any sensor's noise.
    private const double Step = 5e-4;

    /// <summary>Where the prediction ends, s.</summary>
    public double Duration => duration;

    /// <summary>The value; before the release that of the standing car, behind the end not a number.</summary>
    /// <param name="time">Time since release, s.</param>
    public double At(double time) => at(time);

    /// <summary>The change per second.</summary>
    /// <param name="time">Time since release, s.</param>
    public double Slope(double time) => slope(time);

    /// <summary>Lowest and highest value up to an instant.</summary>
    /// <param name="until">The instant, s.</param>
    public (double Low, double High) Range(double until)
    {
        double low = double.PositiveInfinity, high = double.NegativeInfinity;
        for (double time = 0; time <= Math.Min(until, duration); time += 2e-3)
        {
            double value = At(time);
            if (double.IsFinite(value))
            {
                low = Math.Min(low, value);
                high = Math.Max(high, value);
            }
        }

        return (low, high);
    }

    /// <summary>Reads quantities off a launch.</summary>
    /// <param name="solution">The launch; not read by another thread meanwhile.</param>
    /// <param name="quantities">Which.</param>
    /// <returns>A course for each; one that is never a number where the car has no such quantity.</returns>
    public static IReadOnlyList<PredictedCourse> Of(LaunchSolution solution, IReadOnlyList<MeasuredQuantity> quantities)
    {
        int rows = solution.Steps == 0 ? 0 : (int)Math.Floor(solution.Duration / Step) + 1;
        double[][] tables = [.. quantities.Select(_ => new double[rows])];
        for (int row = 0; row < rows; row++)
        {
            solution.At(Math.Min(row * Step, solution.Duration), out Dynamics.Observation seen);
            for (int i = 0; i < tables.Length; i++)
            {
                tables[i][row] = quantities[i].Predicted(seen, solution.Car);
            }
        }

        return [.. quantities.Select((quantity, i) => Of(tables[i], quantity.Kind == QuantityKind.Acceleration))];
    }

    // At the release an acceleration leaps up from the standing car's nothing.
    private static PredictedCourse Of(double[] table, bool leaps)
    {
        double duration = (table.Length - 1) * Step;
        return new PredictedCourse(At, time => time < 0 || time > duration ? 0 : (At(Math.Min(time + Step, duration)) - At(Math.Max(time - Step, 0))) / (Math.Min(time + Step, duration) - Math.Max(time - Step, 0)), duration);

        double At(double time)
        {
            if (table.Length == 0 || time > duration + 1e-9)
            {
                return double.NaN;
            }

            if (time < 0)
            {
                return leaps ? 0 : table[0];
            }

            int row = Math.Min((int)(time / Step), table.Length - 1);
            double share = (time / Step) - row;
            return row + 1 < table.Length ? table[row] + (share * (table[row + 1] - table[row])) : table[row];
        }
    }
}
