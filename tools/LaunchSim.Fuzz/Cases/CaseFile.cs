using System.Text;

namespace LaunchSim.Fuzz.Cases;

/// <summary>One thing that lies in a case's folder before the command runs.</summary>
/// <param name="Name">Its name, which may have folders in it.</param>
/// <param name="Content">Its bytes; of a folder none.</param>
internal sealed record CaseFile(string Name, byte[] Content)
{
    /// <summary>A folder in the place of a file.</summary>
    public bool IsFolder { get; init; }

    /// <summary>The name that a symbolic link points to, or null.</summary>
    public string? LinkTo { get; init; }

    /// <summary>An earlier result of the program, which may be replaced by another of its kind.</summary>
    public bool IsEarlierResult { get; init; }

    /// <summary>A file of text, in UTF-8.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="text">Its text.</param>
    public static CaseFile OfText(string name, string text) => new(name, Encoding.UTF8.GetBytes(text));

    /// <summary>Puts it into a folder.</summary>
    /// <param name="folder">The case's folder.</param>
    public void Make(string folder)
    {
        string path = Path.Combine(folder, Name);
        if (IsFolder)
        {
            _ = Directory.CreateDirectory(path);
            return;
        }

        if (Name.Contains('/', StringComparison.Ordinal))
        {
            _ = Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        }

        if (LinkTo is not null)
        {
            _ = File.CreateSymbolicLink(path, LinkTo);
            return;
        }

        File.WriteAllBytes(path, Content);
    }
}
