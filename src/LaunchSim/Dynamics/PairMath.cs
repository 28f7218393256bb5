using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace LaunchSim.Dynamics;

/// <summary>
/// Sine, cosine and arctangent of two numbers at once. The launch needs each of them for the front and the rear tyre, and
/// for pitch and linkage, in pairs; the scalar library calls were two thirds of an evaluation. Good to two units in the
/// last place over the ranges stated, which the tests hold against <see cref="Math"/>.
/// </summary>
internal static class PairMath
{
    private const double RoundingShift = 6755399441055744.0;

    /// <summary>
    /// Sine and cosine for |x| up to 4: reduced by multiples of π/2 in two parts, then the polynomials of fdlibm's
    /// kernels (k_sin.c, k_cos.c; coefficients from memory).
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void SinCos(Vector128<double> x, out Vector128<double> sine, out Vector128<double> cosine)
    {
        // Adding and taking away 1.5·2^52 rounds to a whole number and leaves it in the low bits.
        Vector128<double> shifted = Add(x, Vector128.Create(2 / Math.PI), Vector128.Create(RoundingShift));
        Vector128<double> turns = shifted - Vector128.Create(RoundingShift);
        Vector128<double> r = Add(-turns, Vector128.Create(Math.PI / 2), x) - (turns * 6.12323399573676603587e-17);
        Kernels(r, out Vector128<double> sinR, out Vector128<double> cosR);

        // Quadrant: odd ones change sine for cosine; the second and third turn the sine's sign, the first and second the cosine's.
        Vector128<long> quadrant = shifted.AsInt64();
        Vector128<double> odd = (-(quadrant & Vector128<long>.One)).AsDouble();
        Vector128<double> sineSign = ((quadrant & Vector128.Create(2L)) << 62).AsDouble();
        Vector128<double> cosineSign = (((quadrant + Vector128<long>.One) & Vector128.Create(2L)) << 62).AsDouble();
        sine = Vector128.ConditionalSelect(odd, cosR, sinR) ^ sineSign;
        cosine = Vector128.ConditionalSelect(odd, sinR, cosR) ^ cosineSign;
    }

