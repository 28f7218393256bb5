using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Grids;

namespace LaunchSim.Studies.Searching;

/// <summary>What came of looking for the best set-up.</summary>
public sealed record BestResult
{
    /// <summary>What was run.</summary>
    public required GridPlan Plan { get; init; }

    /// <summary>How many set-ups were run.</summary>
    public required long Tried { get; init; }

    /// <summary>How many of them did not come to the end of their launch.</summary>
    public required long Failed { get; init; }

    /// <summary>How many keep all limits.</summary>
    public required long KeepLimits { get; init; }

    /// <summary>Whether every set-up of the grid was run, so that none can be better.</summary>
    public required bool IsProven { get; init; }

    /// <summary>The best, at most ten, best first; none when no launch came to its end.</summary>
    public required IReadOnlyList<RankedSetUp> Best { get; init; }

    /// <summary>The set-ups that none beats both in the size of the rise lag and in load unrest, of those that keep all limits and do not slip for longer than is wanted.</summary>
    public required IReadOnlyList<GridRow> LagAgainstUnrest { get; init; }

    /// <summary>The same for the size of the rise lag and the largest separation.</summary>
    public required IReadOnlyList<GridRow> LagAgainstSeparation { get; init; }

    /// <summary>How flat the top is; null when no launch came to its end.</summary>
    public required FlatTop? Top { get; init; }
}

/// <summary>One of the best set-ups, and what is next door.</summary>
/// <param name="Row">The set-up.</param>
/// <param name="NextDoor">Its neighbours.</param>
public sealed record RankedSetUp(GridRow Row, NextDoor NextDoor)
{
    /// <summary>So many points worse, and a set-up next door is a bad one: twice what one would notice.</summary>
    public const double Bad = 2;

    /// <summary>
    /// Whether one step beside it is bad: a launch that fails, a limit that it keeps and the neighbour breaks, or
    /// <see cref="Bad"/> points more.
    /// </summary>
    public bool IsFragile => NextDoor.Worst is not null
        && (!NextDoor.WorstScore.Exists || (Row.Score.KeepsLimits && !NextDoor.WorstScore.KeepsLimits) || NextDoor.WorstScore.Total > Row.Score.Total + Bad);
}

/// <summary>The set-ups with one setting that is a number one value up or down.</summary>
/// <param name="Count">How many there are.</param>
/// <param name="Known">How many of them were run.</param>
/// <param name="Worst">The worst of these; null when none was run.</param>
/// <param name="WorstScore">Its score.</param>
public readonly record struct NextDoor(int Count, int Known, long? Worst, AimScore WorstScore);
