using LaunchSim.Charts.Launch;
using LaunchSim.Dynamics;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Charts.Overlay;

/// <summary>The register of charts of several launches over one another: one line a chart; and the sheet with the most telling of them.</summary>
public static class OverlayCharts
{
    private const double LeastTravel = 0.0127, LeastLoad = 500, LeastSpeed = 0.1;

    /// <summary>All charts in the order in which they are best looked at.</summary>
    internal static IReadOnlyList<OverlayChart> All { get; } =
    [
        new CurveOverlay("rises", view => $"Rise lag: {view.Each(Lag)}", "Both ends of the body over the ground, as a camera sees them; a lag is positive when the front is late.",
            new("Rear rise over the ground", (in Observation o) => o.RearRise, readout => readout.Travel, LeastTravel),
            new("Front rise over the ground", (in Observation o) => o.FrontRise, readout => readout.Travel, LeastTravel)),
        new CurveOverlay("gaps", view => $"Largest separation: {view.Each(launch => Figure(launch, "separation_peak_m", view.Readout.Travel))}", "How far the axle of each end and the body have moved apart since standing.",
            new("Separation at the rear", (in Observation o) => o.Separation, readout => readout.Travel, LeastTravel),
            new("Gap at the front", (in Observation o) => -o.FrontTravel, readout => readout.Travel, LeastTravel)),
        new CurveOverlay("tyre-loads", view => $"The hit: {view.Each(launch => Figure(launch, "hit_n", view.Readout.Force))}; the low point: {view.Each(launch => Figure(launch, "lowest_rear_load_after_hit_n", view.Readout.Force))}", "Both tyres of an axle together; the hit is the rear's largest in the first 0.3 s.",
            new("Rear tyre load", (in Observation o) => o.RearLoad, readout => readout.Force, LeastLoad, launch => launch.Run.Solution.Car.Standing.RearLoad),
            new("Front tyre load", (in Observation o) => o.FrontLoad, readout => readout.Force, LeastLoad, launch => launch.Run.Solution.Car.Standing.FrontLoad)),
        new LoadPathOverlay(),
        new CurveOverlay("damper-speeds", view => $"Fastest opening of the rear dampers: {view.Each(launch => Figure(launch, "rear_damper_extension_speed_largest_mps", view.Readout.ShaftSpeed))}", "Speed of the dampers' shafts: above zero they open, below they close.",
            new("Rear damper speed", (in Observation o) => o.RearDamperSpeed, readout => readout.ShaftSpeed, LeastSpeed),
            new("Front damper speed", (in Observation o) => o.FrontDamperSpeed, readout => readout.ShaftSpeed, LeastSpeed)),
        new PercentOverlay(),
    ];

    /// <summary>How many launches can be told apart in one picture.</summary>
    public static int Most => OverlayPens.All.Count;

    /// <summary>Plain names of the charts, for file names.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. All.Select(chart => chart.Name)];

    /// <summary>All charts of several launches; what they have in common is read once.</summary>
    /// <param name="launches">The launches, at most <see cref="Most"/>; the first is what the others are compared with.</param>
    /// <param name="readout">The units.</param>
    /// <param name="program">Program and version, for the foot.</param>
    public static IReadOnlyList<(string Name, Picture Picture)> Charts(IReadOnlyList<OverlayLaunch> launches, Readout readout, string program)
    {
        ArgumentNullException.ThrowIfNull(launches);
        var view = new OverlayView(launches, readout, program);
        return [.. All.Select(chart => (chart.Name, Picture(chart, view)))];
    }

    /// <summary>The sheet: side views, rises, separation and rear load over one another, and what it comes to.</summary>
    /// <param name="launches">The launches, at most <see cref="Most"/>; the first is what the others are compared with.</param>
    /// <param name="sentences">What it comes to.</param>
    /// <param name="readout">The units.</param>
    /// <param name="program">Program and version, for the foot.</param>
    public static Picture Sheet(IReadOnlyList<OverlayLaunch> launches, IReadOnlyList<string> sentences, Readout readout, string program)
    {
        ArgumentNullException.ThrowIfNull(launches);
        ArgumentNullException.ThrowIfNull(sentences);
        var view = new OverlayView(launches, readout, program);
        return new Picture(OverlaySheet.Title(view), PageFrame.Width, PageFrame.Height, canvas => OverlaySheet.Draw(canvas, view, sentences));
    }

    /// <summary>A launch's rise lag.</summary>
    /// <param name="launch">The launch.</param>
    internal static string Lag(LaunchView launch) => Figure(launch, "rise_lag_s", Readout.Lag);

    private static string Figure(LaunchView launch, string key, Scale scale) => launch[key] is { } value ? scale.Text(value) : "none";

    private static Picture Picture(OverlayChart chart, OverlayView view)
    {
        string title = chart.Title(view);
        return new Picture(title, PageFrame.Width, PageFrame.Height, canvas => chart.Draw(new OverlayPage(canvas, view, title, chart.Explanation(view))));
    }
}
