namespace LaunchSim.Scenarios.Recorded;

/// <summary>What the file <c>season.yaml</c> says of a season.</summary>
/// <param name="Name">What it is called; null when it does not say.</param>
/// <param name="Notes">The notes; empty when there are none.</param>
/// <param name="CarFile">The car's file for passes to come, seen from the current folder; null when none is named.</param>
/// <param name="FittedFile">The file of the fitted car, likewise.</param>
public sealed record SeasonFile(string? Name, string Notes, string? CarFile, string? FittedFile)
{
    /// <summary>The name of the file in its folder.</summary>
    public const string FileName = "season.yaml";

    /// <summary>A season without such a file.</summary>
    public static SeasonFile None { get; } = new(null, "", null, null);
}

/// <summary>What came of reading it.</summary>
/// <param name="Season">What it says; null when there is an error.</param>
/// <param name="Errors">All errors.</param>
public sealed record SeasonFileResult(SeasonFile? Season, IReadOnlyList<Diagnostic> Errors);
