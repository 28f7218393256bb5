namespace LaunchSim.Charts.Drawing;

/// <summary>From the lowest to the highest value of an axis, in the axis's own unit.</summary>
/// <param name="Low">The lowest.</param>
/// <param name="High">The highest, above it.</param>
internal readonly record struct Extent(double Low, double High)
{
    // Share of the extent that is left free at an end at which there are data: for labels.
    private const double Room = 0.12;

    // Share of the extent below which there is nothing to see.
    private const double Rounding = 1e-6;

    /// <summary>What holds some values and zero, with room at the ends for labels. What is not finite is passed over.</summary>
    /// <param name="values">The values.</param>
    /// <param name="least">The smallest extent worth drawing: less is not blown up to fill the axis.</param>
    public static Extent Of(IEnumerable<double> values, double least)
    {
        double low = 0, high = 0;
        foreach (double value in values)
        {
            if (double.IsFinite(value))
            {
                low = Math.Min(low, value);
                high = Math.Max(high, value);
            }
        }

        // A load of nothing is nothing but for rounding.
        double nothing = Rounding * Math.Max(least, high - low);
        low = low > -nothing ? 0 : low;
        high = high < nothing ? 0 : high;
        double missing = least - (high - low);
        if (missing > 0)
        {
            (low, high) = high >= -low ? (low, high + missing) : (low - missing, high);
        }

        double room = Room * (high - low);
        return new Extent(low < 0 ? low - room : low, high > 0 ? high + room : high);
    }
}
