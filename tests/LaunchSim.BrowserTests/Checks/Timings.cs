using System.Globalization;

namespace LaunchSim.BrowserTests.Checks;

/// <summary>How long something took, in words.</summary>
public static class Timings
{
    /// <summary>The percentiles of some times in milliseconds.</summary>
    public static string Text(IReadOnlyCollection<double> milliseconds)
    {
        double[] sorted = [.. milliseconds.Order()];
        return sorted switch
        {
            [] => "none measured",
            [double one] => string.Create(CultureInfo.InvariantCulture, $"{one:0.0} ms"),
            _ => string.Create(CultureInfo.InvariantCulture, $"median {At(sorted, 0.5):0.0} ms, 95 % within {At(sorted, 0.95):0.0} ms, longest {sorted[^1]:0.0} ms, of {sorted.Length}"),
        };
    }

    // The nearest rank: a time that was measured, not one between two.
    private static double At(double[] sorted, double share) => sorted[Math.Max(0, (int)Math.Ceiling(share * sorted.Length) - 1)];
}
