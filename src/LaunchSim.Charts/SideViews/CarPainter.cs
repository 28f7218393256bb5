using LaunchSim.Charts.Drawing;
using LaunchSim.Vehicle;
using OxyPlot;

namespace LaunchSim.Charts.SideViews;

/// <summary>Draws what stands there: ground, tyres, bars, holes, springs and dampers, wheelie bar, ballast.</summary>
/// <param name="canvas">Where it is drawn.</param>
/// <param name="scene">What is drawn.</param>
/// <param name="projection">Where things are.</param>
internal sealed class CarPainter(IRenderContext canvas, SideViewScene scene, Projection projection)
{
    private const EdgeRenderingMode Exact = EdgeRenderingMode.PreferGeometricAccuracy;

    /// <summary>Draws what lies behind everything: body, tyres, ground.</summary>
    /// <param name="hasBody">Whether the faint body is drawn.</param>
    public void Background(bool hasBody)
    {
        if (hasBody && scene.Wheelbase is { } wheelbase)
        {
            canvas.DrawPolygon(BodyShape.Of(projection, wheelbase), OxyColors.Undefined, Theme.Hair, 2, Exact, null, LineJoin.Round);
        }

        Wheel(scene.RearWheel, 0);
        Wheel(scene.FrontWheel, scene.Wheelbase);
        Line(new ScreenPoint(projection.Area.Left, projection.Ground), new ScreenPoint(projection.Area.Right, projection.Ground), Theme.Muted, 1.5);
    }

    /// <summary>Draws springs, dampers, wheelie bar and ballast.</summary>
    public void Surroundings()
    {
        foreach (SceneUnit unit in scene.Units)
        {
            Unit(unit);
        }

        if (scene.WheelieBar is { } wheel)
        {
            WheelieBar(wheel);
        }

        foreach (Point at in scene.Ballast.Where(at => projection.Shows(at)))
        {
            ScreenPoint point = projection.At(at);
            canvas.DrawRectangle(new OxyRect(point.X - 4, point.Y - 4, 8, 8), Theme.Muted, Theme.Paper, 1, Exact);
        }
    }

    /// <summary>Draws the bars with their holes.</summary>
    public void Linkage()
    {
        Housing();
        foreach (SceneBar bar in scene.Bars)
        {
            if (bar is { Axle: { } axle, Body: { } body })
            {
                Line(projection.At(axle), projection.At(body), Theme.Rear, 4);
            }
        }

        foreach (SceneHole hole in scene.Holes.Where(hole => !hole.IsInUse && hole.IsOfLinkage && projection.Shows(hole.At)))
        {
            canvas.Ring(projection.At(hole.At), 3, Theme.Rear, 1.2);
        }

        foreach (SceneBar bar in scene.Bars)
        {
            foreach (Point end in new[] { bar.Axle, bar.Body }.OfType<Point>().Where(end => projection.Shows(end)))
            {
                Pivot(end);
            }
        }
    }

    private void Pivot(Point end)
    {
        // The hole in use is filled; a pivot without a choice of holes is a ring.
        if (scene.Holes.Any(hole => hole.IsInUse && hole.At == end))
        {
            canvas.Dot(projection.At(end), 5, Theme.Rear);
        }
        else
        {
            canvas.Ring(projection.At(end), 4.5, Theme.Rear, 2);
        }
    }

    private void Housing()
    {
        // What stands on the axle housing belongs together: the bars' ends and the axle.
        Point[] points = [.. scene.Bars.Where(bar => bar.Name != "ladder bar").Select(bar => bar.Axle).OfType<Point>()];
        if (points.Length == 2)
        {
            Line(projection.At(points[0]), projection.At(points[1]), Theme.Line, 5);
            if (scene.RearWheel is { } wheel)
            {
                foreach (Point point in points)
                {
                    Line(projection.At(wheel.Centre), projection.At(point), Theme.Line, 2);
                }
            }
        }

        if (scene.RearWheel is { } rear && projection.Shows(rear.Centre))
        {
            Centre(rear.Centre);
        }

        if (scene.FrontWheel is { } front && projection.Shows(front.Centre))
        {
            Centre(front.Centre);
        }
    }

    private void Centre(Point at)
    {
        ScreenPoint centre = projection.At(at);
        canvas.Ring(centre, 5, Theme.Muted, 1.2);
        Line(new ScreenPoint(centre.X - 8, centre.Y), new ScreenPoint(centre.X + 8, centre.Y), Theme.Muted, 1);
        Line(new ScreenPoint(centre.X, centre.Y - 8), new ScreenPoint(centre.X, centre.Y + 8), Theme.Muted, 1);
    }

