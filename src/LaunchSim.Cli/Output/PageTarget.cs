using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Output;

/// <summary>Where a page for a browser goes.</summary>
internal static class PageTarget
{
    /// <summary>Looks whether a page may be written there.</summary>
    /// <param name="path">The file as the user named it.</param>
    /// <param name="inputs">The scenario files.</param>
    /// <exception cref="InputException">It may not.</exception>
    public static OutputFile Plan(string path, IEnumerable<string> inputs)
    {
        Targets.RefuseNameless(("--out", path));
        return path.EndsWith(OutputKind.Html.Extension, StringComparison.OrdinalIgnoreCase)
            ? OutputFile.Plan(path, OutputKind.Html, inputs)
            : throw new InputException($"--out {path}: found {(Path.GetExtension(path) is { Length: > 0 } other ? $"`{other}`" : "a name without an ending")}; allowed: a name that ends in .html");
    }
}
