using System.Runtime.CompilerServices;
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

    // Beyond this tanh(Ω/0.5) is 1 to the last bit.
    private const double FullRolling = 10;

    private readonly double _freeRadius, _perRelaxation, _grip, _b, _e, _c, _sensitivity, _perReference, _rolling;

    /// <summary>Prepares an axle's tyres.</summary>
    /// <param name="tire">One tyre.</param>
    /// <param name="scaleReading">The axle's measured scale reading, both tyres, N.</param>
    public TireForce(Tire tire, double scaleReading)
    {
        ArgumentNullException.ThrowIfNull(tire);
        double above = tire.Pressure is { } p ? p.Set - p.Measured : 0;
        VerticalRate = 2 * (tire.VerticalRate + ((tire.Pressure?.VerticalRateSlope ?? 0) * above));
        Contact = new OneSidedContact(VerticalRate, 2 * tire.VerticalDamping);
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
    public OneSidedContact Contact { get; }

    /// <summary>Slip ratio s = u/σ of a contact deflection.</summary>
    /// <param name="deflection">Contact deflection u, m.</param>
    public double SlipRatio(double deflection) => deflection * _perRelaxation;

    /// <summary>Everything that one axle's tyres do at one instant.</summary>
    /// <param name="contact">Mode of the contact with the ground.</param>
    /// <param name="travel">Which candidate is the travelling speed.</param>
    /// <param name="onFloor">Whether grip stands on its load floor.</param>
    /// <param name="trackGrip">The track's grip multiplier γ.</param>
    /// <param name="height">Height of the wheel centre z_c, m.</param>
    /// <param name="rise">Its rate, m/s.</param>
    /// <param name="speed">Horizontal speed v of the wheel centre, m/s.</param>
    /// <param name="spin">Spin of the belt Ω, rad/s.</param>
    /// <param name="deflection">Contact deflection u, m.</param>
    /// <param name="result">Receives forces, rates, losses and guards.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void At(
        ContactMode contact, TravelBranch travel, bool onFloor, double trackGrip,
        double height, double rise, double speed, double spin, double deflection, out TireResult result)
    {
        double depth = _freeRadius - height;
        result.Depth = depth;
        result.DepthRate = -rise;
        result.ContactGuard = Contact.Guard(contact, depth, -rise);
        double load = Contact.Force(contact, depth, -rise);
        result.Load = load;
        double radius = contact == ContactMode.Apart ? _freeRadius : _freeRadius - (depth * (1.0 / 3));
        result.Radius = radius;

        double rolling = spin * radius;
        double slipSpeed = rolling - speed;
        double travelSpeed = travel switch
        {
            TravelBranch.Rolling => rolling,
            TravelBranch.Moving => speed,
            TravelBranch.RollingBack => -rolling,
            _ => -speed,
        };
        double other = travel switch
        {
            TravelBranch.Rolling or TravelBranch.RollingBack => Math.Max(-travelSpeed, Math.Abs(speed)),
            _ => Math.Max(-travelSpeed, Math.Abs(rolling)),
        };
        result.TravelGuard = travelSpeed - other;
        result.SlipSpeed = slipSpeed;
        double slip = deflection * _perRelaxation;
        result.DeflectionRate = slipSpeed - (travelSpeed * slip);

        double share = 1 - (_sensitivity * ((load * _perReference) - 1));
        result.FloorGuard = onFloor ? LeastGripShare - share : share - LeastGripShare;
        double limit = _grip * trackGrip * (onFloor ? LeastGripShare : share) * load;
        result.Limit = limit;
        double x = _b * slip;
        double thrust = limit * Math.Sin(_c * Math.Atan(x - (_e * (x - Math.Atan(x)))));
        result.Thrust = thrust;

        double drag = spin >= FullRolling ? 1 : Math.Tanh(spin * (1 / RollingTransition));
        double rollingTorque = _rolling * load * height * drag;
        result.SpinTorque = -(thrust * radius) - rollingTorque;
        result.Lost = (thrust * slipSpeed) + (rollingTorque * spin) + Contact.Lost(contact, depth, -rise);
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

    /// <summary>Guards of the three modes: contact, travelling speed, load floor.</summary>
    public double ContactGuard, TravelGuard, FloorGuard;
}
