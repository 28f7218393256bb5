using LaunchSim.Charts.Drawing;
using LaunchSim.Reports.Numbers;
using OxyPlot;
using OxyPlot.Axes;

namespace LaunchSim.Charts.Dyno;

/// <summary>What a dyno measured at one click, gas taken out: speed positive opening, force positive against opening.</summary>
/// <param name="Speeds">Shaft speeds, m/s.</param>
/// <param name="Forces">Forces, N.</param>
/// <param name="IsJoined">Whether each point follows from the one before, as in strokes; otherwise they stand for themselves.</param>
public sealed record MeasuredLoop(IReadOnlyList<double> Speeds, IReadOnlyList<double> Forces, bool IsJoined);

/// <summary>One row of a table: speeds from 0, forces that resist.</summary>
/// <param name="Name">What it is called in the picture, such as <c>click 6</c>.</param>
/// <param name="IsExtension">Which side.</param>
/// <param name="Speeds">m/s.</param>
/// <param name="Forces">N.</param>
public sealed record TableRow(string Name, bool IsExtension, IReadOnlyList<double> Speeds, IReadOnlyList<double> Forces);

/// <summary>Measured loops, and the tables made of them over these.</summary>
public static class DamperSheetChart
{
    private const double Width = 1040, Height = 640, Margin = 22, Foot = 24;

    // More points than a picture shows apart.
    private const int MostPoints = 4000;

    /// <summary>The picture.</summary>
    /// <param name="title">What is seen.</param>
    /// <param name="of">What it was made of.</param>
    /// <param name="loops">The measurements.</param>
    /// <param name="rows">The tables.</param>
    /// <param name="readout">The units.</param>
    public static Picture Of(string title, string of, IReadOnlyList<MeasuredLoop> loops, IReadOnlyList<TableRow> rows, Readout readout)
    {
        ArgumentNullException.ThrowIfNull(loops);
        ArgumentNullException.ThrowIfNull(rows);
        ArgumentNullException.ThrowIfNull(readout);
        return new Picture(title, Width, Height, canvas => Draw(canvas, title, of, loops, rows, readout));
    }

    private static void Draw(IRenderContext canvas, string title, string of, IReadOnlyList<MeasuredLoop> loops, IReadOnlyList<TableRow> rows, Readout readout)
    {
        var sheet = new Sheet(canvas, Width, Height, Margin);
        sheet.Head(title, of);
        string thin = loops.Any(loop => loop.IsJoined) ? "Thin" : "Rings";
        sheet.Foot([$"{thin}: as measured, the gas force taken out. Thick, with dots: the table. Opening right of zero and up, closing left and down; opening solid, closing dashed."]);
        OxyRect room = sheet.Room(Foot);
        var area = new OxyRect(room.Left + Plot.Left - 6, room.Top + Plot.Above, room.Width - Plot.Left - Plot.Right + 6, room.Height - Plot.Above - Plot.Below);
        Scale speed = readout.ShaftSpeed, force = readout.Force;
        DataPoint[][] measured = [.. loops.Select(loop => Thinned(loop, speed, force))];
        DataPoint[][] tables = [.. rows.Select(row => row.Speeds.Select((value, i) => new DataPoint(Sign(row) * value / speed.Factor, Sign(row) * row.Forces[i] / force.Factor)).ToArray())];
        IEnumerable<DataPoint> all = measured.Concat(tables).SelectMany(points => points);
        var across = Extent.Of(all.Select(point => point.X), 1);
        var axis = new LinearAxis { Position = AxisPosition.Bottom, Minimum = across.Low, Maximum = across.High, IntervalLength = 70 };
        var plot = new Plot(canvas, area, axis, Extent.Of(all.Select(point => point.Y), 10), $"Force of one damper, {force.Unit}");
        foreach (DataPoint[] points in measured.Where((_, i) => loops[i].IsJoined))
        {
            _ = plot.Line(points, new Pen(Theme.Line, 1));
        }

        Curve[] curves = [.. rows.Select((row, i) => plot.Line(tables[i], new Pen(Color(rows, row), 2.2, row.IsExtension ? null : Theme.Dash)))];
        plot.Draw();
        foreach (DataPoint point in measured.Where((_, i) => !loops[i].IsJoined).SelectMany(points => points))
        {
            canvas.Ring(plot.At(point.X, point.Y), 5, Theme.Muted, 1);
        }

        for (int i = 0; i < rows.Count; i++)
        {
            foreach (DataPoint point in tables[i])
            {
                ScreenPoint at = plot.At(point.X, point.Y);
                canvas.Dot(at, 3, Color(rows, rows[i]));
                plot.Labels.Keep(new OxyRect(at.X - 6, at.Y - 6, 12, 12));
            }
        }

        for (int i = 0; i < rows.Count; i++)
        {
            plot.Name(curves[i], rows[i].Name);
        }

        canvas.Text($"Shaft speed, {speed.Unit}", new ScreenPoint(area.Right, area.Bottom + Plot.Below), Theme.Small, Theme.Muted, Theme.Normal, HorizontalAlignment.Right, VerticalAlignment.Bottom);
    }

    private static int Sign(TableRow row) => row.IsExtension ? 1 : -1;

    // Neighbouring clicks apart in colour, the same click's two sides alike.
    private static OxyColor Color(IReadOnlyList<TableRow> rows, TableRow row)
    {
        OxyColor[] colors = [Theme.Rear, Theme.Front, Theme.Third, Theme.Fourth];
        return colors[rows.Where(one => one.IsExtension == row.IsExtension).TakeWhile(one => one != row).Count() % colors.Length];
    }

    private static DataPoint[] Thinned(MeasuredLoop loop, Scale speed, Scale force)
    {
        int stride = Math.Max(1, loop.Speeds.Count / MostPoints);
        return [.. Enumerable.Range(0, (loop.Speeds.Count + stride - 1) / stride).Select(i => new DataPoint(loop.Speeds[i * stride] / speed.Factor, loop.Forces[i * stride] / force.Factor))];
    }
}
