using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace LaunchSim.Integration;

/// <summary>
/// The pair's arithmetic on one block of memory: stage states, error norm and dense coefficients, a vector register at
/// a time. The states are padded to whole registers; the padding stays zero.
/// </summary>
internal sealed class DormandPrince
{
    // Read once from the tableau, so that the tableau is the only place that holds a coefficient; the compiler folds
    // static read-only numbers into the code.
    private static readonly double A21 = Tableau.DormandPrince.A[1][0];
    private static readonly double A31 = Tableau.DormandPrince.A[2][0], A32 = Tableau.DormandPrince.A[2][1];
    private static readonly double A41 = Tableau.DormandPrince.A[3][0], A42 = Tableau.DormandPrince.A[3][1], A43 = Tableau.DormandPrince.A[3][2];
    private static readonly double A51 = Tableau.DormandPrince.A[4][0], A52 = Tableau.DormandPrince.A[4][1], A53 = Tableau.DormandPrince.A[4][2], A54 = Tableau.DormandPrince.A[4][3];
    private static readonly double A61 = Tableau.DormandPrince.A[5][0], A62 = Tableau.DormandPrince.A[5][1], A63 = Tableau.DormandPrince.A[5][2], A64 = Tableau.DormandPrince.A[5][3], A65 = Tableau.DormandPrince.A[5][4];
    private static readonly double B1 = Tableau.DormandPrince.B[0], B3 = Tableau.DormandPrince.B[2], B4 = Tableau.DormandPrince.B[3], B5 = Tableau.DormandPrince.B[4], B6 = Tableau.DormandPrince.B[5];
    private static readonly double E1 = ErrorWeight(0), E3 = ErrorWeight(2), E4 = ErrorWeight(3), E5 = ErrorWeight(4), E6 = ErrorWeight(5), E7 = ErrorWeight(6);
    private static readonly double D1 = Tableau.DormandPrince.Dense[0], D3 = Tableau.DormandPrince.Dense[2], D4 = Tableau.DormandPrince.Dense[3], D5 = Tableau.DormandPrince.Dense[4], D6 = Tableau.DormandPrince.Dense[5], D7 = Tableau.DormandPrince.Dense[6];

    private readonly double[] _stages;
    private readonly double[] _absolute;
    private readonly double[] _coefficients;

    public DormandPrince(int dimension, double tolerance, IReadOnlyList<double>? scales)
    {
        Dimension = dimension;
        Tolerance = tolerance;
        Stride = (dimension + Vector<double>.Count - 1) / Vector<double>.Count * Vector<double>.Count;
        _stages = new double[7 * Stride];
        _coefficients = new double[5 * Stride];
        _absolute = new double[Stride];
        Array.Fill(_absolute, 1);
        State = new double[Stride];
        Next = new double[Stride];
        Trial = new double[Stride];
        for (int i = 0; i < dimension; i++)
        {
            _absolute[i] = tolerance * (scales?[i] ?? 1);
        }
    }

    public int Dimension { get; }

    public int Stride { get; }

    public double Tolerance { get; }

    /// <summary>States at the step's start.</summary>
    public double[] State { get; private set; }

    /// <summary>States at the step's end.</summary>
    public double[] Next { get; private set; }

    /// <summary>States of the stage in work, and room for dense output.</summary>
    public double[] Trial { get; }

    public Span<double> Stage(int index) => _stages.AsSpan(index * Stride, Stride);

    public ReadOnlySpan<double> Coefficients => _coefficients;

