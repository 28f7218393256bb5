namespace LaunchSim.Scenarios.Typical;

/// <summary>What a person knows of the car that has no place in the scenario, and that makes typical values better.</summary>
public sealed record TypicalHints
{
    /// <summary>Size on the front tyres' sidewall; null when not known.</summary>
    public TireSize? FrontTire { get; init; }

    /// <summary>Size on the rear tyres' sidewall; null when not known.</summary>
    public TireSize? RearTire { get; init; }

    /// <summary>How firm the front dampers are.</summary>
    public DamperFamily FrontDampers { get; init; } = DamperFamily.Medium;

    /// <summary>How firm the rear dampers are.</summary>
    public DamperFamily RearDampers { get; init; } = DamperFamily.Medium;

    /// <summary>The car's 60 ft time on the timing clock, s; null when not known.</summary>
    public double? SixtyFootTime { get; init; }

    /// <summary>Engine speed to which the converter flashes at full torque with the car held, rad/s; null when not known.</summary>
    public double? FlashSpeed { get; init; }
}
