namespace LaunchSim.Scenarios.Typical;

/// <summary>How far off a number may be: nineteen times in twenty within this much.</summary>
/// <param name="Size">A share of the number (0.3 is thirty percent of it), or an amount in SI; above 0.</param>
/// <param name="IsShare">Whether <paramref name="Size"/> is a share.</param>
public readonly record struct TypicalDoubt(double Size, bool IsShare)
{
    /// <summary>A share of the number.</summary>
    /// <param name="share">0.3 is thirty percent; above 0.</param>
    public static TypicalDoubt Share(double share) => new(share, true);

    /// <summary>An amount.</summary>
    /// <param name="si">In SI of the number; above 0.</param>
    public static TypicalDoubt Amount(double si) => new(si, false);

    /// <summary>Half-width in SI for one value.</summary>
    /// <param name="value">The value in SI.</param>
    public double At(double value) => IsShare ? Size * Math.Abs(value) : Size;
}
