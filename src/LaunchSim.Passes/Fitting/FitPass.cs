using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Vehicle;

namespace LaunchSim.Passes.Fitting;

/// <summary>One pass as a fit sees it.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="SetUp">The fitted car with what was changed for this pass, read for a run.</param>
/// <param name="Run">How long it is run for at least, and what is timed on the way.</param>
/// <param name="Logs">What was recorded; none is fine.</param>
/// <param name="Seen">What was seen.</param>
public sealed record FitPass(string Name, Scenario SetUp, RunSettings Run, IReadOnlyList<FitLog> Logs, SeenFacts Seen);
