using LaunchSim.Scenarios;
using LaunchSim.Studies.Doubting;
using LaunchSim.Studies.Running;

namespace LaunchSim.Studies.Tests.Doubting;

public class DoubtStudyTests
{
    private const double Pound = 0.45359237, Gravity = 9.80665;

    [Fact]
    public void Run_AnyNumberOfThreads_GivesTheSameResult()
    {
        DoubtResult one = DoubtStudy.Run(Plan(Cars.Door, 60, threads: 1), true, CancellationToken.None);
        DoubtResult three = DoubtStudy.Run(Plan(Cars.Door, 60, threads: 3), true, CancellationToken.None);

        Assert.Equal(one.Figures.Select(figure => figure.Band), three.Figures.Select(figure => figure.Band));
        Assert.Equal(one.Sentences, three.Sentences);
        Assert.Equal(one.Ranking.Numbers.Select(number => (number.Number.Path, number.Share)), three.Ranking.Numbers.Select(number => (number.Number.Path, number.Share)));
        Assert.Equal(one.Traces.SelectMany(trace => trace.Rows), three.Traces.SelectMany(trace => trace.Rows));
    }

    /// <summary>
    /// Ballast behind the rear axle: the standing rear load is a straight line of its mass, but for the little that the car
    /// pitches; its band is that of the normal distribution.
    /// </summary>
    [Fact]
    public void Run_FigureLinearInTheDrawnNumber_HasTheBandOfTheNormalDistribution()
    {
        DoubtResult result = DoubtStudy.Run(Plan(Cars.Read(Files.DoorCar, ("car.ballast[0].mass", "60 ±20 lb")), 400), true, CancellationToken.None);
        FigureBand load = result.Figures.First(figure => figure.Figure.Key == "rear_tire_load_static_n");
        double sigma = 10 * Pound * Gravity * (1 + (25 / 105.5));

        Assert.Equal(400, result.Whole);
        Assert.Equal(2 * 1.6449 * sigma, load.Band.Width, 0.03 * 2 * 1.6449 * sigma);
        Assert.Equal(load.Own, load.Band.Median, 0.05 * sigma);

        // The trace begins with the standing load.
        TraceBand trace = result.Traces.First(one => one.Name == "rear_tire_load_n");
        Assert.Equal(load.Band.High, trace.Rows[0].High, 1e-3 * sigma);
        Assert.Equal(load.Own, trace.Own[0], 1e-6 * load.Own);

        // What the answer varies by, it does by this one number.
        NumberShare only = Assert.Single(result.Ranking.Numbers);
        Assert.InRange(only.Share.Share, 0.9, 1.001);
    }

    [Fact]
    public void Run_OnTheDoorCar_CountsEverySentenceOfItsSubjectOnce()
    {
        DoubtResult result = DoubtStudy.Run(Plan(Cars.Door, 100), false, CancellationToken.None);

        Assert.Equal(result.Whole, result.Sentences.Where(sentence => sentence.Key.StartsWith("rise.", StringComparison.Ordinal)).Sum(sentence => sentence.Cars));
        Assert.Equal(result.Whole, result.Sentences.Where(sentence => sentence.Key is "grip.spin" or "grip.hold").Sum(sentence => sentence.Cars));
        Assert.All(result.Sentences, sentence => Assert.InRange(sentence.Share.Share, sentence.Share.Low, sentence.Share.High));
        Assert.Equal(result.Own.Sentences.Count, result.Sentences.Count(sentence => sentence.IsOwn));
        Assert.Empty(result.Traces);
        Assert.Contains("plausible cars", DoubtWords.Conclusion(result), StringComparison.Ordinal);

        // Shares of single numbers and what is left make up the whole.
        Assert.Equal(1, result.Ranking.Numbers.Sum(number => number.Share.Share) + result.Ranking.Together, 1e-9);
    }

