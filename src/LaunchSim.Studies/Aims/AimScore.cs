namespace LaunchSim.Studies.Aims;

/// <summary>One aim's share of a score.</summary>
/// <param name="Aim">The aim.</param>
/// <param name="Value">The launch's value; not a number when it has none.</param>
/// <param name="Points">How far beyond what is wanted, in points, not yet weighed.</param>
public readonly record struct AimPart(Aim Aim, double Value, double Points)
{
    /// <summary>What it adds to the score: weight times points; 0 for a limit.</summary>
    public double Share => Aim.IsLimit ? 0 : Aim.Weight * Points;

    /// <summary>Whether a limit is broken.</summary>
    public bool BreaksLimit => Aim.IsLimit && Points > 0;
}

/// <summary>
/// How far a launch is from what is wanted: the sum over the aims of weight times points, and apart from it the points
/// beyond the limits. Smaller is better; what breaks a limit comes after all that does not. 0 is all that was asked for.
/// </summary>
/// <param name="Points">Σ weight · points over the aims that are no limits.</param>
/// <param name="Beyond">Σ points over the limits.</param>
public readonly record struct AimScore(double Points, double Beyond) : IComparable<AimScore>
{
    /// <summary>Of a launch that failed or a car that was refused: after everything else.</summary>
    public static AimScore None { get; } = new(double.PositiveInfinity, double.PositiveInfinity);

    /// <summary>Whether there is a score.</summary>
    public bool Exists => double.IsFinite(Points);

    /// <summary>Whether all limits are kept.</summary>
    public bool KeepsLimits => Beyond <= Rounding;

    /// <summary>All points together, those beyond limits included: what ranks two that both keep the limits, or both do not.</summary>
    public double Total => Points + Beyond;

    /// <summary>
    /// Whether it is better than another by so much that one would notice: it keeps the limits where the other does not, or
    /// both do or do not and it has fewer points by more than <see cref="Next.NextResult.Noticeable"/>.
    /// </summary>
    /// <param name="other">The other.</param>
    public bool IsNoticeablyBetterThan(AimScore other) =>
        KeepsLimits != other.KeepsLimits ? KeepsLimits : Total < other.Total - Next.NextResult.Noticeable;

    private const double Rounding = 1e-9;

    /// <inheritdoc/>
    public int CompareTo(AimScore other) => KeepsLimits != other.KeepsLimits ? (KeepsLimits ? -1 : 1) : Total.CompareTo(other.Total);

    /// <summary>Whether one is better than another.</summary>
    public static bool operator <(AimScore left, AimScore right) => left.CompareTo(right) < 0;

    /// <summary>Whether one is worse than another.</summary>
    public static bool operator >(AimScore left, AimScore right) => left.CompareTo(right) > 0;

    /// <summary>Whether one is no worse than another.</summary>
    public static bool operator <=(AimScore left, AimScore right) => left.CompareTo(right) <= 0;

    /// <summary>Whether one is no better than another.</summary>
    public static bool operator >=(AimScore left, AimScore right) => left.CompareTo(right) >= 0;
}
