using LaunchSim.Charts.Drawing;
using LaunchSim.Geometry;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios;
using LaunchSim.Vehicle;
using OxyPlot;

namespace LaunchSim.Charts.SideViews;

/// <summary>Names and numbers of a side view, the most telling first: what finds no place is left out and said.</summary>
internal sealed class SideViewLabels
{
    private readonly SideViewScene _scene;
    private readonly Projection _projection;
    private readonly LinePainter _lines;
    private readonly Readout _readout;
    private readonly Labels _labels;
    private readonly LabelStyle _plain, _bold, _muted;

    public SideViewLabels(SideViewScene scene, Projection projection, LinePainter lines, Readout readout, Labels labels, double size)
    {
        (_scene, _projection, _lines, _readout, _labels) = (scene, projection, lines, readout, labels);
        _plain = new LabelStyle { Size = size, Gap = 8 };
        _bold = _plain with { Weight = Theme.Bold, Size = size + 1 };
        _muted = _plain with { Color = Theme.Muted };
        KeepOff();
    }

    /// <summary>Percent at its line, and the neutral line's name.</summary>
    public void Lines()
    {
        if (_scene.Line is { } line && _lines.PercentEnd is { } end)
        {
            _ = _labels.Offer(StaticLineWords.Percent(line.Percent), end, _bold with { Color = Theme.Fourth, Size = _bold.Size + 4, Directions = [0, 20, 340, 90, 180] });
        }

        if (_lines.NeutralEnd is { } neutral)
        {
            _ = _labels.Offer("neutral line, 100 %", neutral, _bold with { Directions = [0, 340, 20, 270, 90] });
        }
    }

    /// <summary>The instant centre's name and place.</summary>
    public void InstantCentre()
    {
        if (_scene.Line is not { } line)
        {
            return;
        }

        if (_lines.InstantCentre is { } at)
        {
            _ = _labels.Offer(Centre(line), _projection.At(at), _bold with { Color = Theme.Fourth, Gap = 11, Directions = [90, 60, 30, 0, 270, 300, 330] });
        }
        else
        {
            ScreenPoint edge = _lines.Leaving ?? _lines.BarsEnd ?? _lines.PercentEnd ?? _projection.At(0, 0);
            _ = _labels.Offer(Centre(line), edge, _bold with { Color = Theme.Fourth, Gap = 12, Directions = [90, 135, 45, 225, 315] });
        }
    }

    /// <summary>Name and height of the centre of gravity.</summary>
    public void Gravity()
    {
        if (_scene.CentreOfGravity is { } centre && _projection.Shows(centre))
        {
            string doubt = _scene.CentreOfGravityDoubt > 0 ? $" ±{_readout.Place.Number(_scene.CentreOfGravityDoubt)}" : "";
            string height = $"{_readout.Place.Number(centre.Up)}{doubt} {_readout.Place.Unit} up";
            _ = _labels.Offer($"centre of gravity\n{height}", _projection.At(centre), _plain with { Gap = 12, Directions = [45, 135, 90, 0, 180] });
        }
    }

    /// <summary>Names of the bars with their angles.</summary>
    public void Bars()
    {
        foreach (SceneBar bar in _scene.Bars)
        {
            if ((bar.Axle is { } axle && bar.Body is { } body ? Middle(axle, body) : bar.Body ?? bar.Axle) is { } at && _projection.Shows(at))
            {
                bool isLower = bar.Name.StartsWith("lower", StringComparison.Ordinal);
                _ = _labels.Offer(bar.Name + Angle(bar.Name), _projection.At(at), _bold with { Color = Theme.Rear, Directions = isLower ? [270, 300, 240] : [90, 60, 120] });
            }
        }
    }

    /// <summary>Names of holes, springs, dampers, wheelie bar and ballast.</summary>
    public void Parts()
    {
        new BracketLabels(_scene, _projection, _labels, _plain.Size).Place();

        foreach (SceneUnit unit in _scene.Units.Where(unit => _projection.Shows(Middle(unit.Axle, unit.Body))))
        {
            _ = _labels.Offer(unit.Name, _projection.At(Middle(unit.Axle, unit.Body)), _plain with { Color = Theme.Third, Directions = [180, 0, 150, 30], Gap = 10 });
        }

        if (_scene.WheelieBar is { } wheel && _projection.Shows(wheel))
        {
            _ = _labels.Offer($"wheelie bar's wheel\n{_readout.Place.Text(wheel.Up)} above the ground", _projection.At(wheel), _muted with { Directions = [90, 60, 120], Gap = 14 });
        }

        for (int i = 0; i < _scene.Ballast.Count; i++)
        {
            if (_projection.Shows(_scene.Ballast[i]))
            {
                _ = _labels.Offer("ballast", _projection.At(_scene.Ballast[i]), _muted);
            }
        }
    }

