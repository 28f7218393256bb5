namespace LaunchSim.Vehicle;

/// <summary>One tyre, as measured, with the pressure that may be set away from the measured one.</summary>
public sealed record Tire
{
    /// <summary>Height of the wheel centre above the floor as measured, m.</summary>
    public required double LoadedRadius { get; init; }

    /// <summary>Vertical rate k_m at the measured pressure, N/m.</summary>
    public required double VerticalRate { get; init; }

    /// <summary>Vertical damping c, N·s/m; 0 or more.</summary>
    public required double VerticalDamping { get; init; }

    /// <summary>Peak grip μ0 at the reference load and measured pressure; above 0.</summary>
    public required double Grip { get; init; }

    /// <summary>Slip stiffness per unit load C_s/F_z; above 0.</summary>
    public required double SlipStiffness { get; init; }

    /// <summary>Slip ratio s_p at which the force peaks; above 0.</summary>
    public required double PeakSlip { get; init; }

    /// <summary>Sliding force over peak force r; above 0 and below 1.</summary>
    public required double SlidingRatio { get; init; }

    /// <summary>Load sensitivity n: the share of grip lost when the load doubles from the reference load; 0 or more.</summary>
    public required double LoadSensitivity { get; init; }

    /// <summary>Reference load F_z0, N per tyre; above 0.</summary>
    public required double ReferenceLoad { get; init; }

    /// <summary>Relaxation length σ, m; above 0.</summary>
    public required double RelaxationLength { get; init; }

    /// <summary>Rolling resistance coefficient c_rr; 0 or more.</summary>
    public required double RollingResistance { get; init; }

    /// <summary>What pressure does, or nothing: the tyre as measured.</summary>
    public TirePressure? Pressure { get; init; }
}

/// <summary>A pressure set away from the one at which the tyre was measured, and what that changes.</summary>
public sealed record TirePressure
{
    /// <summary>Pressure p_m at which radius and rates were measured, Pa.</summary>
    public required double Measured { get; init; }

    /// <summary>Pressure p now set, Pa.</summary>
    public required double Set { get; init; }

    /// <summary>Change of vertical rate with pressure k', N/m per Pa.</summary>
    public required double VerticalRateSlope { get; init; }

    /// <summary>Change of the carcass's torsional rate with pressure, N·m/rad per Pa; 0 at the front.</summary>
    public double TorsionalRateSlope { get; init; }

    /// <summary>Relative change of grip with pressure g', per Pa.</summary>
    public double GripSlope { get; init; }
}

/// <summary>The rear tyres' wind-up between rim and belt, and the inertias that spin.</summary>
public sealed record Carcass
{
    /// <summary>Torsional rate k_t at the measured pressure, N·m/rad per tyre.</summary>
    public required double TorsionalRate { get; init; }

    /// <summary>Torsional damping c_t, N·m·s/rad per tyre; 0 or more.</summary>
    public required double TorsionalDamping { get; init; }

    /// <summary>Spin inertia J_rim of both rims, hubs, axle shafts, ring gear, and N² times what turns with the driveshaft, kg·m².</summary>
    public required double RimInertia { get; init; }

    /// <summary>Spin inertia J_belt of both belts, kg·m².</summary>
    public required double BeltInertia { get; init; }
}
