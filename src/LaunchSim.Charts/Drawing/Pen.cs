using OxyPlot;

namespace LaunchSim.Charts.Drawing;

/// <summary>How a line is drawn.</summary>
/// <param name="Color">Its colour.</param>
/// <param name="Thickness">Its thickness in the picture's units.</param>
/// <param name="Dash">Its dashes; solid when null.</param>
internal sealed record Pen(OxyColor Color, double Thickness = 2, double[]? Dash = null)
{
    /// <summary>The rear end.</summary>
    public static Pen Rear { get; } = new(Theme.Rear, 2.4);

    /// <summary>The front end.</summary>
    public static Pen Front { get; } = new(Theme.Front, 2.4, Theme.Dash);

    /// <summary>A value to compare with, such as the standing car's.</summary>
    public static Pen Reference { get; } = new(Theme.Muted, 1.3, Theme.Dot);

    /// <summary>What is measured off a curve: brackets and the lines down from a mark.</summary>
    public static Pen Measure { get; } = new(Theme.Ink, 1.2);

    /// <summary>The same line, thinner or thicker.</summary>
    /// <param name="thickness">Its thickness.</param>
    public Pen Of(double thickness) => this with { Thickness = thickness };
}
