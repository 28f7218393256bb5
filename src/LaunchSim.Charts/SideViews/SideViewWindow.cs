using LaunchSim.Vehicle;

namespace LaunchSim.Charts.SideViews;

/// <summary>The piece of the world that a drawing shows, m, as <see cref="SideViewScene"/> counts.</summary>
/// <param name="Left">Its rear edge, ahead of the rear wheel centre.</param>
/// <param name="Bottom">Its lower edge, above the ground.</param>
/// <param name="Right">Its front edge, ahead of the rear wheel centre.</param>
/// <param name="Top">Its upper edge, above the ground.</param>
internal readonly record struct SideViewWindow(double Left, double Bottom, double Right, double Top)
{
    // In wheelbases: how far the car itself reaches when nothing else is known, how far a point may be out of the way and
    // still be shown, and how far an instant centre may. Beyond, an arrow at the edge is clearer than a small car.
    private const double Deepest = 0.1, Overhang = 0.175, Height = 0.26, GuessedWheelbase = 2.6;

    /// <summary>Width, m.</summary>
    public double Width => Right - Left;

    /// <summary>Height, m.</summary>
    public double Tall => Top - Bottom;

    /// <summary>Whether a point is in it.</summary>
    /// <param name="point">The point.</param>
    public bool Holds(Point point) => point.Ahead >= Left && point.Ahead <= Right && point.Up >= Bottom && point.Up <= Top;

    /// <summary>Makes room for a point.</summary>
    /// <param name="point">The point.</param>
    /// <param name="around">Room around it, m.</param>
    public SideViewWindow With(Point point, double around = 0) => new(
        Math.Min(Left, point.Ahead - around), Math.Min(Bottom, point.Up - around), Math.Max(Right, point.Ahead + around), Math.Max(Top, point.Up + around));

    /// <summary>The whole car, with the instant centre where that is near.</summary>
    /// <param name="scene">The scene.</param>
    public static SideViewWindow Whole(SideViewScene scene)
    {
        double wheelbase = scene.Wheelbase ?? GuessedWheelbase;
        var window = new SideViewWindow(-Overhang * wheelbase, 0, (1 + Overhang) * wheelbase, Height * wheelbase);
        var points = new SideViewWindow(-0.9 * wheelbase, -0.3 * wheelbase, 1.6 * wheelbase, 0.8 * wheelbase);
        foreach (SceneWheel? wheel in new[] { scene.RearWheel, scene.FrontWheel })
        {
            if (wheel is not null && points.Holds(wheel.Centre) && wheel.Radius < wheelbase)
            {
                window = window.With(wheel.Centre with { Up = wheel.Radius }, wheel.Radius) with { Bottom = window.Bottom };
            }
        }

        foreach (Point point in Points(scene).Where(points.Holds))
        {
            window = window.With(point, 0.02 * wheelbase) with { Bottom = Math.Min(window.Bottom, point.Up) };
        }

        if (scene.Line is { Slope: < 0 and > double.NegativeInfinity, Slope: var slope })
        {
            // Below 0 % the line runs into the ground ahead of the axle.
            window = window.With(new Point(wheelbase, Math.Max(slope, -Deepest) * wheelbase));
        }

        var centres = new SideViewWindow(-0.6 * wheelbase, -0.25 * wheelbase, 1.5 * wheelbase, 0.6 * wheelbase);
        return InstantCentre(scene) is { } centre && centres.Holds(centre) ? window.With(centre, 0.02 * wheelbase) : window;
    }

    /// <summary>The linkage with the wheel's centre, larger.</summary>
    /// <param name="scene">The scene.</param>
    /// <param name="hasUnits">Whether springs and dampers are in it too.</param>
    public static SideViewWindow Rear(SideViewScene scene, bool hasUnits = true)
    {
        double wheelbase = scene.Wheelbase ?? GuessedWheelbase;
        var window = new SideViewWindow(-0.03 * wheelbase, 0, 0.1 * wheelbase, 0.15 * wheelbase);
        var points = new SideViewWindow(-0.35 * wheelbase, 0, 0.6 * wheelbase, 0.5 * wheelbase);
        IEnumerable<Point> near = (hasUnits ? RearPoints(scene) : LinkagePoints(scene)).Concat(scene.RearWheel is { } wheel ? [wheel.Centre] : []);
        foreach (Point point in near.Where(points.Holds))
        {
            window = window.With(point, 0.02 * wheelbase) with { Bottom = 0 };
        }

        return window;
    }

    /// <summary>The instant centre, where there is one.</summary>
    /// <param name="scene">The scene.</param>
    public static Point? InstantCentre(SideViewScene scene) =>
        scene.Line is { } line && double.IsFinite(line.InstantCentreAhead) && double.IsFinite(line.InstantCentreUp)
            ? new Point(line.InstantCentreAhead, line.InstantCentreUp) : null;

    private static IEnumerable<Point> LinkagePoints(SideViewScene scene) =>
        scene.Bars.SelectMany(bar => new[] { bar.Axle, bar.Body }).OfType<Point>()
            .Concat(scene.Holes.Where(hole => hole.IsOfLinkage).Select(hole => hole.At));

    private static IEnumerable<Point> RearPoints(SideViewScene scene) =>
        LinkagePoints(scene).Concat(scene.Holes.Select(hole => hole.At)).Concat(scene.Units.SelectMany(unit => new[] { unit.Axle, unit.Body }));

    private static IEnumerable<Point> Points(SideViewScene scene) =>
        RearPoints(scene).Concat(scene.Ballast)
            .Concat(scene.CentreOfGravity is { } centre ? [centre, centre with { Up = centre.Up + scene.CentreOfGravityDoubt }] : [])
            .Concat(scene.WheelieBar is { } wheel ? [wheel] : []);
}
