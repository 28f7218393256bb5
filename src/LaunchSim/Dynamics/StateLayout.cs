namespace LaunchSim.Dynamics;

/// <summary>Where each state stands in the flat state, and the scale that turns relative tolerance into absolute.</summary>
public static class StateLayout
{
    /// <summary>x of the sprung CG along the track, ground frame, m.</summary>
    public const int X = 0;

    /// <summary>z of the sprung CG over the ground, m.</summary>
    public const int Z = 1;

    /// <summary>Pitch θ of the body since measured, rad, nose up positive.</summary>
    public const int Pitch = 2;

    /// <summary>The linkage's coordinate λ since measured, rad.</summary>
    public const int Linkage = 3;

    /// <summary>Front travel s since measured, m, positive in bump.</summary>
    public const int FrontTravel = 4;

    /// <summary>Rates of the five coordinates follow them in the same order: x', m/s.</summary>
    public const int XRate = 5;

    /// <summary>z', m/s.</summary>
    public const int ZRate = 6;

    /// <summary>θ', rad/s.</summary>
    public const int PitchRate = 7;

    /// <summary>λ', rad/s.</summary>
    public const int LinkageRate = 8;

    /// <summary>s', m/s.</summary>
    public const int FrontTravelRate = 9;

    /// <summary>Spin ω of the rear rims, rad/s, forward rolling positive.</summary>
    public const int RimSpin = 10;

    /// <summary>Spin Ω of the rear belts, rad/s.</summary>
    public const int BeltSpin = 11;

    /// <summary>Carcass wind-up ψ, rad.</summary>
    public const int Windup = 12;

    /// <summary>Contact deflection u of the rear tyres, m.</summary>
    public const int RearDeflection = 13;

    /// <summary>Spin Ω_f of the front wheels, rad/s.</summary>
    public const int FrontSpin = 14;

    /// <summary>Contact deflection u of the front tyres, m.</summary>
    public const int FrontDeflection = 15;

    /// <summary>Engine speed ω_e, rad/s; constant without an engine.</summary>
    public const int EngineSpeed = 16;

    /// <summary>Work of the axle torque since release, J.</summary>
    public const int Work = 17;

    /// <summary>Energy dissipated since release, J.</summary>
    public const int Dissipated = 18;

    /// <summary>Number of states.</summary>
    public const int Count = 19;

    /// <summary>Number of states, from the first, that <see cref="Motion"/> needs, rounded up to whole registers.</summary>
    public const int MotionCount = 16;

    /// <summary>
    /// Scale of each state, in its own unit: what counts as one in a launch that puts about <see cref="FullEnergy"/> into
    /// the car. Chosen so that the energy residual stays well under the tolerance's share of the work.
    /// </summary>
    private static readonly double[] FullScales =
    [
        4, 0.4, 0.4, 0.4, 0.4,
        4, 2, 2, 2, 2,
        40, 10, 0.4, 0.04, 40, 0.04,
        400, 400, 400,
    ];

    private const double FullEnergy = 1e5;
    private const double SmallestShare = 1e-3;

    /// <summary>
    /// The scales that turn relative tolerance into absolute, for a launch of about this energy: they shrink with the
    /// speeds of a gentle launch, so that its ledger closes as well as that of a hard one.
    /// </summary>
    /// <param name="energy">Work that the axle torque will do, about, J.</param>
    public static double[] Scales(double energy)
    {
        double share = Math.Clamp(Math.Sqrt(Math.Max(energy, 0) / FullEnergy), SmallestShare, 1);
        return Array.ConvertAll(FullScales, scale => scale * share);
    }
}
