using LaunchSim.Scenarios;

namespace LaunchSim.Passes.Dyno;

/// <summary>One measurement of one damper at one click, as the sheet has it: signs as they stand, SI.</summary>
/// <param name="Source">The file as it was named.</param>
/// <param name="Click">The click; null when none was told.</param>
/// <param name="Velocities">Shaft speeds, m/s, in the order of the rows.</param>
/// <param name="Forces">Forces, N, as many.</param>
/// <param name="Displacements">Where the shaft was, m, as many; null when the sheet does not have it.</param>
/// <param name="IsSided">Whether the sheet had a force for either side: positive is then extension, and forces resist.</param>
public sealed record DynoRun(
    string Source, double? Click, IReadOnlyList<double> Velocities, IReadOnlyList<double> Forces, IReadOnlyList<double>? Displacements, bool IsSided);

/// <summary>What came of reading a dyno sheet.</summary>
/// <param name="Runs">The runs, one a click; empty when there is an error.</param>
/// <param name="Errors">All errors.</param>
/// <param name="Notes">What was passed over, such as rows without a number.</param>
public sealed record DynoReadResult(IReadOnlyList<DynoRun> Runs, IReadOnlyList<Diagnostic> Errors, IReadOnlyList<string> Notes);
