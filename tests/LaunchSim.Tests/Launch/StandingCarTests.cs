using CsCheck;
using LaunchSim.Dynamics;
using LaunchSim.Launch;
using LaunchSim.Tests.Cars;
using LaunchSim.Tests.Dynamics;
using LaunchSim.Vehicle;

namespace LaunchSim.Tests.Launch;

/// <summary>The standing car: docs/model.md, "From the measured car to the standing car".</summary>
public class StandingCarTests
{
    private const double G = 9.80665, Inch = 0.0254;

    private static Car AsMeasured(Car car) => car with
    {
        Chassis = car.Chassis with { Ballast = [], FrontRideHeight = 0, RearRideHeight = 0 },
        Front = car.Front with { Tire = car.Front.Tire with { Pressure = null } },
        Rear = car.Rear with { Tire = car.Rear.Tire with { Pressure = null } },
    };

    private static Car Unpowered(Car car) => car with { Driveline = new AxleTorque { Torque = Table.Constant(0) } };

    [Fact]
    public void Standing_WithSettingsAtMeasuredValues_GivesTheMeasuredStateBack() => RandomCar.Any.Select(AsMeasured).Where(Stands).Sample(
        car =>
        {
            // By construction of the free radii: the measured state is in balance. Rounding only.
            Standing s = StandingCar.Find(car).Standing;
            Assert.Equal(1, s.RearLoad / car.Chassis.RearScale, 1e-9);
            Assert.Equal(1, s.FrontLoad / car.Chassis.FrontScale, 1e-9);
            Assert.Equal(0, s.Pitch, 1e-9);
            Assert.Equal(0, s.Lambda, 1e-9);
            Assert.Equal(0, s.FrontTravel, 1e-9);
            Assert.Equal(car.Chassis.Wheelbase, s.Wheelbase, 1e-9);
            Assert.Equal(car.Chassis.CentreOfGravityHeight, s.CentreOfGravityHeight, 1e-9);
            Assert.Equal(car.Rear.Tire.LoadedRadius, s.RearWheelHeight, 1e-9);
            Assert.Equal(car.Front.Tire.LoadedRadius, s.FrontWheelHeight, 1e-9);
        },
        iter: 500);

    [Fact]
    public void Standing_WithPressureSetToTheMeasuredOne_IsTheCarWithoutPressure()
    {
        Car car = DoorCar.Create();
        Standing with = StandingCar.Find(car).Standing;
        Standing without = StandingCar.Find(car with { Rear = car.Rear with { Tire = car.Rear.Tire with { Pressure = null } } }).Standing;
        Assert.Equal(without, with);
    }

    [Fact]
    public void Standing_WithAnySettings_CarriesItsWeightWithMomentsInBalance() => RandomCar.Any.Sample(
        car =>
        {
            // Statics of the whole car: weight of car and ballast on two tyres, about the rear contact.
            StandingCar standing = StandingCar.Find(car);
            Standing s = standing.Standing;
            double weight = car.Chassis.FrontScale + car.Chassis.RearScale + car.Chassis.Ballast.Sum(b => b.Mass * G);
            Assert.Equal(1, (s.FrontLoad + s.RearLoad) / weight, 1e-12);
            LaunchModel m = standing.Model;
            double front = ((m.SprungMass * s.X) + (m.FrontMass * s.Wheelbase)) * G / s.Wheelbase;
            Assert.Equal(1, s.FrontLoad / front, 1e-9);
            Assert.Equal(-car.Chassis.FrontRideHeight, s.FrontTravel, 1e-15);
        },
        iter: 500);

    [Fact]
    public void Standing_WithAnySettingsAndNoTorque_StaysStillForASecond() => RandomCar.Any.Select(Unpowered).Where(Rights).Sample(
        car =>
        {
            StandingCar standing = StandingCar.Find(car);
            LaunchRunner runner = LaunchRunner.Create(standing, 1e-11);
            var released = new double[StateLayout.Count];
            Modes modes = runner.Release(released);
            var rates = new double[StateLayout.Count];
            runner.Rates(0, released, modes, rates);
            Assert.All(rates, rate => Assert.InRange(Math.Abs(rate), 0, 1e-9 * G));

            // At standstill the slip springs swing undamped: rounding is stirred up to the size of the tolerance and not
            // beyond. Places, m and rad: 1e-9 with a tolerance of 1e-11, and in proportion with the default one.
            Assert.InRange(Drift(runner, released), 0, 1e-9);
            Assert.InRange(Drift(LaunchRunner.Create(standing, 1e-8), released), 0, 1e-6);
        },
        iter: 150);

