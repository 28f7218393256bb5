using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Passes.Tests;

/// <summary>A folder that is gone after the test.</summary>
internal sealed class Folder : IDisposable
{
    public string At { get; } = Directory.CreateTempSubdirectory("launchsim").FullName;

    public string Path(string name) => System.IO.Path.Combine(At, name);

    public string Write(string name, string text)
    {
        string path = Path(name);
        _ = Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
        return path;
    }

    public string Write(string name, byte[] bytes)
    {
        File.WriteAllBytes(Path(name), bytes);
        return Path(name);
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
