using LaunchSim.Dynamics;
using LaunchSim.Geometry;
using LaunchSim.Vehicle;

namespace LaunchSim.Launch;

/// <summary>Why a car cannot stand, at which entered value, and how to mend it.</summary>
/// <param name="Path">The scenario path nearest to the cause, such as <c>rear.spring</c>.</param>
/// <param name="Found">What was found, with numbers in SI units.</param>
/// <param name="Mend">What is allowed or what to look at.</param>
public sealed record StandingProblem(string Path, string Found, string Mend);

/// <summary>A car that cannot stand was asked to.</summary>
/// <param name="problems">All that was found.</param>
public sealed class CannotStandException(IReadOnlyList<StandingProblem> problems)
    : Exception(string.Join(Environment.NewLine, problems.Select(p => $"{p.Path}: {p.Found} {p.Mend}")))
{
    /// <summary>All that was found.</summary>
    public IReadOnlyList<StandingProblem> Problems { get; } = problems;
}

/// <summary>
/// The car at rest with all its settings: found once, exactly, by the five steps of docs/model.md ("From the measured car
/// to the standing car"). Immutable; shared by any number of runs.
/// </summary>
public sealed class StandingCar
{
    private StandingCar(Car car, LaunchModel model, ILinkageMap map, Point origin)
    {
        Car = car;
        Model = model;
        Map = map;
        Origin = origin;
        Standing s = model.Standing;
        Line = StaticLine.At(map, s.Lambda, s.Pitch, s.RearWheelHeight, s.CentreOfGravityHeight, s.Wheelbase);
    }

    /// <summary>The car as entered.</summary>
    public Car Car { get; }

    /// <summary>The numbers that the equations of motion need.</summary>
    public LaunchModel Model { get; }

    /// <summary>The linkage's map, from the sprung CG.</summary>
    public ILinkageMap Map { get; }

    /// <summary>Where the body frame's origin, the sprung CG with ballast, stood in the set-up frame of the measured car, m.</summary>
    public Point Origin { get; }

    /// <summary>The static line of the standing car.</summary>
    public StaticLine Line { get; }

    /// <summary>Pinion angle of the standing car as entered, rad, or null.</summary>
    public double? PinionAngle => Car.Rear.PinionAngle;

    /// <summary>Loads, heights and coordinates of the standing car.</summary>
    public Standing Standing => Model.Standing;

    /// <summary>Rear axle centre of the measured car in the set-up frame.</summary>
    /// <param name="car">The car.</param>
    internal static Point AxleCentre(Car car) => new(0, car.Rear.Tire.LoadedRadius);

    /// <summary>Finds the standing car.</summary>
    /// <param name="car">The car as measured, with its settings.</param>
    /// <exception cref="CannotStandException">The car cannot stand; all reasons that were found are in it.</exception>
    public static StandingCar Find(Car car) =>
        TryFind(car, out StandingCar? standing, out IReadOnlyList<StandingProblem> problems)
            ? standing!
            : throw new CannotStandException(problems);

    /// <summary>Finds the standing car, or says why there is none.</summary>
    /// <param name="car">The car as measured, with its settings.</param>
    /// <param name="standing">The standing car, or null.</param>
    /// <param name="problems">Why not; empty when it stands.</param>
    public static bool TryFind(Car car, out StandingCar? standing, out IReadOnlyList<StandingProblem> problems)
    {
        ArgumentNullException.ThrowIfNull(car);
        var found = new List<StandingProblem>();
        standing = Find(car, found);
        problems = found;
        return standing is not null;
    }

