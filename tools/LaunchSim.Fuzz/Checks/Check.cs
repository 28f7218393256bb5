namespace LaunchSim.Fuzz.Checks;

/// <summary>Something that holds for every case.</summary>
/// <param name="Name">What is looked at.</param>
/// <param name="Complaints">What is wrong with an outcome, a sentence each; nothing when all is well.</param>
internal sealed record Check(string Name, Func<Outcome, IEnumerable<string>> Complaints)
{
    /// <summary>The register: one line a check.</summary>
    public static IReadOnlyList<Check> All { get; } =
    [
        new("exit code", StreamChecks.ExitCode),
        new("message", StreamChecks.Message),
        new("fault", StreamChecks.Fault),
        new("streams", StreamChecks.Streams),
        new("document", DocumentChecks.Documents),
        new("trace", TraceChecks.Traces),
        new("files", FileChecks.Files),
    ];

    /// <summary>All that is wrong with an outcome.</summary>
    /// <param name="outcome">The outcome.</param>
    public static IReadOnlyList<string> Of(Outcome outcome) =>
        [.. All.SelectMany(check => check.Complaints(outcome).Select(complaint => $"{check.Name}: {complaint}"))];
}
