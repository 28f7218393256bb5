namespace LaunchSim.Studies.Chance;

/// <summary>An output's values about their mean, in units of the farthest, so that squares neither overflow nor vanish.</summary>
internal sealed class CentredOutput
{
    private readonly double[] _values;

    public CentredOutput(ReadOnlySpan<double> output)
    {
        _values = output.ToArray();
        double low = double.PositiveInfinity, high = double.NegativeInfinity;
        for (int i = 0; i < output.Length; i++)
        {
            double y = output[i];
            if (double.IsInfinity(y))
            {
                throw new ArgumentException($"The value of draw {i} is infinite.", nameof(output));
            }

            if (!double.IsNaN(y))
            {
                Count++;
                low = Math.Min(low, y);
                high = Math.Max(high, y);
            }
        }

        // About the middle: a constant is then constant to the bit, and the mean keeps its digits far from zero.
        double middle = (low / 2) + (high / 2);
        Scale = Count == 0 || low == high ? 0 : Math.Max(high - middle, middle - low);
        if (Scale == 0)
        {
            Mean = Count == 0 ? double.NaN : low;
            Variance = Count < 2 ? double.NaN : 0;
            return;
        }

        double mean = 0;
        foreach (ref double y in _values.AsSpan())
        {
            y = (y - middle) / Scale;
            mean += double.IsNaN(y) ? 0 : y / Count;
        }

        double squares = 0;
        foreach (ref double y in _values.AsSpan())
        {
            y -= mean;
            squares += double.IsNaN(y) ? 0 : y * y;
        }

        Mean = middle + (mean * Scale);
        Variance = squares / (Count - 1) * Scale * Scale;
    }

    /// <summary>How many values there are.</summary>
    public int Count { get; }

    /// <summary>The unit of the centred values; 0 for a constant.</summary>
    public double Scale { get; }

    /// <summary>The mean, in the output's unit.</summary>
    public double Mean { get; }

    /// <summary>The unbiased variance, in the output's unit squared.</summary>
    public double Variance { get; }

    /// <summary>Writes the values that there are in the order of an input; what is left of the room stays as it is.</summary>
    public void InOrder(int[] order, Span<double> sorted)
    {
        int rank = 0;
        foreach (int draw in order)
        {
            double y = _values[draw];
            if (!double.IsNaN(y))
            {
                sorted[rank++] = y;
            }
        }
    }
}
