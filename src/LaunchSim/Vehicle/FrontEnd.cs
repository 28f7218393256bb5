namespace LaunchSim.Vehicle;

/// <summary>The front suspension: wheels that move straight up and down in the body, springs and dampers by motion ratio.</summary>
public sealed record FrontEnd
{
    /// <summary>Unsprung mass m_f of both sides, kg.</summary>
    public required double UnsprungMass { get; init; }

    /// <summary>Spring rate k, N/m per side.</summary>
    public required double SpringRate { get; init; }

    /// <summary>Spring motion ratio: change of spring length per wheel travel; above 0.</summary>
    public required double SpringMotionRatio { get; init; }

    /// <summary>Damper motion ratio m: change of damper length per wheel travel; above 0.</summary>
    public required double DamperMotionRatio { get; init; }

    /// <summary>The dampers' law, per side.</summary>
    public required DamperLaw Damper { get; init; }

    /// <summary>The dampers' travel and stops, at the unit, per side.</summary>
    public required DamperTravel DamperTravel { get; init; }

    /// <summary>The front tyres, per tyre.</summary>
    public required Tire Tire { get; init; }

    /// <summary>Spin inertia J_f of both wheels and tyres, kg·m².</summary>
    public required double SpinInertia { get; init; }
}
