namespace LaunchSim.Scenarios.Varying;

/// <summary>One setting of a study and the values that it takes.</summary>
public sealed record Variation
{
    /// <summary>The path that is varied, as it was asked for.</summary>
    public required string Path { get; init; }

    /// <summary>The values in the order in which they were written; at least one, none twice.</summary>
    public required IReadOnlyList<ScenarioEdit> Values { get; init; }

    /// <summary>Which of the values the scenario has as it stands; −1 when none of them.</summary>
    public required int Present { get; init; }

    /// <summary>How long a change takes, minutes; null when nobody said.</summary>
    public double? Minutes { get; init; }

    /// <summary>Whether the values are numbers in rising or falling order of one unit, to be drawn along an axis.</summary>
    public bool IsScale => Values.All(value => value.Quantity is { Count: 1 });
}
