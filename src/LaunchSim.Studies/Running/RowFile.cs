using System.Text;

namespace LaunchSim.Studies.Running;

/// <summary>
/// A table that grows row by row and survives being killed at any instant. While the study runs the rows stand in
/// <c>NAME.unfinished</c>, whole blocks at a time; a row that was cut off at its end is taken away and run again. When all are
/// there it gets its name. Beside it stands <c>NAME.study</c>, which says what it came from.
/// </summary>
public sealed class RowFile : IDisposable
{
    private readonly FileStream? _stream;

    private RowFile(string path, long rows, FileStream? stream) => (Path, Rows, _stream) = (path, rows, stream);

    /// <summary>The finished table's name.</summary>
    public string Path { get; }

    /// <summary>How many rows are in it.</summary>
    public long Rows { get; private set; }

    /// <summary>Whether the table was finished before it was opened.</summary>
    public bool IsFinished => _stream is null;

    /// <summary>Where the rows stand while the table is not finished.</summary>
    /// <param name="path">The finished table's name.</param>
    public static string Unfinished(string path) => path + ".unfinished";

    /// <summary>Where it is told what a table came from.</summary>
    /// <param name="path">The finished table's name.</param>
    public static string Sidecar(string path) => path + ".study";

    /// <summary>Begins a table, or goes on with one.</summary>
    /// <param name="path">The finished table's name.</param>
    /// <param name="header">The first line, without its end.</param>
    /// <param name="identity">What it comes from.</param>
    /// <param name="resume">Whether to go on with what is there; otherwise what is there is an error.</param>
    /// <exception cref="RowFileException">There is a table already, or the one there came from something else.</exception>
    /// <exception cref="IOException">It cannot be read or written.</exception>
    public static RowFile Open(string path, string header, StudyIdentity identity, bool resume)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(identity);
        bool begun = File.Exists(Unfinished(path)), finished = File.Exists(path);
        if (!resume)
        {
            if (begun || finished)
            {
                throw new RowFileException(begun
                    ? $"`{Unfinished(path)}` is there: a study that was not finished. --resume goes on with it; to begin anew, delete it"
                    : $"`{path}` is there already; name another file, delete it, or read it again with --resume");
            }

            WriteSidecar(path, identity);
            return Begin(path, header);
        }

        if (!begun && !finished && !File.Exists(Sidecar(path)))
        {
            throw new RowFileException($"there is nothing to go on with: neither `{path}` nor `{Unfinished(path)}` is there; take --resume away to begin");
        }

        Compare(path, identity);
        if (finished)
        {
            return Finished(path, header);
        }

