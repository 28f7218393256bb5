using LaunchSim.Reports;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Passes.Fitting;

/// <summary>What came of reading passes for a fit.</summary>
/// <param name="Passes">The passes; none when there is an error.</param>
/// <param name="Errors">All errors.</param>
/// <param name="Warnings">All warnings.</param>
/// <param name="Remarks">What was done with logs.</param>
public sealed record FitPassesResult(IReadOnlyList<FitPass> Passes, IReadOnlyList<Diagnostic> Errors, IReadOnlyList<Diagnostic> Warnings, IReadOnlyList<string> Remarks);

/// <summary>
/// Puts passes on the car that is fitted: the fitted file with what each pass changed, or the pass's own car where that is a
/// variant of the fitted file.
/// </summary>
/// <param name="file">The file that is fitted, read for a run.</param>
public sealed class FitPasses(ReadResult file)
{
    private readonly Scenario _scenario = file.Scenario ?? throw new ArgumentException("The file has errors.", nameof(file));

    /// <summary>Reads pass files with their logs.</summary>
    /// <param name="paths">The pass files.</param>
    /// <param name="read">Told after each.</param>
    /// <param name="cancellation">Asked now and then.</param>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public FitPassesResult Read(IReadOnlyList<string> paths, Action? read, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(paths);
        var passes = new List<FitPass>();
        var errors = new List<Diagnostic>();
        var warnings = new List<Diagnostic>();
        var remarks = new List<string>();
        var reader = new PassReader(StandingCheck.Reader(ReadPurpose.Run));
        foreach (string path in paths)
        {
            cancellation.ThrowIfCancellationRequested();
            PassResult result = reader.Read(path);
            errors.AddRange(result.Errors);
            warnings.AddRange(result.Warnings);
            if (result.Pass is { } pass && SetUp(pass, errors) is { } setUp)
            {
                LaunchOutcome predicted = LaunchOutcome.Of(setUp, pass.Run, cancellation);
                PassLogsResult logs = PassLogs.Read(pass, predicted, cancellation);
                errors.AddRange(logs.Errors);
                remarks.AddRange(logs.Remarks);
                passes.Add(new FitPass(pass.Name, setUp, pass.Run, logs.Logs, pass.Seen));
            }

            read?.Invoke();
        }

        return errors.Count > 0 ? new([], errors, warnings, remarks) : new(passes, [], warnings, remarks);
    }

    private Scenario? SetUp(PassFile pass, List<Diagnostic> errors)
    {
        string own = Path.GetFullPath(pass.CarFile), fitted = Path.GetFullPath(_scenario.SourceFile);
        if (file.Files.Contains(own))
        {
            ReadResult changed = _scenario.With(pass.Changed);
            errors.AddRange(changed.Errors.Select(error => error with { File = $"{pass.SourceFile}, changed, on {_scenario.SourceFile}" }));
            return changed.Scenario;
        }

        if (StandingCheck.Reader(ReadPurpose.Run).Read(pass.CarFile).Files.Contains(fitted))
        {
            return pass.Scenario;
        }

        errors.Add(new Diagnostic
        {
            File = pass.SourceFile,
            Line = 0,
            Column = 0,
            Severity = Severity.Error,
            Path = "car",
            Message = $"`{pass.CarWritten}`, another car than the one to be fitted",
            Allowed = $"a pass of {_scenario.SourceFile}, of a file that it begins from, or of a variant of it",
            Mend = "fit the passes of each car by themselves",
        });
        return null;
    }
}
