using LaunchSim.Scenarios.Paths;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios;

/// <summary>
/// A value to be put at a path of a scenario, taken apart once: for the many variations of a study. Immutable; serves any
/// number of scenarios and threads.
/// </summary>
public sealed class ScenarioEdit
{
    internal ScenarioEdit(ScenarioPath path, Quantity quantity) => (Target, Quantity) = (path, quantity);

    internal ScenarioEdit(ScenarioPath path, string word) => (Target, Word) = (path, word);

    /// <summary>The path, such as <c>rear.spring.rate</c>.</summary>
    public string Path => Target.Text;

    /// <summary>The value in the notation of the file.</summary>
    public string Value => Word ?? Quantity!.ToString();

    /// <summary>The number or numbers; null when the value is a word or the name of a hole.</summary>
    public Quantity? Quantity { get; }

    internal ScenarioPath Target { get; }

    internal string? Word { get; }

    /// <inheritdoc/>
    public override string ToString() => $"{Path}={Value}";
}