    /// <summary>Heights of the wheel centres.</summary>
    public void Wheels()
    {
        foreach ((SceneWheel? wheel, string name, double? ahead) in new[] { (_scene.RearWheel, "rear", 0), (_scene.FrontWheel, "front", _scene.Wheelbase) })
        {
            if (wheel is not null && _projection.Shows(wheel.Centre))
            {
                _ = _labels.Offer($"{name} wheel centre\n{_readout.Place.Text(wheel.Centre.Up)} up", _projection.At(wheel.Centre), _muted with { Gap = 10, Directions = [225, 315, 135, 45] });
            }
            else if (wheel is null && ahead is { } at && _projection.Shows(new Point(at, 0)))
            {
                ScreenPoint foot = _projection.At(at, 0);
                _ = _labels.Offer($"{name} axle\nheight not in the file", new ScreenPoint(foot.X, foot.Y - 60), _muted with { Directions = [90, 135, 45] });
            }
        }
    }

    /// <summary>Points with their names and what was entered.</summary>
    /// <param name="points">The points.</param>
    public void Entered(IEnumerable<EnteredPoint> points)
    {
        foreach (EnteredPoint point in points.OrderByDescending(point => point.IsInUse))
        {
            string text = $"{PointWords.Of(point)}\n{point.Text}";
            if (_projection.Shows(point.At))
            {
                _ = _labels.Offer(text, _projection.At(point.At), point.IsInUse ? _plain : _muted);
            }
            else
            {
                // At the edge, on the way to where it would be.
                ScreenPoint from = _projection.At(0, 0.1), to = _projection.At(point.At);
                _ = Clip.Line(_projection.Area, ref from, ref to);
                _ = _labels.Offer($"{text}: outside the picture", to, _bold);
            }
        }
    }

    private string Angle(string bar)
    {
        BarAngle? angle = _scene.Line?.Bars.Where(other => other.Name == bar).Cast<BarAngle?>().FirstOrDefault();
        return angle is not { } found ? "" : Readout.Angle.IsZero(found.Climb) ? ", level" : found.Climb > 0 ? $", climbs {Readout.Angle.Text(found.Climb)}" : $", falls {Readout.Angle.Text(-found.Climb)}";
    }

    private string Centre(StaticLine line)
    {
        if (StaticLineWords.IsFar(line, _scene.Wheelbase ?? 1))
        {
            return "bars parallel or nearly so:\nthe instant centre is far away";
        }

        Scale place = _readout.Place;
        string ahead = line.InstantCentreAhead < 0 ? $"{place.Text(-line.InstantCentreAhead)} behind the axle" : $"{place.Text(line.InstantCentreAhead)} ahead";
        string up = line.InstantCentreUp < 0 ? $"{place.Text(-line.InstantCentreUp)} below the ground" : $"{place.Text(line.InstantCentreUp)} up";
        return $"instant centre{(_lines.InstantCentre is null ? ", outside the picture" : "")}\n{ahead}, {up}";
    }

    // Labels stay off points altogether and off lines where they can.
    private void KeepOff()
    {
        void Keep(Point? point, double radius)
        {
            if (point is { } known && _projection.Shows(known))
            {
                ScreenPoint at = _projection.At(known);
                _labels.Keep(new OxyRect(at.X - radius, at.Y - radius, 2 * radius, 2 * radius));
            }
        }

        Keep(new Point(0, 0), 8);
        Keep(_scene.Wheelbase is { } wheelbase ? new Point(wheelbase, 0) : null, 8);
        Keep(_scene.RearWheel?.Centre, 8);
        Keep(_scene.FrontWheel?.Centre, 8);
        Keep(_scene.WheelieBar, 8);
        Keep(_lines.InstantCentre, 8);
        Keep(_scene.CentreOfGravity, 9);
        foreach (SceneBar bar in _scene.Bars)
        {
            Keep(bar.Axle, 5);
            Keep(bar.Body, 5);
            if (bar is { Axle: { } axle, Body: { } body })
            {
                _labels.Avoid([_projection.At(axle), _projection.At(body)]);
            }
        }

        foreach (Point at in _scene.Holes.Select(hole => hole.At).Concat(_scene.Ballast))
        {
            Keep(at, 4);
        }

        foreach (SceneUnit unit in _scene.Units)
        {
            Keep(unit.Axle, 4);
            Keep(unit.Body, 4);
            _labels.Avoid([_projection.At(unit.Axle), _projection.At(unit.Body)]);
        }

        foreach (ScreenPoint[] line in _lines.Drawn)
        {
            _labels.Avoid(line);
        }

        _labels.Avoid([new(_projection.Area.Left, _projection.Ground), new(_projection.Area.Right, _projection.Ground)]);
    }

    private static Point Middle(Point one, Point other) => new(0.5 * (one.Ahead + other.Ahead), 0.5 * (one.Up + other.Up));
}
