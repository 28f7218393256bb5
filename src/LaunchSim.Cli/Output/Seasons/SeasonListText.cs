using LaunchSim.Cli.Terminal;
using LaunchSim.Passes.Seasons;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Cli.Output.Seasons;

/// <summary>The passes of a season in a table.</summary>
internal static class SeasonListText
{
    public static string Of(SeasonCourse course, Readout readout, Screen screen)
    {
        IReadOnlyList<SeasonMeasure> beams = [.. SeasonMeasure.Of(course).Where(measure => measure.Mark is not null)];
        SeasonMeasure lag = SeasonMeasure.Of(course).First(measure => measure.Key == "rise_lag_s");
        bool hasShake = course.Entries.Any(entry => entry.Pass.Seen.Shake is not null);
        var table = new TextTable([false, false, .. beams.Select(_ => true), true, false, .. hasShake ? [false] : Array.Empty<bool>(), false, false])
            .Named(["pass", "when", .. beams.Select(beam => SeasonWords.Place(beam.Mark!.Value, readout)), "rise lag predicted", "seen to move first", .. hasShake ? ["shake"] : Array.Empty<string>(), "", "changed"]);
        foreach (SeasonEntry entry in course.Entries)
        {
            PassFile pass = entry.Pass;
            table.Add([
                entry.Id,
                SeasonWords.When(pass),
                .. beams.Select(beam => beam.Seen(entry) is { } seen ? SeasonWords.Value(beam, seen.Time) : ""),
                double.IsNaN(entry.Predicted.RiseLag) ? "none" : SeasonWords.Value(lag, entry.Predicted.RiseLag),
                SeasonWords.FirstMoves(pass.Seen),
                .. hasShake ? [SeasonWords.Of(pass.Seen.Shake)] : Array.Empty<string>(),
                pass.IsClosed ? pass.Corrections.Count > 0 ? "closed, corrected" : "closed" : "open",
                SeasonWords.Changes(entry),
            ]);
        }

        Page page = new Page(screen).Heading($"{course.Season.Name}, {course.Entries.Count} {(course.Entries.Count == 1 ? "pass" : "passes")}").Blank().Table(table);
        if (course.Season.File.Notes.Length > 0)
        {
            _ = page.Blank().Line(course.Season.File.Notes);
        }

        return page.ToString();
    }
}
