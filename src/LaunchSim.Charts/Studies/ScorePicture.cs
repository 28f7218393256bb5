using System.Globalization;
using LaunchSim.Charts.Drawing;
using OxyPlot;
using OxyPlot.Axes;

namespace LaunchSim.Charts.Studies;

/// <summary>
/// Set-ups with their scores as bars, each parted by aim from left to right in one order and from dark to light, so that a
/// grey print keeps the parts apart; and what one thing costs in another.
/// </summary>
public static class ScorePicture
{
    private const double Width = 1200, Margin = 28, Head = 92, Row = 30, Bar = 18, Legend = 30, FrontHeight = 300, Foot = 44, NameShare = 0.46, NoteWidth = 150;

    // Bars that are far longer than that of the set-up as it stands are cut: what matters is near it.
    private const double LongestOfPresent = 1.5;

    private const EdgeRenderingMode Exact = EdgeRenderingMode.PreferGeometricAccuracy;

    private static readonly OxyColor Dark = OxyColor.FromRgb(0x0A, 0x3C, 0x5C), Light = OxyColor.FromRgb(0xCF, 0xDE, 0xE8);

    /// <summary>The picture.</summary>
    /// <param name="title">What is seen.</param>
    /// <param name="of">What it is of.</param>
    /// <param name="aims">The aims that a score is put together from.</param>
    /// <param name="bars">The set-ups, in the order in which they are drawn.</param>
    /// <param name="fronts">What one thing costs in another; none or two.</param>
    /// <param name="notes">Notes at the foot, a sentence each.</param>
    public static Picture Of(string title, string of, IReadOnlyList<string> aims, IReadOnlyList<ScoreBar> bars, IReadOnlyList<FrontCourse> fronts, IReadOnlyList<string> notes)
    {
        ArgumentNullException.ThrowIfNull(aims);
        ArgumentNullException.ThrowIfNull(bars);
        ArgumentNullException.ThrowIfNull(fronts);
        double below = fronts.Any(front => front.Points.Count > 0) ? FrontHeight : 0;
        double height = (2 * Margin) + Head + Legend + (bars.Count * Row) + 20 + below + Foot;
        return new Picture(title, Width, height, canvas =>
        {
            var sheet = new Sheet(canvas, Width, height, Margin);
            sheet.Head(title, of);
            OxyRect room = sheet.Room(Foot);
            double top = room.Bottom - below - (bars.Count * Row) - 20;
            Keys(canvas, aims, new ScreenPoint(room.Left, top - Legend));
            Bars(canvas, bars, new OxyRect(room.Left, top, room.Width, bars.Count * Row));
            if (below > 0)
            {
                Fronts(canvas, fronts, new OxyRect(room.Left, room.Bottom - below + 20, room.Width, below - 20));
            }

            sheet.Foot(notes);
        });
    }

    private static OxyColor Shade(int aim, int aims) => OxyColor.Interpolate(Dark, Light, aims < 2 ? 0 : aim / (aims - 1.0));

    private static void Keys(IRenderContext canvas, IReadOnlyList<string> aims, ScreenPoint at)
    {
        double x = at.X;
        canvas.Text("points by aim, from the left:", new ScreenPoint(x, at.Y), Theme.Small, Theme.Muted);
        x += canvas.MeasureText("points by aim, from the left:", Theme.FontFamily, Theme.Small, Theme.Normal).Width + 14;
        for (int i = 0; i < aims.Count; i++)
        {
            canvas.DrawRectangle(new OxyRect(x, at.Y + 1, 12, 12), Shade(i, aims.Count), Theme.Line, 0.6, Exact);
            canvas.Text(aims[i], new ScreenPoint(x + 17, at.Y), Theme.Small, Theme.Ink);
            x += 17 + canvas.MeasureText(aims[i], Theme.FontFamily, Theme.Small, Theme.Normal).Width + 16;
        }
    }

