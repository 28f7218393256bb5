using System.Runtime.CompilerServices;

namespace LaunchSim.Scenarios.Tests;

/// <summary>Files of the repository and throw-away folders.</summary>
internal static class Files
{
    public static string Root { get; } = FindRoot();

    public static string DoorCar => Path.Combine(Root, "scenarios", "door-car.yaml");

    public static string DoorCarText { get; } = File.ReadAllText(Path.Combine(Root, "scenarios", "door-car.yaml"));

    /// <summary>The door car's text with one line or part of it replaced; fails when that part is not in it.</summary>
    public static string DoorCarWith(string part, string replacement)
    {
        Assert.Contains(part, DoorCarText, StringComparison.Ordinal);
        return DoorCarText.Replace(part, replacement, StringComparison.Ordinal);
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

        return Path.GetFullPath(Path.Combine(Path.GetDirectoryName(here)!, "..", ".."));
    }
}

/// <summary>A folder that is gone after the test.</summary>
internal sealed class Folder : IDisposable
{
    public string At { get; } = Directory.CreateTempSubdirectory("scenario").FullName;

    public string Write(string name, string text)
    {
        string path = Path.Combine(At, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return path;
    }

    public string Write(string name, byte[] bytes)
    {
        string path = Path.Combine(At, name);
        File.WriteAllBytes(path, bytes);
        return path;
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
