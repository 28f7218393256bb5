using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

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
        int n = Math.Min(y.Length, stride);

        // One check here spares two at every access.
        ref double from = ref MemoryMarshal.GetReference(r[..(5 * stride)]);
        ref double to = ref MemoryMarshal.GetReference(y);
        int done = 0;
        if (Vector<double>.Count <= n)
        {
            // A register at a time, in the same order of operations and so to the same bits.
            var t = new Vector<double>(theta);
            var s = new Vector<double>(1 - theta);
            for (; done <= n - Vector<double>.Count; done += Vector<double>.Count)
            {
                Vector<double> inner = Load(ref from, (2 * stride) + done)
                    + (t * (Load(ref from, (3 * stride) + done) + (s * Load(ref from, (4 * stride) + done))));
                Vector<double> value = Load(ref from, done) + (t * (Load(ref from, stride + done) + (s * inner)));
                value.StoreUnsafe(ref to, (nuint)done);
            }
        }

        double rest = 1 - theta;
        for (int i = done; i < n; i++)
        {
            y[i] = r[i] + (theta * (r[stride + i] + (rest * (r[(2 * stride) + i] + (theta * (r[(3 * stride) + i] + (rest * r[(4 * stride) + i])))))));
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<double> Load(ref double from, int index) => Vector.LoadUnsafe(ref from, (nuint)index);
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
