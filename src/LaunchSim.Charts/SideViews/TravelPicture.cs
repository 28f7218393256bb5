using LaunchSim.Charts.Drawing;
using LaunchSim.Geometry;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using OxyPlot;
using OxyPlot.Axes;

namespace LaunchSim.Charts.SideViews;

/// <summary>Percent and instant centre against the body's height over the axle.</summary>
public static class TravelPicture
{
    private const double Width = 1040, Height = 760, Margin = 28, FootRoom = 40;

    // What is farther than this, in wheelbases and in percent, is on its way to infinity and leaves the frame.
    private const double FarAway = 2, FarPercent = 400;

    /// <summary>The picture; null when the height of the rear wheel centre is not known.</summary>
    /// <param name="report">What the side view tells.</param>
    /// <param name="readout">The units.</param>
    public static Picture? Of(GeometryReport report, Readout readout)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(readout);
        return TravelCourse.Of(report) is { } course ? Of(report, course, readout) : null;
    }

    private static Picture Of(GeometryReport report, TravelCourse course, Readout readout)
    {
        string title = Title(course, readout);
        return new Picture(title, Width, Height, canvas =>
        {
            var sheet = new Sheet(canvas, Width, Height, Margin);
            sheet.Head(title, $"{report.Scenario.Name}: the body moved straight up and down, the rear wheel where it stands");
            OxyRect room = sheet.Room(FootRoom);
            double left = room.Left + Plot.Left, width = room.Width - Plot.Left - Plot.Right;
            double free = room.Height - (3 * Plot.Above) - Plot.Below - 24;
            double[] heights = [0.5 * free, 0.25 * free, 0.25 * free];
            double top = room.Top + Plot.Above;
            StaticLine standing = report.View.Line;
            double reach = FarAway * report.View.Wheelbase;
            Scale place = readout.Place;
            double percent = double.IsFinite(standing.Percent) ? standing.Percent : 100;

            // A point that is far away ahead has no place up either.
            double Near(StaticLine line, double value) => Math.Abs(line.InstantCentreAhead - (double.IsFinite(standing.InstantCentreAhead) ? standing.InstantCentreAhead : 0)) <= reach ? value : double.NaN;

            DataPoint[] percents = Points(course, readout, row => row.Line.Percent, percent, FarPercent, 1);
            Panel(canvas, course, readout, new OxyRect(left, top, width, heights[0]), percents, 100, "Percent anti-squat, %", false, plot =>
            {
                if (double.IsFinite(standing.Percent))
                {
                    plot.Mark(0, standing.Percent, $"{StaticLineWords.Percent(standing.Percent)} standing", Theme.Ink);
                }
            });
            top += heights[0] + Plot.Above + 12;
            DataPoint[] ahead = Points(course, readout, row => Near(row.Line, row.Line.InstantCentreAhead), standing.InstantCentreAhead, reach, place.Factor);
            Panel(canvas, course, readout, new OxyRect(left, top, width, heights[1]), ahead, null, $"Instant centre ahead of the rear axle, {place.Unit}", false, plot => MarkPlace(plot, standing.InstantCentreAhead, place));
            top += heights[1] + Plot.Above + 12;
            DataPoint[] up = Points(course, readout, row => Near(row.Line, row.Line.InstantCentreUp), standing.InstantCentreUp, reach, place.Factor);
            Panel(canvas, course, readout, new OxyRect(left, top, width, heights[2]), up, null, $"Instant centre above the ground, {place.Unit}", true, plot => MarkPlace(plot, standing.InstantCentreUp, place));
            canvas.Text($"body above standing, {readout.Travel.Unit}", new ScreenPoint(left + width, top + heights[2] + Plot.Below), Theme.Small, Theme.Muted, Theme.Normal, HorizontalAlignment.Right, VerticalAlignment.Bottom);
            sheet.Foot(Notes(report, course, percents, ahead));
        });
    }

    private static void Panel(IRenderContext canvas, TravelCourse course, Readout readout, OxyRect area, DataPoint[] points, double? level, string caption, bool isNamed, Action<Plot> mark)
    {
        Scale travel = readout.Travel;
        double room = 0.03 * (course.Rows[^1].BodyUp - course.Rows[0].BodyUp);
        var across = new LinearAxis
        {
            Position = AxisPosition.Bottom,
            Minimum = (course.Rows[0].BodyUp - room) / travel.Factor,
            Maximum = (course.Rows[^1].BodyUp + room) / travel.Factor,
            LabelFormatter = isNamed ? null : _ => "",
        };
        IEnumerable<double> values = points.Select(point => point.Y);
        var plot = new Plot(canvas, area, across, Extent.Of(level is { } also ? values.Append(also) : values, readout.IsShop ? 4 : 100), caption);
        Curve? neutral = level is { } at ? plot.Level(at, new Pen(Theme.Ink, 1.5, Theme.LongDash)) : null;
        _ = plot.Line(points, Pen.Rear);
        plot.Draw();
        Upright(canvas, plot, 0, Theme.Muted, Theme.Dot, isNamed ? "standing" : null);
        Upright(canvas, plot, course.Bottom / travel.Factor, Theme.Ink, null, isNamed ? "bottom stop" : null);
        Upright(canvas, plot, course.Top / travel.Factor, Theme.Ink, null, isNamed ? "top stop" : null);
        mark(plot);
        if (neutral is not null)
        {
            plot.Name(neutral, "100 %: neutral");
        }

        if (points.All(point => !double.IsFinite(point.Y)))
        {
            _ = plot.Labels.Place("far away: the bars are parallel or nearly so", plot.Area.Center, new LabelStyle { On = true });
        }
    }

    private static void Upright(IRenderContext canvas, Plot plot, double? at, OxyColor color, double[]? dash, string? name)
    {
        if (at is not { } place)
        {
            return;
        }

        double x = plot.At(place, 0).X;
        ScreenPoint[] line = [new(x, plot.Area.Top), new(x, plot.Area.Bottom)];
        canvas.Path(line, color, 1.4, dash);
        plot.Labels.Avoid(line);
        if (name is not null)
        {
            _ = plot.Labels.Offer(name, new ScreenPoint(x, plot.Area.Bottom - 12), new LabelStyle { Color = color, Directions = [0, 180] });
        }
    }

    private static void MarkPlace(Plot plot, double value, Scale place)
    {
        if (double.IsFinite(value))
        {
            plot.Mark(0, value / place.Factor, $"{place.Text(value)} standing", Theme.Ink);
        }
    }

    private static DataPoint[] Points(TravelCourse course, Readout readout, Func<TravelRow, double> value, double standing, double reach, double factor)
    {
        double centre = double.IsFinite(standing) ? standing : 0;
        return [.. course.Rows.Select(row => new DataPoint(row.BodyUp / readout.Travel.Factor, Math.Abs(value(row) - centre) <= reach ? value(row) / factor : double.NaN))];
    }

    private static string Title(TravelCourse course, Readout readout)
    {
        TravelRow now = course.Rows.MinBy(row => Math.Abs(row.BodyUp))!;
        double wanted = readout.IsShop ? 2 * 0.0254 : 0.050;
        TravelRow then = course.Rows.MinBy(row => Math.Abs(row.BodyUp - wanted))!;
        double first = now.Line.Percent, second = then.Line.Percent;
        if (!double.IsFinite(first) || !double.IsFinite(second) || then == now)
        {
            return $"{StaticLineWords.Percent(first)} standing";
        }

        string way = Readout.Percent.Number(first) == Readout.Percent.Number(second) ? "and still" : second < first ? "falling to" : "rising to";
        return $"{Readout.Percent.Text(first)} standing, {way} {Readout.Percent.Text(second)} with the body {readout.Travel.With(readout.IsShop ? 1 : 0).Text(then.BodyUp)} up";
    }

    private static List<string> Notes(GeometryReport report, TravelCourse course, params DataPoint[][] curves)
    {
        var notes = new List<string>();
        if (curves.Any(curve => curve.Any(point => !double.IsFinite(point.Y))))
        {
            notes.Add("A curve that ends has left the frame: the instant centre is far away there.");
        }

        notes.Add(course is { Bottom: null, Top: null }
            ? report.IsStanding ? "No stop of the dampers is met within this travel." : "The dampers' stops are not in the file."
            : "The dampers' stops end the travel.");
        notes.Add("Height of the centre of gravity and wheelbase are those of the standing car.");
        return notes;
    }
}
