using CsCheck;
using LaunchSim.Launch;
using LaunchSim.Vehicle;

namespace LaunchSim.Tests.Cars;

/// <summary>Which driveline a random car has.</summary>
public enum Power
{
    Torque,
    Clutch,
    Converter,
}

/// <summary>Which linkage a random car has.</summary>
public enum Bars
{
    FourLink,
    AllButParallel,
    ExactlyParallel,
    Ladder,
}

/// <summary>
/// Random cars, wide but legal: each stands, and each part of the format is drawn. Every number is one draw from
/// 0 to 1, so that a failing car is found again by its seed.
/// </summary>
internal static class RandomCar
{
    private const int Draws = 220;

    /// <summary>Any linkage with any driveline.</summary>
    public static Gen<Car> Any { get; } = Gen.Select(Gen.Enum<Bars>(), Gen.Enum<Power>())
        .SelectMany((bars, power) => Of(bars, power));

    /// <summary>One linkage with one driveline.</summary>
    public static Gen<Car> Of(Bars bars, Power power) =>
        Gen.Double[0, 1].Array[Draws].Select(u => Build(new Draw(u), bars, power)).Where(car => StandingCar.TryFind(car, out _, out _));

    /// <summary>A number of cars, the same at every call: for measurements whose result is written down.</summary>
    public static IEnumerable<Car> Series(Bars bars, Power power, int count)
    {
        Gen<Car> gen = Of(bars, power);
        for (int i = 0; i < count; i++)
        {
            yield return gen.Generate(new PCG((uint)(1 + i), 0x5eed + (ulong)i), null, out _);
        }
    }

    private static Car Build(Draw d, Bars bars, Power power)
    {
        double weight = d.Between(7000, 20000), rearShare = d.Between(0.4, 0.62), wheelbase = d.Between(2.2, 3.2);
        double front = weight * (1 - rearShare), rear = weight * rearShare;
        double radius = d.Between(0.28, 0.42);
        double height = d.Between(0.4, 0.75);
        return new Car
        {
            Chassis = new Chassis
            {
                Wheelbase = wheelbase,
                FrontScale = front,
                RearScale = rear,
                CentreOfGravityHeight = height,
                PitchInertia = d.Between(0.5, 1.3) * weight / 9.81 * 0.25 * wheelbase * wheelbase,
                Aero = d.Chance(0.6) ? new Aero { DragArea = d.Between(0, 1.2), Height = d.Between(0.2, 0.9), AirDensity = 1.2 } : null,
                FrontRideHeight = d.Chance(0.5) ? d.Between(-0.02, 0.02) : 0,
                RearRideHeight = d.Chance(0.5) ? d.Between(-0.02, 0.02) : 0,
                Ballast = Enumerable.Range(0, d.Whole(3)).Select(_ => new Ballast
                {
                    Mass = d.Between(0, 50),
                    At = new Point(d.Between(-0.8, 3), d.Between(0.1, 0.9)),
                }).ToArray(),
            },
            Front = new FrontEnd
            {
                UnsprungMass = d.Between(0.05, 0.14) * front / 9.81,
                SpringRate = d.Between(12000, 60000),
                SpringMotionRatio = d.Between(0.6, 1.1),
                DamperMotionRatio = d.Between(0.6, 1.1),
                Damper = Damper(d),
                DamperTravel = Travel(d),
                Tire = Tire(d, d.Between(0.27, 0.36), front, d.Between(0.8, 1.3), rear: false),
                SpinInertia = d.Between(0.4, 3),
            },
            Rear = new RearEnd
            {
                UnsprungMass = d.Between(0.1, 0.28) * rear / 9.81,
                HousingInertia = d.Between(0.8, 6),
                Linkage = Link(d, bars, radius),
                SpringRate = d.Between(12000, 45000),
                SpringAxleMount = new Point(d.Between(-0.12, 0.1), radius + d.Between(-0.15, 0.05)),
                SpringBodyMount = new Point(d.Between(-0.08, 0.08), radius + d.Between(0.25, 0.4)),
                DamperAxleMount = new Point(d.Between(-0.12, 0.1), radius + d.Between(-0.15, 0.05)),
                DamperBodyMount = new Point(d.Between(-0.08, 0.12), radius + d.Between(0.25, 0.4)),
                Damper = Damper(d),
                DamperTravel = Travel(d),
                Tire = Tire(d, radius, rear, d.Between(1.2, 3), rear: true),
                Carcass = new Carcass
                {
                    TorsionalRate = d.Between(6000, 30000),
                    TorsionalDamping = d.Between(0, 60),
                    RimInertia = d.Between(0.8, 4),
                    BeltInertia = d.Between(1, 5),
                },
                WheelieBar = d.Chance(0.5)
                    ? new WheelieBar { Wheel = new Point(d.Between(-1.8, -1), d.Between(0.05, 0.2)), Rate = d.Between(50000, 300000), Damping = d.Between(0, 3000) }
                    : null,
            },
            Driveline = Drive(d, power, weight),
            TrackGrip = d.Chance(0.5) ? Table.Constant(d.Between(0.6, 1.1)) : new Table([0, d.Between(1, 4), 8], [1, d.Between(0.6, 1), d.Between(0.7, 1)]),
        };
    }

