using LaunchSim.Figures;

namespace LaunchSim.Studies.Aims;

/// <summary>The register of what can be aimed at: one line a subject, in the order of tables.</summary>
public static class AimSubjects
{
    private const string StandingLoad = "rear_tire_load_static_n";

    /// <summary>All subjects; their names are those of the scenario's <c>aims</c>.</summary>
    public static IReadOnlyList<AimSubject> All { get; } =
    [
        new("rise_lag", "the rise lag", FigureUnit.Time, ["rise_lag_s"], figures => figures[0]),
        new("separation", "the largest separation", FigureUnit.Length, ["separation_peak_m"], figures => figures[0]),
        new("rear_stops", "the rear dampers' stops", FigureUnit.Ratio, ["rear_top_stop_count", "rear_top_stop_force_n", "rear_bottom_stop_count", "rear_bottom_stop_force_n", StandingLoad], Stops),
        new("rear_load", "the lowest rear load after the hit", FigureUnit.Ratio, ["lowest_rear_load_after_hit_n", StandingLoad], figures => figures[0] / figures[1]) { IsShareOfStandingLoad = true },
        new("load_unrest", "the load unrest", FigureUnit.Ratio, ["load_unrest_n", StandingLoad], figures => figures[0] / figures[1]) { IsShareOfStandingLoad = true },
        new("slip_past_peak", "the time of slip past the peak", FigureUnit.Time, ["slip_beyond_peak_time_s"], figures => figures[0]),
        new("front_height", "the largest front rise", FigureUnit.Length, ["front_rise_peak_m"], figures => figures[0]),
    ];

    /// <summary>A subject by its name.</summary>
    /// <param name="name">Its name in files.</param>
    public static AimSubject Find(string name) => All.First(subject => subject.Name == name);

    /// <summary>
    /// 0 while the rear dampers reach neither stop; else 1, and the larger of the two stops' hardest force, both sides, as a
    /// share of the rear tyres' standing load.
    /// </summary>
    private static double Stops(ReadOnlySpan<double> figures)
    {
        if (!(figures[0] > 0 || figures[2] > 0))
        {
            return 0;
        }

        double top = double.IsNaN(figures[1]) ? 0 : figures[1], bottom = double.IsNaN(figures[3]) ? 0 : figures[3];
        return 1 + (2 * Math.Max(top, bottom) / figures[4]);
    }
}
