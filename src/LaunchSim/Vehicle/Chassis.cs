namespace LaunchSim.Vehicle;

/// <summary>The whole car as it stood on the scales.</summary>
public sealed record Chassis
{
    /// <summary>Wheelbase L as measured, m; above 0.</summary>
    public required double Wheelbase { get; init; }

    /// <summary>Scale reading of the front axle, both tyres, N; above 0.</summary>
    public required double FrontScale { get; init; }

    /// <summary>Scale reading of the rear axle, both tyres, N; above 0.</summary>
    public required double RearScale { get; init; }

    /// <summary>Height h of the whole car's centre of gravity above the floor as measured, without ballast, m.</summary>
    public required double CentreOfGravityHeight { get; init; }

    /// <summary>Pitch inertia I_s of the sprung body about its own centre of gravity, without ballast, kg·m².</summary>
    public required double PitchInertia { get; init; }

    /// <summary>Aerodynamic drag, or none.</summary>
    public Aero? Aero { get; init; }

    /// <summary>How much higher the body stands at the front wheel since it was measured, m; negative is lower.</summary>
    public double FrontRideHeight { get; init; }

    /// <summary>How much higher the body stands at the rear axle since it was measured, m; negative is lower.</summary>
    public double RearRideHeight { get; init; }

    /// <summary>Masses added to the sprung body since the scales were read.</summary>
    public IReadOnlyList<Ballast> Ballast { get; init; } = [];
}

/// <summary>Aerodynamic drag D = ½·ρ·CdA·v·|v| at a fixed height over the ground.</summary>
public sealed record Aero
{
    /// <summary>Drag area CdA, m²; 0 or more.</summary>
    public required double DragArea { get; init; }

    /// <summary>Height h_a over the ground at which the drag acts, m.</summary>
    public required double Height { get; init; }

    /// <summary>Air density ρ, kg/m³; 0 or more.</summary>
    public required double AirDensity { get; init; }
}

/// <summary>A mass added to the sprung body after the scales were read.</summary>
public sealed record Ballast
{
    /// <summary>Mass, kg; 0 or more.</summary>
    public required double Mass { get; init; }

    /// <summary>Where it sits, in the set-up frame of the car as measured.</summary>
    public required Point At { get; init; }
}
