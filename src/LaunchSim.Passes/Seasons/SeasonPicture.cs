using LaunchSim.Charts;
using LaunchSim.Charts.Seasons;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Passes.Seasons;

/// <summary>The picture of a season.</summary>
public static class SeasonPicture
{
    // More settings than these make no picture any more; the table has them all.
    private const int MostSettings = 8;

    /// <summary>The picture.</summary>
    /// <param name="course">The season, with at least one pass.</param>
    /// <param name="readout">The units.</param>
    /// <param name="program">The program with its version.</param>
    /// <exception cref="ArgumentException">There is no pass.</exception>
    public static Picture Of(SeasonCourse course, Readout readout, string program)
    {
        ArgumentNullException.ThrowIfNull(course);
        ArgumentNullException.ThrowIfNull(readout);
        bool isFitted = course.Season.Fitted is not null;
        string title = course.Settings.Count == 0 ? "every pass with the same settings" : $"{course.Settings.Count} {(course.Settings.Count == 1 ? "setting was" : "settings were")} changed";
        return SeasonChart.Of(new SeasonView
        {
            Title = $"{course.Season.Name}: {course.Entries.Count} {(course.Entries.Count == 1 ? "pass" : "passes")}, {title}",
            Imprint = $"{course.Season.Name.ReplaceLineEndings(" ")} · {program}",
            Passes = [.. course.Entries.Select(entry => entry.Id)],
            Panels = [.. SeasonMeasure.Of(course).Select(measure => Panel(course, measure, readout, isFitted))],
            Settings = [.. course.Settings.Take(MostSettings).Select(setting => new SeasonSetting(setting.Path, [.. setting.Texts.Select(text => text ?? "left out")]))],
        });
    }

    private static SeasonPanel Panel(SeasonCourse course, SeasonMeasure measure, Readout readout, bool isFitted)
    {
        Scale scale = measure.IsLag ? Readout.Lag : Readout.Time;
        return new SeasonPanel
        {
            Name = SeasonWords.Name(measure, readout),
            Unit = scale.Unit,
            Decimals = scale.Decimals,
            Seen = Each(entry => measure.Seen(entry)?.Time),
            Doubt = Each(entry => measure.Seen(entry) is { } seen ? SeenDoubt.HalfWidth(seen.Sd) : null),
            Predicted = Each(entry => measure.Predicted(entry.Predicted)),
            Fitted = isFitted ? Each(entry => entry.Fitted is { } fitted ? measure.Predicted(fitted) : null) : null,
        };

        double[] Each(Func<SeasonEntry, double?> value) => [.. course.Entries.Select(entry => (value(entry) ?? double.NaN) / scale.Factor)];
    }
}