    [Fact]
    public void Standing_DoorCarWithRideHeightPressureAndBallastChanged_StaysStillForASecond()
    {
        Car car = Unpowered(DoorCar.Create());
        car = car with
        {
            Chassis = car.Chassis with { RearRideHeight = 0.03, FrontRideHeight = -0.02, Ballast = [.. car.Chassis.Ballast, new Ballast { Mass = 30, At = new Point(2.9, 0.4) }] },
            Rear = car.Rear with { Tire = car.Rear.Tire with { Pressure = car.Rear.Tire.Pressure! with { Set = 0.8 * car.Rear.Tire.Pressure.Measured } } },
        };
        StandingCar standing = StandingCar.Find(car);
        var released = new double[StateLayout.Count];
        LaunchRunner runner = LaunchRunner.Create(standing, 1e-8);
        runner.Release(released);
        Assert.InRange(Drift(runner, released), 0, 1e-9);
    }

    /// <summary>Largest movement of the five coordinates in a second, m or rad.</summary>
    private static double Drift(LaunchRunner runner, double[] released)
    {
        Assert.True(runner.Run(new RunSettings { Duration = 1 }).Completed);
        return runner.State.ToArray().Zip(released, (a, b) => Math.Abs(a - b)).Take(StateLayout.XRate).Max();
    }

    /// <summary>Whether the standing car rights itself: on soft springs at a bad angle a legal car may balance like a pencil.</summary>
    private static bool Rights(Car car) =>
        Linearised.Roots(Linearised.At(car, [.. Enumerable.Range(StateLayout.Z, StateLayout.FrontDeflection)])).All(root => root.Real < 0.1);

    [Fact]
    public void Standing_OfTheDoorCar_IsWhereEverythingCountsFrom()
    {
        var released = new double[StateLayout.Count];
        LaunchRunner.Create(StandingCar.Find(DoorCar.Create()), 1e-8).Release(released);
        Assert.All(released[5..], value => Assert.Equal(0, value));
        LaunchRunner.Create(StandingCar.Find(DoorCar.Create()), 1e-8).Solve(new RunSettings { Duration = 0.01 }).At(0, out Observation o);
        Assert.Equal(0, o.Distance);
        Assert.Equal(0, o.RearWheelPlace, 1e-15);
        Assert.Equal(0, o.Separation);
        Assert.Equal(0, o.FrontTravel);
        Assert.Equal(0, o.FrontRise);
        Assert.Equal(0, o.RearRise);
        Assert.Equal(0, o.Pitch);
    }

    [Fact]
    public void RideHeight_Raised_MovesTheBodyOverTheAxleByThat()
    {
        Car car = Unpowered(DoorCar.Create());
        Standing before = StandingCar.Find(car).Standing;
        Standing after = StandingCar.Find(car with { Chassis = car.Chassis with { RearRideHeight = 0.02, FrontRideHeight = -0.01 } }).Standing;
        Assert.Equal(-0.02, after.RearWheelZ - before.RearWheelZ, 1e-12);
        Assert.Equal(0.01, after.FrontTravel - before.FrontTravel, 1e-12);
    }

    [Fact]
    public void Ballast_Anywhere_LeavesTheFreeRadiiAlone()
    {
        Car car = DoorCar.Create();
        Car heavy = car with { Chassis = car.Chassis with { Ballast = [new Ballast { Mass = 80, At = new Point(2, 0.3) }] } };
        Assert.Equal(StandingCar.Find(car).Model.RearTire.FreeRadius, StandingCar.Find(heavy).Model.RearTire.FreeRadius);
        Assert.True(StandingCar.Find(heavy).Standing.FrontWheelHeight < StandingCar.Find(car).Standing.FrontWheelHeight);
    }

