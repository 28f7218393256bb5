using System.Globalization;
using LaunchSim.Charts.Drawing;
using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using OxyPlot;

namespace LaunchSim.Charts.Launch;

/// <summary>
/// What happened in a launch, above a plot and along its time axis: a lane a kind, a bar for as long as it lasts, its
/// name in words. Only kinds that happened have a lane.
/// </summary>
internal sealed class EventLanes
{
    private const double LaneHeight = 18, BarHeight = 14, LeastWidth = 3, Gap = 6;
    private const EdgeRenderingMode Exact = EdgeRenderingMode.PreferGeometricAccuracy;

    /// <summary>What explains the loads of tyres and bars.</summary>
    public static IReadOnlyList<LaunchEventKind> Loads { get; } =
    [
        LaunchEventKind.RearTireOff,
        LaunchEventKind.FrontTireOff,
        LaunchEventKind.RearTopStop,
        LaunchEventKind.RearBottomStop,
        LaunchEventKind.FrontTopStop,
        LaunchEventKind.FrontBottomStop,
        LaunchEventKind.WheelieBar,
        LaunchEventKind.RearSpringLoose,
        LaunchEventKind.RearSlipPastPeak,
        LaunchEventKind.Shift,
        LaunchEventKind.ClutchLocked,
    ];

    private readonly List<(string Words, LaunchEvent[] Spells)> _lanes = [];
    private readonly double _end;

    /// <summary>The lanes of some kinds.</summary>
    /// <param name="view">The launch.</param>
    /// <param name="kinds">The kinds, the most telling first.</param>
    /// <param name="most">How many lanes there may be; the first ones are kept.</param>
    public EventLanes(LaunchView view, IEnumerable<LaunchEventKind> kinds, int most = int.MaxValue)
    {
        _end = view.Duration;
        foreach (LaunchEventKind kind in kinds)
        {
            LaunchEvent[] spells = [.. view.Events.Where(one => one.Kind == kind)];
            if (spells.Length > 0 && _lanes.Count < most)
            {
                _lanes.Add((Words(kind, spells), spells));
            }
        }
    }

    /// <summary>Height of all lanes together.</summary>
    public double Height => _lanes.Count == 0 ? 0 : (_lanes.Count * LaneHeight) + 4;

    /// <summary>Draws them.</summary>
    /// <param name="canvas">Where to.</param>
    /// <param name="plot">The plot below, drawn already.</param>
    public void Draw(IRenderContext canvas, Plot plot)
    {
        double top = plot.Area.Top - Plot.Above - Height;
        foreach ((string words, LaunchEvent[] spells) in _lanes)
        {
            var bars = new List<(double From, double To)>();
            foreach (LaunchEvent spell in spells)
            {
                double from = plot.At(spell.Time, 0).X, to = Math.Max(from + LeastWidth, plot.At(spell.Until ?? _end, 0).X);
                bars.Add((from, to));
                canvas.DrawRectangle(new OxyRect(from, top + ((LaneHeight - BarHeight) / 2), to - from, BarHeight), Theme.Bar, OxyColors.Undefined, 0, Exact);
            }

            double width = canvas.MeasureText(words, Theme.FontFamily, Theme.Small, Theme.Normal).Width;
            double left = Place(bars, width, plot.Area);
            canvas.Text(words, new ScreenPoint(left, top + (LaneHeight / 2)), Theme.Small, Theme.Ink, Theme.Normal, HorizontalAlignment.Left, VerticalAlignment.Middle);
            top += LaneHeight;
        }
    }

    // In the longest bar if they fit, behind the last, before the first, in the widest gap; over the bars as the last way out.
    private static double Place(List<(double From, double To)> bars, double width, OxyRect area)
    {
        (double from, double to) = bars.MaxBy(bar => bar.To - bar.From);
        if (to - from >= width + (2 * Gap))
        {
            return from + Gap;
        }

        double behind = bars.Max(bar => bar.To);
        if (behind + Gap + width <= area.Right)
        {
            return behind + Gap;
        }

        // There is room beside the area, above the axis's numbers.
        double first = area.Left - Plot.Left + Gap;
        if (bars[0].From - Gap - width >= first)
        {
            return bars[0].From - Gap - width;
        }

        for (int i = 1; i < bars.Count; i++)
        {
            if (bars[i].From - bars[i - 1].To >= width + (2 * Gap))
            {
                return bars[i - 1].To + Gap;
            }
        }

        return Math.Clamp(from + Gap, first, Math.Max(first, area.Right - width));
    }

    private static string Words(LaunchEventKind kind, LaunchEvent[] spells)
    {
        string first = Readout.Time.Text(spells[0].Time);
        string from = spells.Length > 1 ? string.Create(CultureInfo.InvariantCulture, $" {spells.Length}× from {first}") : $" from {first}";
        string at = spells.Length > 1 ? string.Create(CultureInfo.InvariantCulture, $" {spells.Length}× from {first}") : $" at {first}";
        return EventWords.Of(kind) + (kind == LaunchEventKind.Shift ? at : from);
    }
}
