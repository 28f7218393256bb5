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
        if (sample > duration && (values.Find("run.sample") ?? values.Find("run.duration")) is { } late)
        {
            findings.Error(late.Place, late.Path, $"a sample of {Rule.Exactly(sample * 1e3)} ms, longer than the run of {Rule.Exactly(duration * 1e3)} ms", "a run of one sample or more", "sample more finely or run for longer");
        }
        else if (values.Find("run.sample") is { } bound && duration / sample > MostRows)
        {
            findings.Error(bound.Place, bound.Path, $"a sample of {bound.Quantity} for a run of {Rule.Exactly(duration)} s", "two million rows at most", "1 ms is fine enough for every figure");
        }
    }
}
