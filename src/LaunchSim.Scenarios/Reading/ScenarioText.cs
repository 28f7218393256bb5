using System.Text;

namespace LaunchSim.Scenarios.Reading;

/// <summary>File → text, or one plain sentence why not.</summary>
internal static class ScenarioText
{
    /// <summary>A scenario is a few kilobytes; a megabyte is a wrong file.</summary>
    private const int Largest = 1 << 20;

    // Most scenarios fit into this.
    private const int Usual = 1 << 14;

    /// <param name="path">The file.</param>
    /// <param name="shown">What errors are to call it.</param>
    /// <param name="askedFrom">Where it was named.</param>
    /// <param name="findings">Takes what is wrong.</param>
    /// <param name="what">What kind of file is wanted.</param>
    public static string? Read(string path, string shown, Place askedFrom, Findings findings, string what = "scenario")
    {
        void Refuse(string found, string allowed, string mend) => findings.Error(askedFrom, "", found, allowed, mend);

        try
        {
            if (Directory.Exists(path))
            {
                Refuse($"{Shown.Quoted(shown)}, which is a folder", $"a {what} file", "name a file in it");
                return null;
            }

            if (!File.Exists(path))
            {
                Refuse($"no file {Shown.Quoted(shown)}", "a file that exists", Near(path) is { } near ? $"did you mean `{near}`?" : "look at the name and the folder");
                return null;
            }

            if (Bytes(path) is not { } bytes)
            {
                Refuse($"{Shown.Quoted(shown)}, a file larger than 1 MB", $"a {what}, which is a few kilobytes of text", $"name the {what} file; logs and videos are something else");
                return null;
            }

            return Decode(bytes, shown, findings, what);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException or System.Security.SecurityException)
        {
            Refuse($"{Shown.Quoted(shown)}, which cannot be read", "a file that may be read", exception is UnauthorizedAccessException ? "look at the file's permissions" : exception.Message.TrimEnd('.'));
            return null;
        }
    }

    /// <summary>The same checks for a text that did not come from a file.</summary>
    public static bool Accept(string text, string shown, Findings findings)
    {
        if (text.Length > Largest)
        {
            findings.Error(new Place(shown, 1, 1), "", "a text longer than 1 MB", "a scenario, which is a few kilobytes of text");
            return false;
        }

        for (int i = 0; i < text.Length; i++)
        {
            char c = text[i];
            if (char.IsHighSurrogate(c) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]))
            {
                i++;
            }
            else if (char.IsSurrogate(c))
            {
                findings.Error(Locate(text, i, shown), "", "half a character (a lone surrogate)", "whole characters", "retype the text there");
                return false;
            }
            else if (char.IsControl(c) && c is not ('\n' or '\r' or '\t' or '\u0085'))
            {
                findings.Error(Locate(text, i, shown), "", $"the control character U+{(int)c:X4}", "plain text", c == '\0' ? "name the scenario file: this one is binary" : "take it away");
                return false;
            }
        }

        return true;
    }

    /// <summary>A file's bytes; null when there are too many. Its length is not asked for, since devices and pipes have none.</summary>
    private static byte[]? Bytes(string path)
    {
        using FileStream stream = File.OpenRead(path);
        byte[] bytes = new byte[Usual];
        int length = 0;
        while (true)
        {
            length += stream.ReadAtLeast(bytes.AsSpan(length), bytes.Length - length, throwOnEndOfStream: false);
            if (length < bytes.Length)
            {
                return bytes[..length];
            }

            if (length > Largest)
            {
                return null;
            }

            Array.Resize(ref bytes, Math.Min(2 * length, Largest + 1));
        }
    }

    private static string? Decode(ReadOnlySpan<byte> bytes, string shown, Findings findings, string what)
    {
        if (bytes.StartsWith<byte>([0xEF, 0xBB, 0xBF]))
        {
            bytes = bytes[3..];
        }
        else if (bytes.StartsWith<byte>([0xFF, 0xFE]) || bytes.StartsWith<byte>([0xFE, 0xFF]))
        {
            findings.Error(new Place(shown, 1, 1), "", "a file in UTF-16", "text in UTF-8", "save it as UTF-8");
            return null;
        }

        // Zero bytes tell a binary file sooner and more plainly than its first wrong sequence.
        int zero = bytes.IndexOf((byte)0);
        if (zero >= 0)
        {
            findings.Error(new Place(shown, 1, 1), "", "a binary file", "a text in UTF-8", $"name the {what} file");
            return null;
        }

        var utf8 = new UTF8Encoding(false, true);
        try
        {
            string text = utf8.GetString(bytes);
            return Accept(text, shown, findings) ? text : null;
        }
        catch (DecoderFallbackException exception)
        {
            string before = Encoding.UTF8.GetString(bytes[..Math.Clamp(exception.Index, 0, bytes.Length)]);
            findings.Error(Locate(before, before.Length, shown), "", "bytes that are not UTF-8", "a text in UTF-8", $"save the file as UTF-8, or name the {what} file if this is another");
            return null;
        }
    }

    private static Place Locate(string text, int at, string shown)
    {
        int line = 1;
        int start = 0;
        for (int i = 0; i < at; i++)
        {
            if (text[i] == '\n')
            {
                line++;
                start = i + 1;
            }
        }

        return new Place(shown, line, at - start + 1);
    }

    private static string? Near(string path)
    {
        string? folder = Path.GetDirectoryName(Path.GetFullPath(path));
        if (folder is null || !Directory.Exists(folder))
        {
            return null;
        }

        IEnumerable<string> names = Directory.EnumerateFiles(folder).Select(file => Path.GetFileName(file)!)
            .Where(name => name.EndsWith(".yaml", StringComparison.OrdinalIgnoreCase) || name.EndsWith(".yml", StringComparison.OrdinalIgnoreCase)).Take(1000);
        return Nearest.To(Path.GetFileName(path), names);
    }
}
