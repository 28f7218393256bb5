namespace LaunchSim.Scenarios.Typical;

/// <summary>How firm a damper without a dyno sheet is taken to be: by feel when the car is pushed down at the corner and let go.</summary>
public enum DamperFamily
{
    /// <summary>Swings on once or twice after a push.</summary>
    Soft,

    /// <summary>Comes back and stops.</summary>
    Medium,

    /// <summary>Creeps back.</summary>
    Firm,
}
