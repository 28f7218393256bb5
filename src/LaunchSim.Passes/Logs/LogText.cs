using System.Text;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Passes.Logs;

/// <summary>A log's file as text that is read as it comes: looked at for what cannot be a log, never held whole.</summary>
internal sealed class LogText : TextReader
{
    /// <summary>A longer line is no row of a log, characters.</summary>
    public const int LongestLine = 1 << 16;

    private const int Head = 1 << 16;

    private readonly FileStream _stream;
    private readonly StreamReader _reader;
    private readonly string _shown;
    private int _line = 1, _column;

    private LogText(FileStream stream, Encoding encoding, string shown)
    {
        _stream = stream;
        _shown = shown;
        _reader = new StreamReader(stream, encoding, detectEncodingFromByteOrderMarks: true, 1 << 16);
        IsLatin = encoding.CodePage == Encoding.Latin1.CodePage;
    }

    /// <summary>Whether the bytes are no UTF-8 and were taken for Latin-1, as older loggers write.</summary>
    public bool IsLatin { get; }

    /// <summary>How many bytes there are.</summary>
    public long Length => _stream.Length;

    /// <summary>How many bytes were read so far.</summary>
    public long Position => _stream.Position;

    /// <summary>Opens a log.</summary>
    /// <param name="path">The file as it was named.</param>
    /// <param name="problem">Why not, when null is returned.</param>
    public static LogText? Open(string path, out Diagnostic? problem)
    {
        var at = new WrittenPlace(path, 0, 0);
        problem = null;
        try
        {
            if (Directory.Exists(path))
            {
                problem = at.Error("", $"`{path}`, which is a folder", "a log: a text file with a row for each instant", "name a file in it");
                return null;
            }

            if (!File.Exists(path))
            {
                problem = at.Error("", $"no file `{path}`", "a log that exists", "look at the name and the folder");
                return null;
            }

            var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, 1 << 16);
            try
            {
                if (Check(stream, at, out Encoding encoding) is { } wrong)
                {
                    problem = wrong;
                    stream.Dispose();
                    return null;
                }

                return new LogText(stream, encoding, path);
            }
            catch
            {
                stream.Dispose();
                throw;
            }
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException or System.Security.SecurityException)
        {
            problem = at.Error("", $"`{path}`, which cannot be read", "a file that may be read", exception is UnauthorizedAccessException ? "look at the file's permissions" : exception.Message.TrimEnd('.'));
            return null;
        }
    }

    private static Diagnostic? Check(FileStream stream, WrittenPlace at, out Encoding encoding)
    {
        encoding = new UTF8Encoding(false, false);
        if (!stream.CanSeek)
        {
            return at.Error("", "a pipe or a device", "a file: a log is looked at before it is read", "write it into a file first");
        }

        byte[] bytes = new byte[Head];
        ReadOnlySpan<byte> head = bytes.AsSpan(0, stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false));
        stream.Position = 0;
        if (head.IsEmpty)
        {
            return at.Error("", "an empty file", "a log: a row for each instant", "look whether the logger's export came to its end");
        }

        if (head.StartsWith<byte>([0xFF, 0xFE]) || head.StartsWith<byte>([0xFE, 0xFF]) || LooksLikeUtf16(head))
        {
            return (at with { Line = 1, Column = 1 }).Error("", "a file in UTF-16", "text in UTF-8, or plain one-byte text", "export it again as CSV in UTF-8, or save it as UTF-8 in an editor");
        }

        int zero = head.IndexOf((byte)0);
        if (zero >= 0)
        {
            return at.Error("", $"a binary file (a zero byte at {zero})", "a log as text: comma-separated values or the like", "export it as CSV from the logger's own program");
        }

        // Degree and micro signs of older loggers are single bytes; the last bytes of the head may be half a character.
        if (!IsUtf8(head))
        {
            encoding = Encoding.Latin1;
        }

        return null;
    }

    private static bool IsUtf8(ReadOnlySpan<byte> head)
    {
        if (System.Text.Unicode.Utf8.IsValid(head))
        {
            return true;
        }

        for (int cut = 1; cut <= 3 && head.Length == Head; cut++)
        {
            if (System.Text.Unicode.Utf8.IsValid(head[..^cut]))
            {
                return true;
            }
        }

        return false;
    }

    // Without a mark of byte order every second byte of plain text is zero.
    private static bool LooksLikeUtf16(ReadOnlySpan<byte> head)
    {
        int even = 0, odd = 0, count = Math.Min(head.Length, 400) / 2;
        for (int i = 0; i < count; i++)
        {
            even += head[2 * i] == 0 ? 1 : 0;
            odd += head[(2 * i) + 1] == 0 ? 1 : 0;
        }

        return count >= 4 && ((even > 0.9 * count && odd == 0) || (odd > 0.9 * count && even == 0));
    }

    public override int Peek() => _reader.Peek();

    public override int Read()
    {
        Span<char> one = stackalloc char[1];
        return Read(one) == 0 ? -1 : one[0];
    }

    public override int Read(char[] buffer, int index, int count) => Read(buffer.AsSpan(index, count));

    public override int Read(Span<char> buffer)
    {
        int count = _reader.Read(buffer);
        Look(buffer[..count]);
        return count;
    }

    public override string? ReadLine()
    {
        var line = new StringBuilder();
        while (true)
        {
            int next = Read();
            if (next < 0)
            {
                return line.Length > 0 ? line.ToString() : null;
            }

            if (next == '\n')
            {
                break;
            }

            if (next == '\r')
            {
                if (Peek() == '\n')
                {
                    _ = Read();
                }

                break;
            }

            _ = line.Append((char)next);
        }

        return line.ToString();
    }

    private void Look(ReadOnlySpan<char> read)
    {
        int at = 0;
        while (at < read.Length)
        {
            int found = read[at..].IndexOfAny('\n', '\r', '\0');
            if (found < 0)
            {
                _column += read.Length - at;
                TooLong();
                return;
            }

            char c = read[at + found];
            _column += found;
            TooLong();
            if (c == '\0')
            {
                throw new LogTextException(new WrittenPlace(_shown, _line, _column + 1).Error("", "a zero byte, as in a binary file", "a log as text", "export it again as CSV; a card that was pulled out while writing leaves such places"));
            }

            if (c == '\n')
            {
                _line++;
            }

            _column = 0;
            at += found + 1;
        }
    }

    private void TooLong()
    {
        if (_column > LongestLine)
        {
            throw new LogTextException(new WrittenPlace(_shown, _line, 1).Error("", $"a line of more than {LongestLine} characters", "a row for each instant, each on its own line", "export it again as CSV: this is no table of rows"));
        }
    }

    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            _reader.Dispose();
        }

        base.Dispose(disposing);
    }
}

/// <summary>A text that cannot be a log, found while it was read.</summary>
/// <param name="finding">What was found and where.</param>
internal sealed class LogTextException(Diagnostic finding) : Exception(finding.Message)
{
    /// <summary>What was found and where.</summary>
    public Diagnostic Finding { get; } = finding;
}
