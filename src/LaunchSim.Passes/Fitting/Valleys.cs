using System.Collections.Concurrent;
using MathNet.Numerics.LinearAlgebra;

namespace LaunchSim.Passes.Fitting;

/// <summary>
/// What lies about the best point of a fit: the linearised covariance is right where the sum is a bowl. A launch has kinks (a tyre
/// lets go or holds), so it is looked at from its rim, and other bowls that suit the data about as well are counted in.
/// </summary>
/// <remarks>
/// The covariance of several valleys is that of a mixture of normal distributions, each weighted with the volume under it
/// (Laplace's approximation; from memory of the textbooks of Bayesian statistics).
/// </remarks>
internal static class Valleys
{
    // Where the rim is looked at, in standard deviations.
    private const double Rim = 2;

    // No further than this: what is flat for so long has no end.
    private const double Farthest = 2048;

    // Less than this is the rounding of an eigenvalue, in squared standard deviations of what was known before.
    private const double Narrowest = 1e-18;

    // A rim that lies this much lower than the bottom is a way further down.
    private const double Lower = 0.05;
    private const int MostWaysDown = 4;

    // Valleys nearer than this, in standard deviations, are one.
    private const double Same = 1;

    /// <summary>Goes down where the rim shows a way, and says how wide the valley is.</summary>
    /// <param name="sumAt">What the solver made as small as it could, at any point; infinite where there is none. Asked for from several threads.</param>
    /// <param name="bottom">Where the solver ended.</param>
    /// <param name="down">Solves on from a point, with steps for what is not known near another.</param>
    /// <param name="threads">How many threads.</param>
    /// <param name="cancellation">Ends it.</param>
    public static Valley Of(Func<double[], double> sumAt, LeastSquaresResult bottom, Func<double[], LeastSquaresResult, LeastSquaresResult> down, int threads, CancellationToken cancellation)
    {
        for (int way = 0; ; way++)
        {
            var matrix = Matrix<double>.Build.DenseOfArray(bottom.Covariance);
            if (!matrix.ForAll(double.IsFinite))
            {
                // Beside a car that is impossible on both sides there is no rim.
                return new Valley(bottom, matrix, double.NaN);
            }

            var axes = matrix.Evd(Symmetricity.Symmetric);
            double[] lengths = [.. axes.EigenValues.Select(value => Math.Sqrt(Math.Max(Narrowest, value.Real)))];
            Side[] sides = Sides(sumAt, bottom, axes.EigenVectors, lengths, threads, cancellation);
            Side lowest = sides.MinBy(side => side.Sum)!;
            if (way < MostWaysDown && lowest.Sum < bottom.SumOfSquares - Lower)
            {
                LeastSquaresResult next = down(lowest.Point, bottom);
                if (next.SumOfSquares < bottom.SumOfSquares - Lower)
                {
                    bottom = next;
                    continue;
                }
            }

            // A valley that is steep on one side and flat on the other is as wide as its flat side: the ± is one for both.
            double[] widths = [.. lengths.Select((length, k) => length * Math.Max(1, Math.Max(sides[2 * k].Wider, sides[(2 * k) + 1].Wider)))];
            var squares = Matrix<double>.Build.DenseOfDiagonalArray([.. widths.Select(width => width * width)]);
            return new Valley(bottom, (axes.EigenVectors * squares).TransposeAndMultiply(axes.EigenVectors), widths.Sum(Math.Log));
        }
    }

    /// <summary>The covariance about the deepest of several valleys, the others counted by how well they suit.</summary>
    /// <param name="valleys">The valleys, the deepest first.</param>
    public static double[,] Covariance(IReadOnlyList<Valley> valleys)
    {
        Valley deepest = valleys[0];
        var best = Vector<double>.Build.Dense(deepest.Bottom.Parameters);
        var sum = Matrix<double>.Build.Dense(best.Count, best.Count);
        foreach ((Valley valley, double share) in valleys.Zip(Shares(valleys)))
        {
            var off = Vector<double>.Build.Dense(valley.Bottom.Parameters) - best;
            sum += share * (valley.Covariance + off.OuterProduct(off));
        }

        return sum.ToArray();
    }

    /// <summary>How likely each of the valleys is, together 1.</summary>
    /// <param name="valleys">The valleys; several only if all are bounded.</param>
    public static double[] Shares(IReadOnlyList<Valley> valleys)
    {
        if (valleys.Count == 1)
        {
            return [1];
        }

        Valley deepest = valleys[0];
        double[] weights = [.. valleys.Select(valley => Math.Exp(((deepest.Bottom.SumOfSquares - valley.Bottom.SumOfSquares) / 2) + valley.LogVolume - deepest.LogVolume))];
        return [.. weights.Select(weight => weight / weights.Sum())];
    }

    /// <summary>Whether a point lies in a valley that is known already.</summary>
    public static bool AreOne(Valley valley, double[] point)
    {
        var off = Vector<double>.Build.Dense(point) - Vector<double>.Build.Dense(valley.Bottom.Parameters);
        return Math.Sqrt(Math.Max(0, off * valley.Covariance.Solve(off))) < Same;
    }

    // Both sides of every axis, one after the other.
    private static Side[] Sides(Func<double[], double> sumAt, LeastSquaresResult bottom, Matrix<double> axes, double[] lengths, int threads, CancellationToken cancellation)
    {
        var sides = new Side[2 * lengths.Length];
        _ = Parallel.ForEach(Partitioner.Create(0, sides.Length, 1), new ParallelOptions { MaxDegreeOfParallelism = threads, CancellationToken = cancellation }, range =>
        {
            for (int i = range.Item1; i < range.Item2; i++)
            {
                int axis = i / 2;
                sides[i] = Outward(sumAt, bottom, [.. axes.Column(axis).Select(part => (i % 2 == 0 ? 1 : -1) * lengths[axis] * part)]);
            }
        });
        return sides;
    }

    // From the rim on outward, for as long as the sum hardly rises. In the end it does: what the file knows beforehand is part of it.
    private static Side Outward(Func<double[], double> sumAt, LeastSquaresResult bottom, double[] length)
    {
        double flat = 0;
        Side? lowest = null;
        for (double far = Rim; ; far *= 2)
        {
            double[] point = [.. bottom.Parameters.Select((value, i) => value + (far * length[i]))];
            double sum = sumAt(point), rise = sum - bottom.SumOfSquares;
            lowest = lowest is null || sum < lowest.Sum ? new Side(point, sum, 0) : lowest;
            if (rise > 1 || far >= Farthest)
            {
                return lowest with { Wider = Math.Max(flat, far / Math.Sqrt(Math.Max(rise, 1))) };
            }

            flat = far;
        }
    }

    /// <summary>What lies on one side of an axis.</summary>
    /// <param name="Point">The lowest point that was looked at.</param>
    /// <param name="Sum">Its sum.</param>
    /// <param name="Wider">How far away the sum has risen by 1, in the linearised standard deviations.</param>
    private sealed record Side(double[] Point, double Sum, double Wider);
}

/// <summary>One valley of a fit.</summary>
/// <param name="Bottom">Its lowest point.</param>
/// <param name="Covariance">As wide as it is at its rim.</param>
/// <param name="LogVolume">Logarithm of the product of its widths; not a number where it has no end on some side.</param>
internal sealed record Valley(LeastSquaresResult Bottom, Matrix<double> Covariance, double LogVolume)
{
    /// <summary>Whether it has an end on every side, so that it can be weighed against others.</summary>
    public bool IsBounded => double.IsFinite(LogVolume);
}
