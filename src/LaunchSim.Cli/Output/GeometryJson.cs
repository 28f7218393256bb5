using System.Text;
using System.Text.Json;
using LaunchSim.Geometry;
using LaunchSim.Reports;

namespace LaunchSim.Cli.Output;

/// <summary>The side view as a JSON document, SI units.</summary>
internal static class GeometryJson
{
    /// <summary>The document, ended by a line feed.</summary>
    /// <param name="report">What the side view tells.</param>
    public static string Text(GeometryReport report)
    {
        using var stream = new MemoryStream();
        using (Utf8JsonWriter json = ResultJson.Writer(stream))
        {
            json.WriteStartObject();
            ResultJson.Head(json, report.Scenario);
            json.WriteString("car", report.IsStanding ? "standing" : "measured");
            json.Line("statics", report.View.Line);
            Holes(json, report);
            json.WriteStartObject("sensitivity");
            json.Number("centre_of_gravity_step_m", report.CentreOfGravity.Step);
            json.Number("centre_of_gravity_percent", report.CentreOfGravity.Percent);
            json.Number("end_step_m", report.EndStep);
            json.WriteStartArray("ends");
            foreach (EndSensitivity end in report.Ends)
            {
                json.WriteStartObject();
                json.WriteString("end", JsonNamingPolicy.SnakeCaseLower.ConvertName(end.Point.ToString()));
                json.Number("up_percent", end.PercentUp);
                json.Number("ahead_percent", end.PercentAhead);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
            Travel(json, report.Travel);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length) + "\n";
    }

    private static void Holes(Utf8JsonWriter json, GeometryReport report)
    {
        json.WriteStartArray("holes");
        foreach (HoleRow row in report.Holes)
        {
            json.WriteStartObject();
            json.WriteStartObject("use");
            for (int i = 0; i < row.Holes.Count; i++)
            {
                json.WriteString(report.Brackets[i], row.Holes[i]);
            }

            json.WriteEndObject();
            json.WriteBoolean("present", row.Present);
            json.WriteBoolean("possible", row.Line is not null);
            if (row.Line is { } line)
            {
                json.LineBody(line);
                json.WriteStartObject("longer_m");
                foreach (BarChange bar in row.Bars)
                {
                    json.Number(bar.Name, bar.Change);
                }

                json.WriteEndObject();
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Travel(Utf8JsonWriter json, IReadOnlyList<TravelRow>? rows)
    {
        if (rows is null)
        {
            json.WriteNull("travel");
            return;
        }

        json.WriteStartArray("travel");
        foreach (TravelRow row in rows)
        {
            json.WriteStartObject();
            json.Number("body_up_m", row.BodyUp);
            json.LineBody(row.Line);
            json.Number("pinion_change_rad", row.PinionChange);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
