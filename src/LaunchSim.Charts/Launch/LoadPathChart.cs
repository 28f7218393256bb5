using LaunchSim.Charts.Drawing;
using LaunchSim.Dynamics;
using LaunchSim.Launch;
using LaunchSim.Reports.Numbers;
using LaunchSim.Vehicle;
using OxyPlot;

namespace LaunchSim.Charts.Launch;

/// <summary>
/// The rear tyre load by the path on which it comes: what adds to the standing car's load is stacked above it, what takes
/// from it below, and the sum of all is the load.
/// </summary>
internal sealed class LoadPathChart : LaunchChart
{
    // Pale enough for words, and of different lightness for a grey print.
    private static readonly LoadPath[] Paths =
    [
        new("links", "hit_via_links_n", (in Observation o) => o.LoadViaLinks, OxyColor.FromRgb(0x86, 0xAE, 0xC9)),
        new("springs", "hit_via_springs_n", (in Observation o) => o.LoadViaSprings, OxyColor.FromRgb(0xF2, 0xD6, 0xAE)),
        new("dampers", "hit_via_dampers_n", (in Observation o) => o.LoadViaDampers, OxyColor.FromRgb(0xA8, 0xCB, 0xB4)),
        new("wheelie bar and inertia", "hit_via_other_n", (in Observation o) => o.LoadViaOther, OxyColor.FromRgb(0xDD, 0xD2, 0xE8)),
    ];

    public override string Name => "rear-load-by-path";

    /// <summary>The edges of each path's parts above and below the standing load, N: the larger adds to the load.</summary>
    /// <param name="course">The launch.</param>
    /// <param name="standing">The standing car's rear load, N.</param>
    public static (double[] Upper, double[] Lower)[] Stack(Course course, double standing)
    {
        ReadOnlySpan<Observation> seen = course.Seen;
        int count = seen.Length;
        var edges = new (double[] Upper, double[] Lower)[Paths.Length + 1];
        for (int path = 0; path <= Paths.Length; path++)
        {
            edges[path] = (new double[count], new double[count]);
        }

        for (int i = 0; i < count; i++)
        {
            edges[0].Upper[i] = edges[0].Lower[i] = standing;
            for (int path = 0; path < Paths.Length; path++)
            {
                double load = Paths[path].Read(seen[i]);
                edges[path + 1].Upper[i] = edges[path].Upper[i] + Math.Max(0, load);
                edges[path + 1].Lower[i] = edges[path].Lower[i] + Math.Min(0, load);
            }
        }

        return edges;
    }

    public override string Title(LaunchView view)
    {
        Scale force = view.Readout.Force;
        var parts = Paths.Select(path => (Name: NameOf(path, view.Car), Load: view[path.Figure])).Where(part => part.Load is { } load && !force.IsZero(load))
            .OrderByDescending(part => Math.Abs(part.Load!.Value)).Take(2).ToArray();
        return parts.Length == 0
            ? "The rear tyres' load stays as it is standing"
            : "In the hit the " + string.Join(" and the ", parts.Select(part =>
                $"{part.Name} {(part.Load > 0 ? "add" : "take")} {force.Text(Math.Abs(part.Load!.Value))}"));
    }

    public override string Explanation(LaunchView view) =>
        "What adds to the standing car's rear load is stacked up from it, what takes from it down; the line is the sum, the load of both rear tyres.";

    public override void Draw(ChartPage page)
    {
        LaunchView view = page.View;
        Scale force = view.Readout.Force;
        double standing = view.Run.Solution.Car.Standing.RearLoad;
        (double[] Upper, double[] Lower)[] edges = Stack(view.Course, standing);
        DataPoint[] load = view.Course.Against((in Observation o) => o.RearLoad, force);
        var lanes = new EventLanes(view, EventLanes.Loads);
        TimeAxis time = page.Time();
        var extent = Extent.Of(edges[^1].Upper.Concat(edges[^1].Lower).Append(standing).Select(newtons => newtons / force.Factor), 0.2 * standing / force.Factor);
        Plot plot = page.Plot(page.Rows(lanes, 1)[0], time, extent, $"Rear tyre load, both tyres, {force.Unit}");
        DataPoint[] Edge(double[] newtons) => [.. newtons.Zip(load, (value, at) => new DataPoint(at.X, value / force.Factor))];
        for (int path = 0; path < Paths.Length; path++)
        {
            plot.Strip(Edge(edges[path].Upper), Edge(edges[path + 1].Upper), Paths[path].Fill);
            plot.Strip(Edge(edges[path].Lower), Edge(edges[path + 1].Lower), Paths[path].Fill);
        }

        for (int path = 1; path <= Paths.Length; path++)
        {
            _ = plot.Line(Edge(edges[path].Upper), new Pen(Theme.Muted, 0.5));
            _ = plot.Line(Edge(edges[path].Lower), new Pen(Theme.Muted, 0.5));
        }

        Curve still = plot.Level(standing / force.Factor, Pen.Reference with { Color = Theme.Ink });
        Curve sum = plot.Line(load, Pen.Rear.Of(3));
        plot.Draw();
        if (view["hit_n"] is { } hit && view["hit_time_s"] is { } hitAt)
        {
            plot.Mark(hitAt, hit / force.Factor, $"hit {force.Text(hit)}", Theme.Rear);
        }

        for (int path = 0; path < Paths.Length; path++)
        {
            NameArea(plot, view.Course, edges[path], edges[path + 1], force, NameOf(Paths[path], view.Car));
        }

        plot.Name(sum, "sum: rear tyre load");
        plot.Name(still, $"standing {force.Text(standing)}");
        lanes.Draw(page.Canvas, plot);
        page.Finish(time, plot);
    }

    private static string NameOf(LoadPath path, Car car) => path.Name switch
    {
        "links" when car.Rear.Linkage is LadderBar => "ladder bars",
        "wheelie bar and inertia" when car.Rear.WheelieBar is null => "axle's inertia",
        _ => path.Name,
    };

    // Where it is thickest, or near there.
    private static void NameArea(Plot plot, Course course, (double[] Upper, double[] Lower) inner, (double[] Upper, double[] Lower) outer, Scale force, string name)
    {
        const int places = 40;
        var anchors = new List<(ScreenPoint Point, double Thickness)>();
        for (int place = 0; place < places && course.Seen.Length > 0; place++)
        {
            int i = (int)((course.Seen.Length - 1) * (place + 0.5) / places);
            double up = outer.Upper[i] - inner.Upper[i], down = inner.Lower[i] - outer.Lower[i];
            double middle = (up >= down ? outer.Upper[i] + inner.Upper[i] : outer.Lower[i] + inner.Lower[i]) / 2;
            anchors.Add((plot.At(course.Seen[i].Time, middle / force.Factor), Math.Max(up, down)));
        }

        ScreenPoint[] best = [.. anchors.Where(anchor => anchor.Thickness > 0).OrderByDescending(anchor => anchor.Thickness).Select(anchor => anchor.Point).Take(6)];
        if (best.Length > 0)
        {
            _ = plot.Labels.Place(name, best, new LabelStyle { On = true, Weight = Theme.Bold });
        }
    }

    private sealed record LoadPath(string Name, string Figure, ObservationReader Read, OxyColor Fill);
}
