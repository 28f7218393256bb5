using LaunchSim.Charts.Drawing;
using LaunchSim.Charts.SideViews;
using LaunchSim.Geometry;
using LaunchSim.Reports.Words;
using LaunchSim.Vehicle;
using OxyPlot;

namespace LaunchSim.Charts.Overlay;

/// <summary>
/// The rear ends of standing cars over one another, rear wheel on rear wheel, as far ahead as their instant centres: bars,
/// line to the instant centre and that itself, each in the line of its launch; what surrounds them is the first one's. One
/// that looks like the first is not drawn again, and that is said.
/// </summary>
internal static class OverlaySideView
{
    // Nearer than that two points are one, m.
    private const double Alike = 0.0005;

    private const double Note = 20, Foot = 10, LabelRoom = 24;

    // The bars of the first, on which dashes have to be seen, and of the others.
    private const double FirstBar = 5, OtherBar = 2.6, ToCentre = 1.8;

    // The steepest line has its name above it, the others below: between two lines it would be taken for either's.
    private static readonly double[] Above = [90, 60, 120, 30, 0, 270, 300, 330], Below = [270, 300, 240, 330, 0, 90, 60, 30];

    // Where along the neutral line its name may stand, as shares of its length, best first.
    private static readonly double[] NeutralPlaces = [0.75, 0.85, 0.65, 0.95, 0.55];

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
        SideViewWindow window = Window(scenes);
        double tall = Math.Min(area.Height - Note, (area.Width * window.Tall / window.Width) + Foot + LabelRoom);
        var inner = new OxyRect(area.Left, area.Top + ((area.Height - Note - tall) / 2), area.Width, tall);
        var projection = new Projection(new OxyRect(inner.Left, inner.Top + LabelRoom, inner.Width, Math.Max(1, inner.Height - Foot - LabelRoom)), window);
        var labels = new Labels(canvas, inner);
        var lines = new LinePainter(canvas, scenes[0], projection);
        var car = new CarPainter(canvas, scenes[0], projection);
        car.Background(hasBody: false);
        lines.Neutral();
        car.Surroundings();
        Outline(canvas, labels, projection, scenes[0], view.Launches[0].Pen, FirstBar);
        foreach (int i in others)
        {
            Outline(canvas, labels, projection, scenes[i], view.Launches[i].Pen, OtherBar);
        }

        foreach (ScreenPoint[] drawn in lines.Drawn)
        {
            labels.Avoid(drawn);
        }

        Keep(labels, projection, scenes);
        int[] named = [.. others.Prepend(0).OrderByDescending(i => scenes[i].Line?.Slope ?? double.NegativeInfinity)];
        foreach (int i in named)
        {
            Name(labels, projection, scenes[i], view.Launches[i], isHighest: i == named[0]);
        }

        if (lines.NeutralEnd is { } end)
        {
            ScreenPoint start = projection.At(0, 0);
            ScreenPoint[] anchors = [.. NeutralPlaces.Select(share => new ScreenPoint(start.X + (share * (end.X - start.X)), start.Y + (share * (end.Y - start.Y))))];
            _ = labels.Place("neutral line, 100 %", anchors, new LabelStyle { Directions = [315, 300, 270, 0, 225] });
        }

