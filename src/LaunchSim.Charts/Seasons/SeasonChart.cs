using System.Globalization;
using LaunchSim.Charts.Drawing;
using LaunchSim.Charts.Studies;
using LaunchSim.Reports.Words;
using OxyPlot;
using OxyPlot.Axes;

namespace LaunchSim.Charts.Seasons;

/// <summary>A season as a picture: a panel for each time, one under the other, a pass beside the next, and below them how each was set.</summary>
public static class SeasonChart
{
    private const double Width = 1040, Margin = 22, Head = 74, Foot = 50, PanelHeight = 118, Apart = 8, Names = 30, Row = 40;
    private const EdgeRenderingMode Exact = EdgeRenderingMode.PreferGeometricAccuracy;

    // A change of fewer last digits than this is not blown up to fill a panel.
    private const double LeastDigits = 12;

    // Numbers stand at the dots as long as there are no more passes than this.
    private const int MostNumbers = 12;

    private static readonly Pen Predicted = new(Theme.Rear, 1.4, Theme.Dot), Fitted = new(Theme.Third, 1.4, Theme.Dash);

    /// <summary>The picture.</summary>
    /// <param name="view">What is drawn: at least one pass and one panel.</param>
    /// <exception cref="ArgumentException">There is nothing to draw.</exception>
    public static Picture Of(SeasonView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        if (view.Passes.Count == 0 || view.Panels.Count == 0)
        {
            throw new ArgumentException("A season's picture has at least one pass and one time.", nameof(view));
        }

        double height = Head + Foot + Names + (2 * Margin) + (view.Panels.Count * (PanelHeight + Plot.Above + Apart)) + (view.Settings.Count * Row);
        return new Picture(view.Title, Width, height, canvas => Draw(canvas, view, height));
    }

    private static void Draw(IRenderContext canvas, SeasonView view, double height)
    {
        double within = Width - (2 * Margin), top = Margin;
        top += canvas.Wrapped(view.Title, new ScreenPoint(Margin, top), within, Theme.Sentence, Theme.Ink, Theme.Bold) + 2;
        bool isFitted = view.Panels.Any(panel => panel.Fitted is not null);
        _ = canvas.Wrapped($"A dot is what was seen or logged, its bar how far off that may be nineteen times in twenty. A ring on the dotted line is the prediction{(isFitted ? ", a diamond on the dashed line that of the fitted car" : "")}.", new ScreenPoint(Margin, top), within, Theme.Body, Theme.Muted);
        new Sheet(canvas, Width, height, Margin).Foot([view.Imprint + ".", LimitWords.Caution]);
        double left = Margin + Plot.Left - 6, right = Width - Margin - Plot.Right;
        top = Margin + Head;
        double At(int pass) => left + ((pass + 0.5) / view.Passes.Count * (right - left));
        double column = (right - left) / view.Passes.Count;
        for (int i = 0; i < view.Panels.Count; i++)
        {
            Panel(canvas, view.Panels[i], view.Passes.Count, new OxyRect(left, top + Plot.Above, right - left, PanelHeight), i == 0);
            top += Plot.Above + PanelHeight + Apart;
        }

        for (int pass = 0; pass < view.Passes.Count; pass++)
        {
            canvas.Text(SweepChart.Fitted(canvas, view.Passes[pass], column - 4, Theme.Small), new ScreenPoint(At(pass), top), Theme.Small, Theme.Ink, Theme.Bold, HorizontalAlignment.Center);
        }

        top += Names;
        foreach (SeasonSetting setting in view.Settings)
        {
            canvas.DrawLine([new(left, top - 3), new(right, top - 3)], Theme.Hair, 1, Exact);
            canvas.Text(SweepChart.FittedEnd(canvas, setting.Name, right - left, Theme.Small), new ScreenPoint(left, top), Theme.Small, Theme.Muted);
            for (int pass = 0; pass < view.Passes.Count; pass++)
            {
                canvas.Text(SweepChart.Fitted(canvas, setting.Values[pass], column - 4, Theme.Small), new ScreenPoint(At(pass), top + 17), Theme.Small, Theme.Ink, Theme.Normal, HorizontalAlignment.Center);
            }

            top += Row;
        }
    }

