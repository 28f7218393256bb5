namespace LaunchSim.Fuzz.Cases;

/// <summary>One call of the program with all that it finds on the disk; the seed decides all of it.</summary>
internal sealed record FuzzCase
{
    /// <summary>Stands for the case's folder in <see cref="Arguments"/>, whose real name each run of the fuzzer chooses anew.</summary>
    public const string Folder = "{folder}";

    /// <summary>The seed.</summary>
    public required long Seed { get; init; }

    /// <summary>The command under which it is counted.</summary>
    public required string Command { get; init; }

    /// <summary>The file that the command is there to change; empty when it has to leave everything alone.</summary>
    public string Changes { get; init; } = "";

    /// <summary>How many times longer than others it may take.</summary>
    public int Patience { get; init; } = 1;

    /// <summary>What comes after the program's name.</summary>
    public required IReadOnlyList<string> Arguments { get; init; }

    /// <summary>What lies in the folder before.</summary>
    public required IReadOnlyList<CaseFile> Files { get; init; }

    /// <summary>How the case came about, step by step, for whoever has to understand it.</summary>
    public required IReadOnlyList<string> Steps { get; init; }

    /// <summary>Whether it may have numbers beyond all that a car could have, with which sums lose digits.</summary>
    public bool IsWild { get; init; }

    /// <summary>The arguments for a folder.</summary>
    /// <param name="folder">The case's folder.</param>
    public string[] ArgumentsIn(string folder) => [.. Arguments.Select(argument => argument.Replace(Folder, folder, StringComparison.Ordinal))];

    /// <summary>The folder as it is before the command.</summary>
    /// <param name="folder">A folder that is not there yet.</param>
    public void Make(string folder)
    {
        _ = Directory.CreateDirectory(folder);
        foreach (CaseFile file in Files)
        {
            file.Make(folder);
        }
    }
}
