using LaunchSim.Dynamics;

namespace LaunchSim.Launch;

/// <summary>One column of a trace: its name with its SI unit, what it is, and how it is read off the launch.</summary>
/// <param name="Name">Name as in the file's header.</param>
/// <param name="Description">What it is, with sign and whether it is per side or per axle.</param>
/// <param name="Read">Reads it off an observation; not finite where it has no meaning.</param>
public sealed record TraceColumn(string Name, string Description, ObservationReader Read);

/// <summary>Reads one number off an observation; by reference, for it is a large struct.</summary>
/// <param name="seen">The observation.</param>
public delegate double ObservationReader(in Observation seen);

/// <summary>The register of trace columns: one line a column; the first 34 keep their order.</summary>
public static class TraceColumns
{
    /// <summary>All columns in the order of the file.</summary>
    public static IReadOnlyList<TraceColumn> All { get; } =
    [
        new("time_s", "time since release", (in Observation o) => o.Time),
        new("distance_m", "distance of the sprung CG along the track", (in Observation o) => o.Distance),
        new("speed_mps", "speed of the sprung CG along the track", (in Observation o) => o.Speed),
        new("acceleration_mps2", "acceleration of the sprung CG along the track", (in Observation o) => o.Acceleration),
        new("pitch_nose_up_rad", "pitch change since standing, nose up positive (ISO 8855 has nose down positive)", (in Observation o) => o.Pitch),
        new("front_rise_m", "height change over the ground of the body at the standing front wheel centre", (in Observation o) => o.FrontRise),
        new("rear_rise_m", "height change over the ground of the body at the standing rear wheel centre", (in Observation o) => o.RearRise),
        new("separation_m", "separation of body and axle, positive apart", (in Observation o) => o.Separation),
        new("front_travel_m", "front travel, positive in bump", (in Observation o) => o.FrontTravel),
        new("front_tire_load_n", "front tyre load, axle", (in Observation o) => o.FrontLoad),
        new("rear_tire_load_n", "rear tyre load, axle", (in Observation o) => o.RearLoad),
        new("rear_tire_thrust_n", "rear tyre thrust, axle, forward positive", (in Observation o) => o.RearThrust),
        new("rear_slip_ratio", "rear slip ratio u/σ", (in Observation o) => o.RearSlipRatio),
        new("wheel_speed_radps", "spin of the rear rims", (in Observation o) => o.WheelSpeed),
        new("belt_speed_radps", "spin of the rear belts", (in Observation o) => o.BeltSpeed),
        new("carcass_windup_rad", "wind-up of the rear carcasses", (in Observation o) => o.Windup),
        new("rear_damper_speed_mps", "rear damper speed, positive longer", (in Observation o) => o.RearDamperSpeed),
        new("rear_damper_force_n", "rear damper force without stops, per side, positive apart", (in Observation o) => o.RearDamperForce),
        new("rear_spring_force_n", "rear spring force, per side, positive apart", (in Observation o) => o.RearSpringForce),
        new("front_damper_speed_mps", "front damper speed, positive longer", (in Observation o) => o.FrontDamperSpeed),
        new("front_damper_force_n", "front damper force without stops, per side, positive apart", (in Observation o) => o.FrontDamperForce),
        new("front_spring_force_n", "front spring force, per side, positive apart", (in Observation o) => o.FrontSpringForce),
        new("upper_link_force_n", "upper bar, per side, pull positive", (in Observation o) => o.UpperLinkForce),
        new("lower_link_force_n", "lower bar, per side, pull positive", (in Observation o) => o.LowerLinkForce),
        new("load_via_links_n", "change of rear tyre load via the links, axle", (in Observation o) => o.LoadViaLinks),
        new("load_via_springs_n", "change of rear tyre load via the springs, axle", (in Observation o) => o.LoadViaSprings),
        new("load_via_dampers_n", "change of rear tyre load via dampers and stops, axle", (in Observation o) => o.LoadViaDampers),
        new("load_via_other_n", "change of rear tyre load via wheelie bar and the axle's own inertia", (in Observation o) => o.LoadViaOther),
        new("anti_squat_percent", "percent anti-squat at this instant", (in Observation o) => o.AntiSquatPercent),
        new("instant_centre_ahead_m", "instant centre ahead of the rear wheel centre", (in Observation o) => o.InstantCentreAhead),
        new("instant_centre_up_m", "instant centre above the ground", (in Observation o) => o.InstantCentreUp),
        new("engine_speed_radps", "engine speed", (in Observation o) => o.EngineSpeed),
        new("axle_torque_nm", "torque of both axle shafts", (in Observation o) => o.AxleTorque),
        new("energy_residual_j", "energy stored and dissipated less work: the ledger's error", (in Observation o) => o.EnergyResidual),
        new("front_tire_thrust_n", "front tyre thrust, axle, forward positive", (in Observation o) => o.FrontThrust),
        new("front_slip_ratio", "front slip ratio u/σ", (in Observation o) => o.FrontSlipRatio),
        new("rear_slip_speed_mps", "rear slip speed, spinning positive", (in Observation o) => o.RearSlipSpeed),
        new("rear_grip_limit_n", "rear available grip, axle", (in Observation o) => o.RearLimit),
        new("rear_wheel_place_m", "place of the rear wheel centre along the track", (in Observation o) => o.RearWheelPlace),
        new("rear_stop_force_n", "rear damper stops, per side, positive apart", (in Observation o) => o.RearBottomForce - o.RearTopForce),
        new("front_stop_force_n", "front damper stops, per side, positive apart", (in Observation o) => o.FrontBottomForce - o.FrontTopForce),
        new("wheelie_bar_force_n", "wheelie bar on the ground", (in Observation o) => o.WheelieBarForce),
        new("pinion_change_rad", "housing angle relative to the body since standing, pinion nose up positive", (in Observation o) => o.PinionChange),
        new("gear", "gear in, 0 during a shift", (in Observation o) => o.Gear),
    ];
}

