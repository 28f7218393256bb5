using LaunchSim.Scenarios.Paths;
using LaunchSim.Scenarios.Schema;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Reading;

/// <summary>
/// The values that something may take, as they are written in one line: a list in the notation of the file, a range
/// <c>A to B by C unit</c>, names, or <c>all</c>.
/// </summary>
/// <param name="values">The scenario.</param>
/// <param name="findings">Where errors go.</param>
/// <param name="shape">What is allowed, for errors.</param>
internal sealed class ValueListReader(BoundValues values, Findings findings, string shape)
{
    private const int MostValues = 1000;

    /// <summary>The values, each as an edit of the path; null when something is wrong with them.</summary>
    public IReadOnlyList<ScenarioEdit>? Read(ScalarNode node, ScenarioPath path, Place keyPlace)
    {
        string text = node.Text.Trim();
        switch (path.Key.Kind, path.Tail)
        {
            case (PointKind, PathTail.Use):
                string[] names = Find(path)?.Holes?.Select(hole => hole.Key).ToArray() ?? [];
                return Named(text == "all" ? names.Length > 0 ? names : NoBracket(node, path) : Words(text, names, node, path), path);
            case (WordKind word, PathTail.Whole):
                return Named(text == "all" ? word.Words : Words(text, word.Words, node, path), path);
            case (NumberKind, PathTail.Whole) when text == "all":
                return AllClicks(node, path);
            case (NumberKind number, PathTail.Whole):
                return Numbers(node, number.Quantity, path);
            case (PointKind, PathTail.Ahead or PathTail.Up or PathTail.HoleAhead or PathTail.HoleUp):
                return Numbers(node, QuantityKind.Length, path);
            case (PointKind, _):
                findings.Error(keyPlace, path.Text, "a whole point as a choice", "one number at a time", $"write {path.Text}.ahead or {path.Text}.up, or .use for a bracket with holes");
                return null;
            default:
                findings.Error(keyPlace, path.Text, $"{Shown.Quoted(path.Text)} as a choice", "the path of one number, one word or a bracket's use", "choose a number below it");
                return null;
        }
    }

    private static ScenarioEdit[]? Named(IReadOnlyList<string>? words, ScenarioPath path) =>
        words is null ? null : [.. words.Select(word => new ScenarioEdit(path, word))];

    private ScenarioEdit[]? AllClicks(ScalarNode node, ScenarioPath path)
    {
        if (path.Text.EndsWith(".set", StringComparison.Ordinal) && values.Find(path.Text[..^4] + ".clicks") is { Clicks: { } rows }
            && values.Find(path.Text) is { Quantity: { } set })
        {
            return [.. rows.Select(row => new ScenarioEdit(path, new Quantity([row.Key], set.Unit)))];
        }

        findings.Error(node.Place, path.Text, "`all` at a number", "`all` for the holes of a bracket or the entered clicks of a damper; else a list or a range", "as in 14 to 18 by 0.5 psi");
        return null;
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

    private ScenarioEdit[]? Numbers(ScalarNode node, QuantityKind kind, ScenarioPath path)
    {
        string text = node.Text;
        int to = text.IndexOf(" to ", StringComparison.Ordinal);
        int by = text.IndexOf(" by ", StringComparison.Ordinal);
        bool range = to >= 0 || by >= 0;
        string plain = range ? text.Replace(" to ", "    ", StringComparison.Ordinal).Replace(" by ", "    ", StringComparison.Ordinal) : text;
        Quantity? quantity = QuantityReader.Read(QuantityText.Read(plain), kind, out QuantityProblem? problem);
        if (quantity is null)
        {
            // What is found in a range is told of the range as it was written.
            findings.Error(node.PlaceOf(range ? 0 : problem!.At), path.Text, range ? Shown.Quoted(text) : problem!.Found, shape, range ? $"as in 14 to 18 by 0.5 psi; {problem!.Mend.Replace("    ", " … ", StringComparison.Ordinal)}" : problem!.Mend);
            return null;
        }

        bool doubted = quantity.RowDoubtPercent is not null || Enumerable.Range(0, quantity.Count).Any(i => quantity.SiDoubt(i) is not null);
        if (doubted || (range && (to < 0 || by < to || quantity.Count != 3)))
        {
            findings.Error(node.Place, path.Text, Shown.Quoted(text), shape, doubted ? "take the ± away: a choice is exact" : "as in 14 to 18 by 0.5 psi");
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

        return [.. numbers.Select(number => new ScenarioEdit(path, new Quantity([number], quantity.Unit)))];
    }
}
