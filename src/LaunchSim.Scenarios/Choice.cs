namespace LaunchSim.Scenarios;

/// <summary>Something that can be changed at the track.</summary>
public sealed record Choice
{
    /// <summary>The path of what is changed, such as <c>rear.damper.extension.set</c>.</summary>
    public required string Path { get; init; }

    /// <summary>The values it may take, each in the notation of the file, ready for <see cref="Scenario.With(IEnumerable{ValueTuple{string, string}})"/>; at least one.</summary>
    public required IReadOnlyList<string> Values { get; init; }

    /// <summary>How long the change takes, minutes; 0 or more.</summary>
    public required double Minutes { get; init; }
}
