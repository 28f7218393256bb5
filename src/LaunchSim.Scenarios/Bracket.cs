using LaunchSim.Vehicle;

namespace LaunchSim.Scenarios;

/// <summary>A bracket with holes, and the one in use.</summary>
public sealed record Bracket
{
    /// <summary>Holes by name in the order of the file, at least one.</summary>
    public required IReadOnlyList<KeyValuePair<string, Point>> Holes { get; init; }

    /// <summary>Name of the hole in use.</summary>
    public required string Use { get; init; }
}
