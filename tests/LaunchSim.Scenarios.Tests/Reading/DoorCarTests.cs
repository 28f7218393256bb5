using LaunchSim.Scenarios.Units;
using LaunchSim.Vehicle;

namespace LaunchSim.Scenarios.Tests.Reading;

public class DoorCarTests
{
    private const double Inch = 0.0254;
    private const double PoundForce = 4.4482216152605;

    [Fact]
    public void Read_WholeExample_GivesTheCarInSi()
    {
        ReadResult result = new ScenarioReader().Read(Files.DoorCar);

        Assert.Empty(result.Errors);
        Assert.Empty(result.Warnings);
        Scenario scenario = result.Scenario!;
        Assert.Equal("Door car, as measured", scenario.Name);
        Assert.Equal(UnitSystem.Shop, scenario.UnitSystem);
        Assert.Empty(scenario.MissingForRun);
        Car car = scenario.Car!;
        Assert.Equal(105.5 * Inch, car.Chassis.Wheelbase, 1e-14);
        Assert.Equal(1560 * PoundForce, car.Chassis.FrontScale, 1e-9);
        Assert.Equal(40 * 0.45359237, car.Chassis.Ballast[0].Mass, 1e-13);
        Assert.Equal(new Point(-25 * Inch, 18 * Inch), car.Chassis.Ballast[0].At);
        Assert.Equal(340 * 0.45359237, car.Rear.UnsprungMass, 1e-12);
        var linkage = Assert.IsType<FourLink>(car.Rear.Linkage);
        Assert.Equal(new Point(14 * Inch, 14.6 * Inch), linkage.UpperBody);
        Assert.Equal(car.Rear.SpringBodyMount, car.Rear.DamperBodyMount);
        Assert.Equal(car.Rear.SpringAxleMount, car.Rear.DamperAxleMount);
        var damper = Assert.IsType<DamperTables>(car.Rear.Damper);
        Assert.Equal(225 * PoundForce, damper.Extension.Y[^1], 1e-9);
        Assert.Equal(20 * Inch, damper.Extension.X[^1], 1e-14);
        Assert.Equal(-0.01 / 6894.75729316836, car.Rear.Tire.Pressure!.GripSlope, 1e-18);
        Assert.Equal(14000, car.Rear.Carcass.TorsionalRate, 1e-9);
        Assert.Equal(2 * Math.PI / 180, car.Rear.PinionAngle!.Value, 1e-15);
        var torque = Assert.IsType<AxleTorque>(car.Driveline);
        Assert.Equal(4800 * 1.3558179483314004, torque.Torque.Y[^1], 1e-9);
        Assert.Equal(0.9, torque.PowerShare.At(0));
        Assert.Equal(1.8, scenario.Run.Duration);
        Assert.Equal(60 * 12 * Inch, Assert.Single(scenario.Run.Marks), 1e-12);
        Assert.Equal(["1", "2", "3"], scenario.Brackets["rear.linkage.upper.body"].Holes.Select(hole => hole.Key));
        Assert.Equal("2", scenario.Brackets["rear.linkage.upper.body"].Use);
        Assert.Equal([0, 6, 12], scenario.Clicks["rear.damper.extension"].Entered);
        Assert.Equal("soft", scenario.Clicks["rear.damper.extension"].CountFrom);
        Assert.Equal(5, scenario.Choices.Count);
        Assert.Equal(["14 psi", "14.5 psi", "15 psi", "15.5 psi", "16 psi", "16.5 psi", "17 psi", "17.5 psi", "18 psi"], scenario.Choices[2].Values);
        Assert.Equal(64, scenario.ContentHash.Length);
    }
}
