using LaunchSim.Charts;
using LaunchSim.Charts.Measured;
using LaunchSim.Passes.Measured;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Passes.Comparing;

/// <summary>Pictures of a pass over its prediction.</summary>
public static class PassPictures
{
    private const double Step = 2e-3;

    /// <summary>Plain names of the charts, for file names: a chart for each quantity that was measured.</summary>
    /// <param name="comparison">The pass.</param>
    public static IReadOnlyList<string> Names(PassComparison comparison)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        return [.. comparison.Channels.Select(channel => Name(channel.Quantity)).Distinct()];
    }

    /// <summary>A chart for each quantity that was measured.</summary>
    /// <param name="comparison">The pass.</param>
    /// <param name="readout">The units.</param>
    /// <param name="program">Program and version, for the foot.</param>
    public static IReadOnlyList<(string Name, Picture Picture)> Charts(PassComparison comparison, Readout readout, string program)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        double duration = comparison.Run.Solution.Duration;
        return [.. Panels(comparison, readout).Select(panel => (panel.Name, MeasuredCharts.Chart(panel, Text(panel.Title, comparison, readout, program), duration)))];
    }

    /// <summary>One sheet of what was measured first of the register.</summary>
    /// <param name="comparison">The pass.</param>
    /// <param name="readout">The units.</param>
    /// <param name="program">Program and version, for the foot.</param>
    public static Picture Sheet(PassComparison comparison, Readout readout, string program)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        ArgumentNullException.ThrowIfNull(readout);
        return MeasuredCharts.Sheet(Panels(comparison, readout), Text(PassWords.Title(comparison, readout), comparison, readout, program), comparison.Run.Solution.Duration);
    }

    private static List<MeasuredPanel> Panels(PassComparison comparison, Readout readout)
    {
        double duration = comparison.Run.Solution.Duration;
        var panels = new List<MeasuredPanel>();
        foreach (MeasuredQuantity quantity in comparison.Channels.Select(channel => channel.Quantity).Distinct())
        {
            int[] all = [.. Enumerable.Range(0, comparison.Channels.Count).Where(i => comparison.Channels[i].Quantity == quantity)];
            (double, double)[] predicted = [.. Enumerable.Range(0, (int)Math.Floor(duration / Step) + 1).Select(i => (i * Step, comparison.Predicted(all[0], i * Step)))];
            panels.Add(new MeasuredPanel(
                Name(quantity), ChannelWords.Of(quantity), PassWords.FitTitle(comparison.Fits[all[0]], readout), ChannelScale.Of(quantity, readout), ChannelScale.Least(quantity), predicted,
                [.. all.Select(i => new MeasuredTrace(comparison.Channels[i].Series[0].Source, comparison.Channels[i].Times, comparison.Channels[i].Values))]));
        }

        return panels;
    }

    private static MeasuredPageText Text(string title, PassComparison comparison, Readout readout, string program) => new(
        title, $"Line: predicted. Marks: measured. {string.Join(" ", comparison.Logs.Select(log => comparison.Logs.Count == 1 ? log.Log.Alignment.Words : $"{Path.GetFileName(log.File)}: {log.Log.Alignment.Words}"))}",
        $"{(readout.IsShop ? "Shop" : "SI")} units · {program} · {comparison.Run.Scenario.ContentHash[..8]} · {comparison.Run.Scenario.Name.ReplaceLineEndings(" ")} · {string.Join(", ", comparison.Logs.Select(log => Path.GetFileName(log.File)))}");

    private static string Name(MeasuredQuantity quantity) => quantity.Key.Replace('_', '-');
}
