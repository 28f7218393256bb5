using System.Collections.Concurrent;
using LaunchSim.Passes.Fitting;
using Xunit.Abstractions;

namespace LaunchSim.Passes.Tests.Fitting;

/// <summary>Cars drawn from the doubts of their files: how often the stated intervals hold the truth, and how well an unseen pass is predicted.</summary>
public sealed class CoverageTests(ITestOutputHelper output)
{
    // CI asks for 200 of each, which takes some minutes; the intervals hold the truth as often on fewer.
    private static readonly int Cars = int.TryParse(Environment.GetEnvironmentVariable("LAUNCHSIM_COVERAGE_CARS"), out int asked) ? asked : 40;

    private const double NineteenInTwenty = 1.96;

    [Fact]
    public void Intervals_OfRandomCarsWithLogs_HoldTheTruthAsOftenAsTheySay() => Hold(isLogged: true, lagWithin: 0.010);

    [Fact]
    public void Intervals_OfRandomCarsWithSeenFactsAlone_HoldTheTruthAsOftenAsTheySay() => Hold(isLogged: false, lagWithin: 0.025);

    private void Hold(bool isLogged, double lagWithin)
    {
        int inside = 0, told = 0, near = 0, lags = 0, cars = 0, unsettled = 0;
        var misses = new ConcurrentBag<string>();
        var errors = new ConcurrentBag<double>();

        // The next seeds take the place of cars that cannot be, or do not come to the end of a launch.
        _ = Parallel.For(0, Cars, new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, car =>
        {
            RandomSeason? season = null;
            ulong seed = (ulong)car;
            for (; (season = RandomSeason.Of(seed, isLogged)) is null; seed += 1000)
            {
            }

            FitResult fit = Fit.Run(FitModel.Of(season.Car.Parameters, season.Passes), new FitSettings { Starts = 2, Threads = 1 }, default);
            _ = Interlocked.Increment(ref cars);
            _ = Interlocked.Add(ref unsettled, fit.Converged ? 0 : 1);
            for (int i = 0; i < fit.Values.Count; i++)
            {
                FittedValue value = fit.Values[i];
                if (value.IsTold)
                {
                    bool holds = Math.Abs(value.Deviations - season.Car.Deviations[i]) <= NineteenInTwenty * value.Sd;
                    _ = Interlocked.Increment(ref told);
                    _ = Interlocked.Add(ref inside, holds ? 1 : 0);
                    if (!holds)
                    {
                        misses.Add(FormattableString.Invariant($"{seed} {season.File.Name}: {value.Parameter.Path} true {season.Car.Deviations[i]:0.00}, fitted {value.Deviations:0.00} ±{NineteenInTwenty * value.Sd:0.00}, {fit.Reason}, misfit {fit.Misfit:0.00}"));
                    }
                }
            }

            double lag = season.Lag(season.Car.Deviations), predicted = season.Lag([.. fit.Values.Select(value => value.Deviations)]);
            if (double.IsFinite(lag))
            {
                _ = Interlocked.Increment(ref lags);
                double error = double.IsNaN(predicted) ? double.PositiveInfinity : Math.Abs(predicted - lag);
                errors.Add(error);
                _ = Interlocked.Add(ref near, error <= lagWithin ? 1 : 0);
            }
        });

        foreach (string miss in misses.Order())
        {
            output.WriteLine(miss);
        }

        double[] sorted = [.. errors.Order()];
        output.WriteLine(FormattableString.Invariant($"{100.0 * inside / told:0.0} % of {told} intervals of {cars} cars hold the truth; {unsettled} fits did not settle"));
        output.WriteLine(FormattableString.Invariant($"rise lag of the unseen pass within {1000 * lagWithin:0} ms in {100.0 * near / lags:0.0} % of {lags}; median {1000 * sorted[sorted.Length / 2]:0.0} ms, nine in ten {1000 * sorted[sorted.Length * 9 / 10]:0.0} ms"));
        Assert.InRange((double)inside / told, 0.90, 0.99);
        Assert.InRange((double)near / lags, 0.90, 1);
    }
}
