using LaunchSim.Cli.Terminal;
using LaunchSim.Passes.Seasons;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Cli.Output.Seasons;

/// <summary>A season's times against its settings, and what they show.</summary>
internal static class SeasonTrendText
{
    public static string Of(SeasonCourse course, Readout readout, Screen screen)
    {
        Page page = new Page(screen).Heading($"{course.Season.Name}, {course.Entries.Count} {(course.Entries.Count == 1 ? "pass" : "passes")}");
        if (course.Settings.Count > 0)
        {
            _ = page.Blank().Line("Settings that were not the same in all passes:").Table(Settings(course));
        }

        _ = page.Blank().Table(Times(course, readout));
        if (course.Season.Fitted is { } fitted)
        {
            _ = page.Blank().Line($"The fitted car is {fitted.SourceFile}.");
        }

        IReadOnlyList<SeasonLesson> lessons = SeasonLessons.Of(course, readout);
        foreach ((LessonKind kind, string heading) in Headings)
        {
            SeasonLesson[] of = [.. lessons.Where(lesson => lesson.Kind == kind)];
            if (of.Length > 0)
            {
                _ = page.Blank().Heading(heading);
                foreach (SeasonLesson lesson in of)
                {
                    _ = page.Line(lesson.Text, 2);
                }
            }
        }

        return page.Blank().Line(LimitWords.Caution).ToString();
    }

    private static readonly (LessonKind Kind, string Heading)[] Headings =
    [
        (LessonKind.Trust, "How far the predictions can be trusted"),
        (LessonKind.Change, "What went with which change"),
        (LessonKind.Shake, "Tyre shake"),
        (LessonKind.Note, "Noted"),
    ];

    private static TextTable Settings(SeasonCourse course)
    {
        var table = new TextTable([false, .. course.Entries.Select(_ => false)]).Named(["", .. course.Entries.Select(entry => entry.Id)]);
        foreach (Studies.Comparing.WrittenDifference setting in course.Settings)
        {
            table.Add([setting.Path, .. setting.Texts.Select(text => text ?? "left out")]);
        }

        return table;
    }

    private static TextTable Times(SeasonCourse course, Readout readout)
    {
        bool isFitted = course.Season.Fitted is not null;
        var table = new TextTable([false, true, true, true, .. isFitted ? [true, true] : Array.Empty<bool>()])
            .Named(["", "seen or logged", "predicted", "predicted less seen", .. isFitted ? ["fitted", "fitted less seen"] : Array.Empty<string>()]);
        foreach (SeasonMeasure measure in SeasonMeasure.Of(course))
        {
            table.Group($"{SeasonWords.Name(measure, readout)}, {(measure.IsLag ? Readout.Lag.Unit : Readout.Time.Unit)}");
            foreach (SeasonEntry entry in course.Entries)
            {
                table.Add([
                    "  " + entry.Id,
                    measure.Seen(entry) is { } seen ? $"{SeasonWords.Number(measure, seen.Time)} ±{SeasonWords.Number(measure, SeenDoubt.HalfWidth(seen.Sd))}" : "",
                    SeasonWords.Number(measure, measure.Predicted(entry.Predicted)),
                    Less(measure, entry, entry.Predicted),
                    .. isFitted ? [entry.Fitted is { } fitted ? SeasonWords.Number(measure, measure.Predicted(fitted)) : "", entry.Fitted is { } other ? Less(measure, entry, other) : ""] : Array.Empty<string>(),
                ]);
            }
        }

        return table;
    }

    private static string Less(SeasonMeasure measure, SeasonEntry entry, PassPrediction prediction) =>
        measure.Difference(entry, prediction) is { } one ? Readout.Lag.WithSign(one.Difference) : "";
}
