using LaunchSim.Charts.Drawing;
using OxyPlot;
using OxyPlot.Axes;

namespace LaunchSim.Charts.Studies;

/// <summary>A sweep over one setting: a panel for each figure, one under the other over one axis.</summary>
internal static class CurveChart
{
    private const EdgeRenderingMode Exact = EdgeRenderingMode.PreferGeometricAccuracy;
    private const double HeadAndFoot = 172, PanelHeight = 132, Apart = 10, AxisHeight = 44;

    // More values than this get no dot each.
    private const int MostDots = 80;

    // A change of fewer last digits than this is not blown up to fill a panel.
    private const double LeastDigits = 12;

    public static Picture Of(SweepView view)
    {
        double height = HeadAndFoot + AxisHeight + (view.Measures.Count * (PanelHeight + Plot.Above + Apart));
        return new Picture(view.Title, SweepChart.Width, height, canvas => Draw(canvas, view, height));
    }

    private static void Draw(IRenderContext canvas, SweepView view, double height)
    {
        SweepAxis axis = view.Axes[0];
        string joined = axis.Numbers is null ? "" : "A line joins neighbours; ";
        string hollow = view.BeyondLimits.Any(beyond => beyond) ? " A hollow dot is beyond a limit." : "";
        OxyRect room = SweepChart.Page(canvas, view, $"{joined}{(joined.Length > 0 ? "each" : "Each")} dot is a launch. Grey bands are what is wanted.{hollow}", height);
        double left = room.Left + Plot.Left - 6, right = room.Right - Plot.Right, top = room.Top;
        double each = (room.Height - AxisHeight - (view.Measures.Count * (Plot.Above + Apart))) / view.Measures.Count;
        var scale = new SettingScale(axis, left, right, SettingEnds.Free);
        var areas = new List<OxyRect>();
        foreach (SweepMeasure measure in view.Measures)
        {
            var area = new OxyRect(left, top + Plot.Above, right - left, each);
            Panel(canvas, view, measure, area, scale, areas.Count == 0);
            areas.Add(area);
            top += Plot.Above + each + Apart;
        }

        Names(canvas, axis, scale, areas[^1]);
    }

    private static void Panel(IRenderContext canvas, SweepView view, SweepMeasure measure, OxyRect area, SettingScale scale, bool isFirst)
    {
        SweepAxis axis = view.Axes[0];
        var across = new LinearAxis { Position = AxisPosition.Bottom, Minimum = scale.Ends.Low, Maximum = scale.Ends.High, LabelFormatter = _ => "", MajorStep = 10 * (scale.Ends.High - scale.Ends.Low) };
        Extent extent = ExtentOf(measure);
        var plot = new Plot(canvas, area, across, extent, "");

        // Not over the numbers of the axis, of which one may stand at its very end.
        canvas.Text(SweepChart.Caption(char.ToUpperInvariant(measure.Name[0]) + measure.Name[1..], measure.Unit), new ScreenPoint(area.Left, area.Top - Plot.Above + 1), Theme.Small, Theme.Ink, Theme.Bold);
        if (!double.IsNaN(measure.From) && (double.IsFinite(measure.From) || double.IsFinite(measure.To)))
        {
            double low = Math.Clamp(measure.From, extent.Low, extent.High), high = Math.Clamp(measure.To, extent.Low, extent.High);
            plot.Strip([new(across.Minimum, low), new(across.Maximum, low)], [new(across.Minimum, high), new(across.Maximum, high)], Theme.Wanted);
            if (low == high && measure.From == measure.To && measure.From >= extent.Low && measure.From <= extent.High)
            {
                _ = plot.Level(low, new Pen(Theme.Bar, 4));
            }
        }

        int[] order = [.. Enumerable.Range(0, axis.Names.Count).OrderBy(axis.At)];
        if (axis.Numbers is not null)
        {
            _ = plot.Line([.. order.Select(place => new DataPoint(axis.At(place), measure.Values[place]))], Pen.Rear);
        }

        plot.Draw();
        Present(canvas, view, measure, plot, isFirst);
        foreach (int place in order)
        {
            double value = measure.Values[place];
            ScreenPoint at = plot.At(axis.At(place), double.IsFinite(value) ? value : extent.Low);
            if (view.Failed[place])
            {
                Cross(canvas, new ScreenPoint(at.X, area.Bottom - 7));
                plot.Labels.Keep(new OxyRect(at.X - 5, area.Bottom - 12, 10, 10));
            }
            else if (double.IsFinite(value) && (order.Length <= MostDots || place == view.Best))
            {
                Dot(canvas, at, view.BeyondLimits[place]);
                plot.Labels.Keep(new OxyRect(at.X - 4, at.Y - 4, 8, 8));
            }
        }

        if (view.Best is { } best && double.IsFinite(measure.Values[best]))
        {
            ScreenPoint at = plot.At(axis.At(best), measure.Values[best]);
            canvas.DrawEllipse(new OxyRect(at.X - 7, at.Y - 7, 14, 14), OxyColors.Undefined, Theme.Ink, 1.5, Exact);
            plot.Labels.Keep(new OxyRect(at.X - 8, at.Y - 8, 16, 16));
            bool isNow = axis.Present is { } now && axis.At(best) == now;
            string named = isFirst ? $"{(isNow ? "now, and best score" : "best score")}: {SweepChart.Text(axis, best)}\n" : "";
            _ = plot.Labels.Place(named + SweepChart.Number(measure, measure.Values[best]), at, new LabelStyle { Weight = Theme.Bold, Gap = 11, Directions = [90, 45, 135, 0, 180, 270] });
        }

        if (isFirst && view.Failed.Any(failed => failed))
        {
            int[] failed = [.. order.Where(place => view.Failed[place])];
            _ = plot.Labels.Offer("no launch to its end", new ScreenPoint(scale.At(failed[failed.Length / 2]), area.Bottom - 7), new LabelStyle { Color = Theme.Muted, Directions = [90, 45, 135] });
        }
    }

