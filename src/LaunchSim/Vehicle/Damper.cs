namespace LaunchSim.Vehicle;

/// <summary>How a damper's force follows its shaft speed, with any click already resolved.</summary>
public abstract record DamperLaw;

/// <summary>
/// A dyno sheet: force against speed for either direction, linear between points, the last slope beyond the ends.
/// </summary>
public sealed record DamperTables : DamperLaw
{
    /// <summary>Extension: shaft speed, m/s, against resisting force, N; both from 0 and never falling.</summary>
    public required Table Extension { get; init; }

    /// <summary>Compression: shaft speed, m/s, against resisting force, N; both from 0 and never falling.</summary>
    public required Table Compression { get; init; }
}

/// <summary>
/// The damper's travel, counted from its length at the measured ride height, and the stops at its ends:
/// F = max(0, k·d + c·d') per unit, opposing the penetration d.
/// </summary>
public sealed record DamperTravel
{
    /// <summary>How much longer the unit gets before it tops out, m; above 0.</summary>
    public required double Extend { get; init; }

    /// <summary>How much shorter the unit gets before it bottoms, m; above 0.</summary>
    public required double Compress { get; init; }

    /// <summary>Stop rate k, N/m per unit; above 0.</summary>
    public required double StopRate { get; init; }

    /// <summary>Stop damping c, N·s/m per unit; 0 or more.</summary>
    public required double StopDamping { get; init; }
}
