namespace LaunchSim.Studies.Chance;

/// <summary>A share counted in a sample, and between what limits the true one lies with some confidence.</summary>
/// <param name="Share">The counted share, 0 to 1; not a number when nothing was counted.</param>
/// <param name="Low">The lower limit, 0 to 1.</param>
/// <param name="High">The upper limit, 0 to 1.</param>
public readonly record struct ShareInterval(double Share, double Low, double High)
{
    /// <summary>Wilson's interval for a share. Of nothing it is 0 to 1: all is possible.</summary>
    /// <param name="count">How many of the sample have the property, 0 to <paramref name="of"/>.</param>
    /// <param name="of">How many the sample has, 0 or more.</param>
    /// <param name="confidence">In how many cases of one the limits shall hold the true share: strictly between 0 and 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A count or the confidence is out of range.</exception>
    /// <remarks>
    /// <para>
    /// E. B. Wilson, 1927; recommended for small samples by L. D. Brown, T. T. Cai, A. DasGupta, "Interval estimation for a
    /// binomial proportion", Statistical Science 16, 2001 (from memory). The limits are the true shares p from which the
    /// counted one is z standard errors √(p(1−p)/n) away. The confidence holds in the mean over p: near 0 and 1 coverage
    /// swings by some hundredths about it.
    /// </para>
    /// <para>
    /// It is meant for independent draws. Those of a <see cref="HaltonSequence"/> count the share of a smoothly bounded part of
    /// the cube more closely than that, so for them the limits are too wide rather than too narrow.
    /// </para>
    /// </remarks>
    public static ShareInterval Wilson(int count, int of, double confidence)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(of);
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, of);
        if (!(confidence > 0 && confidence < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(confidence), confidence, "A confidence lies strictly between 0 and 1.");
        }

        if (of == 0)
        {
            return new ShareInterval(double.NaN, 0, 1);
        }

        double z = -NormalQuantile.Of((1 - confidence) / 2);
        double n = of, k = count, share = k / n;
        double centre = (k + (z * z / 2)) / (n + (z * z));
        double half = z * Math.Sqrt((k * (1 - share)) + (z * z / 4)) / (n + (z * z));

        // At none and at all one limit is exact; rounding shall not say otherwise.
        return new ShareInterval(share, count == 0 ? 0 : centre - half, count == of ? 1 : centre + half);
    }
}
