using System.Globalization;
using LaunchSim.Scenarios.Paths;
using LaunchSim.Scenarios.Reading.Rules;
using LaunchSim.Scenarios.Schema;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Reading;

/// <summary>The choices of a scenario: each path known, each value one that the scenario may take.</summary>
internal sealed class ChoiceReader(MapNode root, ReadPurpose purpose, BoundValues values, Findings findings)
{
    private const int MostValues = 1000;

    /// <summary>So many values are tried on the scenario; of a longer list its ends.</summary>
    private const int MostTried = 40;

    private const string Shape = "{values: 0 to 12 by 1, minutes: 1}, with values as `A to B by C unit`, a list of numbers and a unit, names of holes, or all";

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

        string text = node.Text.Trim();
        switch (path.Key.Kind, path.Tail)
        {
            case (PointKind, PathTail.Use):
                string[] names = Find(path)?.Holes?.Select(hole => hole.Key).ToArray() ?? [];
                return text == "all" ? names.Length > 0 ? names : NoBracket(node, path) : Words(text, names, node, path);
            case (WordKind word, PathTail.Whole):
                return text == "all" ? word.Words : Words(text, word.Words, node, path);
            case (NumberKind number, PathTail.Whole):
                return Numbers(node, number.Quantity, path);
            case (PointKind, PathTail.Ahead or PathTail.Up or PathTail.HoleAhead or PathTail.HoleUp):
                return Numbers(node, QuantityKind.Length, path);
            case (PointKind, _):
                findings.Error(key.Place, path.Text, "a whole point as a choice", "one number at a time", $"write {path.Text}.ahead or {path.Text}.up, or .use for a bracket with holes");
                return null;
            default:
                findings.Error(key.Place, path.Text, $"{Shown.Quoted(path.Text)} as a choice", "the path of one number, one word or a bracket's use", "choose a number below it");
                return null;
        }
    }

    private Bound? Find(ScenarioPath path) => values.Find(path.Text[..path.Text.LastIndexOf('.')]);

    private string[]? NoBracket(ScalarNode node, ScenarioPath path)
    {
        // A bracket that was refused has had its own error.
        if (findings.HasErrors)
        {
            return null;
        }

        findings.Error(node.Place, path.Text, "`all` at a place without a bracket with holes", "a bracket with holes", "write {holes: {NAME: point, …}, use: NAME} there first");
        return null;
    }

    private string[]? Words(string text, IReadOnlyList<string> known, ScalarNode node, ScenarioPath path)
    {
        string[] words = text.Split([' ', ',', '\t', '\n'], StringSplitOptions.RemoveEmptyEntries);
        if (words.Except(known).FirstOrDefault() is { } unknown)
        {
            findings.Error(node.Place, path.Text, $"{Shown.Quoted(unknown)} among the values", known.Count == 0 ? "a bracket with holes" : string.Join(", ", known) + ", or all", Nearest.To(unknown, known) is { } near ? $"did you mean `{near}`?" : "name what is there, parted by spaces");
            return null;
        }

        return words;
    }

    private List<string>? Numbers(ScalarNode node, QuantityKind kind, ScenarioPath path)
    {
        string text = node.Text;
        int to = text.IndexOf(" to ", StringComparison.Ordinal);
        int by = text.IndexOf(" by ", StringComparison.Ordinal);
        bool range = to >= 0 || by >= 0;
        string plain = range ? text.Replace(" to ", "    ", StringComparison.Ordinal).Replace(" by ", "    ", StringComparison.Ordinal) : text;
        Quantity? quantity = QuantityReader.Read(QuantityText.Read(plain), kind, out QuantityProblem? problem);
        if (quantity is null)
        {
            findings.Error(node.PlaceOf(problem!.At), path.Text, problem.Found, Shape, problem.Mend);
            return null;
        }

        bool doubted = quantity.RowDoubtPercent is not null || Enumerable.Range(0, quantity.Count).Any(i => quantity.SiDoubt(i) is not null);
        if (doubted || (range && (to < 0 || by < to || quantity.Count != 3)))
        {
            findings.Error(node.Place, path.Text, Shown.Quoted(text), Shape, doubted ? "take the ± away: a choice is exact" : "as in 14 to 18 by 0.5 psi");
            return null;
        }

        IEnumerable<double> numbers = quantity.Numbers;
        if (range)
        {
            (double first, double last, double step) = (quantity.Numbers[0], quantity.Numbers[1], quantity.Numbers[2]);
            double steps = Math.Floor(((last - first) / step) + 1e-9);
            if (!(step > 0) || !(last >= first) || !(steps < MostValues))
            {
                findings.Error(node.Place, path.Text, Shown.Quoted(text), $"from the lower to the higher, by a step above 0, at most {MostValues} values", "as in 14 to 18 by 0.5 psi");
                return null;
            }

            // Rounded, so that 14 + 3 × 0.2 reads 14.6.
            numbers = Enumerable.Range(0, (int)steps + 1).Select(i => Math.Round(first + (i * step), 10));
        }

        string unit = quantity.Unit.Text.Length > 0 ? " " + quantity.Unit.Text : "";
        return [.. numbers.Select(number => number.ToString("R", CultureInfo.InvariantCulture) + unit)];
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