    private static void Present(IRenderContext canvas, SweepView view, SweepMeasure measure, Plot plot, bool isFirst)
    {
        SweepAxis axis = view.Axes[0];
        if (axis.Present is not { } now)
        {
            return;
        }

        double x = plot.At(now, 0).X;
        if (x < plot.Area.Left - 0.5 || x > plot.Area.Right + 0.5)
        {
            return;
        }

        canvas.Path([new(x, plot.Area.Top), new(x, plot.Area.Bottom)], Theme.Fourth, 1.3, Theme.Dash);
        plot.Labels.Avoid([new(x, plot.Area.Top), new(x, plot.Area.Bottom)]);
        if (double.IsFinite(measure.Present))
        {
            ScreenPoint at = plot.At(now, measure.Present);
            canvas.Ring(at, 5.5, Theme.Fourth, 2);
            plot.Labels.Keep(new OxyRect(at.X - 6, at.Y - 6, 12, 12));
            if (view.Best is { } best && axis.At(best) == now)
            {
                // The best one's label says it.
                return;
            }

            _ = plot.Labels.Place($"{(isFirst ? "now: " : "")}{SweepChart.Number(measure, measure.Present)}", at, new LabelStyle { Color = Theme.Fourth, Gap = 10, Directions = [45, 315, 135, 225, 90, 270] });
        }
        else if (isFirst)
        {
            _ = plot.Labels.Offer("now", new ScreenPoint(x, plot.Area.Top + 10), new LabelStyle { Color = Theme.Fourth, Directions = [0, 180] });
        }
    }

    private static void Names(IRenderContext canvas, SweepAxis axis, SettingScale scale, OxyRect lowest)
    {
        foreach (int place in Enumerable.Range(0, axis.Names.Count))
        {
            canvas.DrawLine([new(scale.At(place), lowest.Bottom), new(scale.At(place), lowest.Bottom + 3)], Theme.Line, 1, Exact);
        }

        double most = axis.Numbers is null ? Math.Max(60, (lowest.Width / axis.Names.Count) - 10) : 90;
        foreach (int place in scale.Named(name => Math.Min(most, canvas.MeasureText(name, Theme.FontFamily, Theme.Small, Theme.Normal).Width)))
        {
            canvas.Text(SweepChart.Fitted(canvas, axis.Names[place], most, Theme.Small), new ScreenPoint(scale.At(place), lowest.Bottom + 5), Theme.Small, Theme.Muted, Theme.Normal, HorizontalAlignment.Center);
        }

        canvas.Text(SweepChart.FittedEnd(canvas, SweepChart.Caption(axis.Name, axis.Unit), lowest.Width, Theme.Body), new ScreenPoint(lowest.Right, lowest.Bottom + 22), Theme.Body, Theme.Ink, Theme.Normal, HorizontalAlignment.Right);
    }

    // From the lowest to the highest value, with room for labels; zero is no landmark here.
    private static Extent ExtentOf(SweepMeasure measure)
    {
        double[] values = [.. measure.Values.Append(measure.Present).Where(double.IsFinite)];
        double low = values.Length > 0 ? values.Min() : 0, high = values.Length > 0 ? values.Max() : 1;
        double least = LeastDigits * Math.Pow(10, -measure.Decimals), missing = least - (high - low);
        if (missing > 0)
        {
            (low, high) = (low - (missing / 2), high + (missing / 2));
            (low, high) = values.Length > 0 && values.Min() >= 0 && low < 0 ? (0, high - low) : (low, high);
        }

        double room = 0.14 * (high - low);
        return new Extent(low - room, high + (1.6 * room));
    }

    private static void Dot(IRenderContext canvas, ScreenPoint at, bool isHollow)
    {
        if (isHollow)
        {
            canvas.Ring(at, 3.5, Theme.Rear, 1.5);
        }
        else
        {
            canvas.Dot(at, 4, Theme.Rear);
        }
    }

    private static void Cross(IRenderContext canvas, ScreenPoint at)
    {
        canvas.DrawLine([new(at.X - 4, at.Y - 4), new(at.X + 4, at.Y + 4)], Theme.Ink, 1.5, Exact);
        canvas.DrawLine([new(at.X - 4, at.Y + 4), new(at.X + 4, at.Y - 4)], Theme.Ink, 1.5, Exact);
    }
}
