using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios;
using LaunchSim.Web.Documents;

namespace LaunchSim.Web.Tests;

/// <summary>The scenarios that ship with the program.</summary>
internal static class Shipped
{
    public static string Folder { get; } = Path.Combine(Root(), "scenarios");

    public static TheoryData<string> Names => [.. Directory.EnumerateFiles(Folder, "*.yaml").Select(path => Path.GetFileNameWithoutExtension(path)).Order(StringComparer.Ordinal)];

    public static string PathOf(string name) => Path.Combine(Folder, name + ".yaml");

    public static Scenario Read(string name, params (string Path, string Value)[] changes)
    {
        ReadResult read = StandingCheck.Reader(ReadPurpose.Run).Read(PathOf(name));
        Scenario scenario = read.Scenario ?? throw new InvalidOperationException(string.Join('\n', read.Errors));
        return changes.Length == 0 ? scenario : scenario.With(changes).Scenario!;
    }

    public static LaunchOutcome Run(string name, params (string Path, string Value)[] changes) => LaunchOutcome.Of(Read(name, changes), CancellationToken.None);

    public static string Document(params LaunchOutcome[] runs) =>
        LaunchDocument.Text([.. runs.Select(run => new DocumentedLaunch(run, run.Scenario.Name))], new Readout(runs[0].Scenario.UnitSystem), "LaunchSim");

    private static string Root()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "LaunchSim.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new InvalidOperationException("The tests do not run below the repository.");
    }
}
