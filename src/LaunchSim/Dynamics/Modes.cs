namespace LaunchSim.Dynamics;

/// <summary>
/// Which smooth piece every part of the car is on: table segments, contacts, branches of maxima, the driveline's state.
/// The right-hand side is smooth while this does not change; it changes only at located events and declared instants.
/// </summary>
public struct Modes
{
    /// <summary>Vertical contact of the tyres with the ground.</summary>
    public ContactMode RearTire, FrontTire;

    /// <summary>Which candidate is the tyre's travelling speed V_t = max(|Ω·R_e|, |v|).</summary>
    public TravelBranch RearTravel, FrontTravel;

    /// <summary>Whether grip stands on its load floor of 0.2·μ0·γ.</summary>
    public bool RearOnFloor, FrontOnFloor;

    /// <summary>Segment of the track's grip table under each tyre.</summary>
    public int RearGrip, FrontGrip;

    /// <summary>Whether the coil spring has gone loose.</summary>
    public bool RearSpringLoose, FrontSpringLoose;

    /// <summary>Segment of the damper's table.</summary>
    public int RearDamper, FrontDamper;

    /// <summary>Stops at full extension and full compression.</summary>
    public ContactMode RearTop, RearBottom, FrontTop, FrontBottom;

    /// <summary>The wheelie bar on the ground.</summary>
    public ContactMode WheelieBar;

    /// <summary>Segments of the tables against time.</summary>
    public int TorqueSegment, ShareSegment, CapacitySegment;

    /// <summary>Segment of the engine's torque table.</summary>
    public int EngineSegment;

    /// <summary>Clutch: slipping forward, slipping backward, locked.</summary>
    public ClutchMode Clutch;

    /// <summary>Whether a locked clutch drives (true) or is driven.</summary>
    public bool Driving;

    /// <summary>Segment of the converter's tables.</summary>
    public int ConverterSegment;

    /// <summary>Gear in, from 0.</summary>
    public int Gear;

    /// <summary>Whether a shift is under way, and when it ends, s.</summary>
    public bool Shifting;

    /// <summary>When the shift under way ends, s.</summary>
    public double ShiftEnd;

    /// <summary>Whether the engine has been below the shift speed in this gear.</summary>
    public bool ShiftArmed;
}

/// <summary>State of a one-sided contact.</summary>
public enum ContactMode : byte
{
    /// <summary>No penetration.</summary>
    Apart,

    /// <summary>Penetration, and the force pushes.</summary>
    Pressing,

    /// <summary>Penetration, but spring and damping together would pull: no force.</summary>
    Clipped,
}

/// <summary>The largest of the four candidates for a tyre's travelling speed.</summary>
public enum TravelBranch : byte
{
    /// <summary>+Ω·R_e.</summary>
    Rolling,

    /// <summary>+v.</summary>
    Moving,

    /// <summary>−Ω·R_e.</summary>
    RollingBack,

    /// <summary>−v.</summary>
    MovingBack,
}

/// <summary>State of a friction clutch.</summary>
public enum ClutchMode : byte
{
    /// <summary>Engine faster than gearbox: torque forward.</summary>
    SlipsForward,

    /// <summary>Engine slower than gearbox: torque backward.</summary>
    SlipsBack,

    /// <summary>Equal speeds held by friction.</summary>
    Locked,
}
