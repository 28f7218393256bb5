using LaunchSim.Scenarios.Paths;
using LaunchSim.Scenarios.Reading;
using LaunchSim.Scenarios.Schema;

namespace LaunchSim.Scenarios.Varying;

/// <summary>What came of reading variations.</summary>
/// <param name="Variations">The variations; empty when there is an error.</param>
/// <param name="Errors">All errors.</param>
public sealed record VariationResult(IReadOnlyList<Variation> Variations, IReadOnlyList<Diagnostic> Errors);

/// <summary>
/// Reads what a study is to vary, such as <c>rear.tire.pressure.set=14 to 18 by 0.5 psi</c>, against a scenario: the path
/// known, each value one that the scenario may take.
/// </summary>
public static class VariationReader
{
    /// <summary>So many values of one setting are tried on the scenario one by one; of a longer list its ends.</summary>
    private const int MostTried = 60;

    private const string Shape = "`A to B by C unit`, a list of numbers and a unit, names of holes, or all";

    /// <summary>Reads variations given beside the file.</summary>
    /// <param name="scenario">The scenario, read for a run.</param>
    /// <param name="written">Each <c>path=values</c>.</param>
    /// <param name="option">What errors are to call the place, such as <c>--vary</c>.</param>
    public static VariationResult Read(Scenario scenario, IEnumerable<string> written, string option)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(written);
        var findings = new Findings();
        var entries = new List<(ScalarNode Key, Node Value)>();
        foreach (string one in written)
        {
            var place = new Place(Shown.Plain($"{option} {(one.Length > 120 ? one[..120] + "…" : one)}"), 0, 0);
            int equals = one.IndexOf('=', StringComparison.Ordinal);
            if (equals <= 0 || one[(equals + 1)..].Trim().Length == 0)
            {
                findings.Error(place, "", $"{Shown.Quoted(one)}", "path=values", "as in rear.tire.pressure.set=14 to 18 by 0.5 psi");
            }
            else if (ScenarioText.Accept(one, place.Origin, findings))
            {
                entries.Add((new ScalarNode(place, one[..equals].Trim(), -1), new ScalarNode(place, one[(equals + 1)..].Trim(), -1)));
            }
        }

