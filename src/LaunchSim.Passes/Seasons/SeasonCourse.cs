using LaunchSim.Passes.Comparing;
using LaunchSim.Passes.Logs;
using LaunchSim.Reports;
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

    /// <summary>Why some pass's changes do not fit the fitted car, and what is wrong with logs.</summary>
    public required IReadOnlyList<Diagnostic> Warnings { get; init; }

    /// <summary>Predicts every pass of a season.</summary>
    /// <param name="season">The season.</param>
    /// <param name="readsLogs">Whether figures are also read off the passes' logs.</param>
    /// <param name="done">Called after each pass.</param>
    /// <param name="cancellation">Asked once a step.</param>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static SeasonCourse Of(Season season, bool readsLogs, Action? done = null, CancellationToken cancellation = default)
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
            bool isLogged = readsLogs && pass.Logs.Count > 0;
            LaunchOutcome? outcome = isLogged ? LaunchOutcome.Of(pass.Scenario, pass.Run, cancellation) : null;
            entries.Add(new SeasonEntry(pass, entries.Count + 1, changes, outcome is null ? PassPrediction.Of(pass, cancellation) : PassPrediction.Of(pass, outcome.Solution), fitted)
            {
                Figures = outcome is { Failure: null } ? Logged(pass, outcome, warnings, cancellation) : [],
            });
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

    // What is wrong with a log is told; all else of the season can still be shown.
    private static IReadOnlyList<PassFigure> Logged(PassFile pass, LaunchOutcome outcome, List<Diagnostic> warnings, CancellationToken cancellation)
    {
        var logs = new List<ComparedLog>();
        foreach (PassLog log in pass.Logs)
        {
            LogResult read = LogReader.Read(log.File, log.Mapping, outcome, null, cancellation);
            warnings.AddRange(read.Errors.Select(error => error with { Severity = Severity.Warning }));
            if (read.Log is { } aligned)
            {
                logs.Add(new ComparedLog(log.File, aligned));
            }
        }

        return logs.Count == 0 ? [] : PassComparison.Of(outcome, logs).Figures;
    }

    // How long to run and what is wanted are no settings of the car.
    private static IReadOnlyList<WrittenDifference> Differences(IReadOnlyList<Scenario> scenarios) =>
        [.. WrittenDifference.Of(scenarios).Where(one => !one.Path.StartsWith("aims.", StringComparison.Ordinal) && (!one.Path.StartsWith("run.", StringComparison.Ordinal) || one.Path == "run.rollout"))];
}
