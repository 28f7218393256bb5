namespace LaunchSim.Scenarios.Recorded;

/// <summary>How well a seen moment is known. All of it is common practice, no source.</summary>
public static class SeenDoubt
{
    /// <summary>Half-width for a time in seconds without ±, s: a frame of a 50 Hz video, taken as equally likely anywhere within.</summary>
    public const double UsualTime = 0.02;

    /// <summary>Half-width for a frame without ±, frames: it and the release are each seen up to a frame late.</summary>
    public const double UsualFrames = 1;

    /// <summary>Half-width for a time at a beam without ±, s, that holds nineteen times in twenty.</summary>
    public const double UsualBeam = 0.002;

    /// <summary>The opening by which an end is taken to be seen moving when nothing is written, m: 1/4 in, as in the figures of the gaps.</summary>
    public const double UsualVisible = 6.35e-3;

    // The two-sided 95 % point of the normal distribution.
    private const double NineteenInTwenty = 1.959963984540054;

    /// <summary>One standard deviation of what lies equally likely anywhere within a half-width.</summary>
    /// <param name="halfWidth">The half-width.</param>
    public static double OfUniform(double halfWidth) => halfWidth / Math.Sqrt(3);

    /// <summary>One standard deviation of what is written with a ±, which holds nineteen times in twenty.</summary>
    /// <param name="halfWidth">What stands after the ±.</param>
    public static double OfWritten(double halfWidth) => halfWidth / NineteenInTwenty;

    /// <summary>How far off something may be nineteen times in twenty.</summary>
    /// <param name="sd">Its standard deviation.</param>
    public static double HalfWidth(double sd) => NineteenInTwenty * sd;
}
