using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.OdeSolvers;

namespace LaunchSim.Integration.Tests;

/// <summary>Orbits over a wide range of tolerances, an independent integrator, and a stiff system as an alarm.</summary>
public class LongRunTests
{
    private const double ArenstorfPeriod = 17.0652165601579625588917206249;

    private static readonly double[] ArenstorfStart = [.994, 0, 0, -2.00158510637908252240537862224];

    private static readonly double[] PleiadesStart =
    [
        3, 3, -1, -3, 2, -2, 2, 3, -3, 2, 0, 0, -4, 4,
        0, 0, 0, 0, 0, 1.75, -1.5, 0, 0, 0, -1.25, 1, 0, 0,
    ];

    private static readonly double[] PleiadesEnd =
    [
        .3706139143970502, 3.237284092057233, -3.222559032418324, .6597091455775310, .3425581707156584, 1.562172101400631,
        -.7003092922212495,
        -3.943437585517392, -3.271380973972550, 5.225081843456543, -2.590612434977470, 1.198213693392275,
        -.2429682344935824, 1.091449240428980,
    ];

    [Theory]
    [InlineData(1e-6, 1.0e-4)]
    [InlineData(1e-8, 8.9e-7)]
    [InlineData(1e-10, 2.0e-8)]
    [InlineData(1e-12, 2.4e-10)]
    public void Arenstorf_AfterOnePeriod_ReturnsWithinTenTimesWhatAnotherPairDoes(double tolerance, double seen)
    {
        // Data: SciML problem library after Hairer, Nørsett, Wanner I, p. 129; errors seen with a 5(4) pair, ×10 allowed.
        Assert.InRange(ArenstorfError(tolerance), 0, 10 * seen);
    }

    [Fact]
    public void Arenstorf_OverToleranceFrom1Em4To1Em12_ErrorFallsWithIt()
    {
        double[] errors = Enumerable.Range(4, 9).Select(k => ArenstorfError(Math.Pow(10, -k))).ToArray();
        FallsWithTolerance(errors);
    }

    [Theory]
    [InlineData(1e-9, 1e-5)]
    [InlineData(1e-12, 1e-8)]
    public void Pleiades_AtTheEnd_IsThePublishedSolution(double tolerance, double allowed)
    {
        // IVP test set (as in the R package deTestSet), confirmed to 1.7e-11. Close encounters amplify errors by about 1e3.
        Assert.InRange(PleiadesError(tolerance), 0, allowed);
    }

    [Fact]
    public void Pleiades_OverToleranceFrom1Em4To1Em12_ErrorFallsWithIt()
    {
        double[] errors = Enumerable.Range(4, 9).Select(k => PleiadesError(Math.Pow(10, -k))).ToArray();
        FallsWithTolerance(errors);
    }

    [Fact]
    public void Orbit_WorkAgainstPrecision_GrowsAsTheFifthRoot()
    {
        // A pair of order 5 pays 10^(1/5) = 1.58 in steps for a digit; from 1e-6 to 1e-11 10 in all. Within a third.
        Arenstorf(1e-6, out Statistics coarse);
        Arenstorf(1e-11, out Statistics fine);
        Assert.InRange((double)fine.Steps / coarse.Steps, 6.5, 14);
        Assert.True(fine.Rejected < 0.2 * fine.Steps);
    }

    [Fact]
    public void LotkaVolterra_AgainstAnIndependentRungeKutta_Agrees()
    {
        // MathNet.Numerics 5.0 with 20,000 fixed steps of its fourth order: error about (1e-3)⁴. An autonomous system,
        // since that method's stage times are not to be relied on.
        Vector<double> Rate(double t, Vector<double> y) =>
            Vector<double>.Build.Dense([y[0] * (1.5 - y[1]), y[1] * (y[0] - 3)]);
        Vector<double>[] other = RungeKutta.FourthOrder(Vector<double>.Build.Dense([1.0, 1]), 0, 10, 20001, Rate);
        double[] end = Solve.Plainly(
            2, (_, y, dy) => (dy[0], dy[1]) = (y[0] * (1.5 - y[1]), y[1] * (y[0] - 3)), 0, [1.0, 1], 10, new() { Tolerance = 1e-12 });
        Assert.Equal(other[^1][0], end[0], 1e-9);
        Assert.Equal(other[^1][1], end[1], 1e-9);
    }

