using LaunchSim.Charts.Drawing;
using LaunchSim.Geometry;
using LaunchSim.Vehicle;
using OxyPlot;

namespace LaunchSim.Charts.SideViews;

/// <summary>Draws what is constructed on a side view: neutral line, line to the instant centre, the bars' lines to it.</summary>
internal sealed class LinePainter
{
    private const EdgeRenderingMode Exact = EdgeRenderingMode.PreferGeometricAccuracy;
    private static readonly OxyColor Band = OxyColor.FromAColor(38, Theme.Ink);

    private readonly IRenderContext _canvas;
    private readonly SideViewScene _scene;
    private readonly Projection _projection;
    private readonly double _end;

    /// <summary>Prepares the lines.</summary>
    /// <param name="canvas">Where they are drawn.</param>
    /// <param name="scene">What is drawn.</param>
    /// <param name="projection">Where things are.</param>
    public LinePainter(IRenderContext canvas, SideViewScene scene, Projection projection)
    {
        (_canvas, _scene, _projection) = (canvas, scene, projection);
        InstantCentre = SideViewWindow.InstantCentre(scene) is { } centre && projection.Shows(centre, -1) ? centre : null;
        _end = Math.Max(scene.Wheelbase ?? 0, InstantCentre?.Ahead ?? 0);
    }

    /// <summary>The instant centre where it lies within the picture.</summary>
    public Point? InstantCentre { get; }

    /// <summary>Where the neutral line ends in the picture; null when it is not drawn.</summary>
    public ScreenPoint? NeutralEnd { get; private set; }

    /// <summary>Where the line through the instant centre ends in the picture, to the front; null when it is not drawn.</summary>
    public ScreenPoint? PercentEnd { get; private set; }

    /// <summary>Where the line leaves the picture towards an instant centre outside of it; null when that is inside or nowhere.</summary>
    public ScreenPoint? Leaving { get; private set; }

    /// <summary>Where the last bar's line leaves the picture when there is no instant centre; null otherwise.</summary>
    public ScreenPoint? BarsEnd { get; private set; }

    /// <summary>All that was drawn, for labels to keep off.</summary>
    public List<ScreenPoint[]> Drawn { get; } = [];

    /// <summary>Draws the neutral line with the band that the height of the centre of gravity is in doubt by.</summary>
    public void Neutral()
    {
        if (_scene is not { Wheelbase: { } wheelbase, CentreOfGravity: { } centre })
        {
            return;
        }

        double slope = centre.Up / wheelbase, doubt = _scene.CentreOfGravityDoubt / wheelbase;
        if (doubt > 0)
        {
            ScreenPoint[] band = [_projection.At(0, 0), _projection.At(_end, (slope + doubt) * _end), _projection.At(_end, Math.Max(0, slope - doubt) * _end)];
            if (band.All(_projection.Area.Grown(1).Contains))
            {
                _canvas.DrawPolygon(band, Band, OxyColors.Undefined, 0, Exact, null, LineJoin.Miter);
            }
        }

        NeutralEnd = Line(_projection.At(0, 0), _projection.At(_end, slope * _end), Theme.Ink, 1.5, Theme.LongDash);
    }

    /// <summary>Draws the line from the contact patch to the instant centre, on to the front axle in dots.</summary>
    /// <param name="line">The static line.</param>
    public void Percent(StaticLine line)
    {
        const double Away = 1e4;
        bool isLevel = !double.IsFinite(line.Slope);
        Point forward = isLevel ? new Point(0, Away) : new Point(_end, line.Slope * _end);
        Point towards = InstantCentre ?? (SideViewWindow.InstantCentre(_scene) is { } far ? Scaled(far, Away) : forward);
        ScreenPoint start = _projection.At(0, 0);
        PercentEnd = Line(start, _projection.At(forward), Theme.Fourth, 1.5, Theme.Dot);
        ScreenPoint? end = Line(start, _projection.At(towards), Theme.Fourth, 2.5);
        Leaving = InstantCentre is null && SideViewWindow.InstantCentre(_scene) is not null ? end : null;
    }

