using System.Globalization;
using System.Net;
using System.Text;
using LaunchSim.Charts;
using LaunchSim.Passes.Seasons;
using LaunchSim.Passes.Seen;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Studies.Comparing;
using LaunchSim.Web.Pages;

namespace LaunchSim.Web.Seasons;

/// <summary>A season on one page: tables and a picture, no script, no network.</summary>
public static class SeasonPage
{
    private static readonly (LessonKind Kind, string Heading)[] Headings =
    [
        (LessonKind.Trust, "How far the predictions can be trusted"),
        (LessonKind.Change, "What went with which change"),
        (LessonKind.Shake, "Tyre shake"),
    ];

    /// <summary>The page.</summary>
    /// <param name="course">The season, with at least one pass.</param>
    /// <param name="readout">The units.</param>
    /// <param name="program">The program with its version.</param>
    /// <exception cref="ArgumentException">There is no pass.</exception>
    public static HtmlPage Of(SeasonCourse course, Readout readout, string program)
    {
        ArgumentNullException.ThrowIfNull(course);
        ArgumentNullException.ThrowIfNull(readout);
        ArgumentNullException.ThrowIfNull(program);
        var body = new StringBuilder("<main class=\"season\">\n");
        string name = course.Season.Name;
        Tag(body, "h1", name);
        Tag(body, "p", $"{Count(course.Entries.Count, "pass", "passes")}{Span(course)}{(course.Season.Fitted is { } fitted ? $". The fitted car is {FileNames.From(course.Season.Folder, fitted.SourceFile)}" : "")}.");
        if (course.Season.File.Notes.Length > 0)
        {
            Tag(body, "p", course.Season.File.Notes);
        }

        Learned(body, course, readout);
        Tag(body, "h2", "Over the season");
        body.Append("<figure class=\"drawn\" tabindex=\"0\" role=\"region\" aria-label=\"Picture of the season\">").Append(Drawn(SeasonPicture.Of(course, readout, program))).Append("</figure>\n");
        if (course.Settings.Count > 0)
        {
            Settings(body, course);
        }

        Times(body, course, readout);
        Tag(body, "h2", "The passes");
        foreach (SeasonEntry entry in course.Entries)
        {
            Pass(body, entry, readout);
        }

        Tag(body, "p", LimitWords.Caution, " class=\"caution\"");
        Tag(body, "p", program, " class=\"caution\"");
        return new HtmlPage
        {
            Title = $"{name} · LaunchSim",
            Description = $"A season of {Count(course.Entries.Count, "pass", "passes")}: seen and predicted.",
            Style = FrontBundle.Style("style/base.css", "style/season.css"),
            Script = "",
            Body = body.Append("</main>").ToString(),
        };
    }

    private static void Learned(StringBuilder body, SeasonCourse course, Readout readout)
    {
        IReadOnlyList<SeasonLesson> lessons = SeasonLessons.Of(course, readout);
        foreach ((LessonKind kind, string heading) in Headings)
        {
            SeasonLesson[] of = [.. lessons.Where(lesson => lesson.Kind == kind)];
            if (of.Length > 0)
            {
                Tag(body, "h2", heading);
                body.Append("<ul>\n");
                foreach (SeasonLesson lesson in of)
                {
                    Tag(body, "li", lesson.Text);
                }

                body.Append("</ul>\n");
            }
        }
    }

    private static void Settings(StringBuilder body, SeasonCourse course)
    {
        Head(body, "Settings that were not the same in all passes", ["setting", .. course.Entries.Select(entry => entry.Id)], 1);
        foreach (WrittenDifference setting in course.Settings)
        {
            Row(body, [setting.Path, .. setting.Texts.Select(text => text ?? "left out")], course.Entries.Count + 1);
        }

        body.Append("</tbody></table></div>\n");
    }

    private static void Times(StringBuilder body, SeasonCourse course, Readout readout)
    {
        bool isFitted = course.Season.Fitted is not null;
        foreach (SeasonMeasure measure in SeasonMeasure.Of(course))
        {
            string unit = measure.IsLag ? Readout.Lag.Unit : Readout.Time.Unit;
            Head(body, $"{Capital(SeasonWords.Name(measure, readout))}, {unit}", ["pass", "seen or logged", "predicted", "predicted less seen", .. isFitted ? ["fitted", "fitted less seen"] : Array.Empty<string>()], 1);
            foreach (SeasonEntry entry in course.Entries)
            {
                Row(body, [
                    entry.Id,
                    measure.Seen(entry) is { } seen ? $"{SeasonWords.Number(measure, seen.Time)} ±{SeasonWords.Number(measure, SeenDoubt.HalfWidth(seen.Sd))}" : "",
                    SeasonWords.Number(measure, measure.Predicted(entry.Predicted)),
                    Less(measure, entry, entry.Predicted),
                    .. isFitted ? [entry.Fitted is { } fitted ? SeasonWords.Number(measure, measure.Predicted(fitted)) : "", entry.Fitted is { } other ? Less(measure, entry, other) : ""] : Array.Empty<string>(),
                ], 1);
            }

            body.Append("</tbody></table></div>\n");
        }
    }

