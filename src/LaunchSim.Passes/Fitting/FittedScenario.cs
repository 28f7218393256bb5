using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Doubtful;
using LaunchSim.Scenarios.Writing;

namespace LaunchSim.Passes.Fitting;

/// <summary>What a fit found as a variant of the file that was fitted: only what the passes tell, each with the fit's ±.</summary>
public static class FittedScenario
{
    /// <summary>The changes, by path.</summary>
    /// <param name="result">What came of the fit.</param>
    /// <param name="file">The scenario that was fitted.</param>
    public static IReadOnlyList<(string Path, string Value)> Changes(FitResult result, Scenario file)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(file);
        FittedValue[] told = [.. result.Values.Where(value => value.IsTold)];
        var changes = new List<(string Path, string Value)>();
        foreach ((string path, string value) in told.SelectMany(value => value.Written()))
        {
            // Of an adjuster the click stays, how well it is known does not.
            changes.Add(file.Clicks.TryGetValue(path.EndsWith(".set", StringComparison.Ordinal) ? path[..^4] : "", out ClickInfo? clicks)
                ? (path, FormattableString.Invariant($"{clicks.Set:R} ±{value}"))
                : (path, value));
        }

        // The slip curve keeps its shape while the grip moves.
        List<ScenarioEdit> edits = [.. told.SelectMany(value => value.Parameter.Edits(value.Deviations))];
        KeptTireShape.Keep(file, edits);
        foreach (ScenarioEdit edit in edits.Where(edit => changes.TrueForAll(change => change.Path != edit.Path)))
        {
            double? half = file.Find(edit.Path)?.SiDoubt();
            string doubt = half is { } known ? $" ±{DoubtText.Doubt(known / edit.Quantity!.Unit.Factor)}" : "";
            changes.Add((edit.Path, $"{DoubtText.Plain(edit.Quantity!.Numbers[0])}{doubt} {edit.Quantity.Unit.Text}".TrimEnd()));
        }

        return changes;
    }

    /// <summary>The variant's text.</summary>
    /// <param name="result">What came of the fit.</param>
    /// <param name="file">The scenario that was fitted.</param>
    /// <param name="baseFile">That file as it is seen from the variant's folder.</param>
    /// <param name="passes">How many passes it came from.</param>
    public static string Text(FitResult result, Scenario file, string baseFile, int passes)
    {
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(file);
        string[] held = [.. result.Values.Where(value => !value.IsTold).Select(value => value.Parameter.Path)];
        string notes = $"Fitted to {passes} {(passes == 1 ? "pass" : "passes")}.{(held.Length > 0 ? $" Not told by them and left as they were: {string.Join(", ", held)}." : "")}";
        return VariantText.Of($"{file.Name}, fitted", notes, baseFile, Changes(result, file));
    }
}
