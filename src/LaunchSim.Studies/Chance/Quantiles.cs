namespace LaunchSim.Studies.Chance;

/// <summary>Quantiles of a sample.</summary>
public static class Quantiles
{
    /// <summary>
    /// The value below which a share of a sample lies: between the two neighbours in rank on a straight line, the lowest value
    /// being that of share 0 and the highest that of share 1.
    /// </summary>
    /// <param name="sorted">The sample in rising order, without values that are not numbers.</param>
    /// <param name="share">0 to 1.</param>
    /// <returns>The quantile in the sample's unit; not a number for an empty sample.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is out of range.</exception>
    /// <remarks>Type 7 of R. J. Hyndman, Y. Fan, "Sample quantiles in statistical packages", The American Statistician 50, 1996.</remarks>
    public static double OfSorted(ReadOnlySpan<double> sorted, double share)
    {
        if (!(share >= 0 && share <= 1))
        {
            throw new ArgumentOutOfRangeException(nameof(share), share, "A share lies between 0 and 1.");
        }

        if (sorted.IsEmpty)
        {
            return double.NaN;
        }

        double rank = share * (sorted.Length - 1);
        int below = (int)rank;
        double part = rank - below;

        return part == 0 ? sorted[below] : sorted[below] + (part * (sorted[below + 1] - sorted[below]));
    }
}
