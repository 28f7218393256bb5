using System.Text;
using System.Text.Json;
using LaunchSim.Passes.Dyno;

namespace LaunchSim.Cli.Output;

/// <summary>Damper tables from dyno sheets as a JSON document, SI units.</summary>
internal static class DamperJson
{
    /// <summary>The document, ended by a line feed.</summary>
    /// <param name="table">The tables.</param>
    public static string Text(DamperTable table)
    {
        using var stream = new MemoryStream();
        using (Utf8JsonWriter json = ResultJson.Writer(stream))
        {
            json.WriteStartObject();
            json.WriteString("program", ProgramVersion.Name);
            json.WriteString("version", ProgramVersion.Text);
            json.WriteStartArray("sheets");
            foreach (DamperMeasurement one in table.Measurements)
            {
                json.WriteStartObject();
                json.WriteString("file", one.Run.Source);
                json.Number("click", one.Run.Click);
                json.WriteNumber("rows", one.Velocities.Count);
                json.Number("gas_force_n", one.GasForce);
                json.Number("gas_swing_n", one.GasSwing);
                json.Number("gas_rate_npm", one.GasRate);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            Side(json, table.Extension);
            Side(json, table.Compression);
            json.WriteStartArray("notes");
            foreach (string note in table.Notes)
            {
                json.WriteStringValue(note);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length) + "\n";
    }

    private static void Side(Utf8JsonWriter json, DamperSide side)
    {
        json.WriteStartObject(side.Name);
        Row(json, "speed_mps", side.Speeds);
        json.Number("fastest_measured_mps", side.FastestMeasured);
        json.WriteBoolean("same_for_all_clicks", side.IsSameForAllClicks);
        json.WriteStartArray("rows");
        foreach (DamperRow row in side.Rows)
        {
            json.WriteStartObject();
            json.Number("click", row.Click);
            Row(json, "force_n", row.Forces);
            Row(json, "hysteresis_n", row.Hysteresis);
            json.Number("doubt_percent", row.DoubtPercent);
            json.Number("evened_n", row.Evened);
            json.WriteNumber("points", row.Points);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Row(Utf8JsonWriter json, string key, IReadOnlyList<double> values)
    {
        json.WriteStartArray(key);
        foreach (double value in values)
        {
            if (double.IsFinite(value))
            {
                json.WriteNumberValue(value);
            }
            else
            {
                json.WriteNullValue();
            }
        }

        json.WriteEndArray();
    }
}
