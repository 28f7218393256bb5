using LaunchSim.Charts.Drawing;
using LaunchSim.Dynamics;
using LaunchSim.Launch;
using LaunchSim.Reports.Numbers;
using LaunchSim.Vehicle;
using OxyPlot;

namespace LaunchSim.Charts.Launch;

/// <summary>What the bars carry: pull and push of the links, or what ladder bars lift.</summary>
internal sealed class LinkForceChart : LaunchChart
{
    // As much of the axis as is worth drawing at the least, N.
    private const double Least = 500;

    public override string Name => "bar-forces";

    public override string Title(LaunchView view)
    {
        Scale force = view.Readout.Force;
        if (view.Car.Rear.Linkage is LadderBar)
        {
            double up = view.Course.Largest((in Observation o) => Lift(view, o)), down = view.Course.Largest((in Observation o) => -Lift(view, o));
            return double.IsNaN(up) ? "The ladder bars lift nothing"
                : up >= down ? $"The ladder bars lift the body with up to {force.Text(up)}"
                : $"The ladder bars pull the body down with up to {force.Text(down)}";
        }

        return $"The lower bars {Most("lower")}, the upper bars {Most("upper")}, each side";

        string Most(string bar)
        {
            double pull = view[$"{bar}_link_pull_n"] ?? 0, push = view[$"{bar}_link_push_n"] ?? 0;
            return push >= pull ? $"push with up to {force.Text(push)}" : $"pull with up to {force.Text(pull)}";
        }
    }

    public override string Explanation(LaunchView view) => view.Car.Rear.Linkage is LadderBar
        ? "Upward force on the body at the pivot, both bars together. Their push along the track, the thrust but for the axle's inertia, is left out."
        : "Forces along the bars, one side: pull above zero, push below. These are the model's bars; whether yours are strong enough they cannot say.";

    public override void Draw(ChartPage page)
    {
        LaunchView view = page.View;
        Scale force = view.Readout.Force;
        var lanes = new EventLanes(view, EventLanes.Loads);
        TimeAxis time = page.Time();
        OxyRect area = page.Rows(lanes, 1)[0];
        Plot plot;
        if (view.Car.Rear.Linkage is LadderBar)
        {
            DataPoint[] lift = view.Course.Against((in Observation o) => Lift(view, o), force);
            plot = page.Plot(area, time, Extent.Of(lift.Select(point => point.Y), Least / force.Factor), $"Lift at the pivot, both bars, {force.Unit}");
            Curve line = plot.Line(lift, Pen.Rear);
            plot.Draw();
            plot.Name(line, "ladder bars");
        }
        else
        {
            DataPoint[] upper = view.Course.Against((in Observation o) => o.UpperLinkForce, force), lower = view.Course.Against((in Observation o) => o.LowerLinkForce, force);
            plot = page.Plot(area, time, Extent.Of(upper.Concat(lower).Select(point => point.Y), Least / force.Factor), $"Bar force, one side, {force.Unit}: pull above zero, push below");
            Curve above = plot.Line(upper, new Pen(Theme.Fourth, 2.4)), below = plot.Line(lower, Pen.Rear);
            plot.Draw();
            Extreme(plot, upper, Theme.Fourth, force);
            Extreme(plot, lower, Theme.Rear, force);
            plot.Name(above, "upper bar");
            plot.Name(below, "lower bar");
        }

        lanes.Draw(page.Canvas, plot);
        page.Finish(time, plot);
    }

    // The links lift the body with what they press the axle down with.
    private static double Lift(LaunchView view, in Observation seen) => seen.LoadViaLinks - view.Run.Solution.Car.Standing.LinkLift;

    private static void Extreme(Plot plot, DataPoint[] points, OxyColor color, Scale force)
    {
        DataPoint[] seen = [.. points.Where(point => double.IsFinite(point.Y))];
        if (seen.Length > 0 && seen.MaxBy(point => Math.Abs(point.Y)) is var most && !force.IsZero(most.Y * force.Factor))
        {
            plot.Mark(most.X, most.Y, force.Text(Math.Abs(most.Y) * force.Factor), color, above: most.Y > 0);
        }
    }
}
