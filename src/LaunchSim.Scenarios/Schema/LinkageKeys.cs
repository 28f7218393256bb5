using LaunchSim.Scenarios.Units;
using static LaunchSim.Scenarios.Schema.Keys;

namespace LaunchSim.Scenarios.Schema;

/// <summary>Keys of the rear linkage, one form a kind of linkage.</summary>
internal static class LinkageKeys
{
    private const string Tape = "Plumb line from the rod end's middle to the floor, tape ahead from the axle centreline and up from the floor";

    public static Section Linkage() => new(
        Optional("pinion_angle", QuantityKind.Angle, Limits.Between(-Math.PI / 2, Math.PI / 2, "between -90 ° and 90 °"), "2 °", "not reported", "Pinion angle of the standing car, nose up positive; only reported", "Angle finder on the pinion flange, less 90°"),
        Word("type", "Which kind of linkage", Need.Geometry, null, "four-link", "ladder-bar"))
    {
        Selector = "type",
        Forms =
        [
            new("four-link", "A lower and an upper bar a side", new Section(
                Bar("lower", "1.0 7.6 in", "21.0 9.0 in"),
                Bar("upper", "2.5 17.0 in", "14.0 14.6 in"))),
            new("ladder-bar", "Bars rigid with the housing that turn about one pivot a side", new Section(
                Point("pivot", "32 9.5 in", "The pivot on the body", Tape, need: Need.Geometry))),
        ],
    };

    private static SchemaKey Bar(string name, string axle, string body) =>
        Part(name, $"The {name} bar", new Section(
            Point("axle", axle, $"The {name} bar's end on the axle housing", Tape, need: Need.Geometry),
            Point("body", body, $"The {name} bar's end on the body", Tape, need: Need.Geometry)), Need.Geometry);
}
