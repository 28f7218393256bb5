using LaunchSim.Charts.Drawing;
using LaunchSim.Charts.Launch;
using LaunchSim.Launch;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using OxyPlot;

namespace LaunchSim.Charts.Overlay;

/// <summary>A page about several launches, with a legend of their lines.</summary>
internal sealed class OverlayPage : PageFrame
{
    private const double FirstSecond = 1, LegendLine = 17, SampleLength = 46;

    // Level lines nearer than this share of themselves are one to the eye.
    private const double SameLevel = 0.005;

    // More plots than that under one another are too low for their numbers.
    private const int MostRows = 2;

    /// <summary>Draws title and foot.</summary>
    /// <param name="canvas">Where to.</param>
    /// <param name="view">The launches.</param>
    /// <param name="title">What is seen.</param>
    /// <param name="explanation">How to read it; may be empty.</param>
    public OverlayPage(IRenderContext canvas, OverlayView view, string title, string explanation)
        : base(canvas, title, explanation, Notices(view), Imprint(view)) => View = view;

    /// <summary>The launches.</summary>
    public OverlayView View { get; }

    /// <summary>How high the legend is.</summary>
    public double LegendHeight => (View.Launches.Count * LegendLine) + 4;

    /// <summary>A time axis over all launches.</summary>
    /// <param name="first">How much of it must be readable, s.</param>
    /// <param name="named">Whether its ticks have numbers.</param>
    public TimeAxis Time(double first = FirstSecond, bool named = true) => new(View.End, first, named);

    /// <summary>What stands below a time axis in a narrow plot.</summary>
    /// <param name="time">The axis.</param>
    public static string ShortCaption(TimeAxis time) => time.Squeezed is { } from ? FormattableString.Invariant($"s, squeezed after {from:0.#} s") : "s from release";

    /// <summary>Plots with an axis each, in one column or two.</summary>
    /// <param name="above">What is left free above the first.</param>
    /// <param name="count">How many.</param>
    /// <returns>The areas between the axes.</returns>
    public OxyRect[] Grid(double above, int count)
    {
        int columns = count > MostRows ? 2 : 1, rows = (count + columns - 1) / columns;
        double wide = (Body.Width - ((columns - 1) * Margin)) / columns, tall = (Body.Height - above) / rows;
        return [.. Enumerable.Range(0, count).Select(i => new OxyRect(
            Body.Left + (i % columns * (wide + Margin)) + Drawing.Plot.Left - 6, Body.Top + above + (i / columns * tall) + Drawing.Plot.Above,
            wide - Drawing.Plot.Left - Drawing.Plot.Right + 6, tall - Drawing.Plot.Above - Drawing.Plot.Below))];
    }

    /// <summary>Draws the legend: a sample of each line with what it stands for.</summary>
    /// <param name="at">Its upper left corner.</param>
    /// <param name="width">How wide it may be.</param>
    /// <param name="hasLines">Whether the launches have lines of their own on this page.</param>
    public void Legend(ScreenPoint at, double width, bool hasLines = true)
    {
        double indent = hasLines ? SampleLength + 8 : 0;
        for (int i = 0; i < View.Launches.Count; i++)
        {
            Overlaid launch = View.Launches[i];
            double middle = at.Y + (LegendLine * (i + 0.5));
            if (hasLines)
            {
                OverlayPens.Sample(Canvas, launch.Pen, new ScreenPoint(at.X, middle), SampleLength);
            }

            string text = Fitted($"{launch.Name}: {launch.View.Run.Scenario.Name.ReplaceLineEndings(" ")}", width - indent);
            Canvas.Text(text, new ScreenPoint(at.X + indent, middle), Theme.Small, Theme.Ink, Theme.Normal, HorizontalAlignment.Left, VerticalAlignment.Middle);
        }
    }

    /// <summary>Plots a quantity of all launches over one another, with their names at the curves.</summary>
    /// <param name="area">The area between the axes.</param>
    /// <param name="time">The time axis.</param>
    /// <param name="caption">What is plotted, without its unit.</param>
    /// <param name="read">Reads it.</param>
    /// <param name="scale">Its unit.</param>
    /// <param name="least">The smallest extent worth drawing, in the unit.</param>
    /// <param name="standing">The standing car's value, for a level line each; or null.</param>
    /// <returns>The plot, drawn.</returns>
    public Plot Over(OxyRect area, TimeAxis time, string caption, ObservationReader read, Scale scale, double least, Func<LaunchView, double>? standing = null)
    {
        DataPoint[][] curves = [.. View.Launches.Select(launch => launch.View.Course.Against(read, scale))];
        double[] levels = standing is null ? [] : [.. View.Launches.Select(launch => standing(launch.View) / scale.Factor)];
        Plot plot = Plot(area, time, Extent.Of(curves.SelectMany(curve => curve).Select(point => point.Y).Concat(levels), least), $"{caption}, {scale.Unit}");
        Curve? level = levels.Length > 0 ? plot.Level(levels[0], Pen.Reference with { Color = Theme.Ink }) : null;

        // Dashes over the first one's solid line still show.
        Curve[] drawn = new Curve[curves.Length];
        for (int i = 0; i < curves.Length; i++)
        {
            drawn[i] = plot.Line(curves[i], View.Launches[i].Pen);
        }

        plot.Draw();
        Stops(plot);
        for (int i = 0; i < drawn.Length; i++)
        {
            plot.Name(drawn[i], View.Launches[i].Name);
        }

        if (level is not null)
        {
            plot.Name(level, levels.All(one => Math.Abs(one - levels[0]) < SameLevel * levels[0]) ? "standing" : $"{View.Launches[0].Name} standing");
        }

        return plot;
    }

    // Where a run stopped its curve ends, and that is said there.
    private void Stops(Plot plot)
    {
        foreach (Overlaid launch in View.Launches.Where(launch => launch.View.Run.Failure is not null))
        {
            double x = plot.At(launch.View.Duration, 0).X;
            Canvas.Path([new(x, plot.Area.Top), new(x, plot.Area.Bottom)], launch.Pen.Color, 1.2, Theme.Dot);
            _ = plot.Labels.Place($"{launch.Name} stopped", new ScreenPoint(x, plot.Area.Top + 12), new LabelStyle { Color = launch.Pen.Color, Weight = Theme.Bold, Directions = [0, 180] });
        }
    }

    private static IEnumerable<string> Notices(OverlayView view) =>
        view.Launches.Where(launch => launch.View.Run.Failure is not null).Select(launch => $"{launch.Name}: {FailureWords.Of(launch.View.Run.Failure!)}");

    private static string Imprint(OverlayView view) =>
        $"{(view.Readout.IsShop ? "Shop" : "SI")} units · {view.Program} · {view.Each(launch => launch.Run.Scenario.ContentHash[..8])}";
}
