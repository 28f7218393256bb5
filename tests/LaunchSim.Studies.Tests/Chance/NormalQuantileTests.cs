using LaunchSim.Studies.Chance;

namespace LaunchSim.Studies.Tests.Chance;

public class NormalQuantileTests
{
    [Theory]
    [InlineData(0.5, 0)]
    [InlineData(0.95, 1.6448536269514722)]
    [InlineData(0.975, 1.9599639845400545)]
    [InlineData(0.995, 2.5758293035489004)]
    [InlineData(0.025, -1.9599639845400545)]
    [InlineData(1e-10, -6.361340902404056)]
    public void Of_PrintedProbabilities_GivesPrintedQuantiles(double probability, double quantile)
        => Assert.Equal(quantile, NormalQuantile.Of(probability), 4e-15 * Math.Max(1, Math.Abs(quantile)));

    [Fact]
    public void Of_TheMiddle_IsTheInverseOfTheSeries()
    {
        for (double x = -3; x <= 3; x += 0.01)
        {
            Assert.Equal(x, NormalQuantile.Of(Series(x)), 1e-13);
        }
    }

    [Fact]
    public void Of_TheTail_IsTheInverseOfTheContinuedFraction()
    {
        for (double x = 3; x <= 37; x += 0.1)
        {
            Assert.Equal(-x, NormalQuantile.Of(Tail(x)), 1e-13 * x);
        }
    }

    [Fact]
    public void Of_TheOutermostDoubles_IsFinite()
    {
        Assert.InRange(NormalQuantile.Of(double.Epsilon), -38.6, -38.4);
        Assert.InRange(NormalQuantile.Of(Math.BitDecrement(1)), 8.2, 8.3);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(-0.1)]
    [InlineData(double.NaN)]
    public void Of_NoProbability_IsRefused(double probability)
        => Assert.Throws<ArgumentOutOfRangeException>(() => NormalQuantile.Of(probability));

    // Φ(x) = 1/2 + φ(x)(x + x³/3 + x⁵/(3·5) + …), Abramowitz and Stegun 26.2.11.
    private static double Series(double x)
    {
        double term = x, sum = x;
        for (int k = 3; k < 200; k += 2)
        {
            term *= x * x / k;
            sum += term;
        }

        return 0.5 + (Density(x) * sum);
    }

    // 1 − Φ(x) = φ(x)/(x + 1/(x + 2/(x + 3/(x + …)))), Abramowitz and Stegun 26.2.14.
    private static double Tail(double x)
    {
        double fraction = x;
        for (int k = 400; k >= 1; k--)
        {
            fraction = x + (k / fraction);
        }

        return Density(x) / fraction;
    }

    private static double Density(double x) => Math.Exp(-x * x / 2) / Math.Sqrt(2 * Math.PI);
}
