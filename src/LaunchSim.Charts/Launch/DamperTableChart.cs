using LaunchSim.Charts.Drawing;
using LaunchSim.Dynamics;
using LaunchSim.Launch;
using LaunchSim.Reports.Numbers;
using LaunchSim.Vehicle;
using OxyPlot;
using OxyPlot.Axes;

namespace LaunchSim.Charts.Launch;

/// <summary>The dampers' dyno sheets, and where on them this launch is.</summary>
internal sealed class DamperTableChart : LaunchChart
{
    // The first part of a launch, in which the dampers say who comes up first, s; and the time between two dots, s.
    private const double First = 0.15, Between = 0.01;

    // As much of an axis as is worth drawing at the least: m/s, N.
    private const double LeastSpeed = 0.1, LeastForce = 100;

    private const double Gutter = 34, Words = 40;

    public override string Name => "damper-tables";

    public override string Title(LaunchView view)
    {
        Scale speed = view.Readout.ShaftSpeed, force = view.Readout.Force;
        return $"In the first 0.15 s the rear dampers {Reached((in Observation o) => o.RearDamperSpeed, (in Observation o) => o.RearDamperForce)}, the front ones {Reached((in Observation o) => o.FrontDamperSpeed, (in Observation o) => o.FrontDamperForce)}";

        string Reached(ObservationReader speedOf, ObservationReader forceOf)
        {
            return Fastest(view, speedOf) is { } most && !speed.IsZero(speedOf(most))
                ? $"{(speedOf(most) >= 0 ? "open" : "close")} at {speed.Text(Math.Abs(speedOf(most)))} against {force.Text(Math.Abs(forceOf(most)))}"
                : "stay still";
        }
    }

    public override string Explanation(LaunchView view) =>
        "The lines are the tables as set: extension solid, compression dashed. Dots are this launch, one every 10 ms: full in the first 0.15 s, rings after it.";

    public override void Draw(ChartPage page)
    {
        double width = ((page.Body.Width - Gutter) / 2) - Plot.Left - Plot.Right + 6, top = page.Body.Top + Words + Plot.Above, height = page.Body.Bottom - top - Plot.Below;
        double left = page.Body.Left + Plot.Left - 6, right = page.Body.Right - Plot.Right - width;
        End(page, new OxyRect(left, top, width, height), "rear", page.View.Car.Rear.Damper, Theme.Rear, (in Observation o) => o.RearDamperSpeed, (in Observation o) => o.RearDamperForce);
        End(page, new OxyRect(right, top, width, height), "front", page.View.Car.Front.Damper, Theme.Front, (in Observation o) => o.FrontDamperSpeed, (in Observation o) => o.FrontDamperForce);
    }

