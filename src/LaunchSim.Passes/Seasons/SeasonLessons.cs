using System.Globalization;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Passes.Seasons;

/// <summary>What a season shows, in plain sentences that are worked out of its numbers and say no more than these do.</summary>
public static class SeasonLessons
{
    // Fewer passes show no side; beyond as many standard errors chance is no good explanation.
    private const int Fewest = 3;
    private const double Surely = 2;

    /// <summary>All of it.</summary>
    /// <param name="course">The season.</param>
    /// <param name="readout">The units.</param>
    public static IReadOnlyList<SeasonLesson> Of(SeasonCourse course, Readout readout)
    {
        ArgumentNullException.ThrowIfNull(course);
        ArgumentNullException.ThrowIfNull(readout);
        IReadOnlyList<SeasonMeasure> measures = SeasonMeasure.Of(course);
        return
        [
            .. Trust(course, measures, readout),
            .. course.Entries.Where(entry => entry.Changes is { Count: > 0 }).Select(entry => Change(course, entry, measures, readout)),
            .. Shaking(course),
            .. course.Entries.Where(entry => entry.Pass.Notes.Length > 0).Select(entry => new SeasonLesson(LessonKind.Note, $"{entry.Id}: {entry.Pass.Notes}")),
        ];
    }

    private static IEnumerable<SeasonLesson> Trust(SeasonCourse course, IReadOnlyList<SeasonMeasure> measures, Readout readout)
    {
        var fair = new List<string>();
        var few = new List<string>();
        foreach (SeasonMeasure measure in measures)
        {
            string name = SeasonWords.Name(measure, readout);
            if (Error.Of(course, measure, entry => entry.Predicted) is not { } error)
            {
                continue;
            }

            if (error.Count < Fewest)
            {
                few.Add(name);
            }
            else if (!error.IsOneSided)
            {
                fair.Add($"{name} ({Plain(error.Mean)} ± {Plain(Surely * error.Standard)} on average)");
            }
            else
            {
                string sides = error.Same == error.Count ? $"all {error.Count} passes on that side" : $"{error.Same} of {error.Count} passes on that side";
                string fitted = Error.Of(course, measure, entry => entry.Fitted) is { } better
                    ? $"; with the fitted car {Plain(better.Mean)} on average" : "";
                string more = measure.IsLag ? error.Mean > 0 ? "the front later" : "the front sooner" : measure.Mark is null ? error.Mean > 0 ? "later" : "sooner" : error.Mean > 0 ? "longer" : "shorter";
                yield return new SeasonLesson(LessonKind.Trust, $"Predictions err on one side at {name}: {more} than measured by {Plain(Math.Abs(error.Mean))} on average, {sides}{fitted}.");
            }
        }

        if (fair.Count > 0)
        {
            yield return new SeasonLesson(LessonKind.Trust, $"No side shows, within what was measured, at {SeasonWords.List(fair)}.");
        }

        if (few.Count > 0)
        {
            yield return new SeasonLesson(LessonKind.Trust, $"Too few passes to tell a side, fewer than {Fewest}, at {SeasonWords.List(few)}.");
        }
    }

    private static SeasonLesson Change(SeasonCourse course, SeasonEntry entry, IReadOnlyList<SeasonMeasure> measures, Readout readout)
    {
        SeasonEntry before = course.Entries[entry.Number - 2];
        var seen = new List<string>();
        var within = new List<string>();
        var missed = new List<string>();
        foreach (SeasonMeasure measure in measures)
        {
            if (measure.Seen(before) is not { } was || measure.Seen(entry) is not { } now)
            {
                continue;
            }

            double step = now.Time - was.Time, doubt = Math.Sqrt((was.Sd * was.Sd) + (now.Sd * now.Sd));
            double predicted = measure.Predicted(entry.Predicted) - measure.Predicted(before.Predicted);
            string name = SeasonWords.Name(measure, readout);
            if (Math.Abs(step) > Surely * doubt)
            {
                seen.Add($"{name} {SeasonWords.Number(measure, was.Time)} → {SeasonWords.Value(measure, now.Time)} ({Signed(step)}{(double.IsFinite(predicted) ? $", predicted {Signed(predicted)}" : "")})");
            }
            else
            {
                within.Add(name);
                if (Math.Abs(predicted) > Surely * doubt)
                {
                    missed.Add($"{Signed(predicted)} of {name}");
                }
            }
        }

        string what = $"{before.Id} to {entry.Id}, {SeasonWords.Changes(entry)}: ";
        string came = seen.Count > 0 ? string.Join("; ", seen)
            : within.Count > 0 ? $"no difference beyond the doubt of what was measured, of {SeasonWords.List(within)}{(missed.Count > 0 ? $", where {SeasonWords.List(missed)} {(missed.Count == 1 ? "was" : "were")} predicted" : "")}"
            : "nothing was measured in both";
        string together = entry.Changes!.Count > 1 && seen.Count > 0 ? "; which of the changes did it cannot be told" : "";
        string track = seen.Count > 0 && (Differs(before.Pass.Track, entry.Pass.Track) || Differs(before.Pass.Weather, entry.Pass.Weather)) ? "; track or weather are noted otherwise, too" : "";
        return new SeasonLesson(LessonKind.Change, $"{what}{came}{together}{track}.");
    }

