using LaunchSim.Dynamics;
using LaunchSim.Launch;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Passes.Measured;

/// <summary>The register of measured quantities: one line each.</summary>
public static class MeasuredQuantities
{
    private const double Gravity = 9.80665;

    /// <summary>All of them, those that a camera sees first.</summary>
    public static IReadOnlyList<MeasuredQuantity> All { get; } =
    [
        new("front_ride_height", "front ride height", QuantityKind.Length, 1e-3, true, false, (in Observation seen, StandingCar _) => seen.FrontRise),
        new("rear_ride_height", "rear ride height", QuantityKind.Length, 1e-3, true, false, (in Observation seen, StandingCar _) => seen.RearRise),
        new("front_gap", "front gap", QuantityKind.Length, 2e-3, true, false, (in Observation seen, StandingCar _) => -seen.FrontTravel),
        new("rear_gap", "rear gap", QuantityKind.Length, 2e-3, true, false, (in Observation seen, StandingCar _) => seen.Separation),
        new("front_damper_travel", "front damper travel", QuantityKind.Length, 5e-4, true, false, (in Observation seen, StandingCar car) => -seen.FrontTravel * car.Car.Front.DamperMotionRatio),
        new("rear_damper_travel", "rear damper travel", QuantityKind.Length, 5e-4, true, false, (in Observation seen, StandingCar _) => seen.RearDamperTravel),
        new("wheel_speed", "rear wheel speed", QuantityKind.AngularSpeed, 0.3, false, false, (in Observation seen, StandingCar _) => seen.WheelSpeed) { Rolls = true, TellsRelease = true },

        // The shaft turns against the housing, which turns with the body and in it (docs/model.md, driveline): ω + φ' times the ratio.
        new("driveshaft_speed", "driveshaft speed", QuantityKind.AngularSpeed, 1, false, true, (in Observation seen, StandingCar _) => seen.WheelSpeed + seen.PitchRate + seen.PinionRate) { TellsRelease = true },
        new("front_wheel_speed", "front wheel speed", QuantityKind.AngularSpeed, 0.3, false, false, (in Observation seen, StandingCar _) => seen.FrontWheelSpeed) { Rolls = true },
        new("engine_speed", "engine speed", QuantityKind.AngularSpeed, 2, false, false, (in Observation seen, StandingCar _) => seen.EngineSpeed) { StandsAtZero = false },

        // A sensor that is fixed to the body turns with it, and feels the weight along its axis once the nose is up.
        new("acceleration", "acceleration", QuantityKind.Acceleration, 0.3, true, false, (in Observation seen, StandingCar _) => (seen.Acceleration * Math.Cos(seen.Pitch)) + (Gravity * Math.Sin(seen.Pitch))),
        new("pitch_rate", "pitch rate, nose up", QuantityKind.AngularSpeed, 0.01, true, false, (in Observation seen, StandingCar _) => seen.PitchRate),
        new("pitch", "pitch, nose up", QuantityKind.Angle, 2e-3, true, false, (in Observation seen, StandingCar _) => seen.Pitch),
        new("speed", "speed over the ground", QuantityKind.Speed, 0.2, false, false, (in Observation seen, StandingCar _) => seen.Speed),
    ];

    /// <summary>What mapping files and marks have to know of them.</summary>
    public static IReadOnlyList<RecordedQuantity> Recorded { get; } = [.. All.Select(quantity => quantity.Recorded)];

    /// <summary>The quantity of a key, or null.</summary>
    /// <param name="key">Such as <c>rear_ride_height</c>.</param>
    public static MeasuredQuantity? Find(string key) => All.FirstOrDefault(quantity => quantity.Key == key);
}
