using LaunchSim.Passes.Fitting;

using Xunit;

namespace LaunchSim.Passes.Tests.Fitting;

public sealed class LeastSquaresTests
{
    private static readonly LeastSquaresOptions Plain = new();

    [Fact]
    public void Solve_StraightLine_CovarianceIsTheNormalEquations()
    {
        // y = a + b x at x = 0, 1, 2, 3 with a deviation of 0.5: JᵀWJ = 4 · [4 6; 6 14], its inverse in closed form.
        double[] y = [1.1, 2.9, 5.2, 7.1];
        var result = LeastSquares.Solve(Line(y, 0.5), 4, [0, 0], Plain, default);
        Assert.True(result.Converged, result.Reason);
        Assert.Equal(1.03, result.Parameters[0], 1e-6 * Math.Sqrt(14.0 / 80));
        Assert.Equal(2.03, result.Parameters[1], 1e-6 * Math.Sqrt(4.0 / 80));
        Assert.Equal(14.0 / 80, result.Covariance[0, 0], 1e-9);
        Assert.Equal(-6.0 / 80, result.Covariance[0, 1], 1e-9);
        Assert.Equal(4.0 / 80, result.Covariance[1, 1], 1e-9);
        Assert.Equal(-6 / Math.Sqrt(56), result.Correlation(0, 1), 1e-9);
        Assert.Equal(2, result.DegreesOfFreedom);
        Assert.Equal(result.Residuals.Sum(r => r * r), result.SumOfSquares, 1e-12);
    }

    [Fact]
    public void Solve_OneWildValue_HuberStaysNearTheRest()
    {
        double[] y = [.. Enumerable.Range(0, 20).Select(i => 1 + (2.0 * i) + (0.1 * Math.Sin(7 * i)))];
        y[15] += 100;
        var plain = LeastSquares.Solve(Line(y, 0.1), 20, [0, 0], Plain, default);
        var huber = LeastSquares.Solve(Line(y, 0.1), 20, [0, 0], Plain with { Loss = RobustLoss.Huber }, default);
        var cauchy = LeastSquares.Solve(Line(y, 0.1), 20, huber.Parameters, Plain with { Loss = RobustLoss.Cauchy }, default);
        Assert.True(huber.Converged, huber.Reason);
        Assert.True(cauchy.Converged, cauchy.Reason);
        Assert.True(Math.Abs(plain.Parameters[1] - 2) > 0.2);
        Assert.Equal(2, huber.Parameters[1], 0.01);
        Assert.Equal(2, cauchy.Parameters[1], 0.01);
        Assert.Equal(1.345 / Math.Abs(huber.Residuals[15]), huber.Weights[15], 1e-12);
        Assert.Equal(huber.Residuals.Sum(RobustLoss.Huber.Cost), huber.SumOfSquares, 1e-9);

        // Where the loss's slope vanishes by an independent sum: Σ w r ∂r/∂p = 0.
        Assert.Equal(0, huber.Residuals.Zip(huber.Weights, (r, w) => r * w).Sum(), 1e-4);
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(1.344)]
    [InlineData(-5)]
    [InlineData(40)]
    public void Loss_Weight_IsHalfTheSlopeOverTheResidual(double residual)
    {
        foreach (RobustLoss loss in new[] { RobustLoss.None, RobustLoss.Huber, RobustLoss.Cauchy })
        {
            const double Step = 1e-5;
            double slope = (loss.Cost(residual + Step) - loss.Cost(residual - Step)) / (2 * Step);
            Assert.Equal(slope / (2 * residual), loss.Weight(residual), 1e-8);
        }
    }

    [Fact]
    public void Solve_ImpossibleTrialPoints_AreSurvived()
    {
        // √(1 − p) is impossible beyond 1, and its full step from 0.999 leads there.
        int refused = 0;
        bool Root(ReadOnlySpan<double> p, Span<double> r)
        {
            if (p[0] > 1)
            {
                refused++;
                return false;
            }

            r[0] = Math.Sqrt(1 - p[0]) - 0.04;
            r[1] = 0.1 * (Math.Sqrt(1 - p[0]) - 0.04);
            return true;
        }

        var result = LeastSquares.Solve(Root, 2, [0], Plain with { Steps = [1e-5], InStandardDeviations = false }, default);
        Assert.True(refused > 0);
        Assert.True(result.Converged, result.Reason);
        Assert.Equal(1 - 0.0016, result.Parameters[0], 1e-8);
    }

