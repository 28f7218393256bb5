using System.Text;
using System.Text.Json;
using LaunchSim.Passes.Scales;

namespace LaunchSim.Cli.Output;

/// <summary>What scales and tape told as a JSON document, SI units.</summary>
internal static class ScalesJson
{
    /// <summary>The document, ended by a line feed.</summary>
    /// <param name="result">What was found.</param>
    public static string Text(ScaleResult result)
    {
        using var stream = new MemoryStream();
        using (Utf8JsonWriter json = ResultJson.Writer(stream))
        {
            json.WriteStartObject();
            json.WriteString("program", ProgramVersion.Name);
            json.WriteString("version", ProgramVersion.Text);
            json.WriteString("sheet", result.Sheet.SourceFile);
            json.WriteString("name", result.Sheet.Name);
            Doubted(json, "height", "m", result.Up);
            Doubted(json, "ahead_of_rear_axle", "m", result.Ahead);
            Doubted(json, "left_of_middle", "m", result.Left);
            Doubted(json, "weight", "n", result.Weight);
            json.Number("left_share", result.LeftShare);
            json.WriteStartObject("height_variance_share");
            foreach ((ScaleCause cause, double share) in result.HeightShares)
            {
                json.Number(JsonNamingPolicy.SnakeCaseLower.ConvertName(cause.ToString()), share);
            }

            json.WriteEndObject();
            json.WriteStartArray("slopes_rad");
            foreach (double slope in result.Slopes)
            {
                json.WriteNumberValue(slope);
            }

            json.WriteEndArray();
            json.WriteStartArray("readings");
            foreach (ScaleRow row in result.Rows)
            {
                json.WriteStartObject();
                json.WriteString("reading", row.Words);
                json.WriteString("place", row.Place);
                json.WriteString("unit", row.Cause == ScaleCause.Scales ? "N" : "m");
                json.Number("lift", row.Lift < 0 ? null : row.Lift + 1);
                json.Number("read", row.Read);
                json.Number("half_width", row.HalfWidth);
                json.WriteBoolean("entered_doubt", row.IsEntered);
                json.Number("fitted", row.Fitted);
                json.Number("height_variance_share", row.HeightShare);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.Number("sum_of_squares", result.SumOfSquares);
            json.WriteNumber("degrees_of_freedom", result.DegreesOfFreedom);
            json.Number("agreement", result.Agreement);
            if (result.Better is { } better)
            {
                json.WriteStartObject("better_lift");
                json.WriteString("raised", better.RaisesFront ? "front" : "rear");
                json.Number("height_m", better.Height);
                json.Number("slope_rad", better.Slope);
                json.Number("height_half_width_m", better.HalfWidth);
                json.WriteBoolean("suffices", better.Suffices);
                json.WriteEndObject();
            }
            else
            {
                json.WriteNull("better_lift");
            }

            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length) + "\n";
    }

    private static void Doubted(Utf8JsonWriter json, string key, string unit, DoubtedValue? value)
    {
        json.Number($"{key}_{unit}", value?.Value);
        json.Number($"{key}_half_width_{unit}", value?.HalfWidth);
    }
}
