using System.Runtime.Intrinsics;
using CsCheck;
using LaunchSim.Dynamics;

namespace LaunchSim.Tests.Dynamics;

/// <summary>
/// Sines, cosines, arctangents and hyperbolic tangents in pairs against <see cref="Math"/>. The tolerance is two units in
/// the last place where the value is not near 0, and 2e-16 absolute there: what their polynomials were made for.
/// </summary>
public sealed class PairMathTests
{
    private const double TwoUnits = 4.5e-16;

    private static readonly Gen<(double, double)> Angles = Gen.Select(Gen.Double[-4, 4], Gen.Double[-4, 4]);
    private static readonly Gen<(double, double)> Small = Gen.Select(Gen.Double[-1.6, 1.6], Gen.Double[-1e-3, 1e-3]);
    private static readonly Gen<(double, double)> Wide = Gen.Select(Gen.Double[-60, 60], Gen.Double[-1e6, 1e6]);

    [Fact]
    public void SinCos_UpTo4_IsThatOfTheLibrary() => Angles.Sample(pair =>
    {
        PairMath.SinCos(Vector128.Create(pair.Item1, pair.Item2), out Vector128<double> sine, out Vector128<double> cosine);
        Same(Math.Sin(pair.Item1), sine[0]);
        Same(Math.Sin(pair.Item2), sine[1]);
        Same(Math.Cos(pair.Item1), cosine[0]);
        Same(Math.Cos(pair.Item2), cosine[1]);
    });

    [Fact]
    public void SinCosOfSmall_OnBothSidesOfItsLimit_IsThatOfTheLibrary() => Small.Sample(pair =>
    {
        PairMath.SinCosOfSmall(Vector128.Create(pair.Item1, pair.Item2), out Vector128<double> sine, out Vector128<double> cosine);
        Same(Math.Sin(pair.Item1), sine[0]);
        Same(Math.Sin(pair.Item2), sine[1]);
        Same(Math.Cos(pair.Item1), cosine[0]);
        Same(Math.Cos(pair.Item2), cosine[1]);
    });

    [Fact]
    public void Atan_Anywhere_IsThatOfTheLibrary() => Wide.Sample(pair =>
    {
        Vector128<double> angle = PairMath.Atan(Vector128.Create(pair.Item1, pair.Item2));
        Same(Math.Atan(pair.Item1), angle[0]);
        Same(Math.Atan(pair.Item2), angle[1]);
    });

    [Fact]
    public void Tanh_Anywhere_IsThatOfTheLibrary() => Wide.Sample(pair =>
    {
        Vector128<double> share = PairMath.Tanh(Vector128.Create(pair.Item1, pair.Item2));
        Assert.InRange(Math.Abs(Math.Tanh(pair.Item1) - share[0]), 0, TwoUnits);
        Assert.InRange(Math.Abs(Math.Tanh(pair.Item2) - share[1]), 0, TwoUnits);
    });

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void SinCos_OfWhatIsNoAngle_IsNotANumber(double angle)
    {
        PairMath.SinCosOfSmall(Vector128.Create(angle, 0.1), out Vector128<double> sine, out _);
        Assert.True(double.IsNaN(sine[0]));
        Assert.Equal(Math.Sin(0.1), sine[1], 1e-16);
    }

    [Fact]
    public void TireCurvePair_AnySlip_IsTheScalarCurve() => Gen.Select(Gen.Double[-3, 3], Gen.Double[-0.2, 0.2]).Sample(pair =>
    {
        TireCurve rear = TireCurve.From(40, 2.3, 0.12, 0.65), front = TireCurve.From(20, 1.1, 0.10, 0.80);
        Vector128<double> both = new TireCurvePair(rear, front).At(Vector128.Create(pair.Item1, pair.Item2));
        Assert.Equal(rear.At(pair.Item1), both[0], 4e-15);
        Assert.Equal(front.At(pair.Item2), both[1], 4e-15);
    });

    private static void Same(double expected, double actual) =>
        Assert.InRange(Math.Abs(actual - expected), 0, Math.Max(2e-16, TwoUnits * Math.Abs(expected)));
}
