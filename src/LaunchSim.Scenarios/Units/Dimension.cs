namespace LaunchSim.Scenarios.Units;

/// <summary>
/// What kind of thing a unit measures: the powers of mass, length, time and angle. Powers are kept doubled, so that a
/// square root (as in rpm/√(lb-ft)) has a whole number too. Angle counts as a dimension, so that a torque and a rate
/// per radian are told apart.
/// </summary>
/// <param name="Mass2">Twice the power of mass.</param>
/// <param name="Length2">Twice the power of length.</param>
/// <param name="Time2">Twice the power of time.</param>
/// <param name="Angle2">Twice the power of angle.</param>
public readonly record struct Dimension(int Mass2, int Length2, int Time2, int Angle2)
{
    /// <summary>A bare number.</summary>
    public static Dimension None => default;

    /// <summary>The dimension with the given whole powers.</summary>
    /// <param name="mass">Power of mass.</param>
    /// <param name="length">Power of length.</param>
    /// <param name="time">Power of time.</param>
    /// <param name="angle">Power of angle.</param>
    public static Dimension Of(int mass = 0, int length = 0, int time = 0, int angle = 0) =>
        new(2 * mass, 2 * length, 2 * time, 2 * angle);

    /// <summary>The dimension of a product.</summary>
    /// <param name="other">The other factor's dimension.</param>
    public Dimension Times(Dimension other) =>
        new(Mass2 + other.Mass2, Length2 + other.Length2, Time2 + other.Time2, Angle2 + other.Angle2);

    /// <summary>The dimension of a quotient.</summary>
    /// <param name="other">The divisor's dimension.</param>
    public Dimension Over(Dimension other) =>
        new(Mass2 - other.Mass2, Length2 - other.Length2, Time2 - other.Time2, Angle2 - other.Angle2);

    /// <summary>The dimension of a power.</summary>
    /// <param name="power">The whole power.</param>
    public Dimension Power(int power) => new(Mass2 * power, Length2 * power, Time2 * power, Angle2 * power);

    /// <summary>The dimension of a square root, or null when a power would not be a whole half.</summary>
    public Dimension? Root() =>
        ((Mass2 | Length2 | Time2 | Angle2) & 1) != 0 ? null : new(Mass2 / 2, Length2 / 2, Time2 / 2, Angle2 / 2);
}
