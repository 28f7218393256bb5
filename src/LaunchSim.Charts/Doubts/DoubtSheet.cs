using LaunchSim.Charts.Drawing;
using LaunchSim.Charts.Launch;
using OxyPlot;

namespace LaunchSim.Charts.Doubts;

/// <summary>
/// One sheet on how sure the answer is: bands over time at the left, at the right in what share of the cars each statement
/// holds, and which number to measure better first.
/// </summary>
public static class DoubtSheet
{
    private const double RightWidth = 440, Gutter = 26, Words = 22, Line = 18, AfterPart = 12, BarWidth = 70, BarHeight = 9, ValueWidth = 56;

    // So much of the launch has to be readable, s.
    private const double First = 0.6;

    // Names are fitted by the thinner cut; the bold one is wider by less than this.
    private const double BoldShare = 0.95;

    private const int MostNumbers = 6;

    private const EdgeRenderingMode Exact = EdgeRenderingMode.PreferGeometricAccuracy;

    /// <summary>The picture.</summary>
    /// <param name="data">What is drawn.</param>
    public static Picture Picture(DoubtSheetData data)
    {
        ArgumentNullException.ThrowIfNull(data);
        return new Picture(data.Title, PageFrame.Width, PageFrame.Height, canvas => Draw(canvas, data));
    }

    /// <summary>Draws the sheet.</summary>
    /// <param name="canvas">Where to.</param>
    /// <param name="data">What is drawn.</param>
    /// <returns>The page.</returns>
    internal static PageFrame Draw(IRenderContext canvas, DoubtSheetData data)
    {
        var page = new PageFrame(canvas, data.Title, data.Explanation, [], data.Imprint);
        OxyRect body = page.Body;
        double across = body.Width - RightWidth - Gutter;
        Bands(page, data, new OxyRect(body.Left, body.Top, across, body.Height));
        var right = new OxyRect(body.Right - RightWidth, body.Top, RightWidth, body.Height);
        int numbers = Math.Min(MostNumbers, data.Numbers.Count);
        string note = canvas.Broken(data.NumbersNote, RightWidth, Theme.Small);
        double noteHeight = note.Length == 0 ? 0 : canvas.MeasureText(note, Theme.FontFamily, Theme.Small, Theme.Normal).Height + 2;
        double numbersHeight = Words + (numbers * Line) + noteHeight;
        int statements = (int)((right.Height - numbersHeight - AfterPart - Words) / Line);
        Shares(page, "In what share of the cars it holds", [.. data.Statements.Take(Math.Max(1, statements))], right.TopLeft);
        var at = new ScreenPoint(right.Left, right.Bottom - numbersHeight);
        Shares(page, "What to measure better first", [.. data.Numbers.Take(numbers)], at);
        canvas.Text(note, new ScreenPoint(at.X, right.Bottom - noteHeight + 2), Theme.Small, Theme.Muted);
        return page;
    }

    // Both rises with one extent, side by side; below them separation and load.
    private static void Bands(PageFrame page, DoubtSheetData data, OxyRect area)
    {
        double width = (area.Width - Gutter) / 2, height = (area.Height - AfterPart) / 2;
        Extent rises = Extents(data.Rises);
        for (int i = 0; i < data.Rises.Count; i++)
        {
            Band(page, data.Rises[i], rises, new OxyRect(area.Left + (i * (width + Gutter)), area.Top, width, height));
        }

        Band(page, data.Separation, Extents([data.Separation]), new OxyRect(area.Left, area.Bottom - height, width, height));
        Band(page, data.RearLoad, Extents([data.RearLoad]), new OxyRect(area.Left + width + Gutter, area.Bottom - height, width, height));
    }

    private static Extent Extents(IReadOnlyList<DrawnBand> bands) =>
        Extent.Of(bands.SelectMany(band => band.Low.Concat(band.High).Concat(band.Own).Select(value => value / band.Scale.Factor)), bands[0].Least);

    private static void Band(PageFrame page, DrawnBand band, Extent extent, OxyRect area)
    {
        page.Heading(band.Heading, area.TopLeft, area.Width);
        double left = area.Left + Plot.Left - 6, top = area.Top + Words + Plot.Above - 2;
        var inner = new OxyRect(left, top, area.Right - left, area.Bottom - Plot.Below - top);
        DataPoint[] Points(IReadOnlyList<double> values) => [.. values.Select((value, row) => new DataPoint(row * band.Step, value / band.Scale.Factor))];
        DataPoint[] low = [.. Points(band.Low).TakeWhile(point => double.IsFinite(point.Y))], high = [.. Points(band.High).Take(low.Length)], own = Points(band.Own);
        int rows = Math.Max(low.Length, own.Count(point => double.IsFinite(point.Y)));
        var time = new TimeAxis(Math.Max(1, rows - 1) * band.Step, First);
        Plot plot = page.Plot(inner, time, extent, $"{band.Caption}, {band.Scale.Unit}");
        plot.Strip(low, high, Theme.Bar);
        _ = plot.Line(low, Pen.Measure.Of(0.7));
        _ = plot.Line(high, Pen.Measure.Of(0.7));
        Curve line = plot.Line(own, band.IsFront ? Pen.Front : Pen.Rear);
        plot.Draw();
        plot.Name(line, "own car");
        if (!plot.TryNameStrip(low, high, "9 in 10"))
        {
            plot.PointAtStrip(low, high, "9 in 10");
        }

        page.Caption(time.Squeezed is null ? "s" : time.Caption, plot);
    }

    // Name, value and a bar with the limits of its error as a whisker.
    private static void Shares(PageFrame page, string heading, IReadOnlyList<DrawnShare> shares, ScreenPoint at)
    {
        IRenderContext canvas = page.Canvas;
        page.Heading(heading, at, RightWidth);
        double bar = at.X + RightWidth - BarWidth - 4, value = bar - 8, names = value - ValueWidth - at.X;
        for (int i = 0; i < shares.Count; i++)
        {
            DrawnShare share = shares[i];
            double middle = at.Y + Words + (Line * (i + 0.5));
            canvas.Text(page.Fitted(share.Name, share.IsStrong ? BoldShare * names : names), new ScreenPoint(at.X, middle), Theme.Small, Theme.Ink, share.IsStrong ? Theme.Bold : Theme.Normal, HorizontalAlignment.Left, VerticalAlignment.Middle);
            canvas.Text(share.Value, new ScreenPoint(value, middle), Theme.Small, Theme.Ink, Theme.Normal, HorizontalAlignment.Right, VerticalAlignment.Middle);
            canvas.DrawRectangle(new OxyRect(bar, middle - (BarHeight / 2), BarWidth, BarHeight), Theme.Squeezed, Theme.Line, 0.8, Exact);
            double filled = BarWidth * Math.Clamp(share.Share, 0, 1);
            canvas.DrawRectangle(new OxyRect(bar, middle - (BarHeight / 2), filled, BarHeight), Theme.Line, Theme.Line, 0.8, Exact);
            double low = bar + (BarWidth * Math.Clamp(share.Low, 0, 1)), high = bar + (BarWidth * Math.Clamp(share.High, 0, 1));
            canvas.DrawLine([new(low, middle), new(high, middle)], Theme.Ink, 1.4, Exact);
            canvas.DrawLine([new(low, middle - 3), new(low, middle + 3)], Theme.Ink, 1.4, Exact);
            canvas.DrawLine([new(high, middle - 3), new(high, middle + 3)], Theme.Ink, 1.4, Exact);
        }
    }
}
