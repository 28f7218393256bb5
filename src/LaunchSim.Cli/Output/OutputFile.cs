using System.Text;
using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Output;

/// <summary>One file to write: looked at before anything is computed, written whole or not at all.</summary>
internal sealed class OutputFile
{
    // Of one file or folder, on every usual file system.
    private const int LongestName = 255;

    private OutputFile(string shown, string target, OutputKind kind, bool replaces) =>
        (Shown, Target, Kind, Replaces) = (shown, target, kind, replaces);

    /// <summary>The file as the user named it.</summary>
    public string Shown { get; }

    /// <summary>Where it ends up: the whole path, links followed.</summary>
    public string Target { get; }

    /// <summary>What is written into it.</summary>
    public OutputKind Kind { get; }

    /// <summary>Whether it takes the place of an earlier one.</summary>
    public bool Replaces { get; }

    /// <summary>Looks whether a file may be written: its folder is there or will be, and nothing else of the user's is in the way.</summary>
    /// <param name="path">The file as the user named it.</param>
    /// <param name="kind">What is to be written.</param>
    /// <param name="inputs">The scenario files.</param>
    /// <param name="makesFolder">Whether its folder may be made.</param>
    /// <exception cref="InputException">It may not.</exception>
    public static OutputFile Plan(string path, OutputKind kind, IEnumerable<string> inputs, bool makesFolder = false)
    {
        try
        {
            string full = Path.GetFullPath(path);
            if (Directory.Exists(full) || Path.GetFileName(full).Length == 0)
            {
                throw new InputException($"`{path}` is a folder; name a file in it");
            }

            if (full.Split(Path.DirectorySeparatorChar).Any(name => Encoding.UTF8.GetByteCount(name) > LongestName))
            {
                throw new InputException($"`{path}` cannot be written: found a name of more than {LongestName} bytes, which no file can have; write a shorter one");
            }

            // A link is followed, so that it stays one.
            string target = (File.Exists(full) ? File.ResolveLinkTarget(full, true)?.FullName : null) ?? full;
            if (InputFiles.IsScenario(path) || InputFiles.IsScenario(target) || inputs.Any(input => SameFile(input, target)))
            {
                throw new InputException($"`{path}` is a scenario, which is never overwritten; name a {kind.Extension} file");
            }

            bool exists = File.Exists(target);
            if (exists && !kind.IsOf(target))
            {
                throw new InputException($"`{path}` is there already and is not {kind.Name} of this program; name another file, or move it away");
            }

            string? folder = Path.GetDirectoryName(target);
            if (!makesFolder && !Directory.Exists(folder))
            {
                throw new InputException($"`{path}` cannot be written: there is no folder `{(File.ResolveLinkTarget(path, true) is null ? Path.GetDirectoryName(path) : folder)}`");
            }

            return new OutputFile(path, target, kind, exists);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new InputException($"`{path}` cannot be written: {exception.Message}");
        }
    }

    /// <summary>
    /// Writes under a temporary name in the same folder, then renames. Whatever happens before that, nothing is left
    /// behind and an earlier file is untouched.
    /// </summary>
    /// <param name="content">Writes the content.</param>
    /// <param name="cancellation">Asked before renaming; the content may ask more often.</param>
    /// <exception cref="OutputException">It could not be written.</exception>
    public void Write(Action<Stream> content, CancellationToken cancellation)
    {
        string folder = Path.GetDirectoryName(Target)!;
        string temporary = Path.Combine(folder, $".launchsim-{Environment.ProcessId:x}{Random.Shared.Next():x8}.tmp");
        bool made = false;
        try
        {
            _ = Directory.CreateDirectory(folder);
            using (var stream = new FileStream(temporary, FileMode.CreateNew, FileAccess.Write, FileShare.None, 1 << 16))
            {
                made = true;
                content(stream);
            }

            cancellation.ThrowIfCancellationRequested();
            File.Move(temporary, Target, overwrite: Replaces);
            made = false;
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or NotSupportedException)
        {
            throw new OutputException($"`{Shown}` could not be written, nothing of it is left behind: {exception.Message}");
        }
        finally
        {
            if (made)
            {
                Remove(temporary);
            }
        }
    }

    /// <summary>Tells whether two targets are one place.</summary>
    public static StringComparer Comparer => OperatingSystem.IsLinux() ? StringComparer.Ordinal : StringComparer.OrdinalIgnoreCase;

    private static bool SameFile(string input, string target)
    {
        try
        {
            string full = Path.GetFullPath(input);
            return Comparer.Equals(full, target)
                || (File.Exists(full) && Comparer.Equals(File.ResolveLinkTarget(full, true)?.FullName, target));
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return false;
        }
    }

    private static void Remove(string temporary)
    {
        try
        {
            File.Delete(temporary);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            // The folder is gone or no longer ours: there is nothing left to tidy that we could reach.
        }
    }
}
