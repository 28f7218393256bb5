using LaunchSim.Dynamics;
using LaunchSim.Geometry;
using LaunchSim.Launch;
using LaunchSim.Tests.Cars;
using LaunchSim.Vehicle;

namespace LaunchSim.Tests.Geometry;

/// <summary>Rows 25 and 28: facts of the trade (common practice, no source), on invented cars.</summary>
public class TradeFactTests
{
    private const double Inch = 0.0254;

    [Theory]
    [InlineData(3, -10)]
    [InlineData(5, -10)]
    [InlineData(3, -15)]
    [InlineData(5, -15)]
    public void LowerBarUphillUpperBarDownhill_LiesAboveOneHundredPercent(double lower, double upper)
    {
        // 28 (a), about the door car's axle points.
        Point Body(Point axle, double length, double degrees) => new(
            axle.Ahead + (length * Math.Cos(degrees * Math.PI / 180)), axle.Up + (length * Math.Sin(degrees * Math.PI / 180)));
        FourLink links = DoorCar.FourLink();
        Car car = DoorCar.Create();
        car = car with
        {
            Rear = car.Rear with
            {
                Linkage = links with
                {
                    LowerBody = Body(links.LowerAxle, 20 * Inch, lower),
                    UpperBody = Body(links.UpperAxle, 11.7 * Inch, upper),
                },
            },
        };
        Assert.InRange(StandingCar.Find(car).Line.Percent, 100, 400);
    }

    [Fact]
    public void LadderBarHolesInAVerticalRow_KeepTheInstantCentresLengthAndStraddleOneHundredPercent()
    {
        // 28 (b). As drawn: a standing car with ballast pitches a little, which moves the length by a hair.
        StaticLine[] lines = new[] { 6.0, 8.0, 10.0 }.Select(up => StaticLine.At(
            new LadderBarMap(new LadderBar { Pivot = DoorCar.P(36, up) }, DoorCar.P(0, 13.1), new Point(1.4, 0.5)), 0, 0, 13.1 * Inch, 21 * Inch, 105.5 * Inch)).ToArray();
        Assert.All(lines, line => Assert.Equal(36 * Inch, line.InstantCentreAhead, 1e-14));
        Assert.True(lines[0].Percent < 100);
        Assert.True(lines[2].Percent > 100);
    }

    [Fact]
    public void InstantCentresOnOneLineThroughTheContactPoint_HaveOnePercent()
    {
        // 28 (c): ladder bars of any length along one slope; a slope is a slope to rounding.
        foreach (double length in new[] { 0.4, 0.9, 1.7, 3.0 })
        {
            var map = new LadderBarMap(new LadderBar { Pivot = new Point(length, 0.3 * length) }, new Point(0, 0.33), new Point(1.4, 0.5));
            var line = StaticLine.At(map, 0, 0, 0.33, 0.55, 2.7);
            Assert.Equal(100 * 0.3 / (0.55 / 2.7), line.Percent, 1e-10);
        }
    }

    [Fact]
    public void Body_AtOneHundredPercent_NeitherSeparatesNorSquatsAndElsewhereDoes()
    {
        // 28 (d), in the door car's family by its upper pivot's height.
        (double apart100, double squat100) = Peaks(100);
        (double apart150, _) = Peaks(150);
        (double apart50, double squat50) = Peaks(50);
        Assert.True(apart100 < apart150 / 4, $"{apart100} {apart150}");
        Assert.True(squat100 < apart150 / 4, $"{squat100} {apart150}");
        Assert.True(apart150 > 0.02);
        Assert.True(squat50 > 0.01 && squat50 > 2 * apart50, $"{squat50} {apart50}");
    }

