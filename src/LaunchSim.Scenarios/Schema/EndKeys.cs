using LaunchSim.Scenarios.Units;
using static LaunchSim.Scenarios.Schema.Keys;

namespace LaunchSim.Scenarios.Schema;

/// <summary>Keys of the front and the rear end.</summary>
internal static class EndKeys
{
    private const string Tape = "Tape and plumb line to the bolt's middle, at ride height, driver aboard";

    public static Section Front() => new(
        Number("unsprung", QuantityKind.Mass, Limits.Positive, "150 lb", "Mass of wheels, tyres, brakes, hubs and half the links, both sides", "Weigh the parts; half of each arm counts"),
        Part("spring", "The springs", new Section(
            Number("rate", QuantityKind.Rate, Limits.Positive, "150 lb/in", "Spring rate per side", "Stamped on the spring, or a spring rater"),
            MotionRatio("spring"))),
        DamperKeys.Damper(false),
        Part("tire", "The front tyres, per tyre", TireKeys.Tire(false)));

    public static Section Rear() => new(
        Number("unsprung", QuantityKind.Mass, Limits.Positive, "340 lb", "Mass of the axle housing, wheels, tyres and brakes, both sides", "Weigh the axle as it comes out of the car; half of each bar counts"),
        Number("housing_inertia", QuantityKind.Inertia, Limits.Positive, "3.2 kg·m²", "Pitch inertia of what does not spin, about the axle centreline", "Mass of housing and centre section × (about 5 in)², and the brackets and callipers at their own distances"),
        Part("linkage", "The bars that guide the axle, in side view", LinkageKeys.Linkage(), Need.Geometry),
        Part("spring", "The springs, between axle and body", new Section(
            Number("rate", QuantityKind.Rate, Limits.Positive, "150 lb/in", "Spring rate per side", "Stamped on the spring, or a spring rater"),
            Point("axle", "-2.0 9.0 in", "The spring's mount on the axle housing", Tape),
            Point("body", "0.5 24.0 in", "The spring's mount on the body", Tape))),
        DamperKeys.Damper(true),
        Part("tire", "The rear tyres, per tyre", TireKeys.Tire(true)),
        Part("wheelie_bar", "The wheelie bar on the axle housing, one for the car", new Section(
            Point("wheel", "-58 4 in", "The lowest point of its wheel, so that its height is the ground clearance", "Tape from the axle centreline, and the gap above the floor", holes: false),
            Number("rate", QuantityKind.Rate, Limits.Positive, "800 lb/in", "Rate of bar and wheel together at the wheel", "Jack under the wheel on a scale, and a dial gauge"),
            Number("damping", QuantityKind.Damping, Limits.NotNegative, "8 lb·s/in", "Damping at the wheel", "Rarely known: a hundredth of the rate, in seconds, is a start")), Need.Optional, "none"));

    internal static SchemaKey MotionRatio(string unit) =>
        Number("motion_ratio", QuantityKind.Number, Limits.Positive, "0.95", $"Change of the {unit}'s length per wheel travel", "Move the wheel an inch without the spring, and measure how much the mounts come together");

    internal static string MountTape => Tape;
}
