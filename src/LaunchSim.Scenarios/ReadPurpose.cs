namespace LaunchSim.Scenarios;

/// <summary>What a scenario is read for: decides whether a missing value is an error.</summary>
public enum ReadPurpose
{
    /// <summary>A run: everything that a run needs has to be there.</summary>
    Run,

    /// <summary>The side view: wheelbase, scales, height of the centre of gravity and the rear linkage suffice.</summary>
    Geometry,

    /// <summary>To see what is in it: as for the side view, and what a run lacks is listed.</summary>
    Check,
}
