using System.Text.Json;
using LaunchSim.Passes.Comparing;
using LaunchSim.Passes.Seasons;
using LaunchSim.Passes.Seen;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Cli.Output.Seasons;

/// <summary>A season as a document, SI units.</summary>
internal static class SeasonJson
{
    /// <summary>Writes the document.</summary>
    /// <param name="course">The season.</param>
    /// <param name="lessons">What it shows; null when that was not asked for.</param>
    /// <param name="stream">Where to.</param>
    public static void Write(SeasonCourse course, IReadOnlyList<SeasonLesson>? lessons, Stream stream)
    {
        using Utf8JsonWriter json = ResultJson.Writer(stream);
        json.WriteStartObject();
        json.WriteString("program", ProgramVersion.Name);
        json.WriteString("version", ProgramVersion.Text);
        json.WriteString("season", course.Season.Name);
        json.WriteString("fitted", course.Season.Fitted?.SourceFile);
        json.WriteStartArray("passes");
        IReadOnlyList<SeasonMeasure> measures = SeasonMeasure.Of(course);
        foreach (SeasonEntry entry in course.Entries)
        {
            json.WriteStartObject();
            Pass(json, entry);
            json.WriteStartArray("times");
            foreach (SeasonMeasure measure in measures)
            {
                Time(json, measure, entry);
            }

            json.WriteEndArray();
            Logged(json, entry.Figures);
            Facts(json, "seen", entry.Predicted.Comparisons);
            if (entry.Fitted is { } fitted)
            {
                Facts(json, "seen_beside_fitted", fitted.Comparisons);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
        if (lessons is not null)
        {
            json.WriteStartArray("learned");
            foreach (SeasonLesson lesson in lessons)
            {
                json.WriteStartObject();
                json.WriteString("about", lesson.Kind.ToString().ToLowerInvariant());
                json.WriteString("text", lesson.Text);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        json.WriteEndObject();
        json.Flush();
        stream.WriteByte((byte)'\n');
    }

    private static void Pass(Utf8JsonWriter json, SeasonEntry entry)
    {
        PassFile pass = entry.Pass;
        json.WriteNumber("pass", entry.Number);
        json.WriteString("file", pass.SourceFile);
        json.WriteString("name", pass.Name);
        json.WriteString("when", pass.When);
        json.WriteString("car", pass.CarFile);
        json.WriteString("hash", pass.Scenario.ContentHash);
        json.WriteStartObject("changed");
        foreach ((string path, string value) in pass.Changed)
        {
            json.WriteString(path, value);
        }

        json.WriteEndObject();
        json.WriteStartArray("changed_since_the_pass_before");
        foreach (Studies.Comparing.WrittenDifference change in entry.Changes ?? [])
        {
            json.WriteStartObject();
            json.WriteString("path", change.Path);
            json.WriteString("was", change.Texts[0]);
            json.WriteString("is", change.Texts[1]);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteString("track", pass.Track);
        json.WriteString("weather", pass.Weather);
        json.WriteString("notes", pass.Notes);
        json.WriteString("shake", pass.Seen.Shake is { } shake ? SeasonWords.Of(shake) : null);
        json.WriteString("first_up", pass.Seen.FirstUp?.ToString().ToLowerInvariant());
        json.WriteBoolean("closed", pass.IsClosed);
        json.WriteNumber("corrections", pass.Corrections.Count);
    }

    private static void Time(Utf8JsonWriter json, SeasonMeasure measure, SeasonEntry entry)
    {
        (double Time, double Sd)? seen = measure.Seen(entry);
        json.WriteStartObject();
        json.WriteString("key", measure.Key);
        json.Number("mark_m", measure.Mark);
        json.Number("measured_s", seen?.Time);
        json.Number("measured_sd_s", seen?.Sd);
        json.Number("predicted_s", measure.Predicted(entry.Predicted));
        json.Number("fitted_s", entry.Fitted is { } fitted ? measure.Predicted(fitted) : null);
        json.WriteEndObject();
    }

    private static void Logged(Utf8JsonWriter json, IReadOnlyList<PassFigure> figures)
    {
        json.WriteStartArray("logged");
        foreach (PassFigure figure in figures)
        {
            json.WriteStartObject();
            json.WriteString("key", figure.Definition.Key);
            json.Number("measured", figure.Measured);
            json.Number("measured_sd", figure.Sd);
            json.Number("predicted", figure.Predicted);
            json.WriteString("source", figure.Source);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Facts(Utf8JsonWriter json, string name, IReadOnlyList<SeenComparison> facts)
    {
        json.WriteStartArray(name);
        foreach (SeenComparison fact in facts)
        {
            json.WriteStartObject();
            SeenJson.Members(json, fact);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
