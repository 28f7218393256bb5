using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using LaunchSim.Scenarios.Paths;
using LaunchSim.Scenarios.Schema;

namespace LaunchSim.Scenarios;

/// <summary>The scenario format for editors and readers, out of the same declarations that the reader checks against.</summary>
public static class ScenarioSchema
{
    private static readonly JsonSerializerOptions Indented = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>
    /// Every path that a change may name, in the order of the reference page, with the parts of points; the names of holes
    /// and clicks are those of the file and do not stand here.
    /// </summary>
    public static IReadOnlyList<NamedPath> Paths { get; } = [.. ScenarioPath.Known.SelectMany(Named)];

    /// <summary>The JSON Schema, draft 2020-12, as a tree of its own.</summary>
    public static JsonObject ToJson() => JsonSchemaWriter.Write();

    /// <summary>The JSON Schema as indented text that ends in a line feed.</summary>
    public static string ToJsonText() => ToJson().ToJsonString(Indented) + "\n";

    /// <summary>The reference page in Markdown: the notation, then every key with its unit and how to measure it.</summary>
    public static string ToReference() => ReferenceWriter.Write();

    /// <summary>The JSON Schema of pass files as indented text that ends in a line feed.</summary>
    public static string PassToJsonText() => JsonSchemaWriter.WritePass().ToJsonString(Indented) + "\n";

    /// <summary>The reference page of pass files in Markdown.</summary>
    public static string PassToReference() => ReferenceWriter.WritePass();

    private static IEnumerable<NamedPath> Named(KeyValuePair<string, SchemaKey> known)
    {
        (string path, SchemaKey key) = (known.Key.Replace("[]", "[0]", StringComparison.Ordinal), known.Value);
        yield return new NamedPath(path, key.What, key.Kind is SectionKind or ListKind);
        if (key.Kind is PointKind point)
        {
            yield return new NamedPath(path + ".ahead", key.What + ": its distance ahead of the rear axle's centreline", false);
            yield return new NamedPath(path + ".up", key.What + ": its height above the floor", false);
            if (point.Holes)
            {
                yield return new NamedPath(path + ".use", key.What + ": the hole in use", false);
            }
        }
    }
}
