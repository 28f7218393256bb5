using LaunchSim.Vehicle;

namespace LaunchSim.Charts.Launch;

/// <summary>One chart of a launch. A new one is one file, and one line in <see cref="LaunchCharts"/>.</summary>
internal abstract class LaunchChart
{
    /// <summary>Plain name, for the file.</summary>
    public abstract string Name { get; }

    /// <summary>Whether there is anything to draw for a car.</summary>
    /// <param name="car">The car.</param>
    public virtual bool IsFor(Car car) => true;

    /// <summary>What is seen in this launch, in one sentence without a full stop.</summary>
    /// <param name="view">The launch.</param>
    public abstract string Title(LaunchView view);

    /// <summary>What is drawn and how to read it, in a sentence or two.</summary>
    /// <param name="view">The launch.</param>
    public abstract string Explanation(LaunchView view);

    /// <summary>Draws it into the body of a page.</summary>
    /// <param name="page">The page, whose title stands already.</param>
    public abstract void Draw(ChartPage page);
}
