using System.Runtime.Intrinsics;
using LaunchSim.Dynamics;
using LaunchSim.Launch;

namespace LaunchSim.Figures;

/// <summary>A quantity of the launch whose course the figures are read from; SI units, per side where observations are.</summary>
public enum Signal
{
    /// <summary>Height change over the ground of the body at the standing front wheel centre, m.</summary>
    FrontRise,

    /// <summary>Height change over the ground of the body at the standing rear wheel centre, m.</summary>
    RearRise,

    /// <summary>How far the front has opened since standing, m.</summary>
    FrontGap,

    /// <summary>Separation of body and rear axle, m: the rear gap.</summary>
    Separation,

    /// <summary>Rear tyre load, axle, N.</summary>
    RearLoad,

    /// <summary>Front tyre load, axle, N.</summary>
    FrontLoad,

    /// <summary>Rear 1 − |F_x|/(μ·F_z); infinite while the tyre carries no more than 5 % of its static load.</summary>
    GripMargin,

    /// <summary>Amount of the rear slip ratio |u/σ|.</summary>
    RearSlip,

    /// <summary>Rear slip speed V_s, m/s, spinning positive.</summary>
    RearSlipSpeed,

    /// <summary>Height of the front wheel centre above its free radius, m.</summary>
    FrontClearance,

    /// <summary>Height of the rear wheel centre above its free radius, m.</summary>
    RearClearance,

    /// <summary>Rear damper speed, m/s, positive longer.</summary>
    RearDamperSpeed,

    /// <summary>Front damper speed, m/s, positive longer.</summary>
    FrontDamperSpeed,

    /// <summary>Rear top stop, N per side.</summary>
    RearTopForce,

    /// <summary>Rear bottom stop, N per side.</summary>
    RearBottomForce,

    /// <summary>Front top stop, N per side.</summary>
    FrontTopForce,

    /// <summary>Front bottom stop, N per side.</summary>
    FrontBottomForce,

    /// <summary>Pull in the upper bar, N per side; not a number without one.</summary>
    UpperLink,

    /// <summary>Pull in the lower bar, N per side; not a number without one.</summary>
    LowerLink,

    /// <summary>Housing angle relative to the body since standing, rad, pinion nose up positive.</summary>
    Pinion,

    /// <summary>Force of the wheelie bar, N.</summary>
    WheelieBar,

    /// <summary>Torque of both axle shafts, N·m.</summary>
    AxleTorque,

    /// <summary>Place of the rear wheel centre along the track, m.</summary>
    RearPlace,

    /// <summary>Acceleration of the sprung CG along the track, m/s².</summary>
    Acceleration,

    /// <summary>Pitch since standing, rad, nose up positive.</summary>
    Pitch,

    /// <summary>Energy stored plus dissipated less work, J.</summary>
    EnergyResidual,
}

