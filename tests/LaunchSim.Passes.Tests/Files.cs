using System.Runtime.CompilerServices;
using LaunchSim.Scenarios;

namespace LaunchSim.Passes.Tests;

/// <summary>Files of the repository and throw-away folders.</summary>
internal static class Files
{
    public static string Root { get; } = FindRoot();

    public static string DoorCar => Shipped("door-car.yaml");

    public static string Shipped(string name) => Path.Combine(Root, "scenarios", name);

    public static Scenario Scenario(string name, params (string, string)[] changes)
    {
        ReadResult read = StandingCheck.Reader(ReadPurpose.Run).Read(Shipped(name), changes);
        Assert.Empty(read.Errors);
        return read.Scenario!;
    }

    public static string Test(string name) => Path.Combine(Root, "tests", "LaunchSim.Cli.Tests", "Scenarios", name + ".yaml");

    private static string FindRoot([CallerFilePath] string here = "")
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "LaunchSim.sln")))
            {
                return folder.FullName;
            }
        }

        return Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", ".."));
    }
}