    private static void Bars(IRenderContext canvas, IReadOnlyList<ScoreBar> bars, OxyRect area)
    {
        double present = bars.FirstOrDefault(bar => bar.IsPresent)?.Shares.Sum() ?? 0;
        double[] sums = [.. bars.Where(bar => bar.Shares.Count > 0).Select(bar => bar.Shares.Sum())];
        double longest = sums.Length == 0 ? 1 : present > 0 ? Math.Min(sums.Max(), LongestOfPresent * present) : sums.Max();
        longest = longest > 0 ? longest : 1;
        double left = area.Left + (NameShare * area.Width), wide = area.Right - left - NoteWidth;
        canvas.DrawLine([new(left, area.Top - 2), new(left, area.Bottom)], Theme.Line, 1, Exact);
        if (present > 0 && present <= longest)
        {
            double at = left + (present / longest * wide);
            canvas.DrawLine([new(at, area.Top - 2), new(at, area.Bottom)], Theme.Muted, 1, Exact, Theme.Dot);
        }

        for (int i = 0; i < bars.Count; i++)
        {
            double y = area.Top + (i * Row), middle = y + (Row / 2);
            ScoreBar bar = bars[i];
            string name = Fitting(canvas, bar.Name, left - area.Left - 12, bar.IsPresent ? Theme.Bold : Theme.Normal);
            canvas.Text(name, new ScreenPoint(left - 10, middle), Theme.Small + 1, Theme.Ink, bar.IsPresent ? Theme.Bold : Theme.Normal, HorizontalAlignment.Right, VerticalAlignment.Middle);
            double sum = bar.Shares.Sum(), x = left, edge = left + wide;
            for (int k = 0; k < bar.Shares.Count; k++)
            {
                double end = Math.Min(edge, x + (bar.Shares[k] / longest * wide));
                if (end - x > 0.3)
                {
                    canvas.DrawRectangle(new OxyRect(x, middle - (Bar / 2), end - x, Bar), Shade(k, bar.Shares.Count), Theme.Paper, 0.8, Exact);
                }

                x = end;
            }

            bool isCut = bar.Shares.Count > 0 && sum > longest * 1.0001;
            if (isCut)
            {
                // A torn end: it goes on.
                canvas.DrawLine([new(edge - 7, middle + (Bar / 2) + 2), new(edge - 1, middle - (Bar / 2) - 2)], Theme.Paper, 4, Exact);
            }

            string total = bar.Shares.Count == 0 ? "no score" : sum.ToString("0.00", CultureInfo.InvariantCulture);
            string note = bar.Note.Length > 0 ? $"{total}  {bar.Note}" : total;
            note = Fitting(canvas, note, area.Right - x - 8, Theme.Bold);
            OxySize size = canvas.MeasureText(note, Theme.FontFamily, Theme.Small, Theme.Bold);
            canvas.DrawRectangle(new OxyRect(x + 6, middle - (size.Height / 2), size.Width + 4, size.Height), Theme.Paper, OxyColors.Undefined, 0, Exact);
            canvas.Text(note, new ScreenPoint(x + 8, middle), Theme.Small, Theme.Ink, Theme.Bold, HorizontalAlignment.Left, VerticalAlignment.Middle);
        }
    }

    private static void Fronts(IRenderContext canvas, IReadOnlyList<FrontCourse> fronts, OxyRect area)
    {
        double wide = (area.Width - ((fronts.Count - 1) * 40.0)) / fronts.Count;
        for (int i = 0; i < fronts.Count; i++)
        {
            Front(canvas, fronts[i], new OxyRect(area.Left + (i * (wide + 40)) + Plot.Left, area.Top + Plot.Above, wide - Plot.Left - Plot.Right, area.Height - Plot.Above - Plot.Below - 8));
        }
    }

    private static void Front(IRenderContext canvas, FrontCourse front, OxyRect area)
    {
        FrontPoint[] others = [.. new[] { front.Present, front.Best }.OfType<FrontPoint>()];
        Extent across = Extent.Of([.. front.Points.Concat(others).Select(point => point.X)], 1), up = Extent.Of([.. front.Points.Concat(others).Select(point => point.Y)], 1e-3);
        var axis = new LinearAxis { Position = AxisPosition.Bottom, Minimum = across.Low, Maximum = across.High, IntervalLength = 70, Title = null };
        var plot = new Plot(canvas, area, axis, up, front.Caption);
        DataPoint[] steps = [.. front.Points.SelectMany((point, i) => i == 0 ? [new DataPoint(point.X, point.Y)] : new[] { new DataPoint(point.X, front.Points[i - 1].Y), new DataPoint(point.X, point.Y) })];
        _ = plot.Line(steps, new Pen(Theme.Rear, 1.6));
        plot.Draw();
        foreach (FrontPoint point in front.Points)
        {
            canvas.Dot(plot.At(point.X, point.Y), 3, Theme.Rear);
        }

        canvas.Text(front.Along, new ScreenPoint(area.Right, area.Bottom + 18), Theme.Small, Theme.Muted, Theme.Normal, HorizontalAlignment.Right);
        if (front.Best is { } best)
        {
            plot.Mark(best.X, best.Y, "best score", Theme.Ink);
        }

        if (front.Present is { } present)
        {
            plot.Mark(present.X, present.Y, "as it stands", Theme.Ink, above: false);
        }
    }

    private static string Fitting(IRenderContext canvas, string text, double width, double weight)
    {
        string fitting = text;
        for (int length = text.Length; length > 1 && canvas.MeasureText(fitting, Theme.FontFamily, Theme.Small + 1, weight).Width > width; length--)
        {
            fitting = text[..(length - 1)] + "…";
        }

        return fitting;
    }
}