    private static void End(ChartPage page, OxyRect area, string end, DamperLaw law, OxyColor color, ObservationReader speedOf, ObservationReader forceOf)
    {
        LaunchView view = page.View;
        Scale speed = view.Readout.ShaftSpeed, force = view.Readout.Force;
        DataPoint[] path = [.. view.Course.Against(speedOf, speed).Zip(view.Course.Against(forceOf, force), (speeds, forces) => new DataPoint(speeds.Y, -forces.Y))];
        var across = Extent.Of(path.Select(point => point.X), LeastSpeed / speed.Factor);
        (DataPoint[] extension, DataPoint[] compression) = law is DamperTables tables
            ? (Row(tables.Extension, 1, across.High, speed, force), Row(tables.Compression, -1, -across.Low, speed, force))
            : ([], []);
        var extent = Extent.Of(path.Concat(extension).Concat(compression).Select(point => point.Y), LeastForce / force.Factor);
        var axis = new LinearAxis { Position = AxisPosition.Bottom, Minimum = across.Low, Maximum = across.High, IntervalLength = 56 };
        Plot plot = page.Plot(area, axis, extent, $"Resisting force, one damper, {force.Unit}");
        Curve open = plot.Line(extension, new Pen(color, 1.6)), close = plot.Line(compression, new Pen(color, 1.6, Theme.Dash));
        plot.Draw();
        Dots(page, plot, path, color);
        if (Fastest(view, speedOf) is { } most && !speed.IsZero(speedOf(most)))
        {
            ScreenPoint at = plot.At(speedOf(most) / speed.Factor, -forceOf(most) / force.Factor);
            page.Canvas.Ring(at, 6, Theme.Ink, 1.5);
            page.Canvas.Dot(at, 4, Theme.Ink);
            plot.Labels.Keep(new OxyRect(at.X - 6, at.Y - 6, 12, 12));
            _ = plot.Labels.Place($"first 0.15 s: up to\n{speed.Text(Math.Abs(speedOf(most)))}, {force.Text(Math.Abs(forceOf(most)))}", at,
                new LabelStyle { Weight = Theme.Bold, Directions = speedOf(most) > 0 ? [315, 270, 135] : [135, 90, 315], Gap = 10 });
        }

        plot.Name(open, "extension");
        plot.Name(close, "compression");

        double y = area.Top - Plot.Above - Words;
        page.Canvas.Text($"{(end == "rear" ? "Rear" : "Front")} dampers", new ScreenPoint(area.Left - Plot.Left + 6, y), Theme.Body, color, Theme.Bold);
        page.Canvas.Text(DamperSpeedChart.Shares(view, end), new ScreenPoint(area.Left - Plot.Left + 6, y + 18), Theme.Body, Theme.Ink);
        page.Canvas.Text($"{speed.Unit}: closing left of zero, opening right", new ScreenPoint(area.Right, area.Bottom + Plot.Below), Theme.Small, Theme.Muted, Theme.Normal, HorizontalAlignment.Right, VerticalAlignment.Bottom);
    }

    private static void Dots(ChartPage page, Plot plot, DataPoint[] path, OxyColor color)
    {
        LaunchView view = page.View;
        var first = new List<DataPoint>();
        var later = new List<DataPoint>();
        double next = 0;
        for (int i = 0; i < path.Length; i++)
        {
            double time = view.Course.Seen[i].Time;
            if (time >= next)
            {
                (time <= First ? first : later).Add(path[i]);
                next += Between;
            }
        }

        foreach (DataPoint point in later)
        {
            page.Canvas.Ring(plot.At(point.X, point.Y), 3, color, 1);
        }

        foreach (DataPoint point in first)
        {
            page.Canvas.Dot(plot.At(point.X, point.Y), 4, Theme.Ink);
        }
    }

    // At its fastest, either way, within the first part; none without a course.
    private static Observation? Fastest(LaunchView view, ObservationReader speedOf)
    {
        Observation? most = null;
        foreach (ref readonly Observation one in view.Course.Seen)
        {
            if (one.Time <= First && !(most is { } before && Math.Abs(speedOf(before)) >= Math.Abs(speedOf(one))))
            {
                most = one;
            }
        }

        return most;
    }

    // As far as the launch needs it, beyond the last entry by its slope.
    private static DataPoint[] Row(Table table, int sign, double to, Scale speed, Scale force)
    {
        var points = new List<DataPoint>();
        for (int i = 0; i < table.Count; i++)
        {
            if (table.X[i] / speed.Factor >= to)
            {
                break;
            }

            points.Add(new DataPoint(sign * table.X[i] / speed.Factor, sign * table.Y[i] / force.Factor));
        }

        if (table.Count > 1 && to > 0)
        {
            int last = Math.Min(points.Count, table.Count - 1);
            double slope = (table.Y[last] - table.Y[last - 1]) / (table.X[last] - table.X[last - 1]);
            double value = table.Y[last - 1] + (slope * ((to * speed.Factor) - table.X[last - 1]));
            points.Add(new DataPoint(sign * to, sign * value / force.Factor));
        }

        return [.. points];
    }
}
