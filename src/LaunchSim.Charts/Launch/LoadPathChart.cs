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
    // The stack is kept free of names in columns of this width.
    private const double Column = 12;

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
        (DataPoint[] Upper, DataPoint[] Lower)[] lines = [.. edges.Select(edge => (Edge(edge.Upper), Edge(edge.Lower)))];
        for (int path = 0; path < Paths.Length; path++)
        {
            plot.Strip(lines[path].Upper, lines[path + 1].Upper, Paths[path].Fill);
            plot.Strip(lines[path].Lower, lines[path + 1].Lower, Paths[path].Fill);
        }

        foreach ((DataPoint[] upper, DataPoint[] lower) in lines[1..])
        {
            _ = plot.Line(upper, new Pen(Theme.Muted, 0.5));
            _ = plot.Line(lower, new Pen(Theme.Muted, 0.5));
        }

        Curve still = plot.Level(standing / force.Factor, Pen.Reference with { Color = Theme.Ink });
        Curve sum = plot.Line(load, Pen.Rear.Of(3));
        plot.Draw();
        RearLoadPanel.MarkHit(plot, view);
        bool[] isNamed = [.. Paths.Select((path, i) =>
            plot.TryNameStrip(lines[i].Upper, lines[i + 1].Upper, NameOf(path, view.Car)) || plot.TryNameStrip(lines[i].Lower, lines[i + 1].Lower, NameOf(path, view.Car)))];
        plot.Name(sum, "sum: rear tyre load");
        plot.Name(still, $"standing {force.Text(standing)}");

        // What is too thin for its name gets it outside of the stack, with a line to it: inside it would name another.
        double kept = 0;
        for (int i = 0; i < load.Length; i++)
        {
            ScreenPoint top = plot.At(load[i].X, lines[^1].Upper[i].Y), foot = plot.At(load[i].X, lines[^1].Lower[i].Y);
            if (i == 0 || top.X - kept >= Column)
            {
                kept = top.X;
                plot.Labels.Keep(new OxyRect(top.X - (Column / 2), top.Y, Column, foot.Y - top.Y));
            }
        }

        for (int i = 0; i < Paths.Length; i++)
        {
            if (!isNamed[i])
            {
                bool isAbove = Thickness(edges[i].Upper, edges[i + 1].Upper) >= Thickness(edges[i].Lower, edges[i + 1].Lower);
                plot.PointAtStrip(isAbove ? lines[i].Upper : lines[i].Lower, isAbove ? lines[i + 1].Upper : lines[i + 1].Lower, NameOf(Paths[i], view.Car));
            }
        }

        lanes.Draw(page.Canvas, plot);
        page.Finish(time, plot);
    }

    private static string NameOf(LoadPath path, Car car) => path.Name switch
    {
        "links" when car.Rear.Linkage is LadderBar => "ladder bars",
        "wheelie bar and inertia" when car.Rear.WheelieBar is null => "axle's inertia",
        _ => path.Name,
    };

    private static double Thickness(double[] one, double[] other)
    {
        double most = 0;
        for (int i = 0; i < one.Length; i++)
        {
            most = Math.Max(most, Math.Abs(one[i] - other[i]));
        }

        return most;
    }

    private sealed record LoadPath(string Name, string Figure, ObservationReader Read, OxyColor Fill);
}
