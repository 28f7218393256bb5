using LaunchSim.Charts.Drawing;
using LaunchSim.Figures;
using OxyPlot;

namespace LaunchSim.Charts.Launch;

/// <summary>Front and rear tyre loads against the standing car's.</summary>
internal sealed class TireLoadChart : LaunchChart
{
    public override string Name => "tyre-loads";

    public override string Title(LaunchView view) => RearLoadPanel.Title(view);

    public override string Explanation(LaunchView view) => "Both tyres of an axle together; dotted: the standing car. The hit is the rear's largest in the first 0.3 s.";

    public override void Draw(ChartPage page)
    {
        var lanes = new EventLanes(page.View, EventLanes.Loads);
        OxyRect[] rows = page.Rows(lanes, 1);
        TimeAxis time = page.Time();
        Plot plot = RearLoadPanel.Draw(page, rows[0], time, front: true);
        lanes.Draw(page.Canvas, plot);
        page.Finish(time, plot);
    }
}
