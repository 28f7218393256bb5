using LaunchSim.Charts.Drawing;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using OxyPlot;

namespace LaunchSim.Charts.SideViews;

/// <summary>The whole car from the side with its instant centre and percent, as a sheet of its own.</summary>
public static class SideViewPicture
{
    private const double Width = 1200, Margin = 28, HeadAndFoot = 164, Lowest = 320, Highest = 640;

    /// <summary>The picture.</summary>
    /// <param name="report">What the side view tells.</param>
    /// <param name="readout">The units.</param>
    public static Picture Of(GeometryReport report, Readout readout)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(readout);
        string title = StaticLineWords.Of(report.View.Line, report.View.Wheelbase, readout);
        var scene = SideViewScene.Of(report.Scenario);
        double height = HeadAndFoot + Math.Clamp(SideViewDrawing.HeightFor(Width - (2 * Margin), scene), Lowest, Highest);
        return new Picture(title, Width, height, canvas =>
        {
            var sheet = new Sheet(canvas, Width, height, Margin);
            sheet.Head(title, $"{report.Scenario.Name}: {(report.IsStanding ? "the car as it stands, with its ride height, ballast and pressures" : "the car as measured")}, to scale");
            OxyRect area = sheet.Room(44);
            DrawnSideView drawn = SideViewDrawing.Draw(canvas, area, scene, readout);
            sheet.Foot([drawn.OutsideWords, .. drawn.Notes, "An instant centre on the neutral line is 100 %: above it the body is pushed up off the axle, below it the body squats."]);
        });
    }
}
