using LaunchSim.Vehicle;

namespace LaunchSim.Tests.Cars;

/// <summary>
/// A car as plain as the closed forms of textbooks: springs straight over the axle, no drag, no rolling resistance, no
/// stops within reach; everything that a check varies is an argument. Rates and masses are for the axle.
/// </summary>
internal sealed record PlainCar
{
    public required double Sprung { get; init; }

    public required double FrontUnsprung { get; init; }

    public required double RearUnsprung { get; init; }

    public required double Wheelbase { get; init; }

    /// <summary>Sprung centre of gravity ahead of the rear axle and over the ground, m.</summary>
    public required Point Centre { get; init; }

    public required double Inertia { get; init; }

    public required Linkage Linkage { get; init; }

    public required double FrontRate { get; init; }

    public required double RearRate { get; init; }

    public required double FrontDamping { get; init; }

    public required double RearDamping { get; init; }

    public required double TireRate { get; init; }

    public double TireDamping { get; init; }

    public double Radius { get; init; } = 0.35;

    public double Grip { get; init; } = 2;

    public double SlipStiffness { get; init; } = 40;

    public double SpinInertia { get; init; } = 1;

    public double HousingInertia { get; init; } = 1;

    public Driveline Driveline { get; init; } = new AxleTorque { Torque = Table.Constant(0) };

    public Car Build()
    {
        const double g = 9.80665;
        double total = Sprung + FrontUnsprung + RearUnsprung;
        double front = g * ((Sprung * Centre.Ahead / Wheelbase) + FrontUnsprung);
        var travel = new DamperTravel { Extend = 0.2, Compress = 0.2, StopRate = 1e5, StopDamping = 0 };
        var tire = new Tire
        {
            LoadedRadius = Radius,
            VerticalRate = TireRate / 2,
            VerticalDamping = TireDamping / 2,
            Grip = Grip,
            SlipStiffness = SlipStiffness,
            PeakSlip = 0.1,
            SlidingRatio = 0.8,
            LoadSensitivity = 0,
            ReferenceLoad = 4000,
            RelaxationLength = 0.1,
            RollingResistance = 0,
        };
        return new Car
        {
            Chassis = new Chassis
            {
                Wheelbase = Wheelbase,
                FrontScale = front,
                RearScale = (total * g) - front,
                CentreOfGravityHeight = ((Sprung * Centre.Up) + ((FrontUnsprung + RearUnsprung) * Radius)) / total,
                PitchInertia = Inertia,
            },
            Front = new FrontEnd
            {
                UnsprungMass = FrontUnsprung,
                SpringRate = FrontRate / 2,
                SpringMotionRatio = 1,
                DamperMotionRatio = 1,
                Damper = SmoothCar.Line(FrontDamping / 2),
                DamperTravel = travel,
                SpinInertia = 1e-3,
                Tire = tire,
            },
            Rear = new RearEnd
            {
                UnsprungMass = RearUnsprung,
                HousingInertia = HousingInertia,
                Linkage = Linkage,
                SpringRate = RearRate / 2,
                SpringAxleMount = new Point(0, Radius),
                SpringBodyMount = new Point(0, Radius + 0.5),
                DamperAxleMount = new Point(0, Radius),
                DamperBodyMount = new Point(0, Radius + 0.5),
                Damper = SmoothCar.Line(RearDamping / 2),
                DamperTravel = travel,
                Tire = tire,
                Carcass = new Carcass { TorsionalRate = 20000, TorsionalDamping = 50, RimInertia = SpinInertia / 2, BeltInertia = SpinInertia / 2 },
            },
            Driveline = Driveline,
        };
    }
}
