using System.Globalization;
using LaunchSim.Cli.Terminal;
using LaunchSim.Passes.Torque;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Cli.Output;

/// <summary>A torque table out of a pass, in words and tables.</summary>
internal static class TorqueText
{
    // Beyond these nobody looks.
    private const int Causes = 6;

    /// <summary>The whole text; the lines to paste come last.</summary>
    /// <param name="result">What was found.</param>
    /// <param name="yaml">The lines to paste.</param>
    /// <param name="remarks">What was found while reading logs.</param>
    /// <param name="readout">The units.</param>
    /// <param name="screen">Where it is read.</param>
    public static string Of(TorqueResult result, string yaml, IReadOnlyList<string> remarks, Readout readout, Screen screen)
    {
        TorqueRow row = result.Row;
        Scale torque = readout.Torque;
        string what = row.IsEngine ? "Engine torque" : "Torque of both axle shafts";
        string how = result.Factor is { } factor ? string.Create(CultureInfo.InvariantCulture, $", {factor:F3} of the file's") : "";
        Page page = new Page(screen)
            .Heading(string.Create(CultureInfo.InvariantCulture, $"{what}: {torque.Text(row.Torques.Max())} at its largest, ±{row.Percent:F0} % as a whole{how}"))
            .Blank();
        var table = new TextTable(true, true, true, true).Named(row.IsEngine ? "speed" : "time", "torque", "±", "in the file");
        for (int i = 0; i < row.At.Count; i++)
        {
            table.Add(row.IsEngine ? Readout.Rotation.Text(row.At[i]) : Readout.Time.Text(row.At[i]), torque.Text(row.Torques[i]), torque.Text(row.HalfWidths[i]), torque.Text(result.Own[i]));
        }

        _ = page.Table(table).Line("± holds nineteen times in twenty.").Blank().Heading("Where the doubt comes from");
        var causes = new TextTable(true, false);
        foreach (TorqueCause cause in result.Causes.Take(Causes))
        {
            causes.Add(string.Create(CultureInfo.InvariantCulture, $"{cause.Percent:F1} %"), cause.Words);
        }

        _ = page.Table(causes);
        if (result.Channels.Count > 0)
        {
            var channels = new TextTable(false, true, true, true).Named("channel", "spans", "with the file's torque", "with this one");
            foreach (TorqueChannel channel in result.Channels)
            {
                channels.Add(channel.Words, channel.Spans.ToString(CultureInfo.InvariantCulture), Size(channel.Before), Size(channel.After));
            }

            _ = page.Blank().Heading("Measured less predicted, in standard deviations of the channel").Table(channels);
        }

        foreach (string note in result.Notes.Concat(remarks))
        {
            _ = page.Line(note);
        }

        return page.Blank().Heading(row.IsEngine ? "To paste below driveline.engine, in the place of its two rows" : yaml.StartsWith("driveline:", StringComparison.Ordinal) ? "To paste in the place of the driveline" : "To paste below driveline, in the place of its two rows") + yaml;
    }

    private static string Size(double value) => double.IsFinite(value) ? value.ToString("F1", CultureInfo.InvariantCulture) : "";
}
