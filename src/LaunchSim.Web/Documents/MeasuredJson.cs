using System.Text.Json;
using LaunchSim.Dynamics;
using LaunchSim.Passes.Comparing;
using LaunchSim.Passes.Measured;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Web.Documents;

/// <summary>What was measured of a launch, for the front end: channel by channel beside the predicted course.</summary>
internal static class MeasuredJson
{
    /// <summary>Most values of a channel: more marks are not told apart.</summary>
    private const int MostValues = 1200;

    /// <summary>Writes the list of what was measured.</summary>
    /// <param name="json">The writer, within the launch's object.</param>
    /// <param name="pass">The pass.</param>
    /// <param name="readout">The units.</param>
    /// <param name="finest">Least time between two rows of the launch, s.</param>
    public static void Write(Utf8JsonWriter json, PassComparison pass, Readout readout, double finest)
    {
        double duration = pass.Run.Solution.Duration, step = ColumnJson.Step(duration, finest);
        int rows = pass.Run.Solution.Steps == 0 ? 0 : SampleGrid.Rows(duration, step);
        json.Texts("measuredNotes", pass.Logs.Select(log => pass.Logs.Count == 1 ? log.Log.Alignment.Words : $"{Path.GetFileName(log.File)}: {log.Log.Alignment.Words}"));
        json.WriteStartArray("measured");
        foreach (MeasuredQuantity quantity in pass.Channels.Select(channel => channel.Quantity).Distinct())
        {
            int[] channels = [.. Enumerable.Range(0, pass.Channels.Count).Where(i => pass.Channels[i].Quantity == quantity)];
            Scale scale = ChannelScale.Of(quantity, readout);
            json.WriteStartObject();
            json.WriteString("key", quantity.Key);
            json.WriteString("words", ChannelWords.Of(quantity));
            json.WriteString("end", quantity.Key.StartsWith("front", StringComparison.Ordinal) ? "front" : quantity.Key.StartsWith("rear", StringComparison.Ordinal) ? "rear" : "");
            json.WriteStartObject("unit");
            json.WriteString("unit", scale.Unit);
            json.WriteNumber("factor", scale.Factor);
            json.WriteNumber("decimals", scale.Decimals);
            json.WriteEndObject();
            ColumnJson.Write(json, "predicted", [.. Enumerable.Range(0, rows).Select(row => (float)pass.Predicted(channels[0], Math.Min(SampleGrid.Time(row, step), duration)))]);
            json.WriteStartArray("traces");
            foreach (int i in channels)
            {
                Trace(json, pass.Channels[i], duration);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Trace(Utf8JsonWriter json, PassChannel channel, double duration)
    {
        int[] within = [.. Enumerable.Range(0, channel.Times.Count).Where(i => channel.Times[i] >= 0 && channel.Times[i] <= duration)];
        int stride = Math.Max(1, (within.Length + MostValues - 1) / MostValues);
        int[] kept = [.. within.Where((_, place) => place % stride == 0)];
        json.WriteStartObject();
        json.WriteString("label", channel.Series[0].Source);
        ColumnJson.Write(json, "times", [.. kept.Select(i => (float)channel.Times[i])]);
        ColumnJson.Write(json, "values", [.. kept.Select(i => (float)channel.Values[i])]);
        json.WriteEndObject();
    }
}
