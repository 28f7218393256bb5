using LaunchSim.Charts.Drawing;
using LaunchSim.Charts.SideViews;
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
    private const double LeftWidth = 420, Gutter = 30, Words = 22, Line = 18, Apart = 12, RiseShare = 0.56;

    // So much of the launch has to be readable, s: the rises are measured in its first 0.4 s.
    private const double First = 0.6;

    private const int MostLanes = 4;

    // Above the car, for names that find no place on it.
    private const double LabelRoom = 40;

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
        Labels car = SideView(canvas, view, new OxyRect(body.Left, body.Top, LeftWidth, Sentences(canvas, view, body) - body.Top));

        double left = body.Left + LeftWidth + Gutter, width = body.Right - left;
        var lanes = new EventLanes(view, Events, MostLanes);
        double free = body.Height - lanes.Height - (2 * (Words + Plot.Above)) - Line - Plot.Below - Apart;
        TimeAxis bare = page.Time(First, named: false), time = page.Time(First);
        double area = left + Plot.Left - 6, across = body.Right - Plot.Right - area, top = body.Top;
        page.Heading(RisePanel.RiseTitle(view), new ScreenPoint(left, top), width);
        canvas.Text(RisePanel.GapTitle(view), new ScreenPoint(left, top + Words), Theme.Body, Theme.Ink);
        top += Words + Line + Plot.Above;
        Plot rises = RisePanel.Draw(page, new OxyRect(area, top, across, free * RiseShare), bare, rises: true, gaps: true);
        top += (free * RiseShare) + Apart;
        page.Heading(RearLoadPanel.Heading(view), new ScreenPoint(left, top), width);
        top += Words + lanes.Height + Plot.Above;
        Plot loads = RearLoadPanel.Draw(page, new OxyRect(area, top, across, free * (1 - RiseShare)), time, front: false);
        lanes.Draw(canvas, loads);
        page.Finish(time, rises, loads);
        page.Add(car);
        return page;
    }

    // In the middle of what the sentences leave.
    private static Labels SideView(IRenderContext canvas, LaunchView view, OxyRect free)
    {
        var scene = SideViewScene.Of(view.Run.Scenario, view.Run.Solution.Car);
        var options = new SideViewOptions { TextSize = Theme.Small, HasDimensions = false, NamesParts = false };
        double height = Math.Min(free.Height, SideViewDrawing.HeightFor(free.Width, scene, options) + LabelRoom);
        var area = new OxyRect(free.Left, free.Top + ((free.Height - height) / 2), free.Width, height);
        return SideViewDrawing.Draw(canvas, area, scene, view.Readout, options).Labels;
    }

    // From the body's bottom up, so that the side view gets what they leave.
    private static double Sentences(IRenderContext canvas, LaunchView view, OxyRect body)
    {
        string[] broken = [.. Summary.Foremost(view.Run, view.Readout).Select(sentence => canvas.Broken(sentence.Text, LeftWidth, Theme.Sentence))];
        double bottom = body.Bottom;
        foreach (string text in broken.Reverse())
        {
            bottom -= canvas.MeasureText(text, Theme.FontFamily, Theme.Sentence, Theme.Normal).Height;
            canvas.Text(text, new ScreenPoint(body.Left, bottom), Theme.Sentence, Theme.Ink);
            bottom -= 9;
        }

        return bottom;
    }
}
