using LaunchSim.Cli.Terminal;
using LaunchSim.Scenarios.Writing;

namespace LaunchSim.Cli.Output;

/// <summary>A scenario that is made where nothing is yet.</summary>
internal sealed class NewScenarioFile
{
    private readonly string _shown;
    private readonly string _target;

    private NewScenarioFile(string shown, string target) => (_shown, _target) = (shown, target);

    /// <summary>Looks whether it can be made.</summary>
    /// <param name="path">The file as the user named it.</param>
    /// <exception cref="InputException">Something is there, or it cannot be made.</exception>
    public static NewScenarioFile Plan(string path)
    {
        try
        {
            string target = Path.GetFullPath(path);
            if (!InputFiles.IsScenario(path) || Path.GetFileNameWithoutExtension(path).Length == 0)
            {
                throw new InputException($"found the name `{path}`; allowed: a name that ends in .yaml, as in my-car.yaml");
            }

            // A link that leads nowhere is something too.
            if (Path.Exists(target) || new FileInfo(target).LinkTarget is not null)
            {
                throw new InputException($"`{path}` is there already and is never overwritten; name another file");
            }

            string? folder = Path.GetDirectoryName(target);
            return Directory.Exists(folder) ? new NewScenarioFile(path, target)
                : throw new InputException($"`{path}` cannot be written: there is no folder `{Path.GetDirectoryName(path)}`");
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new InputException($"`{path}` cannot be written: {exception.Message}");
        }
    }

    /// <summary>Writes it whole or not at all; what has come to be there in the meantime is left alone.</summary>
    /// <param name="text">Its content.</param>
    /// <param name="cancellation">Asked before it gets its name.</param>
    /// <exception cref="OutputException">It could not be written.</exception>
    public void Write(string text, CancellationToken cancellation)
    {
        try
        {
            NewFile.Write(_target, text, cancellation);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            throw new OutputException($"`{_shown}` could not be written, nothing of it is left behind: {exception.Message}");
        }
    }
}
