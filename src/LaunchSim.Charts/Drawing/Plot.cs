using System.Globalization;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace LaunchSim.Charts.Drawing;

/// <summary>A line of a plot.</summary>
/// <param name="Points">Its points in the axes' units; not a number parts it.</param>
/// <param name="Pen">How it is drawn.</param>
internal sealed record Curve(IReadOnlyList<DataPoint> Points, Pen Pen);

/// <summary>
/// Curves over two axes within a rectangle. First everything that lies in the plot is added, then it is drawn, then
/// names, marks and brackets are put beside the curves.
/// </summary>
internal sealed class Plot
{
    /// <summary>Room that the numbers beside and below the area and the words above it take.</summary>
    public const double Left = 48, Right = 16, Below = 36, Above = 20;

    // From one point of a curve to the next on the canvas at the most: names look for their place at the points.
    private const double Stride = 8, Together = 2;

    // What is nearer than that is not told apart at the edge of a strip.
    private const double Hairline = 0.5;

    // A number at the upper end of the axis stands out by that much.
    private const double HalfNumber = 8;

    private const int Anchors = 40;
    private const double NearCurve = 60;
    private const EdgeRenderingMode Exact = EdgeRenderingMode.PreferGeometricAccuracy;

    private static readonly LabelStyle AreaName = new() { Weight = Theme.Bold };

    private readonly IRenderContext _canvas;
    private readonly Axis _across;
    private readonly LinearAxis _up;
    private readonly string _caption;
    private readonly PlotModel _model;
    private readonly List<(Curve Curve, List<ScreenPoint> Points)> _curves = [];

    /// <summary>An empty plot.</summary>
    /// <param name="canvas">Where it is drawn.</param>
    /// <param name="area">The area between the axes; numbers and words stand outside it.</param>
    /// <param name="across">The horizontal axis.</param>
    /// <param name="extent">What the vertical axis holds.</param>
    /// <param name="caption">What it measures and in which unit.</param>
    public Plot(IRenderContext canvas, OxyRect area, Axis across, Extent extent, string caption)
    {
        (_canvas, Area, _across, _caption) = (canvas, area, across, caption);
        _up = new LinearAxis { Position = AxisPosition.Left, Minimum = extent.Low, Maximum = extent.High, IntervalLength = 42 };
        _model = new PlotModel
        {
            Culture = CultureInfo.InvariantCulture,
            DefaultFont = Theme.FontFamily,
            Padding = new OxyThickness(0),
            PlotMargins = new OxyThickness(Left, HalfNumber, Right, Below),
            PlotAreaBorderThickness = new OxyThickness(0),
            IsLegendVisible = false,
        };
        House(_up);
        House(_across);
        _up.AxislineStyle = LineStyle.None;
        _model.Axes.Add(_across);
        _model.Axes.Add(_up);
        Labels = new Labels(canvas, area);
    }

    /// <summary>The area between the axes.</summary>
    public OxyRect Area { get; }

    /// <summary>The labels within it.</summary>
    public Labels Labels { get; }

    /// <summary>Adds a line.</summary>
    /// <param name="points">Its points in the axes' units.</param>
    /// <param name="pen">How it is drawn.</param>
    public Curve Line(IReadOnlyList<DataPoint> points, Pen pen)
    {
        var series = new LineSeries
        {
            Color = pen.Color,
            StrokeThickness = pen.Thickness,
            LineStyle = LineStyle.Solid,
            Dashes = pen.Dash,
            LineJoin = LineJoin.Round,
            EdgeRenderingMode = Exact,
            MinimumSegmentLength = 1,
        };
        series.Points.AddRange(points);
        _model.Series.Add(series);
        var curve = new Curve(points, pen);
        _curves.Add((curve, []));
        return curve;
    }

