namespace LaunchSim.Scenarios;

/// <summary>The adjuster of one damper direction.</summary>
public sealed record ClickInfo
{
    /// <summary><c>soft</c> or <c>stiff</c>: the end from which the maker counts; null when the file does not say. Only words: it changes no force.</summary>
    public string? CountFrom { get; init; }

    /// <summary>The click that is set; within the entered ones.</summary>
    public required double Set { get; init; }

    /// <summary>The clicks with forces entered, rising.</summary>
    public required IReadOnlyList<double> Entered { get; init; }
}
