using LaunchSim.Dynamics;
using LaunchSim.Launch;
using LaunchSim.Vehicle;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Double;

namespace LaunchSim.Tests.Dynamics;

/// <summary>
/// A second formulation of the launch, for checks: absolute coordinates of sprung body (x z θ), axle housing with wheels
/// (x z φ) and front unsprung parts (x z), constraints for bars, pivot and front path, Lagrange multipliers, dense LU.
/// Written from docs/model.md and the vehicle records; of the product it takes the standing pose only.
/// </summary>
internal sealed class AbsoluteCar
{
    private const double G = 9.80665;

    private readonly Car _car;
    private readonly double[] _standing = new double[StateLayout.Count];
    private readonly double _sprungMass, _pitchInertia, _rearRadius, _frontRadius, _carcassRate;
    private readonly double _rearTireRate, _frontTireRate, _rearGrip, _frontGrip;
    private readonly V _centre, _front;
    private readonly double _springLength, _damperMeasured;

    public AbsoluteCar(Car car)
    {
        _car = car;
        LaunchRunner.Create(StandingCar.Find(car), 1e-8).Release(_standing);
        Chassis c = car.Chassis;
        double mf = car.Front.UnsprungMass, mr = car.Rear.UnsprungMass, total = (c.FrontScale + c.RearScale) / G;

        // Sprung mass and its centre from the whole, ballast added one by one: each step is two bodies joined.
        double mass = total - mf - mr;
        double cx = ((c.FrontScale / G * c.Wheelbase) - (mf * c.Wheelbase)) / mass;
        double cz = ((total * c.CentreOfGravityHeight) - (mf * car.Front.Tire.LoadedRadius) - (mr * car.Rear.Tire.LoadedRadius)) / mass;
        var centre = new V(cx, cz);
        double inertia = c.PitchInertia;
        foreach (Ballast b in c.Ballast)
        {
            V apart = new V(b.At.Ahead, b.At.Up) - centre;
            double sum = mass + b.Mass;
            inertia += mass * b.Mass / sum * apart.Dot(apart);
            centre += b.Mass / sum * apart;
            mass = sum;
        }

        _sprungMass = mass;
        _pitchInertia = inertia;
        _centre = centre;
        _front = new V(c.Wheelbase, car.Front.Tire.LoadedRadius) - centre;
        _rearRadius = car.Rear.Tire.LoadedRadius + (c.RearScale / 2 / car.Rear.Tire.VerticalRate);
        _frontRadius = car.Front.Tire.LoadedRadius + (c.FrontScale / 2 / car.Front.Tire.VerticalRate);
        (_rearTireRate, _rearGrip) = AtPressure(car.Rear.Tire);
        (_frontTireRate, _frontGrip) = AtPressure(car.Front.Tire);
        _carcassRate = car.Rear.Carcass.TorsionalRate
            + (car.Rear.Tire.Pressure is { } p ? p.TorsionalRateSlope * (p.Set - p.Measured) : 0);

        Pose standing = Place(_standing);
        _springLength = (standing.SpringAxle - standing.SpringBody).Length;
        _damperMeasured = (Body(car.Rear.DamperAxleMount) - Body(car.Rear.DamperBodyMount)).Length;

        // Preloads from equilibrium: accelerations are linear in both; two of them vanish, and the rest must follow.
        Vector<double> none = Solve(_standing, default, 0, 0).Accelerations;
        Vector<double> rear = Solve(_standing, default, 1, 0).Accelerations - none, front = Solve(_standing, default, 0, 1).Accelerations - none;
        Matrix<double> a = DenseMatrix.OfColumnVectors(rear, front);
        Vector<double> preload = a.Solve(-none);
        RearPreload = preload[0];
        FrontPreload = preload[1];
        PreloadMisfit = (none + (preload[0] * rear) + (preload[1] * front)).AbsoluteMaximum();
    }

    /// <summary>Preloads, N per side, that hold the standing car, and the acceleration that they leave, m/s² and rad/s².</summary>
    public double RearPreload { get; }

    public double FrontPreload { get; }

    public double PreloadMisfit { get; }

    /// <summary>State of the standing car.</summary>
    public ReadOnlySpan<double> Standing => _standing;

