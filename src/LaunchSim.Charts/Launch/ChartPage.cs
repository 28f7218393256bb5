using LaunchSim.Charts.Drawing;
using LaunchSim.Figures;
using LaunchSim.Reports.Words;
using OxyPlot;

namespace LaunchSim.Charts.Launch;

/// <summary>
/// A landscape page about a launch: title, body, foot. It is laid out to be read 6 in wide, as on a phone: its smallest
/// text is then as high as small print, 5 points.
/// </summary>
internal sealed class ChartPage
{
    /// <summary>Its size in the picture's units.</summary>
    public const double Width = 1040, Height = 585;

    /// <summary>What is left free around it.</summary>
    public const double Margin = 22;

    // Titles are shrunk a little before they are broken.
    private static readonly double[] TitleSizes = [Theme.Title, 22, 20, 18];

    // Between two plots one above the other: half a number.
    private const double Apart = 8;

    private const double FirstSecond = 1;

    private const double Inner = Width - (2 * Margin), LineHeight = 17;
    private const EdgeRenderingMode Exact = EdgeRenderingMode.PreferGeometricAccuracy;

    private readonly List<Labels> _labels = [];

    /// <summary>Draws title and foot; the body is the caller's.</summary>
    /// <param name="canvas">Where to.</param>
    /// <param name="view">The launch.</param>
    /// <param name="title">What is seen.</param>
    /// <param name="explanation">How to read it; may be empty.</param>
    public ChartPage(IRenderContext canvas, LaunchView view, string title, string explanation = "")
    {
        (Canvas, View) = (canvas, view);
        double top = Margin - 6;
        double size = Array.Find(TitleSizes, one => canvas.MeasureText(title, Theme.FontFamily, one, Theme.Bold).Width <= Inner);
        top += canvas.Wrapped(title, new ScreenPoint(Margin, top), Inner, size > 0 ? size : TitleSizes[^1], Theme.Ink, Theme.Bold) + 2;
        if (explanation.Length > 0)
        {
            top += canvas.Wrapped(explanation, new ScreenPoint(Margin, top), Inner, Theme.Body, Theme.Muted) + 2;
        }

        if (explanation.Length > 0 && view.Run.Failure is { } failure)
        {
            top += canvas.Wrapped(FailureWords.Of(failure), new ScreenPoint(Margin, top), Inner, Theme.Body, Theme.Ink, Theme.Bold) + 2;
        }

        double foot = Height - Margin - (2 * LineHeight) + 8;
        canvas.Text(Fitted(Imprint(view)), new ScreenPoint(Margin, foot), Theme.Small, Theme.Muted);
        canvas.Text(LimitWords.Caution, new ScreenPoint(Margin, foot + LineHeight), Theme.Small, Theme.Muted);
        Body = new OxyRect(Margin, top + 6, Inner, foot - 8 - top - 6);
    }

    /// <summary>Where it is drawn.</summary>
    public IRenderContext Canvas { get; }

    /// <summary>The launch.</summary>
    public LaunchView View { get; }

    /// <summary>What is left between title and foot.</summary>
    public OxyRect Body { get; }

    /// <summary>The labels that were put on the page's plots.</summary>
    public IEnumerable<PlacedLabel> Placed => _labels.SelectMany(labels => labels.Placed);

    /// <summary>A plot on this page.</summary>
    /// <param name="area">The area between its axes.</param>
    /// <param name="across">Its horizontal axis.</param>
    /// <param name="extent">What the vertical axis holds.</param>
    /// <param name="caption">What the vertical axis measures and in which unit.</param>
    public Plot Plot(OxyRect area, OxyPlot.Axes.Axis across, Extent extent, string caption)
    {
        var plot = new Plot(Canvas, area, across, extent, caption);
        _labels.Add(plot.Labels);
        return plot;
    }

