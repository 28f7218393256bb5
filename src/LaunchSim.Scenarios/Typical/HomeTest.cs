namespace LaunchSim.Scenarios.Typical;

/// <summary>How a person gets a number with what a shop has.</summary>
/// <param name="How">What to do, in a plain sentence or two, with its final stop.</param>
/// <param name="Takes">How long it takes and what it needs, as in <c>20 min; scales and a tape</c>.</param>
public sealed record HomeTest(string How, string Takes);
