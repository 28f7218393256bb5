using LaunchSim.Passes.Comparing;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Studies.Comparing;

namespace LaunchSim.Passes.Seasons;

/// <summary>One pass in its season.</summary>
/// <param name="Pass">The pass.</param>
/// <param name="Number">Which one it is, from 1.</param>
/// <param name="Changes">What is set otherwise than in the pass before, from there to here; null for the first pass.</param>
/// <param name="Predicted">As predicted by its own car.</param>
/// <param name="Fitted">As predicted by the fitted car; null when there is none.</param>
public sealed record SeasonEntry(PassFile Pass, int Number, IReadOnlyList<WrittenDifference>? Changes, PassPrediction Predicted, PassPrediction? Fitted)
{
    // Logs are lined up with what the file predicts, which is not yet the true car, s: as in a fit.
    private const double ClockSd = 5e-3;

    /// <summary>Figures that the pass's logs tell; empty when there are none or they were not asked for.</summary>
    public IReadOnlyList<PassFigure> Figures { get; init; } = [];

    /// <summary>A time that the logs tell.</summary>
    /// <param name="figure">The figure's key.</param>
    /// <param name="byTheClock">Whether it counts from the release, so that the log's clock is in it; a lag between two does not.</param>
    /// <returns>The time with its standard deviation, s; null when no log tells it.</returns>
    public (double Time, double Sd)? Logged(string figure, bool byTheClock) =>
        Figures.FirstOrDefault(one => one.Definition.Key == figure) is { } found ? (found.Measured, byTheClock ? Math.Max(found.Sd, ClockSd) : found.Sd) : null;

    /// <summary>The file's name without its ending: what the pass is called where there is little room.</summary>
    public string Id => Path.GetFileNameWithoutExtension(Pass.SourceFile);
}
