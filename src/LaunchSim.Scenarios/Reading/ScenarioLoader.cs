using LaunchSim.Scenarios.Paths;
using LaunchSim.Scenarios.Schema;

namespace LaunchSim.Scenarios.Reading;

/// <summary>File → tree with all its bases read and all its changes made.</summary>
internal sealed class ScenarioLoader(Findings findings, FolderBoundary? boundary = null)
{
    /// <summary>A chain of variants longer than this is taken for a mistake.</summary>
    private const int LongestChain = 20;

    private static readonly string[] VariantKeys = [.. ScenarioKeys.Variant.Keys.Select(key => key.Name)];
    private static readonly string[] WholeKeys = [.. ScenarioKeys.Whole.Keys.Select(key => key.Name)];

    private readonly List<string> _files = [];

    /// <summary>The files that were read or looked for, as whole paths, in the order of the chain.</summary>
    public IReadOnlyList<string> Files => _files;

    public MapNode? LoadFile(string path)
    {
        string full;
        try
        {
            full = boundary is null ? Path.GetFullPath(path) : Path.GetFullPath(path, boundary.Folder);
        }
        catch (Exception exception) when (exception is ArgumentException or NotSupportedException or PathTooLongException)
        {
            findings.Error(new Place(path, 1, 1), "", "a name that no file can have", "the name of a scenario file");
            return null;
        }

        return Load(full, path, new Place(path, 1, 1), []);
    }

    public MapNode? LoadText(string text, string shown, string? folder) => LoadPlain(text.StartsWith('\ufeff') ? text[1..] : text, shown, folder);

    private MapNode? LoadPlain(string text, string shown, string? folder) =>
        ScenarioText.Accept(text, shown, findings) ? Resolve(Tree(text, shown), shown, folder, [new(shown, shown)]) : null;

    private MapNode? Load(string full, string shown, Place askedFrom, List<(string Full, string Shown)> chain)
    {
        if (boundary?.Refusal(full) is { } refusal)
        {
            findings.Error(askedFrom, "", $"{Shown.Quoted(shown)}, {refusal}", $"a scenario in the folder {Shown.Quoted(boundary.Folder)}, links followed", "put a copy of the file there");
            return null;
        }

        _files.Add(full);
        string? text = ScenarioText.Read(full, shown, askedFrom, findings);
        return text is null ? null : Resolve(Tree(text, shown), shown, Path.GetDirectoryName(full), [.. chain, (full, shown)]);
    }

    private MapNode? Tree(string text, string shown)
    {
        Node? node = NodeReader.Read(text, shown, findings);
        if (node is null or MapNode)
        {
            return node is MapNode map ? TrackTable.Lift(map) : null;
        }

        findings.Error(node.Place, "", $"{Binder.Describe(node)} where a scenario is due", "`key: value` lines: name, car, front, rear, driveline", "begin from a shipped scenario");
        return null;
    }

    private MapNode? Resolve(MapNode? root, string shown, string? folder, List<(string Full, string Shown)> chain)
    {
        if (root is null || (root.Get("base") is null && root.Get("change") is null))
        {
            return root;
        }

        foreach (KeyValuePair<ScalarNode, Node> entry in root.Entries)
        {
            string name = entry.Key.Text;
            if (!VariantKeys.Contains(name))
            {
                string mend = WholeKeys.Contains(name) ? $"write what differs under change, as in {name}.…: value"
                    : Nearest.To(name, VariantKeys) is { } near ? $"did you mean `{near}`?" : "take it away";
                findings.Error(entry.Key.Place, name, $"{Shown.Quoted(name)} in a variant", string.Join(", ", VariantKeys), mend);
            }
        }

        MapNode? start = Base(root, shown, folder, chain);
        MapNode? changed = Change(root, start);
        foreach (string name in new[] { "name", "notes", "aims", "choices" })
        {
            if (changed is not null && root.Get(name) is { } own)
            {
                changed = changed.With(root.Entries.First(entry => entry.Key.Text == name).Key, own);
            }
        }

        return changed;
    }

    private MapNode? Base(MapNode root, string shown, string? folder, List<(string Full, string Shown)> chain)
    {
        if (root.Get("base") is not { } node)
        {
            findings.Error(root.Place, "base", "`change` without `base`", "the file that it changes", "add base: FILE.yaml");
            return null;
        }

        if (node is not ScalarNode { Text.Length: > 0 } name || folder is null)
        {
            string found = folder is null ? "a base in a text that is in no folder" : $"{Binder.Describe(node)} as the base";
            findings.Error(node.Place, "base", found, "the name of a scenario file, seen from this file's folder", "write base: FILE.yaml");
            return null;
        }

        string full;
        string baseShown;
        try
        {
            full = Path.GetFullPath(Path.Combine(folder, name.Text));
            baseShown = Path.Combine(Path.GetDirectoryName(shown) ?? "", name.Text);
        }
        catch (Exception exception) when (exception is ArgumentException or NotSupportedException or PathTooLongException)
        {
            findings.Error(name.Place, "base", $"{Shown.Quoted(name.Text)}, a name that no file can have", "the name of a scenario file", "look at the name");
            return null;
        }

        int again = chain.FindIndex(link => link.Full == full);
        if (again >= 0 || chain.Count >= LongestChain)
        {
            string way = string.Join(" → ", chain.Skip(Math.Max(0, again)).Select(link => link.Shown).Append(baseShown));
            findings.Error(name.Place, "base", again >= 0 ? $"a cycle of bases: {way}" : $"a chain of more than {LongestChain} bases", "a chain that ends in a whole car", "take one base away");
            return null;
        }

        return Load(full, baseShown, name.Place, chain);
    }

    private MapNode? Change(MapNode root, MapNode? start)
    {
        if (root.Get("change") is not { } change || change is ScalarNode { Text: "" })
        {
            return start;
        }

        if (change is not MapNode changes)
        {
            findings.Error(change.Place, "change", $"{Binder.Describe(change)} where changes are due", "`path: value` lines", "as in rear.spring.rate: 175 lb/in");
            return start;
        }

        // Without a base the paths are looked at all the same: all mistakes in one go.
        MapNode tree = start ?? new MapNode(root.Place, [], false);
        Findings into = start is null ? new Findings() : findings;
        foreach (KeyValuePair<ScalarNode, Node> entry in changes.Entries)
        {
            if (start is null && ScenarioPath.Resolve(entry.Key.Text, out _) is null)
            {
                _ = TreeEdit.Set(tree, entry.Key.Text, entry.Key.Place, entry.Value, findings);
            }
            else if (entry.Value is ScalarNode { Text: "" })
            {
                findings.Error(entry.Key.Place, entry.Key.Text, "nothing after the colon", "the new value", changes.InBraces ? "part numbers by spaces, and put a space after each colon" : "write the value after the path");
            }
            else
            {
                tree = TreeEdit.Set(tree, entry.Key.Text, entry.Key.Place, entry.Value, into);
            }
        }

        return start is null ? null : tree;
    }
}
