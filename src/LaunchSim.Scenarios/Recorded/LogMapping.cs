namespace LaunchSim.Scenarios.Recorded;

/// <summary>How a log is to be read: its rows, its clock, and which column is which quantity.</summary>
public sealed record LogMapping
{
    /// <summary>What it is called: its name, or that of its file.</summary>
    public required string Name { get; init; }

    /// <summary>The file that it came from.</summary>
    public required string SourceFile { get; init; }

    /// <summary>How rows are written.</summary>
    public required LogTable Table { get; init; }

    /// <summary>Which instant a row belongs to.</summary>
    public required LogClock Clock { get; init; }

    /// <summary>The columns that are read, at least one.</summary>
    public required IReadOnlyList<LogColumn> Columns { get; init; }

    /// <summary>How far off all lengths of a camera may be together, as a share, nineteen times in twenty; 0 without a camera.</summary>
    public double ParallaxDoubt { get; init; }
}

/// <summary>How the rows of a log are written. What was left open is told from the file itself.</summary>
/// <param name="Separator">What parts the cells; null when left open.</param>
/// <param name="DecimalComma">Whether decimals stand after a comma; null when left open.</param>
/// <param name="Comment">With what lines begin that are no rows; null for nothing.</param>
/// <param name="HasHeader">Whether a row names the columns.</param>
/// <param name="HeaderLine">The line of that row, from 1; null when it is looked for by the names.</param>
/// <param name="Missing">Words that stand for no value.</param>
public sealed record LogTable(char? Separator, bool? DecimalComma, char? Comment, bool HasHeader, int? HeaderLine, IReadOnlyList<string> Missing)
{
    /// <summary>Everything left open.</summary>
    public static LogTable Open { get; } = new(null, null, null, true, null, []);
}

/// <summary>Which instant a row belongs to.</summary>
/// <param name="Release">The release on this clock, s; null when it has to be found.</param>
/// <param name="ReleaseDoubt">How far off that may be, s, nineteen times in twenty; null when nobody said.</param>
public abstract record LogClock(double? Release, double? ReleaseDoubt);

/// <summary>A column has the time.</summary>
/// <param name="Column">Its name.</param>
/// <param name="Seconds">Seconds of one of its unit.</param>
/// <param name="IsClock">Whether it is written as hours, minutes and seconds with colons between.</param>
/// <param name="Release">The release on this clock, s; null when it has to be found.</param>
/// <param name="ReleaseDoubt">How far off that may be, s.</param>
/// <param name="At">Where it was written.</param>
public sealed record TimeColumn(string Column, double Seconds, bool IsClock, double? Release, double? ReleaseDoubt, WrittenPlace At) : LogClock(Release, ReleaseDoubt);

/// <summary>A column has the number of a video's frame.</summary>
/// <param name="Column">Its name.</param>
/// <param name="FramesPerSecond">How many frames a second.</param>
/// <param name="Release">The release, s from frame 0; null when it has to be found.</param>
/// <param name="ReleaseDoubt">How far off that may be, s.</param>
/// <param name="At">Where it was written.</param>
public sealed record FrameColumn(string Column, double FramesPerSecond, double? Release, double? ReleaseDoubt, WrittenPlace At) : LogClock(Release, ReleaseDoubt);

/// <summary>Rows come at a fixed rate, the first at 0.</summary>
/// <param name="Rate">How many a second.</param>
/// <param name="Release">The release on this clock, s; null when it has to be found.</param>
/// <param name="ReleaseDoubt">How far off that may be, s.</param>
public sealed record FixedRate(double Rate, double? Release, double? ReleaseDoubt) : LogClock(Release, ReleaseDoubt);

/// <summary>One column of a log: what it measures, and what its numbers are.</summary>
public sealed record LogColumn
{
    /// <summary>Its name in the log, or #3 for the third one.</summary>
    public required string Column { get; init; }

    /// <summary>The key of what it measures.</summary>
    public required string Quantity { get; init; }

    /// <summary>The unit as written, or that of a pixel's length.</summary>
    public required string Unit { get; init; }

    /// <summary>What one of the column's numbers is in SI: scale, unit and direction together; of a speed over the ground in m/s.</summary>
    public required double Factor { get; init; }

    /// <summary>What one of the unit is in SI, above 0, without scale and direction.</summary>
    public required double UnitFactor { get; init; }

    /// <summary>The reading of the standing car, SI, in the column's own direction; null when it was left out.</summary>
    public double? Zero { get; init; }

    /// <summary>Turns of the driveshaft for one of the axle; null when it was left out or does not apply.</summary>
    public double? Ratio { get; init; }

    /// <summary>Whether it is a wheel's turning logged as a speed over the ground.</summary>
    public bool IsRolling { get; init; }

    /// <summary>Rolling radius, m; null when it was left out or does not apply.</summary>
    public double? Radius { get; init; }

    /// <summary>One standard deviation of a single value, SI; null when it was left out.</summary>
    public double? Noise { get; init; }

    /// <summary>Whether its numbers are rows of a picture.</summary>
    public bool IsPixels { get; init; }

    /// <summary>How far off a pixel's length may be, as a share, nineteen times in twenty.</summary>
    public double PixelDoubt { get; init; }

    /// <summary>Where its name was written.</summary>
    public required WrittenPlace At { get; init; }

    /// <summary>Where its unit was written.</summary>
    public required WrittenPlace UnitAt { get; init; }

    /// <summary>Its path in the mapping, such as <c>columns[0]</c>.</summary>
    public required string Path { get; init; }
}

/// <summary>What came of reading a mapping.</summary>
/// <param name="Mapping">The mapping; null when there is an error.</param>
/// <param name="Errors">All errors.</param>
public sealed record MappingResult(LogMapping? Mapping, IReadOnlyList<Diagnostic> Errors);
