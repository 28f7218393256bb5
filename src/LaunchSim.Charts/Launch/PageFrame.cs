using LaunchSim.Charts.Drawing;
using LaunchSim.Reports.Words;
using OxyPlot;

namespace LaunchSim.Charts.Launch;

/// <summary>
/// A landscape page: title, body, foot. It is laid out to be read 6 in wide, as on a phone: its smallest text is then as
/// high as small print, 5 points.
/// </summary>
internal class PageFrame
{
    /// <summary>Its size in the picture's units.</summary>
    public const double Width = 1040, Height = 585;

    /// <summary>What is left free around it.</summary>
    public const double Margin = 22;

    // Between two plots one above the other: half a number.
    private const double Apart = 8;

    // Titles are shrunk a little before they are broken.
    private static readonly double[] TitleSizes = [Theme.Title, 22, 20, 18];

    private const double Inner = Width - (2 * Margin), LineHeight = 17;

    private readonly List<Labels> _labels = [];

    /// <summary>Draws title and foot; the body is the caller's.</summary>
    /// <param name="canvas">Where to.</param>
    /// <param name="title">What is seen.</param>
    /// <param name="explanation">How to read it; may be empty.</param>
    /// <param name="notices">What must not be overlooked, below the explanation.</param>
    /// <param name="imprint">What it was made of and by.</param>
    public PageFrame(IRenderContext canvas, string title, string explanation, IEnumerable<string> notices, string imprint)
    {
        Canvas = canvas;
        double top = Margin - 6;
        double size = Array.Find(TitleSizes, one => canvas.MeasureText(title, Theme.FontFamily, one, Theme.Bold).Width <= Inner);
        top += canvas.Wrapped(title, new ScreenPoint(Margin, top), Inner, size > 0 ? size : TitleSizes[^1], Theme.Ink, Theme.Bold) + 2;
        if (explanation.Length > 0)
        {
            top += canvas.Wrapped(explanation, new ScreenPoint(Margin, top), Inner, Theme.Body, Theme.Muted) + 2;
        }

        foreach (string notice in notices)
        {
            top += canvas.Wrapped(notice, new ScreenPoint(Margin, top), Inner, Theme.Body, Theme.Ink, Theme.Bold) + 2;
        }

        double foot = Height - Margin - (2 * LineHeight) + 8;
        canvas.Text(Fitted(imprint, Inner), new ScreenPoint(Margin, foot), Theme.Small, Theme.Muted);
        canvas.Text(LimitWords.Caution, new ScreenPoint(Margin, foot + LineHeight), Theme.Small, Theme.Muted);
        Body = new OxyRect(Margin, top + 6, Inner, foot - 8 - top - 6);
    }

    /// <summary>Where it is drawn.</summary>
    public IRenderContext Canvas { get; }

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

    /// <summary>One plot over the body's whole width, or several under one another with one horizontal axis.</summary>
    /// <param name="above">What is left free above the first.</param>
    /// <param name="shares">How the height is shared out, one number a plot.</param>
    /// <returns>The areas between the axes.</returns>
    public OxyRect[] Rows(double above, params double[] shares)
    {
        double left = Body.Left + Drawing.Plot.Left - 6, top = Body.Top + above;
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

    /// <summary>What stands below a plot's horizontal axis.</summary>
    /// <param name="text">What it measures.</param>
    /// <param name="lowest">The plot, drawn.</param>
    public void Caption(string text, Plot lowest) =>
        Canvas.Text(text, new ScreenPoint(lowest.Area.Right, lowest.Area.Bottom + Drawing.Plot.Below), Theme.Small, Theme.Muted, Theme.Normal, HorizontalAlignment.Right, VerticalAlignment.Bottom);

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

    /// <summary>A text on one line, cut where it is too long: a name is the user's and may be of any length.</summary>
    /// <param name="text">The text.</param>
    /// <param name="width">How wide it may be.</param>
    protected internal string Fitted(string text, double width)
    {
        bool Fits(string one) => Canvas.MeasureText(one, Theme.FontFamily, Theme.Small, Theme.Normal).Width <= width;
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
