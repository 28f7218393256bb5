using LaunchSim.Scenarios.Paths;
using LaunchSim.Scenarios.Reading.Rules;
using LaunchSim.Scenarios.Schema;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Reading;

/// <summary>The choices of a scenario: each path known, each value one that the scenario may take.</summary>
internal sealed class ChoiceReader(MapNode root, ReadPurpose purpose, BoundValues values, Findings findings)
{
    /// <summary>So many values are tried on the scenario; of a longer list its ends.</summary>
    private const int MostTried = 40;

    private const string Shape = "{values: 0 to 12 by 1, minutes: 1}, with values as `A to B by C unit`, a list of numbers and a unit, names of holes, or all";

    private readonly ValueListReader _lists = new(values, findings, Shape);

    public IReadOnlyList<Choice> Read()
    {
        if (root.Get("choices") is not { } node || node is ScalarNode { Text: "" })
        {
            return [];
        }

        if (node is not MapNode map)
        {
            findings.Error(node.Place, "choices", $"{Binder.Describe(node)} where choices are due", $"`path: {Shape}` lines", "as in rear.damper.extension.set: {values: 0 to 12 by 1, minutes: 1}");
            return [];
        }

        var choices = new List<Choice>();
        foreach (KeyValuePair<ScalarNode, Node> entry in map.Entries)
        {
            if (One(entry.Key, entry.Value) is { } choice)
            {
                choices.Add(choice);
            }
        }

        return choices;
    }

    private Choice? One(ScalarNode key, Node node)
    {
        if (ScenarioPath.Resolve(key.Text, out string? nearest) is not { } path)
        {
            findings.Error(key.Place, "choices", $"the path {Shown.Quoted(key.Text)}, which no scenario has", "a path of the scenario file", nearest is null ? "look the path up in the reference" : $"did you mean `{nearest}`?");
            return null;
        }

        if (node is not MapNode map)
        {
            findings.Error(node.Place, path.Text, $"{Binder.Describe(node)} where a choice is due", Shape, $"write {path.Text}: {{values: …, minutes: …}}");
            return null;
        }

        foreach (KeyValuePair<ScalarNode, Node> entry in map.Entries)
        {
            if (entry.Key.Text is not ("values" or "minutes"))
            {
                string mend = Nearest.To(entry.Key.Text, ["values", "minutes"]) is { } near ? $"did you mean `{near}`?" : "part numbers by spaces, and put a space after each colon";
                findings.Error(entry.Key.Place, path.Text, $"the unknown key {Shown.Quoted(entry.Key.Text)}", "values, minutes", mend);
            }
        }

        double? minutes = Minutes(map, key, path.Text);
        IReadOnlyList<string>? list = Values(map, key, path);
        if (minutes is null || list is null || !Possible(path, list, key))
        {
            return null;
        }

        return new Choice { Path = path.Text, Values = list, Minutes = minutes.Value };
    }

    private double? Minutes(MapNode map, ScalarNode key, string path)
    {
        Node? node = map.Get("minutes");
        if (node is ScalarNode scalar && QuantityReader.Read(scalar.Quantity, QuantityKind.Number, out _) is { Count: 1, RowDoubtPercent: null } quantity && quantity.Si() >= 0)
        {
            return quantity.Si();
        }

        string found = node is null ? "no `minutes`" : $"{Binder.Describe(node)} for `minutes`";
        findings.Error((node ?? key).Place, path, found, "how long the change takes in minutes, a bare number, 0 or more", "as in minutes: 12");
        return null;
    }

    private IReadOnlyList<string>? Values(MapNode map, ScalarNode key, ScenarioPath path)
    {
        if (map.Get("values") is not ScalarNode { Text.Length: > 0 } node)
        {
            findings.Error((map.Get("values") ?? key).Place, path.Text, map.Get("values") is { } other ? $"{Binder.Describe(other)} for `values`" : "no `values`", Shape, "say what may be chosen");
            return null;
        }

        return _lists.Read(node, path, key.Place) is { } edits ? [.. edits.Select(edit => edit.Value)] : null;
    }

    private bool Possible(ScenarioPath path, IReadOnlyList<string> list, ScalarNode key)
    {
        // What is already wrong in the file would be found once more for every value.
        if (findings.HasErrors)
        {
            return true;
        }

        IEnumerable<string> tried = list.Count <= MostTried ? list : [list[0], list[^1]];
        foreach (string value in tried)
        {
            var trial = new Findings();
            MapNode changed = Overrides.Apply(root, [(path.Text, value)], trial);
            Rule.CheckAll(Binder.Bind(changed, purpose, trial), trial);
            if (trial.HasErrors)
            {
                Diagnostic first = trial.Errors()[0];
                findings.Error(key.Place, path.Text, $"the choice `{value}`, with which there would be {first.Message}", first.Allowed, first.Mend);
                return false;
            }
        }

        return true;
    }
}
