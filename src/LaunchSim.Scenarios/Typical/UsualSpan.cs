namespace LaunchSim.Scenarios.Typical;

/// <summary>A usual range worked out for one car.</summary>
/// <param name="Part">Empty, or <c>.ahead</c> or <c>.up</c> for one number of a point.</param>
/// <param name="Low">The lower end, SI.</param>
/// <param name="High">The upper end, SI.</param>
/// <param name="ForWhat">What it is usual for, as in <c>for a tyre of this size</c>.</param>
/// <param name="Where">Which number of a row is judged, as in <c>at 5 in/s</c>; empty for a single number.</param>
public sealed record UsualSpan(string Part, double Low, double High, string ForWhat, string Where)
{
    /// <summary>Whether a number is usual.</summary>
    /// <param name="value">In SI.</param>
    public bool Holds(double value) => value >= Low && value <= High;
}
