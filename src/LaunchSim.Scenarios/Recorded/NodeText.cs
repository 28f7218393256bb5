using LaunchSim.Scenarios.Reading;
using LaunchSim.Scenarios.Writing;

namespace LaunchSim.Scenarios.Recorded;

/// <summary>A piece of a file's tree → text on one line that reads back as the same.</summary>
internal static class NodeText
{
    /// <summary>A value as it is given beside a file: a plain text as it is, a section or a list in braces.</summary>
    public static string Of(Node node) => node is ScalarNode scalar ? scalar.Text.Trim() : Inner(node);

    /// <summary>The tree in an order that does not depend on the file's, without some keys of its root.</summary>
    public static string Canonical(MapNode root, IReadOnlyCollection<string> without) =>
        Sorted(new MapNode(root.Place, [.. root.Entries.Where(entry => !without.Contains(entry.Key.Text))], false));

    private static string Inner(Node node) => node switch
    {
        ScalarNode scalar => YamlScalar.InBraces(scalar.Text.Trim()),
        MapNode map => $"{{{string.Join(", ", map.Entries.Select(entry => $"{YamlScalar.InBraces(entry.Key.Text.Trim())}: {Inner(entry.Value)}"))}}}",
        ListNode list => $"[{string.Join(", ", list.Items.Select(Inner))}]",
        _ => throw new InvalidOperationException("A point with parts set apart is never written in a file."),
    };

    private static string Sorted(Node node) => node switch
    {
        MapNode map => $"{{{string.Join(", ", map.Entries.Where(entry => entry.Value is not ScalarNode { Text: "" }).OrderBy(entry => entry.Key.Text, StringComparer.Ordinal).Select(entry => $"{YamlScalar.InBraces(entry.Key.Text.Trim())}: {Sorted(entry.Value)}"))}}}",
        ListNode list => $"[{string.Join(", ", list.Items.Select(Sorted))}]",
        _ => Inner(node),
    };
}