    /// <summary>Draws the bars' lines from their nearer ends to the instant centre, or to the picture's edge.</summary>
    public void Bars()
    {
        foreach (SceneBar bar in _scene.Bars)
        {
            if (bar is not { Axle: { } axle, Body: { } body } || bar.Name == "ladder bar")
            {
                continue;
            }

            double x = body.Ahead - axle.Ahead, z = body.Up - axle.Up;
            if (SideViewWindow.InstantCentre(_scene) is { } centre && double.IsFinite(x))
            {
                double share = (((centre.Ahead - axle.Ahead) * x) + ((centre.Up - axle.Up) * z)) / ((x * x) + (z * z));
                if (share is < 0 or > 1)
                {
                    _ = Line(_projection.At(share < 0 ? axle : body), _projection.At(centre), Theme.Rear, 1.2, Theme.Dash);
                }
            }
            else
            {
                BarsEnd = Line(_projection.At(body), _projection.At(body.Ahead + (1e3 * x), body.Up + (1e3 * z)), Theme.Rear, 1.2, Theme.Dash);
            }
        }
    }

    /// <summary>Draws the instant centre, or the arrow towards it.</summary>
    public void Centre()
    {
        if (InstantCentre is { } centre)
        {
            ScreenPoint at = _projection.At(centre);
            _canvas.Ring(at, 7, Theme.Fourth, 2.5);
            _canvas.Dot(at, 3, Theme.Fourth);
        }
        else if (Leaving is { } edge)
        {
            ScreenPoint from = _projection.At(0, 0);
            double x = edge.X - from.X, y = edge.Y - from.Y, length = Math.Max(1e-9, Math.Sqrt((x * x) + (y * y)));
            (x, y) = (x / length, y / length);
            _canvas.DrawPolygon(
                [edge, new(edge.X - (14 * x) - (6 * y), edge.Y - (14 * y) + (6 * x)), new(edge.X - (14 * x) + (6 * y), edge.Y - (14 * y) - (6 * x))],
                Theme.Fourth, OxyColors.Undefined, 0, Exact, null, LineJoin.Miter);
        }
    }

    /// <summary>Draws the centre of gravity with the bracket of its doubt.</summary>
    public void Gravity()
    {
        if (_scene.CentreOfGravity is not { } centre || !_projection.Shows(centre))
        {
            return;
        }

        ScreenPoint at = _projection.At(centre);
        if (_scene.CentreOfGravityDoubt > 0)
        {
            ScreenPoint high = _projection.At(centre.Ahead, centre.Up + _scene.CentreOfGravityDoubt);
            ScreenPoint low = _projection.At(centre.Ahead, Math.Max(0, centre.Up - _scene.CentreOfGravityDoubt));
            _canvas.DrawRectangle(new OxyRect(at.X - 10, high.Y, 20, low.Y - high.Y), Band, OxyColors.Undefined, 0, Exact);
            foreach (ScreenPoint end in new[] { high, low })
            {
                _canvas.Path([new(end.X - 10, end.Y), new(end.X + 10, end.Y)], Theme.Ink, 1.5);
            }

            _canvas.Path([high, low], Theme.Ink, 1.2);
        }

        _ = Line(at, _projection.At(centre.Ahead, 0), Theme.Muted, 1, Theme.Dot);
        Quarters(at);
    }

    // A disc in quarters, two of them filled.
    private void Quarters(ScreenPoint at)
    {
        const double Radius = 8;
        _canvas.Ring(at, Radius, Theme.Ink, 1.5);
        foreach (double start in new[] { 0.0, Math.PI })
        {
            var quarter = new List<ScreenPoint> { at };
            for (int i = 0; i <= 8; i++)
            {
                (double sin, double cos) = Math.SinCos(start + (i * Math.PI / 16));
                quarter.Add(new ScreenPoint(at.X + (Radius * cos), at.Y - (Radius * sin)));
            }

            _canvas.DrawPolygon(quarter, Theme.Ink, OxyColors.Undefined, 0, Exact, null, LineJoin.Miter);
        }
    }

    private static Point Scaled(Point point, double length)
    {
        double factor = length / Math.Max(1e-9, Math.Sqrt((point.Ahead * point.Ahead) + (point.Up * point.Up)));
        return new Point(factor * point.Ahead, factor * point.Up);
    }

    private ScreenPoint? Line(ScreenPoint from, ScreenPoint to, OxyColor color, double thickness, double[]? dash = null)
    {
        if (!Clip.Line(_projection.Area, ref from, ref to))
        {
            return null;
        }

        _canvas.Path([from, to], color, thickness, dash);
        Drawn.Add([from, to]);
        return to;
    }
}
