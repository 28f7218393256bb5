namespace LaunchSim.Charts.Overlay;

/// <summary>One chart of several launches. A new one is one file, and one line in <see cref="OverlayCharts"/>.</summary>
internal abstract class OverlayChart
{
    /// <summary>Plain name, for the file.</summary>
    public abstract string Name { get; }

    /// <summary>What is seen, in one sentence without a full stop.</summary>
    /// <param name="view">The launches.</param>
    public abstract string Title(OverlayView view);

    /// <summary>What is drawn and how to read it.</summary>
    /// <param name="view">The launches.</param>
    public abstract string Explanation(OverlayView view);

    /// <summary>Draws it into the body of a page.</summary>
    /// <param name="page">The page, whose title stands already.</param>
    public abstract void Draw(OverlayPage page);
}
