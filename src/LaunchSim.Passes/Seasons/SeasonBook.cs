using System.Globalization;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Scenarios.Writing;

namespace LaunchSim.Passes.Seasons;

/// <summary>What came of writing into a season.</summary>
/// <param name="File">The file that was written; null when nothing was.</param>
/// <param name="Pass">The pass as it stands there now.</param>
/// <param name="Errors">Why nothing was written.</param>
/// <param name="Warnings">What else was found.</param>
/// <param name="TakenOver">The dead process whose lock was taken over; null when there was none.</param>
public sealed record SeasonWritten(string? File, PassFile? Pass, IReadOnlyList<Diagnostic> Errors, IReadOnlyList<Diagnostic> Warnings, LockHolder? TakenOver);

/// <summary>
/// Writes into a season: under its lock, a file at a time, each whole or not at all. What is written is read first, and nothing
/// is kept that does not read as a pass.
/// </summary>
/// <param name="scenarios">How cars are read: for a run.</param>
public sealed class SeasonBook(ScenarioReader scenarios)
{
    private readonly PassReader _reader = new(scenarios);

    /// <summary>Writes a new pass under the next number.</summary>
    /// <param name="folder">The season's folder, which has to be there.</param>
    /// <param name="text">Its text.</param>
    /// <param name="cancellation">Asked before the file gets its name.</param>
    /// <exception cref="SeasonHeldException">Somebody else writes.</exception>
    /// <exception cref="IOException">It cannot be written.</exception>
    public SeasonWritten Add(string folder, PassText text, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(text);
        using var held = SeasonLock.Take(folder);
        SeasonFolder.Tidy(folder);
        string path = Path.Combine(folder, SeasonFolder.NextName(folder, PassEdit.Find(text.Text, "name")));
        PassResult read = _reader.ReadText(text.Text, path);
        if (read.Pass is null)
        {
            return new SeasonWritten(null, null, read.Errors, read.Warnings, held.TakenOver);
        }

        NewFile.Write(Path.GetFullPath(path), text.Text, cancellation, SeasonFolder.Temporary);
        return new SeasonWritten(path, read.Pass, [], read.Warnings, held.TakenOver);
    }

    /// <summary>Closes a pass: from then on only corrections change it.</summary>
    /// <param name="path">The pass file.</param>
    /// <param name="day">The day.</param>
    /// <param name="cancellation">Asked before the file takes its place.</param>
    /// <exception cref="SeasonHeldException">Somebody else writes.</exception>
    /// <exception cref="IOException">It cannot be written.</exception>
    public SeasonWritten Close(string path, DateOnly day, CancellationToken cancellation) => Rewrite(
        path,
        (text, pass) => pass.IsClosed
            ? (null, Refused(pass, "closed", $"a pass that was closed on `{pass.Closed}`", "a pass that is open", "correct it with season correct"))
            : (PassEdit.Set(text, "closed", Day(day)), null),
        cancellation);

    /// <summary>Changes one value of a pass; of a closed one with a correction that says what was, what is, why and when.</summary>
    /// <param name="path">The pass file.</param>
    /// <param name="at">Which value, such as <c>seen.rear_open</c>.</param>
    /// <param name="value">The new value in the notation of the file; null takes it away.</param>
    /// <param name="why">Why; needed for a closed pass.</param>
    /// <param name="day">The day.</param>
    /// <param name="cancellation">Asked before the file takes its place.</param>
    /// <exception cref="SeasonHeldException">Somebody else writes.</exception>
    /// <exception cref="IOException">It cannot be written.</exception>
    public SeasonWritten Correct(string path, string at, string? value, string? why, DateOnly day, CancellationToken cancellation) => Rewrite(
        path, (text, pass) => Corrected(text, pass, at, value, why, day), cancellation);

    private static (string? Text, Diagnostic? Error) Corrected(string text, PassFile pass, string at, string? value, string? why, DateOnly day)
    {
        // The record of its changes is not a matter of change.
        string root = at.Split('.', '[')[0];
        if (!PassEdit.IsPath(at, out string? nearest) || root is "closed" or "seal" or "corrections")
        {
            string mend = nearest is null ? "look the path up in the reference of the pass file" : $"did you mean `{nearest}`?";
            return (null, Refused(pass, "", $"the path `{at}`, which cannot be corrected", "a path of the pass file, such as seen.rear_open or changed.rear.spring.rate", mend));
        }

        string? was = PassEdit.Find(text, at);
        if (was == value)
        {
            return (null, Refused(pass, at, value is null ? "nothing there to take away" : $"`{value}` there already", "a change", "there is nothing to correct"));
        }

        if (pass.IsClosed && string.IsNullOrWhiteSpace(why))
        {
            return (null, Refused(pass, at, "a correction without a reason", "a closed pass changes only by a correction that says why", "add --why with the reason"));
        }

        string? changed = PassEdit.Set(text, at, value);
        if (changed is not null && pass.IsClosed)
        {
            changed = PassEdit.Correct(changed, new PassCorrection(Day(day), at, was, value, why!.Trim()));
        }

        return changed is null ? (null, Refused(pass, at, "a list that is not there, or a file that is not laid out in lines", "a value of the file", "write it into the file by hand")) : (changed, null);
    }

    private SeasonWritten Rewrite(string path, Func<string, PassFile, (string? Text, Diagnostic? Error)> change, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(path);
        string full = Path.GetFullPath(path), folder = Path.GetDirectoryName(full)!;
        PassResult before = _reader.Read(path);
        if (before.Pass is null)
        {
            return new SeasonWritten(null, null, before.Errors, before.Warnings, null);
        }

        using var held = SeasonLock.Take(folder);
        SeasonFolder.Tidy(folder);
        string text = File.ReadAllText(full);
        before = _reader.ReadText(text, path);
        if (before.Pass is not { } pass)
        {
            return new SeasonWritten(null, null, before.Errors, before.Warnings, held.TakenOver);
        }

        (string? changed, Diagnostic? error) = change(text, pass);
        if (changed is null)
        {
            return new SeasonWritten(null, pass, [error!], before.Warnings, held.TakenOver);
        }

        PassResult after = _reader.ReadText(changed, path);
        if (after.Pass is { IsClosed: true } closed && closed.IsSealWhole != true && PassEdit.Set(changed, "seal", closed.Digest) is { } sealedText)
        {
            // Somebody's change by hand is not sealed with the rest as if it had been corrected.
            if (pass.IsSealWhole == false)
            {
                return new SeasonWritten(null, pass, [Refused(pass, "seal", "values that were changed by hand since the pass was closed", "a closed pass as it was closed or corrected", "put those values back first, or take the seal away to keep them")], before.Warnings, held.TakenOver);
            }

            changed = sealedText;
            after = _reader.ReadText(changed, path);
        }

        if (after.Pass is null)
        {
            return new SeasonWritten(null, pass, after.Errors, after.Warnings, held.TakenOver);
        }

        ReplacedFile.Write(full, changed, cancellation, SeasonFolder.Temporary);
        return new SeasonWritten(path, after.Pass, [], after.Warnings, held.TakenOver);
    }

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static Diagnostic Refused(PassFile pass, string path, string found, string allowed, string mend) => new()
    {
        File = pass.SourceFile,
        Line = 0,
        Column = 0,
        Severity = Severity.Error,
        Message = found,
        Allowed = allowed,
        Mend = mend,
        Path = path,
    };
}
