using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using LaunchSim.Vehicle;

namespace LaunchSim.Dynamics;

/// <summary>
/// Both tyres of an axle on the ground: vertical contact, transient slip with a single contact point, and a
/// Magic-Formula curve (Pacejka, Tyre and Vehicle Dynamics; form from memory). The same code front and rear.
/// </summary>
public readonly struct TireForce
{
    private const double LeastGripShare = 0.2;
    private const double RollingTransition = 0.5;

    // At standstill all candidates for the travelling speed are rounding: without some slack, m/s, their branches would
    // hand over to each other for ever. Far below what any tolerance sees.
    private const double TravelSlack = 1e-9;

    // From here tanh(Ω/0.5) is 1 to the last bit.
    private const double FullRolling = 10;

    private readonly OneSidedContact _contact;
    private readonly double _freeRadius, _perRelaxation, _grip, _b, _e, _c, _sensitivity, _perReference, _rolling;

    /// <summary>Prepares an axle's tyres.</summary>
    /// <param name="tire">One tyre.</param>
    /// <param name="scaleReading">The axle's measured scale reading, both tyres, N.</param>
    public TireForce(Tire tire, double scaleReading)
    {
        ArgumentNullException.ThrowIfNull(tire);
        double above = tire.Pressure is { } p ? p.Set - p.Measured : 0;
        VerticalRate = 2 * (tire.VerticalRate + ((tire.Pressure?.VerticalRateSlope ?? 0) * above));
        _contact = new OneSidedContact(VerticalRate, 2 * tire.VerticalDamping);
        _freeRadius = tire.LoadedRadius + (0.5 * scaleReading / tire.VerticalRate);
        _perRelaxation = 1 / tire.RelaxationLength;
        _grip = tire.Grip * (1 + ((tire.Pressure?.GripSlope ?? 0) * above));
        TireCurve curve = TireCurve.From(tire);
        _b = curve.B;
        _c = curve.C;
        _e = curve.E;
        _sensitivity = tire.LoadSensitivity;
        _perReference = 0.5 / tire.ReferenceLoad;
        _rolling = tire.RollingResistance;
        PeakSlip = tire.PeakSlip;
    }

    /// <summary>Free radius R0, m.</summary>
    public double FreeRadius => _freeRadius;

    /// <summary>Vertical rate at the set pressure, both tyres, N/m.</summary>
    public double VerticalRate { get; }

    /// <summary>Peak grip μ0 at the set pressure.</summary>
    public double Grip => _grip;

    /// <summary>Slip ratio at which the force peaks s_p.</summary>
    public double PeakSlip { get; }

    /// <summary>The contact with the ground, both tyres together.</summary>
    public OneSidedContact Contact => _contact;

    /// <summary>Slip ratio s = u/σ of a contact deflection.</summary>
    /// <param name="deflection">Contact deflection u, m.</param>
    public double SlipRatio(double deflection) => deflection * _perRelaxation;

    /// <summary>Constants of the curve, for <see cref="TireCurvePair"/>.</summary>
    public TireCurve Curve => new(_b, _c, _e);

    /// <summary>What does not need the slip curve: contact, radius, slip and its rate, available grip.</summary>
    /// <param name="contact">Mode of the contact with the ground.</param>
    /// <param name="travel">Which candidate is the travelling speed.</param>
    /// <param name="onFloor">Whether grip stands on its load floor.</param>
    /// <param name="trackGrip">The track's grip multiplier γ.</param>
    /// <param name="height">Height of the wheel centre z_c, m.</param>
    /// <param name="rise">Its rate, m/s.</param>
    /// <param name="speed">Horizontal speed v of the wheel centre, m/s.</param>
    /// <param name="spin">Spin of the belt Ω, rad/s.</param>
    /// <param name="slip">Slip ratio s.</param>
    /// <param name="result">Receives contact, slip and guards.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Touch(
        ContactMode contact, TravelBranch travel, bool onFloor, double trackGrip,
        double height, double rise, double speed, double spin, double slip, out TireResult result)
    {
        double depth = _freeRadius - height;
        result.Depth = depth;
        result.DepthRate = -rise;
        double load = _contact.Force(contact, depth, -rise);
        result.Load = load;
        double radius = contact == ContactMode.Apart ? _freeRadius : _freeRadius - (depth * (1.0 / 3));
        result.Radius = radius;

        double rolling = spin * radius;
        double slipSpeed = rolling - speed;
        bool byRolling = travel is TravelBranch.Rolling or TravelBranch.RollingBack;
        double leading = byRolling ? rolling : speed, trailing = byRolling ? speed : rolling;
        double travelSpeed = travel is TravelBranch.Rolling or TravelBranch.Moving ? leading : -leading;
        result.TravelGuard = travelSpeed - Math.Max(-travelSpeed, Math.Abs(trailing)) + TravelSlack;
        result.SlipSpeed = slipSpeed;
        result.DeflectionRate = slipSpeed - (travelSpeed * slip);

        double share = Share(load);
        result.FloorGuard = onFloor ? LeastGripShare - share : share - LeastGripShare;
        result.Limit = Limit(onFloor, trackGrip, load, share);
        result.Thrust = 0;
        result.SpinTorque = 0;
        result.Lost = 0;
    }

    /// <summary>Load F_z, N, as <see cref="Touch"/> finds it.</summary>
    /// <param name="contact">Mode of the contact with the ground.</param>
    /// <param name="height">Height of the wheel centre z_c, m.</param>
    /// <param name="rise">Its rate, m/s.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Load(ContactMode contact, double height, double rise) => _contact.Force(contact, _freeRadius - height, -rise);

    /// <summary>Available grip μ·F_z, N, as <see cref="Touch"/> finds it.</summary>
    /// <param name="onFloor">Whether grip stands on its load floor.</param>
    /// <param name="trackGrip">The track's grip multiplier γ.</param>
    /// <param name="load">Load F_z, N.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public double Limit(bool onFloor, double trackGrip, double load) => Limit(onFloor, trackGrip, load, Share(load));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double Share(double load) => 1 - (_sensitivity * ((load * _perReference) - 1));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private double Limit(bool onFloor, double trackGrip, double load, double share) =>
        _grip * trackGrip * (onFloor ? LeastGripShare : share) * load;

    /// <summary>tanh(Ω/0.5 rad/s) of the rear (first) and the front (second) spin, which the rolling resistance is scaled by.</summary>
    /// <param name="rear">Spin of the rear belts, rad/s.</param>
    /// <param name="front">Spin of the front wheels, rad/s.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Vector128<double> RollingShares(double rear, double front) =>
        rear >= FullRolling && front >= FullRolling
            ? Vector128<double>.One
            : PairMath.Tanh(Vector128.Create(rear, front) * (1 / RollingTransition));

    /// <summary>What follows from the slip curve: thrust, torque on the spin, losses.</summary>
    /// <param name="contact">Mode of the contact with the ground.</param>
    /// <param name="curve">The curve's value, force over its peak.</param>
    /// <param name="height">Height of the wheel centre z_c, m.</param>
    /// <param name="spin">Spin of the belt Ω, rad/s.</param>
    /// <param name="rollingShare">What <see cref="RollingShares"/> says of the spin.</param>
    /// <param name="result">What <see cref="Touch"/> found; receives the rest.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Push(ContactMode contact, double curve, double height, double spin, double rollingShare, ref TireResult result)
    {
        double thrust = result.Limit * curve;
        result.Thrust = thrust;
        double rollingTorque = _rolling * result.Load * height * rollingShare;
        result.SpinTorque = -(thrust * result.Radius) - rollingTorque;
        result.Lost = (thrust * result.SlipSpeed) + (rollingTorque * spin) + _contact.Lost(contact, result.Depth, result.DepthRate);
    }

    /// <summary>
    /// The branch of V_t = max(|Ω·R_e|, |v|) that takes over: the largest candidate but the present one. At standstill
    /// all four are equal and nothing tells yet which will lead; then each gets its turn.
    /// </summary>
    /// <param name="present">The branch that is left.</param>
    /// <param name="rolling">Ω·R_e, m/s.</param>
    /// <param name="speed">Horizontal speed v of the wheel centre, m/s.</param>
    public static TravelBranch NextBranch(TravelBranch present, double rolling, double speed)
    {
        ReadOnlySpan<double> candidates = [rolling, speed, -rolling, -speed];
        int best = ((int)present + 1) % candidates.Length;
        for (int i = 2; i < candidates.Length; i++)
        {
            int next = ((int)present + i) % candidates.Length;
            if (candidates[next] > candidates[best])
            {
                best = next;
            }
        }

        return (TravelBranch)best;
    }
}

/// <summary>What an axle's tyres do at one instant; forces of both tyres together.</summary>
public struct TireResult
{
    /// <summary>Deflection δ, m; negative in the air.</summary>
    public double Depth;

    /// <summary>Its rate δ', m/s.</summary>
    public double DepthRate;

    /// <summary>Load F_z, N.</summary>
    public double Load;

    /// <summary>Thrust F_x, N, forward positive.</summary>
    public double Thrust;

    /// <summary>Available grip μ·F_z, N.</summary>
    public double Limit;

    /// <summary>Effective rolling radius R_e, m.</summary>
    public double Radius;

    /// <summary>Slip speed V_s = Ω·R_e − v, m/s.</summary>
    public double SlipSpeed;

    /// <summary>u', m/s.</summary>
    public double DeflectionRate;

    /// <summary>Torque on the spin, −F_x·R_e less rolling resistance, N·m.</summary>
    public double SpinTorque;

    /// <summary>Power lost in contact, rolling and tyre damping, W.</summary>
    public double Lost;

    /// <summary>Guards of the travelling speed's branch and of the load floor; the contact has its own.</summary>
    public double TravelGuard, FloorGuard;
}
