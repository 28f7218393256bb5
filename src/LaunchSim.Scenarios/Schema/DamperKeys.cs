using LaunchSim.Scenarios.Units;
using static LaunchSim.Scenarios.Schema.Keys;

namespace LaunchSim.Scenarios.Schema;

/// <summary>Keys of the dampers.</summary>
internal static class DamperKeys
{
    public static SchemaKey Damper(bool rear)
    {
        SchemaKey[] place = rear
            ?
            [
                Point("axle", "-2.0 9.0 in", "The damper's mount on the axle housing", EndKeys.MountTape, need: Need.Optional, leftOut: "the spring's"),
                Point("body", "0.5 24.0 in", "The damper's mount on the body", EndKeys.MountTape, need: Need.Optional, leftOut: "the spring's"),
            ]
            : [EndKeys.MotionRatio("damper")];
        return Part("damper", "The dampers, per side", new Section(
        [
            .. place,
            Part("extension", "Force while the unit gets longer", Side("0 12 25 50 80 125 lb")),
            Part("compression", "Force while the unit gets shorter", Side("0 35 60 110 170 260 lb")),
            Part("travel", "How far the unit travels from the measured ride height, and its stops", new Section(
                Number("extend", QuantityKind.Length, Limits.Positive, "3.5 in", "How much longer it gets before it tops out", "Fully extended length less length at ride height"),
                Number("compress", QuantityKind.Length, Limits.Positive, "3.0 in", "How much shorter it gets before it bottoms", "Length at ride height less fully compressed length"),
                Number("stop_rate", QuantityKind.Rate, Limits.Positive, "3000 lb/in", "Rate of the stops, per unit", "Steel on steel is several thousand lb/in, a rubber a few hundred to a thousand"),
                Number("stop_damping", QuantityKind.Damping, Limits.NotNegative, "10 lb·s/in", "Damping of the stops, per unit", "Rarely known; a small part of the rate, in seconds"))),
        ]));
    }

    private static Section Side(string force) => new(
        Row("speed", QuantityKind.Speed, Limits.NotNegative, "0 1 2 5 10 20 in/s", "Shaft speeds of the dyno sheet, from 0; beyond the last the last slope goes on", "Damper dyno", rising: true, least: 2))
    {
        Forms =
        [
            new("force", "One force at each speed", new Section(
                Row("force", QuantityKind.Force, Limits.NotNegative, force, "Force at each speed, from 0, never falling", "Damper dyno; without the gas force", against: "speed")), "force"),
            new("clicks", "Forces at some clicks, and the click that is set", new Section(
                new SchemaKey("clicks", new ClicksKind(QuantityKind.Force, Limits.NotNegative, "speed"), Need.Run, "A row of forces at each click of the adjuster that was on the dyno", "Damper dyno, one sheet a click; between two clicks the forces are interpolated", "{0: 0 10 20 40 65 105 lb, 12: 0 80 140 230 320 440 lb}", null),
                Number("set", QuantityKind.Number, Limits.Any, "6", "The click that is set, within those entered", "Count the clicks as the maker does"),
                Word("count_from", "From which end clicks are counted; only words, the numbers are what the maker counts", Need.Optional, "not said", "soft", "stiff")), "clicks", "set", "count_from"),
        ],
    };
}
