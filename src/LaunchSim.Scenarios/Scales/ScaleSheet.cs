using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Scales;

/// <summary>What scales and tape read of one car, on the level and with an axle lifted: each number by itself checked, and against the others as far as one look tells.</summary>
public sealed record ScaleSheet
{
    /// <summary>What was weighed, on one line.</summary>
    public required string Name { get; init; }

    /// <summary>The file as it was named; empty when the numbers came from options.</summary>
    public required string SourceFile { get; init; }

    /// <summary>Whose units most of it is written in.</summary>
    public required UnitSystem UnitSystem { get; init; }

    /// <summary>Distance of the wheel centres along the level floor, m.</summary>
    public required ScaleReading Wheelbase { get; init; }

    /// <summary>Height of the front wheel centres on the level, m.</summary>
    public required ScaleReading FrontRadius { get; init; }

    /// <summary>Height of the rear wheel centres on the level, m.</summary>
    public required ScaleReading RearRadius { get; init; }

    /// <summary>Front track, m; null when it was not measured.</summary>
    public ScaleReading? FrontTrack { get; init; }

    /// <summary>Rear track, m; null when it was not measured.</summary>
    public ScaleReading? RearTrack { get; init; }

    /// <summary>Front axle on the level.</summary>
    public required AxleLoad Front { get; init; }

    /// <summary>Rear axle on the level.</summary>
    public required AxleLoad Rear { get; init; }

    /// <summary>The lifts, at least one.</summary>
    public required IReadOnlyList<ScaleLift> Lifts { get; init; }

    /// <summary>The car's weight on the level, N.</summary>
    public double Weight => Front.Total + Rear.Total;
}

/// <summary>What came of reading a scale sheet.</summary>
/// <param name="Sheet">The sheet; null when there is an error.</param>
/// <param name="Errors">All errors.</param>
public sealed record ScaleSheetResult(ScaleSheet? Sheet, IReadOnlyList<Diagnostic> Errors);