    /// <summary>Everything at one state, with true maxima and clips, and the modes that the product holds there.</summary>
    public Result At(double t, double[] y, DrivelineState drive)
    {
        _time = t;
        return Solve(y, drive, RearPreload, FrontPreload);
    }

    private double _time;

    private static (double Rate, double Grip) AtPressure(Tire tire)
    {
        double above = tire.Pressure is { } p ? p.Set - p.Measured : 0;
        return (tire.VerticalRate + ((tire.Pressure?.VerticalRateSlope ?? 0) * above), tire.Grip * (1 + ((tire.Pressure?.GripSlope ?? 0) * above)));
    }

    private V Body(Point p) => new V(p.Ahead, p.Up) - _centre;

    private V Housing(Point p) => new(p.Ahead, p.Up - _car.Rear.Tire.LoadedRadius);

    /// <summary>Positions of everything from λ and s by Newton's method on the constraints, followed from the measured car.</summary>
    public Pose Place(double[] y)
    {
        double lambda = y[StateLayout.Linkage], theta = y[StateLayout.Pitch];
        V axle;
        double alpha;
        if (_car.Rear.Linkage is LadderBar ladder)
        {
            alpha = lambda;
            V pivot = Body(ladder.Pivot);
            axle = pivot - Housing(ladder.Pivot).Turned(lambda);
        }
        else
        {
            var four = (FourLink)_car.Rear.Linkage;
            V lb = Body(four.LowerBody), ub = Body(four.UpperBody);
            V bar = Body(four.LowerAxle) - lb, housing = Housing(four.UpperAxle) - Housing(four.LowerAxle);
            double upper = (Body(four.UpperAxle) - ub).Length;
            alpha = 0;
            const int steps = 40;
            for (int i = 1; i <= steps; i++)
            {
                V a = lb + bar.Turned(lambda * i / steps);
                for (int k = 0; k < 8; k++)
                {
                    V h = housing.Turned(alpha), d = a + h - ub;
                    alpha -= (d.Dot(d) - (upper * upper)) / (2 * d.Dot(h.Left));
                }
            }

            axle = lb + bar.Turned(lambda) - Housing(four.LowerAxle).Turned(alpha);
        }

        var c = new V(y[StateLayout.X], y[StateLayout.Z]);
        return new Pose(this, c, theta, c + axle.Turned(theta), theta + alpha, c + new V(_front.X, _front.Z + y[StateLayout.FrontTravel]).Turned(theta));
    }

    /// <summary>Velocities of the three bodies: those of the constraints, λ' and s' solved as one linear system.</summary>
    public Vector<double> Velocities(double[] y, Pose pose)
    {
        Matrix<double> a = DenseMatrix.Create(8, 8, 0);
        Vector<double> right = DenseVector.Create(8, 0);
        (double[][] gradients, _) = Constraints(pose, null);
        for (int i = 0; i < 3; i++)
        {
            a.SetRow(i, gradients[i]);
        }

        (a[3, 0], right[3]) = (1, y[StateLayout.XRate]);
        (a[4, 1], right[4]) = (1, y[StateLayout.ZRate]);
        (a[5, 2], right[5]) = (1, y[StateLayout.PitchRate]);

        // λ' is the bar's angular speed less the body's.
        (double[] lambda, _) = BarAngle(pose, null);
        a.SetRow(6, lambda);
        right[6] = y[StateLayout.LinkageRate];
        V up = new V(0, 1).Turned(pose.Theta), arm = pose.Front - pose.Centre;
        a.SetRow(7, [-up.X, -up.Z, -new V(1, 0).Turned(pose.Theta).Dot(arm), 0, 0, 0, up.X, up.Z]);
        right[7] = y[StateLayout.FrontTravelRate];
        return a.LU().Solve(right);
    }

