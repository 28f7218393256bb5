using LaunchSim.Scenarios.Units;
using static LaunchSim.Scenarios.Schema.Keys;

namespace LaunchSim.Scenarios.Schema;

/// <summary>The scale sheet: what scales and tape read of a car on the level, and with one axle lifted.</summary>
internal static class ScaleKeys
{
    private const string PadLoad = "790 ±2 lb", AxleLoad = "1560 ±3 lb";

    /// <summary>All its keys.</summary>
    public static Section Sheet { get; } = Rooted(new Section(
        Text("name", "Door car, blocked, driver aboard", "What was weighed", Need.Optional, "the file's name"),
        Text("notes", "Flat floor, half a tank.", "Anything worth remembering", Need.Optional, "none"),
        Number("wheelbase", QuantityKind.Length, Limits.Positive, "105.5 ±1/8 in", "Distance from the front to the rear wheel centres, car level", "Tape along the floor between plumb lines from both hub centres", Need.Geometry),
        Part("loaded_radius", "Height of the wheel centres above the floor, car level, suspension blocked", new Section(
            Number("front", QuantityKind.Length, Limits.Positive, "12.6 ±1/8 in", "Front wheel centres", "Tape from the floor to the middle of the hub", Need.Geometry),
            Number("rear", QuantityKind.Length, Limits.Positive, "13.1 ±1/8 in", "Rear wheel centres", "As the front", Need.Geometry)), Need.Geometry),
        Part("track", "Distance between the middles of the two tyres of an axle: gives how far the centre of gravity is off the middle", new Section(
            Number("front", QuantityKind.Length, Limits.Positive, "60 ±1/4 in", "Front track", "Tape between the same edge of both treads", Need.Geometry),
            Number("rear", QuantityKind.Length, Limits.Positive, "58 ±1/4 in", "Rear track", "As the front", Need.Geometry)), Need.Optional, "only the left side's share is told"),
        Part("level", "What the scales read with all four tyres at one level", Level(), Need.Geometry),
        new SchemaKey("lifts", new ListKind(Lift()), Need.Geometry, "One item a lift", "", "", null)));

    private static Section Level() => new()
    {
        Forms =
        [
            new("axles", "Both tyres of an axle together", new Section(
                Load("front", AxleLoad, "Load of both front tyres"),
                Load("rear", AxleLoad, "Load of both rear tyres")), "front", "rear"),
            new("corners", "Each tyre by itself", new Section(
                Load("front_left", PadLoad, "Left front tyre"),
                Load("front_right", PadLoad, "Right front tyre"),
                Load("rear_left", PadLoad, "Left rear tyre"),
                Load("rear_right", PadLoad, "Right rear tyre")), "front_left", "front_right", "rear_left", "rear_right"),
        ],
    };

    private static Section Lift() => new(
        Word("raised", "Which axle was raised", Need.Geometry, null, "front", "rear"),
        Number("height", QuantityKind.Length, Limits.Positive, "36 ±1/8 in", "Height of the raised wheel centres above the level of the pads that the other axle stands on", "Tape, plumb, from that level to the middle of both raised hubs; the mean", Need.Geometry),
        Optional("standing_height", QuantityKind.Length, Limits.Positive, "13.0 ±1/8 in", "the loaded radius", "Height of the standing axle's wheel centres above their pads, while lifted", "As the loaded radius; for tyres that give under the load"),
        Optional("raised_load", QuantityKind.Force, Limits.Positive, AxleLoad, "not read", "What the raised wheels press on their supports, both together", "Two more pads below the stands"))
    {
        Forms =
        [
            new("axle", "Both standing tyres together", new Section(Load("load", AxleLoad, "Load of both tyres that stay on the scales")), "load"),
            new("sides", "Each standing tyre by itself", new Section(
                Load("left", PadLoad, "Load of the left tyre that stays on the scales"),
                Load("right", PadLoad, "Load of the right tyre that stays on the scales")), "left", "right"),
        ],
    };

    private static SchemaKey Load(string name, string example, string what) =>
        Number(name, QuantityKind.Force, Limits.Positive, example, what, "Read the pads when they have settled", Need.Geometry);

    private static Section Rooted(Section section)
    {
        section.Hang("");
        return section;
    }
}