    [Fact]
    public void Run_AimsKept_AreCountedByTheirPoints()
    {
        DoubtResult result = DoubtStudy.Run(Plan(Cars.Door, 60), false, CancellationToken.None);

        Assert.Equal(result.Plan.Aims.Aims.Count, result.Aims.Count);
        AimShare stops = result.Aims.First(aim => aim.Aim.Subject.Name == "rear_stops");
        int reached = result.Sentences.Where(sentence => sentence.Key is "stop.rear_top" or "stop.rear_bottom").Sum(sentence => sentence.Cars);
        Assert.InRange(stops.Keeps.Share, 1 - ((double)reached / result.Whole) - 1e-12, 1);
        Assert.Equal(stops.Keeps.Share, result.KeepsLimits.Share, 1e-12);
    }

    [Fact]
    public void Run_ImpossibleDraws_AreToldWithTheirReason()
    {
        DoubtResult result = DoubtStudy.Run(Plan(Cars.Read(Files.DoorCar, ("rear.tire.vertical_damping", "0.1 ±0.4 lb·s/in")), 60), false, CancellationToken.None);

        Assert.True(result.Redrawn > 5);
        Assert.Equal(0, result.GivenUp);
        Assert.Contains("rear.tire.vertical_damping", Assert.Single(result.Refusals).Reason, StringComparison.Ordinal);
        Assert.Contains(DoubtWords.Cars(result), sentence => sentence.Contains("impossible as a car and drawn again", StringComparison.Ordinal));
    }

    [Fact]
    public void Run_NothingPossible_SaysSo()
    {
        DoubtResult result = DoubtStudy.Run(Plan(Cars.Read(Files.DoorCar, ("rear.tire.sliding_ratio", "0.65 ±100000")), 20), false, CancellationToken.None);

        Assert.Equal((20, 0), (result.GivenUp, result.Whole));
        Assert.Equal(20L * PlausibleCars.MostDraws, result.Redrawn);
        Assert.Contains("None of the 20 cars that were drawn is possible", DoubtWords.Conclusion(result), StringComparison.Ordinal);
    }

    [Fact]
    public void Run_LaunchesThatStop_AreCountedWithTheirReason()
    {
        DoubtResult result = DoubtStudy.Run(Plan(Cars.Read(Files.Test("stalls")), 20), true, CancellationToken.None);

        Assert.Equal(20, result.Whole + result.GivenUp + result.Failures.Sum(one => one.Cars));
        Assert.Contains(result.Failures, one => one.Reason.Contains("engine came to a stop", StringComparison.Ordinal));
        Assert.NotNull(result.Own.Trouble);
    }