    /// <summary>Gradient of λ by the eight coordinates, and, given velocities, what λ'' holds besides gradient · accelerations.</summary>
    private (double[] Gradient, double Bias) BarAngle(Pose p, Vector<double>? v)
    {
        if (_car.Rear.Linkage is LadderBar)
        {
            return ([0, 0, -1, 0, 0, 1, 0, 0], 0);
        }

        V ra = p.LowerAxle - p.Axle, rb = p.LowerBody - p.Centre, d = p.LowerAxle - p.LowerBody;
        double per = 1 / d.Dot(d);
        // β' = d × (v_A − v_B)/|d|².
        double[] gradient =
        [
            per * d.Z, -per * d.X, (-per * d.Cross(rb.Left)) - 1,
            -per * d.Z, per * d.X, per * d.Cross(ra.Left), 0, 0,
        ];
        double bias = v is null ? 0 : per * d.Cross((v[2] * v[2] * rb) - (v[5] * v[5] * ra));
        return (gradient, bias);
    }

    private (double[][] Gradients, double[] Biases) Constraints(Pose p, Vector<double>? v)
    {
        var gradients = new double[3][];
        var biases = new double[3];
        if (_car.Rear.Linkage is LadderBar)
        {
            V ra = p.LowerAxle - p.Axle, rb = p.LowerBody - p.Centre;
            gradients[0] = [-1, 0, -rb.Left.X, 1, 0, ra.Left.X, 0, 0];
            gradients[1] = [0, -1, -rb.Left.Z, 0, 1, ra.Left.Z, 0, 0];
            if (v is not null)
            {
                V bias = (v[2] * v[2] * rb) - (v[5] * v[5] * ra);
                (biases[0], biases[1]) = (bias.X, bias.Z);
            }
        }
        else
        {
            (gradients[0], biases[0]) = Bar(p.LowerAxle, p.LowerBody, p, v);
            (gradients[1], biases[1]) = Bar(p.UpperAxle, p.UpperBody, p, v);
        }

        // The front wheel centre stays on its line in the body: e_x · (r_f − c) = const.
        V ex = new V(1, 0).Turned(p.Theta), arm = p.Front - p.Centre;
        gradients[2] = [-ex.X, -ex.Z, ex.Left.Dot(arm), 0, 0, 0, ex.X, ex.Z];
        if (v is not null)
        {
            V relative = new V(v[6] - v[0], v[7] - v[1]);
            biases[2] = (2 * v[2] * ex.Left.Dot(relative)) - (v[2] * v[2] * ex.Dot(arm));
        }

        return (gradients, biases);
    }

    /// <summary>Length of a bar: gradient and the part of its second derivative without accelerations.</summary>
    private static (double[] Gradient, double Bias) Bar(V axle, V body, Pose p, Vector<double>? v)
    {
        V d = axle - body, e = (1 / d.Length) * d, ra = axle - p.Axle, rb = body - p.Centre;
        double[] gradient = [-e.X, -e.Z, -e.Dot(rb.Left), e.X, e.Z, e.Dot(ra.Left), 0, 0];
        if (v is null)
        {
            return (gradient, 0);
        }

        V speed = new V(v[3] - v[0], v[4] - v[1]) + (v[5] * ra.Left) - (v[2] * rb.Left);
        double along = e.Dot(speed);
        double bias = e.Dot((v[2] * v[2] * rb) - (v[5] * v[5] * ra)) + ((speed.Dot(speed) - (along * along)) / d.Length);
        return (gradient, bias);
    }

