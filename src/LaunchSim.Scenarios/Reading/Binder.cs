using LaunchSim.Scenarios.Schema;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Reading;

/// <summary>Tree → values by path, each checked against its key: known, there, of the right kind, within its range.</summary>
internal sealed class Binder
{
    private readonly Findings _findings;
    private readonly ReadPurpose _purpose;
    private readonly BoundValues _values = new();

    private Binder(ReadPurpose purpose, Findings findings) => (_purpose, _findings) = (purpose, findings);

    public static BoundValues Bind(MapNode root, ReadPurpose purpose, Findings findings)
    {
        var binder = new Binder(purpose, findings);
        binder.BindSection(ScenarioKeys.Whole, root, "", root.Place);
        binder.Shifts(root);
        return binder._values;
    }

    /// <summary>Binds a file of another shape than a scenario's.</summary>
    public static BoundValues Bind(Section section, MapNode root, Findings findings)
    {
        var binder = new Binder(ReadPurpose.Run, findings);
        binder.BindSection(section, root, "", root.Place);
        return binder._values;
    }

    private void BindSection(Section section, MapNode map, string path, Place place)
    {
        var active = new List<SchemaKey>(16);
        bool certain = Choose(section, map, path, place, active);
        foreach (SchemaKey key in active)
        {
            string at = path.Length == 0 ? key.Name : path == section.Path ? key.Path : $"{path}.{key.Name}";
            ScalarNode? name = null;
            Node? value = null;
            foreach (KeyValuePair<ScalarNode, Node> entry in map.Entries)
            {
                if (entry.Key.Text == key.Name)
                {
                    (name, value) = (entry.Key, entry.Value);
                    break;
                }
            }

            if (value is null)
            {
                if (certain && !Mistyped(key, active, map))
                {
                    Missing(key, at, place);
                }
            }
            else if (IsNothing(value) && key is { Kind: TextKind, Need: Need.Optional })
            {
                // An empty line for notes is no mistake.
            }
            else if (IsNothing(value))
            {
                _findings.Error(name!.Place, at, $"nothing after `{key.Name}:`", Allowed(key), key.Example.Length > 0 ? $"write {key.Name}: {key.Example}" : "indent its keys below it, or take the key away");
            }
            else
            {
                BindValue(key, value, at, name!.Place, path);
            }
        }

        foreach (KeyValuePair<ScalarNode, Node> entry in map.Entries)
        {
            if (!IsKnown(active, entry.Key.Text))
            {
                Unknown(section, active, map, entry, path);
            }
        }
    }

    /// <summary>Shifts need their speed and time; a single gear does not.</summary>
    private void Shifts(MapNode root)
    {
        const string Gears = "driveline.gears";
        if (_values.Find(Gears + ".ratios") is not { Quantity.Count: > 1 } ratios)
        {
            return;
        }

        foreach (string name in new[] { "shift_at", "shift_time" })
        {
            SchemaKey key = Paths.ScenarioPath.Known[$"{Gears}.{name}"];
            if (((root.Get("driveline") as MapNode)?.Get("gears") as MapNode)?.Get(name) is null)
            {
                Missing(new SchemaKey(key.Name, key.Kind, Need.Run, key.What, key.Measure, key.Example, null), key.Path, ratios.Place);
            }
        }
    }

    /// <summary>Gathers the keys of the section and of the form that was chosen. False when no form could be told.</summary>
    private bool Choose(Section section, MapNode map, string path, Place place, List<SchemaKey> active)
    {
        active.AddRange(section.Keys);
        if (section.Forms.Count == 0)
        {
            return true;
        }

        Form? chosen = null;
        if (section.Selector is { } selector)
        {
            string? word = (map.Get(selector) as ScalarNode)?.Text.Trim();
            chosen = section.Forms.FirstOrDefault(form => form.Name == word);
        }
        else
        {
            List<Form> marked = [.. section.Forms.Where(form => form.Markers.Any(marker => map.Get(marker) is not null))];
            if (marked.Count > 1)
            {
                string both = string.Join(" and ", marked.Select(form => $"`{form.Markers.First(marker => map.Get(marker) is not null)}`"));
                ScalarNode second = map.Entries.Last(entry => marked.Exists(form => form.Markers.Contains(entry.Key.Text))).Key;
                _findings.Error(second.Place, path, $"{both} together", "one of them", "take one away");
            }

            chosen = marked.Count > 0 ? marked[0] : section.Forms.FirstOrDefault(form => form.Markers.Length == 0);
            if (marked.Count > 1)
            {
                chosen = null;
            }
            else if (chosen is null)
            {
                SchemaKey first = section.Forms[0].Section.Keys[0];
                string others = string.Join(", or ", section.Forms.Skip(1).Select(form => form.Markers[0]));
                Missing(first, path.Length == 0 ? first.Name : $"{path}.{first.Name}", place, $" (or {others})");
            }
        }

        if (chosen is null)
        {
            // Without a form every key that any form knows is read, so that its own mistakes are found all the same.
            foreach (SchemaKey key in section.Forms.SelectMany(form => form.Section.All()))
            {
                if (!active.Exists(other => other.Name == key.Name))
                {
                    active.Add(key);
                }
            }

            // The keys of all forms together are never all there; only those of every form are missed.
            foreach (SchemaKey key in section.Keys.Where(key => map.Get(key.Name) is null))
            {
                Missing(key, path.Length == 0 ? key.Name : $"{path}.{key.Name}", place);
            }

            return false;
        }

        return Choose(chosen.Section, map, path, place, active);
    }

