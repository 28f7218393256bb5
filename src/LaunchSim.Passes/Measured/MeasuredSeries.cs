namespace LaunchSim.Passes.Measured;

/// <summary>
/// One quantity of one pass as it was measured, in SI: what a logger or a camera gave, with its time counted from the
/// release as well as that could be told. Where <see cref="MeasuredQuantity.HasFreeZero"/>, values count from the standing car.
/// </summary>
/// <param name="Quantity">What was measured.</param>
/// <param name="Times">Seconds since release, rising; before it negative.</param>
/// <param name="Values">The values, SI, as many; all finite.</param>
/// <param name="Noise">One standard deviation of a single value about the truth, SI.</param>
/// <param name="Source">Where it came from, such as <c>pass-2.csv, column Rear_RH</c>.</param>
public sealed record MeasuredSeries(MeasuredQuantity Quantity, IReadOnlyList<double> Times, IReadOnlyList<double> Values, double Noise, string Source)
{
    /// <summary>How far off all its values may be together, as a share of themselves, one standard deviation: parallax, a pixel's length; 0 for a sensor.</summary>
    public double ScaleDoubt { get; init; }
}
