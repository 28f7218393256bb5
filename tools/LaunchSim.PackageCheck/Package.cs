using System.IO.Compression;
using System.Xml.Linq;

namespace LaunchSim.PackageCheck;

/// <summary>A package file, opened, with the package of its symbols if that lies beside it.</summary>
internal sealed class Package : IDisposable
{
    private readonly ZipArchive _archive;
    private readonly ZipArchive? _symbols;
    private readonly XElement _metadata;

    public Package(string path)
    {
        FileName = Path.GetFileName(path);
        Size = new FileInfo(path).Length;
        _archive = ZipFile.OpenRead(path);
        string symbols = Path.ChangeExtension(path, ".snupkg");
        _symbols = File.Exists(symbols) ? ZipFile.OpenRead(symbols) : null;
        ZipArchiveEntry specification = _archive.Entries.Single(entry => entry.FullName.EndsWith(".nuspec", StringComparison.Ordinal));
        using Stream stream = specification.Open();
        _metadata = XDocument.Load(stream).Root!.Elements().Single(element => element.Name.LocalName == "metadata");
    }

    /// <summary>The file's name.</summary>
    public string FileName { get; }

    /// <summary>The file's size, bytes.</summary>
    public long Size { get; }

    /// <summary>Whether it is installed as a command.</summary>
    public bool IsTool => _metadata.Descendants().Any(element => element.Name.LocalName == "packageType" && (string?)element.Attribute("name") == "DotnetTool");

    /// <summary>Whether there is a package of symbols.</summary>
    public bool HasSymbols => _symbols is not null;

    /// <summary>The files in it, with <c>/</c> between folders.</summary>
    public IEnumerable<string> Files => _archive.Entries.Select(entry => entry.FullName);

    /// <summary>A value of the package's description; empty when it is not there.</summary>
    /// <param name="name">Such as <c>description</c>.</param>
    public string Value(string name) =>
        _metadata.Elements().FirstOrDefault(element => element.Name.LocalName == name)?.Value.Trim() ?? "";

    /// <summary>The bytes of a file in it; null when it is not there.</summary>
    /// <param name="file">The file, with <c>/</c> between folders.</param>
    public byte[]? Read(string file) => Read(_archive, file);

    /// <summary>The bytes of a file among the symbols; null when it is not there.</summary>
    /// <param name="file">The file, with <c>/</c> between folders.</param>
    public byte[]? ReadSymbols(string file) => _symbols is null ? null : Read(_symbols, file);

    public void Dispose()
    {
        _archive.Dispose();
        _symbols?.Dispose();
    }

    private static byte[]? Read(ZipArchive archive, string file)
    {
        if (archive.GetEntry(file) is not { } entry)
        {
            return null;
        }

        using var bytes = new MemoryStream();
        using Stream stream = entry.Open();
        stream.CopyTo(bytes);
        return bytes.ToArray();
    }
}
