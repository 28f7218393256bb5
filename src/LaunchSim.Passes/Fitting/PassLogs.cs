using LaunchSim.Passes.Aligning;
using LaunchSim.Passes.Logs;
using LaunchSim.Reports;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Passes.Fitting;

/// <summary>What came of reading the logs of a pass.</summary>
/// <param name="Logs">The logs, lined up with the prediction; none when there is an error.</param>
/// <param name="Errors">All errors.</param>
/// <param name="Remarks">What was done with the logs, each a sentence that names its file.</param>
public sealed record PassLogsResult(IReadOnlyList<FitLog> Logs, IReadOnlyList<Diagnostic> Errors, IReadOnlyList<string> Remarks);

/// <summary>Reads the logs that a pass file names.</summary>
public static class PassLogs
{
    // A log is lined up with what the file predicts, which is not yet the true car: the fit may move every clock by some of this, s.
    private const double LeastSd = 5e-3;

    /// <summary>Reads them, each lined up with the predicted launch by itself: every logger has its own clock.</summary>
    /// <param name="pass">The pass.</param>
    /// <param name="predicted">Its prediction; not read by another thread meanwhile.</param>
    /// <param name="cancellation">Asked now and then.</param>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static PassLogsResult Read(PassFile pass, LaunchOutcome predicted, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(pass);
        ArgumentNullException.ThrowIfNull(predicted);
        var logs = new List<FitLog>();
        var errors = new List<Diagnostic>();
        var remarks = new List<string>();
        foreach (PassLog log in pass.Logs)
        {
            LogResult read = LogReader.Read(log.File, log.Mapping, predicted, null, cancellation);
            errors.AddRange(read.Errors);
            if (read.Log is { } aligned)
            {
                logs.Add(new FitLog(log.Written, aligned.Series, Math.Max(LeastSd, aligned.Alignment.Sd)));
                remarks.Add($"{log.Written}: {aligned.Alignment.Words}");
                remarks.AddRange(aligned.Remarks.Select(remark => $"{log.Written}: {remark}"));
            }
        }

        return errors.Count > 0 ? new([], errors, remarks) : new(logs, [], remarks);
    }
}
