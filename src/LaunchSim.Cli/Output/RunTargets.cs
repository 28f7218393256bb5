namespace LaunchSim.Cli.Output;

/// <summary>Where the results of a run are to go, as the user wrote it.</summary>
internal sealed record RunTargets
{
    /// <summary>--csv: a file for one scenario, a folder for several; or none.</summary>
    public string? Csv { get; init; }

    /// <summary>--out: a folder for traces and documents; or none.</summary>
    public string? Folder { get; init; }

    /// <summary>--picture: a file for one scenario, a folder for several; or none.</summary>
    public string? Picture { get; init; }

    /// <summary>--charts: a folder; or none.</summary>
    public string? Charts { get; init; }

    /// <summary>--format: png or svg; or none.</summary>
    public string? Format { get; init; }
}
