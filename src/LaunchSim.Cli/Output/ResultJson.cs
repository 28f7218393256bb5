using System.Text.Encodings.Web;
using System.Text.Json;
using LaunchSim.Geometry;
using LaunchSim.Scenarios;

namespace LaunchSim.Cli.Output;

/// <summary>What every document of results has: program, version, scenario; and numbers that may be none.</summary>
internal static class ResultJson
{
    private static readonly JsonWriterOptions Options = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>A writer for a stream.</summary>
    /// <param name="stream">Where to.</param>
    public static Utf8JsonWriter Writer(Stream stream) => new(stream, Options);

    /// <summary>The head of a document.</summary>
    /// <param name="json">The writer, inside the document's object.</param>
    /// <param name="scenario">The scenario.</param>
    public static void Head(Utf8JsonWriter json, Scenario scenario)
    {
        json.WriteString("program", ProgramVersion.Name);
        json.WriteString("version", ProgramVersion.Text);
        json.WriteStartObject("scenario");
        json.WriteString("name", scenario.Name);
        json.WriteString("file", scenario.SourceFile);
        json.WriteString("hash", scenario.ContentHash);
        json.WriteEndObject();
    }

    /// <summary>A number, or null when there is none.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="key">Its key.</param>
    /// <param name="value">The value.</param>
    public static void Number(this Utf8JsonWriter json, string key, double? value)
    {
        if (value is { } number && double.IsFinite(number))
        {
            json.WriteNumber(key, number);
        }
        else
        {
            json.WriteNull(key);
        }
    }

    /// <summary>The static line in SI units.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="key">Its key.</param>
    /// <param name="line">The line.</param>
    public static void Line(this Utf8JsonWriter json, string key, StaticLine line)
    {
        json.WriteStartObject(key);
        json.LineBody(line);
        json.WriteEndObject();
    }

    /// <summary>The members of the static line, within an object that is open.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="line">The line.</param>
    public static void LineBody(this Utf8JsonWriter json, StaticLine line)
    {
        json.Number("anti_squat_percent", line.Percent);
        json.Number("instant_centre_ahead_m", line.InstantCentreAhead);
        json.Number("instant_centre_up_m", line.InstantCentreUp);
        json.Number("neutral_line_up_m", line.NeutralLineUp);
        json.WriteStartArray("bars");
        foreach (BarAngle bar in line.Bars)
        {
            json.WriteStartObject();
            json.WriteString("name", bar.Name);
            json.Number("climb_rad", bar.Climb);
            json.Number("length_m", bar.Length);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