    private static Linkage Link(Draw d, Bars bars, double radius)
    {
        if (bars == Bars.Ladder)
        {
            return new LadderBar { Pivot = new Point(d.Between(0.5, 1.5), d.Between(0.12, 0.5)) };
        }

        var lowerAxle = new Point(d.Between(-0.04, 0.1), radius - d.Between(0.08, 0.2));
        var upperAxle = new Point(d.Between(-0.04, 0.1), radius + d.Between(0.06, 0.2));
        double lower = d.Between(-4, 9) * Math.PI / 180, lowerLength = d.Between(0.35, 0.8);
        double upper = d.Between(-16, 8) * Math.PI / 180, upperLength = d.Between(0.22, 0.5);
        if (bars == Bars.AllButParallel)
        {
            upper = lower + ((d.Chance(0.5) ? 1 : -1) * Math.Pow(10, -d.Between(2, 8)));
        }
        else if (bars == Bars.ExactlyParallel)
        {
            var bar = new Point(Math.Cos(lower) * lowerLength, Math.Sin(lower) * lowerLength);
            return new FourLink { LowerAxle = lowerAxle, LowerBody = Plus(lowerAxle, bar), UpperAxle = upperAxle, UpperBody = Plus(upperAxle, bar) };
        }

        return new FourLink
        {
            LowerAxle = lowerAxle,
            LowerBody = Plus(lowerAxle, new Point(Math.Cos(lower) * lowerLength, Math.Sin(lower) * lowerLength)),
            UpperAxle = upperAxle,
            UpperBody = Plus(upperAxle, new Point(Math.Cos(upper) * upperLength, Math.Sin(upper) * upperLength)),
        };
    }

    private static Point Plus(Point a, Point b) => new(a.Ahead + b.Ahead, a.Up + b.Up);

    private static DamperTables Damper(Draw d) => new() { Extension = Row(d), Compression = Row(d) };

    private static Table Row(Draw d)
    {
        int points = 1 + d.Whole(5);
        var x = new double[points + 1];
        var y = new double[points + 1];
        for (int i = 1; i <= points; i++)
        {
            x[i] = x[i - 1] + d.Between(0.02, 0.2);
            y[i] = y[i - 1] + d.Between(20, 300);
        }

        return new Table(x, y);
    }

    private static DamperTravel Travel(Draw d) => new()
    {
        Extend = d.Between(0.04, 0.12),
        Compress = d.Between(0.04, 0.1),
        StopRate = d.Between(100000, 800000),
        StopDamping = d.Between(0, 3000),
    };

