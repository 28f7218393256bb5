using System.Globalization;
using LaunchSim.Cli.Terminal;
using LaunchSim.Passes.Comparing;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;

namespace LaunchSim.Cli.Output;

/// <summary>A pass over its prediction in words and tables.</summary>
internal static class PassText
{
    /// <summary>The whole text.</summary>
    /// <param name="comparison">The pass.</param>
    /// <param name="readout">The units.</param>
    /// <param name="screen">Where it is read.</param>
    public static string Of(PassComparison comparison, Readout readout, Screen screen)
    {
        Page page = new(screen);
        _ = page.Heading($"{comparison.Run.Scenario.Name} ({comparison.Run.Scenario.SourceFile}), measured over predicted");
        foreach (ComparedLog log in comparison.Logs)
        {
            _ = page.Line($"{log.File}: {log.Log.Alignment.Words}");
            foreach (string remark in log.Log.Remarks)
            {
                _ = page.Line(remark, 2);
            }
        }

        _ = page.Blank();
        foreach (string sentence in PassWords.Of(comparison, readout))
        {
            _ = page.Line(sentence);
        }

        if (comparison.Run.Failure is { } failure)
        {
            _ = page.Line($"The predicted run stopped: {FailureWords.Of(failure)} What is predicted holds up to there.");
        }

        Figures(page, comparison, readout);
        Speeds(page, comparison, readout);
        Channels(page, comparison, readout);
        return page.Blank().Line(LimitWords.Caution).ToString();
    }

    private static void Figures(Page page, PassComparison comparison, Readout readout)
    {
        if (comparison.Figures.Count == 0)
        {
            _ = page.Blank().Line("No figure can be read off these data: figures need a gap, a ride height, a damper's travel, an acceleration or the speed over the ground.");
            return;
        }

        var table = new TextTable(false, true, true, true, true, false, false, false);
        _ = table.Named("", "measured", "±", "predicted", "less", "", "unit", "read off");
        foreach (PassFigure figure in comparison.Figures)
        {
            Scale scale = FigureFormat.ScaleOf(figure.Definition, readout);
            table.Add(figure.Definition.Name, scale.Number(figure.Measured), scale.Number(2 * figure.Sd), figure.Predicted is { } predicted ? scale.Number(predicted) : "none", Signed(scale, figure.Difference), figure.IsBeyondDoubt == true ? "*" : "", scale.Unit, figure.Source);
        }

        _ = page.Blank().Heading("Figures (± holds nineteen times in twenty; less is measured less predicted)").Table(table);
    }

    private static void Speeds(Page page, PassComparison comparison, Readout readout)
    {
        if (comparison.Readings.Count == 0)
        {
            return;
        }

        var table = new TextTable(false, true, true, true, true, true, false, false);
        _ = table.Named("", "at", "measured", "±", "predicted", "less", "", "unit");
        foreach (InstantReading reading in comparison.Readings)
        {
            Scale scale = ChannelScale.Of(reading.Channel.Quantity, readout);
            double less = reading.Measured - reading.Predicted;
            table.Add(ChannelWords.Of(reading.Channel.Quantity), Readout.Time.With(2).Text(reading.Time), scale.Number(reading.Measured), scale.Number(2 * reading.Sd), scale.Number(reading.Predicted), Signed(scale, less), Math.Abs(less) > 2 * reading.Sd ? "*" : "", scale.Unit);
        }

        _ = page.Blank().Heading("Speeds").Table(table);
    }

    private static void Channels(Page page, PassComparison comparison, Readout readout)
    {
        var table = new TextTable(false, true, true, true, true, true, false, false);
        _ = table.Named("", "values", "rms off", "mean off", "most off", "at", "unit", "from");
        foreach (ChannelFit fit in comparison.Fits)
        {
            Scale scale = ChannelScale.Of(fit.Channel.Quantity, readout);
            string source = string.Join(", ", fit.Channel.Series.Select(series => series.Source));
            string count = fit.Count.ToString(CultureInfo.InvariantCulture);
            if (fit.Count == 0)
            {
                table.Add(ChannelWords.Of(fit.Channel.Quantity), count, "", "", "", "", "", source);
            }
            else
            {
                table.Add(ChannelWords.Of(fit.Channel.Quantity), count, scale.Number(fit.Rms), Signed(scale, fit.Mean), Signed(scale, fit.Largest), Readout.Time.Text(fit.LargestAt), scale.Unit, source);
            }
        }

        _ = page.Blank().Heading("Channels, from the release to the prediction's end").Table(table);
    }

    private static string Signed(Scale scale, double? value)
    {
        if (value is not { } number || !double.IsFinite(number))
        {
            return "";
        }

        string text = scale.Number(number);
        return text[0] == '-' || scale.IsZero(number) ? text : "+" + text;
    }
}
