using System.Globalization;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Passes.Comparing;

/// <summary>What a pass over its prediction comes to, in sentences.</summary>
public static class PassWords
{
    private static readonly string[] Telling = ["rise_lag_s", "gap_lag_s", "separation_peak_m", "rear_rise_peak_m", "front_rise_peak_m", "mark_1_time_s", "acceleration_largest_mps2"];

    /// <summary>The sentences, the most telling first.</summary>
    /// <param name="comparison">The pass.</param>
    /// <param name="readout">The units.</param>
    public static IReadOnlyList<string> Of(PassComparison comparison, Readout readout)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        var sentences = new List<string>();
        if (Find(comparison, "rise_lag_s") is { } lag)
        {
            sentences.Add(Lag(lag, "comes up", "half its rise"));
        }

        if (Find(comparison, "gap_lag_s") is { } gap)
        {
            sentences.Add(Lag(gap, "gap opens", "the first 1/4 in"));
        }

        PassFigure[] held = [.. comparison.Figures.Where(figure => figure.Predicted is not null)];
        PassFigure[] beyond = [.. held.Where(figure => figure.IsBeyondDoubt == true)];
        if (held.Length > 0)
        {
            sentences.Add(beyond.Length == 0
                ? string.Create(CultureInfo.InvariantCulture, $"None of the {held.Length} figures is further from the prediction than the data's own doubt: the prediction holds as far as these data can tell.")
                : string.Create(CultureInfo.InvariantCulture, $"{beyond.Length} of {held.Length} figures {(beyond.Length == 1 ? "is" : "are")} further from the prediction than the data's own doubt (marked *): there the model's car is not yet this car."));
        }

        // Only figures without a sentence of their own.
        foreach (PassFigure figure in beyond.Where(figure => Telling.Contains(figure.Definition.Key) && !figure.Definition.Key.EndsWith("lag_s", StringComparison.Ordinal)).Take(3))
        {
            Scale scale = FigureFormat.ScaleOf(figure.Definition, readout);
            sentences.Add($"{figure.Definition.Name}: {scale.Text(figure.Measured)}, predicted {scale.Text(figure.Predicted!.Value)}.");
        }

        return sentences;
    }

    /// <summary>What is seen on the sheet, in one sentence without a full stop.</summary>
    internal static string Title(PassComparison comparison, Readout readout)
    {
        foreach (string key in Telling)
        {
            if (Find(comparison, key) is { Predicted: { } predicted } figure)
            {
                Scale scale = key.EndsWith("lag_s", StringComparison.Ordinal) ? Readout.Lag : FigureFormat.ScaleOf(figure.Definition, readout);
                return $"{figure.Definition.Name}: {scale.Text(figure.Measured)} measured, {scale.Text(predicted)} predicted";
            }
        }

        return comparison.Fits.Count > 0 ? FitTitle(comparison.Fits[0], readout) : "Measured over predicted";
    }

    /// <summary>How a channel fits, in one sentence without a full stop.</summary>
    internal static string FitTitle(ChannelFit fit, Readout readout)
    {
        Scale scale = ChannelScale.Of(fit.Channel.Quantity, readout);
        string words = ChannelWords.Of(fit.Channel.Quantity);
        return fit.Count == 0 ? $"{words}: nothing was recorded while the prediction lasts"
            : $"{words}: off by {scale.Text(Math.Abs(fit.Largest))} at most, {(fit.Largest > 0 ? "above" : "below")} the prediction at {Readout.Time.Text(fit.LargestAt)}";
    }

    private static string Lag(PassFigure figure, string does, string half)
    {
        const double Together = 0.005;
        string Said(double lag) => Math.Abs(lag) < Together ? "together" : $"{Readout.Lag.Text(Math.Abs(lag))} {(lag > 0 ? "after" : "before")} the rear";
        string predicted = figure.Predicted is { } value ? Said(value) == "together" ? "; predicted was together with it" : $"; predicted were {Said(value)}" : "";
        string measured = Said(figure.Measured) == "together" ? "together with the rear" : Said(figure.Measured);
        return $"The front {does} {measured} (±{Readout.Lag.Text(2 * figure.Sd)}, by {half} of each){predicted}.";
    }

    private static PassFigure? Find(PassComparison comparison, string key) => comparison.Figures.FirstOrDefault(figure => figure.Definition.Key == key);
}
