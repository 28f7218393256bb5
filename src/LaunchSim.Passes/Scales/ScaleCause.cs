namespace LaunchSim.Passes.Scales;

/// <summary>What a number of the scale sheet was read off: why the centre of gravity is in doubt.</summary>
public enum ScaleCause
{
    /// <summary>The scales: every load.</summary>
    Scales,

    /// <summary>The tape that tells how high an axle was lifted.</summary>
    Height,

    /// <summary>The tape along the wheelbase.</summary>
    Wheelbase,

    /// <summary>The height of the wheel centres on the level: tyres.</summary>
    Radius,
}
