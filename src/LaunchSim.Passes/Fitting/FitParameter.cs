using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Doubtful;

namespace LaunchSim.Passes.Fitting;

/// <summary>
/// A number that a fit may move: one of a scenario's doubtful numbers, or by how many clicks an adjuster is off its sheets.
/// It is counted in standard deviations of what the file knows of it, so that the file's doubts are the prior.
/// </summary>
/// <param name="Number">The number as the fitted file has it.</param>
/// <param name="IsClicks">Whether it is an adjuster's offset in clicks.</param>
public sealed record FitParameter(DoubtfulNumber Number, bool IsClicks)
{
    // Half the doubt is one standard deviation.
    private const double Share = 0.5;

    /// <summary>Its path, such as <c>car.cg_height</c>; of an adjuster that of the click that is set.</summary>
    public string Path => Number.Path;

    /// <summary>What it is, in words.</summary>
    public string Words => IsClicks ? "clicks that the adjuster is off its sheets" : Number.Entry?.What ?? Number.Path;

    /// <summary>The changes that move it.</summary>
    /// <param name="deviations">By how many standard deviations.</param>
    public IReadOnlyList<ScenarioEdit> Edits(double deviations) => Number.Edits(Share * deviations);

    /// <summary>The same number of another set-up of the car.</summary>
    /// <param name="setUp">The set-up.</param>
    /// <returns>Null when it has none at this path, as when another part is on the car.</returns>
    public FitParameter? In(Scenario setUp)
    {
        DoubtfulNumber? own = IsClicks ? ClickOffsets.Of(setUp, Path[..^4]) : DoubtfulNumbers.Of(setUp).FirstOrDefault(number => number.Path == Path);
        return own is null ? null : this with { Number = own };
    }
}
