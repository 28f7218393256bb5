using LaunchSim.Scenarios.Reading;

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

    /// <summary>The files that were read or looked for, as whole paths: the file, its base, the base of that. Empty for a changed scenario.</summary>
    public IReadOnlyList<string> Files { get; init; } = [];

    internal BoundValues? Values { get; init; }

    /// <summary>What could be read of the side view, also when there are errors; null when the text has no keys at all.</summary>
    public SideViewEntries? FindSideView() => Values is null ? null : SideViewReading.Of(Values);
}
