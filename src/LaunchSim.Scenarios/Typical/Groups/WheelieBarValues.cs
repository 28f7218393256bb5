using static LaunchSim.Scenarios.Typical.Groups.Entry;

namespace LaunchSim.Scenarios.Typical.Groups;

/// <summary>The wheelie bar, for cars that have one.</summary>
internal static class WheelieBarValues
{
    public static RegisterEntry[] All =>
    [
        Measured("rear.wheelie_bar.wheel", Amount(Inch / 8), UsualRange.Plain(-2.2, -0.5, "for a wheelie bar's wheel"),
            new("Tape from the axle's centreline back to the bar's wheel, and the gap between wheel and floor.", "5 min; tape"), UsualRange.Plain(0, 0.30, "for the gap under a wheelie bar's wheel")),
        Number("rear.wheelie_bar.rate", _ => 800 * PoundPerInch, "800 lb/in", Share(0.50), Practice, UsualRange.Plain(60 * PoundPerInch, 6000 * PoundPerInch, "for a wheelie bar at its wheel"),
            new("Jack under the bar's wheel on a scale until the body's weight is on it, and read by how much the wheel goes up against the housing.", "20 min; jack, scale, dial gauge")),
        Number("rear.wheelie_bar.damping", k => 0.01 * k.Number("rear.wheelie_bar.rate"), "rate × 10 ms", Share(0.60), Guess, UsualRange.Of(k => k.Number("rear.wheelie_bar.rate"), 0, 0.06, "for a wheelie bar of this rate")),
    ];
}
