using LaunchSim.Charts.Drawing;
using LaunchSim.Charts.Launch;
using LaunchSim.Launch;
using LaunchSim.Reports.Numbers;
using OxyPlot;

namespace LaunchSim.Charts.Overlay;

/// <summary>A quantity that is plotted for all launches.</summary>
/// <param name="Caption">What it is.</param>
/// <param name="Read">Reads it.</param>
/// <param name="Scale">Its unit.</param>
/// <param name="Least">The smallest extent worth drawing, SI.</param>
/// <param name="Standing">The standing car's value, SI; or null.</param>
internal sealed record OverlayRow(string Caption, ObservationReader Read, Func<Readout, Scale> Scale, double Least, Func<LaunchView, double>? Standing = null);

/// <summary>Quantities against time, one plot each, all launches over one another.</summary>
/// <param name="name">Plain name, for the file.</param>
/// <param name="title">What is seen.</param>
/// <param name="explanation">How to read it.</param>
/// <param name="rows">The quantities.</param>
internal sealed class CurveOverlay(string name, Func<OverlayView, string> title, string explanation, params OverlayRow[] rows) : OverlayChart
{
    public override string Name => name;

    public override string Title(OverlayView view) => title(view);

    public override string Explanation(OverlayView view) => explanation;

    public override void Draw(OverlayPage page)
    {
        page.Legend(new ScreenPoint(page.Body.Left, page.Body.Top), page.Body.Width);
        OxyRect[] areas = page.Rows(page.LegendHeight, [.. rows.Select(_ => 1.0)]);
        for (int i = 0; i < rows.Length; i++)
        {
            bool isLast = i + 1 == rows.Length;
            TimeAxis time = page.Time(named: isLast);
            Scale scale = rows[i].Scale(page.View.Readout);
            Plot plot = page.Over(areas[i], time, rows[i].Caption, rows[i].Read, scale, rows[i].Least / scale.Factor, rows[i].Standing);
            if (isLast)
            {
                page.Caption(time.Caption, plot);
            }
        }
    }
}