    private Result Solve(double[] y, DrivelineState drive, double rearPreload, double frontPreload)
    {
        Pose p = Place(y);
        Vector<double> v = Velocities(y, p);
        Modes modes = default;
        RearEnd rear = _car.Rear;
        FrontEnd front = _car.Front;
        double mr = rear.UnsprungMass, mf = front.UnsprungMass;
        V vc = new(v[0], v[1]), va = new(v[3], v[4]), vf = new(v[6], v[7]);
        double theta1 = v[2], phi1 = v[5];
        double rim = y[StateLayout.RimSpin], belt = y[StateLayout.BeltSpin], frontSpin = y[StateLayout.FrontSpin];
        var q = new double[8];
        double lost = 0, stored = 0;

        void OnBody(V at, V force)
        {
            q[0] += force.X;
            q[1] += force.Z;
            q[2] += (at - p.Centre).Cross(force);
        }

        void OnAxle(V at, V force)
        {
            q[3] += force.X;
            q[4] += force.Z;
            q[5] += (at - p.Axle).Cross(force);
        }

        OnBody(p.Centre, new V(0, -_sprungMass * G));
        OnAxle(p.Axle, new V(0, -mr * G));
        q[7] -= mf * G;
        stored += G * ((_sprungMass * p.Centre.Z) + (mr * p.Axle.Z) + (mf * p.Front.Z));

        // Aerodynamic drag at its own height.
        if (_car.Chassis.Aero is { } aero)
        {
            double drag = 0.5 * aero.AirDensity * aero.DragArea * vc.X * Math.Abs(vc.X);
            OnBody(new V(p.Centre.X, aero.Height), new V(-drag, 0));
            lost += drag * (vc.X - ((aero.Height - p.Centre.Z) * theta1));
        }

        // Rear springs and dampers between their mounts.
        V springSpan = p.SpringAxle - p.SpringBody, springWay = (1 / springSpan.Length) * springSpan;
        double springForce = 2 * (rearPreload + (rear.SpringRate * (_springLength - springSpan.Length)));
        modes.RearSpringLoose = springForce < 0;
        springForce = Math.Max(0, springForce);
        OnAxle(p.SpringAxle, springForce * springWay);
        OnBody(p.SpringBody, -springForce * springWay);
        stored += springForce * springForce / 4 / rear.SpringRate;

        V damperSpan = p.DamperAxle - p.DamperBody, damperWay = (1 / damperSpan.Length) * damperSpan;
        V damperAxleSpeed = va + (phi1 * (p.DamperAxle - p.Axle).Left), damperBodySpeed = vc + (theta1 * (p.DamperBody - p.Centre).Left);
        double damperSpeed = damperWay.Dot(damperAxleSpeed - damperBodySpeed), damperTravel = damperSpan.Length - _damperMeasured;
        double unit = -2 * Resistance((DamperTables)rear.Damper, damperSpeed, out modes.RearDamper);
        lost -= unit * damperSpeed;
        unit -= 2 * Contact(rear.DamperTravel.StopRate, rear.DamperTravel.StopDamping, damperTravel - rear.DamperTravel.Extend, damperSpeed, 2, ref lost, ref stored, out modes.RearTop);
        unit += 2 * Contact(rear.DamperTravel.StopRate, rear.DamperTravel.StopDamping, -damperTravel - rear.DamperTravel.Compress, -damperSpeed, 2, ref lost, ref stored, out modes.RearBottom);
        OnAxle(p.DamperAxle, unit * damperWay);
        OnBody(p.DamperBody, -unit * damperWay);

        // Front spring, damper and stops along the front path, by motion ratio.
        V up = new V(0, 1).Turned(p.Theta), frontArm = p.Front - p.Centre;
        double s = y[StateLayout.FrontTravel], s1 = y[StateLayout.FrontTravelRate];
        double frontSpring = 2 * (frontPreload + (front.SpringRate * front.SpringMotionRatio * (s - _standing[StateLayout.FrontTravel])));
        modes.FrontSpringLoose = frontSpring < 0;
        frontSpring = Math.Max(0, frontSpring);
        stored += frontSpring * frontSpring / 4 / front.SpringRate;
        double extension = -front.DamperMotionRatio * s, extensionSpeed = -front.DamperMotionRatio * s1;
        double frontUnit = -2 * Resistance((DamperTables)front.Damper, extensionSpeed, out modes.FrontDamper);
        lost -= frontUnit * extensionSpeed;
        frontUnit -= 2 * Contact(front.DamperTravel.StopRate, front.DamperTravel.StopDamping, extension - front.DamperTravel.Extend, extensionSpeed, 2, ref lost, ref stored, out modes.FrontTop);
        frontUnit += 2 * Contact(front.DamperTravel.StopRate, front.DamperTravel.StopDamping, -extension - front.DamperTravel.Compress, -extensionSpeed, 2, ref lost, ref stored, out modes.FrontBottom);
        double apart = (front.SpringMotionRatio * frontSpring) + (front.DamperMotionRatio * frontUnit);
        q[6] -= apart * up.X;
        q[7] -= apart * up.Z;
        OnBody(p.Front, apart * up);

        // Tyres: force at the wheel centre, the spins get the rest.
        TireAct rearAct = OnGround(rear.Tire, _rearRadius, _rearTireRate, _rearGrip, p.Axle, va, belt, y[StateLayout.RearDeflection], ref lost, ref stored,
            out modes.RearTire, out modes.RearTravel, out modes.RearOnFloor, out modes.RearGrip);
        TireAct frontAct = OnGround(front.Tire, _frontRadius, _frontTireRate, _frontGrip, p.Front, vf, frontSpin, y[StateLayout.FrontDeflection], ref lost, ref stored,
            out modes.FrontTire, out modes.FrontTravel, out modes.FrontOnFloor, out modes.FrontGrip);
        OnAxle(p.Axle, new V(rearAct.Thrust, rearAct.Load));
        q[6] += frontAct.Thrust;
        q[7] += frontAct.Load;

        double barForce = 0;
        if (rear.WheelieBar is { } bar)
        {
            V speed = va + (phi1 * (p.BarWheel - p.Axle).Left);
            barForce = Contact(bar.Rate, bar.Damping, -p.BarWheel.Z, -speed.Z, 1, ref lost, ref stored, out modes.WheelieBar);
            OnAxle(p.BarWheel, new V(0, barForce));
        }

        double carcass = 2 * ((_carcassRate * y[StateLayout.Windup]) + (rear.Carcass.TorsionalDamping * (rim - belt)));
        stored += _carcassRate * y[StateLayout.Windup] * y[StateLayout.Windup];
        lost += 2 * rear.Carcass.TorsionalDamping * (rim - belt) * (rim - belt);

        // Unknowns: eight accelerations, three multipliers, ω', torque through the coupling.
        (double[][] gradients, double[] biases) = Constraints(p, v);
        const int size = 13;
        Matrix<double> a = DenseMatrix.Create(size, size, 0);
        Vector<double> right = DenseVector.Create(size, 0);
        double[] masses = [_sprungMass, _sprungMass, _pitchInertia, mr, mr, rear.HousingInertia, mf, mf];
        for (int i = 0; i < 8; i++)
        {
            a[i, i] = masses[i];
            right[i] = q[i];
            for (int k = 0; k < 3; k++)
            {
                a[i, 8 + k] = -gradients[k][i];
                a[8 + k, i] = gradients[k][i];
            }
        }

        for (int k = 0; k < 3; k++)
        {
            right[8 + k] = -biases[k];
        }

        // J_rim·ω' = T_axle − T_c and the same T_axle nose up on the housing.
        double perCoupling = 0;
        a[11, 11] = rear.Carcass.RimInertia;
        right[11] = -carcass;
        double engineRate = 0;
        Torque torque = Drive(drive, y, rim + phi1);
        if (drive.Locked)
        {
            perCoupling = torque.PerCoupling;
            a[5, 12] = -perCoupling;
            a[11, 12] = -perCoupling;
            a[12, 5] = torque.Ratio * torque.Inertia;
            a[12, 11] = torque.Ratio * torque.Inertia;
            a[12, 12] = 1;
            right[12] = torque.Engine;
        }
        else
        {
            a[12, 12] = 1;
            right[5] += torque.Axle;
            right[11] += torque.Axle;
            engineRate = torque.EngineRate;
        }

        Vector<double> x = a.LU().Solve(right);
        double axleTorque = drive.Locked ? perCoupling * x[12] : torque.Axle;
        if (drive.Locked)
        {
            engineRate = torque.Ratio * (x[5] + x[11]);
            modes.Driving = drive.DrivingSign > 0;
        }

        Vector<double> acceleration = x.SubVector(0, 8);
        (double[] lambdaGradient, double lambdaBias) = BarAngle(p, v);
        V relative = vf - vc;
        double s2 = up.Dot(new V(x[6] - x[0], x[7] - x[1])) + (2 * theta1 * up.Left.Dot(relative))
            + (x[2] * up.Left.Dot(frontArm)) - (theta1 * theta1 * up.Dot(frontArm));
        double kinetic = 0;
        for (int i = 0; i < 8; i++)
        {
            kinetic += 0.5 * masses[i] * v[i] * v[i];
        }

        kinetic += 0.5 * ((rear.Carcass.RimInertia * rim * rim) + (rear.Carcass.BeltInertia * belt * belt) + (front.SpinInertia * frontSpin * frontSpin));
        modes.Clutch = drive.Clutch;
        modes.Gear = drive.Gear;
        modes.EngineSegment = torque.EngineSegment;
        modes.TorqueSegment = torque.TorqueSegment;
        modes.ShareSegment = torque.ShareSegment;
        modes.CapacitySegment = torque.CapacitySegment;
        modes.ConverterSegment = torque.ConverterSegment;
        return new Result
        {
            Accelerations = acceleration,
            Linkage = acceleration.DotProduct(DenseVector.OfArray(lambdaGradient)) + lambdaBias,
            FrontTravel = s2,
            Rim = x[11],
            Belt = (carcass + rearAct.Spin) / rear.Carcass.BeltInertia,
            FrontSpin = frontAct.Spin / front.SpinInertia,
            RearDeflection = rearAct.DeflectionRate,
            FrontDeflection = frontAct.DeflectionRate,
            Engine = engineRate,
            AxleTorque = axleTorque,
            CouplingTorque = x[12],
            // A positive multiplier pushes the axle end away from the body: a bar in compression.
            LowerPull = -x[8] / 2,
            UpperPull = -x[9] / 2,
            Multipliers = x.SubVector(8, 3),
            Lost = lost,
            Energy = kinetic + stored,
            Modes = modes,
            RearAct = rearAct,
            FrontAct = frontAct,
            BarForce = barForce,
            Velocities = v,
            Pose = p,
            Masses = masses,
        };
    }

