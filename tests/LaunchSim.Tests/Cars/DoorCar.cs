using LaunchSim.Vehicle;

namespace LaunchSim.Tests.Cars;

/// <summary>The invented example car of docs/scenario.md, entered by hand so that these tests need no file.</summary>
internal static class DoorCar
{
    private const double Inch = 0.0254, PoundForce = 4.4482216152605, PoundMass = 0.45359237, PoundFoot = 1.3558179483314004;
    private const double PoundsPerInch = PoundForce / Inch, Psi = 6894.757293168361;

    /// <summary>The car with the upper bar's body pivot at a height over the floor, in.</summary>
    public static Car WithUpperPivotAt(double inches) => Create() with
    {
        Rear = Create().Rear with { Linkage = FourLink() with { UpperBody = P(14, inches) } },
    };

    public static FourLink FourLink() => new()
    {
        LowerAxle = P(1.0, 7.6),
        LowerBody = P(21, 9),
        UpperAxle = P(2.5, 17),
        UpperBody = P(14, 14.6),
    };

    public static Point P(double ahead, double up) => new(ahead * Inch, up * Inch);

    public static Table DamperRow(params double[] pounds) =>
        new(new double[] { 0, 1, 2, 5, 10, 20 }.Select(v => v * Inch), pounds.Select(f => f * PoundForce));

    public static Car Create() => new()
    {
        Chassis = new Chassis
        {
            Wheelbase = 105.5 * Inch,
            FrontScale = 1560 * PoundForce,
            RearScale = 1440 * PoundForce,
            CentreOfGravityHeight = 21 * Inch,
            PitchInertia = 1950,
            Aero = new Aero { DragArea = 0.70, Height = 20 * Inch, AirDensity = 1.2 },
            Ballast = [new Ballast { Mass = 40 * PoundMass, At = P(-25, 18) }],
        },
        Front = new FrontEnd
        {
            UnsprungMass = 150 * PoundMass,
            SpringRate = 150 * PoundsPerInch,
            SpringMotionRatio = 0.95,
            DamperMotionRatio = 0.95,
            Damper = new DamperTables { Extension = DamperRow(0, 12, 25, 50, 80, 125), Compression = DamperRow(0, 35, 60, 110, 170, 260) },
            DamperTravel = Travel(3.5, 3.0),
            SpinInertia = 1.6,
            Tire = new Tire
            {
                LoadedRadius = 12.6 * Inch,
                VerticalRate = 1100 * PoundsPerInch,
                VerticalDamping = PoundsPerInch,
                Grip = 1.1,
                SlipStiffness = 20,
                PeakSlip = 0.10,
                SlidingRatio = 0.80,
                LoadSensitivity = 0.08,
                ReferenceLoad = 780 * PoundForce,
                RelaxationLength = 4 * Inch,
                RollingResistance = 0.015,
            },
        },
        Rear = new RearEnd
        {
            UnsprungMass = 340 * PoundMass,
            HousingInertia = 3.2,
            Linkage = FourLink(),
            SpringRate = 150 * PoundsPerInch,
            SpringAxleMount = P(-2, 9),
            SpringBodyMount = P(0.5, 24),
            DamperAxleMount = P(-2, 9),
            DamperBodyMount = P(0.5, 24),
            Damper = new DamperTables { Extension = DamperRow(0, 35, 60, 105, 155, 225), Compression = DamperRow(0, 40, 70, 130, 190, 280) },
            DamperTravel = Travel(4.0, 3.5),
            PinionAngle = 2 * Math.PI / 180,
            Tire = new Tire
            {
                LoadedRadius = 13.1 * Inch,
                VerticalRate = 800 * PoundsPerInch,
                VerticalDamping = 1.5 * PoundsPerInch,
                Grip = 2.3,
                SlipStiffness = 40,
                PeakSlip = 0.12,
                SlidingRatio = 0.65,
                LoadSensitivity = 0.10,
                ReferenceLoad = 1000 * PoundForce,
                RelaxationLength = 5 * Inch,
                RollingResistance = 0.02,
                Pressure = new TirePressure
                {
                    Measured = 16 * Psi,
                    Set = 16 * Psi,
                    VerticalRateSlope = 40 * PoundsPerInch / Psi,
                    TorsionalRateSlope = 400 / Psi,
                    GripSlope = -0.01 / Psi,
                },
            },
            Carcass = new Carcass { TorsionalRate = 14000, TorsionalDamping = 12, RimInertia = 1.6, BeltInertia = 2.6 },
            WheelieBar = new WheelieBar { Wheel = P(-58, 4), Rate = 800 * PoundsPerInch, Damping = 8 * PoundsPerInch },
        },
        Driveline = new AxleTorque
        {
            Torque = new Table([0, 0.05, 0.25, 0.60, 1.0], new double[] { 0, 3900, 4400, 4800, 4800 }.Select(t => t * PoundFoot)),
            PowerShare = new Table([0, 0.3], [0.9, 1.0]),
        },
    };

    private static DamperTravel Travel(double extend, double compress) => new()
    {
        Extend = extend * Inch,
        Compress = compress * Inch,
        StopRate = 3000 * PoundsPerInch,
        StopDamping = 10 * PoundsPerInch,
    };
}
