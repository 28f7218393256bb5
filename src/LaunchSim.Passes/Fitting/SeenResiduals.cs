using LaunchSim.Launch;
using LaunchSim.Passes.Seen;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Vehicle;

namespace LaunchSim.Passes.Fitting;

/// <summary>
/// What was seen of a pass as residuals: predicted less seen in standard deviations of what was seen; of bounds and words only as
/// far as they are broken. Who saw one release saw it up to a frame late for all facts alike: that is a clock of its own.
/// </summary>
internal sealed class SeenResiduals
{
    private const string FirstUp = "first_up";

    private readonly SeenFacts _seen;
    private readonly string[] _keys;

    private SeenResiduals(SeenFacts seen, string[] keys) => (_seen, _keys) = (seen, keys);

    /// <summary>How many.</summary>
    public int Count => _keys.Length;

    /// <summary>By how much more than their own doubt the facts scatter about the best prediction so far; 1 to begin with.</summary>
    public double Inflation { get; set; } = 1;

    /// <summary>Whether anything was seen, shake left aside.</summary>
    public bool Any => _keys.Length > 0;

    /// <summary>Whether a common error of the release can be told from the facts' own: with two times or more.</summary>
    public bool HasClock => _seen.Moments().Count(one => one.Moment.Bound == SeenBound.At) > 1;

    /// <summary>One standard deviation of the release as it was seen, s: anywhere within one frame.</summary>
    public double ClockSd => SeenDoubt.OfUniform(_seen.Together / 2);

    public static SeenResiduals Of(SeenFacts seen) => new(seen,
    [
        .. seen.FirstUp is null ? Array.Empty<string>() : [FirstUp],
        .. seen.Moments().Select(one => one.Key),
        .. seen.Marks.Select((_, i) => FormattableString.Invariant($"times[{i}]")),
    ]);

    /// <summary>The residuals.</summary>
    /// <param name="launch">The predicted launch.</param>
    /// <param name="settings">What it was run with.</param>
    /// <param name="shift">Seconds by which the seen release lies after the true one.</param>
    /// <param name="residuals">Receives them.</param>
    public void Write(LaunchSolution launch, RunSettings settings, double shift, Span<double> residuals)
    {
        if (!Any)
        {
            return;
        }

        IReadOnlyList<SeenComparison> all = SeenPrediction.Of(launch, settings, _seen);
        for (int i = 0; i < _keys.Length; i++)
        {
            // What tyres that stay down cannot do has no comparison: it is as good as kept.
            residuals[i] = all.FirstOrDefault(one => one.Key == _keys[i]) is not { IsRepeated: false } fact ? 0
                : (fact.Difference - (fact.Kind == SeenKind.Time && fact.Mark is null ? shift : 0)) / (fact.Sd * Inflation);
        }
    }
}