/// <summary>How signals are read off an observation.</summary>
internal readonly struct SignalReader(StandingCar car)
{
    /// <summary>Number of signals.</summary>
    public const int Count = (int)Signal.EnergyResidual + 1;

    /// <summary>The signals that places and speeds alone tell, a bit each.</summary>
    public const uint MotionMask = (1u << (int)Signal.FrontRise) | (1u << (int)Signal.RearRise) | (1u << (int)Signal.FrontGap)
        | (1u << (int)Signal.Separation) | (1u << (int)Signal.RearLoad) | (1u << (int)Signal.RearSlip) | (1u << (int)Signal.RearPlace)
        | (1u << (int)Signal.Pitch) | (1u << (int)Signal.RearTopForce) | (1u << (int)Signal.RearBottomForce)
        | (1u << (int)Signal.FrontTopForce) | (1u << (int)Signal.FrontBottomForce);

    private const double LeastLoadShare = 0.05;

    private readonly double _leastLoad = LeastRearLoad(car);
    private readonly double _rearFreeRadius = car.Model.RearTire.FreeRadius;
    private readonly TireCurvePair _curves = new(car.Model.RearTire.Curve, car.Model.RearTire.Curve);

    /// <summary>Rear tyre load, axle, N, at and below which there is no grip margin.</summary>
    public static double LeastRearLoad(StandingCar car) => LeastLoadShare * car.Standing.RearLoad;

    /// <summary>Whether places and speeds alone tell a signal.</summary>
    public static bool InMotion(Signal signal) => (MotionMask & (1u << (int)signal)) != 0;

    /// <summary>Writes the signals of <see cref="MotionMask"/> from one place of their columns on.</summary>
    /// <param name="seen">What is seen.</param>
    /// <param name="columns">All columns, one after another.</param>
    /// <param name="stride">Length of a column.</param>
    /// <param name="at">Place within the column.</param>
    public static void Write(ReadOnlySpan<Motion> seen, Span<double> columns, int stride, int at)
    {
        Span<double> frontRise = columns.Slice(((int)Signal.FrontRise * stride) + at, seen.Length);
        Span<double> rearRise = columns.Slice(((int)Signal.RearRise * stride) + at, seen.Length);
        Span<double> frontGap = columns.Slice(((int)Signal.FrontGap * stride) + at, seen.Length);
        Span<double> separation = columns.Slice(((int)Signal.Separation * stride) + at, seen.Length);
        Span<double> rearLoad = columns.Slice(((int)Signal.RearLoad * stride) + at, seen.Length);
        Span<double> rearSlip = columns.Slice(((int)Signal.RearSlip * stride) + at, seen.Length);
        Span<double> rearTopForce = columns.Slice(((int)Signal.RearTopForce * stride) + at, seen.Length);
        Span<double> rearBottomForce = columns.Slice(((int)Signal.RearBottomForce * stride) + at, seen.Length);
        Span<double> frontTopForce = columns.Slice(((int)Signal.FrontTopForce * stride) + at, seen.Length);
        Span<double> frontBottomForce = columns.Slice(((int)Signal.FrontBottomForce * stride) + at, seen.Length);
        Span<double> rearPlace = columns.Slice(((int)Signal.RearPlace * stride) + at, seen.Length);
        Span<double> pitch = columns.Slice(((int)Signal.Pitch * stride) + at, seen.Length);
        for (int i = 0; i < seen.Length; i++)
        {
            ref readonly Motion motion = ref seen[i];
            frontRise[i] = motion.FrontRise;
            rearRise[i] = motion.RearRise;
            frontGap[i] = -motion.FrontTravel;
            separation[i] = motion.Separation;
            rearLoad[i] = Math.Max(0, motion.RearLoad);
            rearSlip[i] = Math.Abs(motion.RearSlipRatio);
            rearTopForce[i] = motion.RearTopForce;
            rearBottomForce[i] = motion.RearBottomForce;
            frontTopForce[i] = motion.FrontTopForce;
            frontBottomForce[i] = motion.FrontBottomForce;
            rearPlace[i] = motion.RearWheelPlace;
            pitch[i] = motion.Pitch;
        }
    }

    /// <summary>One of the signals of <see cref="MotionMask"/>, or the grip margin.</summary>
    /// <param name="signal">Which.</param>
    /// <param name="seen">What is seen, one motion.</param>
    public double Value(Signal signal, ReadOnlySpan<Motion> seen)
    {
        ref readonly Motion motion = ref seen[0];
        switch (signal)
        {
            case Signal.FrontRise:
                return motion.FrontRise;
            case Signal.RearRise:
                return motion.RearRise;
            case Signal.FrontGap:
                return -motion.FrontTravel;
            case Signal.Separation:
                return motion.Separation;
            case Signal.RearLoad:
                return Math.Max(0, motion.RearLoad);
            case Signal.RearSlip:
                return Math.Abs(motion.RearSlipRatio);
            case Signal.RearTopForce:
                return motion.RearTopForce;
            case Signal.RearBottomForce:
                return motion.RearBottomForce;
            case Signal.FrontTopForce:
                return motion.FrontTopForce;
            case Signal.FrontBottomForce:
                return motion.FrontBottomForce;
            case Signal.RearPlace:
                return motion.RearWheelPlace;
            case Signal.Pitch:
                return motion.Pitch;
            default:
                Vector128<double> curve = _curves.At(Vector128.Create(Math.Abs(motion.RearSlipRatio)));
                return Margin(motion.RearLoad, motion.RearLimit, curve[0]);
        }
    }

    private double Margin(double load, double limit, double curve) =>
        load > _leastLoad ? 1 - (Math.Abs(limit * curve) / limit) : double.PositiveInfinity;

    /// <summary>Writes all signals at one place of their columns.</summary>
    /// <param name="seen">The observation.</param>
    /// <param name="columns">All columns, one after another.</param>
    /// <param name="stride">Length of a column.</param>
    /// <param name="at">Place within the column.</param>
    public void Write(in Observation seen, Span<double> columns, int stride, int at)
    {
        columns[((int)Signal.FrontRise * stride) + at] = seen.FrontRise;
        columns[((int)Signal.RearRise * stride) + at] = seen.RearRise;
        columns[((int)Signal.FrontGap * stride) + at] = -seen.FrontTravel;
        columns[((int)Signal.Separation * stride) + at] = seen.Separation;

        // A tyre leaves the ground at a located instant, where its load is 0 but for rounding, either way.
        columns[((int)Signal.RearLoad * stride) + at] = Math.Max(0, seen.RearLoad);
        columns[((int)Signal.FrontLoad * stride) + at] = Math.Max(0, seen.FrontLoad);
        columns[((int)Signal.GripMargin * stride) + at] = seen.RearLoad > _leastLoad
            ? 1 - (Math.Abs(seen.RearThrust) / seen.RearLimit)
            : double.PositiveInfinity;
        columns[((int)Signal.RearSlip * stride) + at] = Math.Abs(seen.RearSlipRatio);
        columns[((int)Signal.RearSlipSpeed * stride) + at] = seen.RearSlipSpeed;
        columns[((int)Signal.FrontClearance * stride) + at] = seen.FrontTireClearance;
        columns[((int)Signal.RearClearance * stride) + at] = seen.RearWheelHeight - _rearFreeRadius;
        columns[((int)Signal.RearDamperSpeed * stride) + at] = seen.RearDamperSpeed;
        columns[((int)Signal.FrontDamperSpeed * stride) + at] = seen.FrontDamperSpeed;
        columns[((int)Signal.RearTopForce * stride) + at] = seen.RearTopForce;
        columns[((int)Signal.RearBottomForce * stride) + at] = seen.RearBottomForce;
        columns[((int)Signal.FrontTopForce * stride) + at] = seen.FrontTopForce;
        columns[((int)Signal.FrontBottomForce * stride) + at] = seen.FrontBottomForce;
        columns[((int)Signal.UpperLink * stride) + at] = seen.UpperLinkForce;
        columns[((int)Signal.LowerLink * stride) + at] = seen.LowerLinkForce;
        columns[((int)Signal.Pinion * stride) + at] = seen.PinionChange;
        columns[((int)Signal.WheelieBar * stride) + at] = seen.WheelieBarForce;
        columns[((int)Signal.AxleTorque * stride) + at] = seen.AxleTorque;
        columns[((int)Signal.RearPlace * stride) + at] = seen.RearWheelPlace;
        columns[((int)Signal.Acceleration * stride) + at] = seen.Acceleration;
        columns[((int)Signal.Pitch * stride) + at] = seen.Pitch;
        columns[((int)Signal.EnergyResidual * stride) + at] = seen.EnergyResidual;
    }
}
