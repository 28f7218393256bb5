using System.Runtime.Intrinsics;

namespace LaunchSim.Studies.Chance;

/// <summary>
/// Smooth functions of a rank among n, orthonormal over the ranks and to the constant: the normal score, its square, and the
/// first cosines, in that order made orthogonal.
/// </summary>
internal sealed class RankBasis
{
    private const int Scores = 2;

    private const int FewestCosines = 2;

    private const int MostCosines = 16;

    // Function by function, each filled up with zeros to whole vectors.
    private readonly double[] _values;

    /// <summary>Computes the functions.</summary>
    /// <param name="count">How many ranks, more than <see cref="FunctionsFor"/> that many.</param>
    public RankBasis(int count)
    {
        Count = count;
        Stride = (count + Vector256<double>.Count - 1) / Vector256<double>.Count * Vector256<double>.Count;
        Functions = FunctionsFor(count);
        _values = new double[Functions * Stride];
        for (int i = 0; i < count; i++)
        {
            double u = (i + 0.5) / count;
            double score = NormalQuantile.Of(u);
            _values[i] = score;
            _values[Stride + i] = score * score;
            for (int m = 1; m <= Functions - Scores; m++)
            {
                _values[((Scores + m - 1) * Stride) + i] = Math.Cos(Math.PI * m * u);
            }
        }

        for (int k = 0; k < Functions; k++)
        {
            Orthonormalise(k);
        }
    }

    /// <summary>How many ranks.</summary>
    public int Count { get; }

    /// <summary>How long a row of values is, filled up with zeros.</summary>
    public int Stride { get; }

    /// <summary>How many functions.</summary>
    public int Functions { get; }

    /// <summary>How many functions stand for an input with so many draws: they grow as the third root, 14 at 2,000.</summary>
    public static int FunctionsFor(int count) => Scores + Math.Clamp((int)Math.Cbrt(count), FewestCosines, MostCosines);

    /// <summary>The sums of products of values in the order of ranks with each function.</summary>
    public void Project(ReadOnlySpan<double> values, Span<double> coefficients)
    {
        for (int k = 0; k < Functions; k++)
        {
            coefficients[k] = Dot(values, Function(k));
        }
    }

    /// <summary>The sum of the functions, each times its coefficient.</summary>
    public void Combine(ReadOnlySpan<double> coefficients, Span<double> values)
    {
        values.Clear();
        for (int k = 0; k < Functions; k++)
        {
            AddMultiple(values, coefficients[k], Function(k));
        }
    }

    private Span<double> Function(int k) => _values.AsSpan(k * Stride, Stride);

    // Gram and Schmidt, twice: the first cosine is nearly the normal score, and once would leave some of it.
    private void Orthonormalise(int k)
    {
        Span<double> own = Function(k);
        for (int pass = 0; pass < 2; pass++)
        {
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
    }

    // Vectors of a fixed width, so that sums are the same to the bit on every processor.
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
