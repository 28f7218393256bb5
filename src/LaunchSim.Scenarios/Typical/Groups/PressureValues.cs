using static LaunchSim.Scenarios.Typical.Groups.Entry;

namespace LaunchSim.Scenarios.Typical.Groups;

/// <summary>Pressures, and what pressure changes.</summary>
internal static class PressureValues
{
    private static readonly HomeTest Gauge = new("Gauge, cold, on the scales.", "2 min; a gauge");
    private static readonly HomeTest Twice = new("Measure the rate at two pressures 4 psi apart; the difference over the difference of pressure.", "1 h; as for the rate, twice");

    public static RegisterEntry[] All => [.. End("front", 30, false), .. End("rear", 16, true)];

    private static RegisterEntry[] End(string end, double psi, bool rear)
    {
        string at = $"{end}.tire.pressure";
        double Vertical(KnownReading k) => TireValues.VerticalSlope(k, end);
        double Torsional(KnownReading k) => 0.6 * k.Number("rear.tire.carcass.torsional_rate") * k.Number(at + ".vertical") / k.Number("rear.tire.vertical_rate");
        UsualRange usual = UsualRange.Plain((rear ? 4 : 12) * Psi, (rear ? 45 : 65) * Psi, rear ? "for a rear tyre" : "for a front tyre");
        RegisterEntry[] torsional = rear
            ? [Number(at + ".torsional", Torsional, "0.6 × torsional rate × (slope of the vertical rate / vertical rate): air carries less of it", Share(0.60), Guess, UsualRange.Of(Torsional, -0.5, 5, "for a tyre of this rate"), Twice)]
            : [];
        return
        [
            Number(at + ".measured", _ => psi * Psi, $"{psi:0} psi", Amount((rear ? 3 : 5) * Psi), Practice, usual, Gauge, Amount(0.5 * Psi)),
            Number(at + ".set", k => k.Number(at + ".measured"), "as measured", Amount(0.5 * Psi), Practice, usual, Gauge, Amount(0.5 * Psi)),
            Number(at + ".vertical", Vertical, "the slope of the regression by size" + (rear ? ", × 0.9 as the rate" : "") + "; on the 255/40R17 whose rate was measured the regression gives a third more than the 30 lb/in per psi that were found", Share(0.35), Rhyne + "; " + OpenTireData,
                UsualRange.Of(Vertical, 0, 2.5, "for a tyre of this size"), Twice),
            .. torsional,
            Number(at + ".grip", _ => -0.01 / Psi, "-0.01 /psi", Share(1), Practice, UsualRange.Plain(-0.06 / Psi, 0.04 / Psi, "for a tyre"),
                new("Passes at two pressures on the same day.", "an afternoon at the track")),
        ];
    }
}
