using LaunchSim.Charts.Drawing;
using LaunchSim.Charts.Launch;
using OxyPlot;

namespace LaunchSim.Charts.Measured;

/// <summary>
/// Measured over predicted: the prediction as a solid line, data as marks at their instants. Nothing rests on colour: each
/// log has marks of its own shape.
/// </summary>
public static class MeasuredCharts
{
    /// <summary>How many logs have marks of their own.</summary>
    public const int MostTraces = 3;

    /// <summary>How many quantities the sheet has room for.</summary>
    public const int MostPanels = 6;

    // Marks nearer to one another than this are a smear, in the picture's units.
    private const double Apart = 5, MarkRadius = 2.4;

    private const double FirstSecond = 1;

    private static readonly OxyColor[] Colors = [Theme.Front, Theme.Third, Theme.Fourth];

    /// <summary>One quantity on a page of its own.</summary>
    /// <param name="panel">The quantity.</param>
    /// <param name="text">What stands around it.</param>
    /// <param name="duration">Where the prediction ends, s.</param>
    public static Picture Chart(MeasuredPanel panel, MeasuredPageText text, double duration)
    {
        ArgumentNullException.ThrowIfNull(panel);
        ArgumentNullException.ThrowIfNull(text);
        return new Picture(text.Title, PageFrame.Width, PageFrame.Height, canvas => Draw(Page(canvas, text), [panel], duration));
    }

    /// <summary>The most telling quantities beside one another.</summary>
    /// <param name="panels">The quantities; those beyond <see cref="MostPanels"/> are left out.</param>
    /// <param name="text">What stands around them.</param>
    /// <param name="duration">Where the prediction ends, s.</param>
    public static Picture Sheet(IReadOnlyList<MeasuredPanel> panels, MeasuredPageText text, double duration)
    {
        ArgumentNullException.ThrowIfNull(panels);
        ArgumentNullException.ThrowIfNull(text);
        return new Picture(text.Title, PageFrame.Width, PageFrame.Height, canvas => Draw(Page(canvas, text), [.. panels.Take(MostPanels)], duration));
    }

    private static PageFrame Page(IRenderContext canvas, MeasuredPageText text) => new(canvas, text.Title, text.Explanation, [], text.Imprint);

    /// <summary>Draws panels into the body of a page.</summary>
    internal static PageFrame Draw(PageFrame page, IReadOnlyList<MeasuredPanel> panels, double duration)
    {
        int columns = panels.Count > 2 ? 2 : 1, rows = (panels.Count + columns - 1) / columns;
        double wide = (page.Body.Width - ((columns - 1) * PageFrame.Margin)) / columns, tall = page.Body.Height / rows;
        for (int i = 0; i < panels.Count; i++)
        {
            // The last one takes the whole row when it stands alone.
            double width = i == panels.Count - 1 && panels.Count % columns == 1 && columns > 1 ? page.Body.Width : wide;
            var area = new OxyRect(
                page.Body.Left + (i % columns * (wide + PageFrame.Margin)) + Plot.Left - 6, page.Body.Top + (i / columns * tall) + Plot.Above,
                width - Plot.Left - Plot.Right + 6, tall - Plot.Above - Plot.Below);
            Panel(page, area, panels[i], duration, columns > 1);
        }

        return page;
    }

    private static void Panel(PageFrame page, OxyRect area, MeasuredPanel panel, double duration, bool isNarrow)
    {
        double factor = panel.Scale.Factor;
        var time = new TimeAxis(duration, FirstSecond);
        DataPoint[] predicted = [.. panel.Predicted.Select(point => new DataPoint(point.Time, point.Value / factor))];
        MeasuredTrace[] traces = [.. panel.Measured.Take(MostTraces)];
        DataPoint[][] measured = [.. traces.Select(trace => Within(trace, duration, factor))];
        Plot plot = page.Plot(area, time, Extent.Of(predicted.Concat(measured.SelectMany(points => points)).Select(point => point.Y), panel.Least / factor), $"{panel.Caption}, {panel.Scale.Unit}");

        // A hair of a line keeps marks together and gives the name its place.
        Curve[] hairs = [.. measured.Select((points, i) => plot.Line(points, new Pen(Colors[i], 0.7)))];
        Curve line = plot.Line(predicted, new Pen(Theme.Ink, 2.2));
        plot.Draw();
        for (int i = 0; i < measured.Length; i++)
        {
            Marks(page.Canvas, plot, measured[i], i);
        }

        for (int i = 0; i < hairs.Length; i++)
        {
            plot.Name(hairs[i], hairs.Length == 1 ? "measured" : $"measured, {traces[i].Label}");
        }

        plot.Name(line, "predicted");
        page.Caption(isNarrow ? Overlay.OverlayPage.ShortCaption(time) : time.Caption, plot);
    }

    private static DataPoint[] Within(MeasuredTrace trace, double duration, double factor) =>
        [.. trace.Times.Zip(trace.Values).Where(point => point.First >= 0 && point.First <= duration).Select(point => new DataPoint(point.First, point.Second / factor))];

    private static void Marks(IRenderContext canvas, Plot plot, DataPoint[] points, int shape)
    {
        const EdgeRenderingMode Exact = EdgeRenderingMode.PreferGeometricAccuracy;
        double last = double.NegativeInfinity;
        foreach (DataPoint point in points)
        {
            ScreenPoint at = plot.At(point.X, point.Y);
            if (at.X - last < Apart || !plot.Holds(at))
            {
                continue;
            }

            last = at.X;
            switch (shape)
            {
                case 0:
                    canvas.DrawEllipse(new OxyRect(at.X - MarkRadius, at.Y - MarkRadius, 2 * MarkRadius, 2 * MarkRadius), Colors[0], OxyColors.Undefined, 0, Exact);
                    break;
                case 1:
                    canvas.DrawEllipse(new OxyRect(at.X - MarkRadius, at.Y - MarkRadius, 2 * MarkRadius, 2 * MarkRadius), Theme.Paper, Colors[1], 1.3, Exact);
                    break;
                default:
                    canvas.DrawLine([new(at.X - MarkRadius, at.Y - MarkRadius), new(at.X + MarkRadius, at.Y + MarkRadius)], Colors[2], 1.3, Exact);
                    canvas.DrawLine([new(at.X - MarkRadius, at.Y + MarkRadius), new(at.X + MarkRadius, at.Y - MarkRadius)], Colors[2], 1.3, Exact);
                    break;
            }
        }
    }
}
