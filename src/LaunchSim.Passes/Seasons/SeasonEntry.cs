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
    /// <summary>The file's name without its ending: what the pass is called where there is little room.</summary>
    public string Id => Path.GetFileNameWithoutExtension(Pass.SourceFile);
}
