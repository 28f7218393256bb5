using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Recorded;

/// <summary>Something that a log or a camera may have recorded, as far as a mapping has to know it.</summary>
/// <param name="Key">Its name in mapping files, such as <c>rear_ride_height</c>.</param>
/// <param name="Words">What it is called in a sentence.</param>
/// <param name="Kind">What kind of quantity it is; it decides which units are allowed.</param>
public sealed record RecordedQuantity(string Key, string Words, QuantityKind Kind)
{
    /// <summary>Whether its number is taken before the axle's gears, so that a ratio has to be known.</summary>
    public bool Driveline { get; init; }

    /// <summary>Whether it is a wheel's turning, which may also be logged as a speed over the ground.</summary>
    public bool Rolls { get; init; }
}
