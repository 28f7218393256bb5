using LaunchSim.Charts.Drawing;
using LaunchSim.Charts.Launch;
using OxyPlot;
using OxyPlot.Axes;

namespace LaunchSim.Charts.Fits;

/// <summary>Channels of passes with the file's prediction and the fit's, and below each what is left: measured less fitted.</summary>
public static class FitSheet
{
    private const int Across = 2, Down = 2;

    private const double Gutter = 22, Words = 20, Dot = 1.7, RestShare = 0.32;

    /// <summary>Pages of four channels.</summary>
    /// <param name="data">What is drawn.</param>
    public static IReadOnlyList<Picture> Pictures(FitSheetData data)
    {
        ArgumentNullException.ThrowIfNull(data);
        int pages = (data.Channels.Count + (Across * Down) - 1) / (Across * Down);
        return [.. Enumerable.Range(0, pages).Select(page => new Picture(
            data.Title, PageFrame.Width, PageFrame.Height, canvas => _ = Draw(canvas, data, [.. data.Channels.Skip(page * Across * Down).Take(Across * Down)])))];
    }

    /// <summary>Draws one page.</summary>
    /// <param name="canvas">Where to.</param>
    /// <param name="data">Title and words.</param>
    /// <param name="channels">Its channels, at most four.</param>
    /// <returns>The page.</returns>
    internal static PageFrame Draw(IRenderContext canvas, FitSheetData data, IReadOnlyList<DrawnChannel> channels)
    {
        var page = new PageFrame(canvas, data.Title, data.Explanation, [], data.Imprint);
        int rows = channels.Count > Across ? Down : 1, columns = Math.Min(Across, channels.Count);
        double width = (page.Body.Width - ((columns - 1) * Gutter)) / columns, height = (page.Body.Height - ((rows - 1) * 8)) / rows;
        for (int i = 0; i < channels.Count; i++)
        {
            Channel(page, channels[i], new OxyRect(page.Body.Left + (i % Across * (width + Gutter)), page.Body.Top + (i / Across * (height + 8)), width, height));
        }

        return page;
    }

    private static void Channel(PageFrame page, DrawnChannel channel, OxyRect area)
    {
        page.Heading(channel.Heading, area.TopLeft, area.Width);
        double left = area.Left + Plot.Left - 6, top = area.Top + Words + Plot.Above, right = area.Right - Plot.Right;
        double free = area.Bottom - top - Plot.Below - Plot.Above - 4, rest = RestShare * free;
        DataPoint[] Points(IReadOnlyList<double> values) => [.. values.Select((value, i) => new DataPoint(channel.Times[i], value / channel.Scale.Factor))];
        DataPoint[] measured = Points(channel.Measured), before = Points(channel.Before), after = Points(channel.After);
        Plot plot = page.Plot(new OxyRect(left, top, right - left, free - rest), Time(channel, named: false), Extent.Of(measured.Concat(before).Concat(after).Select(point => point.Y), 1e-9), $"{channel.Caption}, {channel.Scale.Unit}");
        plot.Dots(measured, Dot, Theme.Line);
        Curve file = plot.Line(before, new Pen(Theme.Ink, 1.3, Theme.Dot));
        Curve fit = plot.Line(after, channel.IsFront ? Pen.Front.Of(1.6) : Pen.Rear.Of(1.6));
        plot.Draw();
        plot.Name(fit, "fit");
        plot.Name(file, "file");

        DataPoint[] rests = [.. measured.Select((point, i) => new DataPoint(point.X, point.Y - after[i].Y))];
        double noise = channel.Noise / channel.Scale.Factor;
        Plot residuals = page.Plot(new OxyRect(left, area.Bottom - Plot.Below - rest, right - left, rest), Time(channel, named: true), Extent.Of([.. rests.Select(point => point.Y), 2 * noise, -2 * noise], 1e-9), "measured less fit; the band is twice the noise");
        residuals.Strip([new(channel.Times[0], -2 * noise), new(channel.Times[^1], -2 * noise)], [new(channel.Times[0], 2 * noise), new(channel.Times[^1], 2 * noise)], Theme.Wanted);
        residuals.Dots(rests, Dot, Theme.Ink);
        residuals.Draw();
        page.Caption("s", residuals);
    }

    private static LinearAxis Time(DrawnChannel channel, bool named) => new()
    {
        Position = AxisPosition.Bottom,
        Minimum = Math.Min(0, channel.Times[0]),
        Maximum = channel.Times[^1],
        IntervalLength = 60,
        LabelFormatter = named ? null : _ => "",
    };
}