    private void Wheel(SceneWheel? wheel, double? ahead)
    {
        if (wheel is not null)
        {
            Tire(wheel);
        }
        else if (ahead is { } at && projection.Shows(new Point(at, 0)))
        {
            // Nothing is known of the tyre: the axle's plumb line and where it meets the ground.
            ScreenPoint foot = projection.At(at, 0);
            Line(foot, new ScreenPoint(foot.X, foot.Y - 60), Theme.Muted, 1, Theme.Dash);
        }

        if (ahead is { } place && projection.Shows(new Point(place, 0)))
        {
            ScreenPoint foot = projection.At(place, 0);
            canvas.DrawPolygon([foot, new(foot.X - 5, foot.Y + 8), new(foot.X + 5, foot.Y + 8)], Theme.Ink, OxyColors.Undefined, 0, Exact, null, LineJoin.Miter);
        }
    }

    // A circle that the ground cuts off and the picture's edge too.
    private void Tire(SceneWheel wheel)
    {
        const int Count = 96;
        ScreenPoint from = Rim(wheel, 0);
        for (int i = 1; i <= Count; i++)
        {
            ScreenPoint to = Rim(wheel, 2 * Math.PI * i / Count), start = from, end = to;
            if (Clip.Line(projection.Area, ref start, ref end))
            {
                canvas.Path([start, end], Theme.Line, 2);
            }

            from = to;
        }
    }

    private ScreenPoint Rim(SceneWheel wheel, double angle)
    {
        (double sin, double cos) = Math.SinCos(angle);
        return projection.At(wheel.Centre.Ahead + (wheel.Radius * sin), Math.Max(0, wheel.Centre.Up + (wheel.Radius * cos)));
    }

    private void Unit(SceneUnit unit)
    {
        ScreenPoint from = projection.At(unit.Axle), to = projection.At(unit.Body);
        double dx = to.X - from.X, dy = to.Y - from.Y, length = Math.Sqrt((dx * dx) + (dy * dy));
        if (length < 12 || length > 4 * projection.Area.Width)
        {
            Line(from, to, Theme.Third, 2);
        }
        else if (unit.Name.StartsWith("spring", StringComparison.Ordinal))
        {
            Line(from, to, Theme.Third, 1.5);
            Coil(from, dx / length, dy / length, length);
        }
        else
        {
            // A body over the lower half, the rod above it.
            Line(from, to, Theme.Third, 1.5);
            Line(new(from.X + (0.15 * dx), from.Y + (0.15 * dy)), new(from.X + (0.6 * dx), from.Y + (0.6 * dy)), Theme.Third, 6);
        }

        foreach (Point end in new[] { unit.Axle, unit.Body }.Where(end => projection.Shows(end)))
        {
            canvas.Ring(projection.At(end), 3, Theme.Third, 1.5);
        }
    }

    private void Coil(ScreenPoint from, double x, double y, double length)
    {
        const int Turns = 7;
        double wide = Math.Min(6, 0.12 * length);
        var points = new List<ScreenPoint>();
        for (int i = 0; i <= 2 * Turns; i++)
        {
            double along = length * (0.15 + (0.7 * i / (2 * Turns))), across = i % 2 == 0 ? wide : -wide;
            points.Add(new ScreenPoint(from.X + (along * x) - (across * y), from.Y + (along * y) + (across * x)));
        }

        if (points.TrueForAll(point => projection.Area.Contains(point)))
        {
            canvas.Path(points, Theme.Third, 1.5);
        }
    }

    private void WheelieBar(Point wheel)
    {
        ScreenPoint low = projection.At(wheel);
        Point from = scene.RearWheel?.Centre ?? new Point(0, wheel.Up + 0.1);
        Line(projection.At(from), new ScreenPoint(low.X, low.Y - 5), Theme.Muted, 2);
        if (projection.Shows(wheel))
        {
            canvas.Ring(new ScreenPoint(low.X, low.Y - 5), 5, Theme.Muted, 2);
        }
    }

    private void Line(ScreenPoint from, ScreenPoint to, OxyColor color, double thickness, double[]? dash = null)
    {
        if (Clip.Line(projection.Area, ref from, ref to))
        {
            canvas.Path([from, to], color, thickness, dash);
        }
    }
}
