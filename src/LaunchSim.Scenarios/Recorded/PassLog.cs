namespace LaunchSim.Scenarios.Recorded;

/// <summary>A file of measured data that belongs to a pass.</summary>
/// <param name="File">The file, seen from the current folder as the pass file was.</param>
/// <param name="Mapping">The mapping file, likewise; null when none was named.</param>
/// <param name="Written">The file as it was written.</param>
/// <param name="Place">Where it was written, as <c>file:line:column</c>.</param>
public sealed record PassLog(string File, string? Mapping, string Written, string Place);
