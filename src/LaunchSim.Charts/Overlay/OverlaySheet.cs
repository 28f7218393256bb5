using LaunchSim.Charts.Drawing;
using LaunchSim.Charts.Launch;
using LaunchSim.Dynamics;
using LaunchSim.Launch;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using OxyPlot;

namespace LaunchSim.Charts.Overlay;

/// <summary>The page to hold two set-ups beside each other: side views, rises, separation and rear load, and what it comes to.</summary>
internal static class OverlaySheet
{
    private const double LeftWidth = 410, Gutter = 26, Apart = 26, First = 0.5, LeastTravel = 0.0127, LeastShare = 0.2;

    // Below this the sentences are not read any more; what finds no room is left to the report.
    private static readonly double[] Sizes = [Theme.Body, 13, Theme.Small];

    private const double LeastSideView = 150;

    /// <summary>What is seen.</summary>
    /// <param name="view">The launches.</param>
    public static string Title(OverlayView view) =>
        $"Percent: {view.Each(launch => StaticLineWords.Percent(launch.Run.Solution.Car.Line.Percent))}. Rise lag: {view.Each(OverlayCharts.Lag)}";

    /// <summary>Draws the sheet.</summary>
    /// <param name="canvas">Where to.</param>
    /// <param name="view">The launches.</param>
    /// <param name="sentences">What it comes to.</param>
    /// <returns>The page.</returns>
    public static OverlayPage Draw(IRenderContext canvas, OverlayView view, IReadOnlyList<string> sentences)
    {
        var page = new OverlayPage(canvas, view, Title(view), "");
        OxyRect body = page.Body;
        page.Legend(new ScreenPoint(body.Left, body.Top), body.Width);
        double top = body.Top + page.LegendHeight + 4, bottom = Sentences(canvas, sentences, body, top + LeastSideView);
        page.Add(OverlaySideView.Draw(canvas, new OxyRect(body.Left, top, LeftWidth, bottom - top), view));

        double left = body.Left + LeftWidth + Gutter, width = (body.Right - left - Gutter) / 2;
        double height = (body.Bottom - top - (2 * (Plot.Above + Plot.Below))) / 2;
        Scale travel = view.Readout.Travel, force = view.Readout.Force;
        double least = LeastTravel / travel.Factor, standing = view.Launches[0].View.Run.Solution.Car.Standing.RearLoad;
        OxyRect Area(int column, int row) => new(left + (column * (width + Gutter)) + Plot.Left - 6, top + Plot.Above + (row * (height + Plot.Above + Plot.Below)), width - Plot.Left - Plot.Right + 6, height);
        Over(0, 0, "Rear rise over the ground", (in Observation o) => o.RearRise, travel, least);
        Over(1, 0, "Front rise over the ground", (in Observation o) => o.FrontRise, travel, least);
        Over(0, 1, "Separation at the rear", (in Observation o) => o.Separation, travel, least);
        Over(1, 1, "Rear tyre load", (in Observation o) => o.RearLoad, force, LeastShare * standing / force.Factor, launch => launch.Run.Solution.Car.Standing.RearLoad);
        return page;

        void Over(int column, int row, string caption, ObservationReader read, Scale scale, double smallest, Func<LaunchView, double>? level = null)
        {
            TimeAxis time = page.Time(First);
            Plot plot = page.Over(Area(column, row), time, caption, read, scale, smallest, level);
            page.Caption(time.Squeezed is { } from ? FormattableString.Invariant($"s, squeezed after {from:0.#} s") : "s from release", plot);
        }
    }

    // From the body's bottom up, so that the side views get what they leave.
    private static double Sentences(IRenderContext canvas, IReadOnlyList<string> sentences, OxyRect body, double highest)
    {
        const double Between = 6;
        string[] said = [.. sentences];
        while (true)
        {
            foreach (double size in Sizes)
            {
                string[] broken = [.. said.Select(text => canvas.Broken(text, LeftWidth, size))];
                double tall = broken.Sum(text => canvas.MeasureText(text, Theme.FontFamily, size, Theme.Normal).Height + Between);
                if (body.Bottom - tall >= highest || (said.Length <= 1 && size == Sizes[^1]))
                {
                    double top = body.Bottom - tall;
                    foreach (string text in broken)
                    {
                        canvas.Text(text, new ScreenPoint(body.Left, top), size, Theme.Ink);
                        top += canvas.MeasureText(text, Theme.FontFamily, size, Theme.Normal).Height + Between;
                    }

                    return body.Bottom - tall - Between;
                }
            }

            said = [.. said[..^(said[^1] == More ? 2 : 1)], More];
        }
    }

    private const string More = "More is in the report.";
}