    private static StandingCar? Find(Car car, List<StandingProblem> problems)
    {
        Chassis chassis = car.Chassis;
        FrontEnd front = car.Front;
        RearEnd rear = car.Rear;
        const double g = LaunchModel.Gravity;

        // 1. The measured state: masses, sprung CG, linkage.
        double total = (chassis.FrontScale + chassis.RearScale) / g;
        double ahead = chassis.Wheelbase * chassis.FrontScale / (chassis.FrontScale + chassis.RearScale);
        double sprung = total - front.UnsprungMass - rear.UnsprungMass;
        if (front.UnsprungMass * g >= chassis.FrontScale)
        {
            problems.Add(new("front.unsprung", $"The front unsprung mass, {Spoken.Mass(front.UnsprungMass)}, is not below the front scale reading, {Spoken.Mass(chassis.FrontScale / g)}.", "Weigh again: both sides of each are meant."));
        }

        if (rear.UnsprungMass * g >= chassis.RearScale)
        {
            problems.Add(new("rear.unsprung", $"The rear unsprung mass, {Spoken.Mass(rear.UnsprungMass)}, is not below the rear scale reading, {Spoken.Mass(chassis.RearScale / g)}.", "Weigh again: both sides of each are meant."));
        }

        var rearTire = new TireForce(rear.Tire, chassis.RearScale);
        var frontTire = new TireForce(front.Tire, chassis.FrontScale);
        CheckPressure("front.tire.pressure.set", frontTire, problems);
        CheckPressure("rear.tire.pressure.set", rearTire, problems);
        double carcassRate = rear.Carcass.TorsionalRate
            + (rear.Tire.Pressure is { } p ? p.TorsionalRateSlope * (p.Set - p.Measured) : 0);
        if (!(carcassRate > 0))
        {
            problems.Add(new("rear.tire.pressure.set", $"At this pressure the carcass's torsional rate would be {carcassRate:0} N·m/rad per tyre.", "It must stay above 0: check the pressure and the slope."));
        }

        if (problems.Count > 0)
        {
            return null;
        }

        double centreX = ((total * ahead) - (front.UnsprungMass * chassis.Wheelbase)) / sprung;
        double centreZ = ((total * chassis.CentreOfGravityHeight) - (front.UnsprungMass * front.Tire.LoadedRadius)
            - (rear.UnsprungMass * rear.Tire.LoadedRadius)) / sprung;

        // 2. Ballast joins the sprung body.
        (double mass, double inertia, Point origin) = WithBallast(sprung, chassis.PitchInertia, new Point(centreX, centreZ), chassis.Ballast);
        Point axleCentre = AxleCentre(car);
        ILinkageMap map = LinkageMaps.Create(rear.Linkage, axleCentre, origin);
        var spring = new TwoPointUnit(rear.SpringAxleMount, rear.SpringBodyMount, axleCentre, origin);
        var damper = new TwoPointUnit(rear.DamperAxleMount, rear.DamperBodyMount, axleCentre, origin);
        map.Pose(0, out LinkagePose measured);
        if (!(map.Margin(0) > LinkageRange.LeastMargin) || !double.IsFinite(measured.Z1))
        {
            problems.Add(new("rear.linkage", "The linkage as measured is in a singular position: upper bar and axle housing stand in one line.", "Check the points; a drawing of the side view shows it."));
            return null;
        }

        damper.At(measured, out double measuredLength, out _, out _, out _);
        spring.At(measured, out double measuredSpring, out _, out _, out _);
        if (!(measuredLength > 0) || !(measuredSpring > 0))
        {
            problems.Add(new(measuredLength > 0 ? "rear.spring" : "rear.damper", "Both mounts are the same point.", "Check the points."));
            return null;
        }

        double topLength = measuredLength + rear.DamperTravel.Extend, bottomLength = measuredLength - rear.DamperTravel.Compress;
        LinkageRange.Check(map, damper, bottomLength, topLength, problems);

        // 3. Ride height.
        double lambda = RideHeight(map, measured.Z - chassis.RearRideHeight);
        map.Pose(lambda, out LinkagePose pose);
        if (!double.IsFinite(lambda) || !double.IsFinite(pose.X2))
        {
            problems.Add(new("car.ride_height.rear", $"The linkage cannot reach a ride height {Spoken.Length(chassis.RearRideHeight)} from the measured one.", "Enter a smaller change or check the points."));
            return null;
        }

        if (problems.Count > 0)
        {
            return null;
        }

        double travel = -chassis.FrontRideHeight;
        double frontX = chassis.Wheelbase - origin.Ahead, frontZ = front.Tire.LoadedRadius - origin.Up;

        // 4. z and θ on the tyres.
        if (!OnItsTires(mass, front.UnsprungMass, rear.UnsprungMass, rearTire, frontTire, pose.X, pose.Z, frontX, frontZ + travel, origin.Up, out double z, out double pitch))
        {
            problems.Add(new("car", "The tyres carry the car in no position.", "Check scales, tyre rates, ride height and ballast."));
            return null;
        }

        (double sin, double cos) = Math.SinCos(pitch);
        double rearHeight = z + (sin * pose.X) + (cos * pose.Z), frontHeight = z + (sin * frontX) + (cos * (frontZ + travel));
        double rearLoad = rearTire.VerticalRate * (rearTire.FreeRadius - rearHeight);
        double frontLoad = frontTire.VerticalRate * (frontTire.FreeRadius - frontHeight);
        if (!(rearLoad > 0) || !(frontLoad > 0))
        {
            problems.Add(new("car.ballast", $"Standing, the {(rearLoad > 0 ? "front" : "rear")} tyres would be in the air.", "Move or take off ballast, or check scales and wheelbase."));
            return null;
        }

        // 5. Preloads by virtual work.
        spring.At(pose, out double springLength, out double springArm, out double springX, out double springZ);
        damper.At(pose, out double damperLength, out _, out _, out _);
        double rearDown = rearLoad - (rear.UnsprungMass * g);
        double preload = -((pose.X1 * sin) + (pose.Z1 * cos)) * rearDown / springArm;
        double frontPreload = cos * (frontLoad - (front.UnsprungMass * g)) / front.SpringMotionRatio;
        if (!double.IsFinite(preload) || preload < 0)
        {
            problems.Add(new("rear.spring", double.IsFinite(preload) && Math.Abs(preload) < 1e7
                ? $"The rear springs would have to pull with {Spoken.Force(-preload / 2)} each to hold the standing car."
                : "The rear springs stand across the axle's movement and cannot hold the car.", "Check the spring's mounts and the scale readings."));
        }

        if (frontPreload < 0)
        {
            problems.Add(new("front.spring", $"The front springs would have to pull with {Spoken.Force(-frontPreload / 2)} each to hold the standing car.", "Check the front unsprung mass, scales and ballast."));
        }

        CheckTravel("rear.damper.travel", "rear", damperLength - topLength, bottomLength - damperLength, problems);
        double frontExtension = -front.DamperMotionRatio * travel;
        CheckTravel("front.damper.travel", "front", frontExtension - front.DamperTravel.Extend, -frontExtension - front.DamperTravel.Compress, problems);

        double barX = 0, barZ = 0;
        if (rear.WheelieBar is { } bar)
        {
            barX = bar.Wheel.Ahead - axleCentre.Ahead;
            barZ = bar.Wheel.Up - axleCentre.Up;
            (double bx, double bz) = pose.Turn(barX, barZ);
            double clearance = rearHeight + (sin * bx) + (cos * bz);
            if (clearance <= 0)
            {
                problems.Add(new("rear.wheelie_bar.wheel", $"The wheelie bar's wheel would be {Spoken.Length(-clearance)} below the ground in the standing car.", "Its point is the wheel's lowest; it must be above the floor."));
            }
        }

        if (problems.Count > 0)
        {
            return null;
        }

        double mass0 = mass + front.UnsprungMass + rear.UnsprungMass;
        double x = -((cos * pose.X) - (sin * pose.Z));
        double springLift = preload * ((sin * springX) + (cos * springZ));
        var standing = new Standing
        {
            X = x,
            Z = z,
            Pitch = pitch,
            Lambda = lambda,
            FrontTravel = travel,
            RearLoad = rearLoad,
            FrontLoad = frontLoad,
            CentreOfGravityHeight = ((mass * z) + (rear.UnsprungMass * rearHeight) + (front.UnsprungMass * frontHeight)) / mass0,
            Wheelbase = x + (cos * frontX) - (sin * (frontZ + travel)),
            RearWheelHeight = rearHeight,
            FrontWheelHeight = frontHeight,
            RearWheelX = pose.X,
            RearWheelZ = pose.Z,
            HousingAngle = pose.Angle,
            DamperLength = damperLength,
            LinkLift = (rear.UnsprungMass * g) - rearLoad - springLift,
            SpringLift = springLift,
        };
        var model = new LaunchModel
        {
            SprungMass = mass,
            PitchInertia = inertia,
            RearMass = rear.UnsprungMass,
            HousingInertia = rear.HousingInertia,
            FrontMass = front.UnsprungMass,
            RimInertia = rear.Carcass.RimInertia,
            BeltInertia = rear.Carcass.BeltInertia,
            FrontSpinInertia = front.SpinInertia,
            FrontX = frontX,
            FrontZ = frontZ,
            RearTire = rearTire,
            FrontTire = frontTire,
            CarcassRate = 2 * carcassRate,
            CarcassDamping = 2 * rear.Carcass.TorsionalDamping,
            Spring = spring,
            SpringRate = 2 * rear.SpringRate,
            SpringPreload = preload,
            SpringLength = springLength,
            Damper = damper,
            TopLength = topLength,
            BottomLength = bottomLength,
            RearStop = new OneSidedContact(2 * rear.DamperTravel.StopRate, 2 * rear.DamperTravel.StopDamping),
            FrontSpringRate = 2 * front.SpringRate,
            FrontSpringPreload = frontPreload,
            FrontSpringRatio = front.SpringMotionRatio,
            FrontDamperRatio = front.DamperMotionRatio,
            FrontExtend = front.DamperTravel.Extend,
            FrontCompress = front.DamperTravel.Compress,
            FrontStop = new OneSidedContact(2 * front.DamperTravel.StopRate, 2 * front.DamperTravel.StopDamping),
            HasWheelieBar = rear.WheelieBar is not null,
            BarX = barX,
            BarZ = barZ,
            Bar = new OneSidedContact(rear.WheelieBar?.Rate ?? 0, rear.WheelieBar?.Damping ?? 0),
            HalfDrag = 0.5 * (chassis.Aero?.AirDensity ?? 0) * (chassis.Aero?.DragArea ?? 0),
            DragHeight = chassis.Aero?.Height ?? 0,
            TrackGrip = PiecewiseLinear.Holding(car.TrackGrip),
            Standing = standing,
        };
        return new StandingCar(car, model, map, origin);
    }

