using LaunchSim.Charts.Drawing;
using LaunchSim.Dynamics;
using LaunchSim.Launch;
using LaunchSim.Reports.Numbers;
using LaunchSim.Vehicle;
using OxyPlot;

namespace LaunchSim.Charts.Overlay;

/// <summary>What each load path gives the rear tyres more or less than in the first launch, at the same instant.</summary>
internal sealed class LoadPathOverlay : OverlayChart
{
    private const double Step = 1e-3, LeastShare = 0.1;

    private static readonly string[] Figures = ["hit_via_links_n", "hit_via_springs_n", "hit_via_dampers_n", "hit_via_other_n"];

    private static readonly ObservationReader[] Paths =
    [
        (in Observation o) => o.LoadViaLinks,
        (in Observation o) => o.LoadViaSprings,
        (in Observation o) => o.LoadViaDampers,
        (in Observation o) => o.LoadViaOther,
    ];

    public override string Name => "load-paths";

    public override string Title(OverlayView view) =>
        $"In the hit, from {view.Launches[0].Name}: {string.Join("; ", view.Launches.Skip(1).Select(other => Most(view.Launches[0], other, view.Readout, view.Launches.Count > 2 ? 1 : 2)))}";

    public override string Explanation(OverlayView view) => "The paths of the rear tyres' load, at the same instant: above zero they give more or take less, below zero the other way.";

    private static string Most(Overlaid first, Overlaid other, Readout readout, int most)
    {
        string[] names = Names(other.View.Car);
        (string Name, double Change)[] changes = [.. Figures.Select((figure, i) => (names[i], (other.View[figure] - first.View[figure]) ?? 0)).OrderByDescending(path => Math.Abs(path.Item2))];
        return readout.Force.IsZero(changes[0].Change) ? $"{other.Name} has the same" : $"{other.Name} {string.Join(", ", changes.Take(most).Where(path => !readout.Force.IsZero(path.Change)).Select(path => $"{readout.Force.WithSign(path.Change)} by the {path.Name}"))}";
    }

    private static string[] Names(Car car) =>
        [car.Rear.Linkage is LadderBar ? "ladder bars" : "links", "springs", "dampers and stops", car.Rear.WheelieBar is null ? "axle's inertia" : "wheelie bar and inertia"];

    public override void Draw(OverlayPage page)
    {
        OverlayView view = page.View;
        page.Legend(new ScreenPoint(page.Body.Left, page.Body.Top), page.Body.Width, hasLines: false);
        OxyRect[] areas = page.Grid(page.LegendHeight, view.Launches.Count - 1);
        for (int i = 1; i < view.Launches.Count; i++)
        {
            TimeAxis time = page.Time();
            Plot plot = Row(page, areas[i - 1], time, view.Launches[0], view.Launches[i]);
            page.Caption(time.Squeezed is null || areas.Length == 1 ? time.Caption : OverlayPage.ShortCaption(time), plot);
        }
    }

    private static Plot Row(OverlayPage page, OxyRect area, TimeAxis time, Overlaid first, Overlaid other)
    {
        Scale force = page.View.Readout.Force;
        DataPoint[][] curves = Differences(first.View.Run.Solution, other.View.Run.Solution, force.Factor);
        double least = LeastShare * first.View.Run.Solution.Car.Standing.RearLoad / force.Factor;
        Plot plot = page.Plot(area, time, Extent.Of(curves.SelectMany(curve => curve).Select(point => point.Y), least), $"Rear tyre load by path, {other.Name} less {first.Name}, {force.Unit}");
        Curve[] drawn = [.. curves.Select((curve, i) => plot.Line(curve, OverlayPens.Paths[i]))];
        plot.Draw();
        string[] names = Names(other.View.Car);
        for (int i = 0; i < drawn.Length; i++)
        {
            plot.Name(drawn[i], names[i]);
        }

        return plot;
    }

    private static DataPoint[][] Differences(LaunchSolution first, LaunchSolution other, double factor)
    {
        int count = first.Steps == 0 || other.Steps == 0 ? 0 : SampleGrid.Rows(Math.Min(first.Duration, other.Duration), Step);
        var curves = new DataPoint[Paths.Length][];
        for (int path = 0; path < curves.Length; path++)
        {
            curves[path] = new DataPoint[count];
        }

        for (int i = 0; i < count; i++)
        {
            double time = Math.Min(SampleGrid.Time(i, Step), Math.Min(first.Duration, other.Duration));
            first.At(time, out Observation one);
            other.At(time, out Observation two);
            for (int path = 0; path < curves.Length; path++)
            {
                curves[path][i] = new DataPoint(time, (Paths[path](two) - Paths[path](one)) / factor);
            }
        }

        return curves;
    }
}