    /// <summary>Force per unit, N, of a contact that cannot pull; adds what it loses and stores for a number of units.</summary>
    private static double Contact(double rate, double damping, double depth, double speed, int units, ref double lost, ref double stored, out ContactMode mode)
    {
        if (depth <= 0)
        {
            mode = ContactMode.Apart;
            return 0;
        }

        double force = Math.Max(0, (rate * depth) + (damping * speed));
        mode = force > 0 ? ContactMode.Pressing : ContactMode.Clipped;
        stored += units * 0.5 * rate * depth * depth;
        lost += units * ((force * speed) - (rate * depth * speed));
        return force;
    }

    /// <summary>Resisting force of one damper with the speed's sign, and the place of its line among all of the table's.</summary>
    private static double Resistance(DamperTables tables, double speed, out int segment)
    {
        Table table = speed >= 0 ? tables.Extension : tables.Compression;
        double v = Math.Abs(speed);
        int i = 1;
        while (i < table.Count - 1 && v > table.X[i])
        {
            i++;
        }

        double slope = (table.Y[i] - table.Y[i - 1]) / (table.X[i] - table.X[i - 1]);
        int below = tables.Compression.Count - 1;
        segment = speed >= 0 ? below + i - 1 : below - i;
        return Math.Sign(speed) * (table.Y[i - 1] + (slope * (v - table.X[i - 1])));
    }

