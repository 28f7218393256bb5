namespace LaunchSim.Dynamics;

/// <summary>
/// The part of an <see cref="Observation"/> that places and speeds alone tell, without the equations of motion: several
/// times as fast, the same to the bit. What studies of many launches read. SI units, per side where observations are.
/// </summary>
public struct Motion
{
    /// <summary>Place of the rear wheel centre along the track X, m.</summary>
    public double RearWheelPlace;

    /// <summary>Pitch change since standing, rad, nose up positive.</summary>
    public double Pitch;

    /// <summary>Height change over the ground of the body-fixed point at the standing wheel centre, m.</summary>
    public double FrontRise, RearRise;

    /// <summary>Separation at the rear axle, m, positive when body and axle move apart.</summary>
    public double Separation;

    /// <summary>Front travel, m, positive in bump; the front gap is its negative.</summary>
    public double FrontTravel;

    /// <summary>Rear tyre load F_z, axle, N.</summary>
    public double RearLoad;

    /// <summary>Available rear grip μ·F_z, axle, N.</summary>
    public double RearLimit;

    /// <summary>Rear slip ratio u/σ.</summary>
    public double RearSlipRatio;

    /// <summary>Rear stops, N per side, not negative.</summary>
    public double RearTopForce, RearBottomForce;

    /// <summary>Front stops, N per side, not negative.</summary>
    public double FrontTopForce, FrontBottomForce;
}
