using LaunchSim.Charts;
using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Output;

/// <summary>Which kind of picture is asked for: by the file's name, or by --format.</summary>
internal static class PictureTarget
{
    /// <summary>The kinds that a run can draw.</summary>
    public static IReadOnlyList<OutputKind> Kinds { get; } = [OutputKind.Png, OutputKind.Svg];

    /// <summary>The kind for files that the program names itself.</summary>
    /// <param name="targets">What was asked for.</param>
    /// <exception cref="InputException">A format was asked for without a picture.</exception>
    public static OutputKind Kind(RunTargets targets)
    {
        if (targets is { Format: not null, Picture: null, Charts: null })
        {
            throw new InputException($"--format {targets.Format}: found no picture to draw; --picture or --charts says where it goes");
        }

        return Named(targets.Format);
    }

    /// <summary>The kind of --format; png when it was left out.</summary>
    /// <param name="format">png, svg or none.</param>
    public static OutputKind Named(string? format) => format == "svg" ? OutputKind.Svg : OutputKind.Png;

    /// <summary>The kind of a file that the user named.</summary>
    /// <param name="file">The file.</param>
    /// <param name="format">--format, or none.</param>
    /// <exception cref="InputException">Its name tells no kind, or another one than --format.</exception>
    public static OutputKind KindOf(string file, string? format)
    {
        OutputKind kind = Kinds.FirstOrDefault(one => file.EndsWith(one.Extension, StringComparison.OrdinalIgnoreCase))
            ?? throw new InputException($"--picture {file}: found {(Path.GetExtension(file) is { Length: > 0 } other ? $"`{other}`" : "a name without an ending")}; allowed: a name that ends in .png or .svg, or a folder that is there");
        return format is null || kind.Extension == "." + format
            ? kind
            : throw new InputException($"--picture {file}: found --format {format} with a name that ends in {kind.Extension}; leave out --format, or change one");
    }

    /// <summary>Writes a picture as its file's kind wants it.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="kind">The kind.</param>
    /// <param name="stream">Where to.</param>
    public static void Write(Picture picture, OutputKind kind, Stream stream)
    {
        if (kind == OutputKind.Svg)
        {
            PictureFormat.WriteSvg(picture, stream);
        }
        else
        {
            PictureFormat.WritePng(picture, stream);
        }
    }
}
