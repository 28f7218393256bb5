using LaunchSim.Vehicle;

namespace LaunchSim.Scenarios.Reading.Rules;

/// <summary>A trace of a size that can be held.</summary>
internal static class RunRules
{
    private const double MostRows = 2e6;

    public static void Check(BoundValues values, Findings findings)
    {
        double sample = values.Number("run.sample", 1e-3);
        double duration = values.Number("run.duration", values.Find("run.marks") is null ? RunSettings.DefaultDuration : RunSettings.LongestDuration);
        if (values.Find("run.sample") is { } bound && (duration / sample > MostRows || sample > duration))
        {
            findings.Error(bound.Place, bound.Path, $"a sample of {bound.Quantity} for a run of {Rule.Exactly(duration)} s", "at least one, at most two million rows", "1 ms is fine enough for every figure");
        }
    }
}
