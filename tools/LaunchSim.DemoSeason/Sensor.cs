using LaunchSim.Launch;
using LaunchSim.Passes.Measured;

namespace LaunchSim.DemoSeason;

/// <summary>A sensor and what it does to the truth.</summary>
/// <param name="Quantity">What it measures.</param>
/// <param name="Noise">Standard deviation of each value, SI.</param>
/// <param name="Offset">What it shows while the car stands, SI.</param>
/// <param name="Delay">How late it is, s.</param>
internal sealed record Sensor(MeasuredQuantity Quantity, double Noise, double Offset, double Delay = 0)
{
    /// <summary>One value.</summary>
    /// <param name="launch">The true launch.</param>
    /// <param name="time">Seconds since release.</param>
    /// <param name="dice">Chance.</param>
    public double At(LaunchSolution launch, double time, Dice dice)
    {
        double then = time - Delay, value = 0;
        if (then >= 0 || !Quantity.StandsAtZero)
        {
            launch.At(Math.Clamp(then, 0, launch.Duration), out Dynamics.Observation seen);
            value = Quantity.Predicted(seen, launch.Car);
        }

        return value + Offset + (Noise * dice.Normal());
    }

    /// <summary>A channel as the fit takes it, its clock off by some time.</summary>
    /// <param name="launch">The true launch.</param>
    /// <param name="rate">Values a second.</param>
    /// <param name="end">Until when, s.</param>
    /// <param name="late">By how much its clock is off: what it calls 0 is so long after the release, s.</param>
    /// <param name="dice">Chance.</param>
    public MeasuredSeries Series(LaunchSolution launch, double rate, double end, double late, Dice dice)
    {
        int first = (int)Math.Ceiling(-0.1 * rate), last = (int)Math.Floor(end * rate);
        double[] times = [.. Enumerable.Range(first, last - first + 1).Select(i => i / rate)];
        return new MeasuredSeries(Quantity, times, [.. times.Select(time => At(launch, time + late, dice))], Noise, Quantity.Key);
    }
}
