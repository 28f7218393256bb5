namespace LaunchSim.Vehicle;

/// <summary>What puts torque into the axle shafts. One record a kind of driveline.</summary>
public abstract record Driveline
{
    /// <summary>A factor against time, s, on the torque table or the engine's torque; 0 or more; end values hold.</summary>
    public Table PowerShare { get; init; } = Table.Constant(1);
}

/// <summary>A torque at the axle, given against time.</summary>
public sealed record AxleTorque : Driveline
{
    /// <summary>Time, s, against the torque of both axle shafts together, N·m; end values hold.</summary>
    public required Table Torque { get; init; }
}

/// <summary>An engine with a clutch or a converter, gears and a final drive.</summary>
public sealed record EngineDriveline : Driveline
{
    /// <summary>The engine.</summary>
    public required Engine Engine { get; init; }

    /// <summary>What joins engine and gearbox.</summary>
    public required Coupling Coupling { get; init; }

    /// <summary>Gear ratios G, first to last; each above 0.</summary>
    public required IReadOnlyList<double> Ratios { get; init; }

    /// <summary>Engine speed at which each shift starts, rad/s: one fewer than the ratios.</summary>
    public required IReadOnlyList<double> ShiftAt { get; init; }

    /// <summary>How long a shift takes, s, without torque; 0 or more.</summary>
    public required double ShiftTime { get; init; }

    /// <summary>Final drive ratio N; above 0.</summary>
    public required double FinalDrive { get; init; }

    /// <summary>Efficiency η of gearbox and final drive together; above 0, at most 1.</summary>
    public double Efficiency { get; init; } = 1;
}

/// <summary>The engine and what turns with it.</summary>
public sealed record Engine
{
    /// <summary>Engine speed, rad/s, against torque, N·m; end values hold; may be negative (engine braking).</summary>
    public required Table Torque { get; init; }

    /// <summary>Inertia J_e, kg·m².</summary>
    public required double Inertia { get; init; }

    /// <summary>Engine speed held before release, rad/s.</summary>
    public required double LaunchSpeed { get; init; }
}

/// <summary>What joins engine and gearbox. One record a kind.</summary>
public abstract record Coupling;

/// <summary>A friction clutch.</summary>
public sealed record Clutch : Coupling
{
    /// <summary>Time, s, against torque capacity, N·m; 0 or more; end values hold.</summary>
    public required Table Capacity { get; init; }
}

/// <summary>A torque converter: pump torque (ω_e/K(ν))², turbine torque R(ν) times that, ν = ω_in/ω_e.</summary>
public sealed record Converter : Coupling
{
    /// <summary>Speed ratio ν against capacity factor K, (rad/s)/√(N·m); the last ν is below 1.</summary>
    public required Table CapacityFactor { get; init; }

    /// <summary>Speed ratio ν against torque ratio R; R·ν at most 1.</summary>
    public required Table TorqueRatio { get; init; }
}
