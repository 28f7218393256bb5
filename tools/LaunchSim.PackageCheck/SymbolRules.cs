using System.Collections.Immutable;
using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

namespace LaunchSim.PackageCheck;

/// <summary>An assembly with its symbols: made for each other, and the same from whatever folder they were built.</summary>
internal static class SymbolRules
{
    // "BSJB", with which a portable PDB begins.
    private static readonly byte[] Portable = [0x42, 0x53, 0x4A, 0x42];

    public static IEnumerable<string> Of(byte[] assembly, byte[] symbols)
    {
        if (!symbols.AsSpan().StartsWith(Portable))
        {
            return ["its symbols are not a portable PDB"];
        }

        var problems = new List<string>();
        using var image = new PEReader(ImmutableArray.Create(assembly));
        using MetadataReaderProvider provider = MetadataReaderProvider.FromPortablePdbImage(ImmutableArray.Create(symbols));
        MetadataReader reader = provider.GetMetadataReader();
        ImmutableArray<DebugDirectoryEntry> entries = image.ReadDebugDirectory();
        if (!entries.Any(entry => entry.Type == DebugDirectoryEntryType.Reproducible))
        {
            problems.Add("it was not compiled deterministically");
        }

        Guid wanted = entries.Where(entry => entry.Type == DebugDirectoryEntryType.CodeView).Select(entry => image.ReadCodeViewDebugDirectoryData(entry).Guid).FirstOrDefault();
        if (reader.DebugMetadataHeader is not { } header || new BlobContentId(header.Id).Guid != wanted)
        {
            problems.Add("its symbols belong to another build");
        }

        string[] elsewhere = [.. reader.Documents.Select(handle => reader.GetString(reader.GetDocument(handle).Name)).Where(name => !name.StartsWith("/_/", StringComparison.Ordinal))];
        if (elsewhere.Length > 0)
        {
            problems.Add($"{elsewhere.Length} of its sources name the folder of the build, such as {elsewhere[0]}");
        }

        return problems;
    }
}
