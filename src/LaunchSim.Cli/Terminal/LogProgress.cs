namespace LaunchSim.Cli.Terminal;

/// <summary>How far the reading of a log is, where it is long enough to be waited for.</summary>
internal static class LogProgress
{
    private const long Long = 20_000_000, Piece = 1_000_000;

    /// <summary>Reads a log, and shows how far that is.</summary>
    /// <param name="session">Where it is shown.</param>
    /// <param name="file">The log.</param>
    /// <param name="read">Reads it; is given what wants to be told the share that was read.</param>
    public static T Read<T>(Session session, string file, Func<Action<double>?, T> read)
    {
        long length = Length(file);
        if (length < Long)
        {
            return read(null);
        }

        T result = default!;
        long pieces = length / Piece, told = 0;
        session.WithProgress("MB", pieces, 0, added => result = read(share =>
        {
            long now = (long)(share * pieces);
            if (now > told)
            {
                added((int)(now - told));
                told = now;
            }
        }));
        return result;
    }

    private static long Length(string file)
    {
        try
        {
            return File.Exists(file) ? new FileInfo(file).Length : 0;
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return 0;
        }
    }
}