    private static void Panel(IRenderContext canvas, SeasonPanel panel, int passes, OxyRect area, bool isFirst)
    {
        var across = new LinearAxis { Position = AxisPosition.Bottom, Minimum = 0.5, Maximum = passes + 0.5, LabelFormatter = _ => "", MajorStep = 10.0 * passes };
        var plot = new Plot(canvas, area, across, ExtentOf(panel), "");
        canvas.Text(SweepChart.Caption(char.ToUpperInvariant(panel.Name[0]) + panel.Name[1..], panel.Unit), new ScreenPoint(area.Left, area.Top - Plot.Above + 1), Theme.Small, Theme.Ink, Theme.Bold);
        _ = plot.Line([.. panel.Predicted.Select((value, pass) => new DataPoint(pass + 1, value))], Predicted);
        if (panel.Fitted is { } line)
        {
            _ = plot.Line([.. line.Select((value, pass) => new DataPoint(pass + 1, value))], Fitted);
        }

        plot.Draw();
        for (int pass = 0; pass < passes; pass++)
        {
            if (double.IsFinite(panel.Predicted[pass]))
            {
                canvas.Ring(plot.At(pass + 1, panel.Predicted[pass]), 4, Theme.Rear);
                Keep(plot, plot.At(pass + 1, panel.Predicted[pass]));
            }

            if (panel.Fitted is { } fitted && double.IsFinite(fitted[pass]))
            {
                Diamond(canvas, plot.At(pass + 1, fitted[pass]));
                Keep(plot, plot.At(pass + 1, fitted[pass]));
            }

            if (double.IsFinite(panel.Seen[pass]))
            {
                double half = double.IsFinite(panel.Doubt[pass]) ? panel.Doubt[pass] : 0;
                ScreenPoint low = plot.At(pass + 1, panel.Seen[pass] - half), high = plot.At(pass + 1, panel.Seen[pass] + half);
                canvas.DrawLine([low, high], Theme.Ink, 1.6, Exact);
                canvas.DrawLine([new(low.X - 4, low.Y), new(low.X + 4, low.Y)], Theme.Ink, 1.6, Exact);
                canvas.DrawLine([new(high.X - 4, high.Y), new(high.X + 4, high.Y)], Theme.Ink, 1.6, Exact);
                canvas.Dot(plot.At(pass + 1, panel.Seen[pass]), 4.5, Theme.Ink);
                plot.Labels.Avoid([low, high]);
                Keep(plot, plot.At(pass + 1, panel.Seen[pass]));
            }
        }

        for (int pass = 0; pass < passes && passes <= MostNumbers; pass++)
        {
            (double value, OxyColor color, string who) = double.IsFinite(panel.Seen[pass]) ? (panel.Seen[pass], Theme.Ink, "seen ") : (panel.Predicted[pass], Theme.Rear, "predicted ");
            if (double.IsFinite(value))
            {
                string text = value.ToString("F" + panel.Decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
                _ = plot.Labels.Offer((isFirst && pass == 0 ? who : "") + text, plot.At(pass + 1, value), new LabelStyle { Color = color, Gap = 9, Directions = [0, 45, 315, 180, 90, 270], Farthest = 40 });
            }
        }
    }

    private static void Keep(Plot plot, ScreenPoint at) => plot.Labels.Keep(new OxyRect(at.X - 5, at.Y - 5, 10, 10));

    private static void Diamond(IRenderContext canvas, ScreenPoint at) =>
        canvas.DrawPolygon([new(at.X, at.Y - 5), new(at.X + 5, at.Y), new(at.X, at.Y + 5), new(at.X - 5, at.Y)], Theme.Paper, Theme.Third, 1.6, Exact);

    // From the lowest to the highest value; zero is no landmark here.
    private static Extent ExtentOf(SeasonPanel panel)
    {
        double[] values =
        [
            .. panel.Seen.Concat(panel.Predicted).Concat(panel.Fitted ?? []).Where(double.IsFinite),
            .. panel.Seen.Zip(panel.Doubt).Where(one => double.IsFinite(one.First + one.Second)).SelectMany(one => new[] { one.First - one.Second, one.First + one.Second }),
        ];
        double low = values.Length > 0 ? values.Min() : 0, high = values.Length > 0 ? values.Max() : 1;
        double missing = (LeastDigits * Math.Pow(10, -panel.Decimals)) - (high - low);
        if (missing > 0)
        {
            (low, high) = (low - (missing / 2), high + (missing / 2));
        }

        double room = 0.12 * (high - low);
        return new Extent(low - room, high + room);
    }
}
