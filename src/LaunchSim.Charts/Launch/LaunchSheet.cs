using LaunchSim.Charts.Drawing;
using LaunchSim.Figures;
using LaunchSim.Launch;
using LaunchSim.Reports.Words;
using OxyPlot;

namespace LaunchSim.Charts.Launch;

/// <summary>
/// The page to show a friend at the car: what the car is (static line and side view), what it does (both ends of the body
/// and the rear tyres' load against time), and the three sentences that matter most.
/// </summary>
internal static class LaunchSheet
{
    private const double LeftWidth = 420, Gutter = 30, Words = 21;

    // So much of the launch has to be readable, s: the rises are measured in its first 0.4 s.
    private const double First = 0.6;

    private const int MostLanes = 4;

    // What an onlooker sees or hears first.
    private static readonly LaunchEventKind[] Events =
    [
        LaunchEventKind.RearTireOff,
        LaunchEventKind.RearSlipPastPeak,
        LaunchEventKind.RearTopStop,
        LaunchEventKind.RearBottomStop,
        LaunchEventKind.FrontTireOff,
        LaunchEventKind.WheelieBar,
        LaunchEventKind.Shift,
        LaunchEventKind.FrontTopStop,
        LaunchEventKind.FrontBottomStop,
        LaunchEventKind.ClutchLocked,
    ];

    /// <summary>The static line.</summary>
    /// <param name="view">The launch.</param>
    public static string Title(LaunchView view)
    {
        StandingCar car = view.Run.Solution.Car;
        return StaticLineWords.Of(car.Line, car.Standing.Wheelbase, view.Readout);
    }

    /// <summary>Draws the sheet.</summary>
    /// <param name="canvas">Where to.</param>
    /// <param name="view">The launch.</param>
    /// <returns>The page.</returns>
    public static ChartPage Draw(IRenderContext canvas, LaunchView view)
    {
        var page = new ChartPage(canvas, view, Title(view));
        OxyRect body = page.Body;
        double bottom = Sentences(canvas, view, body);
        canvas.DrawRectangle(new OxyRect(body.Left, body.Top, LeftWidth, bottom - body.Top - 10), Theme.Squeezed, Theme.Line, 1, EdgeRenderingMode.PreferGeometricAccuracy);

        double left = body.Left + LeftWidth + Gutter, width = body.Right - left;
        var lanes = new EventLanes(view, Events, MostLanes);
        double free = body.Height - lanes.Height - (2 * (Words + Plot.Above)) - Plot.Below - 6;
        TimeAxis bare = page.Time(First, named: false), time = page.Time(First);
        double area = left + Plot.Left - 6, top = body.Top;
        canvas.Text($"{RisePanel.RiseTitle(view)};", new ScreenPoint(left, top), Theme.Heading, Theme.Ink, Theme.Bold);
        top += Words + Plot.Above;
        Plot rises = RisePanel.Draw(page, new OxyRect(area, top, body.Right - area, free * 0.55), bare, rises: true, gaps: true);
        top += (free * 0.55) + 6;
        canvas.Text(RearLoadPanel.Title(view), new ScreenPoint(left, top), Theme.Heading, Theme.Ink, Theme.Bold);
        top += Words + lanes.Height + Plot.Above;
        Plot loads = RearLoadPanel.Draw(page, new OxyRect(area, top, body.Right - area, free * 0.45), time, front: false);
        lanes.Draw(canvas, loads);
        page.Finish(time, rises, loads);
        return page;
    }

    // From the body's bottom up, so that the side view gets what they leave.
    private static double Sentences(IRenderContext canvas, LaunchView view, OxyRect body)
    {
        string[] broken = [.. Summary.Foremost(view.Run, view.Readout).Select(sentence => canvas.Broken(sentence, LeftWidth, Theme.Sentence))];
        double bottom = body.Bottom;
        foreach (string text in broken.Reverse())
        {
            bottom -= canvas.MeasureText(text, Theme.FontFamily, Theme.Sentence, Theme.Normal).Height;
            canvas.Text(text, new ScreenPoint(body.Left, bottom), Theme.Sentence, Theme.Ink);
            bottom -= 8;
        }

        return bottom;
    }
}
