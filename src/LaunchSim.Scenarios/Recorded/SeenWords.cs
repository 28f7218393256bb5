namespace LaunchSim.Scenarios.Recorded;

/// <summary>Which end is seen to move first.</summary>
public enum FirstUp
{
    /// <summary>The front.</summary>
    Front,

    /// <summary>The rear.</summary>
    Rear,

    /// <summary>Both, within one frame.</summary>
    Together,
}

/// <summary>How the rear tyres shook. The model has no tyre shake: this is kept and shown, nothing is fitted to it.</summary>
public enum Shake
{
    /// <summary>They did not.</summary>
    None,

    /// <summary>A little.</summary>
    Light,

    /// <summary>So that it cost something.</summary>
    Hard,
}