/// <summary>A launch sampled at even instants.</summary>
public sealed class Trace
{
    private readonly double[][] _values;

    private Trace(double[][] values) => _values = values;

    /// <summary>Number of rows.</summary>
    public int Rows => _values[0].Length;

    /// <summary>One column's values, in the order of <see cref="TraceColumns.All"/>; not finite where it has no meaning.</summary>
    /// <param name="column">The column's place.</param>
    public ReadOnlySpan<double> Column(int column) => _values[column];

    /// <summary>One column's values by name.</summary>
    /// <param name="name">The column's name.</param>
    /// <exception cref="ArgumentException">There is no such column.</exception>
    public ReadOnlySpan<double> Column(string name)
    {
        for (int i = 0; i < TraceColumns.All.Count; i++)
        {
            if (TraceColumns.All[i].Name == name)
            {
                return _values[i];
            }
        }

        throw new ArgumentException($"There is no trace column '{name}'.", nameof(name));
    }

    /// <summary>
    /// Samples a solution at 0, Δ, 2Δ … up to and including its duration; at a jump the values after it. The dense output
    /// is read: sampling changes no step.
    /// </summary>
    /// <param name="solution">The solution, with one step at least.</param>
    /// <param name="sample">Time between rows Δ, s.</param>
    public static Trace Of(LaunchSolution solution, double sample)
    {
        ArgumentNullException.ThrowIfNull(solution);
        int rows = solution.Steps == 0 ? 0 : SampleGrid.Rows(solution.Duration, sample);
        IReadOnlyList<TraceColumn> columns = TraceColumns.All;
        var values = new double[columns.Count][];
        for (int c = 0; c < values.Length; c++)
        {
            values[c] = new double[rows];
        }

        for (int row = 0; row < rows; row++)
        {
            double time = SampleGrid.Time(row, sample);
            solution.At(Math.Min(time, solution.Duration), out Observation seen);
            seen.Time = time;
            for (int c = 0; c < values.Length; c++)
            {
                values[c][row] = columns[c].Read(seen);
            }
        }

        return new Trace(values);
    }
}
