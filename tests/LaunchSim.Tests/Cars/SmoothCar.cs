using LaunchSim.Vehicle;

namespace LaunchSim.Tests.Cars;

/// <summary>
/// The door car without anything that kinks in its first second: one line a damper, one line of torque from 0, one grip,
/// stops out of reach, no bar, so little torque that all tyres stay down, and carcasses damped so that no wheel swings back.
/// </summary>
internal static class SmoothCar
{
    public static Car Create()
    {
        Car car = DoorCar.Create();
        return car with
        {
            Front = car.Front with { Damper = Line(2500), DamperTravel = FarStops(car.Front.DamperTravel) },
            Rear = car.Rear with { Damper = Line(4000), DamperTravel = FarStops(car.Rear.DamperTravel), WheelieBar = null, Carcass = car.Rear.Carcass with { TorsionalDamping = 100 } },
            Driveline = new AxleTorque { Torque = new Table([0, 2], [0, 6000]) },
        };
    }

    /// <summary>A damper with one rate, N·s/m, both ways.</summary>
    public static DamperTables Line(double rate) => new() { Extension = new Table([0, 1], [0, rate]), Compression = new Table([0, 1], [0, rate]) };

    private static DamperTravel FarStops(DamperTravel travel) => travel with { Extend = 0.14, Compress = 0.14 };
}
