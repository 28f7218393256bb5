namespace LaunchSim.Scenarios.Recorded;

/// <summary>A change of a closed pass.</summary>
/// <param name="When">The day, as written.</param>
/// <param name="Path">Which value, such as <c>seen.rear_open</c>.</param>
/// <param name="Was">What stood there; null when there was none.</param>
/// <param name="Is">What stands there now; null when it was taken away.</param>
/// <param name="Why">Why.</param>
public sealed record PassCorrection(string When, string Path, string? Was, string? Is, string Why);
