using System.Runtime.Intrinsics;

namespace LaunchSim.Studies.Chance;

/// <summary>
/// Functions of a rank among n, orthonormal over the ranks and to the constant: smooth ones, which are the normal score, its
/// square and the first cosines, and then twice as many cosines again, too fine for an effect, which show the noise.
/// </summary>
internal sealed class RankBasis
{
    private const int Scores = 2;

    private const int FewestCosines = 2;

    private const int MostCosines = 16;

    // Function by function, each filled up with zeros to whole vectors.
    private readonly double[] _values;

    private readonly double[] _smoothWeights;

    private readonly double[] _fineWeights;

    /// <summary>Computes the functions.</summary>
    /// <param name="count">How many ranks, <see cref="VarianceShares.FewestDraws"/> or more.</param>
    public RankBasis(int count)
    {
        Count = count;
        Stride = (count + Vector256<double>.Count - 1) / Vector256<double>.Count * Vector256<double>.Count;
        int cosines = Math.Clamp((int)Math.Cbrt(count), FewestCosines, MostCosines);
        Smooth = Scores + cosines;
        Fine = 2 * cosines;
        _values = new double[(Smooth + Fine) * Stride];
        for (int i = 0; i < count; i++)
        {
            double u = (i + 0.5) / count;
            double score = NormalQuantile.Of(u);
            _values[i] = score;
            _values[Stride + i] = score * score;
            for (int m = 1; m <= cosines + Fine; m++)
            {
                _values[((Scores + m - 1) * Stride) + i] = Math.Cos(Math.PI * m * u);
            }
        }

        for (int k = 0; k < Smooth + Fine; k++)
        {
            Orthonormalise(k);
        }

        _smoothWeights = new double[Stride];
        _fineWeights = new double[Stride];
        for (int i = 0; i < count; i++)
        {
            double smooth = Squares(i, 0, Smooth), left = 1 - smooth - (1.0 / count);
            _smoothWeights[i] = smooth / left;
            _fineWeights[i] = Squares(i, Smooth, Fine) / left;
        }
    }

    /// <summary>How many ranks.</summary>
    public int Count { get; }

    /// <summary>How long a row of values is, filled up with zeros.</summary>
    public int Stride { get; }

    /// <summary>How many smooth functions.</summary>
    public int Smooth { get; }

    /// <summary>How many fine ones, which come after them.</summary>
    public int Fine { get; }

    /// <summary>
    /// What to weigh the squared residual at each rank with, to have what independent noise of that size leaves in the squared
    /// coefficients of the smooth functions: their squares at that rank over the part of the noise that is still in the
    /// residual there.
    /// </summary>
    public ReadOnlySpan<double> SmoothWeights => _smoothWeights;

    /// <summary>The same for the fine functions.</summary>
    public ReadOnlySpan<double> FineWeights => _fineWeights;

    /// <summary>The sums of products of values in the order of ranks with each function, smooth and fine.</summary>
    public void Project(ReadOnlySpan<double> values, Span<double> coefficients)
    {
        for (int k = 0; k < Smooth + Fine; k++)
        {
            coefficients[k] = Dot(values, Function(k));
        }
    }

    /// <summary>The sum of the smooth functions, each times its coefficient.</summary>
    public void Combine(ReadOnlySpan<double> coefficients, Span<double> values)
    {
        values.Clear();
        for (int k = 0; k < Smooth; k++)
        {
            AddMultiple(values, coefficients[k], Function(k));
        }
    }

    private Span<double> Function(int k) => _values.AsSpan(k * Stride, Stride);

    private double Squares(int rank, int from, int functions)
    {
        double sum = 0;
        for (int k = from; k < from + functions; k++)
        {
            double value = _values[(k * Stride) + rank];
            sum += value * value;
        }

        return sum;
    }

    // Gram and Schmidt, each component taken off what the ones before have left.
    private void Orthonormalise(int k)
    {
        Span<double> own = Function(k);
        double mean = 0;
        foreach (double value in own[..Count])
        {
            mean += value / Count;
        }

        foreach (ref double value in own[..Count])
        {
            value -= mean;
        }

        for (int before = 0; before < k; before++)
        {
            AddMultiple(own, -Dot(own, Function(before)), Function(before));
        }

        double length = Math.Sqrt(Dot(own, own));
        foreach (ref double value in own)
        {
            value /= length;
        }
    }

    // Vectors of a fixed width: the order of the sums does not change with the processor's own.
    private static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        Vector256<double> sum = Vector256<double>.Zero;
        for (int i = 0; i < a.Length; i += Vector256<double>.Count)
        {
            sum += Vector256.Create(a[i..]) * Vector256.Create(b[i..]);
        }

        return Vector256.Sum(sum);
    }

    private static void AddMultiple(Span<double> to, double factor, ReadOnlySpan<double> of)
    {
        for (int i = 0; i < to.Length; i += Vector256<double>.Count)
        {
            (Vector256.Create<double>(to[i..]) + (factor * Vector256.Create(of[i..]))).CopyTo(to[i..]);
        }
    }
}
