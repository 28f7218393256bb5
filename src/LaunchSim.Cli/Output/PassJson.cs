using System.Text;
using System.Text.Json;
using LaunchSim.Passes.Comparing;
using LaunchSim.Passes.Measured;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Cli.Output;

/// <summary>A pass over its prediction as a JSON document; numbers in SI units.</summary>
internal static class PassJson
{
    /// <summary>The document, ended by a line feed.</summary>
    /// <param name="comparison">The pass.</param>
    /// <param name="readout">Units of the sentences.</param>
    public static string Text(PassComparison comparison, Readout readout)
    {
        using var stream = new MemoryStream();
        using (Utf8JsonWriter json = ResultJson.Writer(stream))
        {
            json.WriteStartObject();
            ResultJson.Head(json, comparison.Run.Scenario);
            json.WriteString("status", comparison.Run.Failure is null ? "done" : "stopped");
            Array(json, "logs", comparison.Logs, log => Log(json, log));
            json.WriteStartArray("summary");
            foreach (string sentence in PassWords.Of(comparison, readout))
            {
                json.WriteStringValue(sentence);
            }

            json.WriteEndArray();
            json.WriteStartObject("figures");
            foreach (PassFigure figure in comparison.Figures)
            {
                json.WriteStartObject(figure.Definition.Key);
                json.Number("measured", figure.Measured);
                json.Number("sd", figure.Sd);
                json.Number("predicted", figure.Predicted);
                json.Number("difference", figure.Difference);
                json.WriteString("source", figure.Source);
                json.WriteEndObject();
            }

            json.WriteEndObject();
            Array(json, "readings", comparison.Readings, reading =>
            {
                json.WriteString("quantity", reading.Channel.Quantity.Key);
                json.Number("time_s", reading.Time);
                json.Number("measured", reading.Measured);
                json.Number("sd", reading.Sd);
                json.Number("predicted", reading.Predicted);
            });
            Array(json, "channels", comparison.Fits, fit =>
            {
                json.WriteString("quantity", fit.Channel.Quantity.Key);
                json.WriteString("source", string.Join("; ", fit.Channel.Series.Select(series => series.Source)));
                json.WriteNumber("values", fit.Count);
                json.Number("rms_off", fit.Rms);
                json.Number("mean_off", fit.Mean);
                json.Number("most_off", fit.Count == 0 ? null : fit.Largest);
                json.Number("most_off_time_s", fit.LargestAt);
            });
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length) + "\n";
    }

    private static void Log(Utf8JsonWriter json, ComparedLog log)
    {
        json.WriteString("file", log.File);
        json.Number("release_s", log.Log.Alignment.Shift);
        json.Number("release_sd_s", log.Log.Alignment.Sd);
        json.WriteString("method", log.Log.Alignment.Method);
        json.WriteString("words", log.Log.Alignment.Words);
        json.WriteStartArray("remarks");
        foreach (string remark in log.Log.Remarks)
        {
            json.WriteStringValue(remark);
        }

        json.WriteEndArray();
        Array(json, "series", log.Log.Series, series => Series(json, series));
    }

    private static void Series(Utf8JsonWriter json, MeasuredSeries series)
    {
        json.WriteString("quantity", series.Quantity.Key);
        json.WriteString("source", series.Source);
        json.WriteNumber("values", series.Values.Count);
        json.Number("noise_sd", series.Noise);
        json.Number("scale_sd", series.ScaleDoubt);
    }

    private static void Array<T>(Utf8JsonWriter json, string key, IEnumerable<T> items, Action<T> members)
    {
        json.WriteStartArray(key);
        foreach (T item in items)
        {
            json.WriteStartObject();
            members(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
