using LaunchSim.Scenarios.Paths;
using LaunchSim.Scenarios.Reading;

namespace LaunchSim.Scenarios.Varying;

/// <summary>What came of reading single values.</summary>
/// <param name="Edits">The values, a path once; empty when there is an error.</param>
/// <param name="Errors">All errors.</param>
public sealed record EditResult(IReadOnlyList<ScenarioEdit> Edits, IReadOnlyList<Diagnostic> Errors);

/// <summary>
/// Reads single values to be put at paths of a scenario, such as <c>150 lb/in</c> at <c>rear.spring.rate</c>. Put in by
/// <see cref="Scenario.With(IReadOnlyList{ScenarioEdit}, bool)"/> they keep the doubt of what stood there.
/// </summary>
public static class EditReader
{
    private const string Shape = "one value in the notation of the file: a number with its unit, a word, or the name of a hole";

    /// <summary>Reads values; whether the scenario may take them is seen when they are put in.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="written">Paths and values; of a path that is named twice the later one counts.</param>
    public static EditResult Read(Scenario scenario, IEnumerable<(string Path, string Value)> written)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(written);
        var findings = new Findings();
        var edits = new List<ScenarioEdit>();
        foreach ((string path, string value) in written)
        {
            if (One(scenario, path, value, findings) is { } edit)
            {
                _ = edits.RemoveAll(earlier => earlier.Path == edit.Path);
                edits.Add(edit);
            }
        }

        return findings.HasErrors ? new([], findings.Errors()) : new(edits, []);
    }

    private static ScenarioEdit? One(Scenario scenario, string path, string value, Findings findings)
    {
        string shown = Shown.Plain($"{path}={value}");
        var place = new Place(shown.Length > 120 ? shown[..120] + "…" : shown, 0, 0);
        var aside = new Findings();
        if (!ScenarioText.Accept(path, place.Origin, aside) || !ScenarioText.Accept(value, place.Origin, aside))
        {
            // What is sent has no lines.
            Diagnostic first = aside.Errors()[0];
            findings.Error(place, path, first.Message, first.Allowed, first.Mend);
            return null;
        }

        if (value.Trim().Length == 0)
        {
            findings.Error(place, path, "no value", Shape);
            return null;
        }

        if (VariationReader.Resolve(scenario, new ScalarNode(place, path, -1), findings) is not { } resolved)
        {
            return null;
        }

        IReadOnlyList<ScenarioEdit>? values = new ValueListReader(scenario.Values, findings, Shape).Read(new ScalarNode(place, value, -1), resolved, place);
        if (values is { Count: > 1 } || (values is not null && value.Trim() == "all"))
        {
            findings.Error(place, path, Shown.Quoted(value), Shape, "write one value");
            return null;
        }

        return values is [var edit] ? edit : null;
    }
}
