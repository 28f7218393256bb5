namespace LaunchSim.Dynamics;

/// <summary>
/// The launch at one instant, in SI units: what traces, figures and pictures are made of. Tyre, bar and load-path forces
/// are for the axle; spring, damper, stop and link forces are per side. Travel and rises count from the standing car.
/// </summary>
public struct Observation
{
    /// <summary>Time since release, s.</summary>
    public double Time;

    /// <summary>Distance, speed and acceleration of the sprung CG along the track: m, m/s, m/s².</summary>
    public double Distance, Speed, Acceleration;

    /// <summary>Place of the rear wheel centre along the track X, m.</summary>
    public double RearWheelPlace;

    /// <summary>Pitch change since standing, rad, nose up positive; its rate, rad/s.</summary>
    public double Pitch, PitchRate;

    /// <summary>Height change over the ground of the body-fixed point at the standing wheel centre, m.</summary>
    public double FrontRise, RearRise;

    /// <summary>Separation at the rear axle, m, positive when body and axle move apart; its rate, m/s.</summary>
    public double Separation, SeparationRate;

    /// <summary>Front travel, m, positive in bump; the front gap is its negative.</summary>
    public double FrontTravel;

    /// <summary>Tyre loads F_z, N.</summary>
    public double FrontLoad, RearLoad;

    /// <summary>Tyre thrusts F_x, N, forward positive.</summary>
    public double FrontThrust, RearThrust;

    /// <summary>Available grip μ·F_z, N.</summary>
    public double FrontLimit, RearLimit;

    /// <summary>Slip ratios u/σ.</summary>
    public double FrontSlipRatio, RearSlipRatio;

    /// <summary>Slip speeds V_s, m/s.</summary>
    public double FrontSlipSpeed, RearSlipSpeed;

    /// <summary>Height of the front wheel centre above its free radius, m: positive with the tyre in the air.</summary>
    public double FrontTireClearance;

    /// <summary>Height of the rear wheel centre over the ground, m.</summary>
    public double RearWheelHeight;

    /// <summary>Height of the front wheel centre over the ground, m.</summary>
    public double FrontWheelHeight;

    /// <summary>Spin of the rear rims ω, of the rear belts Ω, of the front wheels Ω_f, rad/s.</summary>
    public double WheelSpeed, BeltSpeed, FrontWheelSpeed;

    /// <summary>Carcass wind-up ψ, rad.</summary>
    public double Windup;

    /// <summary>Rear damper: length change since standing, m, positive longer; speed, m/s; table force, N, positive pushing apart.</summary>
    public double RearDamperTravel, RearDamperSpeed, RearDamperForce;

    /// <summary>Way left of the rear damper to its top stop, m; negative in the stop.</summary>
    public double RearTopLeft;

    /// <summary>Rear spring force, N, positive pushing apart.</summary>
    public double RearSpringForce;

    /// <summary>Rear stops, N, not negative.</summary>
    public double RearTopForce, RearBottomForce;

    /// <summary>Front damper: speed, m/s; table force, N, positive pushing apart.</summary>
    public double FrontDamperSpeed, FrontDamperForce;

    /// <summary>Way left of the front damper to its top stop, m; negative in the stop.</summary>
    public double FrontTopLeft;

    /// <summary>Front spring force, N, positive pushing apart.</summary>
    public double FrontSpringForce;

    /// <summary>Front stops, N, not negative.</summary>
    public double FrontTopForce, FrontBottomForce;

    /// <summary>Pull in the links, N; not a number for a ladder bar.</summary>
    public double UpperLinkForce, LowerLinkForce;

    /// <summary>Moment on the housing that its own balance leaves over, N·m: zero but for rounding.</summary>
    public double HousingMomentLeft;

    /// <summary>Change of the rear tyre load by path, N: links, springs, dampers with stops, other.</summary>
    public double LoadViaLinks, LoadViaSprings, LoadViaDampers, LoadViaOther;

    /// <summary>Percent anti-squat at this instant.</summary>
    public double AntiSquatPercent;

    /// <summary>Instant centre ahead of the rear wheel centre and above the ground, m; not finite with parallel bars.</summary>
    public double InstantCentreAhead, InstantCentreUp;

    /// <summary>Change of the housing's angle relative to the body since standing, rad, pinion nose up positive; its rate, rad/s.</summary>
    public double PinionChange, PinionRate;

    /// <summary>Force of the wheelie bar on the housing, N.</summary>
    public double WheelieBarForce;

    /// <summary>Engine speed, rad/s; not a number without an engine.</summary>
    public double EngineSpeed;

    /// <summary>Gear in, from 1; 0 during a shift; not a number without an engine.</summary>
    public double Gear;

    /// <summary>Axle torque, N·m.</summary>
    public double AxleTorque;

    /// <summary>Driveshaft torque, N·m; not a number when the final drive is not known.</summary>
    public double DriveshaftTorque;

    /// <summary>Work of the axle torque and energy dissipated since release, J.</summary>
    public double Work, Dissipated;

    /// <summary>Energy stored plus dissipated less work, J: zero but for the error of integration.</summary>
    public double EnergyResidual;
}
