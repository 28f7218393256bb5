using LaunchSim.Scenarios.Paths;
using LaunchSim.Scenarios.Reading;

namespace LaunchSim.Scenarios.Writing;

/// <summary>One value of a file that was replaced.</summary>
/// <param name="Path">Its path, such as <c>car.cg_height</c>.</param>
/// <param name="Line">The line it stands on, from 1.</param>
/// <param name="Before">As it was written.</param>
/// <param name="After">As it is written now.</param>
public sealed record ValueChange(string Path, int Line, string Before, string After);

/// <summary>What came of replacing values in a file's text.</summary>
/// <param name="Text">The whole new text; null when there is an error.</param>
/// <param name="Changes">What was replaced, in the order asked for; a value that stands there already is not among them.</param>
/// <param name="Errors">Why nothing is replaced.</param>
public sealed record ValueEditResult(string? Text, IReadOnlyList<ValueChange> Changes, IReadOnlyList<Diagnostic> Errors);

/// <summary>
/// Replaces single values in a scenario's text where they stand. Every other character stays: comments, order, blanks, line
/// ends. What comes out is read again and compared, value by value, before anybody gets to see it.
/// </summary>
public static class ValueEdit
{
    /// <summary>Replaces values.</summary>
    /// <param name="text">The file's text.</param>
    /// <param name="displayName">What errors are to call the file.</param>
    /// <param name="folder">The folder from which a base is looked up.</param>
    /// <param name="edits">Paths of single values, each once, and what is to stand there, in the notation of the file.</param>
    public static ValueEditResult Apply(string text, string displayName, string folder, IReadOnlyList<(string Path, string Value)> edits)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(edits);
        var reader = new ScenarioReader { Purpose = ReadPurpose.Geometry };
        ReadResult before = reader.ReadText(text, displayName, null, folder);
        if (before.Scenario is not { } scenario)
        {
            return new ValueEditResult(null, [], before.Errors);
        }

        var findings = new Findings();
        if (NodeReader.Read(text, displayName, findings) is not MapNode root || findings.HasErrors)
        {
            return new ValueEditResult(null, [], findings.Errors());
        }

        var spans = new List<(TextSpan Span, ValueChange Change)>();
        foreach ((string path, string value) in edits)
        {
            if (Find(root, path, text, scenario, findings) is { } span && span.Text != value)
            {
                spans.Add((span, new ValueChange(path, span.Line, span.Text, value)));
            }
        }

        if (findings.HasErrors)
        {
            return new ValueEditResult(null, [], findings.Errors());
        }

        string changed = text;
        foreach ((TextSpan span, ValueChange change) in spans.OrderByDescending(one => one.Span.From))
        {
            changed = string.Concat(changed.AsSpan(0, span.From), Scalar(change.After, span.InBraces), changed.AsSpan(span.To));
        }

        ReadResult after = reader.ReadText(changed, displayName, null, folder);
        if (after.Scenario is not { } edited)
        {
            return new ValueEditResult(null, [], after.Errors);
        }

        Compare(scenario, edited, edits, displayName, findings);
        return findings.HasErrors ? new ValueEditResult(null, [], findings.Errors()) : new ValueEditResult(changed, [.. spans.Select(one => one.Change)], []);
    }

    private static TextSpan? Find(MapNode root, string path, string text, Scenario scenario, Findings findings)
    {
        bool isVariant = root.Get("base") is not null;
        MapNode? map = isVariant ? root.Get("change") as MapNode : root;
        string[] names = isVariant ? [path] : path.Split('.');
        for (int i = 0; map is not null && i < names.Length - 1; i++)
        {
            map = map.Get(names[i]) as MapNode;
        }

        Place top = root.Place;
        switch (map?.Get(names[^1]))
        {
            case ScalarNode { Text.Length: > 0 } scalar:
                if (TextSpan.Of(text, scalar, map.InBraces) is { } span)
                {
                    return span;
                }

                findings.Error(scalar.Place, path, $"{Shown.Quoted(scalar.Text)}, which is not written plainly on one line", "a value on one line", "write it on one line, then again");
                return null;
            case { } other:
                findings.Error(other.Place, path, $"{Binder.Describe(other)} where one value is to be replaced", "one value on one line", "change it by hand");
                return null;
            case null when isVariant:
                string where = scenario.PlaceOf(path);
                findings.Error(top, path, $"no `{path}` under `change`: it stands in {(where.Length > 0 ? $"`{where}`" : "the base")}", "a file in which the value itself stands", $"name that file, or add {path}: … under `change`");
                return null;
            default:
                findings.Error(top, path, $"no `{path}`", "a file in which the value itself stands", "add it by hand where it belongs");
                return null;
        }
    }

    private static void Compare(Scenario before, Scenario after, IReadOnlyList<(string Path, string Value)> edits, string displayName, Findings findings)
    {
        var meant = edits.Select(edit => edit.Path).ToHashSet(StringComparer.Ordinal);
        var rest = before.Written.Where(value => !meant.Contains(value.Path)).Select(value => (value.Path, value.Text));
        bool isKept = rest.SequenceEqual(after.Written.Where(value => !meant.Contains(value.Path)).Select(value => (value.Path, value.Text)))
            && before.Name == after.Name && before.Notes == after.Notes;
        bool isPut = edits.All(edit => after.Written.FirstOrDefault(value => value.Path == edit.Path)?.Text is { } now && Same(now, edit.Value, edit.Path));
        if (!isKept || !isPut)
        {
            findings.Error(new Place(displayName, 1, 1), "", isKept ? "another value than was to be written, read again" : "other values changed with it", "a file in which the value can be replaced by itself", "change it by hand");
        }
    }

    private static bool Same(string written, string meant, string path) =>
        ScenarioPath.Resolve(path, out _)?.Key is { } key
        && new ValueBinder(new BoundValues(), new Findings()).Bind(key, new ScalarNode(default, meant, -1), path, "")?.Quantity?.ToString() == written;

    private static string Scalar(string value, bool inBraces)
    {
        string plain = YamlScalar.Of(value);
        return inBraces && plain == value && value.AsSpan().IndexOfAny(",[]{}") >= 0 ? $"'{value.Replace("'", "''", StringComparison.Ordinal)}'" : plain;
    }
}
