using System.Text.Json;
using LaunchSim.Passes.Fitting;
using LaunchSim.Passes.Seen;
using LaunchSim.Scenarios;

namespace LaunchSim.Cli.Output;

/// <summary>What passes say of a car as a document, SI units.</summary>
internal static class FitJson
{
    /// <summary>Writes the document.</summary>
    /// <param name="result">What came of the fit.</param>
    /// <param name="file">The scenario that was fitted.</param>
    /// <param name="stream">Where to.</param>
    public static void Write(FitResult result, Scenario file, Stream stream)
    {
        using Utf8JsonWriter json = ResultJson.Writer(stream);
        json.WriteStartObject();
        ResultJson.Head(json, file);
        json.WriteString("conclusion", FitWords.Conclusion(result));
        json.WriteNumber("data", result.DataCount);
        json.Number("misfit", result.Misfit);
        json.WriteNumber("launches", result.Launches);
        json.WriteBoolean("converged", result.Converged);
        json.WriteStartArray("sums_of_starts");
        foreach (double sum in result.SumsOfStarts)
        {
            json.WriteNumberValue(sum);
        }

        json.WriteEndArray();
        Values(json, result);
        Channels(json, result);
        Seen(json, result);
        json.WriteStartArray("clocks");
        foreach (ClockFit clock in result.Clocks)
        {
            json.WriteStartObject();
            json.WriteString("clock", clock.Clock.Name);
            json.Number("shift_s", clock.Shift);
            json.Number("sd_s", clock.Sd);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("remarks");
        foreach (string remark in result.Remarks)
        {
            json.WriteStringValue(remark);
        }

        json.WriteEndArray();
        json.WriteEndObject();
        json.Flush();
        stream.WriteByte((byte)'\n');
    }

    private static void Values(Utf8JsonWriter json, FitResult result)
    {
        json.WriteStartArray("values");
        for (int i = 0; i < result.Values.Count; i++)
        {
            FittedValue value = result.Values[i];
            json.WriteStartObject();
            json.WriteString("path", value.Parameter.Path);
            json.WriteString("kind", value.Parameter.IsClicks ? "clicks_off" : value.Parameter.Number.Doubt.IsPercent ? "factor" : "value");
            json.WriteBoolean("told", value.IsTold);
            json.Number("value", value.Value);
            json.Number("half_width_95", value.HalfWidth);
            json.Number("moved_by_sd", value.Deviations);
            json.Number("share_of_doubt_left", value.Sd);
            json.WriteString("before", value.Before);
            json.WriteString("after", value.After);
            json.WriteStartObject("correlations");
            for (int j = 0; j < result.Values.Count; j++)
            {
                if (j != i)
                {
                    json.Number(result.Values[j].Parameter.Path, result.Correlations[i, j]);
                }
            }

            json.WriteEndObject();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Channels(Utf8JsonWriter json, FitResult result)
    {
        json.WriteStartArray("channels");
        foreach (ChannelFit channel in result.Channels)
        {
            json.WriteStartObject();
            json.WriteString("pass", channel.Pass);
            json.WriteString("log", channel.Log);
            json.WriteString("quantity", channel.Series.Quantity.Key);
            json.WriteNumber("spans", channel.Course.Count);
            json.Number("rms_before", channel.Before);
            json.Number("rms_after", channel.After);
            json.Number("noise", channel.Noise);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Seen(Utf8JsonWriter json, FitResult result)
    {
        json.WriteStartArray("seen");
        foreach (SeenFit pass in result.Seen)
        {
            for (int i = 0; i < pass.After.Count; i++)
            {
                SeenComparison after = pass.After[i];
                json.WriteStartObject();
                json.WriteString("pass", pass.Pass);
                json.WriteString("what", after.Key);
                json.WriteString("seen", after.Written);
                json.WriteString("by_the_file", SeenText.Predicted(pass.Before[i]));
                json.WriteString("by_the_fit", SeenText.Predicted(after));
                json.WriteEndObject();
            }
        }

        json.WriteEndArray();
    }
}
