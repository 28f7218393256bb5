using LaunchSim.Charts.Drawing;
using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;
using OxyPlot;

namespace LaunchSim.Charts.Launch;

/// <summary>Rises over the ground, and below them the gaps at the wheels.</summary>
internal sealed class RiseChart : LaunchChart
{
    // Less than this is not seen, m.
    private const double Seen = 0.0005;

    public override string Name => "rises-and-gaps";

    public override string Title(LaunchView view) => $"{RisePanel.RiseTitle(view)}; {char.ToLowerInvariant(RisePanel.GapTitle(view)[0])}{RisePanel.GapTitle(view)[1..]}";

    public override string Explanation(LaunchView view) =>
        $"The body over the ground, as a camera sees it, ringed at half of each end's rise in the first 0.4 s; and each end's gap, ringed at {(view.Readout.IsShop ? "1/4 in" : "6.35 mm")}.";

    public override void Draw(ChartPage page)
    {
        var lanes = new EventLanes(page.View, [LaunchEventKind.RearTopStop, LaunchEventKind.RearBottomStop, LaunchEventKind.FrontTopStop, LaunchEventKind.FrontBottomStop, LaunchEventKind.FrontTireOff, LaunchEventKind.RearTireOff, LaunchEventKind.WheelieBar]);
        OxyRect[] rows = page.Rows(lanes, 1.1, 1);
        TimeAxis bare = page.Time(named: false), time = page.Time();
        Plot rises = RisePanel.Draw(page, rows[0], bare, rises: true, gaps: false);
        Plot gaps = RisePanel.Draw(page, rows[1], time, rises: false, gaps: true);
        Separation(page.View, gaps, "separation", "top");
        Separation(page.View, gaps, "squat", "bottom");
        lanes.Draw(page.Canvas, rises);
        page.Finish(time, rises, gaps);
    }

    private static void Separation(LaunchView view, Plot plot, string what, string stop)
    {
        Scale travel = view.Readout.Travel;
        if (view[$"{what}_peak_m"] is { } peak && view[$"{what}_peak_time_s"] is { } at && Math.Abs(peak) >= Seen)
        {
            string left = view[$"{what}_peak_travel_left_m"] is { } way
                ? travel.IsZero(way) ? $", at the {stop} stop" : way < 0 ? $", {travel.Text(-way)} into the {stop} stop" : $", {travel.Text(way)} left to the {stop} stop"
                : "";
            plot.Mark(at, peak / travel.Factor, $"{travel.Text(Math.Abs(peak))} {(peak > 0 ? "apart" : "together")}{left}", Theme.Rear, above: peak > 0);
        }
    }
}