    private static (double Mass, double Inertia, Point Centre) WithBallast(double mass, double inertia, Point centre, IReadOnlyList<Ballast> ballast)
    {
        double sum = mass, x = mass * centre.Ahead, z = mass * centre.Up;
        foreach (Ballast item in ballast)
        {
            sum += item.Mass;
            x += item.Mass * item.At.Ahead;
            z += item.Mass * item.At.Up;
        }

        var joint = ballast.Count == 0 ? centre : new Point(x / sum, z / sum);
        double about = inertia + (mass * Squared(centre, joint)) + ballast.Sum(item => item.Mass * Squared(item.At, joint));
        return (sum, about, joint);
    }

    private static double Squared(Point a, Point b) =>
        ((a.Ahead - b.Ahead) * (a.Ahead - b.Ahead)) + ((a.Up - b.Up) * (a.Up - b.Up));

    private static void CheckPressure(string path, TireForce tire, List<StandingProblem> problems)
    {
        if (!(tire.VerticalRate > 0))
        {
            problems.Add(new(path, $"At this pressure the vertical rate would be {Spoken.Rate(tire.VerticalRate / 2)} per tyre.", "It must stay above 0: check the pressure and the slope."));
        }

        if (!(tire.Grip > 0))
        {
            problems.Add(new(path, $"At this pressure the grip would be {tire.Grip:0.###}.", "It must stay above 0: check the pressure and the slope."));
        }
    }

