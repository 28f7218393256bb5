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

    private static readonly ObservationReader[] Paths =
    [
        (in Observation o) => o.LoadViaLinks,
        (in Observation o) => o.LoadViaSprings,
        (in Observation o) => o.LoadViaDampers,
        (in Observation o) => o.LoadViaOther,
    ];

    public override string Name => "load-paths";

    public override string Title(OverlayView view) => $"Rear tyre load by path: what changes from {view.Launches[0].Name}";

    public override string Explanation(OverlayView view) =>
        $"At each instant, path by path: above zero it gives the rear tyres more than in {view.Launches[0].Name} or takes less, below zero it gives less or takes more. Both tyres together.";

    public override void Draw(OverlayPage page)
    {
        OverlayView view = page.View;
        page.Legend(new ScreenPoint(page.Body.Left, page.Body.Top), page.Body.Width);
        OxyRect[] areas = page.Rows(page.LegendHeight, [.. view.Launches.Skip(1).Select(_ => 1.0)]);
        for (int i = 1; i < view.Launches.Count; i++)
        {
            bool isLast = i + 1 == view.Launches.Count;
            TimeAxis time = page.Time(named: isLast);
            Plot plot = Row(page, areas[i - 1], time, view.Launches[0], view.Launches[i]);
            if (isLast)
            {
                page.Caption(time.Caption, plot);
            }
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
        Car car = other.View.Car;
        string[] names = [car.Rear.Linkage is LadderBar ? "ladder bars" : "links", "springs", "dampers and stops", car.Rear.WheelieBar is null ? "axle's inertia" : "wheelie bar and inertia"];
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
