using LaunchSim.Scenarios.Typical;

namespace LaunchSim.Scenarios.Doubtful;

/// <summary>
/// A number of a scenario that may be off by its doubt, and how to move it: a single number, one of a point's two, a row as
/// a whole, the rows of an adjuster's clicks together (they come off one dyno), or all holes of a bracket together (they
/// share the tape's error).
/// </summary>
public sealed record DoubtfulNumber
{
    private readonly Func<double, IReadOnlyList<ScenarioEdit>> _moved;

    internal DoubtfulNumber(Func<double, IReadOnlyList<ScenarioEdit>> moved) => _moved = moved;

    /// <summary>Its path, such as <c>rear.spring.rate</c>, <c>rear.linkage.upper.body.up</c> or <c>rear.damper.extension.clicks</c>.</summary>
    public required string Path { get; init; }

    /// <summary>What the register knows of it; null when it knows nothing.</summary>
    public required RegisterEntry? Entry { get; init; }

    /// <summary>The number with its doubt, in the file's units: <c>2.3 ±0.35</c>. Of clicks the doubt alone.</summary>
    public required string Text { get; init; }

    /// <summary>The doubt: nineteen times in twenty within this much; in percent for rows, else in SI.</summary>
    public required Doubt Doubt { get; init; }

    /// <summary>Whether the doubt was entered; otherwise it is the usual one of such a number.</summary>
    public required bool IsEntered { get; init; }

    /// <summary>The changes that move it, for <see cref="Scenario.With(IEnumerable{ValueTuple{string, string}})"/>.</summary>
    /// <param name="share">By how much of its doubt: 1 is up by all of it, −0.5 down by half.</param>
    /// <returns>Paths and values in the notation of the file, exact to the last digit.</returns>
    public IReadOnlyList<(string Path, string Value)> Moved(double share) => [.. _moved(share).Select(edit => (edit.Path, edit.Value))];

    /// <summary>The same as edits.</summary>
    /// <param name="share">By how much of its doubt.</param>
    public IReadOnlyList<ScenarioEdit> Edits(double share) => _moved(share);
}
