using LaunchSim.Charts.Drawing;
using OxyPlot;

namespace LaunchSim.Charts.Overlay;

/// <summary>
/// The lines of the launches: the first is solid, each other has dashes of its own, so that nothing rests on the colour.
/// None is the long dash of the neutral line, and no colour is a verdict.
/// </summary>
internal static class OverlayPens
{
    /// <summary>All of them; more lines than that are not told apart.</summary>
    public static IReadOnlyList<Pen> All { get; } =
    [
        new(Theme.Ink, 2.2),
        new(Theme.Rear, 2.2, [6, 3.5]),
        new(Theme.Front, 2.4, [1.6, 3]),
        new(Theme.Fourth, 2.2, [9, 3, 1.6, 3]),
        new(Theme.Third, 2.2, [9, 3, 1.6, 3, 1.6, 3]),
    ];

    /// <summary>The four load paths, in their order.</summary>
    public static IReadOnlyList<Pen> Paths { get; } = [new(Theme.Rear, 2.2), new(Theme.Front, 2.2, [6, 3.5]), new(Theme.Ink, 2.2, [9, 3, 1.6, 3]), new(Theme.Fourth, 2.4, [1.6, 3])];

    /// <summary>Draws a sample of a line.</summary>
    /// <param name="canvas">Where to.</param>
    /// <param name="pen">The line.</param>
    /// <param name="at">Its left end.</param>
    /// <param name="length">Its length.</param>
    public static void Sample(IRenderContext canvas, Pen pen, ScreenPoint at, double length) =>
        canvas.Path([at, new ScreenPoint(at.X + length, at.Y)], pen.Color, pen.Thickness, pen.Dash);
}
