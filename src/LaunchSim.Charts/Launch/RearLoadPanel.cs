using LaunchSim.Charts.Drawing;
using LaunchSim.Dynamics;
using LaunchSim.Reports.Numbers;
using OxyPlot;

namespace LaunchSim.Charts.Launch;

/// <summary>The tyre loads against the standing car's: the hit and the low point after it.</summary>
internal static class RearLoadPanel
{
    // Share of the standing car's load that is worth the whole height at the least.
    private const double Least = 0.2;

    /// <summary>What the hit and the low point carry.</summary>
    /// <param name="view">The launch.</param>
    public static string Title(LaunchView view)
    {
        Scale force = view.Readout.Force;
        double standing = view.Run.Solution.Car.Standing.RearLoad;
        if (view["hit_n"] is not { } hit || view["lowest_rear_load_after_hit_n"] is not { } low)
        {
            return $"The rear tyres carry {force.Text(standing)} standing";
        }

        return force.IsZero(hit - standing)
            ? $"The rear tyres never carry more than the {force.Text(standing)} of the standing car"
            : $"The rear tyres carry {force.Text(hit)} in the hit{(HasLow(view) ? $" and {(low <= 0 ? "nothing" : force.Text(low))} at the low point after it" : ", where the run ends")}";
    }

    /// <summary>The same in few words.</summary>
    /// <param name="view">The launch.</param>
    public static string Heading(LaunchView view)
    {
        Scale force = view.Readout.Force;
        return view["hit_n"] is not { } hit || view["lowest_rear_load_after_hit_n"] is not { } low ? "Rear tyres"
            : HasHit(view, hit) ? $"Rear tyres: {force.Text(hit)} in the hit{(HasLow(view) ? $", {(low <= 0 ? "nothing" : force.Text(low))} at the low point" : "")}"
            : $"Rear tyres: no hit, {(low <= 0 ? "nothing" : force.Text(low))} at the least";
    }

    /// <summary>Marks the hit, if there is one.</summary>
    /// <param name="plot">A plot of the rear load, drawn already.</param>
    /// <param name="view">The launch.</param>
    public static void MarkHit(Plot plot, LaunchView view)
    {
        Scale force = view.Readout.Force;
        if (view["hit_n"] is { } hit && view["hit_time_s"] is { } hitAt && HasHit(view, hit))
        {
            plot.Mark(hitAt, hit / force.Factor, $"hit {force.Text(hit)}", Theme.Rear);
        }
    }

    private static bool HasHit(LaunchView view, double hit) => !view.Readout.Force.IsZero(hit - view.Run.Solution.Car.Standing.RearLoad);

    // A run may end while the load still rises.
    private static bool HasLow(LaunchView view) => view["hit_time_s"] < view["lowest_rear_load_after_hit_time_s"];

    /// <summary>Draws the loads.</summary>
    /// <param name="page">The page.</param>
    /// <param name="area">The area between the axes.</param>
    /// <param name="time">The time axis.</param>
    /// <param name="front">Whether the front tyres' load is drawn too.</param>
    public static Plot Draw(ChartPage page, OxyRect area, TimeAxis time, bool front)
    {
        LaunchView view = page.View;
        Scale force = view.Readout.Force;
        Standing standing = view.Run.Solution.Car.Standing;
        DataPoint[] rearLoad = view.Course.Against((in Observation o) => o.RearLoad, force);
        DataPoint[] frontLoad = front ? view.Course.Against((in Observation o) => o.FrontLoad, force) : [];
        double rearStanding = standing.RearLoad / force.Factor, frontStanding = standing.FrontLoad / force.Factor;
        var extent = Extent.Of(
            rearLoad.Concat(frontLoad).Select(point => point.Y).Append(rearStanding).Append(front ? frontStanding : 0), Least * rearStanding);
        Plot plot = page.Plot(area, time, extent, $"{(front ? "Tyre loads, both tyres of an axle" : "Rear tyre load")}, {force.Unit}");
        Curve still = plot.Level(rearStanding, Pen.Reference with { Color = Theme.Rear });
        Curve? frontStill = front ? plot.Level(frontStanding, Pen.Reference with { Color = Theme.Front }) : null;
        Curve ahead = plot.Line(frontLoad, Pen.Front), behind = plot.Line(rearLoad, Pen.Rear);
        plot.Draw();
        MarkHit(plot, view);
        if (view["lowest_rear_load_after_hit_n"] is { } low && view["lowest_rear_load_after_hit_time_s"] is { } lowAt && HasLow(view))
        {
            plot.Mark(lowAt, low / force.Factor, $"low point {force.Text(low)}", Theme.Rear, above: false);
        }

        plot.Name(still, front ? $"rear standing {force.Text(standing.RearLoad)}" : $"standing {force.Text(standing.RearLoad)}");
        if (frontStill is not null)
        {
            plot.Name(frontStill, $"front standing {force.Text(standing.FrontLoad)}");
            plot.Name(ahead, "front tyres");
            plot.Name(behind, "rear tyres");
        }

        return plot;
    }
}
