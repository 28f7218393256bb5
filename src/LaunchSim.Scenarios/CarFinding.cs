namespace LaunchSim.Scenarios;

/// <summary>Something that only shows once the car is put together: a linkage that does not close, a car that cannot stand.</summary>
public sealed record CarFinding
{
    /// <summary>The path of the value to look at first, such as <c>rear.linkage</c>; where it is written becomes the place of the error.</summary>
    public required string Path { get; init; }

    /// <summary>Whether the car cannot be used, or only deserves a look.</summary>
    public Severity Severity { get; init; } = Severity.Error;

    /// <summary>What was found, in words that follow 'found'.</summary>
    public required string Found { get; init; }

    /// <summary>What is allowed; may be empty.</summary>
    public string Allowed { get; init; } = "";

    /// <summary>How to mend it; may be empty.</summary>
    public string Mend { get; init; } = "";
}
