using static LaunchSim.Scenarios.Typical.Groups.Entry;

namespace LaunchSim.Scenarios.Typical.Groups;

/// <summary>Damper sheets by the damping that they give their corner: soft, medium and firm families.</summary>
internal static class DamperValues
{
    private static readonly double[] Speeds = [0, 1 * Inch, 2 * Inch, 5 * Inch, 10 * Inch, 20 * Inch];
    private static readonly HomeTest Push = new("Push the corner down hard and let go: swings on once or twice, soft; comes back and stops, medium; creeps back, firm. Better: a dyno sheet of the click you run. Until then run soft, medium and firm, each 30 % up and down, and see whether the launch cares.", "5 min; a dyno sheet takes a damper shop an hour");

    public static RegisterEntry[] All =>
    [
        .. Direction("front", "extension", new(0.20, 0.35, 0.60)),
        .. Direction("front", "compression", new(0.30, 0.60, 0.95)),
        .. Direction("rear", "extension", new(0.30, 0.70, 1.50)),
        .. Direction("rear", "compression", new(0.50, 0.90, 1.40)),
    ];

    private static RegisterEntry[] Direction(string end, string direction, Shares shares)
    {
        string side = $"{end}.damper.{direction}";
        double Of(KnownReading k, double share) => DamperCurve.AtReference(share, WheelRate(k, end), k.SprungCorner(end), DamperRatio(k, end));
        string forWhat = $"for a {end} damper in {direction} on a car of this weight and these springs";
        return
        [
            Row(side + ".speed", _ => Speeds, "0 1 2 5 10 20 in/s", null, Practice,
                UsualRange.Plain(0.08, 2.6, "for the fastest speed of a dyno sheet") with { Judged = (_, row) => row[^1], Where = "as the last speed" }),
            Row(side + ".force", k => DamperCurve.Forces(k.Row(side + ".speed"), Of(k, shares.Of(end == "front" ? k.Hints.FrontDampers : k.Hints.RearDampers))),
                $"the share of the corner's critical damping at 5 in/s that makes it soft ({shares.Soft:0.00}), medium ({shares.Medium:0.00}) or firm ({shares.Firm:0.00}); with speed to the power 0.6", Share(0.30), Practice,
                new UsualRange
                {
                    Low = k => 0.5 * Of(k, shares.Soft),
                    High = k => 1.7 * Of(k, shares.Firm),
                    ForWhat = forWhat,
                    Where = "at 5 in/s",
                    Judged = (k, row) => DamperCurve.Read(k.Row(side + ".speed"), row),
                }, Push, Share(0.10)),
        ];
    }

    private static double WheelRate(KnownReading k, string end)
    {
        double rate = k.Number(end + ".spring.rate");
        double ratio = end == "front" ? k.Number("front.spring.motion_ratio") : SpringValues.Upright(k.Point("rear.spring.axle"), k.Point("rear.spring.body"));
        return rate * ratio * ratio;
    }

    private static double DamperRatio(KnownReading k, string end)
    {
        if (end == "front")
        {
            return k.Number("front.damper.motion_ratio");
        }

        return SpringValues.Upright(
            k.Point(k.Entered("rear.damper.axle") is null ? "rear.spring.axle" : "rear.damper.axle"),
            k.Point(k.Entered("rear.damper.body") is null ? "rear.spring.body" : "rear.damper.body"));
    }

    private sealed record Shares(double Soft, double Medium, double Firm)
    {
        public double Of(DamperFamily family) => family switch
        {
            DamperFamily.Soft => Soft,
            DamperFamily.Firm => Firm,
            _ => Medium,
        };
    }
}
