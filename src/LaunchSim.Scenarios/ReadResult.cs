namespace LaunchSim.Scenarios;

/// <summary>What came of reading a scenario.</summary>
public sealed record ReadResult
{
    /// <summary>The scenario; null when there is an error.</summary>
    public required Scenario? Scenario { get; init; }

    /// <summary>All errors, in the order of the file.</summary>
    public required IReadOnlyList<Diagnostic> Errors { get; init; }

    /// <summary>All warnings, in the order of the file.</summary>
    public required IReadOnlyList<Diagnostic> Warnings { get; init; }
}
