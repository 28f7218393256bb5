using LaunchSim.Scenarios.Paths;
using LaunchSim.Scenarios.Schema;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Typical;

/// <summary>A value that a run needs and that a file does not have, and what may stand in its place.</summary>
public sealed record LackingValue
{
    /// <summary>Its path.</summary>
    public required string Path { get; init; }

    /// <summary>What it is, without the final stop; of a word what it may be.</summary>
    public required string What { get; init; }

    /// <summary>What the register knows of it; null for names and words.</summary>
    public required RegisterEntry? Entry { get; init; }

    /// <summary>The typical value in the file's units; null when it has to be measured, or when <see cref="Needs"/> has to be known first.</summary>
    public required string? Typical { get; init; }

    /// <summary>Measured values that have to be known before there is a typical one.</summary>
    public required IReadOnlyList<string> Needs { get; init; }

    /// <summary>All that a run lacks, in the order of the file's reference.</summary>
    /// <param name="scenario">A part file.</param>
    public static IReadOnlyList<LackingValue> Of(Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        var car = KnownCar.Of(scenario);
        return [.. scenario.MissingForRun.Select(path => Of(path, car, scenario.UnitSystem))];
    }

    private static LackingValue Of(string path, KnownCar car, UnitSystem system)
    {
        RegisterEntry? entry = TypicalRegister.Find(path);
        SchemaKey? key = ScenarioPath.Known.GetValueOrDefault(path);
        return new LackingValue
        {
            Path = path,
            What = key?.Kind is WordKind word ? string.Join(" or ", word.Words) : key?.What ?? "",
            Entry = entry,
            Typical = (entry as TypicalValue)?.For(car)?.Text(system),
            Needs = (entry as TypicalValue)?.Lacks(car) ?? [],
        };
    }
}
