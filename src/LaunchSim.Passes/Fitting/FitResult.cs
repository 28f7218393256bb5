using LaunchSim.Passes.Measured;
using LaunchSim.Passes.Seen;
using LaunchSim.Studies.Chance;

namespace LaunchSim.Passes.Fitting;

/// <summary>How a channel of a pass agrees with the prediction, before and after the fit.</summary>
/// <param name="Pass">The pass.</param>
/// <param name="Log">Where it was recorded.</param>
/// <param name="Series">The channel.</param>
/// <param name="Noise">What the channel was taken to scatter by, SI.</param>
/// <param name="Before">Root mean square of measured less predicted by the file, SI.</param>
/// <param name="After">The same by the fit.</param>
/// <param name="Course">Spans with what was measured and both predictions, SI; where a zero is free, the one that suits the fit.</param>
public sealed record ChannelFit(string Pass, string Log, MeasuredSeries Series, double Noise, double Before, double After, IReadOnlyList<ChannelPoint> Course);

/// <summary>One span of a channel.</summary>
/// <param name="Time">Seconds since release, by the fitted clock.</param>
/// <param name="Measured">The mean that was measured, SI.</param>
/// <param name="Before">What the file predicts.</param>
/// <param name="After">What the fit predicts.</param>
public readonly record struct ChannelPoint(double Time, double Measured, double Before, double After);

/// <summary>What was seen of one pass, beside what the file and the fit predict.</summary>
/// <param name="Pass">The pass.</param>
/// <param name="Before">By the file.</param>
/// <param name="After">By the fit, in the same order.</param>
public sealed record SeenFit(string Pass, IReadOnlyList<SeenComparison> Before, IReadOnlyList<SeenComparison> After);

/// <summary>A clock's zero after the fit.</summary>
/// <param name="Clock">The clock.</param>
/// <param name="Shift">Seconds that its times lie before the launch's.</param>
/// <param name="Sd">One standard deviation, s.</param>
public sealed record ClockFit(FitClock Clock, double Shift, double Sd);

/// <summary>What came of a fit.</summary>
public sealed record FitResult
{
    /// <summary>The numbers, in the order in which they were asked for.</summary>
    public required IReadOnlyList<FittedValue> Values { get; init; }

    /// <summary>Correlations between the numbers after the fit, in the same order.</summary>
    public required double[,] Correlations { get; init; }

    /// <summary>The same by path, for drawing cars that may stand behind what the passes say; what nothing is known of hangs together with nothing.</summary>
    public NormalCorrelations Together()
    {
        double[,] known = new double[Values.Count, Values.Count];
        for (int i = 0; i < Values.Count; i++)
        {
            for (int j = 0; j < Values.Count; j++)
            {
                known[i, j] = i == j ? 1 : double.IsFinite(Correlations[i, j]) ? Math.Clamp((Correlations[i, j] + Correlations[j, i]) / 2, -1, 1) : 0;
            }
        }

        return new NormalCorrelations([.. Values.Select(value => value.Parameter.Path)], known);
    }

    /// <summary>The clocks.</summary>
    public required IReadOnlyList<ClockFit> Clocks { get; init; }

    /// <summary>The channels of all logs.</summary>
    public required IReadOnlyList<ChannelFit> Channels { get; init; }

    /// <summary>What was seen, pass by pass.</summary>
    public required IReadOnlyList<SeenFit> Seen { get; init; }

    /// <summary>How many numbers the data consist of: spans of channels and seen facts.</summary>
    public required int DataCount { get; init; }

    /// <summary>Root mean square of the data's residuals in standard deviations: about 1 where prediction and doubts are right.</summary>
    public required double Misfit { get; init; }

    /// <summary>The weighted sums that the starts came to, the best first; they agree where there is one best.</summary>
    public required IReadOnlyList<double> SumsOfStarts { get; init; }

    /// <summary>Whether the solver came to an end of its own.</summary>
    public required bool Converged { get; init; }

    /// <summary>How it ended.</summary>
    public required string Reason { get; init; }

    /// <summary>How many launches it took.</summary>
    public required long Launches { get; init; }

    /// <summary>Plain sentences on what a reader should know.</summary>
    public required IReadOnlyList<string> Remarks { get; init; }
}
