using LaunchSim.Charts.Drawing;
using LaunchSim.Charts.SideViews;
using LaunchSim.Geometry;
using LaunchSim.Reports.Words;
using LaunchSim.Vehicle;
using OxyPlot;

namespace LaunchSim.Charts.Overlay;

/// <summary>
/// Side views over one another, rear wheel centre on rear wheel centre: the first as it is drawn alone, of the others the
/// bars, the line to the instant centre and that itself, each in its own line. One that looks like the first is not drawn
/// again, and that is said.
/// </summary>
internal static class OverlaySideView
{
    // Nearer than that two points are one, m.
    private const double Alike = 0.0005;

    private const double Note = 18, Foot = 10, LabelRoom = 30;

    /// <summary>Draws them.</summary>
    /// <param name="canvas">Where to.</param>
    /// <param name="area">The area.</param>
    /// <param name="view">The launches.</param>
    /// <returns>The labels on them.</returns>
    public static Labels Draw(IRenderContext canvas, OxyRect area, OverlayView view)
    {
        SideViewScene[] scenes = [.. view.Launches.Select(launch => SideViewScene.Of(launch.View.Run.Scenario, launch.View.Run.Solution.Car))];
        int[] others = [.. Enumerable.Range(1, scenes.Length - 1).Where(i => !Same(scenes[0], scenes[i]))];
        canvas.Text(Said(view, others), new ScreenPoint(area.Left, area.Bottom - Note), Theme.Small, Theme.Muted);
        SideViewWindow window = Union(scenes);
        double width = area.Width, tall = Math.Min(area.Height - Note, (width * window.Tall / window.Width) + Foot + LabelRoom);
        var inner = new OxyRect(area.Left, area.Top + ((area.Height - Note - tall) / 2), width, tall);
        var projection = new Projection(new OxyRect(inner.Left, inner.Top, inner.Width, Math.Max(1, inner.Height - Foot)), window);
        var labels = new Labels(canvas, inner);
        var first = new LinePainter(canvas, scenes[0], projection);
        var car = new CarPainter(canvas, scenes[0], projection);
        car.Background(hasBody: true);
        first.Neutral();
        if (scenes[0].Line is { } line)
        {
            first.Percent(line);
        }

        car.Surroundings();
        first.Gravity();
        car.Linkage();
        first.Centre();
        foreach (int i in others)
        {
            Outline(canvas, projection, scenes[i], view.Launches[i].Pen);
        }

        foreach (ScreenPoint[] drawn in first.Drawn)
        {
            labels.Avoid(drawn);
        }

        Keep(labels, projection, scenes);
        Name(labels, projection, scenes[0], view.Launches[0], first.NeutralEnd is null ? null : "neutral line, 100 %", first.NeutralEnd);
        foreach (int i in others)
        {
            Name(labels, projection, scenes[i], view.Launches[i], null, null);
        }

        return labels;
    }

    private static string Said(OverlayView view, int[] others)
    {
        string[] same = [.. view.Launches.Select((launch, i) => (launch, i)).Where(one => one.i > 0 && !others.Contains(one.i)).Select(one => one.launch.Name)];
        return same.Length == 0 ? "Standing cars, rear wheel on rear wheel. " + BodyShape.Note
            : $"The standing car of {string.Join(", ", same)} looks the same from the side. {BodyShape.Note}";
    }

