using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Passes.Seasons;

/// <summary>A season: its passes in the order in which they were made.</summary>
public sealed record Season
{
    /// <summary>The folder as it was named.</summary>
    public required string Folder { get; init; }

    /// <summary>What it is called.</summary>
    public required string Name { get; init; }

    /// <summary>What its file says.</summary>
    public required SeasonFile File { get; init; }

    /// <summary>The passes.</summary>
    public required IReadOnlyList<PassFile> Passes { get; init; }

    /// <summary>The fitted car; null when none is named.</summary>
    public required Scenario? Fitted { get; init; }
}

/// <summary>What came of reading a season.</summary>
/// <param name="Season">The season; null when there is an error.</param>
/// <param name="Errors">All errors.</param>
/// <param name="Warnings">All warnings.</param>
public sealed record SeasonResult(Season? Season, IReadOnlyList<Diagnostic> Errors, IReadOnlyList<Diagnostic> Warnings);
