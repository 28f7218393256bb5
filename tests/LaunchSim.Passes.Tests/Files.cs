using System.Runtime.CompilerServices;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;

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

/// <summary>A folder that is gone after the test.</summary>
internal sealed class Folder : IDisposable
{
    public string At { get; } = Directory.CreateTempSubdirectory("passes").FullName;

    public string Path(string name) => System.IO.Path.Combine(At, name);

    public string Write(string name, string text)
    {
        string path = Path(name);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return path;
    }

    public PassFile Pass(string name, string text)
    {
        PassResult result = new PassReader(StandingCheck.Reader(ReadPurpose.Run)).Read(Write(name, text));
        Assert.Empty(result.Errors);
        return result.Pass!;
    }

    public void Dispose()
    {
        try
        {
            Directory.Delete(At, true);
        }
        catch (IOException)
        {
            // A left-over folder in the temporary one does no harm.
        }
    }
}