        return Read(scenario, entries, findings);
    }

    /// <summary>The scenario's own <c>choices</c> as variations.</summary>
    /// <param name="scenario">The scenario, read for a run.</param>
    public static IReadOnlyList<Variation> OfChoices(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return [.. scenario.Choices.Select(choice =>
        {
            var findings = new Findings();
            var place = new Place("choices", 0, 0);
            return Read(scenario, new ScalarNode(place, choice.Path, -1), choice.Values, findings) is { } variation
                ? variation with { Minutes = choice.Minutes }
                : throw new InvalidOperationException($"The choice {choice.Path} was read and cannot be read again.");
        })];
    }

    internal static VariationResult Read(Scenario scenario, IReadOnlyList<(ScalarNode Key, Node Value)> entries, Findings findings)
    {
        var variations = new List<Variation>();
        foreach ((ScalarNode key, Node value) in entries)
        {
            if (value is not ScalarNode { Text.Length: > 0 } line)
            {
                findings.Error(value.Place, key.Text, $"{Binder.Describe(value)} where values are due", Shape, $"as in {key.Text}: 14 to 18 by 0.5 psi");
            }
            else if (One(scenario, key, line, findings) is { } variation)
            {
                variations.Add(variation);
            }
        }

        Clashes(entries, variations, findings);
        return findings.HasErrors ? new([], findings.Errors()) : new(variations, []);
    }

    private static Variation? One(Scenario scenario, ScalarNode key, ScalarNode line, Findings findings)
    {
        if (Resolve(scenario, key, findings) is not { } path)
        {
            return null;
        }

        var own = new Findings();
        IReadOnlyList<ScenarioEdit>? edits = new ValueListReader(scenario.Values, own, Shape).Read(line, path, key.Place);
        if (edits is null)
        {
            foreach (Diagnostic error in own.Errors())
            {
                findings.Error(new Place(error.File, error.Line, error.Column), key.Text, error.Message, error.Allowed, error.Mend);
            }

            return null;
        }

        return Checked(scenario, key, edits, findings);
    }

    private static Variation? Read(Scenario scenario, ScalarNode key, IReadOnlyList<string> values, Findings findings)
    {
        if (Resolve(scenario, key, findings) is not { } path)
        {
            return null;
        }

        var edits = new List<ScenarioEdit>();
        foreach (string value in values)
        {
            edits.AddRange(new ValueListReader(scenario.Values, findings, Shape).Read(new ScalarNode(key.Place, value, -1), path, key.Place) ?? []);
        }

        return findings.HasErrors ? null : new Variation { Path = key.Text, Values = edits, Present = Present(scenario, path, edits) };
    }

    /// <summary>The path; a part of a bracket's point is that of the hole in use.</summary>
    internal static ScenarioPath? Resolve(Scenario scenario, ScalarNode key, Findings findings)
    {
        if (ScenarioPath.Resolve(key.Text, out string? nearest) is not { } path)
        {
            findings.Error(key.Place, "", $"the path {Shown.Quoted(key.Text)}, which no scenario has", "a path of the scenario file", nearest is null ? "look the path up in the reference" : $"did you mean `{nearest}`?");
            return null;
        }

        if (path.Tail is PathTail.Ahead or PathTail.Up && scenario.Values.Find(path.Text[..path.Text.LastIndexOf('.')]) is { Holes: not null } bracket)
        {
            string part = path.Text[path.Text.LastIndexOf('.')..];
            return ScenarioPath.Resolve($"{bracket.Path}.holes.{bracket.Use}{part}", out _);
        }

        return path;
    }

    private static Variation? Checked(Scenario scenario, ScalarNode key, IReadOnlyList<ScenarioEdit> edits, Findings findings)
    {
        for (int i = 0; i < edits.Count; i++)
        {
            for (int j = 0; j < i; j++)
            {
                if (edits[i].Value == edits[j].Value)
                {
                    findings.Error(key.Place, key.Text, $"{Shown.Quoted(edits[i].Value)} a second time", "each value once", "take one away");
                    return null;
                }
            }
        }

        IEnumerable<ScenarioEdit> tried = edits.Count <= MostTried ? edits : [edits[0], edits[^1]];
        foreach (ScenarioEdit edit in tried)
        {
            ReadResult read = scenario.With([edit]);
            if (read.Scenario is null)
            {
                Diagnostic first = read.Errors[0];
                findings.Error(key.Place, key.Text, $"the value {Shown.Quoted(edit.Value)}, with which there would be {first.Message}", first.Allowed, first.Mend);
                return null;
            }
        }

        return new Variation { Path = key.Text, Values = edits, Present = Present(scenario, edits[0].Target, edits) };
    }

    /// <summary>Two settings of which one is a part of the other, or that are one, cannot both be varied.</summary>
    private static void Clashes(IReadOnlyList<(ScalarNode Key, Node Value)> entries, List<Variation> variations, Findings findings)
    {
        for (int i = 0; i < variations.Count; i++)
        {
            for (int j = 0; j < i; j++)
            {
                (string a, string b) = (variations[i].Values[0].Path, variations[j].Values[0].Path);
                bool use = IsHoleOf(a, b) || IsHoleOf(b, a);
                if (a == b || use)
                {
                    ScalarNode key = entries.First(entry => entry.Key.Text == variations[i].Path).Key;
                    findings.Error(key.Place, variations[i].Path, use ? $"both which hole is in use and where the hole in use is ({variations[j].Path})" : $"{Shown.Quoted(variations[i].Path)} a second time", "settings that do not touch each other", "take one of them away");
                }
            }
        }
    }

    private static bool IsHoleOf(string hole, string use) =>
        use.EndsWith(".use", StringComparison.Ordinal) && hole.StartsWith(use[..^3] + "holes.", StringComparison.Ordinal);

    private static int Present(Scenario scenario, ScenarioPath path, IReadOnlyList<ScenarioEdit> edits)
    {
        if (edits[0].Quantity is null)
        {
            string? word = scenario.FindText(path.Text);
            return IndexOf(edits, edit => edit.Value == word);
        }

        if (ScenarioParts.Quantity(scenario.Values, path) is null && path is { Tail: PathTail.Whole, Key.LeftOut: "0" })
        {
            return IndexOf(edits, edit => edit.Quantity!.Si() == 0);
        }

        return ScenarioParts.Quantity(scenario.Values, path) is { } now ? IndexOf(edits, edit => Math.Abs(edit.Quantity!.Si() - now.Si()) <= 1e-9 * Math.Max(Math.Abs(now.Si()), Math.Abs(edit.Quantity.Si()))) : -1;
    }

    private static int IndexOf(IReadOnlyList<ScenarioEdit> edits, Predicate<ScenarioEdit> wanted)
    {
        for (int i = 0; i < edits.Count; i++)
        {
            if (wanted(edits[i]))
            {
                return i;
            }
        }

        return -1;
    }
}
