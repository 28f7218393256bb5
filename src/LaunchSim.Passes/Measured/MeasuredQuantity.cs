using LaunchSim.Dynamics;
using LaunchSim.Launch;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Passes.Measured;

/// <summary>Something of a launch that a logger or a camera measures, and what the prediction has in its place.</summary>
/// <param name="Key">Its name in mapping files and tables, such as <c>rear_ride_height</c>.</param>
/// <param name="Words">What it is called in a sentence.</param>
/// <param name="Kind">What kind of quantity it is.</param>
/// <param name="Noise">One standard deviation of what such a channel usually adds to the truth, SI; common practice, no source.</param>
/// <param name="HasFreeZero">Whether where its zero lies is of no account, only how it changes: a height, a travel, an acceleration by a sensor that does not sit level.</param>
/// <param name="Driveline">Whether the number has to be turned by a ratio first, because it is taken before the axle's gears.</param>
/// <param name="Predicted">Reads it off the predicted launch.</param>
public sealed record MeasuredQuantity(
    string Key, string Words, QuantityKind Kind, double Noise, bool HasFreeZero, bool Driveline, MeasuredReader Predicted)
{
    /// <summary>Whether it is 0 while the car stands; an engine runs.</summary>
    public bool StandsAtZero { get; init; } = true;

    /// <summary>Whether it is a wheel's turning, which a logger may give as a speed over the ground.</summary>
    public bool Rolls { get; init; }

    /// <summary>Whether it is a turning of the rear axle or its shaft, by which the release is found before all others.</summary>
    public bool TellsRelease { get; init; }

    /// <summary>What a mapping has to know of it.</summary>
    public RecordedQuantity Recorded => new(Key, Words, Kind) { Driveline = Driveline, Rolls = Rolls };
}

/// <summary>Reads one measured quantity off an observation.</summary>
/// <param name="seen">The observation.</param>
/// <param name="car">The standing car.</param>
public delegate double MeasuredReader(in Observation seen, StandingCar car);
