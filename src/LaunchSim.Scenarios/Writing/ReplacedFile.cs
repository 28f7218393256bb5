using System.Globalization;
using System.Text;

namespace LaunchSim.Scenarios.Writing;

/// <summary>Puts a text in the place of a file that is there: whole or not at all.</summary>
public static class ReplacedFile
{
    /// <summary>
    /// Writes under a temporary name in the same folder, sees that it is on the disk, then takes the file's place; whatever happens
    /// before that, the file is as it was. A link stays one, and keeps leading to its file.
    /// </summary>
    /// <param name="path">The file, as a whole path.</param>
    /// <param name="text">Its new content, which is written as UTF-8.</param>
    /// <param name="cancellation">Asked before it takes the place.</param>
    /// <param name="temporaryStart">What the temporary name begins with.</param>
    /// <exception cref="IOException">It cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written.</exception>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static void Write(string path, string text, CancellationToken cancellation, string temporaryStart = ".launchsim-")
    {
        string target = File.ResolveLinkTarget(path, true)?.FullName ?? path;
        string temporary = Path.Combine(
            Path.GetDirectoryName(target) ?? "", string.Create(CultureInfo.InvariantCulture, $"{temporaryStart}{Environment.ProcessId:x}{Random.Shared.Next():x8}.tmp"));
        bool isMade = false;
        try
        {
            using (var stream = new FileStream(temporary, FileMode.CreateNew, FileAccess.Write, FileShare.None))
            {
                isMade = true;
                stream.Write(new UTF8Encoding(false).GetBytes(text));
                stream.Flush(flushToDisk: true);
            }

            if (!OperatingSystem.IsWindows())
            {
                File.SetUnixFileMode(temporary, File.GetUnixFileMode(target));
            }

            cancellation.ThrowIfCancellationRequested();
            File.Move(temporary, target, overwrite: true);
            isMade = false;
        }
        finally
        {
            if (isMade)
            {
                File.Delete(temporary);
            }
        }
    }
}
