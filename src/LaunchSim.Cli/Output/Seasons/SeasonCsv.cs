using System.Globalization;
using System.Text;
using LaunchSim.Passes.Seasons;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Cli.Output.Seasons;

/// <summary>A season as a table: a row for each pass; times in s, as seen or logged, with the standard deviation of that, predicted and fitted.</summary>
internal static class SeasonCsv
{
    public static void Write(SeasonCourse course, Stream stream)
    {
        var text = new StringBuilder();
        IReadOnlyList<SeasonMeasure> measures = SeasonMeasure.Of(course);
        bool isFitted = course.Season.Fitted is not null;
        Line(text, [
            "pass", "file", "when", "track", "weather", "shake", "first_up", "closed", .. course.Settings.Select(setting => setting.Path),
            .. measures.SelectMany(measure => (string[])[$"{measure.Key}_measured", $"{measure.Key}_measured_sd", $"{measure.Key}_predicted", .. isFitted ? [$"{measure.Key}_fitted"] : Array.Empty<string>()]),
        ]);
        foreach (SeasonEntry entry in course.Entries)
        {
            PassFile pass = entry.Pass;
            Line(text, [
                entry.Number.ToString(CultureInfo.InvariantCulture), entry.Id, SeasonWords.When(pass), pass.Track, pass.Weather, SeasonWords.Of(pass.Seen.Shake),
                pass.Seen.FirstUp?.ToString().ToLowerInvariant() ?? "", pass.IsClosed ? "yes" : "no",
                .. course.Settings.Select(setting => setting.Texts[entry.Number - 1] ?? ""),
                .. measures.SelectMany(measure => Cells(measure, entry, isFitted)),
            ]);
        }

        stream.Write(Encoding.UTF8.GetBytes(text.ToString()));
    }

    private static IEnumerable<string> Cells(SeasonMeasure measure, SeasonEntry entry, bool isFitted)
    {
        (double Time, double Sd)? seen = measure.Seen(entry);
        yield return Number(seen?.Time);
        yield return Number(seen?.Sd);
        yield return Number(measure.Predicted(entry.Predicted));
        if (isFitted)
        {
            yield return Number(entry.Fitted is { } fitted ? measure.Predicted(fitted) : null);
        }
    }

    private static void Line(StringBuilder text, IEnumerable<string> cells) => text.AppendJoin(',', cells.Select(Quoted)).Append('\n');

    private static string Number(double? value) => value is { } number && double.IsFinite(number) ? (number + 0.0).ToString("R", CultureInfo.InvariantCulture) : "";

    private static string Quoted(string cell) => cell.AsSpan().IndexOfAny(",\"\n\r") < 0 ? cell : $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
