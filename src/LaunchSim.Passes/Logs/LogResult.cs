using LaunchSim.Passes.Aligning;
using LaunchSim.Scenarios;

namespace LaunchSim.Passes.Logs;

/// <summary>What came of reading a log.</summary>
/// <param name="Log">The log laid over the prediction; null when there is an error.</param>
/// <param name="Errors">All errors, each with its place.</param>
public sealed record LogResult(AlignedLog? Log, IReadOnlyList<Diagnostic> Errors);
