using System.Text;

namespace LaunchSim.Cli.Output;

/// <summary>A kind of file that this program writes, known by how it begins.</summary>
/// <param name="Name">What it is called in a sentence.</param>
/// <param name="Extension">With the dot.</param>
/// <param name="Begins">The first characters of every such file.</param>
internal sealed record OutputKind(string Name, string Extension, string Begins)
{
    /// <summary>A launch's trace.</summary>
    public static OutputKind Trace { get; } = new("a trace", ".csv", "time_s,distance_m,speed_mps,");

    /// <summary>A document of results.</summary>
    public static OutputKind Json { get; } = new("a document of results", ".json", "{\n  \"program\": \"LaunchSim\"");

    /// <summary>The tables of the side view.</summary>
    public static OutputKind Geometry { get; } = new("a table of the side view", ".csv", "table,holes,present,");

    /// <summary>Whether a file that is there is of this kind.</summary>
    /// <param name="path">The file.</param>
    public bool IsOf(string path)
    {
        // What has no length may be a device or a pipe, which must not be opened for a look.
        if (new FileInfo(path).Length < Begins.Length)
        {
            return false;
        }

        byte[] wanted = Encoding.UTF8.GetBytes(Begins);
        byte[] found = new byte[wanted.Length];
        using FileStream stream = File.OpenRead(path);
        return stream.ReadAtLeast(found, found.Length, throwOnEndOfStream: false) == found.Length && found.AsSpan().SequenceEqual(wanted);
    }
}
