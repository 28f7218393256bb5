using LaunchSim.Charts.Drawing;
using LaunchSim.Figures;
using LaunchSim.Reports.Words;
using OxyPlot;

namespace LaunchSim.Charts.Launch;

/// <summary>A page about one launch.</summary>
internal sealed class ChartPage : PageFrame
{
    private const double FirstSecond = 1;

    private const EdgeRenderingMode Exact = EdgeRenderingMode.PreferGeometricAccuracy;

    /// <summary>Draws title and foot; the body is the caller's.</summary>
    /// <param name="canvas">Where to.</param>
    /// <param name="view">The launch.</param>
    /// <param name="title">What is seen.</param>
    /// <param name="explanation">How to read it; may be empty.</param>
    public ChartPage(IRenderContext canvas, LaunchView view, string title, string explanation = "")
        : base(canvas, title, explanation, explanation.Length > 0 && view.Run.Failure is { } failure ? [FailureWords.Of(failure)] : [], Imprint(view)) => View = view;

    /// <summary>The launch.</summary>
    public LaunchView View { get; }

    /// <summary>A time axis over the whole launch.</summary>
    /// <param name="first">How much of it must be readable, s.</param>
    /// <param name="named">Whether its ticks have numbers.</param>
    public TimeAxis Time(double first = FirstSecond, bool named = true) => new(View.End, first, named);

    /// <summary>One plot over the body's whole width, or several under one another with one time axis.</summary>
    /// <param name="lanes">What happened, above the first plot.</param>
    /// <param name="shares">How the height is shared out, one number a plot.</param>
    /// <returns>The areas between the axes.</returns>
    public OxyRect[] Rows(EventLanes lanes, params double[] shares) => Rows(lanes.Height, shares);

    /// <summary>What stands below a time axis, and where the run stopped if it did.</summary>
    /// <param name="time">The axis, drawn.</param>
    /// <param name="plots">The plots above it, the lowest last.</param>
    public void Finish(TimeAxis time, params Plot[] plots)
    {
        Caption(time.Caption, plots[^1]);
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

    private static string Imprint(LaunchView view) =>
        $"{(view.Readout.IsShop ? "Shop" : "SI")} units · {view.Program} · {view.Run.Scenario.ContentHash[..8]} · {view.Run.Scenario.Name.ReplaceLineEndings(" ")}";
}
