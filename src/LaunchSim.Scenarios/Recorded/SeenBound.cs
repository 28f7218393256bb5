namespace LaunchSim.Scenarios.Recorded;

/// <summary>What a seen moment says of when it happened.</summary>
public enum SeenBound
{
    /// <summary>At that time, within its doubt.</summary>
    At,

    /// <summary>Before that time.</summary>
    Before,

    /// <summary>After that time.</summary>
    After,

    /// <summary>It never happened, as long as anybody looked.</summary>
    Never,
}
