using LaunchSim.Vehicle;

namespace LaunchSim.Tests.Cars;

/// <summary>The same car with lengths ×λ, masses and forces ×μ, times ×√λ: its launch is the same in its own measure.</summary>
internal static class Similar
{
    public static Car Of(Car car, double length, double mass)
    {
        double time = Math.Sqrt(length), speed = length / time, rate = mass / length, damping = mass * time / length;
        double inertia = mass * length * length, torque = mass * length;
        Point At(Point p) => new(p.Ahead * length, p.Up * length);
        Table Of(Table t, double x, double y) => new(t.X.ToArray().Select(v => v * x), t.Y.ToArray().Select(v => v * y));
        DamperLaw Law(DamperLaw law) => law is DamperTables d
            ? new DamperTables { Extension = Of(d.Extension, speed, mass), Compression = Of(d.Compression, speed, mass) }
            : law;
        DamperTravel Travel(DamperTravel t) => new()
        {
            Extend = t.Extend * length,
            Compress = t.Compress * length,
            StopRate = t.StopRate * rate,
            StopDamping = t.StopDamping * damping,
        };
        Tire Tire(Tire t) => t with
        {
            LoadedRadius = t.LoadedRadius * length,
            VerticalRate = t.VerticalRate * rate,
            VerticalDamping = t.VerticalDamping * damping,
            ReferenceLoad = t.ReferenceLoad * mass,
            RelaxationLength = t.RelaxationLength * length,
        };
        var four = (FourLink)car.Rear.Linkage;
        var drive = (AxleTorque)car.Driveline;
        return car with
        {
            Chassis = car.Chassis with
            {
                Wheelbase = car.Chassis.Wheelbase * length,
                FrontScale = car.Chassis.FrontScale * mass,
                RearScale = car.Chassis.RearScale * mass,
                CentreOfGravityHeight = car.Chassis.CentreOfGravityHeight * length,
                PitchInertia = car.Chassis.PitchInertia * inertia,
                Aero = car.Chassis.Aero! with { DragArea = car.Chassis.Aero.DragArea * rate, Height = car.Chassis.Aero.Height * length },
                Ballast = car.Chassis.Ballast.Select(b => new Ballast { Mass = b.Mass * mass, At = At(b.At) }).ToArray(),
            },
            Front = car.Front with
            {
                UnsprungMass = car.Front.UnsprungMass * mass,
                SpringRate = car.Front.SpringRate * rate,
                Damper = Law(car.Front.Damper),
                DamperTravel = Travel(car.Front.DamperTravel),
                Tire = Tire(car.Front.Tire),
                SpinInertia = car.Front.SpinInertia * inertia,
            },
            Rear = car.Rear with
            {
                UnsprungMass = car.Rear.UnsprungMass * mass,
                HousingInertia = car.Rear.HousingInertia * inertia,
                Linkage = new FourLink
                {
                    LowerAxle = At(four.LowerAxle),
                    LowerBody = At(four.LowerBody),
                    UpperAxle = At(four.UpperAxle),
                    UpperBody = At(four.UpperBody),
                },
                SpringRate = car.Rear.SpringRate * rate,
                SpringAxleMount = At(car.Rear.SpringAxleMount),
                SpringBodyMount = At(car.Rear.SpringBodyMount),
                DamperAxleMount = At(car.Rear.DamperAxleMount),
                DamperBodyMount = At(car.Rear.DamperBodyMount),
                Damper = Law(car.Rear.Damper),
                DamperTravel = Travel(car.Rear.DamperTravel),
                Tire = Tire(car.Rear.Tire),
                Carcass = new Carcass
                {
                    TorsionalRate = car.Rear.Carcass.TorsionalRate * torque,
                    TorsionalDamping = car.Rear.Carcass.TorsionalDamping * torque * time,
                    RimInertia = car.Rear.Carcass.RimInertia * inertia,
                    BeltInertia = car.Rear.Carcass.BeltInertia * inertia,
                },
                WheelieBar = new WheelieBar
                {
                    Wheel = At(car.Rear.WheelieBar!.Wheel),
                    Rate = car.Rear.WheelieBar.Rate * rate,
                    Damping = car.Rear.WheelieBar.Damping * damping,
                },
            },
            Driveline = new AxleTorque { Torque = Of(drive.Torque, time, torque), PowerShare = Of(drive.PowerShare, time, 1) },
        };
    }
}