    private static void CheckTravel(string path, string end, double beyondTop, double beyondBottom, List<StandingProblem> problems)
    {
        if (beyondTop > 0 || beyondBottom > 0)
        {
            string stop = beyondTop > 0 ? "top" : "bottom";
            problems.Add(new(path, $"Standing, the {end} dampers would be {Spoken.Length(Math.Max(beyondTop, beyondBottom))} into their {stop} stop.", "Check travel and ride height: travel counts from the measured ride height."));
        }
    }

    /// <summary>Solves p_z(λ) = height by Newton's method from the measured position; not a number when it does not get there.</summary>
    private static double RideHeight(ILinkageMap map, double height)
    {
        double lambda = 0;
        for (int i = 0; i < 50; i++)
        {
            map.Pose(lambda, out LinkagePose pose);
            double step = (height - pose.Z) / pose.Z1;
            if (!double.IsFinite(step))
            {
                return double.NaN;
            }

            lambda += Math.Clamp(step, -0.2, 0.2);
            if (Math.Abs(step) < 1e-15)
            {
                return lambda;
            }
        }

        map.Pose(lambda, out LinkagePose last);
        return Math.Abs(last.Z - height) < 1e-12 ? lambda : double.NaN;
    }

    private static bool OnItsTires(
        double sprung, double frontMass, double rearMass, TireForce rear, TireForce front,
        double rearX, double rearZ, double frontX, double frontZ, double start, out double z, out double pitch)
    {
        const double g = LaunchModel.Gravity;
        double weight = (sprung + frontMass + rearMass) * g;
        z = start;
        pitch = 0;
        for (int i = 0; i < 50; i++)
        {
            (double sin, double cos) = Math.SinCos(pitch);
            double armRear = (cos * rearX) - (sin * rearZ), armFront = (cos * frontX) - (sin * frontZ);
            double upRear = (sin * rearX) + (cos * rearZ), upFront = (sin * frontX) + (cos * frontZ);
            double loadRear = rear.VerticalRate * (rear.FreeRadius - z - upRear), loadFront = front.VerticalRate * (front.FreeRadius - z - upFront);
            double netRear = loadRear - (rearMass * g), netFront = loadFront - (frontMass * g);
            double force = loadRear + loadFront - weight, moment = (armRear * netRear) + (armFront * netFront);
            double forceZ = -rear.VerticalRate - front.VerticalRate;
            double forcePitch = -(rear.VerticalRate * armRear) - (front.VerticalRate * armFront);
            double momentPitch = -(rear.VerticalRate * armRear * armRear) - (front.VerticalRate * armFront * armFront)
                - (upRear * netRear) - (upFront * netFront);
            double determinant = (forceZ * momentPitch) - (forcePitch * forcePitch);
            double dz = ((forcePitch * moment) - (momentPitch * force)) / determinant;
            double dPitch = ((forcePitch * force) - (forceZ * moment)) / determinant;
            if (!double.IsFinite(dz) || !double.IsFinite(dPitch))
            {
                return false;
            }

            z += dz;
            pitch += dPitch;
            if (Math.Abs(dz) < 1e-15 && Math.Abs(dPitch) < 1e-15)
            {
                break;
            }
        }

        return double.IsFinite(z) && Math.Abs(pitch) < 0.5;
    }
}
