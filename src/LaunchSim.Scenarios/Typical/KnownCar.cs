using LaunchSim.Scenarios.Paths;
using LaunchSim.Scenarios.Reading;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Typical;

/// <summary>What is known of a car so far: entered values by path, and hints that have no place in the file. Immutable.</summary>
public sealed class KnownCar
{
    private readonly Func<string, Quantity?> _find;
    private readonly Func<string, string?> _word;

    /// <summary>What was gathered value by value.</summary>
    /// <param name="values">Numbers, rows and points by path.</param>
    /// <param name="words">Words by path, such as <c>driveline.type</c>; null for none.</param>
    /// <param name="hints">What has no place in the file; null for none.</param>
    public KnownCar(IReadOnlyDictionary<string, Quantity> values, IReadOnlyDictionary<string, string>? words = null, TypicalHints? hints = null)
        : this(path => values.GetValueOrDefault(path), path => words?.GetValueOrDefault(path), hints) => ArgumentNullException.ThrowIfNull(values);

    private KnownCar(Func<string, Quantity?> find, Func<string, string?> word, TypicalHints? hints) =>
        (_find, _word, Hints) = (find, word, hints ?? new TypicalHints());

    /// <summary>What has no place in the file.</summary>
    public TypicalHints Hints { get; }

    /// <summary>What a scenario or a part file holds.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="hints">What has no place in the file; null for none.</param>
    public static KnownCar Of(Scenario scenario, TypicalHints? hints = null)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return new KnownCar(scenario.Find, scenario.FindText, hints);
    }

    internal static KnownCar Of(BoundValues values) => new(
        path => ScenarioPath.Resolve(path, out _) is { } resolved ? ScenarioParts.Quantity(values, resolved) : null,
        path => values.Find(path)?.Text,
        null);

    /// <summary>The entered number, row or point at a path; null when it is not known.</summary>
    /// <param name="path">The path.</param>
    public Quantity? Find(string path) => _find(path);

    /// <summary>The entered word at a path; null when it is not known.</summary>
    /// <param name="path">The path.</param>
    public string? FindWord(string path) => _word(path);
}
