using LaunchSim.Charts.Drawing;
using LaunchSim.Dynamics;
using LaunchSim.Reports.Numbers;
using OxyPlot;

namespace LaunchSim.Charts.Launch;

/// <summary>How both ends of the body come up over the ground, how both gaps open, and which end is first.</summary>
internal static class RisePanel
{
    // Nobody sees less than this on a video, s.
    private const double Together = 0.005, GapsTogether = 0.002;

    private const double FirstMove = 6.35e-3, LeastInches = 0.5, LeastMillimetres = 12;

    /// <summary>The smallest extent worth drawing, in the travel's unit.</summary>
    /// <param name="readout">The units.</param>
    public static double Least(Readout readout) => readout.IsShop ? LeastInches : LeastMillimetres;

    /// <summary>Which end comes up first, by how much.</summary>
    /// <param name="view">The launch.</param>
    public static string RiseTitle(LaunchView view) => (view["rear_rise_t50_s"], view["front_rise_t50_s"]) switch
    {
        ({ } r, { } f) when Math.Abs(f - r) < Together => "Both ends of the body come up together",
        ({ } r, { } f) when f > r => $"The front comes up {Readout.Lag.Text(f - r)} after the rear",
        ({ } r, { } f) => $"The rear comes up {Readout.Lag.Text(r - f)} after the front",
        (null, not null) => "The front comes up, the rear does not rise over the ground",
        (not null, null) => "The rear comes up, the front does not rise over the ground",
        _ => "Neither end of the body rises over the ground",
    };

    /// <summary>Which gap opens first, by how much.</summary>
    /// <param name="view">The launch.</param>
    public static string GapTitle(LaunchView view) => (view["rear_gap_6_35mm_s"], view["front_gap_6_35mm_s"]) switch
    {
        ({ } r, { } f) when Math.Abs(f - r) < GapsTogether => "Both gaps open together",
        ({ } r, { } f) when f > r => $"The front gap opens {Readout.Lag.Text(f - r)} after the rear gap",
        ({ } r, { } f) => $"The rear gap opens {Readout.Lag.Text(r - f)} after the front gap",
        (null, not null) => "Only the front gap opens",
        (not null, null) => "Only the rear gap opens",
        _ => "Neither gap opens",
    };

    /// <summary>Draws rises, gaps or both.</summary>
    /// <param name="page">The page.</param>
    /// <param name="area">The area between the axes.</param>
    /// <param name="time">The time axis.</param>
    /// <param name="rises">Whether the rises are drawn, with the bracket of their lag.</param>
    /// <param name="gaps">Whether the gaps are drawn: thin beside rises, else with the bracket of their own lag.</param>
    public static Plot Draw(ChartPage page, OxyRect area, TimeAxis time, bool rises, bool gaps)
    {
        LaunchView view = page.View;
        Scale travel = view.Readout.Travel;
        double thickness = rises ? 1.2 : Pen.Rear.Thickness;
        DataPoint[] none = [];
        DataPoint[] rearRise = rises ? view.Course.Against((in Observation o) => o.RearRise, travel) : none;
        DataPoint[] frontRise = rises ? view.Course.Against((in Observation o) => o.FrontRise, travel) : none;
        DataPoint[] rearGap = gaps ? view.Course.Against((in Observation o) => o.Separation, travel) : none;
        DataPoint[] frontGap = gaps ? view.Course.Against((in Observation o) => -o.FrontTravel, travel) : none;
        var extent = Extent.Of(rearRise.Concat(frontRise).Concat(rearGap).Concat(frontGap).Select(point => point.Y), Least(view.Readout));
        string what = rises && gaps ? "Rise over the ground, gap at the wheel" : rises ? "Rise over the ground" : "Gap at the wheel";
        Plot plot = page.Plot(area, time, extent, $"{what}, {travel.Unit}");
        Curve thinRear = plot.Line(rearGap, Pen.Rear.Of(thickness)), thinFront = plot.Line(frontGap, Pen.Front.Of(thickness));
        Curve rear = plot.Line(rearRise, Pen.Rear), front = plot.Line(frontRise, Pen.Front);
        plot.Draw();
        if (rises)
        {
            LagBracket.Draw(page.Canvas, plot, Half(view, "rear"), Half(view, "front"), RiseLag(view));
        }
        else
        {
            LagBracket.Draw(page.Canvas, plot, First(view, "rear"), First(view, "front"), GapLag(view));
        }

        plot.Name(rear, "rear rise");
        plot.Name(front, "front rise");
        plot.Name(thinRear, "rear gap");
        plot.Name(thinFront, "front gap");
        return plot;
    }

    private static string RiseLag(LaunchView view) =>
        view["rise_lag_s"] is not { } lag ? "" : Math.Abs(lag) < Together ? "together" : $"rise lag {Readout.Lag.Text(Math.Abs(lag))}";

    private static string GapLag(LaunchView view) =>
        view["gap_lag_s"] is not { } lag ? "" : Math.Abs(lag) < GapsTogether ? "together" : $"gap lag {Readout.Lag.Text(Math.Abs(lag))}";

    private static DataPoint? Half(LaunchView view, string end) =>
        view[$"{end}_rise_t50_s"] is { } at && view[$"{end}_rise_peak_m"] is { } peak ? new DataPoint(at, 0.5 * peak / view.Readout.Travel.Factor) : null;

    private static DataPoint? First(LaunchView view, string end) =>
        view[$"{end}_gap_6_35mm_s"] is { } at ? new DataPoint(at, FirstMove / view.Readout.Travel.Factor) : null;
}
