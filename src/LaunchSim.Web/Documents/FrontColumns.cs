using LaunchSim.Dynamics;
using LaunchSim.Launch;

namespace LaunchSim.Web.Documents;

/// <summary>What the front end gets of a launch against time: the register, one line a column. SI, as the trace.</summary>
internal static class FrontColumns
{
    // In the drawing or in a chart; what neither shows stays away, for every column is 5 kB a second of launch.
    private static readonly string[] OfTheTrace =
    [
        "speed_mps", "acceleration_mps2", "pitch_nose_up_rad", "front_rise_m", "rear_rise_m", "separation_m", "front_travel_m",
        "front_tire_load_n", "rear_tire_load_n", "rear_tire_thrust_n", "rear_slip_ratio", "wheel_speed_radps", "carcass_windup_rad",
        "rear_damper_speed_mps", "rear_damper_force_n", "rear_spring_force_n", "front_damper_speed_mps", "front_damper_force_n", "front_spring_force_n",
        "upper_link_force_n", "lower_link_force_n", "load_via_links_n", "load_via_springs_n", "load_via_dampers_n", "load_via_other_n",
        "anti_squat_percent", "instant_centre_ahead_m", "instant_centre_up_m", "engine_speed_radps", "axle_torque_nm",
        "rear_slip_speed_mps", "rear_grip_limit_n", "rear_wheel_place_m", "rear_stop_force_n", "front_stop_force_n",
        "wheelie_bar_force_n", "pinion_change_rad", "gear",
    ];

    /// <summary>All columns of a car's launch.</summary>
    /// <param name="car">The car.</param>
    public static IReadOnlyList<TraceColumn> Of(StandingCar car)
    {
        Standing standing = car.Standing;

        // From the standing rear wheel centre to the sprung CG.
        double ahead = standing.X, up = standing.Z - standing.RearWheelHeight;
        return
        [
            .. OfTheTrace.Select(name => TraceColumns.All.First(column => column.Name == name)),
            new("front_wheel_speed_radps", "spin of the front wheels", (in Observation o) => o.FrontWheelSpeed),
            new("rear_wheel_height_m", "height of the rear wheel centre over the ground", (in Observation o) => o.RearWheelHeight),
            new("front_wheel_height_m", "height of the front wheel centre over the ground", (in Observation o) => o.FrontWheelHeight),
            new("front_tire_clearance_m", "height of the front wheel centre above its free radius", (in Observation o) => o.FrontTireClearance),
            new("rear_top_left_m", "way left of a rear damper to its top stop", (in Observation o) => o.RearTopLeft),
            new("front_top_left_m", "way left of a front damper to its top stop", (in Observation o) => o.FrontTopLeft),
            new("body_place_m", "place along the track of the body's point that stood at the rear wheel centre", (in Observation o) => BodyPlace(o, ahead, up)),
        ];
    }

    private static double BodyPlace(in Observation seen, double ahead, double up)
    {
        (double sin, double cos) = Math.SinCos(seen.Pitch);
        return ahead + seen.Distance - ((cos * ahead) - (sin * up));
    }
}
