using System.Diagnostics;
using System.Globalization;
using LaunchSim.Figures;
using LaunchSim.Launch;
using LaunchSim.Passes.Seen;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Vehicle;
using Xunit.Abstractions;

namespace LaunchSim.Passes.Tests.Seen;

public sealed class SeenPredictionTests(ITestOutputHelper output)
{
    private const double Visible = SeenDoubt.UsualVisible;

    public static TheoryData<string> Shipped => [.. Directory.GetFiles(Path.Combine(Files.Root, "scenarios"), "*.yaml").Select(file => Path.GetFileName(file)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Shipped))]
    public void Read_ShippedCar_AgreesWithTheFigures(string name)
    {
        (LaunchSolution solution, RunSettings settings) = Launch(Files.Scenario(name));
        FigureSet figures = LaunchFigures.Read(solution, settings);
        using var launch = new LaunchReading(solution, settings);
        PredictedFacts facts = SeenPrediction.Read(launch, Visible, settings.Marks);

        Same(figures["front_gap_6_35mm_s"], facts.FrontMoves);
        Same(figures["rear_gap_6_35mm_s"], facts.RearMoves);
        Same(figures.Events.First(LaunchEventKind.FrontTireOff)?.Time, facts.FrontTiresLeave);
        Same(figures.Events.First(LaunchEventKind.FrontTireOff)?.Until, facts.FrontTiresLand);
        Same(figures.Events.First(LaunchEventKind.RearSlipPastPeak)?.Time, facts.SpinStarts);
        Assert.Equal(figures.Events.TotalTime(LaunchEventKind.FrontTireOff, solution.Duration), facts.TimeOff, 9);
        for (int i = 0; i < settings.Marks.Count; i++)
        {
            Same(figures[$"mark_{i + 1}_beam_time_s"], facts.BeamTimes[i]);
        }

        output.WriteLine($"{name}: front {facts.FrontMoves:F4} rear {facts.RearMoves:F4} open {facts.RearOpen:F4} ({facts.RearOpening * 1e3:F1} mm) leave {facts.FrontTiresLeave:F4} land {facts.FrontTiresLand:F4} spin {facts.SpinStarts:F4} for {facts.TimePastPeak:F4} beams {string.Join(' ', facts.BeamTimes.Select(time => time.ToString("F4", CultureInfo.InvariantCulture)))}");

        // In the words of the reference, by looking every hundredth of a millisecond.
        double open = double.NaN;
        for (double time = facts.RearMoves; time + 0.02 <= solution.Duration && double.IsNaN(open); time += 1e-5)
        {
            open = launch.At(Signal.Separation, time + 0.02) <= 1.05 * launch.At(Signal.Separation, time) ? time : double.NaN;
        }

        Assert.Equal(open, facts.RearOpen, 1.1e-5);
    }

    [Fact]
    public void Of_PassAsPredicted_DiffersByNothing()
    {
        (LaunchSolution solution, RunSettings settings) = Launch(Files.Scenario("door-car.yaml"));
        using var launch = new LaunchReading(solution, settings);
        PredictedFacts facts = SeenPrediction.Read(launch, Visible, [18.288]);
        var seen = new SeenFacts
        {
            FirstUp = facts.FrontMoves < facts.RearMoves ? FirstUp.Front : FirstUp.Rear,
            FrontMoves = new(facts.FrontMoves, 0.01, ""),
            RearMoves = new(facts.RearMoves, 0.01, ""),
            RearOpen = new(facts.RearOpen, 0.01, ""),
            SpinStarts = SeenMoment.Never(),
            Marks = [new(18.288, facts.BeamTimes[0], 0.001, "")],
        };

        IReadOnlyList<SeenComparison> all = SeenPrediction.Of(launch, seen);

        Assert.Equal(["first_up", "front_moves", "rear_moves", "rear_open", "spin_starts", "times[0]"], all.Select(one => one.Key));
        Assert.All(all, one => Assert.Equal(0, one.Difference, 12));
        Assert.All(all, one => Assert.True(one.Agrees));
        Assert.Equal([true, false, false, false, false, false], all.Select(one => one.IsRepeated));
    }

    [Theory]
    [InlineData(SeenBound.At, 0.05, -0.05)]
    [InlineData(SeenBound.At, -0.05, 0.05)]
    [InlineData(SeenBound.Before, 0.05, 0)]
    [InlineData(SeenBound.Before, -0.05, 0.05)]
    [InlineData(SeenBound.After, 0.05, -0.05)]
    [InlineData(SeenBound.After, -0.05, 0)]
    public void Of_Bounds_DifferOnlyAsFarAsTheyAreBroken(SeenBound bound, double offset, double difference)
    {
        (LaunchSolution solution, RunSettings settings) = Launch(Files.Scenario("door-car.yaml"));
        using var launch = new LaunchReading(solution, settings);
        double rear = SeenPrediction.Read(launch, Visible, []).RearMoves;

        SeenComparison one = Assert.Single(SeenPrediction.Of(launch, new SeenFacts { RearMoves = new(rear + offset, 0.01, "", bound) }));

        Assert.Equal(difference, one.Difference, 12);
    }

    [Fact]
    public void Of_WhatOnlyOneOfThemDoes_SaysHowFarApartTheyAre()
    {
        (LaunchSolution solution, RunSettings settings) = Launch(Files.Scenario("wheelstand.yaml"));
        using var launch = new LaunchReading(solution, settings);
        PredictedFacts facts = SeenPrediction.Read(launch, Visible, []);
        Assert.True(facts.TimeOff > 0);

        SeenComparison stays = SeenPrediction.Of(launch, new SeenFacts { FrontTiresLeave = SeenMoment.Never() }).Single();
        SeenComparison farAway = SeenPrediction.Of(launch, new SeenFacts { Visible = 0.29, RearMoves = new(0.1, 0.01, "") }).Single();

        Assert.Equal((SeenKind.Never, -facts.TimeOff), (stays.Kind, stays.Difference));
        Assert.False(farAway.Happens);
        Assert.Equal(solution.Duration - 0.1, farAway.Difference, 9);
    }

    [Theory]
    [InlineData(FirstUp.Front)]
    [InlineData(FirstUp.Rear)]
    [InlineData(FirstUp.Together)]
    public void Of_FirstUp_IsBrokenByTheLagThatItForbids(FirstUp first)
    {
        (LaunchSolution solution, RunSettings settings) = Launch(Files.Scenario("door-car.yaml"));
        using var launch = new LaunchReading(solution, settings);
        PredictedFacts facts = SeenPrediction.Read(launch, Visible, []);
        double lag = facts.FrontMoves - facts.RearMoves;

        SeenComparison one = Assert.Single(SeenPrediction.Of(launch, new SeenFacts { FirstUp = first, FramesPerSecond = 1e4 }));

        Assert.False(one.IsRepeated);
        Assert.Equal(lag, one.Predicted, 12);
        double expected = first switch
        {
            FirstUp.Front => Math.Max(0, lag),
            FirstUp.Rear => Math.Min(0, lag),
            _ => Math.Sign(lag) * Math.Max(0, Math.Abs(lag) - 1e-4),
        };
        Assert.Equal(expected, one.Difference, 12);
    }

    /// <summary>A fit takes differences of these: they have to follow the car without steps. Held by halving the change.</summary>
    [Theory]
    [InlineData("car.cg_height", 21, " in")]
    [InlineData("rear.spring.rate", 150, " lb/in")]
    [InlineData("rear.tire.vertical_rate", 800, " lb/in")]
    public void Read_CarAlittleDifferent_MovesInProportion(string path, double value, string unit)
    {
        PredictedFacts At(double share)
        {
            (LaunchSolution solution, RunSettings settings) = Launch(Files.Scenario("door-car.yaml", (path, FormattableString.Invariant($"{value * (1 + share):R}{unit}")), ("run.tolerance", "1e-10")));
            using var launch = new LaunchReading(solution, settings);
            return SeenPrediction.Read(launch, Visible, [18.288]);
        }

        (PredictedFacts here, PredictedFacts near, PredictedFacts far) = (At(0), At(0.5e-3), At(1e-3));
        foreach (Func<PredictedFacts, double> fact in (Func<PredictedFacts, double>[])[facts => facts.FrontMoves, facts => facts.RearMoves, facts => facts.RearOpen, facts => facts.BeamTimes[0]])
        {
            double half = fact(near) - fact(here), whole = fact(far) - fact(here);
            Assert.True(Math.Abs(whole - (2 * half)) <= (0.05 * Math.Abs(whole)) + 1e-8, $"{half} then {whole}");
        }
    }

    /// <summary>A fit asks some hundred times; times are told and never judged.</summary>
    [Fact]
    public void Of_ManyTimes_TellsHowLongItTakes()
    {
        (LaunchSolution solution, RunSettings settings) = Launch(Files.Scenario("door-car.yaml"));
        var seen = new SeenFacts { RearMoves = new(0.05, 0.01, ""), RearOpen = new(0.09, 0.01, ""), SpinStarts = SeenMoment.Never(), Marks = [new(18.288, 1.5, 0.001, "")] };
        var watch = new Stopwatch();
        for (int i = 0; i < 1200; i++)
        {
            if (i == 1000)
            {
                watch.Start();
            }

            Assert.Equal(4, SeenPrediction.Of(solution, settings, seen).Count);
        }

        output.WriteLine($"{watch.Elapsed.TotalMilliseconds / 200:F3} ms each, on a launch of {solution.Steps} steps");
    }

    private static (LaunchSolution Solution, RunSettings Settings) Launch(Scenario scenario) =>
        (LaunchSimulation.Solve(scenario.Car!, scenario.Run), scenario.Run);

    private static void Same(double? expected, double actual)
    {
        if (expected is { } value)
        {
            Assert.Equal(value, actual, 9);
        }
        else
        {
            Assert.True(double.IsNaN(actual), $"{actual} where nothing is due");
        }
    }
}
