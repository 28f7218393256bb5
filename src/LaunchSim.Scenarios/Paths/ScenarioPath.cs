using System.Globalization;
using LaunchSim.Scenarios.Schema;

namespace LaunchSim.Scenarios.Paths;

/// <summary>What a path names below its key.</summary>
internal enum PathTail
{
    Whole,
    Ahead,
    Up,
    Use,
    Hole,
    HoleAhead,
    HoleUp,
    Click,
}

/// <summary>One step: a key, or an item of a list.</summary>
internal readonly record struct PathStep(string Key, int Index);

/// <summary>A path such as <c>rear.linkage.upper.body.use</c> or <c>car.ballast[0].mass</c>, resolved against the schema.</summary>
internal sealed record ScenarioPath(string Text, SchemaKey Key, IReadOnlyList<PathStep> Steps, PathTail Tail, string Name)
{
    /// <summary>Every path that a change, a study or a choice may name, without the parts of points and brackets.</summary>
    public static IReadOnlyDictionary<string, SchemaKey> Known { get; } = Collect();

    /// <summary>The path, or null and the nearest one that exists, if any is near.</summary>
    public static ScenarioPath? Resolve(string text, out string? nearest)
    {
        nearest = null;
        text = text.Trim();
        if (text.Length is > 0 and < 200 && Split(text, out string canonical, out List<PathStep> steps))
        {
            if (Known.TryGetValue(canonical, out SchemaKey? key))
            {
                return new ScenarioPath(text, key, steps, PathTail.Whole, "");
            }

            if (Below(text) is { } below)
            {
                return below;
            }
        }

        nearest = Nearest.To(text, ScenarioSchema.Paths.Select(path => path.Path));
        return null;
    }

    private static ScenarioPath? Below(string text)
    {
        foreach ((string suffix, PathTail tail) in new[] { (".ahead", PathTail.Ahead), (".up", PathTail.Up), (".use", PathTail.Use) })
        {
            if (text.EndsWith(suffix, StringComparison.Ordinal) && Find(text[..^suffix.Length], out SchemaKey key, out List<PathStep> steps)
                && key.Kind is PointKind point && (tail != PathTail.Use || point.Holes))
            {
                return new ScenarioPath(text, key, steps, tail, "");
            }
        }

        int holes = text.IndexOf(".holes.", StringComparison.Ordinal);
        if (holes > 0 && Find(text[..holes], out SchemaKey bracket, out List<PathStep> way) && bracket.Kind is PointKind { Holes: true })
        {
            string name = text[(holes + 7)..];
            (string hole, PathTail tail) = name.EndsWith(".ahead", StringComparison.Ordinal) ? (name[..^6], PathTail.HoleAhead)
                : name.EndsWith(".up", StringComparison.Ordinal) ? (name[..^3], PathTail.HoleUp)
                : (name, PathTail.Hole);
            return hole.Length == 0 ? null : new ScenarioPath(text, bracket, way, tail, hole);
        }

        int clicks = text.IndexOf(".clicks.", StringComparison.Ordinal);
        if (clicks > 0 && Find(text[..(clicks + 7)], out SchemaKey rows, out List<PathStep> steps2) && rows.Kind is ClicksKind)
        {
            string name = text[(clicks + 8)..];
            return double.TryParse(name, NumberStyles.Float, CultureInfo.InvariantCulture, out _) ? new ScenarioPath(text, rows, steps2, PathTail.Click, name) : null;
        }

        return null;
    }

    private static bool Find(string text, out SchemaKey key, out List<PathStep> steps)
    {
        key = null!;
        return Split(text, out string canonical, out steps) && Known.TryGetValue(canonical, out key!);
    }

    private static bool Split(string text, out string canonical, out List<PathStep> steps)
    {
        steps = [];
        var names = new List<string>();
        foreach (string part in text.Split('.'))
        {
            int open = part.IndexOf('[', StringComparison.Ordinal);
            if (open < 0)
            {
                steps.Add(new PathStep(part, -1));
                names.Add(part);
                continue;
            }

            if (!part.EndsWith(']') || !int.TryParse(part.AsSpan(open + 1, part.Length - open - 2), NumberStyles.None, CultureInfo.InvariantCulture, out int index))
            {
                canonical = "";
                return false;
            }

            steps.Add(new PathStep(part[..open], -1));
            steps.Add(new PathStep("", index));
            names.Add(part[..open] + "[]");
        }

        canonical = string.Join('.', names);
        return true;
    }

    private static Dictionary<string, SchemaKey> Collect()
    {
        var known = new Dictionary<string, SchemaKey>(StringComparer.Ordinal);

        void Add(Section section)
        {
            foreach (SchemaKey key in section.All())
            {
                if (key.Kind is ChoicesKind or ChangeKind)
                {
                    continue;
                }

                _ = known.TryAdd(key.Path, key);
                if (key.Kind is SectionKind part)
                {
                    Add(part.Section);
                }
                else if (key.Kind is ListKind list)
                {
                    _ = known.TryAdd(key.Path + "[]", key);
                    Add(list.Item);
                }
            }
        }

        Add(ScenarioKeys.Whole);
        return known;
    }
}
