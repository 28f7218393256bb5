using System.Globalization;
using System.Text;

namespace LaunchSim.Scenarios.Writing;

/// <summary>Makes a file where nothing is yet: whole or not at all.</summary>
public static class NewFile
{
    /// <summary>
    /// Writes under a temporary name in the same folder, then gives the file its name; what has come to be there in the
    /// meantime is left alone, and nothing half-written is left behind.
    /// </summary>
    /// <param name="path">The file, as a whole path.</param>
    /// <param name="text">Its content, which is written as UTF-8.</param>
    /// <param name="cancellation">Asked before it gets its name.</param>
    /// <param name="temporaryStart">What the temporary name begins with.</param>
    /// <exception cref="IOException">Something is there, or it cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written.</exception>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static void Write(string path, string text, CancellationToken cancellation, string temporaryStart = ".launchsim-")
    {
        string temporary = Path.Combine(
            Path.GetDirectoryName(path) ?? "", string.Create(CultureInfo.InvariantCulture, $"{temporaryStart}{Environment.ProcessId:x}{Random.Shared.Next():x8}.tmp"));
        bool isMade = false;
        try
        {
            using (var stream = new FileStream(temporary, FileMode.CreateNew, FileAccess.Write, FileShare.None))
            {
                isMade = true;
                stream.Write(new UTF8Encoding(false).GetBytes(text));
                stream.Flush(flushToDisk: true);
            }

            cancellation.ThrowIfCancellationRequested();
            File.Move(temporary, path, overwrite: false);
            isMade = false;
        }
        finally
        {
            if (isMade)
            {
                Remove(temporary);
            }
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
            // The folder is gone or no longer ours.
        }
    }
}
