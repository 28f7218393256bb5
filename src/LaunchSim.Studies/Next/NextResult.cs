using LaunchSim.Studies.Aims;

namespace LaunchSim.Studies.Next;

/// <summary>What could be changed next, best first.</summary>
public sealed record NextResult
{
    /// <summary>What is wanted.</summary>
    public required AimSet Aims { get; init; }

    /// <summary>The figures of the set-up as it stands, in the order of the aims' keys.</summary>
    public required double[] Now { get; init; }

    /// <summary>Its score.</summary>
    public required AimScore Score { get; init; }

    /// <summary>Why its launch did not come to its end; null when it did.</summary>
    public string? Trouble { get; init; }

    /// <summary>Whether the settings are usual ones that were offered, for want of <c>choices</c> in the file.</summary>
    public required bool IsOffered { get; init; }

    /// <summary>Every single change, best first; those that fail last.</summary>
    public required IReadOnlyList<NextChange> Singles { get; init; }

    /// <summary>Pairs that beat every single change, best first.</summary>
    public required IReadOnlyList<NextChange> Pairs { get; init; }

    /// <summary>How many launches it took.</summary>
    public required int Launches { get; init; }

    /// <summary>Less than this is nothing that one would notice, points.</summary>
    public const double Noticeable = 0.1;

    /// <summary>Whether a change is better than the set-up as it stands, with the grip of the present pressures.</summary>
    /// <param name="change">The change.</param>
    public bool Helps(NextChange change) =>
        change.Trouble is null && change.Score.IsNoticeablyBetterThan(Score);

    /// <summary>Single changes that are better only by the entered grip-for-pressure slope.</summary>
    public IEnumerable<NextChange> BySlopeAlone => Singles.Where(change => !Helps(change) && change.HasSlope && Helps(change with { Score = change.WithSlope }));
}
