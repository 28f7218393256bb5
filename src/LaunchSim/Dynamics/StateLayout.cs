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

    /// <summary>
    /// Scale of each state, in its own unit: a movement that matters in a launch. The two ledger states are as finely
    /// resolved as the motion that feeds them.
    /// </summary>
    public static IReadOnlyList<double> Scales { get; } =
    [
        1, 0.1, 0.1, 0.1, 0.1,
        1, 0.5, 0.5, 0.5, 0.5,
        10, 10, 0.1, 0.01, 10, 0.01,
        100, 1000, 1000,
    ];
}
