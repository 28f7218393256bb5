using OxyPlot;
using SkiaSharp;

namespace LaunchSim.Charts.Drawing;

/// <summary>
/// The font that comes with the program: text is measured and drawn the same on every machine, also on one without fonts.
/// Thread-safe.
/// </summary>
internal static class Typeface
{
    private static readonly Lazy<SKTypeface> Regular = new(() => Load("Inter-Regular.ttf")), SemiBold = new(() => Load("Inter-SemiBold.ttf"));

    /// <summary>The cut for a weight.</summary>
    /// <param name="weight">400 is normal; from <see cref="Theme.Bold"/> on the bolder cut.</param>
    public static SKTypeface Of(double weight) => weight >= Theme.Bold ? SemiBold.Value : Regular.Value;

    /// <summary>A font to draw or measure with; to be disposed of.</summary>
    /// <param name="size">Height in the picture's units.</param>
    /// <param name="weight">Weight, as in <see cref="Of"/>.</param>
    public static SKFont Font(double size, double weight) => new(Of(weight), (float)size)
    {
        Edging = SKFontEdging.Antialias,
        Subpixel = true,
        Hinting = SKFontHinting.None,
        LinearMetrics = true,
    };

    /// <summary>Width and height of a text, which may have several lines.</summary>
    /// <param name="text">The text.</param>
    /// <param name="size">Height in the picture's units.</param>
    /// <param name="weight">Weight, as in <see cref="Of"/>.</param>
    public static OxySize Measure(string? text, double size, double weight)
    {
        if (string.IsNullOrEmpty(text))
        {
            return OxySize.Empty;
        }

        using SKFont font = Font(size, weight);
        string[] lines = text.Split('\n');
        float width = lines.Max(line => font.MeasureText(line));
        return new OxySize(width, LineHeight(font) * lines.Length);
    }

    /// <summary>From one base line to the next.</summary>
    /// <param name="font">The font.</param>
    public static float LineHeight(SKFont font) => font.Metrics.Descent - font.Metrics.Ascent;

    private static SKTypeface Load(string name)
    {
        using Stream stream = typeof(Typeface).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The font {name} is not in the library.");
        using var data = SKData.Create(stream);
        return SKTypeface.FromData(data) ?? throw new InvalidOperationException($"The font {name} cannot be read.");
    }
}
