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

    /// <summary>Draws the legend: a sample of each line with what it stands for.</summary>
    /// <param name="at">Its upper left corner.</param>
    /// <param name="width">How wide it may be.</param>
    public void Legend(ScreenPoint at, double width)
    {
        for (int i = 0; i < View.Launches.Count; i++)
        {
            Overlaid launch = View.Launches[i];
            double middle = at.Y + (LegendLine * (i + 0.5));
            OverlayPens.Sample(Canvas, launch.Pen, new ScreenPoint(at.X, middle), SampleLength);
            string text = Fitted($"{launch.Name}: {launch.View.Run.Scenario.Name.ReplaceLineEndings(" ")}", width - SampleLength - 8);
            Canvas.Text(text, new ScreenPoint(at.X + SampleLength + 8, middle), Theme.Small, Theme.Ink, Theme.Normal, HorizontalAlignment.Left, VerticalAlignment.Middle);
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

        // The first is drawn last: it is solid, and dashes on a solid line would not be seen.
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
            plot.Name(level, levels.All(one => Math.Abs(one - levels[0]) < 0.5) ? "standing" : $"{View.Launches[0].Name} standing");
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
