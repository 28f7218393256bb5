using LaunchSim.Charts.Drawing;
using LaunchSim.Reports.Numbers;
using LaunchSim.Vehicle;
using OxyPlot;

namespace LaunchSim.Charts.SideViews;

/// <summary>Draws dimensions along the ground, below everything.</summary>
/// <param name="canvas">Where they are drawn.</param>
/// <param name="projection">Where things are.</param>
/// <param name="readout">The units.</param>
/// <param name="labels">Receives where no label may be put.</param>
/// <param name="size">Height of the numbers.</param>
internal sealed class DimensionPainter(IRenderContext canvas, Projection projection, Readout readout, Labels labels, double size)
{
    /// <summary>How far ahead the instant centre is, and the wheelbase.</summary>
    /// <param name="scene">The scene.</param>
    /// <param name="instantCentre">The instant centre where it is in the picture.</param>
    public void Below(SideViewScene scene, Point? instantCentre)
    {
        double row = projection.Area.Bottom + 14;
        if (instantCentre is { } centre)
        {
            ScreenPoint at = projection.At(centre);
            canvas.Path([at, new ScreenPoint(at.X, row)], Theme.Fourth, 1, Theme.Dot);
            Along(0, centre.Ahead, row, $"instant centre {readout.Place.Text(Math.Abs(centre.Ahead))} {(centre.Ahead < 0 ? "behind" : "ahead")}", Theme.Fourth);
            row += 20;
        }

        if (scene.Wheelbase is { } wheelbase)
        {
            Along(0, wheelbase, row, $"wheelbase {readout.Place.Text(wheelbase)}", Theme.Muted);
        }
    }

    private void Along(double from, double to, double row, string text, OxyColor color)
    {
        ScreenPoint start = new(projection.At(from, 0).X, row), end = new(projection.At(to, 0).X, row);
        if (start.X < projection.Area.Left - 1 || start.X > projection.Area.Right + 1 || end.X < projection.Area.Left - 1 || end.X > projection.Area.Right + 1)
        {
            return;
        }

        canvas.Path([start, end], color, 1);
        foreach (ScreenPoint tick in new[] { start, end })
        {
            canvas.Path([new(tick.X, row - 5), new(tick.X, row + 5)], color, 1);
            canvas.Path([new(tick.X - 4, row + 4), new(tick.X + 4, row - 4)], color, 1.5);
        }

        OxySize width = canvas.MeasureText(text, Theme.FontFamily, size, Theme.Normal);
        double middle = 0.5 * (start.X + end.X), left = middle - (0.5 * width.Width);
        if (width.Width + 16 > Math.Abs(end.X - start.X))
        {
            left = Math.Max(start.X, end.X) + 8;
        }

        left = Math.Clamp(left, projection.Area.Left, Math.Max(projection.Area.Left, projection.Area.Right - width.Width));
        var area = new OxyRect(left, row - (0.5 * width.Height), width.Width, width.Height);
        canvas.DrawRectangle(area.Grown(2), Theme.Paper, OxyColors.Undefined, 0, EdgeRenderingMode.PreferGeometricAccuracy);
        canvas.Text(text, new ScreenPoint(area.Left, area.Top), size, color);
        labels.Keep(area.Grown(3));
        labels.Keep(new OxyRect(Math.Min(start.X, end.X), row - 4, Math.Abs(end.X - start.X), 8));
    }
}
