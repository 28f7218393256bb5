using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace LaunchSim.Scenarios.Tests.Schema;

/// <summary>
/// YAML as an editor hands it to a validator: read by the library's own representation, aliases followed, plain numbers made
/// numbers (YAML 1.2 core schema). Nothing of our reader is in it.
/// </summary>
internal static partial class EditorYaml
{
    /// <summary>The documents of a text.</summary>
    /// <exception cref="YamlException">It is no YAML, or a key is doubled: an editor underlines that by itself.</exception>
    public static IReadOnlyList<JsonElement> Documents(string text)
    {
        var stream = new YamlStream();
        try
        {
            stream.Load(new StringReader(text));
        }
        catch (Exception exception) when (exception is not YamlException)
        {
            // Some texts trip the library in ways that it does not name.
            throw new YamlException("It is no YAML.", exception);
        }

        return [.. stream.Documents.Select(document => JsonSerializer.SerializeToElement(Of(document.RootNode)))];
    }

    private static JsonNode? Of(YamlNode node) => node switch
    {
        YamlMappingNode map => new JsonObject(map.Children.Select(entry => KeyValuePair.Create(Key(entry.Key), Of(entry.Value)))),
        YamlSequenceNode list => new JsonArray([.. list.Children.Select(Of)]),
        YamlScalarNode { Style: ScalarStyle.Plain, Value: "" or "~" or "null" } => null,
        YamlScalarNode { Style: ScalarStyle.Plain, Value: "true" or "false" } word => JsonValue.Create(word.Value == "true"),
        YamlScalarNode { Style: ScalarStyle.Plain } plain when CoreNumber().IsMatch(plain.Value!) => JsonValue.Create(double.Parse(plain.Value!, CultureInfo.InvariantCulture)),
        YamlScalarNode scalar => JsonValue.Create(scalar.Value),
        _ => throw new InvalidOperationException(node.ToString()),
    };

    private static string Key(YamlNode node) => node is YamlScalarNode { Value: { } name } ? name : throw new YamlException("A key that is not a word.");

    [GeneratedRegex(@"^[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]+)?$")]
    private static partial Regex CoreNumber();
}
