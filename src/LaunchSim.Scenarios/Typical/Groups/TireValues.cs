using static LaunchSim.Scenarios.Typical.Groups.Entry;

namespace LaunchSim.Scenarios.Typical.Groups;

/// <summary>One tyre: radius, rates, grip and slip.</summary>
internal static class TireValues
{
    // A tyre stands about this much lower under its load; width and rim are shares of the diameter: 275/60R15 at the rear,
    // 205/60R15 at the front.
    private const double FreeOverLoaded = 1.06;

    // Row 24's tyres are road radials at road pressures; the sidewalls of a drag tyre carry less of their own.
    private const double SoftSidewalls = 0.9;

    private static readonly HomeTest Rate = new("Read the scale and the hub's height above the floor, add 200 to 400 lb over that axle, read both again: what the scale gained over how much the hub sank, per tyre.", "30 min; scales, tape or dial gauge, ballast or people");
    private static readonly HomeTest Radius = new("Tape from the floor to the middle of the hub, driver aboard, launch pressure, both sides.", "5 min; tape");
    private static readonly HomeTest Passes = new("Mend it until the run's 60 ft and largest acceleration look like those of your best passes.", "a log or time slips");

    public static RegisterEntry[] Front => Tire("front", 1.1, 0.10, 1.9, 0.80, 0.08, 1.0, 0.32, 0.015,
        Number("front.tire.spin_inertia", FrontSpin, "38 % of the front unsprung mass × (0.8 × loaded radius)²", Share(0.25), Guess,
            UsualRange.Of(FrontSpin, 0.3, 3, "for both front wheels of a car of this weight"),
            new("Hang a wheel by two strings 20 in long, one each side of the hub, and time ten turns to and fro: inertia = mass × g × (half the strings' distance)² × (time of one / 2π)² / length. Both wheels.", "30 min; string, watch, scales")));

    public static RegisterEntry[] Rear => Tire("rear", 2.2, 0.12, 2.05, 0.65, 0.10, 1.4, 0.38, 0.02);

    /// <summary>The tyre's size: as given, or a usual one of its loaded radius.</summary>
    internal static TireSize Size(KnownReading k, string end)
    {
        if ((end == "front" ? k.Hints.FrontTire : k.Hints.RearTire) is { } given)
        {
            return given;
        }

        double diameter = 2 * FreeOverLoaded * k.Number(end + ".tire.loaded_radius");
        double width = (end == "front" ? 0.32 : 0.40) * diameter, rim = (end == "front" ? 0.60 : 0.55) * diameter;
        return new TireSize(width, (diameter - rim) / 2 / width * 100, rim);
    }

    internal static double VerticalRate(KnownReading k, string end) =>
        Softness(end) * TireRate.Of(Size(k, end), k.Number(end + ".tire.pressure.measured"));

    internal static double VerticalSlope(KnownReading k, string end) => Softness(end) * TireRate.Slope(Size(k, end));

    private static double Softness(string end) => end == "rear" ? SoftSidewalls : 1;

    private static double FrontSpin(KnownReading k) =>
        0.38 * k.Number("front.unsprung") * Math.Pow(0.8 * k.Number("front.tire.loaded_radius"), 2);

    private static RegisterEntry[] Tire(string end, double grip, double peak, double stiffness, double sliding, double sensitivity, double load, double relaxation, double rolling, params RegisterEntry[] more)
    {
        string at = end + ".tire";
        bool rear = end == "rear";
        double Load(KnownReading k) => load * k.Number("car.scales." + end) / 2;
        double Damping(KnownReading k) => 0.04 * 2 * Math.Sqrt(k.Number(at + ".vertical_rate") * k.Number(end + ".unsprung") / 2);
        double Stiffness(KnownReading k) => stiffness * k.Number(at + ".grip") / k.Number(at + ".peak_slip");
        return
        [
            Measured(at + ".loaded_radius", Amount(Inch / 8), UsualRange.Plain(0.20, 0.50, "for a car's wheel"), Radius),
            Number(at + ".vertical_rate", k => VerticalRate(k, end),
                rear ? "0.9 × the regression by size and pressure: a drag tyre's sidewalls carry less than those of the road radials that it was made from; without a size, one of 40 % of its diameter in width on a rim of 55 %" : "the regression by size and pressure; without a size, one of 32 % of its diameter in width on a rim of 60 %",
                Share(0.25), Rhyne, UsualRange.Of(k => VerticalRate(k, end), 0.55, 1.72, "for a tyre of this size and pressure"), Rate, Share(0.15)),
            Number(at + ".vertical_damping", Damping, "4 % of the critical damping of one side's unsprung mass on its tyre", Share(0.60), Guess, UsualRange.Of(Damping, 0, 6, "for a tyre of this rate")),
            Number(at + ".grip", _ => grip, rear ? $"{grip:0.0}, a drag radial or a slick on a prepared track" : $"{grip:0.0}, a road tyre", Share(0.15), Practice, UsualRange.Plain(0.5, rear ? 4.5 : 2.5, "for a tyre"), Passes),
            Number(at + ".slip_stiffness", Stiffness, $"{stiffness:0.00} × grip / peak slip: a curve that rises smoothly to its peak", Share(0.20), Guess, UsualRange.Of(k => k.Number(at + ".grip") / k.Number(at + ".peak_slip"), 1.5, 6, "for a tyre of this grip and peak slip")),
            Number(at + ".peak_slip", _ => peak, $"{peak:0.00}", Share(0.20), Practice, UsualRange.Plain(0.03, 0.35, "for a tyre"),
                new("Wheel speed over car speed, less 1, where the log's acceleration is best.", "a log with driveshaft and front wheel speed")),
            Number(at + ".sliding_ratio", _ => sliding, $"{sliding:0.00}", Share(0.12), Practice, UsualRange.Plain(0.4, 0.95, "for a tyre")),
            Number(at + ".load_sensitivity", _ => sensitivity, $"{sensitivity:0.00}", Share(0.50), Practice, UsualRange.Plain(0, 0.35, "for a tyre")),
            Number(at + ".reference_load", Load, rear ? "1.4 × the standing load of one rear tyre: the load at which the grip was found is that of the launch" : "the standing load of one front tyre", Share(0.10), Practice, UsualRange.Of(Load, 0.5, 1.75, "for one tyre of a car of this weight")),
            Number(at + ".relaxation_length", k => relaxation * k.Number(at + ".loaded_radius"), $"{relaxation:0.00} × loaded radius", Share(0.30), Practice, UsualRange.Of(k => k.Number(at + ".loaded_radius"), 0.08, 1.5, "for a tyre of this radius")),
            Number(at + ".rolling_resistance", _ => rolling, $"{rolling:0.000}", Share(0.35), Practice, UsualRange.Plain(0.003, 0.06, "for a tyre"),
                new("Push the car on a level floor with a scale: force over weight.", "10 min; a scale and a helper")),
            .. more,
        ];
    }
}
