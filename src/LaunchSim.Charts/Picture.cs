using OxyPlot;

namespace LaunchSim.Charts;

/// <summary>One picture, not yet in any format. Its unit is a pixel of a screen at arm's length, 1/96 in on paper.</summary>
/// <param name="Title">What is seen, in one sentence; for those who cannot see it too.</param>
/// <param name="Width">Width in its units.</param>
/// <param name="Height">Height in its units.</param>
/// <param name="Draw">Draws it; the origin is at the upper left.</param>
public sealed record Picture(string Title, double Width, double Height, Action<IRenderContext> Draw);
