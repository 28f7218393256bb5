using OxyPlot;

namespace LaunchSim.Charts.Drawing;

/// <summary>
/// What all pictures have in common. Nothing rests on colour alone: the front is dashed where the rear is solid, compression
/// is dashed where extension is solid, and every curve has its name at it. The colours differ in lightness too, so that a
/// grey print keeps them apart.
/// </summary>
internal static class Theme
{
    /// <summary>Families for viewers of an SVG; the other formats carry their own font.</summary>
    public const string FontFamily = "Inter, Helvetica, Arial, sans-serif";

    /// <summary>Heights of text in the picture's own units.</summary>
    public const double Small = 12, Body = 14, Sentence = 18, Heading = 17, Title = 24;

    /// <summary>Weight from which text is drawn in the bolder cut.</summary>
    public const double Bold = 600, Normal = 400;

    /// <summary>The paper.</summary>
    public static readonly OxyColor Paper = OxyColors.White;

    /// <summary>Text, the neutral line, and what stands for itself.</summary>
    public static readonly OxyColor Ink = OxyColor.FromRgb(0x1B, 0x24, 0x30);

    /// <summary>Text that explains.</summary>
    public static readonly OxyColor Muted = OxyColor.FromRgb(0x55, 0x60, 0x6E);

    /// <summary>Axes, frames.</summary>
    public static readonly OxyColor Line = OxyColor.FromRgb(0x9A, 0xA4, 0xB0);

    /// <summary>Grid lines, fills that recede.</summary>
    public static readonly OxyColor Hair = OxyColor.FromRgb(0xE1, 0xE6, 0xEB);

    /// <summary>A spell of time, on which text must be readable.</summary>
    public static readonly OxyColor Bar = OxyColor.FromRgb(0xCF, 0xD8, 0xE0);

    /// <summary>Behind a part of a plot that is drawn at another scale.</summary>
    public static readonly OxyColor Squeezed = OxyColor.FromRgb(0xF4, 0xF6, 0xF8);

    /// <summary>Behind the values that are wanted.</summary>
    public static readonly OxyColor Wanted = OxyColor.FromRgb(0xED, 0xF1, 0xF4);

    /// <summary>The rear end, always with a solid line.</summary>
    public static readonly OxyColor Rear = OxyColor.FromRgb(0x0A, 0x4F, 0x78);

    /// <summary>The front end, always with a dashed line.</summary>
    public static readonly OxyColor Front = OxyColor.FromRgb(0xC2, 0x6A, 0x12);

    /// <summary>A third thing beside them.</summary>
    public static readonly OxyColor Third = OxyColor.FromRgb(0x3F, 0x7F, 0x5A);

    /// <summary>A fourth thing beside them.</summary>
    public static readonly OxyColor Fourth = OxyColor.FromRgb(0x8A, 0x63, 0xA8);

    /// <summary>The neutral line: long dashes in the text colour.</summary>
    public static readonly double[] LongDash = [14, 6];

    /// <summary>Dashes of the front and of compression.</summary>
    public static readonly double[] Dash = [6, 4];

    /// <summary>Dots of a reference, such as the standing car's value.</summary>
    public static readonly double[] Dot = [1.5, 3.5];
}
