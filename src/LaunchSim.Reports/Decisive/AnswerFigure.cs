using LaunchSim.Figures;

namespace LaunchSim.Reports.Decisive;

/// <summary>One figure of the answer, and how much of it matters to a person who sets the car up.</summary>
/// <param name="Key">The figure's key.</param>
/// <param name="Words">What it is called in a sentence, as in <c>the rise lag</c>.</param>
/// <param name="ScaleOf">How much of it matters, in its SI unit, above 0; asked with the rear tyres' standing load, N.</param>
/// <param name="ScaleWords">The same in words, as in <c>20 ms</c>.</param>
public sealed record AnswerFigure(string Key, string Words, Func<double, double> ScaleOf, string ScaleWords)
{
    /// <summary>How much of it matters in a launch, in its SI unit; above 0.</summary>
    /// <param name="figures">The launch as it stands.</param>
    public double Scale(FigureSet figures)
    {
        ArgumentNullException.ThrowIfNull(figures);
        return ScaleOf(figures["rear_tire_load_static_n"] ?? double.NaN);
    }
}

/// <summary>
/// What the answer is: six figures, each with a scale that makes its changes comparable. The scales are a choice of this
/// project, by what a person sees on a video of 50 frames a second, with a tape, and on scales.
/// </summary>
public static class AnswerFigures
{
    /// <summary>The six.</summary>
    public static IReadOnlyList<AnswerFigure> All { get; } =
    [
        new("standing_anti_squat_percent", "the percent", _ => 5, "5 %"),
        new("rise_lag_s", "the rise lag", _ => 0.020, "20 ms, a frame of a video"),
        new("separation_peak_m", "the largest separation", _ => 0.00635, "1/4 in (6.35 mm)"),
        new("hit_n", "the hit", standing => 0.05 * standing, "5 % of the rear tyres' standing load"),
        new("lowest_rear_load_after_hit_n", "the lowest rear load after the hit", standing => 0.05 * standing, "5 % of the rear tyres' standing load"),
        new("slip_beyond_peak_time_s", "the time of slip beyond the peak", _ => 0.050, "50 ms"),
    ];
}