    private TireAct OnGround(
        Tire tire, double freeRadius, double rate, double grip, V centre, V velocity, double spin, double deflection, ref double lost, ref double stored,
        out ContactMode contact, out TravelBranch travel, out bool floor, out int gripSegment)
    {
        double depth = freeRadius - centre.Z;
        double load = 2 * Contact(rate, tire.VerticalDamping, depth, -velocity.Z, 2, ref lost, ref stored, out contact);
        double rolling = freeRadius - (Math.Max(0, depth) / 3);
        double slipSpeed = (spin * rolling) - velocity.X;
        double travelSpeed = Math.Max(Math.Abs(spin * rolling), Math.Abs(velocity.X));
        travel = Math.Abs(spin * rolling) >= Math.Abs(velocity.X)
            ? (spin >= 0 ? TravelBranch.Rolling : TravelBranch.RollingBack)
            : (velocity.X >= 0 ? TravelBranch.Moving : TravelBranch.MovingBack);

        double c = 2 - (2 / Math.PI * Math.Asin(tire.SlidingRatio)), b = tire.SlipStiffness / (c * tire.Grip), bs = b * tire.PeakSlip;
        double e = (bs - Math.Tan(Math.PI / (2 * c))) / (bs - Math.Atan(bs));
        double slip = deflection / tire.RelaxationLength;
        double track = _car.TrackGrip.At(centre.X);
        gripSegment = Segment(_car.TrackGrip, centre.X);
        double share = 1 - (tire.LoadSensitivity * ((load / 2 / tire.ReferenceLoad) - 1));
        floor = share < 0.2;
        double limit = 2 * grip * track * Math.Max(0.2, share) * load / 2;
        double thrust = limit * Math.Sin(c * Math.Atan((b * slip) - (e * ((b * slip) - Math.Atan(b * slip)))));
        double resistance = tire.RollingResistance * load * centre.Z * Math.Tanh(spin / 0.5);
        lost += (thrust * slipSpeed) + (resistance * spin);
        return new TireAct(load, thrust, -(thrust * rolling) - resistance, slipSpeed - (travelSpeed * slip), rolling, resistance, centre);
    }

