using System.Text;

namespace LaunchSim.Passes.Seasons;

/// <summary>Somebody else writes into the season, or it is not certain that nobody does.</summary>
/// <param name="message">Who holds the lock and what to do, in a sentence without its end.</param>
public sealed class SeasonHeldException(string message) : IOException(message);

/// <summary>
/// The lock against two writers of one season: a file with who holds it, which also is locked by the system as long as its
/// holder lives. What a dead process left is taken over only when that is certain, and told.
/// </summary>
/// <remarks>
/// The system's lock falls with its process, whatever ends it. Where file systems know none, as on some networks, the number
/// and start of the process in the file still keep two writers of one machine apart; of another machine nothing is certain,
/// and the lock is left alone. A file that was taken away between opening and locking is noticed by its token.
/// </remarks>
public sealed class SeasonLock : IDisposable
{
    /// <summary>The file's name in the season's folder.</summary>
    public const string FileName = ".season.lock";

    private const int Attempts = 20;

    private readonly string _path;
    private readonly FileStream _stream;

    private SeasonLock(string path, FileStream stream, LockHolder? left) => (_path, _stream, TakenOver) = (path, stream, left);

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
            if (Open(path) is not { } stream)
            {
                throw Held(path, Holder(path));
            }

            string before = Read(stream);
            LockHolder? left = LockHolder.Read(before);
            if (before.Length > 0 && left?.IsCertainlyGone != true)
            {
                stream.Dispose();
                throw Held(path, left);
            }

            var own = LockHolder.Now();
            stream.SetLength(0);
            stream.Position = 0;
            stream.Write(Encoding.UTF8.GetBytes(own.Text));
            stream.Flush(flushToDisk: true);

            // Another process may have taken this very file away between our opening and our locking it.
            if (Holder(path)?.Token == own.Token)
            {
                return new SeasonLock(path, stream, left);
            }

            stream.Dispose();
        }

        throw Held(path, Holder(path));
    }

    /// <summary>Lets it go.</summary>
    public void Dispose()
    {
        if (OperatingSystem.IsWindows())
        {
            _stream.Dispose();
        }

        try
        {
            File.Delete(_path);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            // The next one to take it finds that its holder is gone.
        }

        _stream.Dispose();
    }

    private static FileStream? Open(string path)
    {
        try
        {
            return new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, OperatingSystem.IsWindows() ? FileShare.Read | FileShare.Delete : FileShare.None);
        }
        catch (IOException) when (File.Exists(path))
        {
            return null;
        }
    }

    private static string Read(FileStream stream)
    {
        byte[] bytes = new byte[4096];
        int count = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        return Encoding.UTF8.GetString(bytes, 0, count);
    }

    // Without asking for a lock: who holds it is told by the file whose lock another has.
    private static LockHolder? Holder(string path)
    {
        try
        {
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            return LockHolder.Read(Read(stream));
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private static SeasonHeldException Held(string path, LockHolder? holder) => new(
        $"the season is being written to by {holder?.Words ?? "another process"}; wait until it is done; if it is certain that nobody writes, take `{path}` away");
}