    /// <summary>Adds a level line over the whole width.</summary>
    /// <param name="value">Where, in the vertical axis's unit.</param>
    /// <param name="pen">How it is drawn.</param>
    public Curve Level(double value, Pen pen) =>
        Line([new DataPoint(_across.Minimum, value), new DataPoint(_across.Maximum, value)], pen);

    /// <summary>Adds a filled strip between two lines with the same instants.</summary>
    /// <param name="one">One line.</param>
    /// <param name="other">The other one.</param>
    /// <param name="fill">Its colour.</param>
    public void Strip(IReadOnlyList<DataPoint> one, IReadOnlyList<DataPoint> other, OxyColor fill)
    {
        var series = new AreaSeries { Fill = fill, StrokeThickness = 0, EdgeRenderingMode = Exact, MinimumSegmentLength = 1 };
        for (int i = 0, last = -1; i < one.Count; i++)
        {
            if (last < 0 || i + 1 == one.Count || IsApart(one[last], one[i]) || IsApart(other[last], other[i]))
            {
                series.Points.Add(one[i]);
                series.Points2.Add(other[i]);
                last = i;
            }
        }

        _model.Series.Add(series);
    }

    /// <summary>Adds dots, such as measured values; what is added later is drawn over them.</summary>
    /// <param name="points">Their places in the axes' units; what is not a number is left out.</param>
    /// <param name="radius">How large they are, in the picture's units.</param>
    /// <param name="color">Their colour.</param>
    public void Dots(IReadOnlyList<DataPoint> points, double radius, OxyColor color)
    {
        var series = new ScatterSeries { MarkerType = MarkerType.Circle, MarkerSize = radius, MarkerFill = color, MarkerStrokeThickness = 0, EdgeRenderingMode = Exact };
        series.Points.AddRange(points.Where(point => double.IsFinite(point.Y)).Select(point => new ScatterPoint(point.X, point.Y)));
        _model.Series.Add(series);
    }

    /// <summary>Draws what was added.</summary>
    public void Draw()
    {
        if (_across is TimeAxis { Squeezed: not null })
        {
            double left = Area.Left + (TimeAxis.FirstShare * Area.Width);
            _canvas.DrawRectangle(new OxyRect(left, Area.Top, Area.Right - left, Area.Height), Theme.Squeezed, OxyColors.Undefined, 0, Exact);
        }

        var whole = new OxyRect(Area.Left - Left, Area.Top - HalfNumber, Area.Width + Left + Right, Area.Height + HalfNumber + Below);
        ((IPlotModel)_model).Update(true);
        ((IPlotModel)_model).Render(_canvas, whole);
        if (_up.Minimum <= 0 && _up.Maximum > 0)
        {
            _canvas.DrawLine([new(Area.Left, _up.Transform(0)), new(Area.Right, _up.Transform(0))], Theme.Line, 1, Exact);
        }

        _canvas.Text(_caption, new ScreenPoint(Area.Left - Left + 6, Area.Top - Above + 1), Theme.Small, Theme.Muted);
        foreach ((Curve curve, List<ScreenPoint> points) in _curves)
        {
            Follow(curve, points);
            Labels.Avoid(points);
        }
    }

