namespace LaunchSim.Scenarios.Units;

/// <summary>A unit as it was written, with its exact meaning in SI.</summary>
public sealed record Unit
{
    /// <summary>No unit: a bare number.</summary>
    public static Unit None { get; } = new() { Text = "", Dimension = Dimension.None, Factor = 1 };

    /// <summary>The unit as written, such as <c>lb/in</c>; empty for a bare number.</summary>
    public required string Text { get; init; }

    /// <summary>What it measures.</summary>
    public required Dimension Dimension { get; init; }

    /// <summary>How much of the SI unit one of it is; above 0.</summary>
    public required double Factor { get; init; }

    /// <summary>Whose unit it is; null when it belongs to both (s, °, rpm) or mixes the two.</summary>
    public UnitSystem? System { get; init; }

    /// <inheritdoc/>
    public override string ToString() => Text;
}