    private static void Outline(IRenderContext canvas, Projection projection, SideViewScene scene, Pen pen)
    {
        foreach (SceneBar bar in scene.Bars)
        {
            if (bar is { Axle: { } axle, Body: { } body })
            {
                Line(projection.At(axle), projection.At(body), pen.Of(2.6));
                Ring(axle);
                Ring(body);
            }
        }

        if (PercentEnd(projection, scene) is { } end)
        {
            Line(projection.At(0, 0), end, pen.Of(1.6));
        }

        if (SideViewWindow.InstantCentre(scene) is { } centre && projection.Shows(centre))
        {
            canvas.Ring(projection.At(centre), 7, pen.Color, 2);
        }

        foreach (SceneWheel wheel in new[] { scene.RearWheel, scene.FrontWheel }.OfType<SceneWheel>().Where(wheel => projection.Shows(wheel.Centre)))
        {
            canvas.Dot(projection.At(wheel.Centre), 2.5, pen.Color);
        }

        if (scene.CentreOfGravity is { } gravity && projection.Shows(gravity))
        {
            canvas.Ring(projection.At(gravity), 5, pen.Color, 1.5);
        }

        void Ring(Point end)
        {
            if (projection.Shows(end))
            {
                canvas.Ring(projection.At(end), 4, pen.Color, 1.6);
            }
        }

        void Line(ScreenPoint from, ScreenPoint to, Pen own)
        {
            if (Clip.Line(projection.Area, ref from, ref to))
            {
                canvas.Path([from, to], own.Color, own.Thickness, own.Dash);
            }
        }
    }

    // Where the line from the contact patch to the instant centre ends: there, or far ahead where there is none near.
    private static ScreenPoint? PercentEnd(Projection projection, SideViewScene scene) =>
        scene.Line is not { } line || !double.IsFinite(line.Slope) ? null
            : SideViewWindow.InstantCentre(scene) is { } centre && projection.Shows(centre) ? projection.At(centre)
            : projection.At(scene.Wheelbase ?? 1, line.Slope * (scene.Wheelbase ?? 1));

    private static void Name(Labels labels, Projection projection, SideViewScene scene, Overlaid launch, string? neutral, ScreenPoint? neutralEnd)
    {
        if (scene.Line is { } line && PercentEnd(projection, scene) is { } end)
        {
            ScreenPoint from = projection.At(0, 0);
            _ = Clip.Line(projection.Area, ref from, ref end);
            _ = labels.Offer($"{launch.Name}: {StaticLineWords.Percent(line.Percent)}", end, new LabelStyle { Color = launch.Pen.Color, Weight = Theme.Bold, Size = Theme.Body, Gap = 11, Directions = [90, 60, 30, 0, 270, 300, 330] });
        }

        if (neutral is not null && neutralEnd is { } at)
        {
            _ = labels.Offer(neutral, at, new LabelStyle { Directions = [0, 340, 20, 270, 90] });
        }
    }

    private static void Keep(Labels labels, Projection projection, IEnumerable<SideViewScene> scenes)
    {
        foreach (Point point in scenes.SelectMany(Points).Where(point => projection.Shows(point)))
        {
            ScreenPoint at = projection.At(point);
            labels.Keep(new OxyRect(at.X - 6, at.Y - 6, 12, 12));
        }

        labels.Avoid([new(projection.Area.Left, projection.Ground), new(projection.Area.Right, projection.Ground)]);
    }

    private static SideViewWindow Union(SideViewScene[] scenes)
    {
        SideViewWindow window = SideViewWindow.Whole(scenes[0]);
        foreach (SideViewScene scene in scenes.Skip(1))
        {
            SideViewWindow other = SideViewWindow.Whole(scene);
            window = new SideViewWindow(Math.Min(window.Left, other.Left), Math.Min(window.Bottom, other.Bottom), Math.Max(window.Right, other.Right), Math.Max(window.Top, other.Top));
        }

        return scenes[0].Wheelbase is { } wheelbase ? window with { Top = Math.Max(window.Top, BodyShape.Height * wheelbase) } : window;
    }

    private static bool Same(SideViewScene one, SideViewScene other)
    {
        Point[] a = [.. Points(one)], b = [.. Points(other)];
        return a.Length == b.Length && a.Zip(b).All(pair => Math.Abs(pair.First.Ahead - pair.Second.Ahead) < Alike && Math.Abs(pair.First.Up - pair.Second.Up) < Alike);
    }

    private static IEnumerable<Point> Points(SideViewScene scene) =>
        scene.Bars.SelectMany(bar => new[] { bar.Axle, bar.Body })
            .Concat(new[] { scene.RearWheel?.Centre, scene.FrontWheel?.Centre, scene.CentreOfGravity, scene.WheelieBar })
            .OfType<Point>().Concat(scene.Units.SelectMany(unit => new[] { unit.Axle, unit.Body })).Concat(scene.Ballast);
}
