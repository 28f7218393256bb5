namespace LaunchSim.Passes.Measured;

/// <summary>How much the values of a channel scatter by themselves.</summary>
internal static class Scatter
{
    // Of a normal distribution; and the variance of a second difference of independent values is six times theirs.
    private const double MedianToSd = 1.4826;

    private const int Least = 20;

    /// <summary>
    /// One standard deviation of a single value, by the median of second differences: what is smooth over three values in a
    /// row falls out, and spikes do not count.
    /// </summary>
    /// <param name="values">The values, evenly spaced or nearly so.</param>
    /// <returns>0 for too few values to tell.</returns>
    public static double Of(IReadOnlyList<double> values)
    {
        if (values.Count < Least)
        {
            return 0;
        }

        double[] differences = new double[values.Count - 2];
        for (int i = 0; i < differences.Length; i++)
        {
            differences[i] = Math.Abs(values[i] - (2 * values[i + 1]) + values[i + 2]);
        }

        Array.Sort(differences);
        return MedianToSd * differences[differences.Length / 2] / Math.Sqrt(6);
    }
}
