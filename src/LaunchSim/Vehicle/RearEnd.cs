namespace LaunchSim.Vehicle;

/// <summary>The rear end: a solid axle on its linkage, coil springs and dampers.</summary>
public sealed record RearEnd
{
    /// <summary>Unsprung mass m_r of housing, wheels and brakes, both sides, kg, at the axle centreline.</summary>
    public required double UnsprungMass { get; init; }

    /// <summary>Pitch inertia I_h of what does not spin, about the axle centreline, kg·m².</summary>
    public required double HousingInertia { get; init; }

    /// <summary>The links that guide the axle.</summary>
    public required Linkage Linkage { get; init; }

    /// <summary>Spring rate k, N/m per side.</summary>
    public required double SpringRate { get; init; }

    /// <summary>The spring's mount on the axle housing.</summary>
    public required Point SpringAxleMount { get; init; }

    /// <summary>The spring's mount on the body.</summary>
    public required Point SpringBodyMount { get; init; }

    /// <summary>The damper's mount on the axle housing.</summary>
    public required Point DamperAxleMount { get; init; }

    /// <summary>The damper's mount on the body.</summary>
    public required Point DamperBodyMount { get; init; }

    /// <summary>The dampers' law, per side.</summary>
    public required DamperLaw Damper { get; init; }

    /// <summary>The dampers' travel and stops, per side.</summary>
    public required DamperTravel DamperTravel { get; init; }

    /// <summary>The rear tyres, per tyre.</summary>
    public required Tire Tire { get; init; }

    /// <summary>The rear tyres' carcass and what spins.</summary>
    public required Carcass Carcass { get; init; }

    /// <summary>The wheelie bar, or none.</summary>
    public WheelieBar? WheelieBar { get; init; }

    /// <summary>Pinion angle of the standing car, rad, nose up positive; only reported.</summary>
    public double? PinionAngle { get; init; }
}

/// <summary>How the axle housing is guided by the body, in side view. One record a kind of linkage.</summary>
public abstract record Linkage;

/// <summary>Four-link: a lower and an upper bar a side, in side view.</summary>
public sealed record FourLink : Linkage
{
    /// <summary>The lower bar's end on the axle housing.</summary>
    public required Point LowerAxle { get; init; }

    /// <summary>The lower bar's end on the body.</summary>
    public required Point LowerBody { get; init; }

    /// <summary>The upper bar's end on the axle housing.</summary>
    public required Point UpperAxle { get; init; }

    /// <summary>The upper bar's end on the body.</summary>
    public required Point UpperBody { get; init; }
}

/// <summary>Ladder bar: the housing is rigid with a bar that turns about one pivot on the body.</summary>
public sealed record LadderBar : Linkage
{
    /// <summary>The pivot on the body.</summary>
    public required Point Pivot { get; init; }
}

/// <summary>A wheelie bar on the axle housing, one for the car: one-sided contact with the ground, frictionless.</summary>
public sealed record WheelieBar
{
    /// <summary>The lowest point of its wheel.</summary>
    public required Point Wheel { get; init; }

    /// <summary>Rate k, N/m; above 0.</summary>
    public required double Rate { get; init; }

    /// <summary>Damping c, N·s/m; 0 or more.</summary>
    public required double Damping { get; init; }
}
