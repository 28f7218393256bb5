namespace LaunchSim.Scenarios.Recorded;

/// <summary>What a person saw at single instants of a pass and wrote down. Lengths count from the standing car.</summary>
public sealed record HandMarks
{
    /// <summary>What they are called: their name, or that of the file.</summary>
    public required string Name { get; init; }

    /// <summary>The file that they came from.</summary>
    public required string SourceFile { get; init; }

    /// <summary>The marks in the order of the file, at least one.</summary>
    public required IReadOnlyList<HandMark> Marks { get; init; }

    /// <summary>How many frames a second the video has; null when all marks have times.</summary>
    public double? FramesPerSecond { get; init; }

    /// <summary>The release on the marks' clock, s; null when it has to be found.</summary>
    public double? Release { get; init; }

    /// <summary>How far off that may be, s, nineteen times in twenty; null when nobody said.</summary>
    public double? ReleaseDoubt { get; init; }

    /// <summary>How far off all lengths may be together, as a share, nineteen times in twenty.</summary>
    public double ParallaxDoubt { get; init; }
}

/// <summary>What was seen at one instant.</summary>
/// <param name="Time">On the marks' clock, s.</param>
/// <param name="Values">What was seen.</param>
/// <param name="Path">Its path in the file, such as <c>marks[0]</c>.</param>
/// <param name="At">Where it was written.</param>
public sealed record HandMark(double Time, IReadOnlyList<MarkedValue> Values, string Path, WrittenPlace At);

/// <summary>One value that was seen.</summary>
/// <param name="Quantity">The key of what it is.</param>
/// <param name="Value">SI.</param>
/// <param name="Doubt">How far off it may be, SI, nineteen times in twenty; null when nobody said.</param>
public sealed record MarkedValue(string Quantity, double Value, double? Doubt);

/// <summary>What came of reading marks.</summary>
/// <param name="Marks">The marks; null when there is an error.</param>
/// <param name="Errors">All errors.</param>
public sealed record HandMarksResult(HandMarks? Marks, IReadOnlyList<Diagnostic> Errors);