        return begun ? GoOn(path, header) : Begin(path, header);
    }

    /// <summary>Reads the table from its first byte on: before rows are added or after, not in between.</summary>
    /// <typeparam name="T">What is read.</typeparam>
    /// <param name="read">Reads it and leaves it open.</param>
    /// <exception cref="IOException">It cannot be read.</exception>
    public IEnumerable<T> Read<T>(Func<Stream, IEnumerable<T>> read)
    {
        ArgumentNullException.ThrowIfNull(read);
        if (_stream is { CanRead: true })
        {
            _ = _stream.Seek(0, SeekOrigin.Begin);
            foreach (T one in read(_stream))
            {
                yield return one;
            }

            yield break;
        }

        using var finished = new FileStream(Path, FileMode.Open, FileAccess.Read, FileShare.Read, 1 << 16);
        foreach (T one in read(finished))
        {
            yield return one;
        }
    }

    /// <summary>Adds whole rows.</summary>
    /// <param name="text">The rows, each with its line end.</param>
    /// <param name="rows">How many they are.</param>
    /// <exception cref="IOException">They cannot be written.</exception>
    public void Append(string text, int rows)
    {
        ObjectDisposedException.ThrowIf(_stream is null, this);
        _ = _stream.Seek(0, SeekOrigin.End);
        _stream.Write(Encoding.UTF8.GetBytes(text));
        _stream.Flush();
        Rows += rows;
    }

    /// <summary>Gives the table its name.</summary>
    /// <exception cref="IOException">It cannot be renamed.</exception>
    public void Finish()
    {
        ObjectDisposedException.ThrowIf(_stream is null, this);
        _stream.Dispose();
        File.Move(Unfinished(Path), Path);
    }

    /// <inheritdoc/>
    public void Dispose() => _stream?.Dispose();

    // No other process may have it open: two that go on with one table would write every row twice.
    private static RowFile Begin(string path, string header)
    {
        var stream = new FileStream(Unfinished(path), FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None, 1);
        return WithHeader(path, header, stream);
    }

    private static RowFile WithHeader(string path, string header, FileStream stream)
    {
        stream.SetLength(0);
        stream.Write(Encoding.UTF8.GetBytes(header + "\n"));
        return new RowFile(path, 0, stream);
    }

    private static RowFile GoOn(string path, string header)
    {
        string unfinished = Unfinished(path);
        var stream = new FileStream(unfinished, FileMode.Open, FileAccess.ReadWrite, FileShare.None, 1);
        try
        {
            long rows = CountRows(stream, unfinished, header, out long whole);
            if (rows < 0)
            {
                // Killed before the first line was whole.
                return WithHeader(path, header, stream);
            }

            stream.SetLength(whole);
            return new RowFile(path, rows, stream);
        }
        catch
        {
            stream.Dispose();
            throw;
        }
    }

    private static RowFile Finished(string path, string header)
    {
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read, 1);
        return new RowFile(path, CountRows(stream, path, header, out _), null);
    }

    /// <summary>The whole rows below the header, −1 when not even that is whole, and how many bytes they are.</summary>
    private static long CountRows(FileStream stream, string path, string header, out long bytes)
    {
        byte[] expected = Encoding.UTF8.GetBytes(header + "\n"), first = new byte[expected.Length];
        int read = stream.ReadAtLeast(first, first.Length, throwOnEndOfStream: false);
        if (read < first.Length || !first.AsSpan().SequenceEqual(expected))
        {
            if (expected.AsSpan().StartsWith(first.AsSpan(0, read)))
            {
                bytes = 0;
                return -1;
            }

            throw new RowFileException($"`{path}` does not begin with the columns of this study; delete it, or name another file");
        }

        long lines = 0, at = read;
        bytes = at;
        byte[] buffer = new byte[1 << 16];
        while ((read = stream.Read(buffer)) > 0)
        {
            for (int i = 0; i < read; i++)
            {
                if (buffer[i] == (byte)'\n')
                {
                    lines++;
                    bytes = at + i + 1;
                }
            }

            at += read;
        }

        return lines;
    }

    private static void Compare(string path, StudyIdentity identity)
    {
        string sidecar = Sidecar(path);
        if (!File.Exists(sidecar) || StudyIdentity.Parse(File.ReadAllText(sidecar)) is not { } found)
        {
            throw new RowFileException($"`{sidecar}` is not there or cannot be read: it is not known what the table came from; begin anew under another name");
        }

        IReadOnlyList<string> differences = identity.Differences(found);
        if (differences.Count > 0)
        {
            throw new RowFileException($"`{path}` came from another study; {string.Join("; ", differences)}. Name another file, or ask for the same study");
        }
    }

    /// <summary>Writes what a table comes from beside it.</summary>
    /// <param name="path">The finished table's name.</param>
    /// <param name="identity">What it comes from.</param>
    /// <exception cref="RowFileException">Something that this program did not write is in the way.</exception>
    /// <exception cref="IOException">It cannot be written.</exception>
    internal static void WriteSidecar(string path, StudyIdentity identity)
    {
        if (File.Exists(Sidecar(path)) && StudyIdentity.Parse(File.ReadAllText(Sidecar(path))) is null)
        {
            throw new RowFileException($"`{Sidecar(path)}` is there and does not come from this program; name another table, or move it away");
        }

        string temporary = Sidecar(path) + ".tmp";
        File.WriteAllText(temporary, identity.ToString());
        File.Move(temporary, Sidecar(path), overwrite: true);
    }
}

/// <summary>A table cannot be begun or gone on with; the message is a sentence for the user.</summary>
/// <param name="message">The sentence.</param>
public sealed class RowFileException(string message) : Exception(message);
