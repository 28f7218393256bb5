namespace LaunchSim.Studies.Comparing;

/// <summary>A set-up against the first one: better or worse, and why.</summary>
public sealed class SetUpDifference
{
    private SetUpDifference(ComparedSetUp first, ComparedSetUp other)
    {
        (First, Other) = (first, other);
        Aims = [.. first.Parts.Zip(other.Parts, AimVerdict.Of)];
        Verdict = AimVerdict.Of(first.Score, other.Score);
        Cause = Cause.Of(first.Run, other.Run);
        IsSame = WrittenDifference.Of([first.Run.Scenario, other.Run.Scenario]).Count == 0;
    }

    /// <summary>What it is compared with.</summary>
    public ComparedSetUp First { get; }

    /// <summary>The set-up.</summary>
    public ComparedSetUp Other { get; }

    /// <summary>Aim by aim.</summary>
    public IReadOnlyList<AimVerdict> Aims { get; }

    /// <summary>All aims together.</summary>
    public Verdict Verdict { get; }

    /// <summary>What in the two launches makes the difference.</summary>
    public Cause Cause { get; }

    /// <summary>Whether both are written alike.</summary>
    public bool IsSame { get; }

    /// <summary>Compares two set-ups.</summary>
    /// <param name="first">What the other is compared with.</param>
    /// <param name="other">The other.</param>
    public static SetUpDifference Of(ComparedSetUp first, ComparedSetUp other)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(other);
        return new SetUpDifference(first, other);
    }
}