    private static bool Differs(string one, string other) => !string.Equals(one, other, StringComparison.OrdinalIgnoreCase);

    private static IEnumerable<SeasonLesson> Shaking(SeasonCourse course)
    {
        SeasonEntry[] noted = [.. course.Entries.Where(entry => entry.Pass.Seen.Shake is not null)];
        if (!noted.Any(entry => entry.Pass.Seen.Shake != Shake.None))
        {
            yield break;
        }

        string levels = string.Join("; ", new[] { Shake.Hard, Shake.Light, Shake.None }
            .Select(level => (Level: level, In: noted.Where(entry => entry.Pass.Seen.Shake == level).Select(entry => entry.Id).ToArray()))
            .Where(one => one.In.Length > 0).Select(one => $"{SeasonWords.Of(one.Level)} in {SeasonWords.List(one.In)}"));
        yield return new SeasonLesson(LessonKind.Shake, $"Tyre shake: {levels}. The model has none, so nothing here predicts it.");

        bool[] shook = [.. noted.Select(entry => entry.Pass.Seen.Shake != Shake.None)];
        foreach (Studies.Comparing.WrittenDifference setting in course.Settings.Where(_ => noted.Length > Fewest && shook.Contains(false)))
        {
            string[] texts = [.. noted.Select(entry => setting.Texts[entry.Number - 1] ?? "left out")];
            string[] with = [.. texts.Where((_, i) => shook[i]).Distinct()], without = [.. texts.Where((_, i) => !shook[i]).Distinct()];
            if (!with.Intersect(without).Any())
            {
                yield return new SeasonLesson(LessonKind.Shake, $"Every pass with shake had {setting.Path} at {SeasonWords.List(with)}, every one without at {SeasonWords.List(without)}: that goes together, and need not be the cause.");
            }
        }
    }

    private static string Plain(double seconds) => Readout.Lag.Text(seconds);

    private static string Signed(double seconds) => Readout.Lag.WithSign(seconds);

    /// <summary>Predicted less seen over the passes that have both.</summary>
    private sealed record Error(int Count, double Mean, double Standard, int Same)
    {
        public bool IsOneSided => Math.Abs(Mean) > Surely * Standard;

        public static Error? Of(SeasonCourse course, SeasonMeasure measure, Func<SeasonEntry, PassPrediction?> prediction)
        {
            (double Difference, double Sd)[] all = [.. course.Entries
                .Select(entry => prediction(entry) is { } one ? measure.Difference(entry, one) : null).OfType<(double, double)>()];
            if (all.Length == 0)
            {
                return null;
            }

            // The scatter of a few passes may be small by chance: it never counts for less than what was seen is worth.
            double mean = all.Average(one => one.Difference);
            double scatter = all.Length > 1 ? Math.Sqrt(all.Sum(one => (one.Difference - mean) * (one.Difference - mean)) / (all.Length - 1)) : 0;
            double seen = Math.Sqrt(all.Average(one => one.Sd * one.Sd));
            return new Error(all.Length, mean, Math.Max(scatter, seen) / Math.Sqrt(all.Length), all.Count(one => Math.Sign(one.Difference) == Math.Sign(mean)));
        }
    }
}
