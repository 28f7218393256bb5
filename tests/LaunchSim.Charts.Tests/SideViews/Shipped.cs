using System.Runtime.CompilerServices;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios;

namespace LaunchSim.Charts.Tests.SideViews;

/// <summary>The scenarios of the repository, and those of the command line's tests.</summary>
internal static class Shipped
{
    private static readonly string Root = FindRoot();

    public static TheoryData<string> All { get; } = new(Directory.EnumerateFiles(Path.Combine(Root, "scenarios"), "*.yaml")
        .Concat(Directory.EnumerateFiles(Path.Combine(Root, "tests", "LaunchSim.Cli.Tests", "Scenarios"), "*.yaml"))
        .Select(path => Path.GetRelativePath(Root, path).Replace('\\', '/')).Order(StringComparer.Ordinal));

    public static Scenario Read(string path, params (string Path, string Value)[] changes)
    {
        ReadResult result = StandingCheck.Reader(ReadPurpose.Geometry).Read(Path.Combine(Root, path), changes);
        return result.Scenario ?? throw new InvalidOperationException(result.Errors[0].ToString());
    }

    public static (GeometryReport Report, Readout Readout) Report(string path, params (string Path, string Value)[] changes)
    {
        Scenario scenario = Read(path, changes);
        var readout = new Readout(scenario.UnitSystem);
        return (GeometryReport.Of(scenario, readout.IsShop), readout);
    }

    private static string FindRoot([CallerFilePath] string here = "")
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "LaunchSim.sln")))
            {
                return folder.FullName;
            }
        }

        return Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", "..", ".."));
    }
}