    public static TheoryData<string, string, Func<Car, Car>> Refused => new()
    {
        { "front.unsprung", "not below", c => c with { Front = c.Front with { UnsprungMass = 720 } } },
        { "rear.unsprung", "not below", c => c with { Rear = c.Rear with { UnsprungMass = 700 } } },
        { "front.tire.pressure.set", "vertical rate", c => c with { Front = c.Front with { Tire = c.Front.Tire with { Pressure = Pressure(-1e5, 2, 0, 0) } } } },
        { "front.tire.pressure.set", "grip", c => c with { Front = c.Front with { Tire = c.Front.Tire with { Pressure = Pressure(-1e5, 0, 0, 1.1e-5) } } } },
        { "rear.tire.pressure.set", "vertical rate", c => c with { Rear = c.Rear with { Tire = c.Rear.Tire with { Pressure = Pressure(-1e5, 2, 0, 0) } } } },
        { "rear.tire.pressure.set", "grip", c => c with { Rear = c.Rear with { Tire = c.Rear.Tire with { Pressure = Pressure(-1e5, 0, 0, 1.1e-5) } } } },
        { "rear.tire.pressure.set", "torsional rate", c => c with { Rear = c.Rear with { Tire = c.Rear.Tire with { Pressure = Pressure(-1e5, 0, 0.2, 0) } } } },
        // Upper bar and housing in one line: as measured, and once the axle has dropped three inches.
        { "rear.linkage", "as measured", c => WithUpper(c, new Point(2.5 * Inch, 17 * Inch), new Point(4.1 * Inch, 27.026666666666667 * Inch)) },
        { "rear.linkage", "inside the damper's travel", c => WithUpper(c, new Point(2.5 * Inch, 17 * Inch), new Point(5 * Inch, 28 * Inch)) },
        { "rear.spring", "same point", c => c with { Rear = c.Rear with { SpringBodyMount = c.Rear.SpringAxleMount } } },
        { "rear.damper", "same point", c => c with { Rear = c.Rear with { DamperBodyMount = c.Rear.DamperAxleMount } } },
        { "car.ride_height.rear", "cannot reach", c => c with { Chassis = c.Chassis with { RearRideHeight = 1.5 } } },
        { "car.ballast", "front tyres would be in the air", c => With(c, new Ballast { Mass = 900, At = new Point(-2.5, 0.5) }) },
        { "car.ballast", "rear tyres would be in the air", c => With(c, new Ballast { Mass = 900, At = new Point(6, 0.5) }) },
        { "front.spring", "have to pull", c => With(c, new Ballast { Mass = 700, At = new Point(-2.5, 0.5) }) },
        { "rear.spring", "have to pull", c => With(c, new Ballast { Mass = 500, At = new Point(6, 0.5) }) },
        { "rear.spring", "", c => c with { Rear = c.Rear with { SpringAxleMount = new Point(0, 0.5), SpringBodyMount = new Point(0, 0.2) } } },
        { "rear.damper.travel", "top stop", c => c with { Chassis = c.Chassis with { RearRideHeight = 4.3 * Inch } } },
        { "rear.damper.travel", "bottom stop", c => c with { Chassis = c.Chassis with { RearRideHeight = -3.9 * Inch } } },
        { "front.damper.travel", "top stop", c => c with { Chassis = c.Chassis with { FrontRideHeight = 3.8 * Inch } } },
        { "front.damper.travel", "bottom stop", c => c with { Chassis = c.Chassis with { FrontRideHeight = -3.3 * Inch } } },
        { "rear.wheelie_bar.wheel", "below the ground", c => c with { Rear = c.Rear with { WheelieBar = c.Rear.WheelieBar! with { Wheel = new Point(-58 * Inch, -0.01) } } } },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public void CarThatCannotStand_IsRefusedWithItsPathAndMend(string path, string found, Func<Car, Car> spoil)
    {
        Car car = spoil(DoorCar.Create());
        Assert.False(StandingCar.TryFind(car, out StandingCar? standing, out IReadOnlyList<StandingProblem> problems));
        Assert.Null(standing);
        StandingProblem problem = Assert.Single(problems, p => p.Path == path && p.Found.Contains(found, StringComparison.Ordinal));
        Assert.NotEmpty(problem.Mend);
        CannotStandException thrown = Assert.Throws<CannotStandException>(() => StandingCar.Find(car));
        Assert.Contains(path, thrown.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void CarWithTwoFaults_NamesBoth()
    {
        Car car = DoorCar.Create();
        Assert.False(StandingCar.TryFind(
            car with { Front = car.Front with { UnsprungMass = 720 }, Rear = car.Rear with { UnsprungMass = 700 } }, out _, out IReadOnlyList<StandingProblem> problems));
        Assert.Equal(["front.unsprung", "rear.unsprung"], problems.Select(p => p.Path));
    }

    private static bool Stands(Car car) => StandingCar.TryFind(car, out _, out _);

    private static Car With(Car car, Ballast ballast) => car with { Chassis = car.Chassis with { Ballast = [ballast] } };

    private static Car WithUpper(Car car, Point axle, Point body) => car with
    {
        Rear = car.Rear with { Linkage = DoorCar.FourLink() with { UpperAxle = axle, UpperBody = body } },
    };

    private static TirePressure Pressure(double change, double vertical, double torsional, double grip) => new()
    {
        Measured = 1.1e5,
        Set = 1.1e5 + change,
        VerticalRateSlope = vertical,
        TorsionalRateSlope = torsional,
        GripSlope = grip,
    };
}
