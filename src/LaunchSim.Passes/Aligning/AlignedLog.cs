using LaunchSim.Passes.Measured;

namespace LaunchSim.Passes.Aligning;

/// <summary>A log laid over the prediction: its channels with their time counted from the release.</summary>
/// <param name="Series">The channels, in the order of the mapping.</param>
/// <param name="Alignment">Where the release lies on the log's clock.</param>
/// <param name="Remarks">What was found, left aside or adjusted while reading, in sentences.</param>
public sealed record AlignedLog(IReadOnlyList<MeasuredSeries> Series, Alignment Alignment, IReadOnlyList<string> Remarks);