    private void Missing(SchemaKey key, string path, Place place, string more = "")
    {
        if (key.Need == Need.Optional)
        {
            return;
        }

        string allowed = Allowed(key);
        string mend = key.Example.Length > 0 ? $"add {key.Name}: {key.Example}" : $"add the section {key.Name}";
        if (key.Need == Need.Geometry)
        {
            _findings.Error(place, path, $"no `{key.Name}`{more}", allowed, mend);
            return;
        }

        _values.AddMissing(Leaves(key, path));
        if (_purpose == ReadPurpose.Run)
        {
            _findings.Error(place, path, $"no `{key.Name}`{more}, needed for a run", allowed, mend);
        }
    }

    /// <summary>The numbers that a missing key stands for: those of its section that have to be there.</summary>
    private static IEnumerable<string> Leaves(SchemaKey key, string path) => key.Kind is SectionKind { Section: var section }
        ? section.Keys.Concat(section.Selector is null && section.Forms.Count > 0 ? section.Forms[0].Section.Keys : [])
            .Where(inner => inner.Need != Need.Optional).SelectMany(inner => Leaves(inner, $"{path}.{inner.Name}"))
        : [path];

    private void Unknown(Section section, List<SchemaKey> active, MapNode map, KeyValuePair<ScalarNode, Node> entry, string path)
    {
        string name = entry.Key.Text;
        string quoted = Shown.Quoted(name);
        string at = path.Length == 0 ? name : $"{path}.{name}";
        if (map.InBraces && IsNothing(entry.Value))
        {
            string pointed = WithPoint(map, entry.Key) is { } number ? $"; for a decimal write {number}" : "";
            _findings.Error(entry.Key.Place, path, $"{quoted} without a value: a comma, or a missing space after the colon", "`key: value, key: value`", $"part numbers by spaces, and put a space after each colon{pointed}");
            return;
        }

        string allowed = string.Join(", ", active.Select(key => key.Name));
        string mend = path.Length == 0 && section == ScenarioKeys.Whole && StudyKeys.Study.Keys.Any(key => key.Name == name) ? "this looks like a study file: sweep, best, next and doubt read those; here name its scenario"
            : path.Length == 0 && section == ScenarioKeys.Whole && PassKeys.Pass.Keys.Any(key => key.Name == name) ? "this looks like a pass file: pass, after, fit and season read those; here name its car"
            : path.Length == 0 && section == PassKeys.Pass && Paths.ScenarioPath.Resolve(name, out _) is not null ? $"write what differed from the car's file under changed, as in changed: {{{name}: value}}"
            : section.Forms.FirstOrDefault(form => form.Section.All().Any(key => key.Name == name)) is { } form ? $"it belongs to {(section.Selector is null ? "" : $"{section.Selector}: ")}{form.Name}"
            : Nearest.To(name, active.Select(key => key.Name)) is { } near ? $"did you mean `{near}`?"
            : ElsewhereThan(at, name) is { } other ? $"`{name}` is known as {other}"
            : "take it away";
        _findings.Error(entry.Key.Place, at, $"the unknown key {quoted}", allowed, mend);
    }