    private Torque Drive(DrivelineState state, double[] y, double shaft)
    {
        var torque = default(Torque);
        double share = _car.Driveline.PowerShare.At(_time);
        torque.ShareSegment = Segment(_car.Driveline.PowerShare, _time);
        switch (_car.Driveline)
        {
            case AxleTorque table when state.Running:
                torque.Axle = table.Torque.At(_time) * share;
                torque.TorqueSegment = Segment(table.Torque, _time);
                return torque;
            case EngineDriveline engine when state.Running:
                double ratio = engine.Ratios[state.Gear] * engine.FinalDrive, input = ratio * shaft;
                double speed = state.Locked ? input : y[StateLayout.EngineSpeed];
                torque.Engine = engine.Engine.Torque.At(speed) * share;
                torque.EngineSegment = Segment(engine.Engine.Torque, speed);
                torque.Ratio = ratio;
                torque.Inertia = engine.Engine.Inertia;
                double through, pump;
                double Loss(double sign) => Math.Pow(engine.Efficiency, Math.Tanh(input * sign / 5));
                if (engine.Coupling is Clutch clutch)
                {
                    torque.CapacitySegment = Segment(clutch.Capacity, _time);
                    if (state.Locked)
                    {
                        torque.PerCoupling = ratio * Loss(state.DrivingSign);
                        return torque;
                    }

                    through = pump = clutch.Capacity.At(_time) * (state.Clutch == ClutchMode.SlipsForward ? 1 : -1);
                }
                else
                {
                    (pump, through, torque.ConverterSegment) = Converter((Converter)engine.Coupling, speed, input);
                }

                torque.Axle = ratio * through * Loss(Math.Sign(through));
                torque.EngineRate = (torque.Engine - pump) / engine.Engine.Inertia;
                return torque;
            default:
                return torque;
        }
    }

    private static (double Pump, double Turbine, int Segment) Converter(Converter converter, double engine, double input)
    {
        double nu = input / engine;
        Table k = converter.CapacityFactor, r = converter.TorqueRatio;
        double last = k.X[^1];
        if (nu >= 1)
        {
            return (0, 0, last * r.Y[^1] < 1 && r.Y[^1] > 1 ? k.Count + 2 : k.Count + 1);
        }

        if (nu < last)
        {
            double pump = Math.Pow(engine / k.At(nu), 2);
            return (pump, pump * r.At(nu), Segment(k, nu));
        }

        double falling = engine * engine / (k.Y[^1] * k.Y[^1]) * (1 - nu) / (1 - last);
        double ratio = Math.Min(r.Y[^1], 1 / nu);
        return (falling, falling * ratio, ratio < r.Y[^1] ? k.Count + 1 : k.Count);
    }

    /// <summary>How many of the table's abscissae lie at or below x: with a level piece at either end, the piece that holds.</summary>
    private static int Segment(Table table, double x)
    {
        int n = 0;
        while (table.Count > 1 && n < table.Count && x >= table.X[n])
        {
            n++;
        }

        return n;
    }

    private struct Torque
    {
        public double Axle, Engine, EngineRate, Ratio, Inertia, PerCoupling;
        public int EngineSegment, TorqueSegment, ShareSegment, CapacitySegment, ConverterSegment;
    }

