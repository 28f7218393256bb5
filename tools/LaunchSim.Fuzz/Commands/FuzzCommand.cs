using LaunchSim.Fuzz.Cases;

namespace LaunchSim.Fuzz.Commands;

/// <summary>A command of the program as cases call it.</summary>
/// <param name="Name">Its name; a command of a command with both names, a blank between.</param>
/// <param name="Weight">How often it is taken, against the others.</param>
/// <param name="Files">How many scenario files it is given.</param>
/// <param name="Options">All its options.</param>
internal sealed record FuzzCommand(string Name, int Weight, Func<Dice, int> Files, params FuzzOption[] Options)
{
    /// <summary>An argument that is no scenario file; null for none.</summary>
    public Func<Draft, string>? Argument { get; init; }

    /// <summary>Whether the scenario files stand on the line; otherwise they are there for what an argument names.</summary>
    public bool NamesFiles { get; init; } = true;

    /// <summary>The file that it is there to change; empty when it has to leave everything alone.</summary>
    public string Changes { get; init; } = "";

    /// <summary>A second such argument; null for none.</summary>
    public Func<Draft, string>? Second { get; init; }

    /// <summary>Whether it runs many launches: they are kept short, and it may take as many times longer.</summary>
    public bool IsStudy { get; init; }

    /// <summary>
    /// Whether it goes on until it is ended: it is then asked to end before it begins, which leaves everything that it refuses
    /// to be tried, and nothing of what it does.
    /// </summary>
    public bool RunsUntilEnded { get; init; }
}

/// <summary>An option of a command.</summary>
/// <param name="Name">Its name, with the hyphens.</param>
/// <param name="Share">The share of cases that have it, 0 to 1.</param>
/// <param name="Sound">A value with which the command goes on; null when the option takes none.</param>
/// <param name="Odd">A value that may be refused; null when the option takes none.</param>
internal sealed record FuzzOption(string Name, double Share, Func<Draft, string>? Sound = null, Func<Draft, string>? Odd = null);
