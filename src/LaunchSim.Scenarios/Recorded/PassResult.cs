namespace LaunchSim.Scenarios.Recorded;

/// <summary>What came of reading a pass.</summary>
/// <param name="Pass">The pass; null when there is an error.</param>
/// <param name="Errors">All errors.</param>
/// <param name="Warnings">All warnings.</param>
public sealed record PassResult(PassFile? Pass, IReadOnlyList<Diagnostic> Errors, IReadOnlyList<Diagnostic> Warnings);
