using static LaunchSim.Scenarios.Typical.Groups.Entry;

namespace LaunchSim.Scenarios.Typical.Groups;

/// <summary>The bars' ends: nothing in their place, they are what the car is about.</summary>
internal static class LinkageValues
{
    private static readonly HomeTest Tape = new("Level floor, ride height, driver aboard: plumb line from the middle of the rod end's bolt to the floor, then tape ahead from the axle's centreline and up from the floor. `launchsim geometry` says what 1/16 in is worth at each end.", "1 h for all; tape, plumb line, chalk");

    public static RegisterEntry[] All =>
    [
        End("rear.linkage.lower.axle", -0.3, 0.35, "for the lower bar's end on the axle", k => 0.15 * Radius(k), k => Radius(k) + 0.06),
        End("rear.linkage.lower.body", 0.15, 1.6, "for the lower bar's end on the body", k => 0.05, k => Radius(k) + 0.10),
        End("rear.linkage.upper.axle", -0.3, 0.35, "for the upper bar's end on the axle", k => Radius(k) - 0.08, k => Radius(k) + 0.40),
        End("rear.linkage.upper.body", 0.10, 1.3, "for the upper bar's end on the body", k => Radius(k) - 0.15, k => Radius(k) + 0.45),
        End("rear.linkage.pivot", 0.35, 2.2, "for a ladder bar's pivot", k => 0.05, k => Radius(k) + 0.10),
    ];

    // A part file may leave the radius out; an eighth of the wheelbase is near enough for a range.
    internal static double Radius(KnownReading k) => k.Entered("rear.tire.loaded_radius") is { } entered ? entered[0] : k.Wheelbase / 8;

    private static MeasuredValue End(string path, double nearest, double farthest, string forWhat, Func<KnownReading, double> low, Func<KnownReading, double> high) =>
        Measured(path, Amount(Inch / 16), UsualRange.Plain(nearest, farthest, forWhat), Tape, new UsualRange { Low = low, High = high, ForWhat = forWhat });
}