    // Row 28 (e): figures of an independent program; ±0.5 % of percent, loads and of a time ±3 ms.
    [Theory]
    [InlineData(15.4, 116, -141, 10825, 10192, 26)]
    [InlineData(15.0, 128, -72, 10941, 9691, 32)]
    [InlineData(14.6, 141, -47, 11155, 8695, 35)]
    [InlineData(14.2, 153, -29, 11438, 7698, 38)]
    [InlineData(13.8, 165, -13, 11749, 6768, 40)]
    [InlineData(13.4, 176, -4, 12066, 5868, 42)]
    [InlineData(13.0, 188, 1, 12384, 5034, 44)]
    public void DoorCar_WithItsUpperPivotLowered_IsHitAndUnloadedAsByTheIndependentProgram(
        double height, double percent, double riseLag, double hit, double lowest, double gapLag)
    {
        LaunchSolution launch = Launched(height);
        Assert.Equal(1, launch.Car.Line.Percent / percent, 0.005);
        const int perSecond = 20000;
        var seen = new Observation[perSecond + 1];
        for (int i = 0; i <= perSecond; i++)
        {
            launch.At(i / (double)perSecond, out seen[i]);
        }

        int peak = Enumerable.Range(0, (int)(0.3 * perSecond) + 1).MaxBy(i => seen[i].RearLoad);
        Assert.Equal(1, seen[peak].RearLoad / hit, 0.005);
        Assert.Equal(1, seen[peak..].Min(o => o.RearLoad) / lowest, 0.005);

        double First(Func<Observation, double> of, double level) => seen.First(o => of(o) >= level).Time;
        double Half(Func<Observation, double> of) => First(of, 0.5 * seen[..((int)(0.4 * perSecond) + 1)].Max(of));
        Assert.Equal(riseLag, 1000 * (Half(o => o.FrontRise) - Half(o => o.RearRise)), 3.0);
        const double quarterInch = 0.25 * Inch;
        Assert.Equal(gapLag, 1000 * (First(o => -o.FrontTravel, quarterInch) - First(o => o.Separation, quarterInch)), 3.0);
    }

    [Fact]
    public void DoorCar_FromOneHundredFiftyToOneHundredNinetyPercent_HasARiseLagUnderThirtyMilliseconds()
    {
        // The words of 28 (e): ever earlier, ever harder, then ever more unloaded.
        double[] hits = new[] { 15.4, 15.0, 14.6, 14.2, 13.8, 13.4, 13.0 }.Select(height => Peak(Launched(height))).ToArray();
        Assert.Equal(hits.Order(), hits);
    }

    [Fact]
    public void DoorCar_PitchInertia_IsPlausibleByTwoRegressions()
    {
        // Row 25: refit of the open inertia measurements behind SAE 1999-01-1336, 2σ each. The whole car's inertia: the
        // sprung body's with the unsprung masses at their wheel centres.
        Car car = DoorCar.Create();
        const double g = 9.80665;
        double mass = (car.Chassis.FrontScale + car.Chassis.RearScale) / g;
        double a = car.Chassis.Wheelbase * car.Chassis.FrontScale / (car.Chassis.FrontScale + car.Chassis.RearScale), b = car.Chassis.Wheelbase - a;
        double sprungAhead = ((mass * a) - (car.Front.UnsprungMass * car.Chassis.Wheelbase)) / (mass - car.Front.UnsprungMass - car.Rear.UnsprungMass);
        double whole = car.Chassis.PitchInertia + (car.Rear.UnsprungMass * a * a) + (car.Front.UnsprungMass * b * b)
            + ((mass - car.Front.UnsprungMass - car.Rear.UnsprungMass) * (a - sprungAhead) * (a - sprungAhead));
        Assert.InRange(whole, (2.978202 * mass) - 1697.108 - (2 * 527), (2.978202 * mass) - 1697.108 + (2 * 527));
        Assert.InRange(whole, (3.079446 * mass) - 1728.758 - (2 * 247), (3.079446 * mass) - 1728.758 + (2 * 247));
        Assert.InRange(whole / (mass * a * b), 1.042 - (2 * 0.091), 1.042 + (2 * 0.091));
    }

    private static LaunchSolution Launched(double height) =>
        LaunchRunner.Create(StandingCar.Find(DoorCar.WithUpperPivotAt(height)), 1e-8).Solve(new RunSettings { Duration = 1 });

    private static double Peak(LaunchSolution launch) => Enumerable.Range(0, 3001).Max(i =>
    {
        launch.At(i / 10000.0, out Observation o);
        return o.RearLoad;
    });

    private static (double Apart, double Squat) Peaks(double percent)
    {
        double low = 12, high = 20;
        while (high - low > 1e-9)
        {
            double middle = 0.5 * (low + high);
            if (StandingCar.Find(DoorCar.WithUpperPivotAt(middle)).Line.Percent > percent)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        LaunchSolution launch = Launched(low);
        double apart = 0, squat = 0;
        for (int i = 0; i <= 2000; i++)
        {
            launch.At(i / 2000.0, out Observation o);
            apart = Math.Max(apart, o.Separation);
            squat = Math.Max(squat, -o.Separation);
        }

        return (apart, squat);
    }
}
