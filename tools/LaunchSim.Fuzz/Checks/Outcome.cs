using LaunchSim.Fuzz.Cases;

namespace LaunchSim.Fuzz.Checks;

/// <summary>What came of a case.</summary>
internal sealed record Outcome
{
    /// <summary>The case.</summary>
    public required FuzzCase Case { get; init; }

    /// <summary>The folder in which it ran, as it was left.</summary>
    public required string Folder { get; init; }

    /// <summary>The arguments as the program got them.</summary>
    public required IReadOnlyList<string> Arguments { get; init; }

    /// <summary>What the program returned; null when an exception came out of it.</summary>
    public required int? Code { get; init; }

    /// <summary>The exception that came out of it.</summary>
    public Exception? Thrown { get; init; }

    /// <summary>The output stream.</summary>
    public required string Output { get; init; }

    /// <summary>The error stream.</summary>
    public required string Error { get; init; }

    /// <summary>How long it took.</summary>
    public required TimeSpan Took { get; init; }

    /// <summary>The files that the command made or replaced, by their names within the folder, in order.</summary>
    public required IReadOnlyList<KeyValuePair<string, byte[]>> Written { get; init; }

    /// <summary>Whether an option was given.</summary>
    /// <param name="option">Its name.</param>
    public bool Has(string option) => Case.Arguments.Contains(option);

    /// <summary>Whether a launch was really solved, to its end or to where it stopped.</summary>
    public bool Ran => Case.Command == "run" && (Error.Contains("The run stopped at", StringComparison.Ordinal) || (Code == 0 && !AsksForHelp));

    /// <summary>Whether it asked for help or the like, for which nothing else is done.</summary>
    public bool AsksForHelp => Case.Arguments.Any(argument => argument is "--help" or "-h" or "-?" or "/?" or "--version" || argument.StartsWith('['));
}
