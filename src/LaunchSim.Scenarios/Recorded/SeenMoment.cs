namespace LaunchSim.Scenarios.Recorded;

/// <summary>When something was seen to happen, with how well that is known.</summary>
/// <param name="Time">Seconds since release; of a bound, the time that it was before or after; not a number for never.</param>
/// <param name="Sd">One standard deviation of <paramref name="Time"/>, s, above 0; not a number for never.</param>
/// <param name="Written">As it stands in the file, such as <c>frame 147 ±2</c>.</param>
/// <param name="Bound">Whether it happened then, before, after, or never.</param>
public sealed record SeenMoment(double Time, double Sd, string Written, SeenBound Bound = SeenBound.At)
{
    /// <summary>Whether it never happened.</summary>
    public bool IsNever => Bound == SeenBound.Never;

    /// <summary>That something never happened.</summary>
    /// <param name="written">As it stands in the file.</param>
    public static SeenMoment Never(string written = "never") => new(double.NaN, double.NaN, written, SeenBound.Never);
}
