using LaunchSim.Scenarios.Reading;
using LaunchSim.Scenarios.Schema;
using LaunchSim.Scenarios.Writing;

namespace LaunchSim.Scenarios.Recorded;

/// <summary>
/// Changes in the text of a pass file that leave everything else as it stands: comments, order, spaces, line ends. What comes of them
/// has to be read again before it is kept.
/// </summary>
public static class PassEdit
{
    /// <summary>The keys below <c>seen</c>, in the order of the reference.</summary>
    public static IReadOnlyList<NamedPath> SeenKeys { get; } =
        [.. ((SectionKind)PassKeys.Pass.Keys.First(key => key.Name == "seen").Kind).Section.Keys.Select(key => new NamedPath(key.Name, key.What, false))];

    /// <summary>The value at a path as it is written, on one line; null when it is not there.</summary>
    /// <param name="text">The file's text.</param>
    /// <param name="path">Such as <c>seen.rear_open</c> or <c>changed.rear.spring.rate</c>.</param>
    public static string? Find(string text, string path)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(path);
        Node? node = NodeReader.Read(text, "", new Findings());
        foreach (PathPiece piece in PathPiece.Of(path))
        {
            node = piece.Index is { } index ? (node as ListNode)?.Items.ElementAtOrDefault(index) : (node as MapNode)?.Get(piece.Key);
        }

