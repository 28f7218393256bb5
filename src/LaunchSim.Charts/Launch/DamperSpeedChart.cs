using LaunchSim.Charts.Drawing;
using LaunchSim.Dynamics;
using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;
using OxyPlot;

namespace LaunchSim.Charts.Launch;

/// <summary>How fast the dampers open and close, and how their time is shared out.</summary>
internal sealed class DamperSpeedChart : LaunchChart
{
    /// <summary>Half an inch a second, m/s: slower than this counts as still.</summary>
    private const double Still = 0.5 * 0.0254;

    // As much of the axis as is worth drawing at the least, m/s.
    private const double Least = 0.1;

    public override string Name => "damper-speeds";

    public override string Title(LaunchView view)
    {
        Scale speed = view.Readout.ShaftSpeed;
        return $"The rear dampers {Fastest("rear")}, the front ones {Fastest("front")}";

        string Fastest(string end)
        {
            double opening = view[$"{end}_damper_extension_speed_largest_mps"] ?? 0, closing = view[$"{end}_damper_compression_speed_largest_mps"] ?? 0;
            return speed.IsZero(Math.Max(opening, closing)) ? "do not move"
                : opening >= closing ? $"open at up to {speed.Text(opening)}"
                : $"close at up to {speed.Text(closing)}";
        }
    }

    public override string Explanation(LaunchView view) =>
        $"Speed of the dampers' shafts: above zero they open, below they close; within the grey strip, {view.Readout.ShaftSpeed.With(view.Readout.IsShop ? 1 : 0).Text(Still)} either way, they count as still.";

    public override void Draw(ChartPage page)
    {
        LaunchView view = page.View;
        Scale speed = view.Readout.ShaftSpeed;
        DataPoint[] rear = view.Course.Against((in Observation o) => o.RearDamperSpeed, speed), front = view.Course.Against((in Observation o) => o.FrontDamperSpeed, speed);
        var lanes = new EventLanes(view, [LaunchEventKind.RearTopStop, LaunchEventKind.RearBottomStop, LaunchEventKind.FrontTopStop, LaunchEventKind.FrontBottomStop, LaunchEventKind.FrontTireOff, LaunchEventKind.WheelieBar]);
        TimeAxis time = page.Time();
        Plot plot = page.Plot(page.Rows(lanes, 1)[0], time, Extent.Of(rear.Concat(front).Select(point => point.Y), Least / speed.Factor), $"Damper speed, {speed.Unit}: opening above zero, closing below");
        double still = Still / speed.Factor;
        plot.Strip([new(0, still), new(view.End, still)], [new(0, -still), new(view.End, -still)], Theme.Hair);
        Curve ahead = plot.Line(front, Pen.Front), behind = plot.Line(rear, Pen.Rear);
        plot.Draw();
        plot.Name(behind, $"rear: {Shares(view, "rear")}");
        plot.Name(ahead, $"front: {Shares(view, "front")}");
        lanes.Draw(page.Canvas, plot);
        page.Finish(time, plot);
    }

    /// <summary>How an end's time is shared out.</summary>
    /// <param name="view">The launch.</param>
    /// <param name="end">The word rear or front.</param>
    public static string Shares(LaunchView view, string end)
    {
        string Time(string what) => Readout.Time.With(2).Text(view[$"{end}_damper_{what}_time_s"] ?? 0);
        return $"opening {Time("opening")}, closing {Time("closing")}, still {Time("still")}";
    }
}
