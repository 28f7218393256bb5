using LaunchSim.Charts.Drawing;
using LaunchSim.Charts.SideViews;
using LaunchSim.Geometry;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using OxyPlot;
using OxyPlot.Axes;

namespace LaunchSim.Charts.Overlay;

/// <summary>Percent through the travel, the bodies moved straight up and down.</summary>
internal sealed class PercentOverlay : OverlayChart
{
    // What is farther than this from the standing car's is on its way to infinity.
    private const double Farthest = 400, Least = 20;

    public override string Name => "percent";

    public override string Title(OverlayView view) => $"Percent standing: {view.Each(launch => StaticLineWords.Percent(launch.Run.Solution.Car.Line.Percent))}";

    public override string Explanation(OverlayView view) => "Percent anti-squat with the body moved straight up and down between the dampers' stops, the rear wheel where it stands; the ring is the standing car.";

    public override void Draw(OverlayPage page)
    {
        OverlayView view = page.View;
        Readout readout = view.Readout;
        page.Legend(new ScreenPoint(page.Body.Left, page.Body.Top), page.Body.Width);
        OxyRect area = page.Rows(page.LegendHeight, 1)[0];
        DataPoint[][] curves = [.. view.Launches.Select(launch => Points(launch, readout))];
        IEnumerable<double> across = curves.SelectMany(curve => curve).Select(point => point.X);
        var axis = new LinearAxis { Position = AxisPosition.Bottom, Minimum = across.Min(), Maximum = across.Max() };
        Plot plot = page.Plot(area, axis, Extent.Of(curves.SelectMany(curve => curve).Select(point => point.Y).Append(100), Least), "Percent anti-squat, %");
        Curve neutral = plot.Level(100, new Pen(Theme.Ink, 1.3, Theme.LongDash));
        Curve[] drawn = [.. curves.Select((curve, i) => plot.Line(curve, view.Launches[i].Pen))];
        plot.Draw();
        for (int i = 0; i < drawn.Length; i++)
        {
            ScreenPoint standing = plot.At(0, view.Launches[i].View.Run.Solution.Car.Line.Percent);
            if (double.IsFinite(standing.Y) && plot.Holds(standing))
            {
                page.Canvas.Ring(standing, 4, view.Launches[i].Pen.Color, 2);
                plot.Labels.Keep(new OxyRect(standing.X - 5, standing.Y - 5, 10, 10));
            }
        }

        for (int i = 0; i < drawn.Length; i++)
        {
            plot.Name(drawn[i], view.Launches[i].Name);
        }

        plot.Name(neutral, "100 %: neutral");
        page.Caption($"body above standing, {readout.Travel.Unit}", plot);
    }

    private static DataPoint[] Points(Overlaid launch, Readout readout)
    {
        TravelCourse course = TravelCourse.Of(GeometryReport.Of(launch.View.Run.Scenario, readout.IsShop))!;
        double standing = launch.View.Run.Solution.Car.Line.Percent, centre = double.IsFinite(standing) ? standing : 100;
        return [.. course.Rows.Select((TravelRow row) => new DataPoint(row.BodyUp / readout.Travel.Factor, Math.Abs(row.Line.Percent - centre) <= Farthest ? row.Line.Percent : double.NaN))];
    }
}
