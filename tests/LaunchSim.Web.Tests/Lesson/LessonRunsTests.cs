using LaunchSim.Dynamics;
using LaunchSim.Figures;
using LaunchSim.Reports;
using LaunchSim.Web.Lesson;

namespace LaunchSim.Web.Tests.Lesson;

public class LessonRunsTests
{
    // The bracket is found to 1e-14 m; what a metre of it is worth is some 1e3 percent.
    private const double Exact = 1e-9;

    [Fact]
    public void Cars_OfTheThreePercents_StandAtThemToTheLastDigit()
    {
        Assert.Equal(LessonRuns.BelowPercent, TheLesson.Runs.Below.Run.Solution.Car.Line.Percent, Exact);
        Assert.Equal(LessonRuns.AtPercent, TheLesson.Runs.At.Run.Solution.Car.Line.Percent, Exact);
        Assert.All(TheLesson.Runs.Clicks, click => Assert.Equal(LessonRuns.AbovePercent, click.Run.Solution.Car.Line.Percent, Exact));
    }

    [Theory]
    [InlineData(5)]
    [InlineData(60)]
    [InlineData(250)]
    public void HeightFor_AnyPercent_IsOneAtWhichTheCarHasIt(double percent)
    {
        LessonCar car = LessonCar.Load().WithPercent(percent);
        Assert.Equal(percent, LaunchSim.Launch.StandingCar.Find(car.Scenario.Car!).Line.Percent, Exact);
    }

    /// <summary>The three cars differ in the bracket and in nothing else: with it put back they are one car.</summary>
    [Fact]
    public void Cars_OfTheThreePercents_DifferInTheBracketAlone()
    {
        string[] hashes = [.. new[] { TheLesson.Runs.Below, TheLesson.Runs.At, TheLesson.Runs.Above }.Select(one => one.Car.Scenario.With([("rear.linkage.upper.body.up", "0.3 m")]).Scenario!.ContentHash)];
        Assert.Single(hashes.Distinct());
        Assert.Equal(3, new[] { TheLesson.Runs.Below, TheLesson.Runs.At, TheLesson.Runs.Above }.Select(one => one.Car.Scenario.ContentHash).Distinct().Count());
    }

    [Fact]
    public void Above_OfAllClicks_IsTheOneNearestToInStep()
    {
        Assert.Equal(TheLesson.Runs.Clicks.Min(click => Math.Abs(click.Lag)), Math.Abs(TheLesson.Runs.Above.Lag));
        Assert.Equal(TheLesson.Runs.Above.Click, TheLesson.Runs.Below.Click);
        Assert.Equal(TheLesson.Runs.Above.Click, TheLesson.Runs.At.Click);
        Assert.Equal(TheLesson.Runs.Car.Clicks, (TheLesson.Runs.Soft.Click, TheLesson.Runs.Stiff.Click));
    }

    [Fact]
    public void HeldTorque_OfAnyCase_HoldsAndALittleMoreSlips()
    {
        foreach (LessonCase one in new[] { TheLesson.Runs.Below, TheLesson.Runs.Above, TheLesson.Runs.Stiff })
        {
            double torque = one.HeldTorque(CancellationToken.None);
            Assert.Equal(0, Slipping(one.Car.WithTorque(torque)));
            Assert.True(Slipping(one.Car.WithTorque(torque + 5)) > 0, one.Key);
        }
    }

    /// <summary>Against the rectangle rule at every tenth of a millisecond, which is right to a few parts in ten thousand here.</summary>
    [Fact]
    public void MeanLoadGain_OfTheFirstTenth_IsTheMeanOfManyInstants()
    {
        LessonCase above = TheLesson.Runs.Above;
        double sum = 0;
        for (int i = 0; i < 1000; i++)
        {
            above.Run.Solution.At((i + 0.5) * 1e-4, out Observation seen);
            sum += seen.RearLoad - above.Run.Solution.Car.Standing.RearLoad;
        }

        Assert.Equal(1, above.MeanLoadGain(0.1) / (sum / 1000), 1e-3);
    }

    /// <summary>By hand from the entered masses: each part's centre moves by its own rise, the whole car's by their mean, weighted with the masses.</summary>
    [Fact]
    public void CentreRise_OfAnyInstant_IsTheMeanOfItsParts()
    {
        LessonCase above = TheLesson.Runs.Above;
        above.Run.Solution.At(0.5, out Observation seen);
        const double Pound = 0.45359237;
        double front = 150 * Pound, rear = 320 * Pound, sprung = (3000 * Pound) - front - rear;

        // The sprung centre of gravity is 160000 in·lb, less 15000 of the front's, over 2530 lb ahead of the axle.
        double ahead = (160000 - 15000) / 2530.0 * 0.0254;
        double rise = seen.RearRise + ((seen.FrontRise - seen.RearRise) * ahead / 2.54);
        double wanted = ((sprung * rise) + (rear * (seen.RearWheelHeight - (13 * 0.0254))) + (front * (seen.FrontWheelHeight - (12.5 * 0.0254)))) / (sprung + front + rear);

        // Between two points of the body a straight line: right to the square of the pitch, some 1e-3.
        Assert.Equal(1, above.CentreRise(0.5) / wanted, 3e-3);
    }

    [Fact]
    public void Solve_Cancelled_Stops() =>
        Assert.Throws<OperationCanceledException>(() => LessonRuns.Solve(new CancellationToken(canceled: true)));

    private static double Slipping(LessonCar car)
    {
        FigureSet figures = LaunchOutcome.Of(car.Scenario, CancellationToken.None).Figures;
        return figures["slip_beyond_peak_time_s"]!.Value;
    }
}