    /// <summary>Counts labels of something else that was drawn on the page.</summary>
    /// <param name="labels">The labels.</param>
    public void Add(Labels labels) => _labels.Add(labels);

    /// <summary>A time axis over the whole launch.</summary>
    /// <param name="first">How much of it must be readable, s.</param>
    /// <param name="named">Whether its ticks have numbers.</param>
    public TimeAxis Time(double first = FirstSecond, bool named = true) => new(View.End, first, named);

    /// <summary>One plot over the body's whole width, or several under one another with one time axis.</summary>
    /// <param name="lanes">What happened, above the first plot.</param>
    /// <param name="shares">How the height is shared out, one number a plot.</param>
    /// <returns>The areas between the axes.</returns>
    public OxyRect[] Rows(EventLanes lanes, params double[] shares)
    {
        double left = Body.Left + Drawing.Plot.Left - 6, top = Body.Top + lanes.Height;
        double free = Body.Bottom - top - Drawing.Plot.Below - (shares.Length * Drawing.Plot.Above) - ((shares.Length - 1) * Apart), sum = shares.Sum();
        var areas = new OxyRect[shares.Length];
        for (int i = 0; i < shares.Length; i++)
        {
            double height = free * shares[i] / sum;
            areas[i] = new OxyRect(left, top + Drawing.Plot.Above, Body.Right - Drawing.Plot.Right - left, height);
            top += Drawing.Plot.Above + height + Apart;
        }

        return areas;
    }

    /// <summary>What stands below a time axis, and where the run stopped if it did.</summary>
    /// <param name="time">The axis, drawn.</param>
    /// <param name="plots">The plots above it, the lowest last.</param>
    public void Finish(TimeAxis time, params Plot[] plots)
    {
        OxyRect lowest = plots[^1].Area;
        Canvas.Text(time.Caption, new ScreenPoint(lowest.Right, lowest.Bottom + Drawing.Plot.Below), Theme.Small, Theme.Muted, Theme.Normal, HorizontalAlignment.Right, VerticalAlignment.Bottom);
        if (View.Run.Failure is null)
        {
            return;
        }

        foreach (Plot plot in plots)
        {
            double x = plot.At(View.Duration, 0).X;
            Canvas.DrawLine([new(x, plot.Area.Top), new(x, plot.Area.Bottom)], Theme.Ink, 1.5, Exact, Theme.Dash, LineJoin.Miter);
            _ = plot.Labels.Place("stopped", new ScreenPoint(x, plot.Area.Top + 12), new LabelStyle { Weight = Theme.Bold, Directions = [0, 180] });
        }
    }

    /// <summary>A heading over a part of the page, as large as its width allows.</summary>
    /// <param name="text">What is seen there.</param>
    /// <param name="at">Its upper left corner.</param>
    /// <param name="width">The width.</param>
    public void Heading(string text, ScreenPoint at, double width)
    {
        double size = Theme.Heading;
        while (size > Theme.Small && Canvas.MeasureText(text, Theme.FontFamily, size, Theme.Bold).Width > width)
        {
            size -= 0.5;
        }

        Canvas.Text(text, at, size, Theme.Ink, Theme.Bold);
    }

    private static string Imprint(LaunchView view) =>
        $"{(view.Readout.IsShop ? "Shop" : "SI")} units · {view.Program} · {view.Run.Scenario.ContentHash[..8]} · {view.Run.Scenario.Name.ReplaceLineEndings(" ")}";

    // A name is the user's and may be of any length.
    private string Fitted(string text)
    {
        bool Fits(string one) => Canvas.MeasureText(one, Theme.FontFamily, Theme.Small, Theme.Normal).Width <= Inner;
        if (Fits(text))
        {
            return text;
        }

        int low = 0, high = text.Length;
        while (low < high)
        {
            int middle = (low + high + 1) / 2;
            (low, high) = Fits(text[..middle] + "…") ? (middle, high) : (low, middle - 1);
        }

        return text[..low] + "…";
    }
}
