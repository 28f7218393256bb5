using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Varying;
using LaunchSim.Studies.Aims;

namespace LaunchSim.Studies.Next;

/// <summary>One setting put to another of its values.</summary>
/// <param name="Setting">The setting.</param>
/// <param name="Place">Which of its values, from 0.</param>
/// <param name="Steps">How many values away from the present one; negative towards the first.</param>
public sealed record SingleChange(Variation Setting, int Place, int Steps)
{
    /// <summary>The value.</summary>
    public ScenarioEdit Edit => Setting.Values[Place];
}

/// <summary>What one change or two together do.</summary>
public sealed record NextChange
{
    /// <summary>The changes: one, or two of different settings.</summary>
    public required IReadOnlyList<SingleChange> Changes { get; init; }

    /// <summary>The changed scenario; null when it is refused.</summary>
    public required Scenario? Scenario { get; init; }

    /// <summary>The figures in the order of the aims' keys, with the grip of the present pressures; not a number where there is none.</summary>
    public required double[] Figures { get; init; }

    /// <summary>The score with the grip of the present pressures: what changes are ranked by.</summary>
    public required AimScore Score { get; init; }

    /// <summary>The score with what the entered grip-for-pressure slope adds.</summary>
    public required AimScore WithSlope { get; init; }

    /// <summary>Why the launch did not come to its end, or the car was refused; null when all is well.</summary>
    public required string? Trouble { get; init; }

    /// <summary>Whether a pressure with a grip slope is changed, so that the two scores may differ.</summary>
    public bool HasSlope => Score.CompareTo(WithSlope) != 0;

    /// <summary>How long the change takes, minutes; null when nobody said.</summary>
    public double? Minutes => Changes.All(change => change.Setting.Minutes is not null) ? Changes.Sum(change => change.Setting.Minutes) : null;
}
