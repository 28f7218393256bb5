using LaunchSim.Passes.Fitting;

namespace LaunchSim.Passes.Tests.Fitting;

/// <summary>How wide a valley is said to be, on sums whose shape is known.</summary>
public sealed class ValleysTests
{
    [Fact]
    public void Valley_OfABowl_IsAsWideAsTheLinearisedOne()
    {
        // Squares of x/0.1 + y and of y: covariance by hand from (JᵀJ)⁻¹.
        static bool Residuals(ReadOnlySpan<double> x, Span<double> residuals)
        {
            (residuals[0], residuals[1]) = ((x[0] / 0.1) + x[1], x[1]);
            return true;
        }

        Valley valley = Of(Residuals, 2, [0, 0]);
        Assert.Equal(0.02, valley.Covariance[0, 0], 1e-9);
        Assert.Equal(-0.1, valley.Covariance[0, 1], 1e-9);
        Assert.Equal(1, valley.Covariance[1, 1], 1e-9);
        Assert.Equal(valley.Covariance.ToArray(), Valleys.Covariance([valley]));
    }

    /// <summary>A tyre that lets go below a grip, and of which nothing more is seen above it.</summary>
    [Fact]
    public void Valley_SteepOnOneSideAndFlatOnTheOther_IsAsWideAsItsFlatSide()
    {
        static bool Residuals(ReadOnlySpan<double> x, Span<double> residuals)
        {
            (residuals[0], residuals[1]) = (x[0], Math.Min(0, x[0]) / 0.01);
            return true;
        }

        // Differences at the kink see half of its slope: a fiftieth at most.
        LeastSquaresResult bottom = Solve(Residuals, 2, [0.0]);
        Assert.InRange(Math.Sqrt(bottom.Covariance[0, 0]), 0, 0.03);
        Assert.InRange(Math.Sqrt(Of(Residuals, 2, [0.0]).Covariance[0, 0]), 0.9, 2.1);
    }

    [Fact]
    public void Valley_WhoseRimShowsAWayDown_IsLeftForTheLowerOne()
    {
        // A dent at 0 in a bowl about 0.3.
        static bool Residuals(ReadOnlySpan<double> x, Span<double> residuals)
        {
            (residuals[0], residuals[1]) = ((x[0] - 0.3) / 0.1, Math.Min(1, Math.Abs(x[0]) / 0.01));
            return true;
        }

        Valley valley = Of(Residuals, 2, [0.0]);
        Assert.Equal(0.3, valley.Bottom.Parameters[0], 1e-3);
    }

    /// <summary>A number beside which there is no car on either side tells nothing, and the search does not stumble over it.</summary>
    [Fact]
    public void Valley_ImpossibleOnBothSides_KeepsWhatTheSolverSaid()
    {
        static bool Residuals(ReadOnlySpan<double> x, Span<double> residuals)
        {
            (residuals[0], residuals[1]) = (x[0], x[1] - 0.5);
            return x[1] == 0;
        }

        Valley valley = Of(Residuals, 2, [0.0, 0.0]);
        Assert.False(valley.IsBounded);
        Assert.True(double.IsPositiveInfinity(valley.Covariance[1, 1]));
        Assert.Equal(1, Valleys.Covariance([valley])[0, 0], 1e-6);
    }

    [Fact]
    public void Covariance_OfTwoValleysAsDeepAndWide_SpansBoth()
    {
        Valley one = Of((x, residuals) => { residuals[0] = x[0] / 0.1; return true; }, 1, [0.0]);
        Valley other = Of((x, residuals) => { residuals[0] = (x[0] - 2) / 0.1; return true; }, 1, [2.0]);
        Assert.False(Valleys.AreOne(one, [2.0]));
        Assert.True(Valleys.AreOne(one, [0.05]));

        // About the one: half of the mixture lies 2 away.
        Assert.Equal(0.01 + (0.5 * 4), Valleys.Covariance([one, other])[0, 0], 1e-9);
    }

    private static Valley Of(ResidualFunction residuals, int count, double[] start) =>
        Valleys.Of(point => Sum(residuals, count, point), Solve(residuals, count, start), (from, _) => Solve(residuals, count, from), 1, default);

    private static LeastSquaresResult Solve(ResidualFunction residuals, int count, double[] start) =>
        LeastSquares.Solve(residuals, count, start, new LeastSquaresOptions { Steps = [.. start.Select(_ => 1e-3)], InStandardDeviations = true }, default);

    private static double Sum(ResidualFunction residuals, int count, double[] point)
    {
        double[] values = new double[count];
        return residuals(point, values) ? values.Sum(value => value * value) : double.PositiveInfinity;
    }
}
