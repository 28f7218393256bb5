namespace LaunchSim.Charts.Measure;

/// <summary>A sheet of paper on its side, in the picture's units of 1/96 in.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Width">Its width.</param>
/// <param name="Height">Its height.</param>
public sealed record Paper(string Name, double Width, double Height)
{
    private const double Millimetre = 96 / 25.4;

    /// <summary>A4, 297 by 210 mm.</summary>
    public static Paper A4 { get; } = new("a4", 297 * Millimetre, 210 * Millimetre);

    /// <summary>Letter, 11 by 8.5 in.</summary>
    public static Paper Letter { get; } = new("letter", 11 * 96, 8.5 * 96);

    /// <summary>What fits on either, 255 by 186 mm: no margin is less than 12 mm, 0.47 in.</summary>
    internal static (double Width, double Height) Usable { get; } = (255 * Millimetre, 186 * Millimetre);

    /// <summary>Millimetres in the picture's units.</summary>
    /// <param name="length">Length, mm.</param>
    internal static double Millimetres(double length) => length * Millimetre;
}
