using LaunchSim.Vehicle;

namespace LaunchSim.Scenarios.Recorded;

/// <summary>How long a prediction has to run so that all that was seen has something beside it.</summary>
internal static class PassRun
{
    /// <summary>The longest run that a scenario may ask for, s.</summary>
    public const double Longest = 60;

    // A prediction that is late by as much still comes to what was seen, s; a beam's clock starts late besides.
    private const double Beyond = 0.25, BeyondBeam = 0.75;

    public static RunSettings Of(RunSettings car, SeenFacts seen)
    {
        IReadOnlyList<double> marks = [.. car.Marks.Concat(seen.Marks.Select(mark => mark.Distance)).Distinct().Order()];
        double moments = seen.Moments().Where(one => !one.Moment.IsNever).Select(one => one.Moment.Time + Beyond).DefaultIfEmpty(0).Max();
        double beams = seen.Marks.Select(mark => mark.Time + BeyondBeam).DefaultIfEmpty(0).Max();
        double needed = Math.Max(moments, beams);

        // Without a duration a run with marks ends by itself at the last of them.
        double? duration = car.Duration is { } asked ? Math.Max(asked, needed)
            : marks.Count == 0 ? Math.Max(RunSettings.DefaultDuration, needed)
            : moments > beams || needed > RunSettings.LongestDuration ? Math.Max(RunSettings.LongestDuration, needed)
            : null;
        return car with { Marks = marks, Duration = duration is null ? null : Math.Min(Longest, duration.Value) };
    }
}