    /// <summary>Writes a name into the strip between two lines with the same instants, where the strip is thick enough for it.</summary>
    /// <param name="one">One line.</param>
    /// <param name="other">The other one.</param>
    /// <param name="text">The name.</param>
    /// <returns>Whether there was such a place.</returns>
    public bool TryNameStrip(IReadOnlyList<DataPoint> one, IReadOnlyList<DataPoint> other, string text)
    {
        OxySize size = _canvas.MeasureText(text, Theme.FontFamily, AreaName.Size, AreaName.Weight);
        foreach ((ScreenPoint middle, double _) in Thickest(one, other))
        {
            OxyRect needed = new OxyRect(middle.X - (size.Width / 2), middle.Y - (size.Height / 2), size.Width, size.Height).Grown(2);
            bool holds = true;
            for (int i = 0; i < one.Count && holds; i++)
            {
                ScreenPoint a = At(one[i].X, one[i].Y), b = At(other[i].X, other[i].Y);
                holds = a.X < needed.Left || a.X > needed.Right || (Math.Min(a.Y, b.Y) <= needed.Top && Math.Max(a.Y, b.Y) >= needed.Bottom);
            }

            if (holds && Labels.TryPut(text, middle, null, AreaName))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Puts a strip's name somewhere free, with a line to where the strip is thickest.</summary>
    /// <param name="one">One line.</param>
    /// <param name="other">The other one.</param>
    /// <param name="text">The name.</param>
    public void PointAtStrip(IReadOnlyList<DataPoint> one, IReadOnlyList<DataPoint> other, string text)
    {
        List<(ScreenPoint Middle, double Thickness)> places = Thickest(one, other);
        if (places is [(_, > Hairline and var most), ..])
        {
            _ = Labels.Place(text, [.. places.Where(place => place.Thickness >= 0.5 * most).Take(8).Select(place => place.Middle)],
                AreaName with { HasLeader = true, Directions = [90, 270, 60, 120, 240, 300] });
        }
    }

    /// <summary>Where a point of the axes is on the canvas.</summary>
    /// <param name="x">On the horizontal axis.</param>
    /// <param name="y">On the vertical axis.</param>
    public ScreenPoint At(double x, double y) => new(_across.Transform(x), _up.Transform(y));

    /// <summary>Whether a point lies in the area.</summary>
    /// <param name="point">On the canvas.</param>
    public bool Holds(ScreenPoint point) =>
        point.X >= Area.Left - 0.5 && point.X <= Area.Right + 0.5 && point.Y >= Area.Top - 0.5 && point.Y <= Area.Bottom + 0.5;

    /// <summary>Puts a curve's name beside it where it is farthest from the others, so that it is taken for no other's.</summary>
    /// <param name="curve">The curve.</param>
    /// <param name="text">Its name.</param>
    public void Name(Curve curve, string text)
    {
        List<ScreenPoint> all = _curves.Find(one => ReferenceEquals(one.Curve, curve)).Points;
        List<ScreenPoint> seen = [.. all.Where(point => double.IsFinite(point.Y) && Holds(point))];
        if (seen.Count == 0)
        {
            return;
        }

        var style = new LabelStyle { Color = curve.Pen.Color, Weight = Theme.Bold };
        double half = _canvas.MeasureText(text, Theme.FontFamily, style.Size, style.Weight).Width / 2;
        var sides = new List<(ScreenPoint Point, bool Above, double Room)>();
        for (int i = 0; i < Anchors; i++)
        {
            double x = seen[0].X + ((seen[^1].X - seen[0].X) * (i + 0.5) / Anchors);
            ScreenPoint anchor = seen.MinBy(point => Math.Abs(point.X - x));
            (double above, double below) = Room(anchor, half, curve);
            sides.Add((anchor, true, above));
            sides.Add((anchor, false, below));
        }

        sides.Sort((a, b) => b.Room.CompareTo(a.Room));
        foreach ((ScreenPoint point, bool above, double _) in sides)
        {
            if (Labels.TryPut(text, point, above ? 90 : 270, style))
            {
                return;
            }
        }

        _ = Labels.Place(text, [.. sides.Select(side => side.Point)], style with { Directions = [90, 270] });
    }

    /// <summary>A dot on a curve and what there is to say of it.</summary>
    /// <param name="x">On the horizontal axis.</param>
    /// <param name="y">On the vertical axis.</param>
    /// <param name="text">What to say.</param>
    /// <param name="color">Colour of both.</param>
    /// <param name="above">Whether the words are better above it than below.</param>
    public void Mark(double x, double y, string text, OxyColor color, bool above = true)
    {
        ScreenPoint at = At(x, y);
        if (!Holds(at))
        {
            return;
        }

        _canvas.Dot(at, 4.5, color);
        Labels.Keep(new OxyRect(at.X - 5, at.Y - 5, 10, 10));
        _ = Labels.Place(text, at, new LabelStyle { Color = color, Directions = above ? [90, 45, 135] : [270, 315, 225], Gap = 8 });
    }

    // Told before the axes know their places.
    private bool IsApart(DataPoint one, DataPoint other)
    {
        double Along(double x) => _across is TimeAxis time ? time.Share(x) : (x - _across.Minimum) / (_across.Maximum - _across.Minimum);
        double width = Area.Width * Math.Abs(Along(other.X) - Along(one.X)), height = Area.Height * Math.Abs(other.Y - one.Y) / (_up.Maximum - _up.Minimum);
        return !(width < Hairline && height < Hairline);
    }

    // Places evenly over a strip, the thickest first, with their thickness on the canvas.
    private List<(ScreenPoint Middle, double Thickness)> Thickest(IReadOnlyList<DataPoint> one, IReadOnlyList<DataPoint> other)
    {
        var places = new List<(ScreenPoint Middle, double Thickness)>();
        for (int place = 0; place < Anchors && one.Count > 0; place++)
        {
            int i = (int)((one.Count - 1) * (place + 0.5) / Anchors);
            ScreenPoint a = At(one[i].X, one[i].Y), b = At(other[i].X, other[i].Y);
            places.Add((new ScreenPoint(a.X, (a.Y + b.Y) / 2), Math.Abs(a.Y - b.Y)));
        }

        return [.. places.OrderByDescending(place => place.Thickness)];
    }

    private void Follow(Curve curve, List<ScreenPoint> points)
    {
        foreach (DataPoint point in curve.Points)
        {
            // Points that fall together on the canvas are one.
            ScreenPoint to = At(point.X, point.Y);
            if (points.Count > 0 && points[^1].DistanceTo(to) < Together)
            {
                continue;
            }

            int pieces = points.Count > 0 && points[^1].DistanceTo(to) is > Stride and < 1e5 and var way ? (int)Math.Ceiling(way / Stride) : 1;
            for (int i = 1; i < pieces; i++)
            {
                ScreenPoint from = points[^1];
                points.Add(new ScreenPoint(from.X + ((to.X - from.X) / (pieces - i + 1)), from.Y + ((to.Y - from.Y) / (pieces - i + 1))));
            }

            points.Add(to);
        }
    }

    // How near another curve comes above and below a point, within half a name's width to either side.
    private (double Above, double Below) Room(ScreenPoint at, double half, Curve own)
    {
        double above = Math.Min(NearCurve, at.Y - Area.Top), below = Math.Min(NearCurve, Area.Bottom - at.Y);
        foreach ((Curve curve, List<ScreenPoint> points) in _curves)
        {
            if (ReferenceEquals(curve, own))
            {
                continue;
            }

            foreach (ScreenPoint point in points)
            {
                if (Math.Abs(point.X - at.X) <= half)
                {
                    above = point.Y <= at.Y ? Math.Min(above, at.Y - point.Y) : above;
                    below = point.Y >= at.Y ? Math.Min(below, point.Y - at.Y) : below;
                }
            }
        }

        return (above, below);
    }

    private static void House(Axis axis)
    {
        axis.FontSize = Theme.Small;
        axis.TextColor = Theme.Muted;
        axis.TickStyle = TickStyle.None;
        axis.AxisTickToLabelDistance = 4;
        axis.AxislineStyle = LineStyle.Solid;
        axis.AxislineColor = Theme.Line;
        axis.MajorGridlineStyle = LineStyle.Solid;
        axis.MajorGridlineColor = Theme.Hair;
        axis.MajorGridlineThickness = 1;
        axis.MinorGridlineStyle = LineStyle.None;
        axis.EdgeRenderingMode = Exact;
    }
}
