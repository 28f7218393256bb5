namespace LaunchSim.Vehicle;

/// <summary>How long to run, how finely to sample, and how accurately to solve.</summary>
public sealed record RunSettings
{
    /// <summary>
    /// Duration, s. When null: with marks, to the first sample at or after the last mark, at most
    /// <see cref="LongestDuration"/>; without marks, <see cref="DefaultDuration"/>.
    /// </summary>
    public double? Duration { get; init; }

    /// <summary>Time between the trace's rows Δ, s.</summary>
    public double Sample { get; init; } = 1e-3;

    /// <summary>Relative tolerance of the integration; the absolute one follows from each state's scale.</summary>
    public double Tolerance { get; init; } = 1e-8;

    /// <summary>Distances to time, m, by the rear axle, rising.</summary>
    public IReadOnlyList<double> Marks { get; init; } = [];

    /// <summary>How far the rear axle rolls before a timing beam's clock starts, m.</summary>
    public double Rollout { get; init; }

    /// <summary>Duration without marks or an entered duration, s.</summary>
    public const double DefaultDuration = 1;

    /// <summary>Longest run towards a mark when no duration is entered, s.</summary>
    public const double LongestDuration = 4;
}
