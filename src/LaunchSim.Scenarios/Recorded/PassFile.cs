using LaunchSim.Scenarios.Reading;
using LaunchSim.Vehicle;

namespace LaunchSim.Scenarios.Recorded;

/// <summary>One pass as it was recorded: which car, how it was set, and what was seen or logged. Immutable.</summary>
public sealed record PassFile
{
    /// <summary>What it is called, on one line; the file's name when it has none.</summary>
    public required string Name { get; init; }

    /// <summary>The notes; empty when there are none.</summary>
    public required string Notes { get; init; }

    /// <summary>When it was, as written; null when that is not known.</summary>
    public required string? When { get; init; }

    /// <summary>When it was, by the clock of the place; null when that is not known.</summary>
    public DateTime? Time => When is not null && DateText.TryRead(When, out DateTime time) ? time : null;

    /// <summary>The track in words; empty when nothing was noted.</summary>
    public required string Track { get; init; }

    /// <summary>The weather in words; empty when nothing was noted.</summary>
    public required string Weather { get; init; }

    /// <summary>The pass file as it was named when it was read.</summary>
    public required string SourceFile { get; init; }

    /// <summary>The car's file, seen from the current folder as the pass file was.</summary>
    public required string CarFile { get; init; }

    /// <summary>The car's file as it was written.</summary>
    public required string CarWritten { get; init; }

    /// <summary>The content hash that the car's file had, or its first characters, as written; null when none was.</summary>
    public required string? CarHash { get; init; }

    /// <summary>Settings that differed from the car's file: paths and values in the notation of a scenario, in the order of the file.</summary>
    public required IReadOnlyList<(string Path, string Value)> Changed { get; init; }

    /// <summary>Files of measured data.</summary>
    public required IReadOnlyList<PassLog> Logs { get; init; }

    /// <summary>What was seen.</summary>
    public required SeenFacts Seen { get; init; }

    /// <summary>The day on which it was closed, as written; null while it is open.</summary>
    public required string? Closed { get; init; }

    /// <summary>Whether it is closed: from then on only corrections change it.</summary>
    public bool IsClosed => Closed is not null;

    /// <summary>Whether the values are those that were closed or corrected; null when no seal says so.</summary>
    public required bool? IsSealWhole { get; init; }

    /// <summary>The digest of its values, as <c>seal</c> takes it: the same however the file is commented or ordered; notes do not enter.</summary>
    public required string Digest { get; init; }

    /// <summary>Changes since it was closed, in the order of the file.</summary>
    public required IReadOnlyList<PassCorrection> Corrections { get; init; }

    /// <summary>The car as it ran: its file, read for a run, with <see cref="Changed"/> put in.</summary>
    public required Scenario Scenario { get; init; }

    /// <summary>The car's file as it stands now.</summary>
    public required Scenario CarScenario { get; init; }

    /// <summary>
    /// The settings to predict this pass with: those of <see cref="Scenario"/>, with the beams' places among the marks, and
    /// running on for as long as anything was seen.
    /// </summary>
    public RunSettings Run => PassRun.Of(Scenario.Run, Seen);
}
