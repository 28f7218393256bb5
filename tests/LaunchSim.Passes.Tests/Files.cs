using System.Runtime.CompilerServices;

namespace LaunchSim.Passes.Tests;

/// <summary>Scenarios of the repository and of its tests.</summary>
internal static class Files
{
    public static string Root { get; } = FindRoot();

    public static string DoorCar { get; } = Path.Combine(Root, "scenarios", "door-car.yaml");

    private static readonly string Tests = Path.Combine(Root, "tests", "LaunchSim.Cli.Tests", "Scenarios");


    public static string Test(string name) => Path.Combine(Tests, name + ".yaml");

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
