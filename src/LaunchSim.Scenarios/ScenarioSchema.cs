using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
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

    /// <summary>The JSON Schema, draft 2020-12, as a tree of its own.</summary>
    public static JsonObject ToJson() => JsonSchemaWriter.Write();

    /// <summary>The JSON Schema as indented text that ends in a line feed.</summary>
    public static string ToJsonText() => ToJson().ToJsonString(Indented) + "\n";

    /// <summary>The reference page in Markdown: the notation, then every key with its unit and how to measure it.</summary>
    public static string ToReference() => ReferenceWriter.Write();
}
