using LaunchSim.Studies.Chance;

namespace LaunchSim.Studies.Doubting;

/// <summary>What nine plausible cars in ten stay within, and the middle one; not numbers where no car has a value.</summary>
/// <param name="Low">The 5th percentile.</param>
/// <param name="Median">The median.</param>
/// <param name="High">The 95th percentile.</param>
public readonly record struct Band(double Low, double Median, double High)
{
    /// <summary>Share of the cars below the lower end.</summary>
    public const double LowShare = 0.05;

    /// <summary>Share of the cars below the upper end.</summary>
    public const double HighShare = 0.95;

    /// <summary>How wide it is.</summary>
    public double Width => High - Low;

    /// <summary>The band of some values.</summary>
    /// <param name="values">The values in any order; those that are not numbers are left out.</param>
    public static Band Of(ReadOnlySpan<double> values)
    {
        double[] sorted = new double[values.Length];
        int count = 0;
        foreach (double value in values)
        {
            if (!double.IsNaN(value))
            {
                sorted[count++] = value;
            }
        }

        Span<double> own = sorted.AsSpan(0, count);
        own.Sort();
        return new Band(Quantiles.OfSorted(own, LowShare), Quantiles.OfSorted(own, 0.5), Quantiles.OfSorted(own, HighShare));
    }
}
