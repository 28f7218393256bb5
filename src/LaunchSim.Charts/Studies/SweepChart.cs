using System.Globalization;
using LaunchSim.Charts.Drawing;
using LaunchSim.Reports.Words;
using OxyPlot;

namespace LaunchSim.Charts.Studies;

/// <summary>The picture of a sweep: curves over one setting, a map over two.</summary>
public static class SweepChart
{
    /// <summary>Width of the picture, and what is left free around it.</summary>
    internal const double Width = 1040, Margin = 22;

    private const double Foot = 44;

    /// <summary>The picture.</summary>
    /// <param name="view">What is drawn.</param>
    /// <exception cref="ArgumentException">There are not one or two settings.</exception>
    public static Picture Of(SweepView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        return view.Axes.Count switch
        {
            1 => CurveChart.Of(view),
            2 => MapChart.Of(view),
            _ => throw new ArgumentException("A picture has one or two settings.", nameof(view)),
        };
    }

    /// <summary>Head and foot of a page, and the room between them.</summary>
    internal static OxyRect Page(IRenderContext canvas, SweepView view, string explanation, double height)
    {
        // The conclusion names paths and is long: a sentence's size, not a title's.
        double within = Width - (2 * Margin), top = Margin;
        top += canvas.Wrapped(view.Title, new ScreenPoint(Margin, top), within, Theme.Sentence, Theme.Ink, Theme.Bold) + 2;
        top += canvas.Wrapped(explanation, new ScreenPoint(Margin, top), within, Theme.Body, Theme.Muted) + 8;
        new Sheet(canvas, Width, height, Margin).Foot([view.Imprint + ".", LimitWords.Caution]);
        return new OxyRect(Margin, top, within, height - Margin - Foot - top);
    }

    /// <summary>A value with the digits that it deserves.</summary>
    internal static string Number(SweepMeasure measure, double value)
    {
        string text = value.ToString("F" + measure.Decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return text[0] == '-' && text.AsSpan().IndexOfAnyInRange('1', '9') < 0 ? text[1..] : text;
    }

    /// <summary>A setting's value with its unit.</summary>
    internal static string Text(SweepAxis axis, int place) => axis.Unit.Length == 0 ? axis.Names[place] : $"{axis.Names[place]} {axis.Unit}";

    /// <summary>What an axis shows and in which unit.</summary>
    internal static string Caption(string name, string unit) => unit.Length == 0 ? name : $"{name}, {unit}";

    /// <summary>A path that is no longer than a width allows; its end tells most.</summary>
    internal static string FittedEnd(IRenderContext canvas, string text, double width, double size)
    {
        string one = text;
        for (int from = 0; from < text.Length - 1 && canvas.MeasureText(one, Theme.FontFamily, size, Theme.Normal).Width > width;)
        {
            one = "…" + text[++from..];
        }

        return one;
    }

    /// <summary>A name that is no longer than a width allows.</summary>
    internal static string Fitted(IRenderContext canvas, string text, double width, double size)
    {
        string one = text;
        for (int length = text.Length; length > 1 && canvas.MeasureText(one, Theme.FontFamily, size, Theme.Normal).Width > width;)
        {
            one = text[..--length] + "…";
        }

        return one;
    }
}
