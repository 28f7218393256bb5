using System.Text;
using System.Text.Json;
using LaunchSim.Passes.Torque;
using LaunchSim.Scenarios;

namespace LaunchSim.Cli.Output;

/// <summary>A torque table out of a pass as a JSON document, SI units.</summary>
internal static class TorqueJson
{
    /// <summary>The document, ended by a line feed.</summary>
    /// <param name="result">What was found.</param>
    /// <param name="scenario">The set-up.</param>
    /// <param name="remarks">What was found while reading logs.</param>
    public static string Text(TorqueResult result, Scenario scenario, IReadOnlyList<string> remarks)
    {
        using var stream = new MemoryStream();
        using (Utf8JsonWriter json = ResultJson.Writer(stream))
        {
            json.WriteStartObject();
            ResultJson.Head(json, scenario);
            json.WriteString("table", result.Row.IsEngine ? "driveline.engine.torque" : "driveline.torque");
            Row(json, result.Row.IsEngine ? "speed_radps" : "time_s", result.Row.At);
            Row(json, "torque_nm", result.Row.Torques);
            Row(json, "half_width_nm", result.Row.HalfWidths);
            Row(json, "file_torque_nm", result.Own);
            json.Number("doubt_percent", result.Row.Percent);
            json.Number("factor", result.Factor);
            json.WriteStartArray("causes");
            foreach (TorqueCause cause in result.Causes)
            {
                json.WriteStartObject();
                json.WriteString("cause", cause.Words);
                json.Number("percent", cause.Percent);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteStartArray("channels");
            foreach (TorqueChannel channel in result.Channels)
            {
                json.WriteStartObject();
                json.WriteString("channel", channel.Words);
                json.WriteNumber("spans", channel.Spans);
                json.Number("before_sd", channel.Before);
                json.Number("after_sd", channel.After);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteStartArray("notes");
            foreach (string note in result.Notes.Concat(remarks))
            {
                json.WriteStringValue(note);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length) + "\n";
    }

    private static void Row(Utf8JsonWriter json, string key, IReadOnlyList<double> values)
    {
        json.WriteStartArray(key);
        foreach (double value in values)
        {
            json.WriteNumberValue(value);
        }

        json.WriteEndArray();
    }
}