    /// <summary>What the driveline is doing.</summary>
    public readonly record struct DrivelineState(bool Running, int Gear, ClutchMode Clutch, int DrivingSign)
    {
        public bool Locked => Running && Clutch == ClutchMode.Locked;
    }

    /// <summary>What an axle's tyres do.</summary>
    public readonly record struct TireAct(double Load, double Thrust, double Spin, double DeflectionRate, double Radius, double Resistance, V Centre);

    /// <summary>Everything that came out.</summary>
    public sealed class Result
    {
        public required Vector<double> Accelerations { get; init; }

        public required Vector<double> Velocities { get; init; }

        public required Vector<double> Multipliers { get; init; }

        public required Pose Pose { get; init; }

        public required double[] Masses { get; init; }

        public double Linkage { get; init; }

        public double FrontTravel { get; init; }

        public double Rim { get; init; }

        public double Belt { get; init; }

        public double FrontSpin { get; init; }

        public double RearDeflection { get; init; }

        public double FrontDeflection { get; init; }

        public double Engine { get; init; }

        public double AxleTorque { get; init; }

        public double CouplingTorque { get; init; }

        public double LowerPull { get; init; }

        public double UpperPull { get; init; }

        public double Lost { get; init; }

        public double Energy { get; init; }

        public double BarForce { get; init; }

        public TireAct RearAct { get; init; }

        public TireAct FrontAct { get; init; }

        public Modes Modes { get; init; }
    }

    /// <summary>Where everything is, ground frame.</summary>
    public sealed class Pose
    {
        public Pose(AbsoluteCar owner, V centre, double theta, V axle, double phi, V front)
        {
            (Centre, Theta, Axle, Phi, Front) = (centre, theta, axle, phi, front);
            RearEnd rear = owner._car.Rear;
            SpringBody = centre + owner.Body(rear.SpringBodyMount).Turned(theta);
            DamperBody = centre + owner.Body(rear.DamperBodyMount).Turned(theta);
            SpringAxle = axle + owner.Housing(rear.SpringAxleMount).Turned(phi);
            DamperAxle = axle + owner.Housing(rear.DamperAxleMount).Turned(phi);
            BarWheel = rear.WheelieBar is { } bar ? axle + owner.Housing(bar.Wheel).Turned(phi) : default;
            if (rear.Linkage is LadderBar ladder)
            {
                LowerBody = centre + owner.Body(ladder.Pivot).Turned(theta);
                LowerAxle = axle + owner.Housing(ladder.Pivot).Turned(phi);
            }
            else
            {
                var four = (FourLink)rear.Linkage;
                LowerBody = centre + owner.Body(four.LowerBody).Turned(theta);
                UpperBody = centre + owner.Body(four.UpperBody).Turned(theta);
                LowerAxle = axle + owner.Housing(four.LowerAxle).Turned(phi);
                UpperAxle = axle + owner.Housing(four.UpperAxle).Turned(phi);
            }
        }

        public double Theta { get; }

        public double Phi { get; }

        public V Centre { get; }

        public V Axle { get; }

        public V Front { get; }

        public V LowerBody { get; }

        public V LowerAxle { get; }

        public V UpperBody { get; }

        public V UpperAxle { get; }

        public V SpringBody { get; }

        public V SpringAxle { get; }

        public V DamperBody { get; }

        public V DamperAxle { get; }

        public V BarWheel { get; }
    }
}

/// <summary>A vector in the ground plane.</summary>
internal readonly record struct V(double X, double Z)
{
    public double Length => Math.Sqrt((X * X) + (Z * Z));

    /// <summary>Turned by a quarter, nose up.</summary>
    public V Left => new(-Z, X);

    public static V operator +(V a, V b) => new(a.X + b.X, a.Z + b.Z);

    public static V operator -(V a, V b) => new(a.X - b.X, a.Z - b.Z);

    public static V operator *(double k, V a) => new(k * a.X, k * a.Z);

    public double Dot(V b) => (X * b.X) + (Z * b.Z);

    public double Cross(V b) => (X * b.Z) - (Z * b.X);

    public V Turned(double angle)
    {
        (double sin, double cos) = Math.SinCos(angle);
        return new((cos * X) - (sin * Z), (sin * X) + (cos * Z));
    }
}