    [Fact]
    public void Solve_ImpossibleEverywhere_SaysSo()
    {
        var result = LeastSquares.Solve((_, _) => false, 3, [1, 2], Plain with { Starts = [[3, 4]] }, default);
        Assert.False(result.Converged);
        Assert.Contains("impossible", result.Reason, StringComparison.Ordinal);
        Assert.Equal([double.PositiveInfinity, double.PositiveInfinity], result.SumsOfStarts);
        Assert.True(double.IsNaN(result.SumOfSquares));
    }

    [Fact]
    public void Solve_ImpossibleFirstStart_TakesTheOther()
    {
        bool Model(ReadOnlySpan<double> p, Span<double> r)
        {
            r[0] = p[0] - 3;
            r[1] = 2 * (p[0] - 3);
            return p[0] < 10;
        }

        var result = LeastSquares.Solve(Model, 2, [20], Plain with { Starts = [[5]] }, default);
        Assert.True(result.Converged, result.Reason);
        Assert.Equal(3, result.Parameters[0], 1e-7);
        Assert.Equal(double.PositiveInfinity, result.SumsOfStarts[0]);
    }

    [Fact]
    public void Solve_ParametersThatOnlyCountTogether_HaveNoDeviation()
    {
        bool Model(ReadOnlySpan<double> p, Span<double> r)
        {
            for (int i = 0; i < r.Length; i++)
            {
                r[i] = ((p[0] + p[1]) * i) - (4 * i) + (p[2] - 1);
            }

            return true;
        }

        var result = LeastSquares.Solve(Model, 5, [1, 1, 0], Plain, default);
        double[] errors = result.StandardErrors();
        Assert.True(double.IsInfinity(errors[0]) && double.IsInfinity(errors[1]));
        Assert.True(double.IsNaN(result.Correlation(0, 1)));
        Assert.Equal(1, result.Parameters[2], 1e-6);
        Assert.Equal(Math.Sqrt(0.6), errors[2], 1e-6);
        Assert.Equal(4, result.Parameters[0] + result.Parameters[1], 1e-6);
    }

    [Fact]
    public void Solve_OnThreads_SameBits()
    {
        NistSet set = NistSet.All.Single(one => one.Name == "Thurber");
        var one = LeastSquares.Solve(set.Residuals, set.Y.Length, set.Starts[0], Plain, default);
        var four = LeastSquares.Solve(set.Residuals, set.Y.Length, set.Starts[0], Plain with { Threads = 4 }, default);
        Assert.Equal(one.Parameters, four.Parameters);
        Assert.Equal(one.Evaluations, four.Evaluations);
    }

    [Fact]
    public void Solve_Cancelled_Throws()
    {
        using var source = new CancellationTokenSource();
        int calls = 0;
        bool Model(ReadOnlySpan<double> p, Span<double> r)
        {
            r[0] = Math.Exp(p[0]) - 1000;
            if (++calls == 5)
            {
                source.Cancel();
            }

            return true;
        }

        Assert.Throws<OperationCanceledException>(() => LeastSquares.Solve(Model, 1, [0], Plain, source.Token));
        Assert.Equal(5, calls);
    }

    [Fact]
    public void Solve_WrongLengths_AreRefused()
    {
        Assert.Throws<ArgumentException>(() => LeastSquares.Solve(Line([1, 2], 1), 2, [0, 0], Plain with { Steps = [1] }, default));
        Assert.Throws<ArgumentException>(() => LeastSquares.Solve(Line([1, 2], 1), 2, [0, 0], Plain with { Starts = [[1]] }, default));
        Assert.Throws<ArgumentException>(() => LeastSquares.Solve(Line([1, 2], 1), 2, [0, double.NaN], Plain, default));
        Assert.Throws<ArgumentException>(() => LeastSquares.Solve(Line([1, 2], 1), 2, [0, 0], Plain with { Tolerance = 0 }, default));
    }

    private static ResidualFunction Line(double[] y, double deviation) => (p, r) =>
    {
        for (int i = 0; i < y.Length; i++)
        {
            r[i] = (p[0] + (p[1] * i) - y[i]) / deviation;
        }

        return true;
    };
}