        return node is null or ScalarNode { Text: "" } ? null : NodeText.Of(node);
    }

    /// <summary>Whether a pass file may have a value at a path.</summary>
    /// <param name="path">The path.</param>
    /// <param name="nearest">The path that was probably meant; null when none is near enough.</param>
    public static bool IsPath(string path, out string? nearest)
    {
        ArgumentNullException.ThrowIfNull(path);
        return PassPath.IsKnown(path, out nearest);
    }

    /// <summary>Puts a value at a path.</summary>
    /// <param name="text">The file's text, which reads as a pass.</param>
    /// <param name="path">A path that a pass file may have.</param>
    /// <param name="value">The value in the notation of the file, on one line; null takes it away.</param>
    /// <returns>The new text; null when the path leads through a list that is not there.</returns>
    public static string? Set(string text, string path, string? value)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(path);
        return YamlText.Read(text) is YamlMapText root ? Put(text, root, [.. PathPiece.Of(path)], 0, value) : null;
    }

    /// <summary>Adds a correction behind the others.</summary>
    /// <param name="text">The file's text.</param>
    /// <param name="correction">The correction.</param>
    /// <returns>The new text; null when what stands at <c>corrections</c> is no list.</returns>
    public static string? Correct(string text, PassCorrection correction)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(correction);
        if (YamlText.Read(text) is not YamlMapText root)
        {
            return null;
        }

        string item = "{" + string.Join(", ", Parts(correction).Select(part => $"{part.Key}: {YamlScalar.InBraces(part.Value)}")) + "}";
        string end = LineEnd(text);
        int at = root.IndexOf("corrections");
        if (at < 0)
        {
            return AppendLines(text, root, $"corrections:{end}  - {item}");
        }

        switch (root.Entries[at].Value)
        {
            case YamlListText { Items.Count: > 0 } list:
                if (list.InBraces)
                {
                    return text.Insert(list.Items[^1].End, ", " + item);
                }

                int hyphen = text.LastIndexOf('-', list.Items[^1].Start - 1);
                return text.Insert(EndOfLine(text, list.Items[^1].End), $"{end}{new string(' ', Column(text, hyphen))}- {item}");
            case YamlListText empty:
                return text[..empty.Start] + $"[{item}]" + text[empty.End..];
            case YamlScalarText { Value: "" }:
                return text.Insert(EndOfLine(text, root.Entries[at].Key.End), $"{end}  - {item}");
            default:
                return null;
        }
    }

    private static IEnumerable<(string Key, string Value)> Parts(PassCorrection correction)
    {
        yield return ("when", correction.When);
        yield return ("path", correction.Path);
        if (correction.Was is { } was)
        {
            yield return ("was", was);
        }

        if (correction.Is is { } now)
        {
            yield return ("is", now);
        }

        yield return ("why", correction.Why);
    }

    private static string? Put(string text, YamlText node, IReadOnlyList<PathPiece> path, int step, string? value)
    {
        PathPiece piece = path[step];
        bool isLast = step + 1 == path.Count;
        if (piece.Index is { } index)
        {
            return node is YamlListText list && index < list.Items.Count && !isLast ? Put(text, list.Items[index], path, step + 1, value) : null;
        }

        if (node is not YamlMapText map)
        {
            return null;
        }

        int at = map.IndexOf(piece.Key);
        if (at < 0)
        {
            return value is null ? text : path.Skip(step).Any(one => one.Index is not null) ? null : Add(text, map, path, step, value);
        }

        if (!isLast)
        {
            return map.Entries[at].Value is YamlScalarText { Value: "" }
                ? value is null ? text : Add(Remove(text, map, at), (YamlMapText)Again(Remove(text, map, at), path, step), path, step, value)
                : Put(text, map.Entries[at].Value, path, step + 1, value);
        }

        return value is null ? Remove(text, map, at) : Replace(text, map, at, value);
    }

    // The section in which a piece of the path stands, in a text that was changed.
    private static YamlText Again(string text, IReadOnlyList<PathPiece> path, int step)
    {
        YamlText node = YamlText.Read(text)!;
        for (int i = 0; i < step; i++)
        {
            node = path[i].Index is { } index ? ((YamlListText)node).Items[index] : ((YamlMapText)node).Entries[((YamlMapText)node).IndexOf(path[i].Key)].Value;
        }

        return node;
    }

    private static string Replace(string text, YamlMapText map, int at, string value)
    {
        (YamlScalarText key, YamlText old) = map.Entries[at];
        string written = Written(value, map.InBraces);
        if (old is YamlScalarText { Value: "", Start: var start, End: var stop } && start == stop)
        {
            int colon = text.IndexOf(':', key.End);
            return text.Insert(colon + 1, " " + written);
        }

        // A section that stands on lines of its own begins behind the colon.
        int from = text.AsSpan(key.End, old.Start - key.End).Contains('\n') ? text.IndexOf(':', key.End) + 1 : old.Start;
        return text[..from] + (from == old.Start ? "" : " ") + written + text[old.End..];
    }

    private static string Add(string text, YamlMapText map, IReadOnlyList<PathPiece> path, int step, string value)
    {
        string end = LineEnd(text);
        if (map.InBraces)
        {
            string inner = Written(value, true);
            for (int i = path.Count - 1; i > step; i--)
            {
                inner = $"{{{YamlScalar.InBraces(path[i].Key)}: {inner}}}";
            }

            string entry = $"{YamlScalar.InBraces(path[step].Key)}: {inner}";
            return map.Entries.Count > 0 ? text.Insert(map.Entries[^1].Value.End, ", " + entry) : text[..map.Start] + "{" + entry + "}" + text[map.End..];
        }

        int indent = map.Entries.Count > 0 ? Column(text, map.Entries[0].Key.Start) : 0;
        var lines = new List<string>();
        for (int i = step; i < path.Count; i++)
        {
            lines.Add($"{new string(' ', indent + (2 * (i - step)))}{YamlScalar.Of(path[i].Key)}:{(i + 1 < path.Count ? "" : " " + Written(value, false))}");
        }

        return AppendLines(text, map, string.Join(end, lines));
    }

    private static string AppendLines(string text, YamlMapText map, string lines)
    {
        string end = LineEnd(text);
        int at = EndOfLine(text, map.End);
        return at >= text.Length && !text.EndsWith('\n') ? text + end + lines + end : text.Insert(at, end + lines);
    }

    private static string Remove(string text, YamlMapText map, int at)
    {
        (YamlScalarText key, YamlText value) = map.Entries[at];
        if (map.InBraces)
        {
            return at > 0 ? text[..map.Entries[at - 1].Value.End] + text[Math.Max(value.End, key.End)..]
                : map.Entries.Count > 1 ? text[..key.Start] + text[map.Entries[1].Key.Start..]
                : text[..map.Start] + "{}" + text[map.End..];
        }

        int from = key.Start - Column(text, key.Start), to = EndOfLine(text, Math.Max(value.End, text.IndexOf(':', key.End) + 1));
        to = to < text.Length && text[to] == '\r' ? to + 1 : to;
        return text[..from] + text[Math.Min(text.Length, to + 1)..];
    }

    // What is a section or a list already stays one; every other value is one text.
    private static string Written(string value, bool inBraces) =>
        value.Length > 0 && value[0] is '{' or '[' ? value : inBraces ? YamlScalar.InBraces(value) : YamlScalar.Of(value);

    private static string LineEnd(string text) => text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";

    private static int Column(string text, int at) => at - (at == 0 ? 0 : text.LastIndexOf('\n', at - 1) + 1);

    private static int EndOfLine(string text, int at)
    {
        int end = text.IndexOf('\n', Math.Min(at, text.Length));
        end = end < 0 ? text.Length : end;
        return end > at && text[end - 1] == '\r' ? end - 1 : end;
    }
}
