using System.Globalization;
using LaunchSim.Charts.Drawing;
using LaunchSim.Geometry;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Vehicle;
using OxyPlot;

namespace LaunchSim.Charts.SideViews;

/// <summary>Draws the lines of equal percent and the instant centres of a hole map.</summary>
internal sealed class HoleMapPainter
{
    private const EdgeRenderingMode Exact = EdgeRenderingMode.PreferGeometricAccuracy;
    private const int Most = 9, Crowd = 24;
    private const double Apart = 22;
    private static readonly double[] Steps = [5, 10, 20, 25, 50, 100, 200, 500, 1000];

    private readonly IRenderContext _canvas;
    private readonly Projection _projection;
    private readonly HoleMap _map;
    private readonly GeometryDoubt? _doubt;
    private readonly Readout _readout;
    private readonly Labels _labels;
    private readonly double _neutral;

    /// <summary>Prepares the map.</summary>
    /// <param name="canvas">Where it is drawn.</param>
    /// <param name="room">Where labels may stand.</param>
    /// <param name="projection">Where things are.</param>
    /// <param name="map">The choices.</param>
    /// <param name="doubt">What is in doubt, or nothing.</param>
    /// <param name="readout">The units.</param>
    public HoleMapPainter(IRenderContext canvas, OxyRect room, Projection projection, HoleMap map, GeometryDoubt? doubt, Readout readout)
    {
        (_canvas, _projection, _map, _doubt, _readout) = (canvas, projection, map, doubt, readout);
        _labels = new Labels(canvas, room);
        _neutral = map.Report.View.Line.NeutralSlope;
    }

    /// <summary>The labels, once drawn.</summary>
    public Labels Labels => _labels;

    /// <summary>Draws it.</summary>
    /// <returns>What a legend has to say, a sentence each.</returns>
    public IReadOnlyList<string> Draw()
    {
        Band();
        Rays();
        Cloud();
        foreach (HoleRow row in _map.Shown)
        {
            Dot(row);
        }

        foreach (SceneBar bar in _map.Scene.Bars)
        {
            if (bar is { Axle: { } axle, Body: { } body })
            {
                _labels.Avoid([_projection.At(axle), _projection.At(body)]);
            }
        }

        foreach (Point at in _map.Scene.Holes.Select(hole => hole.At).Concat(_map.Scene.Bars.SelectMany(bar => new[] { bar.Axle, bar.Body }).OfType<Point>()).Where(at => _projection.Shows(at)))
        {
            ScreenPoint point = _projection.At(at);
            _labels.Keep(new OxyRect(point.X - 5, point.Y - 5, 10, 10));
        }

        Name(_map.InOrder().Take(1));
        // The holes of a ladder bar's pivot are the instant centres and have their names already.
        new BracketLabels(_map.Scene with { Holes = [.. _map.Scene.Holes.Where(hole => !hole.Bracket.EndsWith(".pivot", StringComparison.Ordinal))] }, _projection, _labels, 13).Place();
        Name(_map.InOrder().Skip(1));
        return Notes();
    }

    // With the height of the centre of gravity the lines of equal percent swing about the contact patch; the instant centres stay.
    private void Band()
    {
        double doubt = _map.Scene.CentreOfGravityDoubt / _map.Report.View.Wheelbase;
        if (doubt <= 0)
        {
            return;
        }

        ScreenPoint[] ends = [.. new[] { _neutral + doubt, Math.Max(0, _neutral - doubt) }.Select(slope => EndOf(slope) ?? _projection.At(0, 0))];
        if (Math.Abs(ends[0].X - ends[1].X) > 1 && Math.Abs(ends[0].Y - ends[1].Y) > 1)
        {
            // One leaves at the top, the other at the front: the corner between them belongs to the band.
            ends = [ends[0], new ScreenPoint(_projection.Area.Right, _projection.Area.Top), ends[1]];
        }

        _canvas.DrawPolygon([_projection.At(0, 0), .. ends], OxyColor.FromAColor(32, Theme.Ink), OxyColors.Undefined, 0, Exact, null, LineJoin.Miter);
    }

    private void Rays()
    {
        double[] percents = [.. _map.Shown.Select(row => row.Line!.Percent).Append(_map.Report.View.Line.Percent).Append(100).Where(double.IsFinite)];
        double low = percents.Min(), high = percents.Max();
        double perPercent = Math.Abs(_neutral) / 100 * (_projection.Area.Right - _projection.At(0, 0).X);
        double step = Array.Find(Steps, one => (high - low) / one <= Most - 3 && one * perPercent >= Apart);
        step = step > 0 ? step : Steps[^1];
        var marks = new List<double>();
        for (double mark = Math.Floor((low / step) - 0.3) * step; mark <= high + (1.3 * step); mark += step)
        {
            marks.Add(mark);
        }

        foreach (double mark in marks.Where(mark => Math.Abs(mark - 100) > 1e-6).Append(100).Where(mark => Math.Abs(mark) > 1e-9).OrderByDescending(mark => mark == 100))
        {
            bool isNeutral = mark == 100;
            if (EndOf(mark / 100 * _neutral) is not { } end || end.DistanceTo(_projection.At(0, 0)) < 4 * Apart)
            {
                continue;
            }

            _canvas.Path([_projection.At(0, 0), end], isNeutral ? Theme.Ink : Theme.Line, isNeutral ? 1.8 : 1, isNeutral ? Theme.LongDash : null);
            _labels.Avoid([_projection.At(0, 0), end]);
            string text = isNeutral ? "neutral line, 100 %" : string.Create(CultureInfo.InvariantCulture, $"{mark:0} %");
            _ = _labels.Offer(text, end, new LabelStyle
            {
                Size = 13,
                Weight = isNeutral ? Theme.Bold : Theme.Normal,
                Color = isNeutral ? Theme.Ink : Theme.Muted,
                Gap = 5,
                Farthest = 14,
                Directions = end.Y <= _projection.Area.Top + 1 ? [90, 45, 135] : [0, 20, 340],
            });
        }
    }

