using LaunchSim.Charts.Drawing;
using LaunchSim.Dynamics;
using LaunchSim.Geometry;
using LaunchSim.Launch;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using OxyPlot;

namespace LaunchSim.Charts.Launch;

/// <summary>How percent, instant centre and pinion move through the launch.</summary>
internal sealed class InstantCentreChart : LaunchChart
{
    // A centre this many wheelbases away, and percent this far from the standing one, leave the frame.
    private const double FarAway = 3, FarPercent = 300;

    public override string Name => "instant-centre";

    public override string Title(LaunchView view)
    {
        double standing = view.Run.Solution.Car.Line.Percent;
        double highest = view.Course.Largest((in Observation o) => o.AntiSquatPercent), lowest = -view.Course.Largest((in Observation o) => -o.AntiSquatPercent);
        if (double.IsNaN(highest) || !double.IsFinite(standing))
        {
            return StaticLineWords.Percent(standing) + " standing";
        }

        double far = highest - standing >= standing - lowest ? highest : lowest;
        return Readout.Percent.IsZero(far - standing) ? $"Percent stays at {Readout.Percent.Text(standing)}"
            : Math.Abs(far - standing) > FarPercent ? $"Percent goes from {Readout.Percent.Text(standing)} standing out of all bounds"
            : $"Percent goes from {Readout.Percent.Text(standing)} standing to {Readout.Percent.Text(far)} at the farthest";
    }

    public override string Explanation(LaunchView view) =>
        "All three move as body and axle move against each other. What is too far away to be drawn leaves a gap.";

    public override void Draw(ChartPage page)
    {
        LaunchView view = page.View;
        Scale place = view.Readout.Place;
        StandingCar car = view.Run.Solution.Car;
        StaticLine line = car.Line;
        double percent = double.IsFinite(line.Percent) ? line.Percent : 100, reach = FarAway * car.Standing.Wheelbase;

        DataPoint[] percents = Near(view.Course.Against((in Observation o) => o.AntiSquatPercent, Readout.Percent), percent, FarPercent);
        DataPoint[] aheads = Near(view.Course.Against((in Observation o) => o.InstantCentreAhead, place), 0, reach / place.Factor);
        DataPoint[] ups = Near(view.Course.Against((in Observation o) => o.InstantCentreUp, place), 0, reach / place.Factor);
        double standing = car.PinionAngle ?? 0;
        DataPoint[] pinion = view.Course.Against((in Observation o) => standing + o.PinionChange, Readout.Angle);

        var lanes = new EventLanes(view, []);
        OxyRect[] rows = page.Rows(lanes, 1, 1, 0.7);
        TimeAxis time = page.Time();
        Plot first = page.Plot(rows[0], page.Time(named: false), Extent.Of(percents.Select(point => point.Y).Append(100), 100), "Percent anti-squat, %");
        Curve hundred = first.Level(100, Pen.Reference), course = first.Line(percents, Pen.Rear);
        first.Draw();
        first.Name(course, "percent");
        first.Name(hundred, "100 %: neither apart nor together");

        Plot second = page.Plot(rows[1], page.Time(named: false), Extent.Of(aheads.Concat(ups).Select(point => point.Y), view.Readout.IsShop ? 10 : 250), $"Instant centre, {place.Unit}");
        Curve far = second.Line(aheads, Pen.Rear), high = second.Line(ups, new Pen(Theme.Fourth, 2.4));
        second.Draw();
        second.Name(far, "ahead of the rear axle");
        second.Name(high, "above the ground");
        if (aheads.All(point => !double.IsFinite(point.Y)))
        {
            _ = second.Labels.Place("far away: the bars are parallel or nearly so", new ScreenPoint(second.Area.Center.X, second.Area.Center.Y), new LabelStyle { On = true });
        }

        Plot third = page.Plot(rows[2], time, Extent.Of(pinion.Select(point => point.Y), 2), $"Pinion {(car.PinionAngle is null ? "turn since standing" : "angle against the body")}, °: nose up above zero");
        Curve turn = third.Line(pinion, Pen.Rear);
        third.Draw();
        third.Name(turn, "pinion");
        page.Finish(time, first, second, third);
    }

    // What goes farther than that is on its way to infinity and leaves a gap.
    private static DataPoint[] Near(DataPoint[] points, double middle, double reach) =>
        [.. points.Select(point => Math.Abs(point.Y - middle) <= reach ? point : new DataPoint(point.X, double.NaN))];
}