        return labels;
    }

    private static string Said(OverlayView view, int[] others)
    {
        string[] same = [.. view.Launches.Select((launch, i) => (launch, i)).Where(one => one.i > 0 && !others.Contains(one.i)).Select(one => one.launch.Name)];
        return same.Length == 0 ? "Rear ends of the standing cars, to scale, front to the right."
            : $"Rear ends, to scale, front to the right; {Listed(same)} {(same.Length > 1 ? "look" : "looks")} like {view.Launches[0].Name}.";
    }

    private static string Listed(string[] names) => names.Length == 1 ? names[0] : $"{string.Join(", ", names[..^1])} and {names[^1]}";

    private static void Outline(IRenderContext canvas, Labels labels, Projection projection, SideViewScene scene, Pen pen, double thickness)
    {
        foreach (SceneBar bar in scene.Bars)
        {
            if (bar is { Axle: { } axle, Body: { } body })
            {
                Line(projection.At(axle), projection.At(body), pen.Of(thickness));
                Ring(axle, 4);
                Ring(body, 4);
            }
        }

        if (PercentEnd(projection, scene) is { } end)
        {
            Line(projection.At(0, 0), end, pen.Of(ToCentre));
        }

        if (SideViewWindow.InstantCentre(scene) is { } centre)
        {
            Ring(centre, 7);
        }

        if (scene.RearWheel is { } wheel)
        {
            Ring(wheel.Centre, 3);
        }

        void Ring(Point end, double radius)
        {
            if (projection.Shows(end))
            {
                canvas.Ring(projection.At(end), radius, pen.Color, 1.8);
            }
        }

        void Line(ScreenPoint from, ScreenPoint to, Pen own)
        {
            if (Clip.Line(projection.Area, ref from, ref to))
            {
                canvas.Path([from, to], own.Color, own.Thickness, own.Dash);
                labels.Avoid([from, to]);
            }
        }
    }

    // Where the line from the contact patch to the instant centre ends: there, or far ahead where there is none near.
    private static ScreenPoint? PercentEnd(Projection projection, SideViewScene scene) =>
        scene.Line is not { } line || !double.IsFinite(line.Slope) ? null
            : SideViewWindow.InstantCentre(scene) is { } centre && projection.Shows(centre) ? projection.At(centre)
            : projection.At(scene.Wheelbase ?? 1, line.Slope * (scene.Wheelbase ?? 1));

    private static void Name(Labels labels, Projection projection, SideViewScene scene, Overlaid launch, bool isHighest)
    {
        if (scene.Line is { } line && PercentEnd(projection, scene) is { } end)
        {
            ScreenPoint from = projection.At(0, 0);
            _ = Clip.Line(projection.Area, ref from, ref end);
            _ = labels.Place($"{launch.Name} {StaticLineWords.Percent(line.Percent)}", end, new LabelStyle { Color = launch.Pen.Color, Weight = Theme.Bold, Size = Theme.Body, Gap = 11, Directions = isHighest ? Above : Below });
        }
    }

    private static void Keep(Labels labels, Projection projection, IEnumerable<SideViewScene> scenes)
    {
        foreach (Point point in scenes.SelectMany(scene => Points(scene).Concat(SideViewWindow.InstantCentre(scene) is { } centre ? [centre] : [])).Where(point => projection.Shows(point)))
        {
            ScreenPoint at = projection.At(point);
            labels.Keep(new OxyRect(at.X - 7, at.Y - 7, 14, 14));
        }

        labels.Avoid([new(projection.Area.Left, projection.Ground), new(projection.Area.Right, projection.Ground)]);
    }

    // The rear ends with their tyres, and ahead as far as the nearest instant centres reach.
    private static SideViewWindow Window(SideViewScene[] scenes)
    {
        const double Around = 0.03, Nearest = 0.3;
        SideViewWindow window = SideViewWindow.Rear(scenes[0]);
        foreach (SideViewScene scene in scenes)
        {
            double wheelbase = scene.Wheelbase ?? 1;
            SideViewWindow own = SideViewWindow.Rear(scene), whole = SideViewWindow.Whole(scene);
            window = new SideViewWindow(Math.Min(window.Left, own.Left), Math.Min(window.Bottom, own.Bottom), Math.Max(window.Right, Math.Max(own.Right, Nearest * wheelbase)), Math.Max(window.Top, own.Top));
            if (scene.RearWheel is { } wheel && whole.Holds(wheel.Centre) && wheel.Radius < wheelbase)
            {
                window = window.With(wheel.Centre with { Up = wheel.Radius }, wheel.Radius) with { Bottom = window.Bottom };
            }

            if (SideViewWindow.InstantCentre(scene) is { } centre && whole.Holds(centre))
            {
                window = window.With(centre, Around * wheelbase);
            }
        }

        return window;
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
