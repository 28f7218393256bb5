using LaunchSim.Studies.Aims;

namespace LaunchSim.Studies.Comparing;

/// <summary>Whether one set-up does better than another.</summary>
public enum Verdict
{
    /// <summary>The difference is too small to matter.</summary>
    NoMatter,

    /// <summary>It is nearer to what is wanted.</summary>
    Better,

    /// <summary>It is farther from what is wanted.</summary>
    Worse,

    /// <summary>Nothing can be said: one of the two launches stopped before its end.</summary>
    Unknown,
}

/// <summary>One aim in two launches.</summary>
/// <param name="Before">In the first set-up.</param>
/// <param name="After">In the other one.</param>
/// <param name="Verdict">Whether the other is better by this aim.</param>
public readonly record struct AimVerdict(AimPart Before, AimPart After, Verdict Verdict)
{
    /// <summary>
    /// How many points are too few to matter. One point is what a person notices; a quarter of it is taken for nothing. A
    /// choice of this project.
    /// </summary>
    public const double LeastPoints = 0.25;

    /// <summary>The aim.</summary>
    public Aim Aim => After.Aim;

    /// <summary>How much it changes the score, points times weight; 0 for a limit.</summary>
    public double Change => After.Share - Before.Share;

    /// <summary>Judges one aim.</summary>
    /// <param name="before">In the first set-up.</param>
    /// <param name="after">In the other one.</param>
    public static AimVerdict Of(AimPart before, AimPart after)
    {
        double change = after.Points - before.Points;
        bool matters = before.BreaksLimit != after.BreaksLimit || Math.Abs(change) >= LeastPoints;
        return new AimVerdict(before, after, !matters ? Verdict.NoMatter : change < 0 ? Verdict.Better : Verdict.Worse);
    }

    /// <summary>Judges the whole: limits first, then the weighed points.</summary>
    /// <param name="before">Score of the first set-up.</param>
    /// <param name="after">Score of the other one.</param>
    public static Verdict Of(AimScore before, AimScore after)
    {
        if (!before.Exists || !after.Exists)
        {
            return Verdict.Unknown;
        }

        bool limits = before.KeepsLimits != after.KeepsLimits || Math.Abs(after.Beyond - before.Beyond) >= LeastPoints;
        return !limits && Math.Abs(after.Points - before.Points) < LeastPoints ? Verdict.NoMatter
            : (limits ? after.Beyond < before.Beyond : after.Points < before.Points) ? Verdict.Better
            : Verdict.Worse;
    }
}
