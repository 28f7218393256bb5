namespace LaunchSim.Scenarios.Varying;

/// <summary>What is studied: a scenario, what is varied of it, and what is wanted.</summary>
public sealed record Study
{
    /// <summary>What it is called: the study file's name or that of the scenario.</summary>
    public required string Name { get; init; }

    /// <summary>The file that was named.</summary>
    public required string SourceFile { get; init; }

    /// <summary>The scenario as it stands.</summary>
    public required Scenario Scenario { get; init; }

    /// <summary>What is varied, in the order in which it was asked for; empty when nothing was asked for.</summary>
    public required IReadOnlyList<Variation> Variations { get; init; }

    /// <summary>What is wanted, as entered; null when nothing was.</summary>
    public required EnteredAims? Aims { get; init; }

    /// <summary>How many launches it may take; null when nothing was entered.</summary>
    public required long? Budget { get; init; }
}

/// <summary>What came of reading a study.</summary>
/// <param name="Study">The study; null when there is an error.</param>
/// <param name="Errors">All errors.</param>
/// <param name="Warnings">All warnings.</param>
public sealed record StudyResult(Study? Study, IReadOnlyList<Diagnostic> Errors, IReadOnlyList<Diagnostic> Warnings);