    /// <summary>Sine and cosine where |x| is mostly below π/4, as pitch and linkage angles are: no reduction then.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static void SinCosOfSmall(Vector128<double> x, out Vector128<double> sine, out Vector128<double> cosine)
    {
        if (Vector128.LessThanAll(Vector128.Abs(x), Vector128.Create(0.78)))
        {
            Kernels(x, out sine, out cosine);
        }
        else
        {
            SinCosAnywhere(x, out sine, out cosine);
        }
    }

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void SinCosAnywhere(Vector128<double> x, out Vector128<double> sine, out Vector128<double> cosine)
    {
        (double s0, double c0) = Math.SinCos(x[0]);
        (double s1, double c1) = Math.SinCos(x[1]);
        sine = Vector128.Create(s0, s1);
        cosine = Vector128.Create(c0, c1);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void Kernels(Vector128<double> r, out Vector128<double> sine, out Vector128<double> cosine)
    {
        Vector128<double> z = r * r, z2 = z * z;
        Vector128<double> s = Add(z2,
            Add(z2, Add(z, 1.58969099521155010221e-10, -2.50507602534068634195e-08), Add(z, 2.75573137070700676789e-06, -1.98412698298579493134e-04)),
            Add(z, 8.33333333332248946124e-03, -1.66666666666666324348e-01));
        Vector128<double> c = Add(z2,
            Add(z2, Add(z, -1.13596475577881948265e-11, 2.08757232129817482790e-09), Add(z, -2.75573143513906633035e-07, 2.48015872894767294178e-05)),
            Add(z, -1.38888888888741095749e-03, 4.16666666666666019037e-02));
        sine = Add(r * z, s, r);
        cosine = Add(z2, c, Add(z, -0.5, 1));
    }

    /// <summary>Arctangent of any number: rational approximation of the Cephes library (atan.c; coefficients from memory).</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector128<double> Atan(Vector128<double> x)
    {
        Vector128<double> sign = x & Vector128.Create(-0.0);
        Vector128<double> a = Vector128.Abs(x);
        Vector128<double> large = Vector128.GreaterThan(a, Vector128.Create(2.41421356237309504880));
        Vector128<double> middle = Vector128.GreaterThan(a, Vector128.Create(0.66));
        Vector128<double> one = Vector128<double>.One;
        Vector128<double> above = Vector128.ConditionalSelect(large, -one, Vector128.ConditionalSelect(middle, a - one, a));
        Vector128<double> below = Vector128.ConditionalSelect(large, a, Vector128.ConditionalSelect(middle, a + one, one));
        Vector128<double> r = above / below;
        Vector128<double> whole = Vector128.ConditionalSelect(
            large, Vector128.Create(Math.PI / 2), Vector128.ConditionalSelect(middle, Vector128.Create(Math.PI / 4), Vector128<double>.Zero));
        Vector128<double> rest = Vector128.ConditionalSelect(
            large, Vector128.Create(6.123233995736765886130e-17),
            Vector128.ConditionalSelect(middle, Vector128.Create(0.5 * 6.123233995736765886130e-17), Vector128<double>.Zero));

        Vector128<double> z = r * r, z2 = z * z;
        Vector128<double> p = Add(z2,
            Add(z2, Vector128.Create(-8.750608600031904122785e-1), Add(z, -1.615753718733365076637e1, -7.500855792314704667340e1)),
            Add(z, -1.228866684490136173410e2, -6.485021904942025371773e1));
        Vector128<double> q = Add(z2,
            Add(z2, z + Vector128.Create(2.485846490142306297962e1), Add(z, 1.650270098316988542046e2, 4.328810604912902668951e2)),
            Add(z, 4.853903996359136964868e2, 1.945506571482613964425e2));
        return (whole + (Add(r * z, p / q, r) + rest)) ^ sign;
    }

    /// <summary>Hyperbolic tangent as 1 − 2/(e^2x + 1), with the sign put back: good to 2e-16 absolute.</summary>
    public static Vector128<double> Tanh(Vector128<double> x)
    {
        Vector128<double> a = Vector128.Min(Vector128.Abs(x), Vector128.Create(20.0));
        Vector128<double> share = Vector128<double>.One - (Vector128.Create(2.0) / (Exp(a + a) + Vector128<double>.One));
        return share | (x & Vector128.Create(-0.0));
    }

    /// <summary>e^x for 0 to 700: powers of two taken out, ln 2 in two parts, the rest by its series to x¹³/13!.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector128<double> Exp(Vector128<double> x)
    {
        Vector128<double> shifted = Add(x, 1.4426950408889634, RoundingShift);
        Vector128<double> powers = shifted - Vector128.Create(RoundingShift);
        Vector128<double> r = x - (powers * 6.93147180369123816490e-01) - (powers * 1.90821492927058770002e-10);
        Vector128<double> r2 = r * r, r4 = r2 * r2, r8 = r4 * r4;
        Vector128<double> low = Add(r2, Add(r, 1.0 / 6, 1.0 / 2), Add(r, 1, 1));
        Vector128<double> middle = Add(r2, Add(r, 1.0 / 5040, 1.0 / 720), Add(r, 1.0 / 120, 1.0 / 24));
        Vector128<double> high = Add(r4, Add(r, 1.0 / 6227020800, 1.0 / 479001600),
            Add(r2, Add(r, 1.0 / 39916800, 1.0 / 3628800), Add(r, 1.0 / 362880, 1.0 / 40320)));
        Vector128<double> series = Add(r8, high, Add(r4, middle, low));
        return (series.AsInt64() + (shifted.AsInt64() << 52)).AsDouble();
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector128<double> Add(Vector128<double> a, Vector128<double> b, Vector128<double> c) => Vector128.MultiplyAddEstimate(a, b, c);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector128<double> Add(Vector128<double> z, double b, double c) =>
        Vector128.MultiplyAddEstimate(z, Vector128.Create(b), Vector128.Create(c));
}