    private static Tire Tire(Draw d, double radius, double scale, double grip, bool rear)
    {
        double peak = d.Between(0.06, 0.2), ratio = d.Between(0.5, 0.95);
        double measured = d.Between(60000, 250000);
        return new Tire
        {
            LoadedRadius = radius,
            VerticalRate = d.Between(100000, 260000),
            VerticalDamping = d.Between(0, 500),
            Grip = grip,
            // From a curve that bows upward to a stiff one, E at most 1.
            SlipStiffness = d.Between(1.6, 2.6) * grip / peak,
            PeakSlip = peak,
            SlidingRatio = ratio,
            LoadSensitivity = d.Between(0, 0.25),
            ReferenceLoad = d.Between(0.35, 0.7) * scale,
            RelaxationLength = d.Between(0.06, 0.4),
            RollingResistance = d.Between(0, 0.03),
            Pressure = d.Chance(0.5)
                ? new TirePressure
                {
                    Measured = measured,
                    Set = measured + d.Between(-20000, 20000),
                    VerticalRateSlope = d.Between(0, 1.2),
                    TorsionalRateSlope = rear ? d.Between(0, 0.06) : 0,
                    GripSlope = d.Between(-2e-6, 2e-6),
                }
                : null,
        };
    }

    private static Driveline Drive(Draw d, Power power, double weight)
    {
        Table share = d.Chance(0.5) ? new Table([0, d.Between(0.1, 0.6)], [d.Between(0.5, 1), 1]) : Table.Constant(d.Between(0.7, 1));
        double most = d.Between(0.25, 0.6) * weight;
        if (power == Power.Torque)
        {
            return new AxleTorque
            {
                Torque = d.Chance(0.7)
                    ? new Table([0, d.Between(0.02, 0.15), d.Between(0.2, 0.5)], [0, most * d.Between(0.5, 1), most])
                    : new Table([0, d.Between(0.1, 0.5)], [most * 0.3, most]),
                PowerShare = share,
            };
        }

        double launch = d.Between(200, 500), final = d.Between(3, 4.6), first = d.Between(1.6, 2.6);
        double engine = most / (final * first);
        double shift = launch + d.Between(60, 300);
        int gears = 1 + d.Whole(3);
        return new EngineDriveline
        {
            Engine = new Engine
            {
                Torque = new Table([0, 150, 300, 500, 700, 1000], [0.6 * engine, 0.8 * engine, engine, engine * d.Between(0.8, 1.1), engine * 0.7, engine * d.Between(-0.3, 0.3)]),
                Inertia = d.Between(0.1, 0.8),
                LaunchSpeed = launch,
            },
            Coupling = power == Power.Clutch
                ? new Clutch { Capacity = new Table([0, d.Between(0.03, 0.2), d.Between(0.3, 0.7)], [engine * d.Between(0, 0.6), engine * d.Between(0.5, 1.2), engine * d.Between(1, 2)]) }
                : Converter(d, engine, launch),
            Ratios = Enumerable.Range(0, gears).Select(i => first * Math.Pow(0.7, i)).ToArray(),
            ShiftAt = Enumerable.Range(0, gears - 1).Select(_ => shift).ToArray(),
            ShiftTime = d.Chance(0.3) ? 0 : d.Between(0.01, 0.1),
            FinalDrive = final,
            Efficiency = d.Chance(0.3) ? 1 : d.Between(0.8, 0.99),
            PowerShare = share,
        };
    }

    private static Converter Converter(Draw d, double engine, double launch)
    {
        // Stalls near its launch speed at full torque.
        double k = launch / Math.Sqrt(engine) * d.Between(0.8, 1.2);
        return new Converter
        {
            CapacityFactor = new Table([0, 0.4, 0.7, 0.85, 0.95], [k, 1.03 * k, 1.15 * k, 1.4 * k, 2.2 * k]),
            TorqueRatio = new Table([0, 0.4, 0.7, 0.85, 0.95], [d.Between(1.6, 2.3), 1.55, 1.2, 1, d.Chance(0.5) ? 1 : 1.03]),
        };
    }

    /// <summary>Numbers from 0 to 1, one after the other.</summary>
    private sealed class Draw(double[] numbers)
    {
        private int _next;

        public double Between(double low, double high) => low + (numbers[_next++] * (high - low));

        public bool Chance(double share) => numbers[_next++] < share;

        public int Whole(int count) => Math.Min(count - 1, (int)(numbers[_next++] * count));
    }
}