    // Where the draws by the doubts of the points put the present instant centre.
    private void Cloud()
    {
        if (_doubt is not { MovesInstantCentre: true })
        {
            return;
        }

        OxyRect[] dots = [.. _doubt.Lines
            .Select(line => new Point(line.InstantCentreAhead, line.InstantCentreUp))
            .Where(point => double.IsFinite(point.Ahead) && _projection.Shows(point))
            .Select(_projection.At).Select(at => new OxyRect(at.X - 1.2, at.Y - 1.2, 2.4, 2.4))];
        _canvas.DrawEllipses(dots, OxyColor.FromAColor(110, Theme.Fourth), OxyColors.Undefined, 0, Exact);
    }

    private void Dot(HoleRow row)
    {
        ScreenPoint at = _projection.At(HoleMap.Centre(row)!.Value);
        if (row.Present)
        {
            _canvas.Ring(at, 8, Theme.Fourth, 2.5);
        }

        _canvas.Dot(at, row.Present ? 4 : _map.Shown.Count > 60 ? 3 : 4.5, row.Present ? Theme.Fourth : Theme.Rear);
        double radius = row.Present ? 9 : 4;
        _labels.Keep(new OxyRect(at.X - radius, at.Y - radius, 2 * radius, 2 * radius));
    }

    private void Name(IEnumerable<HoleRow> rows)
    {
        bool isCrowd = _map.Shown.Count > Crowd;
        foreach (HoleRow row in rows)
        {
            var style = new LabelStyle
            {
                Size = row.Present ? 14 : 13,
                Weight = row.Present ? Theme.Bold : Theme.Normal,
                Color = row.Present ? Theme.Fourth : Theme.Rear,
                Gap = row.Present ? 11 : 7,
                Farthest = row.Present || !isCrowd ? 80 : 6,
            };
            string doubt = row.Present && _doubt is not null ? $" ({Readout.Percent.Number(_doubt.LowPercent)} to {Readout.Percent.Text(_doubt.HighPercent)})" : "";
            _ = _labels.Offer($"{_map.Name(row)}{(row.Present ? ", now" : "")}\n{StaticLineWords.Percent(row.Line!.Percent)}{doubt}", _projection.At(HoleMap.Centre(row)!.Value), style);
        }
    }

    private List<string> Notes()
    {
        var notes = new List<string>();
        if (_map.Report.Brackets.Count > 1)
        {
            notes.Add($"Names: {string.Join(" / ", _map.Report.Brackets.Select(PointWords.Bracket))}.");
        }

        if (_labels.Dropped.Count > 0)
        {
            notes.Add($"{_labels.Dropped.Count} of {_map.Shown.Count} dots have no name for want of room; named first are the present, the lowest and the highest, then from the present percent outwards.");
        }

        int outside = _map.Rows.Count - _map.Shown.Count, impossible = _map.Report.Holes.Count - _map.Rows.Count, kept = _map.Report.Choices - _map.Report.Holes.Count;
        Add(outside, "with the instant centre outside the picture or nowhere, bars being parallel");
        Add(impossible, "that cannot be put together, or with which the car cannot stand");
        Add(kept, "that were not to be kept");
        if (_map.Scene.CentreOfGravityDoubt > 0)
        {
            string height = $"±{_readout.Place.Text(_map.Scene.CentreOfGravityDoubt)}";
            notes.Add($"The centre of gravity's height is in doubt by {height}: instant centres stay, but every percent line swings as the grey band shows for 100 %.");
        }

        if (_doubt is not null)
        {
            string cloud = _doubt.MovesInstantCentre ? $" Small dots: {_doubt.Lines.Count} draws of the present instant centre by the doubts of the points." : "";
            string failed = _doubt.Failed > 0 ? string.Create(CultureInfo.InvariantCulture, $" Of {_doubt.Failed} of {_doubt.Failed + _doubt.Lines.Count} draws no car could be made; they are left out.") : "";
            notes.Add($"In brackets: nineteen times in twenty by all doubts entered.{cloud}{failed}");
        }

        return notes;

        void Add(int count, string words)
        {
            if (count > 0)
            {
                notes.Add(string.Create(CultureInfo.InvariantCulture, $"Left out: {count} {words}."));
            }
        }
    }

    // Where a line of a slope through the contact patch leaves the picture, to the front.
    private ScreenPoint? EndOf(double slope)
    {
        ScreenPoint from = _projection.At(0, 0), to = _projection.At(1e3, slope * 1e3);
        return Clip.Line(_projection.Area, ref from, ref to) ? to : null;
    }
}
