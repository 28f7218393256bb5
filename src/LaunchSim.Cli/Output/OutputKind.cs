using System.Text;

namespace LaunchSim.Cli.Output;

/// <summary>A kind of file that this program writes, and how one is known from another program's.</summary>
/// <param name="Name">What it is called in a sentence.</param>
/// <param name="Extension">With the dot.</param>
/// <param name="Begins">The first characters of every such file.</param>
/// <param name="Holds">What stands in every such file besides; empty when the beginning tells enough.</param>
internal sealed record OutputKind(string Name, string Extension, string Begins, string Holds = "")
{
    // Pictures name their maker near an end: all but a PDF in their head.
    private const int Looked = 1 << 12;

    /// <summary>A launch's trace.</summary>
    public static OutputKind Trace { get; } = new("a trace", ".csv", "time_s,distance_m,speed_mps,");

    /// <summary>A document of results.</summary>
    public static OutputKind Json { get; } = new("a document of results", ".json", "{\n  \"program\": \"LaunchSim\"");

    /// <summary>The tables of the side view.</summary>
    public static OutputKind Geometry { get; } = new("a table of the side view", ".csv", "table,holes,present,");

    /// <summary>The rows of a study over a grid.</summary>
    public static OutputKind Rows { get; } = new("a table of a study", ".csv", "set_up,");

    /// <summary>Plausible cars, a row each.</summary>
    public static OutputKind Cars { get; } = new("a table of plausible cars", ".csv", "car,redrawn,");

    /// <summary>The same rows by columns.</summary>
    public static OutputKind Parquet { get; } = new("a table of a study", ".parquet", "PAR1", "LaunchSim");

    /// <summary>The table of a comparison.</summary>
    public static OutputKind Comparison { get; } = new("a table of a comparison", ".csv", "compared,key,");

    /// <summary>The table of what could be changed next.</summary>
    public static OutputKind Changes { get; } = new("a table of changes", ".csv", "change,steps,minutes,");

    /// <summary>The table of a season.</summary>
    public static OutputKind Season { get; } = new("a table of a season", ".csv", "pass,file,when,");

    /// <summary>Measured values beside the predicted ones.</summary>
    public static OutputKind MeasuredRows { get; } = new("a table of a pass", ".csv", "quantity,source,time_s,");

    /// <summary>A picture of pixels.</summary>
    public static OutputKind Png { get; } = new("a picture", ".png", "\u0089PNG", "Software\0LaunchSim");

    /// <summary>A picture of lines.</summary>
    public static OutputKind Svg { get; } = new("a picture", ".svg", "<?xml", "<metadata>LaunchSim</metadata>");

    /// <summary>A page to print.</summary>
    public static OutputKind Pdf { get; } = new("a page to print", ".pdf", "%PDF-", "(LaunchSim)");

    /// <summary>A page for a browser.</summary>
    public static OutputKind Html { get; } = new("a page", ".html", "<!DOCTYPE html>", "LaunchSim</title>");

    /// <summary>Whether a file that is there is of this kind.</summary>
    /// <param name="path">The file.</param>
    public bool IsOf(string path)
    {
        // What has no length may be a device or a pipe, which must not be opened for a look.
        long length = new FileInfo(path).Length;
        if (length < Begins.Length)
        {
            return false;
        }

        using FileStream stream = File.OpenRead(path);
        string head = Part(stream, 0);
        return head.StartsWith(Begins, StringComparison.Ordinal)
            && (Holds.Length == 0 || head.Contains(Holds, StringComparison.Ordinal) || Part(stream, Math.Max(0, length - Looked)).Contains(Holds, StringComparison.Ordinal));
    }

    // Byte for byte, whatever the encoding: what is looked for is plain.
    private static string Part(FileStream stream, long from)
    {
        byte[] found = new byte[Looked];
        stream.Position = from;
        return Encoding.Latin1.GetString(found, 0, stream.ReadAtLeast(found, found.Length, throwOnEndOfStream: false));
    }
}
