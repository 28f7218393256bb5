using static LaunchSim.Scenarios.Typical.Groups.Entry;

namespace LaunchSim.Scenarios.Typical.Groups;

/// <summary>Torque at the axle against time: from the 60 ft time, else from the weight.</summary>
internal static class TorqueValues
{
    private const double SixtyFeet = 60 * 0.3048, UsualRollout = 12 * Inch;

    // Half of what a prepared track lets pass: enough for a lively launch, and still held by the usual tyre.
    private const double UsualAcceleration = 1.2 * Gravity;

    // The rise at the start, the spin of the wheels and rolling resistance take a tenth of what the steady torque would give.
    private const double Losses = 1.1;

    private static readonly double[] Times = [0, 0.05, 0.25, 0.6, 1];
    private static readonly double[] Shape = [0, 0.82, 0.92, 1, 1];
    private static readonly HomeTest Torque = new("Engine torque × gear × final drive × 0.9 (× the converter's torque ratio); or from a log's driveshaft speed: weight × acceleration in g × loaded radius × 1.1; or from the 60 ft time alone: acceleration in g is about 2.8 over its square (1.50 s is 1.26 g).", "10 min; engine sheet, log or time slip");

    public static RegisterEntry[] All =>
    [
        Row("driveline.time", _ => Times, "0 0.05 0.25 0.6 1 s", null, Practice),
        Row("driveline.torque", k => [.. Shares(k.Row("driveline.time")).Select(share => share * Level(k))],
            "mass × acceleration × rear loaded radius × 1.1, rising from 0 over 82 % at 0.05 s and 92 % at 0.25 s to all of it at 0.6 s; acceleration from the 60 ft time as if it were steady, 1.2 g when there is none", Share(0.25), Practice,
            UsualRange.Of(k => k.Mass * Gravity * k.Number("rear.tire.loaded_radius"), 0.25, 4, "for a car of this weight and tyre") with { Judged = (_, row) => row.Max(), Where = "at its largest" }, Torque, Share(0.10)),
    ];

    /// <summary>The steady acceleration that gives a 60 ft time on the timing clock, m/s²: the clock starts when the car has rolled out of the beam.</summary>
    internal static double Acceleration(double sixtyFootTime, double rollout)
    {
        double roots = Math.Sqrt(2 * SixtyFeet) - Math.Sqrt(2 * rollout);
        return roots * roots / (sixtyFootTime * sixtyFootTime);
    }

    private static double Level(KnownReading k)
    {
        double rollout = k.Entered("run.rollout") is { } entered ? entered[0] : UsualRollout;
        double acceleration = k.Hints.SixtyFootTime is { } time ? Acceleration(time, rollout) : UsualAcceleration;
        return Losses * k.Mass * acceleration * k.Number("rear.tire.loaded_radius");
    }

    private static double[] Shares(double[] times) => [.. times.Select(time => new Vehicle.Table(Times, Shape).At(time))];
}