    /// <summary>The end becomes the start, its derivative the first stage.</summary>
    public void Advance()
    {
        (State, Next) = (Next, State);
        Stage(6).CopyTo(Stage(0));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Second(double h)
    {
        ref double y = ref MemoryMarshal.GetArrayDataReference(State);
        ref double k = ref MemoryMarshal.GetArrayDataReference(_stages);
        ref double to = ref MemoryMarshal.GetArrayDataReference(Trial);
        var w1 = new Vector<double>(h * A21);
        for (int i = 0; i < Stride; i += Vector<double>.Count)
        {
            Store(ref to, i, Load(ref y, i) + (w1 * Load(ref k, i)));
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Third(double h)
    {
        ref double y = ref MemoryMarshal.GetArrayDataReference(State);
        ref double k = ref MemoryMarshal.GetArrayDataReference(_stages);
        ref double to = ref MemoryMarshal.GetArrayDataReference(Trial);
        int n = Stride;
        var w1 = new Vector<double>(h * A31);
        var w2 = new Vector<double>(h * A32);
        for (int i = 0; i < n; i += Vector<double>.Count)
        {
            Store(ref to, i, Load(ref y, i) + (w1 * Load(ref k, i)) + (w2 * Load(ref k, n + i)));
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Fourth(double h)
    {
        ref double y = ref MemoryMarshal.GetArrayDataReference(State);
        ref double k = ref MemoryMarshal.GetArrayDataReference(_stages);
        ref double to = ref MemoryMarshal.GetArrayDataReference(Trial);
        int n = Stride;
        var w1 = new Vector<double>(h * A41);
        var w2 = new Vector<double>(h * A42);
        var w3 = new Vector<double>(h * A43);
        for (int i = 0; i < n; i += Vector<double>.Count)
        {
            Store(ref to, i, Load(ref y, i) + ((w1 * Load(ref k, i)) + (w2 * Load(ref k, n + i)) + (w3 * Load(ref k, (2 * n) + i))));
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Fifth(double h)
    {
        ref double y = ref MemoryMarshal.GetArrayDataReference(State);
        ref double k = ref MemoryMarshal.GetArrayDataReference(_stages);
        ref double to = ref MemoryMarshal.GetArrayDataReference(Trial);
        int n = Stride;
        var w1 = new Vector<double>(h * A51);
        var w2 = new Vector<double>(h * A52);
        var w3 = new Vector<double>(h * A53);
        var w4 = new Vector<double>(h * A54);
        for (int i = 0; i < n; i += Vector<double>.Count)
        {
            Store(ref to, i, Load(ref y, i)
                + ((w1 * Load(ref k, i)) + (w2 * Load(ref k, n + i)) + ((w3 * Load(ref k, (2 * n) + i)) + (w4 * Load(ref k, (3 * n) + i)))));
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Sixth(double h)
    {
        ref double y = ref MemoryMarshal.GetArrayDataReference(State);
        ref double k = ref MemoryMarshal.GetArrayDataReference(_stages);
        ref double to = ref MemoryMarshal.GetArrayDataReference(Trial);
        int n = Stride;
        var w1 = new Vector<double>(h * A61);
        var w2 = new Vector<double>(h * A62);
        var w3 = new Vector<double>(h * A63);
        var w4 = new Vector<double>(h * A64);
        var w5 = new Vector<double>(h * A65);
        for (int i = 0; i < n; i += Vector<double>.Count)
        {
            Store(ref to, i, Load(ref y, i)
                + ((w1 * Load(ref k, i)) + (w2 * Load(ref k, n + i)) + ((w3 * Load(ref k, (2 * n) + i)) + (w4 * Load(ref k, (3 * n) + i))) + (w5 * Load(ref k, (4 * n) + i))));
        }
    }

    /// <summary>The solution at the step's end.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Solution(double h)
    {
        ref double y = ref MemoryMarshal.GetArrayDataReference(State);
        ref double k = ref MemoryMarshal.GetArrayDataReference(_stages);
        ref double to = ref MemoryMarshal.GetArrayDataReference(Next);
        int n = Stride;
        var w1 = new Vector<double>(h * B1);
        var w3 = new Vector<double>(h * B3);
        var w4 = new Vector<double>(h * B4);
        var w5 = new Vector<double>(h * B5);
        var w6 = new Vector<double>(h * B6);
        for (int i = 0; i < n; i += Vector<double>.Count)
        {
            Store(ref to, i, Load(ref y, i)
                + ((w1 * Load(ref k, i)) + (w3 * Load(ref k, (2 * n) + i)) + ((w4 * Load(ref k, (3 * n) + i)) + (w5 * Load(ref k, (4 * n) + i))) + (w6 * Load(ref k, (5 * n) + i))));
        }
    }

    /// <summary>
    /// Root mean square of the estimated error over each state's tolerance; not a number when a derivative is not finite.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double ErrorNorm(double h)
    {
        ref double y = ref MemoryMarshal.GetArrayDataReference(State);
        ref double next = ref MemoryMarshal.GetArrayDataReference(Next);
        ref double k = ref MemoryMarshal.GetArrayDataReference(_stages);
        ref double absolute = ref MemoryMarshal.GetArrayDataReference(_absolute);
        int n = Stride;
        var w1 = new Vector<double>(h * E1);
        var w3 = new Vector<double>(h * E3);
        var w4 = new Vector<double>(h * E4);
        var w5 = new Vector<double>(h * E5);
        var w6 = new Vector<double>(h * E6);
        var w7 = new Vector<double>(h * E7);
        var relative = new Vector<double>(Tolerance);
        var sum = Vector<double>.Zero;
        for (int i = 0; i < n; i += Vector<double>.Count)
        {
            Vector<double> error = (w1 * Load(ref k, i)) + (w3 * Load(ref k, (2 * n) + i))
                + ((w4 * Load(ref k, (3 * n) + i)) + (w5 * Load(ref k, (4 * n) + i)))
                + ((w6 * Load(ref k, (5 * n) + i)) + (w7 * Load(ref k, (6 * n) + i)));
            Vector<double> scale = Load(ref absolute, i)
                + (relative * Vector.Max(Vector.Abs(Load(ref y, i)), Vector.Abs(Load(ref next, i))));
            Vector<double> ratio = error / scale;
            sum += ratio * ratio;
        }

        return Math.Sqrt(Vector.Sum(sum) / Dimension);
    }

    /// <summary>Writes the dense output's coefficients for the step just made.</summary>
    public void PrepareDense(double h)
    {
        ref double y = ref MemoryMarshal.GetArrayDataReference(State);
        ref double next = ref MemoryMarshal.GetArrayDataReference(Next);
        ref double k = ref MemoryMarshal.GetArrayDataReference(_stages);
        ref double r = ref MemoryMarshal.GetArrayDataReference(_coefficients);
        int n = Stride;
        var size = new Vector<double>(h);
        var w1 = new Vector<double>(h * D1);
        var w3 = new Vector<double>(h * D3);
        var w4 = new Vector<double>(h * D4);
        var w5 = new Vector<double>(h * D5);
        var w6 = new Vector<double>(h * D6);
        var w7 = new Vector<double>(h * D7);
        for (int i = 0; i < n; i += Vector<double>.Count)
        {
            Vector<double> r1 = Load(ref y, i);
            Vector<double> r2 = Load(ref next, i) - r1;
            Vector<double> r3 = (size * Load(ref k, i)) - r2;
            Store(ref r, i, r1);
            Store(ref r, n + i, r2);
            Store(ref r, (2 * n) + i, r3);
            Store(ref r, (3 * n) + i, r2 - (size * Load(ref k, (6 * n) + i)) - r3);
            Store(ref r, (4 * n) + i,
                (w1 * Load(ref k, i)) + (w3 * Load(ref k, (2 * n) + i))
                + ((w4 * Load(ref k, (3 * n) + i)) + (w5 * Load(ref k, (4 * n) + i)))
                + ((w6 * Load(ref k, (5 * n) + i)) + (w7 * Load(ref k, (6 * n) + i))));
        }
    }

    /// <summary>Norm of a vector over each state's tolerance at the step's start, for the choice of the first step.</summary>
    public double Norm(ReadOnlySpan<double> v)
    {
        double sum = 0;
        for (int i = 0; i < Dimension; i++)
        {
            double ratio = v[i] / (_absolute[i] + (Tolerance * Math.Abs(State[i])));
            sum += ratio * ratio;
        }

        return Math.Sqrt(sum / Dimension);
    }

    private static double ErrorWeight(int stage) => Tableau.DormandPrince.B[stage] - Tableau.DormandPrince.Embedded[stage];

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<double> Load(ref double from, int index) => Vector.LoadUnsafe(ref from, (nuint)index);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Store(ref double to, int index, Vector<double> value) => value.StoreUnsafe(ref to, (nuint)index);
}
