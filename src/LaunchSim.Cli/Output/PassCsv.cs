using System.Globalization;
using System.Text;
using LaunchSim.Passes.Comparing;

namespace LaunchSim.Cli.Output;

/// <summary>The data of a pass beside the prediction, a row for each value, SI units.</summary>
internal static class PassCsv
{
    /// <summary>Writes it.</summary>
    /// <param name="comparison">The pass.</param>
    /// <param name="stream">Where to.</param>
    public static void Write(PassComparison comparison, Stream stream)
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(false), 1 << 16, leaveOpen: true) { NewLine = "\n" };
        writer.Write(OutputKind.MeasuredRows.Begins);
        writer.Write("measured,predicted\n");
        for (int i = 0; i < comparison.Channels.Count; i++)
        {
            PassChannel channel = comparison.Channels[i];
            string source = Quoted(string.Join("; ", channel.Series.Select(series => series.Source)));
            for (int row = 0; row < channel.Times.Count; row++)
            {
                writer.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{channel.Quantity.Key},{source},{Number(channel.Times[row])},{Number(channel.Values[row])},{Number(comparison.Predicted(i, channel.Times[row]))}"));
            }
        }
    }

    private static string Number(double value) => double.IsFinite(value) ? (value + 0.0).ToString(CultureInfo.InvariantCulture) : "";

    private static string Quoted(string text) =>
        text.AsSpan().IndexOfAny(",\"\n\r") < 0 ? text : $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
