using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Studies.Comparing;

namespace LaunchSim.Passes.Seasons;

/// <summary>A season with each of its passes predicted.</summary>
public sealed record SeasonCourse
{
    /// <summary>The season.</summary>
    public required Season Season { get; init; }

    /// <summary>Its passes in order.</summary>
    public required IReadOnlyList<SeasonEntry> Entries { get; init; }

    /// <summary>Settings that were not the same in all passes, as written in each.</summary>
    public required IReadOnlyList<WrittenDifference> Settings { get; init; }

    /// <summary>Why some pass's changes do not fit the fitted car.</summary>
    public required IReadOnlyList<Diagnostic> Warnings { get; init; }

    /// <summary>Predicts every pass of a season.</summary>
    /// <param name="season">The season.</param>
    /// <param name="done">Called after each pass.</param>
    /// <param name="cancellation">Asked once a step.</param>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static SeasonCourse Of(Season season, Action? done = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(season);
        var entries = new List<SeasonEntry>();
        var warnings = new List<Diagnostic>();
        foreach (PassFile pass in season.Passes)
        {
            PassPrediction? fitted = null;
            if (season.Fitted is { } car)
            {
                fitted = PassPrediction.Of(pass, car, out IReadOnlyList<Diagnostic> errors, cancellation);
                warnings.AddRange(errors.Select(error => error with { Severity = Severity.Warning }));
            }

            IReadOnlyList<WrittenDifference>? changes = entries.Count == 0 ? null : Differences([entries[^1].Pass.Scenario, pass.Scenario]);
            entries.Add(new SeasonEntry(pass, entries.Count + 1, changes, PassPrediction.Of(pass, cancellation), fitted));
            done?.Invoke();
        }

        return new SeasonCourse
        {
            Season = season,
            Entries = entries,
            Settings = entries.Count < 2 ? [] : Differences([.. season.Passes.Select(pass => pass.Scenario)]),
            Warnings = warnings,
        };
    }

    // How long to run and what is wanted are no settings of the car.
    private static IReadOnlyList<WrittenDifference> Differences(IReadOnlyList<Scenario> scenarios) =>
        [.. WrittenDifference.Of(scenarios).Where(one => !one.Path.StartsWith("aims.", StringComparison.Ordinal) && (!one.Path.StartsWith("run.", StringComparison.Ordinal) || one.Path == "run.rollout"))];
}
