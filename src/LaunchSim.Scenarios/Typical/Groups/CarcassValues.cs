using static LaunchSim.Scenarios.Typical.Groups.Entry;

namespace LaunchSim.Scenarios.Typical.Groups;

/// <summary>The rear tyres' wind-up and what spins.</summary>
internal static class CarcassValues
{
    private const string At = "rear.tire.carcass";

    public static RegisterEntry[] All =>
    [
        Number(At + ".torsional_rate", Rate, "0.9 × vertical rate × loaded radius²: the tread is held fore and aft about as stiffly as up and down", Share(0.35), Guess,
            UsualRange.Of(Rate, 0.25, 3, "for a tyre of this vertical rate and radius"),
            new("Paint a line across tyre and rim and film a launch in slow motion: the angle between both halves of the line at a torque that you know (axle torque over two tyres over angle). Or lock the tyre on the floor and pull at a bar on the wheel.", "1 h; paint, a phone, the torque of that moment")),
        Number(At + ".torsional_damping", Damping, "4.5 % of the critical damping of one belt on its carcass", Share(0.60), Guess, UsualRange.Of(Damping, 0, 8, "for a tyre of this torsional rate"),
            new("Count in the same film how often the line swings after the hit.", "with the film of the wind-up")),
        Number(At + ".rim_inertia", Rim, "rear unsprung mass × (0.3 × loaded radius)²", Share(0.35), Guess, UsualRange.Of(Rim, 0.3, 4, "for both rims, shafts and ring gear of a car of this weight"),
            new("Both rims by the two-string swing (see the front wheels' spin inertia), and the final drive squared times the driveshaft's mass × radius².", "1 h; string, watch, scales")),
        Number(At + ".belt_inertia", Belt, "18 % of the rear unsprung mass, both tyres, × (0.9 × loaded radius)²", Share(0.25), Guess, UsualRange.Of(Belt, 0.35, 3, "for both tyres of this size"),
            new("Weigh a bare tyre: both tyres' mass × (0.9 × radius)².", "10 min when it is off the rim; scales")),
    ];

    internal static double Rate(KnownReading k) => 0.9 * k.Number("rear.tire.vertical_rate") * Math.Pow(k.Number("rear.tire.loaded_radius"), 2);

    private static double Damping(KnownReading k) => 0.045 * 2 * Math.Sqrt(k.Number(At + ".torsional_rate") * k.Number(At + ".belt_inertia") / 2);

    private static double Rim(KnownReading k) => k.Number("rear.unsprung") * Math.Pow(0.3 * k.Number("rear.tire.loaded_radius"), 2);

    private static double Belt(KnownReading k) => 0.18 * k.Number("rear.unsprung") * Math.Pow(0.9 * k.Number("rear.tire.loaded_radius"), 2);
}
