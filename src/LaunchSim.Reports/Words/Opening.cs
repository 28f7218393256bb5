using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Reports.Words;

/// <summary>The stretch of time at the start of a launch over which some figures are taken.</summary>
internal static class Opening
{
    /// <summary>Its name in a sentence: a run that ends before is all there is.</summary>
    /// <param name="figures">The launch's figures.</param>
    /// <param name="window">How long it is, s.</param>
    public static string Of(FigureSet figures, double window) => figures["run_end_s"] is { } end && end < window
        ? $"in the {Readout.Time.Text(end)} of this run"
        : $"in the first {Readout.Time.With(1).Text(window)}";
}
