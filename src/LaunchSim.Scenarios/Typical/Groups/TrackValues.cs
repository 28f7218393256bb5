using static LaunchSim.Scenarios.Typical.Groups.Entry;

namespace LaunchSim.Scenarios.Typical.Groups;

/// <summary>What the track gives and how the clock is started: set for a run, with nothing typical about it but what is usual.</summary>
internal static class TrackValues
{
    public static RegisterEntry[] All =>
    [
        Set("track.grip", null, UsualRange.Plain(0.2, 1.5, "for a track, against the one on which the tyres' grip was found") with { Judged = (_, row) => row.MaxBy(grip => Math.Abs(Math.Log(grip))) }),
        Set("run.rollout", Amount(2 * Inch), UsualRange.Plain(0, 0.5, "for a rollout")),
    ];
}
