using System.Globalization;
using LaunchSim.Charts.Drawing;
using LaunchSim.Dynamics;
using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;
using OxyPlot;

namespace LaunchSim.Charts.Launch;

/// <summary>The rear tyres' thrust below the grip that they have, and their slip.</summary>
internal sealed class GripChart : LaunchChart
{
    public override string Name => "grip";

    public override string Title(LaunchView view)
    {
        if (view["slip_beyond_peak_first_s"] is { } first && view["slip_beyond_peak_time_s"] is { } total)
        {
            return $"The rear tyres spin: past the peak of their grip from {Readout.Time.Text(first)}, for {Readout.Time.Text(total)} in all";
        }

        return view["grip_margin_lowest_ratio"] is { } margin ? $"The rear tyres hold, with {Spare(margin)} of their grip to spare" : "The rear tyres carry too little to speak of grip";
    }

    public override string Explanation(LaunchView view) =>
        "Both rear tyres: how hard they push, and how hard they could at the load that they carry; below, how far they slip, 1 being a standing spin.";

    public override void Draw(ChartPage page)
    {
        LaunchView view = page.View;
        Scale force = view.Readout.Force;
        DataPoint[] thrust = view.Course.Against((in Observation o) => o.RearThrust, force), limit = view.Course.Against((in Observation o) => o.RearLimit, force);
        DataPoint[] slip = view.Course.Against((in Observation o) => o.RearSlipRatio, new Scale("", 1, 2));
        double peak = view.Car.Rear.Tire.PeakSlip, weight = view.Run.Solution.Car.Standing.RearLoad / force.Factor;
        var lanes = new EventLanes(view, [LaunchEventKind.RearSlipPastPeak, LaunchEventKind.RearTireOff, LaunchEventKind.Shift, LaunchEventKind.ClutchLocked, LaunchEventKind.RearTopStop, LaunchEventKind.WheelieBar, LaunchEventKind.RearGripFloor]);
        OxyRect[] rows = page.Rows(lanes, 1.6, 1);
        TimeAxis bare = page.Time(named: false), time = page.Time();
        Plot upper = page.Plot(rows[0], bare, Extent.Of(thrust.Concat(limit).Select(point => point.Y), 0.2 * weight), $"Thrust and available grip of the rear tyres, {force.Unit}");
        upper.Strip(thrust, limit, Theme.Hair);
        Curve available = upper.Line(limit, new Pen(Theme.Ink, 1.4)), used = upper.Line(thrust, Pen.Rear);
        upper.Draw();
        if (view["grip_margin_lowest_ratio"] is { } margin && view["grip_margin_lowest_time_s"] is { } at)
        {
            view.Run.Solution.At(at, out Observation seen);
            upper.Mark(at, seen.RearThrust / force.Factor, Readout.Percent.IsZero(100 * margin) ? "no grip to spare" : $"{Spare(margin)} to spare", Theme.Rear, above: false);
        }

        upper.Name(available, "available grip");
        upper.Name(used, "thrust");
        Plot lower = page.Plot(rows[1], time, Extent.Of(slip.Select(point => point.Y).Append(1.2 * peak), peak), "Slip of the rear tyres, ratio");
        Curve level = lower.Level(peak, Pen.Reference);
        Curve slips = lower.Line(slip, Pen.Rear);
        lower.Draw();
        lower.Name(level, string.Create(CultureInfo.InvariantCulture, $"past {peak:0.###} the grip falls"));
        lower.Name(slips, "slip");
        lanes.Draw(page.Canvas, upper);
        page.Finish(time, upper, lower);
    }

    private static string Spare(double margin) => Readout.Percent.IsZero(100 * margin) ? "next to nothing" : Readout.Percent.Text(100 * margin);
}