    [Fact]
    public void Run_InterruptedAndResumed_WritesTheSameTable()
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("launchsim");
        try
        {
            string whole = Path.Combine(folder.FullName, "whole.csv"), broken = Path.Combine(folder.FullName, "broken.csv");
            DoubtResult straight = Table(whole, false, CancellationToken.None);
            using var stop = new CancellationTokenSource();
            Assert.ThrowsAny<OperationCanceledException>(() => Table(broken, false, stop.Token, _ => stop.Cancel()));
            Assert.False(File.Exists(broken));

            DoubtResult resumed = Table(broken, true, CancellationToken.None);

            Assert.Equal(File.ReadAllText(whole), File.ReadAllText(broken));
            Assert.Equal(straight.Figures.Select(figure => figure.Band), resumed.Figures.Select(figure => figure.Band));
            Assert.Equal(straight.Sentences, resumed.Sentences);
            Assert.Equal(straight.Ranking.Numbers.Select(number => number.Share), resumed.Ranking.Numbers.Select(number => number.Share));
            Assert.Equal(straight.Traces.SelectMany(trace => trace.Rows), resumed.Traces.SelectMany(trace => trace.Rows));
            Assert.Throws<RowFileException>(() => DoubtStudy.Open(Plan(Cars.Door, 60) is { } other ? new DoubtPlan(other.Scenario, other.Aims, other.Settings with { Seed = 2 }) : null!, "test", Shard.Whole, whole, true));
        }
        finally
        {
            folder.Delete(true);
        }
    }

    [Fact]
    public void Run_Parts_HoldTheRowsOfTheWhole()
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("launchsim");
        try
        {
            string[] rows = [.. new[] { Shard.Whole, new Shard(1, 2), new Shard(2, 2) }.Select((shard, i) =>
            {
                string path = Path.Combine(folder.FullName, $"{i}.csv");
                using DoubtStudy study = DoubtStudy.Open(Plan(Cars.Door, 50), "test", shard, path, false);
                _ = study.Run(false, _ => { }, CancellationToken.None);
                return File.ReadAllText(path);
            })];

            Assert.Equal(rows[0], rows[1] + rows[2][(rows[2].IndexOf('\n', StringComparison.Ordinal) + 1)..]);
        }
        finally
        {
            folder.Delete(true);
        }
    }

    [Fact]
    public void HelpShares_SetUpAgainstItself_IsTheSameOnEveryCar()
    {
        HelpResult result = HelpShares.Of([Cars.Door, Cars.Read(Files.DoorCar)], Cars.Aims(Cars.Door), new DoubtSettings { Cars = 30 }, true, null, CancellationToken.None);

        HelpShare same = Assert.Single(result.Changes);
        Assert.Equal((0, 30, 0), (same.Better, same.Same, same.Worse));
        Assert.Equal(new Band(0, 0, 0), same.Gain);
        Assert.Equal(0, same.Helps.Share);
        Assert.True(result.UsesTypical);
    }

    [Fact]
    public void HelpShares_AnyNumberOfThreads_AreTheSameAndCountEveryCar()
    {
        Scenario[] setUps = [Cars.Door, Cars.Read(Files.DoorCar, ("rear.damper.extension.set", "12")), Cars.Read(Files.DoorCar, ("rear.tire.pressure.set", "14 psi"))];
        HelpResult Of(int threads) => HelpShares.Of(setUps, Cars.Aims(Cars.Door), new DoubtSettings { Cars = 40, Threads = threads }, true, null, CancellationToken.None);

        HelpResult one = Of(1), three = Of(3);

        Assert.Equal(one.Changes, three.Changes);
        Assert.All(one.Changes, change => Assert.Equal(40, change.Told + change.Untold));
        Assert.All(one.Changes, change => Assert.InRange(change.Helps.Share, change.Helps.Low, change.Helps.High));
    }

    /// <summary>What is read quickly says the same as the whole reading, of every shipped car and of cars drawn from its doubts.</summary>
    [Fact]
    public void Run_QuickReading_SaysTheSameSentencesAsTheWhole()
    {
        int quick = 0;
        foreach (string file in Directory.EnumerateFiles(Path.Combine(Files.Root, "scenarios"), "*.yaml").Concat(Files.TestCars.Select(Files.Test)))
        {
            DoubtPlan plan = Plan(Cars.Read(file), 50);
            var worker = new DoubtWorker(plan, null, CancellationToken.None);
            double[] u = new double[plan.Numbers.Count];
            for (int car = 0; car < 4; car++)
            {
                DoubtRow row = worker.Run(car);
                var whole = Figures.LaunchFigures.Read(Launch.LaunchRunner.Create(plan.Plausible.Draw(car, u).Cars![0], plan.Run.Tolerance).Solve(plan.Run), plan.Run);

                Assert.Equal(Reports.Words.Summary.Of(whole, new Reports.Numbers.Readout(Scenarios.Units.UnitSystem.Si)).Select(sentence => sentence.Key).Distinct(), row.Sentences);
                Assert.Equal(plan.Figures.Select(figure => whole[figure.Key] ?? double.NaN), row.Figures);
                quick += plan.Scenario.Car!.Driveline is Vehicle.AxleTorque && !row.Sentences.Contains("grip.spin") ? 1 : 0;
            }
        }

        Assert.True(quick > 10);
    }

    private static DoubtResult Table(string path, bool resume, CancellationToken cancellation, Action<int>? added = null)
    {
        using DoubtStudy study = DoubtStudy.Open(Plan(Cars.Door, 60), "test", Shard.Whole, path, resume);
        Assert.Equal(resume, study.Kept > 0);
        return study.Run(true, added ?? (_ => { }), cancellation);
    }

    private static DoubtPlan Plan(Scenario scenario, int cars, int threads = 2) => new(scenario, Cars.Aims(scenario), new DoubtSettings { Cars = cars, Threads = threads });
}
