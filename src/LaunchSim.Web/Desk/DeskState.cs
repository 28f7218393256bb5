using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios;

namespace LaunchSim.Web.Desk;

/// <summary>A file as it was read last. Immutable.</summary>
internal sealed record DeskState
{
    /// <summary>How often it was read.</summary>
    public required int Version { get; init; }

    /// <summary>The scenario as it stands, or as it last stood without an error; null when it never did.</summary>
    public required Scenario? Scenario { get; init; }

    /// <summary>What is wrong with the file as it stands; empty when nothing is.</summary>
    public required IReadOnlyList<Diagnostic> Errors { get; init; }

    /// <summary>What deserves a look.</summary>
    public required IReadOnlyList<Diagnostic> Warnings { get; init; }

    /// <summary>The lines in which errors are, by file and line; those that could be read.</summary>
    public required IReadOnlyDictionary<(string File, int Line), string> Lines { get; init; }

    /// <summary>What may be moved of <see cref="Scenario"/>.</summary>
    public required IReadOnlyList<Control> Controls { get; init; }

    /// <summary>Whether <see cref="Scenario"/> is what the file says now.</summary>
    public bool IsPresent => Scenario is not null && Errors.Count == 0;

    /// <summary>The units of what is said of the scenario.</summary>
    public Readout Readout => new(Scenario?.UnitSystem ?? default);
}
