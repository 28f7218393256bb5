using LaunchSim.Charts;
using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Output;

/// <summary>Where pages to print go: all into one PDF, or each into a picture of its own.</summary>
internal static class PageFiles
{
    private static readonly OutputKind[] Kinds = [OutputKind.Pdf, OutputKind.Svg, OutputKind.Png];

    /// <summary>Plans the files; nothing is made yet.</summary>
    /// <param name="path">--out.</param>
    /// <param name="pages">The pages.</param>
    /// <returns>Each file with what writes its content.</returns>
    /// <exception cref="InputException">One cannot be written.</exception>
    public static IReadOnlyList<(OutputFile File, Action<Stream> Content)> Plan(string path, IReadOnlyList<Picture> pages)
    {
        Targets.RefuseNameless(("--out", path));
        if (Directory.Exists(path))
        {
            throw new InputException($"--out {path}: found a folder; name a file in it that ends in .pdf, .svg or .png");
        }

        OutputKind kind = Array.Find(Kinds, one => path.EndsWith(one.Extension, StringComparison.OrdinalIgnoreCase))
            ?? throw new InputException($"--out {path}: found {(Path.GetExtension(path) is { Length: > 0 } other ? $"`{other}`" : "a name without an ending")}; allowed: a name that ends in .pdf, .svg or .png");
        if (kind == OutputKind.Pdf)
        {
            return [(OutputFile.Plan(path, kind, []), stream => PictureFormat.WritePdf(pages, stream))];
        }

        string stem = path[..^kind.Extension.Length], ending = path[^kind.Extension.Length..];
        return [.. pages.Select((page, i) => (OutputFile.Plan(FormattableString.Invariant($"{stem}-{i + 1}{ending}"), kind, []), (Action<Stream>)(stream => PictureTarget.Write(page, kind, stream))))];
    }
}
