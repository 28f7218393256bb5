namespace LaunchSim.Vehicle;

/// <summary>
/// One car with one set-up, in SI units: what was measured, and the settings that may have moved it since.
/// Immutable; the standing car and every launch are computed from it.
/// </summary>
public sealed record Car
{
    /// <summary>The whole car: wheelbase, scales, centre of gravity, ballast, ride height.</summary>
    public required Chassis Chassis { get; init; }

    /// <summary>The front end, per side.</summary>
    public required FrontEnd Front { get; init; }

    /// <summary>The rear end: linkage, springs, dampers, tyres, carcass.</summary>
    public required RearEnd Rear { get; init; }

    /// <summary>What puts torque into the axle shafts.</summary>
    public required Driveline Driveline { get; init; }

    /// <summary>
    /// The track's grip multiplier against distance, m, each tyre at its own place, 0 where the rear tyres start.
    /// One point with any distance means one grip everywhere; end values hold beyond the ends.
    /// </summary>
    public Table TrackGrip { get; init; } = Table.Constant(1);
}
