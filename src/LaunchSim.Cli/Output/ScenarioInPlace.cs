using System.Text;
using LaunchSim.Cli.Terminal;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Writing;

namespace LaunchSim.Cli.Output;

/// <summary>
/// The one door through which a scenario that is there is changed: because it was asked for by name, value by value, with
/// everything else kept as it stands.
/// </summary>
internal sealed class ScenarioInPlace
{
    private const int Largest = 1 << 20;

    private readonly string _target;
    private readonly byte[] _bytes;
    private readonly bool _hasMark;

    private ScenarioInPlace(string shown, string target, byte[] bytes, bool hasMark, string text) =>
        (Shown, _target, _bytes, _hasMark, Text) = (shown, target, bytes, hasMark, text);

    /// <summary>The file as the user named it.</summary>
    public string Shown { get; }

    /// <summary>Its text.</summary>
    public string Text { get; }

    /// <summary>The folder that it lies in, links followed: from there its bases are looked up.</summary>
    public string Folder => Path.GetDirectoryName(_target)!;

    /// <summary>Opens a scenario to change values of it.</summary>
    /// <param name="path">The file as the user named it.</param>
    /// <exception cref="InputException">It is not there or no text of a scenario's size.</exception>
    public static ScenarioInPlace Open(string path)
    {
        try
        {
            if (!InputFiles.IsScenario(path))
            {
                throw new InputException($"--into {path}: found a name that no scenario has; allowed: one that ends in .yaml");
            }

            string full = Path.GetFullPath(path);
            if (!File.Exists(full))
            {
                throw new InputException($"--into {path}: found no such file; name the scenario whose values are to be replaced");
            }

            // A link is followed, so that it stays one.
            string target = File.ResolveLinkTarget(full, true)?.FullName ?? full;
            if (new FileInfo(target).Length > Largest)
            {
                throw new InputException($"--into {path}: found a file larger than 1 MB, which is no scenario");
            }

            byte[] bytes = File.ReadAllBytes(target);
            bool hasMark = bytes.AsSpan().StartsWith<byte>([0xEF, 0xBB, 0xBF]);
            return new ScenarioInPlace(path, target, bytes, hasMark, new UTF8Encoding(false, true).GetString(bytes.AsSpan(hasMark ? 3 : 0)));
        }
        catch (DecoderFallbackException)
        {
            throw new InputException($"--into {path}: found bytes that are not UTF-8; save the file as UTF-8");
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new InputException($"--into {path}: it cannot be read: {exception.Message}");
        }
    }

    /// <summary>The scenario that it holds; null when it has an error, which is told.</summary>
    /// <param name="session">Takes the findings.</param>
    public Scenario? Read(Session session)
    {
        ReadResult read = new ScenarioReader { Purpose = ReadPurpose.Geometry }.ReadText(Text, Shown, null, Folder);
        foreach (Diagnostic error in read.Errors)
        {
            session.Error.WriteLine(error.ToString());
        }

        return read.Scenario;
    }

    /// <summary>Puts the new text in the place of the old one: whole or not at all, whatever happens, and not over somebody else's change.</summary>
    /// <param name="edit">What was replaced.</param>
    /// <param name="cancellation">Asked before it is done.</param>
    /// <exception cref="OutputException">It could not be written, or the file has changed meanwhile.</exception>
    public void Write(ValueEditResult edit, CancellationToken cancellation)
    {
        string temporary = Path.Combine(Folder, $".launchsim-{Environment.ProcessId:x}{Random.Shared.Next():x8}.tmp");
        bool isMade = false;
        try
        {
            using (var stream = new FileStream(temporary, FileMode.CreateNew, FileAccess.Write, FileShare.None))
            {
                isMade = true;
                stream.Write(_hasMark ? [0xEF, 0xBB, 0xBF] : []);
                stream.Write(new UTF8Encoding(false).GetBytes(edit.Text!));
                stream.Flush(flushToDisk: true);
            }

            if (!OperatingSystem.IsWindows())
            {
                File.SetUnixFileMode(temporary, File.GetUnixFileMode(_target));
            }

            cancellation.ThrowIfCancellationRequested();
            if (!File.ReadAllBytes(_target).AsSpan().SequenceEqual(_bytes))
            {
                throw new OutputException($"`{Shown}` was changed by somebody else meanwhile and is left as it is; start again");
            }

            File.Move(temporary, _target, overwrite: true);
            isMade = false;
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            throw new OutputException($"`{Shown}` could not be written and is as it was: {exception.Message}");
        }
        finally
        {
            if (isMade)
            {
                try
                {
                    File.Delete(temporary);
                }
                catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
                {
                    // The folder is gone or no longer ours.
                }
            }
        }
    }
}