    /// <summary>Whether the key is there under a mistyped name, which is error enough.</summary>
    private static bool Mistyped(SchemaKey key, List<SchemaKey> active, MapNode map)
    {
        foreach (KeyValuePair<ScalarNode, Node> entry in map.Entries)
        {
            if (!IsKnown(active, entry.Key.Text)
                && (entry.Key.Text.StartsWith(key.Name + ":", StringComparison.Ordinal) || Nearest.To(entry.Key.Text, active.Select(other => other.Name)) == key.Name))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsKnown(List<SchemaKey> active, string name)
    {
        foreach (SchemaKey key in active)
        {
            if (key.Name == name)
            {
                return true;
            }
        }

        return false;
    }

    private static string? ElsewhereThan(string at, string name) =>
        Paths.ScenarioPath.Known.Values.FirstOrDefault(key => key.Name == name && key.Path != at)?.Path.Replace("[]", "[0]", StringComparison.Ordinal);

    private static string? WithPoint(MapNode map, ScalarNode key)
    {
        for (int i = 1; i < map.Entries.Count; i++)
        {
            if (ReferenceEquals(map.Entries[i].Key, key) && map.Entries[i - 1].Value is ScalarNode before
                && before.Text.Length > 0 && before.Text.All(char.IsAsciiDigit) && key.Text.Length > 0 && char.IsAsciiDigit(key.Text[0])
                && !key.Text.Contains('.', StringComparison.Ordinal))
            {
                return $"{before.Text}.{key.Text}";
            }
        }

        return null;
    }

    private static bool IsNothing(Node node) => node is ScalarNode { Text: "" };

    private void BindValue(SchemaKey key, Node node, string path, Place keyPlace, string parent)
    {
        switch (key.Kind)
        {
            case SectionKind { Section: var section }:
                if (node is MapNode map)
                {
                    BindPart(section, map, path, keyPlace);
                }
                else
                {
                    NotA(node, path, "a section", string.Join(", ", section.All().Select(inner => inner.Name).Distinct()), "indent its keys below it");
                }

                break;
            case ListKind { Item: var item }:
                BindList(item, node, path);
                break;
            case ChoicesKind or ChangeKind:
                // Read last, when everything that a path may name is known.
                break;
            default:
                if (new ValueBinder(_values, _findings).Bind(key, node, path, parent) is { } bound)
                {
                    _values.Add(bound);
                }

                break;
        }
    }

    /// <summary>A section that was bound before, without a finding, gives the same values again: a variation only binds what it changed.</summary>
    private void BindPart(Section section, MapNode map, string path, Place keyPlace)
    {
        if (map.Bound is { } known && known.Section == section && known.Path == path && known.Purpose == _purpose)
        {
            _values.Replay(known);
            return;
        }

        BoundMark mark = _values.Mark();
        int found = _findings.Count;
        _values.AddSection(path, keyPlace);
        BindSection(section, map, path, keyPlace);
        if (_findings.Count == found)
        {
            map.Bound = _values.Since(mark, section, path, _purpose);
        }
    }

    private void BindList(Section item, Node node, string path)
    {
        if (node is not ListNode list)
        {
            NotA(node, path, "a list", "a list, each item after a hyphen", $"write - {{{string.Join(", ", item.Keys.Select(key => $"{key.Name}: {key.Example}"))}}}");
            return;
        }

        _values.AddList(path, list.Items.Count);
        for (int i = 0; i < list.Items.Count; i++)
        {
            string at = $"{path}[{i}]";
            if (list.Items[i] is MapNode map)
            {
                _values.AddSection(at, map.Place);
                BindSection(item, map, at, map.Place);
            }
            else
            {
                NotA(list.Items[i], at, "a section", string.Join(", ", item.Keys.Select(key => key.Name)), $"write {{{string.Join(", ", item.Keys.Select(key => $"{key.Name}: {key.Example}"))}}}");
            }
        }
    }

    private void NotA(Node node, string path, string wanted, string allowed, string mend) =>
        _findings.Error(node.Place, path, $"{Describe(node)} where {wanted} is due", allowed, mend);

    internal static string Describe(Node node) => node switch
    {
        ScalarNode scalar => Shown.Quoted(scalar.Text),
        MapNode => "a section",
        ListNode => "a list",
        _ => "a point",
    };

    internal static string Allowed(SchemaKey key) => key.Kind switch
    {
        NumberKind number => Words(number.Quantity, number.Limits),
        RowKind row => $"several numbers, {(row.Quantity == QuantityKind.Number ? "bare" : row.Quantity.Name)}",
        PointKind point => point.Holes ? "`ahead up unit`, or {holes: {NAME: point, …}, use: NAME}" : "`ahead up unit`",
        WordKind word => string.Join(" or ", word.Words),
        MomentKind moment => $"a time, `frame N`{(moment.Never ? ", `before …`, `after …` or `never`" : ", `before …` or `after …`")}",
        DateKind => "a day, with the time of day or without",
        SectionKind section => string.Join(", ", section.Section.All().Select(inner => inner.Name).Distinct()),
        _ => "",
    };

    internal static string Words(QuantityKind kind, Limits range) => range == Limits.Any ? kind.Name : $"{kind.Name}, {range.Words}";
}
