using System.Numerics;
using System.Runtime.CompilerServices;

namespace LaunchSim.Integration;

/// <summary>
/// One accepted step as a polynomial of degree four: valid from <see cref="Start"/> to <see cref="End"/>, which is
/// earlier than the step that was computed when an event cut it short.
/// </summary>
public readonly ref struct DenseStep
{
    private readonly ReadOnlySpan<double> _coefficients;
    private readonly int _stride;
    private readonly double _size;

    internal DenseStep(double start, double end, double size, ReadOnlySpan<double> coefficients, int stride)
    {
        Start = start;
        End = end;
        _size = size;
        _coefficients = coefficients;
        _stride = stride;
    }

    /// <summary>Where the step begins.</summary>
    public double Start { get; }

    /// <summary>Where what holds of it ends.</summary>
    public double End { get; }

    /// <summary>The full size of the step that was computed, of which an event may have cut the end.</summary>
    public double Size => _size;

    /// <summary>The polynomial's coefficients, five blocks of the padded dimension.</summary>
    public ReadOnlySpan<double> Coefficients => _coefficients;

    /// <summary>The states at <paramref name="t"/>, anywhere in the step.</summary>
    /// <param name="t">The independent variable.</param>
    /// <param name="y">Receives the states; as long as the dimension or its padded length.</param>
    public void At(double t, Span<double> y) => Evaluate(_coefficients, _stride, (t - Start) / _size, y);

    /// <summary>Evaluates y = r1 + θ(r2 + (1−θ)(r3 + θ(r4 + (1−θ)r5))).</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal static void Evaluate(ReadOnlySpan<double> r, int stride, double theta, Span<double> y)
    {
        double rest = 1 - theta;
        int n = Math.Min(y.Length, stride);
        ReadOnlySpan<double> r1 = r[..stride], r2 = r.Slice(stride, stride), r3 = r.Slice(2 * stride, stride);
        ReadOnlySpan<double> r4 = r.Slice(3 * stride, stride), r5 = r.Slice(4 * stride, stride);
        int done = 0;
        if (Vector<double>.Count <= n)
        {
            // A register at a time, in the same order of operations and so to the same bits.
            var t = new Vector<double>(theta);
            var s = new Vector<double>(rest);
            for (; done <= n - Vector<double>.Count; done += Vector<double>.Count)
            {
                Vector<double> inner = At(r3, done) + (t * (At(r4, done) + (s * At(r5, done))));
                (At(r1, done) + (t * (At(r2, done) + (s * inner)))).CopyTo(y[done..]);
            }
        }

        for (int i = done; i < n; i++)
        {
            y[i] = r1[i] + (theta * (r2[i] + (rest * (r3[i] + (theta * (r4[i] + (rest * r5[i])))))));
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<double> At(ReadOnlySpan<double> block, int index) => new(block[index..]);
}

/// <summary>Sees every accepted step, before an event at its end changes anything. Implement it as a struct.</summary>
public interface IStepObserver
{
    /// <summary>Whether dense output is wanted; when false, <see cref="Accepted"/> is not called.</summary>
    static abstract bool WantsSteps { get; }

    /// <summary>Called for each accepted step in order.</summary>
    /// <param name="step">The step; valid during the call.</param>
    void Accepted(in DenseStep step);
}

/// <summary>Wants nothing.</summary>
public struct NoObserver : IStepObserver
{
    /// <inheritdoc/>
    public static bool WantsSteps => false;

    /// <inheritdoc/>
    public readonly void Accepted(in DenseStep step)
    {
    }
}
