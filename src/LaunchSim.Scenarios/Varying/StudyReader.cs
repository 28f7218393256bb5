using LaunchSim.Scenarios.Reading;
using LaunchSim.Scenarios.Reading.Rules;
using LaunchSim.Scenarios.Schema;

namespace LaunchSim.Scenarios.Varying;

/// <summary>
/// Reads what a study is to work on: a scenario file, or a study file that names one, with what was given beside it.
/// Whatever a file holds comes back as a study or as errors; it throws for no content.
/// </summary>
/// <param name="scenarios">How the scenario is read.</param>
public sealed class StudyReader(ScenarioReader scenarios)
{
    /// <summary>Reads a scenario or study file.</summary>
    /// <param name="path">The file, as errors are to name it.</param>
    /// <param name="overrides">Values that take the place of the scenario's, by path.</param>
    /// <param name="vary">Each <c>path=values</c>; when there is one, what the study file varies is left aside.</param>
    public StudyResult Read(string path, IReadOnlyList<(string Path, string Value)> overrides, IReadOnlyList<string> vary)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(overrides);
        ArgumentNullException.ThrowIfNull(vary);
        return StudyRoot(path) is { } root ? OfStudy(root, path, overrides, vary) : OfScenario(path, overrides, vary);
    }

    private StudyResult OfScenario(string path, IReadOnlyList<(string Path, string Value)> overrides, IReadOnlyList<string> vary)
    {
        ReadResult read = scenarios.Read(path, overrides);
        return read.Scenario is { } scenario
            ? Whole(scenario, scenario.Name, path, VariationReader.Read(scenario, vary, "--vary"), scenario.Aims, null, [], read.Warnings)
            : new StudyResult(null, read.Errors, read.Warnings);
    }

    private StudyResult OfStudy(MapNode root, string path, IReadOnlyList<(string Path, string Value)> overrides, IReadOnlyList<string> vary)
    {
        var findings = new Findings();
        BoundValues values = Binder.Bind(StudyKeys.Study, root, findings);
        AimRules.Check(values, findings);
        if (values.Find("scenario")?.Text is not { } name)
        {
            return new StudyResult(null, findings.Errors(), []);
        }

        ReadResult read = scenarios.Read(Path.Combine(Path.GetDirectoryName(path) ?? "", name), overrides);
        if (read.Scenario is not { } scenario)
        {
            return new StudyResult(null, [.. findings.Errors(), .. read.Errors], read.Warnings);
        }

        VariationResult variations = vary.Count > 0 ? VariationReader.Read(scenario, vary, "--vary") : Varied(root, scenario);
        string title = values.Find("name")?.Text.Trim() is { Length: > 0 } own ? own : Path.GetFileNameWithoutExtension(path);
        long? budget = values.FindNumber("budget") is { } most ? (long)Math.Floor(most) : null;
        return Whole(scenario, title, path, variations, AimReading.Of(values) ?? scenario.Aims, budget, findings.Errors(), read.Warnings);
    }

    private static VariationResult Varied(MapNode root, Scenario scenario)
    {
        var findings = new Findings();
        switch (root.Get("vary"))
        {
            case null or ScalarNode { Text: "" }:
                return new VariationResult([], []);
            case MapNode map:
                return VariationReader.Read(scenario, [.. map.Entries.Select(entry => (entry.Key, entry.Value))], findings);
            case { } node:
                findings.Error(node.Place, "vary", $"{Binder.Describe(node)} where what is varied is due", "`path: values` lines", "as in rear.tire.pressure.set: 14 to 18 by 0.5 psi");
                return new VariationResult([], findings.Errors());
        }
    }

    private static StudyResult Whole(
        Scenario scenario, string name, string path, VariationResult variations, EnteredAims? aims, long? budget, IReadOnlyList<Diagnostic> errors, IReadOnlyList<Diagnostic> warnings)
    {
        IReadOnlyList<Diagnostic> all = [.. errors, .. variations.Errors];
        return new StudyResult(
            all.Count > 0 ? null : new Study { Name = name, SourceFile = path, Scenario = scenario, Variations = variations.Variations, Aims = aims, Budget = budget }, all, warnings);
    }

    /// <summary>The tree of a study file; null when the file is not one: then the scenario's reader says what it is.</summary>
    private static MapNode? StudyRoot(string path)
    {
        string full;
        try
        {
            full = Path.GetFullPath(path);
        }
        catch (Exception exception) when (exception is ArgumentException or NotSupportedException or PathTooLongException)
        {
            return null;
        }

        var aside = new Findings();
        return ScenarioText.Read(full, path, new Place(path, 1, 1), aside) is { } text && NodeReader.Read(text, path, aside) is MapNode root
            && root.Get("car") is null && root.Get("base") is null && (root.Get("scenario") is not null || root.Get("vary") is not null)
            && !aside.HasErrors
            ? root
            : null;
    }
}
