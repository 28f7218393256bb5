using LaunchSim.Figures;

namespace LaunchSim.Passes.Comparing;

/// <summary>A figure read off the data, beside the predicted one.</summary>
/// <param name="Definition">What it is: its key is that of the predicted figure.</param>
/// <param name="Measured">As measured, SI.</param>
/// <param name="Sd">One standard deviation of that, SI: noise, scale and the release's doubt together.</param>
/// <param name="Predicted">As predicted, SI; null when the prediction has none.</param>
/// <param name="Source">What it was read off, in a few words.</param>
public sealed record PassFigure(FigureDefinition Definition, double Measured, double Sd, double? Predicted, string Source)
{
    /// <summary>Measured less predicted, SI; null when the prediction has none.</summary>
    public double? Difference => Measured - Predicted;

    /// <summary>Whether the difference is more than the data's own doubt explains, nineteen times in twenty; null without a difference.</summary>
    public bool? IsBeyondDoubt => Difference is { } difference ? Math.Abs(difference) > 2 * Sd : null;
}

/// <summary>A quantity at an instant, as measured and as predicted.</summary>
/// <param name="Channel">The channel.</param>
/// <param name="Time">Seconds since release.</param>
/// <param name="Measured">As measured, SI.</param>
/// <param name="Sd">One standard deviation of that, SI.</param>
/// <param name="Predicted">As predicted, SI.</param>
public sealed record InstantReading(PassChannel Channel, double Time, double Measured, double Sd, double Predicted);

/// <summary>How a whole channel fits its prediction.</summary>
/// <param name="Channel">The channel.</param>
/// <param name="Count">How many of its values lie within the prediction's time.</param>
/// <param name="Rms">Root of the mean square of measured less predicted, SI.</param>
/// <param name="Mean">Mean of measured less predicted, SI.</param>
/// <param name="Largest">Measured less predicted where that is largest, of the smoothed channel, SI.</param>
/// <param name="LargestAt">When that is, s.</param>
public sealed record ChannelFit(PassChannel Channel, int Count, double Rms, double Mean, double Largest, double LargestAt);
