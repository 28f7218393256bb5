using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using LaunchSim.Geometry;
using LaunchSim.Integration;

namespace LaunchSim.Dynamics;

/// <summary>
/// The launch as one system of first-order equations: docs/model.md, section 3. Closed over linkage, dampers and
/// driveline at compile time. The model is shared; modes and the latest instant are this run's own workspace.
/// </summary>
/// <typeparam name="TLinkage">The rear linkage.</typeparam>
/// <typeparam name="TFrontDamper">The front dampers' law.</typeparam>
/// <typeparam name="TRearDamper">The rear dampers' law.</typeparam>
/// <typeparam name="TDriveline">The driveline.</typeparam>
/// <param name="model">The standing car's numbers.</param>
/// <param name="linkage">The linkage's map.</param>
/// <param name="frontDamper">The front dampers.</param>
/// <param name="rearDamper">The rear dampers.</param>
/// <param name="driveline">The driveline.</param>
public struct LaunchSystem<TLinkage, TFrontDamper, TRearDamper, TDriveline>(
    LaunchModel model, TLinkage linkage, TFrontDamper frontDamper, TRearDamper rearDamper, TDriveline driveline)
    : IEventSystem
    where TLinkage : struct, ILinkageMap
    where TFrontDamper : struct, IDamperForce
    where TRearDamper : struct, IDamperForce
    where TDriveline : struct, IDriveline
{
    // This near to a singular position, where upper bar and housing come into line, the launch ends: beyond it nothing that
    // is computed means anything. Squared sine of their angle, as for the standing car.
    private const double LeastMargin = 1e-6;

    private readonly LaunchModel _model = model;

    // Not read-only: a method of a struct known only by its type parameter would be called on a copy each time.
    private TLinkage _linkage = linkage;
    private TFrontDamper _frontDamper = frontDamper;
    private TRearDamper _rearDamper = rearDamper;
    private TDriveline _driveline = driveline;

    // Fields, not the model's properties, which hand out copies.
    private readonly TireForce _rearTire = model.RearTire, _frontTire = model.FrontTire;
    private readonly TireCurvePair _curves = new(model.RearTire.Curve, model.FrontTire.Curve);
    private readonly TwoPointUnit _spring = model.Spring, _damper = model.Damper;

    // A coil-over: spring and damper on the same mounts.
    private readonly bool _oneUnit = model.Spring.Equals(model.Damper);

    private readonly OneSidedContact _rearStop = model.RearStop, _frontStop = model.FrontStop, _bar = model.Bar;
    private readonly PiecewiseLinear _trackGrip = model.TrackGrip;
    private readonly double[] _scratch = new double[StateLayout.Count];
    private readonly double _perMassX = 1 / (model.SprungMass + model.RearMass + model.FrontMass);
    private readonly double _perMassZ = 1 / (model.SprungMass + model.RearMass);
    private readonly double _perFront = 1 / model.FrontMass;
    private readonly double _perRim = 1 / model.RimInertia;
    private readonly double _perBelt = 1 / model.BeltInertia;
    private readonly double _perFrontSpin = 1 / model.FrontSpinInertia;
    private readonly double _halfPerSpring = 0.5 / model.SpringRate;
    private readonly double _halfPerFrontSpring = 0.5 / model.FrontSpringRate;
    private readonly double _standingTravel = model.Standing.FrontTravel;
    private readonly (double Sin, double Cos) _standingPitch = Math.SinCos(model.Standing.Pitch);
    private double _freeAcceleration, _compliance, _markPlace, _markSample, _markEnd;

    /// <summary>The modes now in force.</summary>
    public Modes Modes;

    /// <summary>What the latest evaluation computed.</summary>
    public Instant Now;

    /// <summary>The model.</summary>
    public readonly LaunchModel Model => _model;

    /// <summary>The linkage's map.</summary>
    public readonly TLinkage Linkage => _linkage;

    /// <summary>The driveline.</summary>
    public readonly TDriveline Driveline => _driveline;

    /// <summary>The front dampers.</summary>
    public readonly TFrontDamper FrontDamper => _frontDamper;

    /// <summary>The rear dampers.</summary>
    public readonly TRearDamper RearDamper => _rearDamper;

    /// <summary>Whether the driveline ended the launch: an engine with a converter came to a stop.</summary>
    public bool Stalled { get; private set; }

    /// <inheritdoc/>
    public readonly int Dimension => StateLayout.Count;

    /// <inheritdoc/>
    public readonly int EventCount => Guards.Count;

    /// <summary>Whether the launch ended at the first sample at or after its last mark.</summary>
    public bool ReachedMark { get; private set; }

    /// <summary>Makes the launch end at the first sample at or after a place, or never.</summary>
    /// <param name="place">Place of the rear wheel centre X, m; infinite for none.</param>
    /// <param name="sample">Time between samples, s.</param>
    public void EndAfter(double place, double sample)
    {
        _markPlace = place;
        _markSample = sample;
    }

    /// <summary>Puts the standing car into a state, sets the modes for the release, and forgets an earlier run.</summary>
    /// <param name="y">Receives the states at t = 0.</param>
    public void Release(Span<double> y)
    {
        Standing standing = _model.Standing;
        y[..StateLayout.Count].Clear();
        y[StateLayout.X] = standing.X;
        y[StateLayout.Z] = standing.Z;
        y[StateLayout.Pitch] = standing.Pitch;
        y[StateLayout.Linkage] = standing.Lambda;
        y[StateLayout.FrontTravel] = standing.FrontTravel;
        Stalled = false;
        ReachedMark = false;
        _markEnd = double.PositiveInfinity;
        Modes = default;
        Modes.RearTire = ContactMode.Pressing;
        Modes.FrontTire = ContactMode.Pressing;
        // Driven wheels pull ahead of the road, free ones lag behind it.
        Modes.RearTravel = TravelBranch.Rolling;
        Modes.FrontTravel = TravelBranch.Moving;
        y[StateLayout.EngineSpeed] = _driveline.Release(ref Modes);
        SettleModes(y);
    }

    /// <summary>Holds given modes and forgets an earlier run, to go on from a state in the middle of a launch.</summary>
    /// <param name="modes">The modes there.</param>
    public void Resume(in Modes modes)
    {
        Stalled = false;
        ReachedMark = false;
        _markEnd = double.PositiveInfinity;
        Modes = modes;
    }

    /// <summary>Sets every mode but the driveline's and the contacts' to what holds at a state.</summary>
    /// <param name="y">The state.</param>
    private void SettleModes(ReadOnlySpan<double> y)
    {
        Evaluate<WithInstant>(0, y, _scratch);
        Modes.RearDamper = _rearDamper.Find(Now.DamperSpeed);
        Modes.FrontDamper = _frontDamper.Find(Now.FrontDamperSpeed);
        Modes.RearGrip = _trackGrip.Find(Now.RearX);
        Modes.FrontGrip = _trackGrip.Find(Now.FrontX);
        Modes.RearOnFloor = Now.RearTire.FloorGuard < 0;
        Modes.FrontOnFloor = Now.FrontTire.FloorGuard < 0;
    }

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dy) => Evaluate<RatesOnly>(t, y, dy);

    /// <inheritdoc/>
    public readonly EventDirection Direction(int index) => EventDirection.Guard;

    /// <inheritdoc/>
    public void DerivativeAndEvents(double t, ReadOnlySpan<double> y, Span<double> dy, Span<double> values)
    {
        Evaluate<WithInstant>(t, y, dy);
        WriteGuards(values);
    }

    /// <summary>The ledger's balance: energy stored plus dissipated less the work of the axle torque, J.</summary>
    /// <param name="y">The state of the latest instant kept.</param>
    public readonly double Invariant(ReadOnlySpan<double> y) => Energy(y) + y[StateLayout.Dissipated] - y[StateLayout.Work];

    /// <inheritdoc/>
    public double EventValue(int index, double t, ReadOnlySpan<double> y)
    {
        // A guard that hangs on speeds and places alone does not need the forces; the expressions are those of Evaluate.
        switch (index)
        {
            case Guards.FrontSpring:
                double line = FrontSpringLine(y[StateLayout.FrontTravel]);
                return Modes.FrontSpringLoose ? -line : line;
            case Guards.FrontDamper:
                return _frontDamper.Guard(Modes.FrontDamper, -_model.FrontDamperRatio * y[StateLayout.FrontTravelRate]);
            case Guards.FrontTire or Guards.FrontTravel:
                SineAndCosine(y, out double sin, out double cos, out _, out _);
                FrontWheel(y, sin, cos, out double height, out double rise, out double speed);
                if (index == Guards.FrontTire)
                {
                    return _frontTire.Contact.Guard(Modes.FrontTire, _frontTire.FreeRadius - height, -rise);
                }

                _frontTire.Touch(Modes.FrontTire, Modes.FrontTravel, false, 1, height, rise, speed, y[StateLayout.FrontSpin], 0, out TireResult front);
                return front.TravelGuard;
            case Guards.RearDamper:
                return _rearDamper.Guard(Modes.RearDamper, RearDamperSpeed(y));
            case Guards.RearTire or Guards.RearTravel:
                SineAndCosine(y, out double sine, out double cosine, out double linkageSin, out double linkageCos);
                _linkage.Pose(linkageSin, linkageCos, out LinkagePose pose);
                RearWheel(y, sine, cosine, pose, out double rearHeight, out _, out double rearRise, out double rearSpeed);
                if (index == Guards.RearTire)
                {
                    return _rearTire.Contact.Guard(Modes.RearTire, _rearTire.FreeRadius - rearHeight, -rearRise);
                }

                _rearTire.Touch(Modes.RearTire, Modes.RearTravel, false, 1, rearHeight, rearRise, rearSpeed, y[StateLayout.BeltSpin], 0, out TireResult rear);
                return rear.TravelGuard;
            default:
                Evaluate<WithInstant>(t, y, _scratch);
                return GuardNow(index);
        }
    }

    /// <inheritdoc/>
    public EventAction OnEvent(int index, double t, Span<double> y)
    {
        // The most frequent ones need no forces.
        switch (index)
        {
            case Guards.FrontDamper:
                Modes.FrontDamper = _frontDamper.Next(Modes.FrontDamper, -_model.FrontDamperRatio * y[StateLayout.FrontTravelRate]);
                return EventAction.Restart;
            case Guards.RearDamper:
                Modes.RearDamper = _rearDamper.Next(Modes.RearDamper, RearDamperSpeed(y));
                return EventAction.Restart;
            default:
                Evaluate<WithInstant>(t, y, _scratch);
                return Switch(index, t, y);
        }
    }

    private EventAction Switch(int index, double t, Span<double> y)
    {
        ref Instant now = ref Now;
        switch (index)
        {
            case Guards.RearTire:
                Modes.RearTire = _rearTire.Contact.Next(Modes.RearTire, now.RearTire.Depth, now.RearTire.DepthRate);
                break;
            case Guards.FrontTire:
                Modes.FrontTire = _frontTire.Contact.Next(Modes.FrontTire, now.FrontTire.Depth, now.FrontTire.DepthRate);
                break;
            case Guards.RearTravel:
                Modes.RearTravel = TireForce.NextBranch(Modes.RearTravel, y[StateLayout.BeltSpin] * now.RearTire.Radius, now.RearSpeed);
                break;
            case Guards.FrontTravel:
                Modes.FrontTravel = TireForce.NextBranch(Modes.FrontTravel, y[StateLayout.FrontSpin] * now.FrontTire.Radius, now.FrontSpeed);
                break;
            case Guards.RearFloor:
                Modes.RearOnFloor = !Modes.RearOnFloor;
                break;
            case Guards.FrontFloor:
                Modes.FrontOnFloor = !Modes.FrontOnFloor;
                break;
            case Guards.RearGrip:
                Modes.RearGrip = _trackGrip.Neighbour(Modes.RearGrip, now.RearX);
                break;
            case Guards.FrontGrip:
                Modes.FrontGrip = _trackGrip.Neighbour(Modes.FrontGrip, now.FrontX);
                break;
            case Guards.RearSpring:
                Modes.RearSpringLoose = !Modes.RearSpringLoose;
                break;
            case Guards.FrontSpring:
                Modes.FrontSpringLoose = !Modes.FrontSpringLoose;
                break;
            case Guards.RearTop:
                Modes.RearTop = _rearStop.Next(Modes.RearTop, now.DamperLength - _model.TopLength, now.DamperSpeed);
                break;
            case Guards.RearBottom:
                Modes.RearBottom = _rearStop.Next(Modes.RearBottom, _model.BottomLength - now.DamperLength, -now.DamperSpeed);
                break;
            case Guards.FrontTop:
                Modes.FrontTop = _frontStop.Next(Modes.FrontTop, now.FrontExtension - _model.FrontExtend, now.FrontDamperSpeed);
                break;
            case Guards.FrontBottom:
                Modes.FrontBottom = _frontStop.Next(Modes.FrontBottom, -now.FrontExtension - _model.FrontCompress, -now.FrontDamperSpeed);
                break;
            case Guards.Linkage:
                return EventAction.Stop;
            case Guards.LastMark:
                _markEnd = SampleGrid.AtOrAfter(t, _markSample);
                _markPlace = double.PositiveInfinity;
                break;
            case Guards.WheelieBar:
                Modes.WheelieBar = _bar.Next(Modes.WheelieBar, now.BarDepth, now.BarRate);
                break;
            default:
                if (!_driveline.OnGuard(index - Guards.Engine, ref Modes, DrivelineSees(t, y), ref y[StateLayout.EngineSpeed]))
                {
                    Stalled = true;
                    return EventAction.Stop;
                }

                break;
        }

        return EventAction.Restart;
    }

    /// <inheritdoc/>
    public double NextBreak(double t) => Math.Min(_markEnd, _driveline.NextBreak(Modes, t));

    /// <inheritdoc/>
    public EventAction OnBreak(double t, Span<double> y)
    {
        if (t >= _markEnd)
        {
            ReachedMark = true;
            return EventAction.Stop;
        }

        Evaluate<WithInstant>(t, y, _scratch);
        _driveline.OnBreak(ref Modes, DrivelineSees(t, y), ref y[StateLayout.EngineSpeed]);
        return EventAction.Restart;
    }

    /// <summary>The launch at one instant, with the modes now in force.</summary>
    /// <param name="t">Time since release, s.</param>
    /// <param name="y">The state.</param>
    /// <param name="energyAtRelease">Energy of the standing car, J.</param>
    /// <param name="seen">Receives the observation.</param>
    public void Observe(double t, ReadOnlySpan<double> y, double energyAtRelease, out Observation seen)
    {
        Evaluate<WithInstant>(t, y, _scratch);
        LaunchModel m = _model;
        Standing standing = m.Standing;
        ref readonly Instant now = ref Now;
        double sin = now.Sin, cos = now.Cos;
        (double sinStanding, double cosStanding) = _standingPitch;
        double z = y[StateLayout.Z] - standing.Z;
        double frontZ = m.FrontZ + standing.FrontTravel;
        double frontTravel = y[StateLayout.FrontTravel];

        seen.Time = t;
        seen.Distance = y[StateLayout.X] - standing.X;
        seen.Speed = y[StateLayout.XRate];
        seen.Acceleration = now.XAcceleration;
        seen.RearWheelPlace = now.RearX;
        seen.Pitch = y[StateLayout.Pitch] - standing.Pitch;
        seen.PitchRate = y[StateLayout.PitchRate];
        seen.FrontRise = z + ((sin - sinStanding) * m.FrontX) + ((cos - cosStanding) * frontZ);
        seen.RearRise = z + ((sin - sinStanding) * standing.RearWheelX) + ((cos - cosStanding) * standing.RearWheelZ);
        seen.Separation = standing.RearWheelZ - now.Pose.Z;
        seen.SeparationRate = -now.Pose.Z1 * y[StateLayout.LinkageRate];
        seen.FrontTravel = frontTravel - standing.FrontTravel;
        seen.FrontLoad = now.FrontTire.Load;
        seen.RearLoad = now.RearTire.Load;
        seen.FrontThrust = now.FrontTire.Thrust;
        seen.RearThrust = now.RearTire.Thrust;
        seen.FrontLimit = now.FrontTire.Limit;
        seen.RearLimit = now.RearTire.Limit;
        seen.FrontSlipRatio = _frontTire.SlipRatio(y[StateLayout.FrontDeflection]);
        seen.RearSlipRatio = _rearTire.SlipRatio(y[StateLayout.RearDeflection]);
        seen.FrontSlipSpeed = now.FrontTire.SlipSpeed;
        seen.RearSlipSpeed = now.RearTire.SlipSpeed;
        seen.FrontTireClearance = -now.FrontTire.Depth;
        seen.RearWheelHeight = now.RearHeight;
        seen.FrontWheelHeight = now.FrontHeight;
        seen.WheelSpeed = y[StateLayout.RimSpin];
        seen.BeltSpeed = y[StateLayout.BeltSpin];
        seen.FrontWheelSpeed = y[StateLayout.FrontSpin];
        seen.Windup = y[StateLayout.Windup];
        seen.RearDamperTravel = now.DamperLength - standing.DamperLength;
        seen.RearDamperSpeed = now.DamperSpeed;
        seen.RearDamperForce = -0.5 * now.DamperResistance;
        seen.RearTopLeft = m.TopLength - now.DamperLength;
        seen.RearSpringForce = 0.5 * now.SpringForce;
        seen.RearTopForce = 0.5 * now.TopForce;
        seen.RearBottomForce = 0.5 * now.BottomForce;
        seen.FrontDamperSpeed = now.FrontDamperSpeed;
        seen.FrontDamperForce = -0.5 * now.FrontDamperResistance;
        seen.FrontTopLeft = m.FrontExtend - now.FrontExtension;
        seen.FrontSpringForce = 0.5 * now.FrontSpringForce;
        seen.FrontTopForce = 0.5 * now.FrontTopForce;
        seen.FrontBottomForce = 0.5 * now.FrontBottomForce;

        // The housing's own balance: what the linkage has to supply, body axes.
        double down = now.RearTire.Load - (m.RearMass * LaunchModel.Gravity) + now.BarForce;
        double gx = (cos * now.RearTire.Thrust) + (sin * down), gz = (cos * down) - (sin * now.RearTire.Thrust);
        double unit = now.BottomForce - now.TopForce - now.DamperResistance;
        double springX = now.SpringForce * now.SpringX, springZ = now.SpringForce * now.SpringZ;
        double unitX = unit * now.DamperX, unitZ = unit * now.DamperZ;
        double linkX = (m.RearMass * now.AxleAccelerationX) - gx - springX - unitX;
        double linkZ = (m.RearMass * now.AxleAccelerationZ) - gz - springZ - unitZ;
        (double springArmX, double springArmZ) = _spring.AxleOffset(now.Pose);
        (double unitArmX, double unitArmZ) = _damper.AxleOffset(now.Pose);
        double moment = (m.HousingInertia * now.HousingAcceleration) - now.Driveline.AxleTorque
            - (now.BarForce * ((now.BarX * cos) - (now.BarZ * sin)))
            - ((springArmX * springZ) - (springArmZ * springX)) - ((unitArmX * unitZ) - (unitArmZ * unitX));
        LinkForces links = _linkage.Forces(y[StateLayout.Linkage], now.Pose, linkX, linkZ, moment);
        seen.UpperLinkForce = links.Upper;
        seen.LowerLinkForce = links.Lower;
        seen.HousingMomentLeft = links.MomentLeft;
        seen.LoadViaLinks = standing.LinkLift - ((sin * linkX) + (cos * linkZ));
        seen.LoadViaSprings = standing.SpringLift - ((sin * springX) + (cos * springZ));
        seen.LoadViaDampers = -((sin * unitX) + (cos * unitZ));
        seen.LoadViaOther = (m.RearMass * ((sin * now.AxleAccelerationX) + (cos * now.AxleAccelerationZ))) - now.BarForce;

        seen.AntiSquatPercent = AntiSquat.Percent(
            AntiSquat.Slope(now.Pose, cos, sin, now.RearHeight), standing.CentreOfGravityHeight, standing.Wheelbase);
        (seen.InstantCentreAhead, seen.InstantCentreUp) = AntiSquat.InstantCentre(now.Pose, cos, sin, now.RearHeight);
        seen.PinionChange = now.Pose.Angle - standing.HousingAngle;
        seen.PinionRate = now.Pose.Angle1 * y[StateLayout.LinkageRate];
        seen.WheelieBarForce = now.BarForce;
        seen.EngineSpeed = now.Driveline.EngineSpeed;
        seen.Gear = !_driveline.HasEngine ? double.NaN : Modes.Shifting ? 0 : Modes.Gear + 1;
        seen.AxleTorque = now.Driveline.AxleTorque;
        seen.DriveshaftTorque = now.Driveline.AxleTorque * _driveline.PerFinalDrive;
        seen.Work = y[StateLayout.Work];
        seen.Dissipated = y[StateLayout.Dissipated];
        seen.EnergyResidual = Energy(y) - energyAtRelease + seen.Dissipated - seen.Work;
    }

    /// <summary>
    /// What places and speeds alone tell, at states that belong to the modes now in force. The expressions are those of
    /// <see cref="Evaluate"/> and <see cref="Observe"/>.
    /// </summary>
    /// <param name="states">One state after another, each of <paramref name="stride"/> numbers.</param>
    /// <param name="stride">Length of a state, at least <see cref="StateLayout.MotionCount"/>.</param>
    /// <param name="seen">Receives what is seen of each.</param>
    public void Follow(ReadOnlySpan<double> states, int stride, Span<Motion> seen)
    {
        LaunchModel m = _model;
        Standing standing = m.Standing;
        (double sinStanding, double cosStanding) = _standingPitch;
        double frontZ = m.FrontZ + standing.FrontTravel;
        for (int i = 0; i < seen.Length; i++)
        {
            ReadOnlySpan<double> y = states.Slice(i * stride, StateLayout.MotionCount);
            ref Motion motion = ref seen[i];
            SineAndCosine(y, out double sin, out double cos, out double linkageSin, out double linkageCos);
            _linkage.Pose(linkageSin, linkageCos, out LinkagePose pose);
            RearWheel(y, sin, cos, pose, out double height, out _, out double rise, out _);
            double z = y[StateLayout.Z] - standing.Z, place = y[StateLayout.X] + (cos * pose.X) - (sin * pose.Z);
            motion.RearWheelPlace = place;
            motion.Pitch = y[StateLayout.Pitch] - standing.Pitch;
            motion.FrontRise = z + ((sin - sinStanding) * m.FrontX) + ((cos - cosStanding) * frontZ);
            motion.RearRise = z + ((sin - sinStanding) * standing.RearWheelX) + ((cos - cosStanding) * standing.RearWheelZ);
            motion.Separation = standing.RearWheelZ - pose.Z;
            motion.FrontTravel = y[StateLayout.FrontTravel] - standing.FrontTravel;
            motion.RearLoad = _rearTire.Load(Modes.RearTire, height, rise);
            motion.RearLimit = _rearTire.Limit(Modes.RearOnFloor, _trackGrip.At(Modes.RearGrip, place), motion.RearLoad);
            motion.RearSlipRatio = _rearTire.SlipRatio(y[StateLayout.RearDeflection]);
            motion.RearTopForce = 0;
            motion.RearBottomForce = 0;
            motion.FrontTopForce = 0;
            motion.FrontBottomForce = 0;
            if ((Modes.RearTop | Modes.RearBottom) != ContactMode.Apart)
            {
                _damper.At(pose, out double length, out double arm, out _, out _);
                double speed = arm * y[StateLayout.LinkageRate];
                motion.RearTopForce = 0.5 * _rearStop.Force(Modes.RearTop, length - m.TopLength, speed);
                motion.RearBottomForce = 0.5 * _rearStop.Force(Modes.RearBottom, m.BottomLength - length, -speed);
            }

            if ((Modes.FrontTop | Modes.FrontBottom) != ContactMode.Apart)
            {
                double extension = -m.FrontDamperRatio * y[StateLayout.FrontTravel], speed = -m.FrontDamperRatio * y[StateLayout.FrontTravelRate];
                motion.FrontTopForce = 0.5 * _frontStop.Force(Modes.FrontTop, extension - m.FrontExtend, speed);
                motion.FrontBottomForce = 0.5 * _frontStop.Force(Modes.FrontBottom, -extension - m.FrontCompress, -speed);
            }
        }
    }

    /// <summary>Acceleration of the sprung CG along the track, m/s², with the modes now in force.</summary>
    /// <param name="t">Time since release, s.</param>
    /// <param name="y">The state.</param>
    public double Acceleration(double t, ReadOnlySpan<double> y)
    {
        Evaluate<RatesOnly>(t, y, _scratch);
        return _scratch[StateLayout.XRate];
    }

    /// <summary>Kinetic, potential and stored energy at the latest instant, J.</summary>
    /// <param name="y">The state of that instant.</param>
    public readonly double Energy(ReadOnlySpan<double> y)
    {
        LaunchModel m = _model;
        ref readonly Instant now = ref Now;
        double kinetic = (m.SprungMass * (Square(y[StateLayout.XRate]) + Square(y[StateLayout.ZRate])))
            + (m.PitchInertia * Square(y[StateLayout.PitchRate]))
            + (m.RearMass * (Square(now.RearSpeed) + Square(now.RearTire.DepthRate)))
            + (m.HousingInertia * Square(now.HousingSpeed))
            + (m.FrontMass * (Square(now.FrontSpeed) + Square(now.FrontTire.DepthRate)))
            + (m.RimInertia * Square(y[StateLayout.RimSpin]))
            + (m.BeltInertia * Square(y[StateLayout.BeltSpin]))
            + (m.FrontSpinInertia * Square(y[StateLayout.FrontSpin]));
        double potential = LaunchModel.Gravity
            * ((m.SprungMass * y[StateLayout.Z]) + (m.RearMass * now.RearHeight) + (m.FrontMass * now.FrontHeight));
        double stored = (Square(now.SpringForce) * _halfPerSpring)
            + (Square(now.FrontSpringForce) * _halfPerFrontSpring)
            + (0.5 * m.CarcassRate * Square(y[StateLayout.Windup]))
            + _rearTire.Contact.Stored(Modes.RearTire, now.RearTire.Depth)
            + _frontTire.Contact.Stored(Modes.FrontTire, now.FrontTire.Depth);
        if ((Modes.RearTop | Modes.RearBottom | Modes.FrontTop | Modes.FrontBottom | Modes.WheelieBar) != ContactMode.Apart)
        {
            stored += _rearStop.Stored(Modes.RearTop, now.DamperLength - m.TopLength)
                + _rearStop.Stored(Modes.RearBottom, m.BottomLength - now.DamperLength)
                + _frontStop.Stored(Modes.FrontTop, now.FrontExtension - m.FrontExtend)
                + _frontStop.Stored(Modes.FrontBottom, -now.FrontExtension - m.FrontCompress)
                + _bar.Stored(Modes.WheelieBar, now.BarDepth);
        }

        return (0.5 * kinetic) + potential + stored;
    }

    /// <summary>What the driveline sees at the latest instant.</summary>
    /// <param name="t">Time since release, s.</param>
    /// <param name="y">The state.</param>
    private readonly DrivelineInput DrivelineSees(double t, ReadOnlySpan<double> y)
    {
        DrivelineInput input;
        input.Time = t;
        input.ShaftSpeed = y[StateLayout.RimSpin] + Now.HousingSpeed;
        input.EngineSpeed = y[StateLayout.EngineSpeed];
        input.Compliance = _compliance;
        input.FreeAcceleration = _freeAcceleration;
        return input;
    }

    private static double Square(double x) => x * x;

    private readonly double GuardNow(int index)
    {
        Span<double> values = stackalloc double[Guards.Count];
        WriteGuards(values);
        return values[index];
    }

    private readonly void WriteGuards(Span<double> values)
    {
        ref readonly Instant now = ref Now;
        values = values[..Guards.Count];
        values[Guards.RearTire] = _rearTire.Contact.Guard(Modes.RearTire, now.RearTire.Depth, now.RearTire.DepthRate);
        values[Guards.FrontTire] = _frontTire.Contact.Guard(Modes.FrontTire, now.FrontTire.Depth, now.FrontTire.DepthRate);
        values[Guards.RearTravel] = now.RearTire.TravelGuard;
        values[Guards.FrontTravel] = now.FrontTire.TravelGuard;
        values[Guards.RearFloor] = now.RearTire.FloorGuard;
        values[Guards.FrontFloor] = now.FrontTire.FloorGuard;
        values[Guards.RearGrip] = _trackGrip.Guard(Modes.RearGrip, now.RearX);
        values[Guards.FrontGrip] = _trackGrip.Guard(Modes.FrontGrip, now.FrontX);
        values[Guards.RearSpring] = Modes.RearSpringLoose ? -now.SpringLine : now.SpringLine;
        values[Guards.FrontSpring] = Modes.FrontSpringLoose ? -now.FrontSpringLine : now.FrontSpringLine;
        values[Guards.RearDamper] = _rearDamper.Guard(Modes.RearDamper, now.DamperSpeed);
        values[Guards.FrontDamper] = _frontDamper.Guard(Modes.FrontDamper, now.FrontDamperSpeed);
        values[Guards.RearTop] = _rearStop.Guard(Modes.RearTop, now.DamperLength - _model.TopLength, now.DamperSpeed);
        values[Guards.RearBottom] = _rearStop.Guard(Modes.RearBottom, _model.BottomLength - now.DamperLength, -now.DamperSpeed);
        values[Guards.FrontTop] = _frontStop.Guard(Modes.FrontTop, now.FrontExtension - _model.FrontExtend, now.FrontDamperSpeed);
        values[Guards.FrontBottom] = _frontStop.Guard(Modes.FrontBottom, -now.FrontExtension - _model.FrontCompress, -now.FrontDamperSpeed);
        values[Guards.WheelieBar] = _model.HasWheelieBar ? _bar.Guard(Modes.WheelieBar, now.BarDepth, now.BarRate) : double.PositiveInfinity;
        values[Guards.Engine] = now.Driveline.EngineGuard;
        values[Guards.Shift] = now.Driveline.ShiftGuard;
        values[Guards.Coupling] = now.Driveline.CouplingGuard;
        values[Guards.SecondCoupling] = now.Driveline.SecondCouplingGuard;
        values[Guards.LastMark] = _markPlace - now.RearX;
        values[Guards.Linkage] = now.Pose.Margin - LeastMargin;
    }

    private readonly double FrontSpringLine(double travel) =>
        _model.FrontSpringPreload + (_model.FrontSpringRate * _model.FrontSpringRatio * (travel - _standingTravel));

    private double RearDamperSpeed(ReadOnlySpan<double> y)
    {
        SineAndCosine(y, out _, out _, out double sin, out double cos);
        _linkage.Pose(sin, cos, out LinkagePose pose);
        _damper.At(pose, out _, out double arm, out _, out _);
        return arm * y[StateLayout.LinkageRate];
    }

    /// <summary>Sine and cosine of the pitch and of λ.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void SineAndCosine(ReadOnlySpan<double> y, out double sin, out double cos, out double linkageSin, out double linkageCos)
    {
        PairMath.SinCosOfSmall(
            Vector128.Create(y[StateLayout.Pitch], y[StateLayout.Linkage]), out Vector128<double> sines, out Vector128<double> cosines);
        sin = sines[0];
        cos = cosines[0];
        linkageSin = sines[1];
        linkageCos = cosines[1];
    }

    /// <summary>The rear wheel centre in the ground frame, and its velocity in the body's axes.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static void RearWheel(
        ReadOnlySpan<double> y, double sin, double cos, in LinkagePose pose, out double height, out double bodyX, out double rise, out double speed)
    {
        double pitchRate = y[StateLayout.PitchRate], linkageRate = y[StateLayout.LinkageRate];
        double wx = (cos * y[StateLayout.XRate]) + (sin * y[StateLayout.ZRate]), wz = (cos * y[StateLayout.ZRate]) - (sin * y[StateLayout.XRate]);
        bodyX = wx - (pitchRate * pose.Z) + (pose.X1 * linkageRate);
        double bodyZ = wz + (pitchRate * pose.X) + (pose.Z1 * linkageRate);
        height = y[StateLayout.Z] + (sin * pose.X) + (cos * pose.Z);
        rise = (sin * bodyX) + (cos * bodyZ);
        speed = (cos * bodyX) - (sin * bodyZ);
    }

    /// <summary>The front wheel centre in the ground frame.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private readonly void FrontWheel(ReadOnlySpan<double> y, double sin, double cos, out double height, out double rise, out double speed)
    {
        double pitchRate = y[StateLayout.PitchRate], frontX = _model.FrontX, frontZ = _model.FrontZ + y[StateLayout.FrontTravel];
        double wx = (cos * y[StateLayout.XRate]) + (sin * y[StateLayout.ZRate]), wz = (cos * y[StateLayout.ZRate]) - (sin * y[StateLayout.XRate]);
        double bodyX = wx - (pitchRate * frontZ), bodyZ = wz + (pitchRate * frontX) + y[StateLayout.FrontTravelRate];
        height = y[StateLayout.Z] + (sin * frontX) + (cos * frontZ);
        rise = (sin * bodyX) + (cos * bodyZ);
        speed = (cos * bodyX) - (sin * bodyZ);
    }

    /// <summary>
    /// The equations of motion. Inside a step only the rates are wanted; at its ends the instant is kept too, to the same bits.
    /// </summary>
    private void Evaluate<TKeep>(double t, ReadOnlySpan<double> y, Span<double> dy)
        where TKeep : struct, IKeep
    {
        // One check of the lengths here spares one at every access.
        y = y[..StateLayout.Count];
        dy = dy[..StateLayout.Count];

        // The rolling shares and the slip curves depend on nothing but one state each: begun here, in three links, they run
        // beside the geometry.
        Vector128<double> rollingShares = TireForce.RollingShares(y[StateLayout.BeltSpin], y[StateLayout.FrontSpin]);
        double rearSlip = _rearTire.SlipRatio(y[StateLayout.RearDeflection]), frontSlip = _frontTire.SlipRatio(y[StateLayout.FrontDeflection]);
        Vector128<double> bent = _curves.Bend(Vector128.Create(rearSlip, frontSlip));
        SineAndCosine(y, out double sin, out double cos, out double linkageSin, out double linkageCos);
        Vector128<double> slipAngles = _curves.Angle(bent);

        LaunchModel m = _model;
        ref Instant now = ref Now;
        double xRate = y[StateLayout.XRate], pitchRate = y[StateLayout.PitchRate];
        double linkageRate = y[StateLayout.LinkageRate], frontTravel = y[StateLayout.FrontTravel], frontRate = y[StateLayout.FrontTravelRate];
        double rimSpin = y[StateLayout.RimSpin], beltSpin = y[StateLayout.BeltSpin], frontSpin = y[StateLayout.FrontSpin];

        _linkage.Pose(linkageSin, linkageCos, out LinkagePose pose);
        Vector128<double> curves = TireCurvePair.Value(slipAngles);
        double housingSpeed = pitchRate + (pose.Angle1 * linkageRate);
        double frontX = m.FrontX, frontZ = m.FrontZ + frontTravel;
        RearWheel(y, sin, cos, pose, out double rearHeight, out double rearBodyX, out double rearRise, out double rearSpeed);
        FrontWheel(y, sin, cos, out double frontHeight, out double frontRise, out double frontSpeed);
        double rearPlace = y[StateLayout.X] + (cos * pose.X) - (sin * pose.Z);
        double frontPlace = y[StateLayout.X] + (cos * frontX) - (sin * frontZ);
        double rearGrip = _trackGrip.At(Modes.RearGrip, rearPlace), frontGrip = _trackGrip.At(Modes.FrontGrip, frontPlace);

        _rearTire.Touch(
            Modes.RearTire, Modes.RearTravel, Modes.RearOnFloor, rearGrip, rearHeight, rearRise, rearSpeed, beltSpin, rearSlip, out TireResult rear);
        _frontTire.Touch(
            Modes.FrontTire, Modes.FrontTravel, Modes.FrontOnFloor, frontGrip, frontHeight, frontRise, frontSpeed, frontSpin, frontSlip, out TireResult front);
        _rearTire.Push(Modes.RearTire, curves[0], rearHeight, beltSpin, rollingShares[0], ref rear);
        _frontTire.Push(Modes.FrontTire, curves[1], frontHeight, frontSpin, rollingShares[1], ref front);
        double lost = rear.Lost + front.Lost;

        // Rear springs, dampers and stops: along their own line, by virtual work in λ.
        _spring.At(pose, out double springLength, out double springArm, out double springX, out double springZ);
        double springLine = m.SpringPreload + (m.SpringRate * (m.SpringLength - springLength));
        double springForce = Modes.RearSpringLoose ? 0 : springLine;
        double damperLength = springLength, damperArm = springArm, damperX = springX, damperZ = springZ;
        if (!_oneUnit)
        {
            _damper.At(pose, out damperLength, out damperArm, out damperX, out damperZ);
        }

        double damperSpeed = damperArm * linkageRate;
        double damperResistance = 2 * _rearDamper.Resistance(Modes.RearDamper, damperSpeed);
        lost += damperResistance * damperSpeed;
        double topForce = 0, bottomForce = 0;
        if ((Modes.RearTop | Modes.RearBottom) != ContactMode.Apart)
        {
            topForce = _rearStop.Force(Modes.RearTop, damperLength - m.TopLength, damperSpeed);
            bottomForce = _rearStop.Force(Modes.RearBottom, m.BottomLength - damperLength, -damperSpeed);
            lost += _rearStop.Lost(Modes.RearTop, damperLength - m.TopLength, damperSpeed)
                + _rearStop.Lost(Modes.RearBottom, m.BottomLength - damperLength, -damperSpeed);
        }

        // Front spring, damper and stop by motion ratio, in s.
        double frontSpringLine = FrontSpringLine(frontTravel);
        double frontSpringForce = Modes.FrontSpringLoose ? 0 : frontSpringLine;
        double frontExtension = -m.FrontDamperRatio * frontTravel, frontDamperSpeed = -m.FrontDamperRatio * frontRate;
        double frontResistance = 2 * _frontDamper.Resistance(Modes.FrontDamper, frontDamperSpeed);
        lost += frontResistance * frontDamperSpeed;
        double frontUnit = -frontResistance;
        double frontTop = 0, frontBottom = 0;
        if ((Modes.FrontTop | Modes.FrontBottom) != ContactMode.Apart)
        {
            frontTop = _frontStop.Force(Modes.FrontTop, frontExtension - m.FrontExtend, frontDamperSpeed);
            frontBottom = _frontStop.Force(Modes.FrontBottom, -frontExtension - m.FrontCompress, -frontDamperSpeed);
            lost += _frontStop.Lost(Modes.FrontTop, frontExtension - m.FrontExtend, frontDamperSpeed)
                + _frontStop.Lost(Modes.FrontBottom, -frontExtension - m.FrontCompress, -frontDamperSpeed);
            frontUnit += frontBottom - frontTop;
        }

        // External forces, turned into the body's axes.
        double rearDown = rear.Load - (m.RearMass * LaunchModel.Gravity);
        double gx = (cos * rear.Thrust) + (sin * rearDown), gz = (cos * rearDown) - (sin * rear.Thrust);
        double housingMoment = 0;
        if (m.HasWheelieBar)
        {
            (double bx, double bz) = pose.Turn(m.BarX, m.BarZ);
            double depth = -(rearHeight + (sin * bx) + (cos * bz));
            double rate = -(rearRise + (housingSpeed * ((cos * bx) - (sin * bz))));
            double force = _bar.Force(Modes.WheelieBar, depth, rate);
            lost += _bar.Lost(Modes.WheelieBar, depth, rate);
            gx += sin * force;
            gz += cos * force;
            housingMoment = force * ((bx * cos) - (bz * sin));
            if (TKeep.Instant)
            {
                now.BarDepth = depth;
                now.BarRate = rate;
                now.BarForce = force;
                now.BarX = bx;
                now.BarZ = bz;
            }
        }

        double frontDown = front.Load - (m.FrontMass * LaunchModel.Gravity);
        double fx = (cos * front.Thrust) + (sin * frontDown), fz = (cos * frontDown) - (sin * front.Thrust);
        double drag = m.HalfDrag * xRate * Math.Abs(xRate);
        double dragMoment = (m.DragHeight - y[StateLayout.Z]) * drag;
        lost += (drag * xRate) - (dragMoment * pitchRate);
        double weight = m.SprungMass * LaunchModel.Gravity;
        double forceX = gx + fx - (cos * drag) - (sin * weight), forceZ = gz + fz + (sin * drag) - (cos * weight);
        double forcePitch = (pose.X * gz) - (pose.Z * gx) + housingMoment + (frontX * fz) - (frontZ * fx) + dragMoment;
        double forceLinkage = (pose.X1 * gx) + (pose.Z1 * gz) + (pose.Angle1 * housingMoment) + (springForce * springArm)
            + ((bottomForce - topForce - damperResistance) * damperArm);
        double forceTravel = fz - (m.FrontSpringRatio * frontSpringForce) - (m.FrontDamperRatio * frontUnit);

        // Bias accelerations h.
        double pitchSquared = pitchRate * pitchRate, linkageSquared = linkageRate * linkageRate, coriolis = 2 * pitchRate * linkageRate;
        double biasX = (pose.X2 * linkageSquared) - (pitchSquared * pose.X) - (coriolis * pose.Z1);
        double biasZ = (pose.Z2 * linkageSquared) - (pitchSquared * pose.Z) + (coriolis * pose.X1);
        double biasAngle = pose.Angle2 * linkageSquared;
        double biasFrontX = -(pitchSquared * frontX) - (2 * pitchRate * frontRate), biasFrontZ = -(pitchSquared * frontZ);

        // M·q'' = Q − h with s'' eliminated first (it leaves the front unsprung mass's own equation, m_f·a_z = Q_s), then x'' and
        // z'' in the body's axes, whose diagonal is constant: a 2×2 system in θ'' and λ'' is left.
        double massRear = m.RearMass, massFront = m.FrontMass;
        double perX = _perMassX, perZ = _perMassZ;
        double xPitch = -(massRear * pose.Z) - (massFront * frontZ), xLinkage = massRear * pose.X1;
        double zPitch = massRear * pose.X, zLinkage = massRear * pose.Z1;
        double housing = m.HousingInertia * pose.Angle1;
        double cross = (pose.X * pose.Z1) - (pose.Z * pose.X1);
        double pitchPitch = m.PitchInertia + m.HousingInertia + (massRear * ((pose.X * pose.X) + (pose.Z * pose.Z))) + (massFront * frontZ * frontZ);
        double pitchLinkage = (massRear * cross) + housing;
        double linkageLinkage = (massRear * ((pose.X1 * pose.X1) + (pose.Z1 * pose.Z1))) + (housing * pose.Angle1);

        double rightX = forceX - (massRear * biasX) - (massFront * biasFrontX);
        double rightZ = forceZ - (massRear * biasZ) - forceTravel;
        double rightPitch = forcePitch - (massRear * ((pose.X * biasZ) - (pose.Z * biasX))) - (m.HousingInertia * biasAngle)
            - (frontX * forceTravel) + (frontZ * massFront * biasFrontX);
        double rightLinkage = forceLinkage - (massRear * ((pose.X1 * biasX) + (pose.Z1 * biasZ))) - (housing * biasAngle);

        double xPitchPer = xPitch * perX, zPitchPer = zPitch * perZ, xLinkagePer = xLinkage * perX, zLinkagePer = zLinkage * perZ;
        double k11 = pitchPitch - (xPitch * xPitchPer) - (zPitch * zPitchPer);
        double k12 = pitchLinkage - (xLinkage * xPitchPer) - (zLinkage * zPitchPer);
        double k22 = linkageLinkage - (xLinkage * xLinkagePer) - (zLinkage * zLinkagePer);
        double right1 = rightPitch - (rightX * xPitchPer) - (rightZ * zPitchPer);
        double right2 = rightLinkage - (rightX * xLinkagePer) - (rightZ * zLinkagePer);
        double perDeterminant = 1 / ((k11 * k22) - (k12 * k12));
        double pitch0 = ((k22 * right1) - (k12 * right2)) * perDeterminant;
        double linkage0 = ((k11 * right2) - (k12 * right1)) * perDeterminant;
        double pitchPerTorque = (k22 - (k12 * pose.Angle1)) * perDeterminant;
        double linkagePerTorque = ((k11 * pose.Angle1) - k12) * perDeterminant;

        // The axle torque acts on the housing and on the rims; a locked clutch needs what the car does without it.
        double carcass = (m.CarcassRate * y[StateLayout.Windup]) + (m.CarcassDamping * (rimSpin - beltSpin));
        lost += m.CarcassDamping * (rimSpin - beltSpin) * (rimSpin - beltSpin);
        DrivelineInput seen;
        seen.Time = t;
        seen.ShaftSpeed = rimSpin + housingSpeed;
        seen.EngineSpeed = y[StateLayout.EngineSpeed];
        seen.FreeAcceleration = pitch0 + (pose.Angle1 * linkage0) + biasAngle - (carcass * _perRim);
        seen.Compliance = pitchPerTorque + (pose.Angle1 * linkagePerTorque) + _perRim;
        _driveline.At(Modes, seen, out DrivelineOutput driven);
        double torque = driven.AxleTorque;

        double pitchAcceleration = pitch0 + (pitchPerTorque * torque), linkageAcceleration = linkage0 + (linkagePerTorque * torque);
        double accelerationX = (rightX * perX) - (xPitchPer * pitchAcceleration) - (xLinkagePer * linkageAcceleration);
        double accelerationZ = (rightZ * perZ) - (zPitchPer * pitchAcceleration) - (zLinkagePer * linkageAcceleration);
        double xAcceleration = (cos * accelerationX) - (sin * accelerationZ), zAcceleration = (sin * accelerationX) + (cos * accelerationZ);
        double travelAcceleration = (forceTravel * _perFront) - accelerationZ - (pitchAcceleration * frontX) - biasFrontZ;

        dy[StateLayout.X] = xRate;
        dy[StateLayout.Z] = y[StateLayout.ZRate];
        dy[StateLayout.Pitch] = pitchRate;
        dy[StateLayout.Linkage] = linkageRate;
        dy[StateLayout.FrontTravel] = frontRate;
        dy[StateLayout.XRate] = xAcceleration;
        dy[StateLayout.ZRate] = zAcceleration;
        dy[StateLayout.PitchRate] = pitchAcceleration;
        dy[StateLayout.LinkageRate] = linkageAcceleration;
        dy[StateLayout.FrontTravelRate] = travelAcceleration;
        dy[StateLayout.RimSpin] = (torque - carcass) * _perRim;
        dy[StateLayout.BeltSpin] = (carcass + rear.SpinTorque) * _perBelt;
        dy[StateLayout.Windup] = rimSpin - beltSpin;
        dy[StateLayout.RearDeflection] = rear.DeflectionRate;
        dy[StateLayout.FrontSpin] = front.SpinTorque * _perFrontSpin;
        dy[StateLayout.FrontDeflection] = front.DeflectionRate;
        dy[StateLayout.EngineSpeed] = driven.EngineAcceleration;
        dy[StateLayout.Work] = torque * seen.ShaftSpeed;
        dy[StateLayout.Dissipated] = lost;

        if (!TKeep.Instant)
        {
            return;
        }

        _freeAcceleration = seen.FreeAcceleration;
        _compliance = seen.Compliance;
        now.RearTire = rear;
        now.FrontTire = front;
        now.Driveline = driven;
        now.SpringX = springX;
        now.SpringZ = springZ;
        now.DamperX = damperX;
        now.DamperZ = damperZ;
        now.Pose = pose;
        now.Cos = cos;
        now.Sin = sin;
        now.RearHeight = rearHeight;
        now.FrontHeight = frontHeight;
        now.RearX = rearPlace;
        now.FrontX = frontPlace;
        now.RearSpeed = rearSpeed;
        now.FrontSpeed = frontSpeed;
        now.RearTrackGrip = rearGrip;
        now.FrontTrackGrip = frontGrip;
        now.SpringLine = springLine;
        now.SpringForce = springForce;
        now.DamperLength = damperLength;
        now.DamperSpeed = damperSpeed;
        now.DamperResistance = damperResistance;
        now.TopForce = topForce;
        now.BottomForce = bottomForce;
        now.FrontSpringLine = frontSpringLine;
        now.FrontSpringForce = frontSpringForce;
        now.FrontExtension = frontExtension;
        now.FrontDamperSpeed = frontDamperSpeed;
        now.FrontDamperResistance = frontResistance;
        now.FrontTopForce = frontTop;
        now.FrontBottomForce = frontBottom;
        now.CarcassTorque = carcass;
        now.HousingSpeed = housingSpeed;
        now.XAcceleration = xAcceleration;
        now.ZAcceleration = zAcceleration;
        now.PitchAcceleration = pitchAcceleration;
        now.LinkageAcceleration = linkageAcceleration;
        now.FrontTravelAcceleration = travelAcceleration;
        now.AxleAccelerationX = accelerationX - (pose.Z * pitchAcceleration) + (pose.X1 * linkageAcceleration) + biasX;
        now.AxleAccelerationZ = accelerationZ + (pose.X * pitchAcceleration) + (pose.Z1 * linkageAcceleration) + biasZ;
        now.HousingAcceleration = pitchAcceleration + (pose.Angle1 * linkageAcceleration) + biasAngle;
    }

    private interface IKeep
    {
        static abstract bool Instant { get; }
    }

    private readonly struct RatesOnly : IKeep
    {
        public static bool Instant => false;
    }

    private readonly struct WithInstant : IKeep
    {
        public static bool Instant => true;
    }
}
