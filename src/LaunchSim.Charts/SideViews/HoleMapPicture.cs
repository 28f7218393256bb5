using LaunchSim.Charts.Drawing;
using LaunchSim.Geometry;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Vehicle;
using OxyPlot;

namespace LaunchSim.Charts.SideViews;

/// <summary>
/// The instant centres of all choices of holes in the side view, with lines of equal percent: all instant centres on one
/// line through the contact patch have the same percent.
/// </summary>
public static class HoleMapPicture
{
    private const double Width = 1200, Margin = 28, HeadAndFoot = 200, Lowest = 340, Highest = 720;

    // Room beside and above the drawing for the percents at the lines' ends.
    private const double Beside = 140, Above = 22;

    /// <summary>The picture; null when no bracket has holes and nothing is in doubt.</summary>
    /// <param name="report">What the side view tells.</param>
    /// <param name="readout">The units.</param>
    public static Picture? Of(GeometryReport report, Readout readout)
    {
        ArgumentNullException.ThrowIfNull(report);
        ArgumentNullException.ThrowIfNull(readout);
        var scene = SideViewScene.Of(report.Scenario);
        var map = new HoleMap(report, scene);
        var doubt = GeometryDoubt.Of(report.Scenario);
        if (report.Brackets.Count == 0 && doubt is null)
        {
            return null;
        }

        var options = new SideViewOptions { Window = map.Window, HasLabels = false, HasLines = false, HasDimensions = false, HasBody = false, HasSurroundings = false };
        double height = HeadAndFoot + Math.Clamp(SideViewDrawing.HeightFor(Width - (2 * Margin) - Beside, scene, options) + Above, Lowest, Highest);
        string title = Title(map, doubt);
        return new Picture(title, Width, height, canvas =>
        {
            var sheet = new Sheet(canvas, Width, height, Margin);
            sheet.Head(title, $"{report.Scenario.Name}: each dot is the instant centre with one choice of holes; all dots on one line through the contact patch have the same percent");
            OxyRect room = sheet.Room(62);
            var area = new OxyRect(room.Left, room.Top + Above, room.Width - Beside, room.Height - Above);
            DrawnSideView drawn = SideViewDrawing.Draw(canvas, area, scene, readout, options);
            sheet.Foot(new HoleMapPainter(canvas, room, drawn.Projection, map, doubt, readout).Draw());
        });
    }

    private static string Title(HoleMap map, GeometryDoubt? doubt)
    {
        double[] percents = [.. map.Rows.Select(row => row.Line!.Percent).Where(double.IsFinite)];
        string now = StaticLineWords.Percent(map.Report.View.Line.Percent);
        return map.Report.Brackets.Count == 0 && doubt is not null
            ? $"{now}, and {Readout.Percent.Number(doubt.LowPercent)} to {Readout.Percent.Text(doubt.HighPercent)} by what is in doubt"
            : percents.Length < 2 ? $"{now}; there is no other choice of holes"
            : $"{percents.Length} choices of holes, {Readout.Percent.Number(percents.Min())} to {Readout.Percent.Text(percents.Max())}; {now} now";
    }
}
