using static LaunchSim.Scenarios.Typical.Groups.Entry;

namespace LaunchSim.Scenarios.Typical.Groups;

/// <summary>The dampers' travel and what stops them.</summary>
internal static class StopValues
{
    private static readonly HomeTest Travel = new("Measure the unit at ride height between its mounts, then off the car pulled out and pushed in: the differences are the travels.", "30 min; tape");

    public static RegisterEntry[] All => [.. End("front", 3.7, 3.2), .. End("rear", 4.0, 3.5)];

    private static RegisterEntry[] End(string end, double extend, double compress)
    {
        string at = $"{end}.damper.travel";
        double Ratio(KnownReading k) => end == "front" ? k.Number("front.damper.motion_ratio") : 1;
        string times = end == "front" ? " at the wheel, × the damper's motion ratio" : "";
        return
        [
            Number(at + ".extend", k => extend * Inch * Ratio(k), $"{extend:0.0} in{times}", Amount(0.75 * Inch), Practice, UsualRange.Plain(0.4 * Inch, 9 * Inch, "for a damper from ride height"), Travel, Amount(Inch / 8)),
            Number(at + ".compress", k => compress * Inch * Ratio(k), $"{compress:0.0} in{times}", Amount(0.75 * Inch), Practice, UsualRange.Plain(0.4 * Inch, 9 * Inch, "for a damper from ride height"), Travel, Amount(Inch / 8)),
            Number(at + ".stop_rate", _ => 3000 * PoundPerInch, "3000 lb/in, hard rubber on steel", Share(0.50), Practice, UsualRange.Plain(200 * PoundPerInch, 30000 * PoundPerInch, "for a stop"),
                new("Press the bump rubber on a scale by 1/8 in; for a top-out spacer take the maker's figure.", "15 min; scales, a press")),
            Number(at + ".stop_damping", k => 0.0035 * k.Number(at + ".stop_rate"), "stop rate × 3.5 ms", Share(0.60), Guess, UsualRange.Of(k => k.Number(at + ".stop_rate"), 0, 0.05, "for a stop of this rate")),
        ];
    }
}
