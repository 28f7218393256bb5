using System.Text;
using LaunchSim.Scenarios.Writing;

namespace LaunchSim.Passes.Seasons;

/// <summary>Somebody else writes into the season, or it is not certain that nobody does.</summary>
/// <param name="message">Who holds the lock and what to do, in a sentence without its end.</param>
public sealed class SeasonHeldException(string message) : IOException(message);

/// <summary>
/// The lock against two writers of one season: a file that says who holds it, made where none is, whole from its first instant.
/// What a dead process left is taken over only when it is certain that it is dead, and told.
/// </summary>
/// <remarks>
/// Taking over is what two could do at once. Who does it locks the very file that is there by the system's means, reads it,
/// sees that the name still leads to it, and only then puts its own in its place: another one that had opened the same file
/// then finds that the name leads elsewhere, and begins anew.
/// </remarks>
public sealed class SeasonLock : IDisposable
{
    /// <summary>The file's name in the season's folder.</summary>
    public const string FileName = ".season.lock";

    /// <summary>What its temporary files begin with.</summary>
    internal const string Temporary = ".season.lock-";

    private const int Attempts = 40;

    // Others look into the file only for an instant.
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(5);

    private readonly string _path;
    private readonly LockHolder _own;

    private SeasonLock(string path, LockHolder own, LockHolder? left) => (_path, _own, TakenOver) = (path, own, left);

    /// <summary>The dead process whose lock was taken over; null when there was none.</summary>
    public LockHolder? TakenOver { get; }

    /// <summary>Takes the lock.</summary>
    /// <param name="folder">The season's folder.</param>
    /// <exception cref="SeasonHeldException">Somebody holds it, or may hold it.</exception>
    /// <exception cref="IOException">The folder cannot be written to.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written to.</exception>
    public static SeasonLock Take(string folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        string path = Path.Combine(Path.GetFullPath(folder), FileName);
        for (int attempt = 0; attempt < Attempts; attempt++)
        {
            var own = LockHolder.Now();
            if (TryMake(path, own, isLast: attempt == Attempts - 1))
            {
                return new SeasonLock(path, own, null);
            }

            if (TryTakeOver(path, own, out LockHolder? left))
            {
                return new SeasonLock(path, own, left);
            }

            if (left is not null)
            {
                throw Held(path, left);
            }

            Thread.Sleep(Pause);
        }

        throw Held(path, null);
    }

    /// <summary>Lets it go.</summary>
    public void Dispose()
    {
        // What stands there may be another's by now, if somebody took the file away by hand.
        for (int attempt = 0; attempt < Attempts; attempt++)
        {
            try
            {
                using (FileStream stream = Open(_path))
                {
                    if (LockHolder.Read(Read(stream))?.Token != _own.Token)
                    {
                        return;
                    }

                    if (!OperatingSystem.IsWindows())
                    {
                        File.Delete(_path);
                        return;
                    }
                }

                File.Delete(_path);
                return;
            }
            catch (FileNotFoundException)
            {
                return;
            }
            catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
            {
                Thread.Sleep(Pause);
            }
        }
    }

    private static bool TryMake(string path, LockHolder own, bool isLast)
    {
        try
        {
            NewFile.Write(path, own.Text, CancellationToken.None, Temporary);
            return true;
        }
        catch (IOException exception) when (exception is not DirectoryNotFoundException && (!isLast || File.Exists(path)))
        {
            // Mostly there is one already, which may be gone a moment later.
            return false;
        }
    }

    /// <summary>Puts our own in the place of a dead one's.</summary>
    /// <param name="path">The file.</param>
    /// <param name="own">Ourselves.</param>
    /// <param name="found">Who stands there, if that could be read and is not certainly gone, or was taken over.</param>
    private static bool TryTakeOver(string path, LockHolder own, out LockHolder? found)
    {
        found = null;
        try
        {
            using FileStream stream = Open(path);
            string text = Read(stream);
            LockHolder? holder = LockHolder.Read(text);
            if (holder is null || !holder.IsCertainlyGone)
            {
                found = holder ?? throw Unreadable(path);
                return false;
            }

            if (!IsSame(path))
            {
                return false;
            }

            if (OperatingSystem.IsWindows())
            {
                stream.Dispose();
            }

            ReplacedFile.Write(path, own.Text, CancellationToken.None, Temporary);
            found = holder;
            return true;
        }
        catch (IOException exception) when (exception is not SeasonHeldException)
        {
            // It is gone, or another one looks into it: again.
            return false;
        }
    }

    // Locked by us, the file lets nobody in: if somebody gets in by its name, that leads to another one.
    private static bool IsSame(string path)
    {
        try
        {
            using FileStream other = Open(path);
            return false;
        }
        catch (FileNotFoundException)
        {
            return false;
        }
        catch (IOException)
        {
            return true;
        }
    }

    private static FileStream Open(string path) => new(path, FileMode.Open, FileAccess.ReadWrite, FileShare.None);

    private static string Read(FileStream stream)
    {
        byte[] bytes = new byte[4096];
        return Encoding.UTF8.GetString(bytes, 0, stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false));
    }

    private static SeasonHeldException Held(string path, LockHolder? holder) => new(
        $"the season is being written to by {holder?.Words ?? "another process"}; wait until it is done; if it is certain that nobody writes, take `{path}` away");

    private static SeasonHeldException Unreadable(string path) => new(
        $"`{path}` does not say who holds the season's lock; if it is certain that nobody writes, take it away");
}
