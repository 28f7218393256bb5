namespace LaunchSim.Passes.Fitting;

/// <summary>Derivatives of residuals by differences to both sides, a parameter each; to one side where the other is impossible.</summary>
internal sealed class Differences(ResidualFunction function, int residualCount, double[]? steps, int threads, CancellationToken cancellation)
{
    // The cube root of a double's precision balances rounding against curvature where the model is exact to rounding.
    private static readonly double RelativeStep = Math.Cbrt(Math.BitIncrement(1.0) - 1);

    // A step that leads out of what is possible on both sides is tried so many times, each a quarter of the last.
    private const int Tries = 4;

    private int _calls;

    /// <summary>Calls of the residual function so far.</summary>
    public int Calls => _calls;

    /// <summary>Derivatives at a point, residuals down, parameters across. A column is all 0 where no difference could be taken.</summary>
    /// <param name="point">Where.</param>
    /// <param name="there">The residuals there.</param>
    /// <param name="missing">Adds the numbers of the parameters without a difference.</param>
    public double[,] Take(double[] point, double[] there, ISet<int> missing)
    {
        double[]?[] columns = new double[point.Length][];
        if (threads > 1)
        {
            Parallel.For(
                0, point.Length, new ParallelOptions { MaxDegreeOfParallelism = threads, CancellationToken = cancellation },
                i => columns[i] = Column(point, there, i));
        }
        else
        {
            for (int i = 0; i < point.Length; i++)
            {
                columns[i] = Column(point, there, i);
            }
        }

        double[,] derivatives = new double[residualCount, point.Length];
        for (int i = 0; i < point.Length; i++)
        {
            if (columns[i] is not { } column)
            {
                missing.Add(i);
                continue;
            }

            for (int k = 0; k < residualCount; k++)
            {
                derivatives[k, i] = column[k];
            }
        }

        return derivatives;
    }

    /// <summary>Fills the residuals; false where the model is impossible or its residuals are not all finite.</summary>
    public bool Evaluate(double[] point, double[] residuals)
    {
        cancellation.ThrowIfCancellationRequested();
        Interlocked.Increment(ref _calls);
        return function(point, residuals) && Array.TrueForAll(residuals, double.IsFinite);
    }

    private double[]? Column(double[] point, double[] there, int parameter)
    {
        double[] moved = (double[])point.Clone();
        double[] above = new double[residualCount], below = new double[residualCount];
        double value = point[parameter];
        double step = steps?[parameter] ?? (RelativeStep * (value == 0 ? 1 : Math.Abs(value)));
        for (int attempt = 0; attempt < Tries; attempt++, step /= 4)
        {
            double high = value + step, low = value - step;
            moved[parameter] = high;
            bool isAbove = Evaluate(moved, above);
            moved[parameter] = low;
            bool isBelow = Evaluate(moved, below);
            if (!isAbove && !isBelow)
            {
                continue;
            }

            // Over the distance as rounded, not as meant.
            double[] upper = isAbove ? above : there, lower = isBelow ? below : there;
            double distance = (isAbove ? high : value) - (isBelow ? low : value);
            for (int k = 0; k < residualCount; k++)
            {
                above[k] = (upper[k] - lower[k]) / distance;
            }

            return Array.TrueForAll(above, double.IsFinite) ? above : null;
        }

        return null;
    }
}
