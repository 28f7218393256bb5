using LaunchSim.Vehicle;
using static LaunchSim.Scenarios.Typical.Groups.Entry;

namespace LaunchSim.Scenarios.Typical.Groups;

/// <summary>Springs by the frequency at which the body would bounce on them, motion ratios, mounts.</summary>
internal static class SpringValues
{
    private const double FrontFrequency = 1.35, RearFrequency = 1.6;

    private static readonly HomeTest Rater = new("Read the stamp; or press the spring on a scale by 1 in and by 2 in: the difference is the rate.", "10 min a spring; scales, a press or a jack");
    private static readonly HomeTest Ratio = new("Move the wheel up by 2 in from ride height and measure by how much the spring or damper gets shorter between its mounts; divide that by 2 in.", "30 min; jack, tape");
    private static readonly HomeTest Mount = new("As the bars' ends: plumb line and tape to the middle of the bolt, or of the spring's seat.", "15 min; tape, plumb line");

    public static RegisterEntry[] All =>
    [
        Number("front.spring.rate", Front, "the body at rest on the front springs bounces at 1.35 Hz: sprung mass a side × (2π × 1.35 Hz)² / motion ratio²", Share(0.35), Practice,
            UsualRange.Of(Front, 0.5, 1.9, "for the front of a car of this weight and motion ratio"), Rater, Share(0.05)),
        Number("front.spring.motion_ratio", _ => 0.95, "0.95, a strut; a coil-over on the lower arm has 0.6 to 0.75", Share(0.10), Practice,
            UsualRange.Plain(0.40, 1.05, "for a front suspension"), Ratio, Share(0.03)),
        Number("front.damper.motion_ratio", k => k.Number("front.spring.motion_ratio"), "that of the spring", Share(0.10), Practice,
            UsualRange.Plain(0.40, 1.05, "for a front suspension"), Ratio, Share(0.03)),
        Number("rear.spring.rate", Rear, "the body at rest on the rear springs bounces at 1.6 Hz: sprung mass a side × (2π × 1.6 Hz)² / (share of the travel that the spring's lean leaves)²", Share(0.35), Practice,
            UsualRange.Of(Rear, 0.5, 1.9, "for the rear of a car of this weight"), Rater, Share(0.05)),
        Point("rear.spring.axle", k => (-0.05, k.Number("rear.tire.loaded_radius") - 0.10), "2 in behind the axle's centreline, 4 in below it", 0.05,
            UsualRange.Plain(-0.35, 0.35, "for a spring's mount on the axle"), new UsualRange { Low = _ => 0.03, High = k => LinkageValues.Radius(k) + 0.35, ForWhat = "for a spring's mount on the axle" }, Mount),
        Point("rear.spring.body", k => (0, k.Number("rear.spring.axle", 1) + 0.38), "over the axle's centreline, 15 in above the mount on the axle", 0.05,
            UsualRange.Plain(-0.5, 0.5, "for a spring's mount on the body"), new UsualRange { Low = k => LinkageValues.Radius(k) - 0.10, High = k => LinkageValues.Radius(k) + 0.80, ForWhat = "for a spring's mount on the body" }, Mount),
    ];

    /// <summary>How much of the axle's travel straight up the spring sees; 1 when it stands upright.</summary>
    internal static double Upright(Point axle, Point body)
    {
        double ahead = body.Ahead - axle.Ahead, up = body.Up - axle.Up;
        return Math.Abs(up) / Math.Sqrt((ahead * ahead) + (up * up));
    }

    private static double Front(KnownReading k)
    {
        double ratio = k.Number("front.spring.motion_ratio");
        return Rate(k.SprungCorner("front"), FrontFrequency) / (ratio * ratio);
    }

    private static double Rear(KnownReading k)
    {
        double ratio = Upright(k.Point("rear.spring.axle"), k.Point("rear.spring.body"));
        return Rate(k.SprungCorner("rear"), RearFrequency) / (ratio * ratio);
    }

    private static double Rate(double mass, double frequency) => mass * Math.Pow(2 * Math.PI * frequency, 2);
}
