namespace LaunchSim.Passes.Tests;

/// <summary>A folder that is gone after the test.</summary>
internal sealed class Folder : IDisposable
{
    public string At { get; } = Directory.CreateTempSubdirectory("launchsim").FullName;

    public string Write(string name, string text)
    {
        File.WriteAllText(Path.Combine(At, name), text);
        return Path.Combine(At, name);
    }

    public string Write(string name, byte[] bytes)
    {
        File.WriteAllBytes(Path.Combine(At, name), bytes);
        return Path.Combine(At, name);
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