    private static void Pass(StringBuilder body, SeasonEntry entry, Readout readout)
    {
        PassFile pass = entry.Pass;
        body.Append("<section>\n");
        Tag(body, "h3", pass.Name == entry.Id ? entry.Id : $"{entry.Id}: {pass.Name}");
        string[] about = [SeasonWords.When(pass), pass.Track, pass.Weather, pass.Closed is { } day ? $"closed {day}" : "open"];
        Tag(body, "p", string.Join(" · ", about.Where(part => part.Length > 0)));
        Tag(body, "p", $"{(entry.Changes is null ? "Set" : "Changed since the pass before")}: {SeasonWords.Changes(entry)}.");
        if (entry.Predicted.Failure is { } failure)
        {
            Tag(body, "p", $"The predicted launch did not come to its end. {FailureWords.Of(failure)}");
        }

        if (entry.Predicted.Comparisons.Count > 0)
        {
            Head(body, $"Seen and predicted, {entry.Id}", ["", "seen", "predicted", "predicted less seen", ""], 2);
            foreach (SeenComparison fact in entry.Predicted.Comparisons)
            {
                Row(body, [SeenText.Name(fact, readout), SeenText.WithDoubt(fact), SeenText.Predicted(fact), SeenText.Difference(fact), fact.Agrees ? "" : "beyond doubt"], 2);
            }

            body.Append("</tbody></table></div>\n");
        }

        if (pass.Seen.Shake is { } shake)
        {
            Tag(body, "p", $"Tyre shake: {SeasonWords.Of(shake)}.");
        }

        foreach (PassCorrection one in pass.Corrections)
        {
            Tag(body, "p", $"Corrected {one.When}: {one.Path}, {one.Was ?? "nothing"} → {one.Is ?? "nothing"}. {one.Why}");
        }

        if (pass.Notes.Length > 0)
        {
            Tag(body, "p", pass.Notes, " class=\"note\"");
        }

        body.Append("</section>\n");
    }

    // In pixels, twice as fine as a screen's: its text was laid out in the program's own font, which a browser does not have and would take a wider one for.
    private static string Drawn(Picture picture)
    {
        using var stream = new MemoryStream();
        PictureFormat.WritePng(picture, stream);
        return string.Create(CultureInfo.InvariantCulture, $"<img alt=\"{WebUtility.HtmlEncode(picture.Title)}\" width=\"{picture.Width:0}\" height=\"{picture.Height:0}\" src=\"data:image/png;base64,{Convert.ToBase64String(stream.GetBuffer(), 0, (int)stream.Length)}\">");
    }

    private static void Head(StringBuilder body, string caption, IReadOnlyList<string> names, int words)
    {
        body.Append("<div class=\"wide\" tabindex=\"0\" role=\"region\" aria-label=\"").Append(WebUtility.HtmlEncode(caption)).Append("\"><table>\n");
        Tag(body, "caption", caption);
        body.Append("<thead><tr>");
        for (int i = 0; i < names.Count; i++)
        {
            body.Append(names[i].Length == 0 ? "<td>" : "<th scope=\"col\"").Append(names[i].Length == 0 ? "" : i < words ? ">" : " class=\"number\">").Append(WebUtility.HtmlEncode(names[i])).Append(names[i].Length == 0 ? "</td>" : "</th>");
        }

        body.Append("</tr></thead><tbody>\n");
    }

    private static void Row(StringBuilder body, IReadOnlyList<string> cells, int words)
    {
        body.Append("<tr><th scope=\"row\">").Append(WebUtility.HtmlEncode(cells[0])).Append("</th>");
        for (int i = 1; i < cells.Count; i++)
        {
            body.Append(i < words ? "<td>" : "<td class=\"number\">").Append(WebUtility.HtmlEncode(cells[i])).Append("</td>");
        }

        body.Append("</tr>\n");
    }

    private static void Tag(StringBuilder body, string tag, string text, string attributes = "") =>
        body.Append('<').Append(tag).Append(attributes).Append('>').Append(WebUtility.HtmlEncode(text)).Append("</").Append(tag).Append(">\n");

    private static string Span(SeasonCourse course)
    {
        string[] days = [.. course.Season.Passes.Select(pass => pass.Time).OfType<DateTime>().Order().Select(day => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)).Distinct()];
        return days.Length switch { 0 => "", 1 => $" on {days[0]}", _ => $" from {days[0]} to {days[^1]}" };
    }

    private static string Less(SeasonMeasure measure, SeasonEntry entry, PassPrediction prediction) =>
        measure.Difference(entry, prediction) is { } one ? Readout.Lag.WithSign(one.Difference) : "";

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private static string Count(int count, string one, string many) => $"{count.ToString(CultureInfo.InvariantCulture)} {(count == 1 ? one : many)}";
}
