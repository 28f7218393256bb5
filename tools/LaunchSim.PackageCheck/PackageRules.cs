using System.Text;
using System.Xml;
using System.Xml.Linq;

namespace LaunchSim.PackageCheck;

/// <summary>What has to be in a package: one sentence for each thing that is missing or wrong.</summary>
internal static class PackageRules
{
    // A package of one's own libraries that weighs more has taken something along.
    private const long MostBytesOfLibrary = 3_000_000;

    // Natives of five platforms take some 30 MB; those of all platforms, or symbols among them, would take several times that.
    private const long MostBytesOfTool = 45_000_000;

    private static readonly string[] Told = ["authors", "description", "tags", "readme"];

    public static IEnumerable<string> Of(Package package, string version) =>
        Description(package, version).Concat(package.IsTool ? Tool(package) : Library(package));

    private static IEnumerable<string> Description(Package package, string version)
    {
        if (package.Value("version") != version)
        {
            yield return $"version: found `{package.Value("version")}`, allowed: {version}";
        }

        // What a package holds of others comes after our own licence.
        if (package.Value("license").Split(" AND ")[0] != "MIT")
        {
            yield return $"licence: found `{package.Value("license")}`, allowed: an expression that begins with MIT";
        }

        foreach (string name in Told.Where(name => package.Value(name).Length == 0))
        {
            yield return $"it has no {name}";
        }

        // The SDK's own word for a description that nobody wrote.
        if (package.Value("description") == "Package Description")
        {
            yield return "nobody wrote its description";
        }

        if (package.Read("README.md") is not { } readme)
        {
            yield return "README.md is missing";
        }
        else if (!Encoding.UTF8.GetString(readme).StartsWith($"# {(package.IsTool ? "launchsim" : package.Value("id"))}\n", StringComparison.Ordinal))
        {
            yield return "README.md does not begin with the package's name as its heading";
        }

        if (!package.HasSymbols)
        {
            yield return "there is no package of symbols (.snupkg) beside it";
        }
    }

    private static IEnumerable<string> Library(Package package)
    {
        if (package.Size > MostBytesOfLibrary)
        {
            yield return $"it weighs {package.Size} bytes; allowed: {MostBytesOfLibrary}";
        }

        string stem = $"lib/net10.0/{package.Value("id")}";
        foreach (string stranger in package.Files.Where(file => file.StartsWith("lib/", StringComparison.Ordinal) && file != stem + ".dll" && file != stem + ".xml"))
        {
            yield return $"{stranger}: found a file that is neither the assembly nor its documentation";
        }

        if (package.Read(stem + ".xml") is not { } documentation)
        {
            yield return $"{stem}.xml is missing";
        }
        else if (!IsDocumentation(documentation))
        {
            yield return $"{stem}.xml documents nothing";
        }

        if (package.Read(stem + ".dll") is not { } assembly)
        {
            yield return $"{stem}.dll is missing";
        }
        else if (package.ReadSymbols(stem + ".pdb") is not { } symbols)
        {
            yield return $"{stem}.pdb is missing among the symbols";
        }
        else
        {
            foreach (string problem in SymbolRules.Of(assembly, symbols))
            {
                yield return $"{stem}: {problem}";
            }
        }
    }

    private static IEnumerable<string> Tool(Package package)
    {
        if (package.Size > MostBytesOfTool)
        {
            yield return $"it weighs {package.Size} bytes; allowed: {MostBytesOfTool}";
        }

        const string Folder = "tools/net10.0/any/";
        string settings = package.Read(Folder + "DotnetToolSettings.xml") is { } bytes ? Encoding.UTF8.GetString(bytes) : "";
        if (!settings.Contains("Name=\"launchsim\"", StringComparison.Ordinal))
        {
            yield return $"{Folder}DotnetToolSettings.xml does not name the command launchsim";
        }

        foreach (string file in package.Files.Where(file => file.EndsWith(".xml", StringComparison.Ordinal) && file.StartsWith(Folder, StringComparison.Ordinal) && !file.EndsWith("DotnetToolSettings.xml", StringComparison.Ordinal)))
        {
            yield return $"{file}: found documentation for callers, of which a tool has none";
        }

        foreach (string file in package.Files.Where(file => file.Contains("/native/", StringComparison.Ordinal) && file.EndsWith(".pdb", StringComparison.Ordinal)))
        {
            yield return $"{file}: found symbols of native code";
        }

        if (package.Read(Folder + "launchsim.dll") is not { } program)
        {
            yield return $"{Folder}launchsim.dll is missing";
        }
        else if (package.ReadSymbols(Folder + "launchsim.pdb") is not { } symbols)
        {
            yield return $"{Folder}launchsim.pdb is missing among the symbols";
        }
        else
        {
            foreach (string problem in SymbolRules.Of(program, symbols))
            {
                yield return $"launchsim.dll: {problem}";
            }
        }
    }

    private static bool IsDocumentation(byte[] bytes)
    {
        try
        {
            return XDocument.Load(new MemoryStream(bytes)).Descendants("member").Any(member => member.Element("summary")?.Value.Trim().Length > 0);
        }
        catch (XmlException)
        {
            return false;
        }
    }
}