    [Theory]
    [InlineData(1e-4)]
    [InlineData(1e-6)]
    [InlineData(1e-8)]
    public void VanDerPol_Stiff_HitsTheStepLimitWhateverTheTolerance(double tolerance)
    {
        // What a user sees of stiffness: TooManySteps at the default million, short of the end, at the same place for any
        // tolerance, and next to no rejected steps. The step is held at the limit of stability, 3.3/|λ| with λ down to
        // −3000 on the slow branches, not by accuracy.
        var integrator = new Integrator<WithoutEvents<Plain>>(
            new(new Plain(2, VanDerPol)), new IntegratorOptions { Tolerance = tolerance });
        NoObserver none = default;
        Assert.Equal(RunStatus.TooManySteps, integrator.Run(0, [2.0, 0], 2000, ref none));
        Assert.Equal(1764, integrator.Time, 20.0); // seen: 1763.5 to 1764.2
        Assert.InRange(integrator.Statistics.Rejected, 0, 1000); // seen: 21 to 48
    }

    [Fact]
    public void VanDerPol_GivenTheSteps_ReachesThePublishedEnd()
    {
        // IVP test set, confirmed. On the slow branch errors die out; what is left is the tolerance of the last steps and
        // of the times of the jumps: 3e-9 seen.
        var options = new IntegratorOptions { Tolerance = 1e-8, MaximumSteps = 5_000_000 };
        double[] end = Solve.Plainly(2, VanDerPol, 0, [2.0, 0], 2000, options, out Statistics statistics);
        Assert.Equal(1.706167732170469, end[0], 3e-8);
        Assert.Equal(-8.928097010248125e-4, end[1], 1e-8);
        Assert.InRange(statistics.Steps, 1_000_000, 3_000_000);
    }

    private static void FallsWithTolerance(double[] errors)
    {
        // Each digit of tolerance lowers the error, by fits and starts (3 to 30 seen in each place); over all digits it is
        // proportional within a factor of 30.
        for (int i = 1; i < errors.Length; i++)
        {
            Assert.True(errors[i] < 0.7 * errors[i - 1], $"{errors[i - 1]} → {errors[i]}");
        }

        double proportional = Math.Pow(10, errors.Length - 1);
        Assert.InRange(errors[0] / errors[^1] / proportional, 1.0 / 30, 30);
    }

    internal static double ArenstorfError(double tolerance)
    {
        double[] end = Arenstorf(tolerance, out _);
        return Math.Sqrt(Math.Pow(end[0] - ArenstorfStart[0], 2) + Math.Pow(end[1] - ArenstorfStart[1], 2));
    }

    private static double[] Arenstorf(double tolerance, out Statistics statistics) => Solve.Plainly(
        4, ArenstorfRate, 0, ArenstorfStart, ArenstorfPeriod, new IntegratorOptions { Tolerance = tolerance }, out statistics);

    internal static double PleiadesError(double tolerance)
    {
        double[] end = Solve.Plainly(28, PleiadesRate, 0, PleiadesStart, 3, new IntegratorOptions { Tolerance = tolerance });
        return end.Take(14).Zip(PleiadesEnd, (a, b) => Math.Abs(a - b)).Max();
    }

    private static void ArenstorfRate(double t, ReadOnlySpan<double> s, Span<double> ds)
    {
        const double mu = .012277471, rest = 1 - mu;
        double x = s[0], y = s[1];
        double d1 = Math.Pow(((x + mu) * (x + mu)) + (y * y), 1.5), d2 = Math.Pow(((x - rest) * (x - rest)) + (y * y), 1.5);
        ds[0] = s[2];
        ds[1] = s[3];
        ds[2] = x + (2 * s[3]) - (rest * (x + mu) / d1) - (mu * (x - rest) / d2);
        ds[3] = y - (2 * s[2]) - (rest * y / d1) - (mu * y / d2);
    }

    private static void PleiadesRate(double t, ReadOnlySpan<double> s, Span<double> ds)
    {
        for (int i = 0; i < 7; i++)
        {
            ds[i] = s[14 + i];
            ds[7 + i] = s[21 + i];
            double ax = 0, ay = 0;
            for (int j = 0; j < 7; j++)
            {
                if (j != i)
                {
                    double dx = s[j] - s[i], dy = s[7 + j] - s[7 + i];
                    double cube = Math.Pow((dx * dx) + (dy * dy), 1.5);
                    ax += (j + 1) * dx / cube;
                    ay += (j + 1) * dy / cube;
                }
            }

            ds[14 + i] = ax;
            ds[21 + i] = ay;
        }
    }

    private static void VanDerPol(double t, ReadOnlySpan<double> y, Span<double> dy) =>
        (dy[0], dy[1]) = (y[1], (1000 * (1 - (y[0] * y[0])) * y[1]) - y[0]);
}
