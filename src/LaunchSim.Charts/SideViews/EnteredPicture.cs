using LaunchSim.Charts.Drawing;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios;
using OxyPlot;

namespace LaunchSim.Charts.SideViews;

/// <summary>
/// The side view as entered, with every point's coordinates as they were written, so that a mistyped number is seen. It
/// needs no car that stands and no linkage that can be put together.
/// </summary>
public static class EnteredPicture
{
    private const double Width = 1200, Margin = 28, Head = 78, Between = 44, Lowest = 240, Highest = 460, TwoLines = 40, Foot = 64;

    /// <summary>The picture; null when nothing of the side view was read.</summary>
    /// <param name="entries">What was read.</param>
    /// <param name="name">What it is called.</param>
    /// <param name="readout">The units of what is worked out.</param>
    public static Picture? Of(SideViewEntries entries, string name, Readout readout)
    {
        ArgumentNullException.ThrowIfNull(entries);
        ArgumentNullException.ThrowIfNull(readout);
        if (entries.Points.Count == 0 && entries.Wheelbase is null)
        {
            return null;
        }

        var scene = SideViewScene.AsEntered(entries);
        var detail = SideViewWindow.Rear(scene);
        bool IsRear(EnteredPoint point) => point.Path.StartsWith("rear.", StringComparison.Ordinal) && detail.Holds(point.At);
        var whole = new SideViewOptions { Points = [.. scene.Entered.Where(point => !IsRear(point))], TextSize = 13 };
        var near = new SideViewOptions { Window = detail, Points = [.. scene.Entered.Where(IsRear)], HasDimensions = false, HasLines = false, TextSize = 13 };
        double inner = Width - (2 * Margin);
        double top = Math.Clamp(SideViewDrawing.HeightFor(inner, scene, whole), Lowest, Highest);
        double low = near.Points.Count == 0 ? 0 : Between + Math.Clamp(SideViewDrawing.HeightFor(0.6 * inner, scene, near), 380, 620);
        string title = scene.Line is { } line && entries.Wheelbase is { } wheelbase
            ? StaticLineWords.Of(line, wheelbase, readout)
            : "Percent and instant centre cannot be worked out from these points";
        double warning = entries.NotRead.Count > 0 || scene.Entered.Any(point => !SideViewWindow.Whole(scene).Holds(point.At)) ? TwoLines : 0;
        double height = Head + warning + top + low + Foot + (2 * Margin);
        return new Picture(title, Width, height, canvas =>
        {
            var sheet = new Sheet(canvas, Width, height, Margin);
            sheet.Head(title, $"{name}: the points as entered, to scale, before ride height, ballast and pressures; every point is ahead of the rear axle's centre line and up from the floor");
            OxyRect below = sheet.Room(Foot);
            var room = new OxyRect(below.Left, below.Top + warning, below.Width, below.Height - warning);
            DrawnSideView first = SideViewDrawing.Draw(canvas, new OxyRect(room.Left, room.Top, room.Width, room.Height - low), scene, readout, whole);
            _ = canvas.Wrapped($"{NotRead(entries)} {first.OutsideWords}".Trim(), new ScreenPoint(room.Left, room.Top - warning - 2), room.Width, Theme.Body, Theme.Ink, Theme.Bold);
            List<string> notes = [.. first.Notes];
            if (low > 0)
            {
                var area = new OxyRect(room.Left, room.Bottom - low + Between, room.Width, low - Between);
                canvas.DrawLine([new(room.Left, area.Top - (0.5 * Between)), new(room.Right, area.Top - (0.5 * Between))], Theme.Hair, 1, EdgeRenderingMode.PreferGeometricAccuracy);
                canvas.Text("The rear, larger", new ScreenPoint(area.Left, area.Top - (0.5 * Between) + 3), Theme.Body, Theme.Ink, Theme.Bold);
                notes.AddRange(SideViewDrawing.Draw(canvas, area, scene, readout, near).Notes);
            }

            sheet.Foot(notes);
        });
    }

    private static string NotRead(SideViewEntries entries) =>
        entries.NotRead.Count == 0 ? "" : $"Not there or refused: {PointWords.Few(entries.NotRead, ", ")}.";
}
