using System.Globalization;
using LaunchSim.Cli.Terminal;
using LaunchSim.Passes.Fitting;
using LaunchSim.Passes.Seen;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;

namespace LaunchSim.Cli.Output;

/// <summary>What passes say of a car, in words and tables.</summary>
internal static class FitText
{
    /// <summary>The whole report.</summary>
    /// <param name="result">What came of the fit.</param>
    /// <param name="readout">The units.</param>
    /// <param name="screen">Where it is read.</param>
    public static string Of(FitResult result, Readout readout, Screen screen)
    {
        Page page = new Page(screen).Heading(FitWords.Conclusion(result)).Line(FitWords.Intervals);
        Values(page, result);
        Channels(page, result, readout);
        Seen(page, result, readout);
        Clocks(page, result);
        foreach (string remark in result.Remarks)
        {
            _ = page.Blank().Line(remark);
        }

        string size = string.Create(CultureInfo.InvariantCulture, $"{result.DataCount:N0} numbers of data, misfit {result.Misfit:0.00} standard deviations, {result.Launches:N0} launches. {FitWords.Starts(result)}");
        return page.Blank().Line(size).Line(result.Converged ? "" : $"The solver did not come to an end of its own: {result.Reason}.").Line(LimitWords.Caution).ToString();
    }

    private static void Values(Page page, FitResult result)
    {
        var table = new TextTable(false, true, true, true, true);
        _ = table.Named("number", "in the file", "after the fit", "moved by", "better known");
        foreach (FittedValue value in result.Values.Where(value => value.IsTold))
        {
            table.Add(value.Parameter.Path, value.BeforeInShort, value.After, string.Create(CultureInfo.InvariantCulture, $"{value.Deviations:+0.0;-0.0;0.0} sd"), FitWords.Better(value));
        }

        _ = result.Values.Any(value => value.IsTold) ? page.Blank().Heading("Told by these passes").Table(table) : page;
        FittedValue[] held = [.. result.Values.Where(value => !value.IsTold)];
        if (held.Length > 0)
        {
            _ = page.Blank().Heading("Not told by these passes, held where the file has them");
            foreach (FittedValue value in held)
            {
                _ = page.Line($"{value.Parameter.Path}  {value.BeforeInShort}", 2);
            }
        }

        foreach ((FittedValue one, FittedValue other, double correlation) in FitWords.Pairs(result))
        {
            string together = correlation > 0 ? "both higher suits the passes nearly as well" : "one higher and the other lower suits the passes nearly as well";
            _ = page.Blank().Line(string.Create(CultureInfo.InvariantCulture, $"{one.Parameter.Path} and {other.Parameter.Path} hang together, correlation {correlation:+0.00;-0.00}: {together}."));
        }
    }

    private static void Channels(Page page, FitResult result, Readout readout)
    {
        if (result.Channels.Count == 0)
        {
            return;
        }

        var table = new TextTable(false, false, true, true, true);
        _ = table.Named("pass", "channel", "off by, file", "off by, fit", "noise");
        foreach (ChannelFit channel in result.Channels)
        {
            Scale scale = FitWords.FineScale(channel.Series.Quantity, readout);
            table.Add(channel.Pass, channel.Series.Quantity.Words, scale.Text(channel.Before), scale.Text(channel.After), scale.Text(channel.Series.Noise));
        }

        _ = page.Blank().Heading("Logs, root mean square of measured less predicted").Table(table, 2);
    }

    private static void Seen(Page page, FitResult result, Readout readout)
    {
        if (result.Seen.Count == 0)
        {
            return;
        }

        var table = new TextTable(false, false, false, false, false);
        _ = table.Named("pass", "what", "seen", "by the file", "by the fit");
        foreach (SeenFit pass in result.Seen)
        {
            for (int i = 0; i < pass.After.Count; i++)
            {
                table.Add(i == 0 ? pass.Pass : "", SeenText.Name(pass.After[i], readout), SeenText.Seen(pass.After[i]), SeenText.Predicted(pass.Before[i]), SeenText.Predicted(pass.After[i]));
            }
        }

        _ = page.Blank().Heading("Seen facts").Table(table, 2);
    }

    private static void Clocks(Page page, FitResult result)
    {
        if (result.Clocks.Count == 0)
        {
            return;
        }

        var table = new TextTable(false, true);
        foreach (ClockFit clock in result.Clocks)
        {
            table.Add(clock.Clock.Name, string.Create(CultureInfo.InvariantCulture, $"{1000 * clock.Shift:+0.0;-0.0;0.0} ±{2000 * clock.Sd:0.0} ms"));
        }

        _ = page.Blank().Heading("Clocks, by how much the release lies before their zero").Table(table);
    }
}
