using System.Globalization;
using LaunchSim.Passes.Aligning;
using LaunchSim.Passes.Logs.Proposing;
using LaunchSim.Passes.Measured;
using LaunchSim.Reports;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Passes.Logs;

/// <summary>
/// Reads a log of one pass, finds the launch in it and lays it over the prediction. A log may be of any length: it is read
/// once from beginning to end, and only the rows about the launch are held. Whatever it holds comes back as a log or as
/// errors; it throws for no content.
/// </summary>
public static class LogReader
{
    private const int RowsBetweenQuestions = 1 << 12;

    /// <summary>Reads a log and solves the launch that it is laid over.</summary>
    /// <param name="logFile">The log: text in rows, or a .yaml file of marks.</param>
    /// <param name="mappingFile">Which column is which; null when a proposal is to be taken where it is sure.</param>
    /// <param name="prediction">The scenario of the pass, read for a run.</param>
    /// <param name="cancellation">Asked now and then.</param>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static LogResult Read(string logFile, string? mappingFile, Scenario prediction, CancellationToken cancellation = default) =>
        Read(logFile, mappingFile, LaunchOutcome.Of(prediction, cancellation), null, cancellation);

    /// <summary>Reads a log and lays it over a launch that was solved already.</summary>
    /// <param name="logFile">The log: text in rows, or a .yaml file of marks.</param>
    /// <param name="mappingFile">Which column is which; null when a proposal is to be taken where it is sure.</param>
    /// <param name="prediction">The launch; not read by another thread meanwhile.</param>
    /// <param name="progress">Told now and then what share of the log was read; or null.</param>
    /// <param name="cancellation">Asked now and then.</param>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static LogResult Read(string logFile, string? mappingFile, LaunchOutcome prediction, Action<double>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(logFile);
        ArgumentNullException.ThrowIfNull(prediction);
        try
        {
            if (MarksReading.IsMarks(logFile))
            {
                return MarksReading.Read(logFile, mappingFile, prediction);
            }

            var remarks = new List<string>();
            LogMapping? mapping = Mapping(logFile, mappingFile, remarks, progress, cancellation, out IReadOnlyList<Diagnostic> errors);
            return mapping is null ? new LogResult(null, errors) : Read(logFile, mapping, prediction, remarks, progress, cancellation);
        }
        catch (LogTextException exception)
        {
            return new LogResult(null, [exception.Finding]);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            return new LogResult(null, [new WrittenPlace(logFile, 0, 0).Error("", "a file that could not be read to its end", "a file that may be read", exception.Message.TrimEnd('.'))]);
        }
    }

    private static LogMapping? Mapping(string logFile, string? mappingFile, List<string> remarks, Action<double>? progress, CancellationToken cancellation, out IReadOnlyList<Diagnostic> errors)
    {
        if (mappingFile is not null)
        {
            MappingResult read = new MappingReader(MeasuredQuantities.Recorded).Read(mappingFile);
            errors = read.Errors;
            return read.Mapping;
        }

        ProposalResult proposed = ColumnProposal.Of(logFile, progress, cancellation);
        errors = proposed.Errors;
        if (proposed.Proposal is not { } proposal)
        {
            return null;
        }

        if (proposal.SureMapping() is not { } mapping)
        {
            errors = [new WrittenPlace(logFile, 0, 0).Error("", "a log without a mapping, of which no time or no quantity is plain from its names and units", "a log whose columns are plain, or a mapping", $"write `launchsim columns {logFile} --out mapping.yaml`, look it through, and name it by --mapping")];
            return null;
        }

        remarks.Add($"No mapping was named; taken as proposed: {string.Join("; ", mapping.Columns.Select(column => $"`{column.Column}` as {column.Quantity} in {column.Unit}"))}.");
        return mapping;
    }

    private static LogResult Read(string logFile, LogMapping mapping, LaunchOutcome prediction, List<string> remarks, Action<double>? progress, CancellationToken cancellation)
    {
        var errors = new List<Diagnostic>();
        IReadOnlyList<PreparedColumn> columns = PreparedColumn.Of(mapping.Columns, prediction.Solution, remarks, errors);
        (string Name, WrittenPlace At)? timed = mapping.Clock switch
        {
            TimeColumn column => (column.Column, column.At),
            FrameColumn column => (column.Column, column.At),
            _ => null,
        };
        List<(string Name, WrittenPlace At)> wanted = [.. mapping.Columns.Select(column => (column.Column, column.At))];
        if (timed is { } one)
        {
            wanted.Add(one);
        }

        LogLayout? layout = LogLayout.Find(logFile, mapping.Table, wanted, out Diagnostic[] problems);
        errors.AddRange(problems);
        int[] indices = layout is null ? [] : [.. wanted.Select(name => Place(layout, name, logFile, errors))];
        if (layout is null || errors.Count > 0)
        {
            return new LogResult(null, errors);
        }

        double duration = prediction.Solution.Duration;
        PreparedColumn[] compared = [.. columns.Where(column => column.IsPredicted)];
        foreach (PreparedColumn column in columns.Except(compared))
        {
            remarks.Add($"`{column.Column.Column}`: the scenario's car has no {column.Quantity.Words} to compare with; left aside.");
        }

        if (compared.Length == 0)
        {
            return new LogResult(null, [new WrittenPlace(mapping.SourceFile, 0, 0).Error("columns", "a mapping of nothing that the prediction has", "a quantity of this car: a launch with an engine has an engine speed, one by axle torque has none", "map another column")]);
        }

        var finder = new LaunchFinder([.. compared.Select(column => new LaunchChannel(column.Factor, column.Quantity.HasFreeZero, column.Quantity.TellsRelease ? 3 : column.Quantity.HasFreeZero ? 1 : 0.5, column.Predicted))], duration, mapping.Clock.Release);
        using var rows = new LogRows(logFile, layout, mapping.Clock, timed is null ? -1 : indices[^1], [.. compared.Select(column => indices[columns.ToList().IndexOf(column)])], mapping.Table.Missing);
        for (long row = 0; rows.Read(); row++)
        {
            if (row % RowsBetweenQuestions == 0)
            {
                cancellation.ThrowIfCancellationRequested();
                progress?.Invoke(rows.Progress);
            }

            finder.Add(rows.Time, rows.Values);
        }

        cancellation.ThrowIfCancellationRequested();
        errors.AddRange(rows.Errors);
        if (errors.Count == 0 && TimeCheck.Of(rows, mapping.Clock, logFile, duration) is { } wrong)
        {
            errors.Add(wrong);
        }

        if (errors.Count > 0)
        {
            return new LogResult(null, errors);
        }

        Told(rows, layout, compared, remarks);
        if (finder.End() is not { } found)
        {
            return new LogResult(null, [NotFound(logFile, rows, compared, mapping.Clock)]);
        }

        return Lay(logFile, mapping, compared, rows, found, remarks);
    }

    private static int Place(LogLayout layout, (string Name, WrittenPlace At) wanted, string logFile, List<Diagnostic> errors)
    {
        int index = layout.IndexOf(wanted.Name);
        if (index < 0)
        {
            errors.Add(index == -2
                ? wanted.At.Error("", $"the column `{wanted.Name}`, of which {logFile} has several", "one column", "name it by its number, as in #3")
                : wanted.At.Error("", $"no column `{wanted.Name}` in {logFile}", $"#1 to #{layout.Names.Count}", "count the columns from 1"));
        }

        return index;
    }

    private static void Told(LogRows rows, LogLayout layout, PreparedColumn[] columns, List<string> remarks)
    {
        if (rows.IsLatin)
        {
            remarks.Add("The log is no UTF-8: its bytes were taken for Latin-1, as older loggers write.");
        }

        if (rows.Aside > 0)
        {
            remarks.Add(Invariant($"{Count(rows.Aside, "row")} of words below the names left aside."));
        }

        if (rows.Doubled > 0)
        {
            string otherwise = rows.DoubledOtherwise > 0 ? Invariant($"; {rows.DoubledOtherwise} of them had other values than the first") : "";
            remarks.Add(Invariant($"{Count(rows.Doubled, "row")} had the time of the row before: the first was kept{otherwise}."));
        }

        if (rows.Timeless > 0)
        {
            remarks.Add(Invariant($"{Count(rows.Timeless, "row")} without a time left aside."));
        }

        if (rows.IsCutOff)
        {
            remarks.Add("The last row is cut off and was left aside.");
        }

        for (int i = 0; i < columns.Length; i++)
        {
            if (rows.Gaps[i] > 0 && rows.Gaps[i] < rows.Count)
            {
                remarks.Add(Invariant($"`{columns[i].Column.Column}` has no value in {rows.Gaps[i]} of {rows.Count} rows."));
            }
        }

        _ = layout;
    }

    private static Diagnostic NotFound(string logFile, LogRows rows, PreparedColumn[] columns, LogClock clock)
    {
        var at = new WrittenPlace(logFile, 0, 0);
        string seen = string.Join(", ", columns.Select((column, i) => rows.Lowest[i] <= rows.Highest[i]
            ? Invariant($"{column.Quantity.Key} from {rows.Lowest[i]:0.####} to {rows.Highest[i]:0.####} {column.Column.Unit}")
            : $"{column.Quantity.Key} without any number"));
        string span = Invariant($"{rows.Count} rows from {rows.First:0.###} to {rows.Last:0.###} s");
        return clock.Release is { } release
            ? at.Error("", Invariant($"no row about the release that was entered, {release:0.###} s; {span}"), "a release on the log's own clock", "look at time.release in the mapping, and at the unit of the time")
            : at.Error("", $"no launch in the log: nothing in it looks like what was predicted ({span}; {seen})", "a log with the launch in it, its columns mapped to what they measure", "look at quantity:, unit: and reversed: of each column; or give time.release, the release on the log's clock");
    }

    private static LogResult Lay(string logFile, LogMapping mapping, PreparedColumn[] columns, LogRows rows, FoundLaunch found, List<string> remarks)
    {
        var errors = new List<Diagnostic>();
        var kept = new List<int>();
        for (int i = 0; i < columns.Length; i++)
        {
            UnitCheck.Verdict verdict = UnitCheck.Of(columns[i], found.Span, i, found.Shift, rows.Lowest[i], rows.Highest[i]);
            if (verdict.Problem is { } problem)
            {
                errors.Add(problem);
            }

            if (verdict.Remark is { } remark)
            {
                remarks.Add(remark);
            }

            if (!verdict.IsDead)
            {
                kept.Add(i);
            }
        }

        if (errors.Count > 0)
        {
            return new LogResult(null, errors);
        }

        if (found.Other is { } other)
        {
            remarks.Add(Invariant($"The log has another launch, at about {other:0.0} s, that looks nearly as much like the prediction as the one that was taken, at {found.Shift:0.0} s. Should that be the pass, give time.release in the mapping."));
        }

        if (found.Span.Together > 1)
        {
            remarks.Add(Invariant($"Rows come so fast that {found.Span.Together} each were made one by their mean."));
        }

        var raw = kept.Select(i => RawChannel.Of(columns[i], found.Span, i, rows.Lowest[i] <= rows.Highest[i])).Where(channel => channel.Times.Length > 0).ToList();
        if (raw.Count == 0)
        {
            return new LogResult(null, [NotFound(logFile, rows, columns, mapping.Clock)]);
        }

        double spacing = found.Span.Times.Length > 1 ? (found.Span.Times[^1] - found.Span.Times[0]) / (found.Span.Times.Length - 1) : 0;
        (double, double?)? known = mapping.Clock.Release is { } release ? (release, mapping.Clock.ReleaseDoubt) : null;
        Alignment alignment = ReleaseSearch.Find([.. raw.Select(channel => (channel.Column.Quantity, channel.Signal))], found.Shift, known, spacing);
        return new LogResult(new AlignedLog([.. raw.Select(channel => channel.Laid(alignment.Shift, logFile, mapping.ParallaxDoubt, remarks))], alignment, remarks), []);
    }

    private static string Count(long count, string what) => Invariant($"{count} {what}{(count == 1 ? "" : "s")}");

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
