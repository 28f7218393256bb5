using LaunchSim.Scenarios.Units;
using static LaunchSim.Scenarios.Schema.Keys;

namespace LaunchSim.Scenarios.Schema;

/// <summary>Keys of the whole car, the track and the run.</summary>
internal static class CarKeys
{
    public static Section Car() => new(
        Number("wheelbase", QuantityKind.Length, Limits.Positive, "105.5 in", "Distance from the front to the rear wheel centres", "Tape along the floor between plumb lines from both hub centres, wheels straight ahead", Need.Geometry),
        Part("scales", "What the scales read, driver aboard, both tyres of each axle", new Section(
            Number("front", QuantityKind.Force, Limits.Positive, "1560 lb", "Load of both front tyres", "Four pads on a level floor; add left and right", Need.Geometry),
            Number("rear", QuantityKind.Force, Limits.Positive, "1440 lb", "Load of both rear tyres", "As the front", Need.Geometry)), Need.Geometry),
        Number("cg_height", QuantityKind.Length, Limits.Positive, "21 in", "Height of the whole car's centre of gravity above the floor", "Lift one axle by a known height with the suspension blocked, and read how much the other axle's scales gain; the camshaft's height is a rough guess, so give it a doubt", Need.Geometry),
        Number("pitch_inertia", QuantityKind.Inertia, Limits.Positive, "1950 kg·m²", "Pitch inertia of the sprung body about its own centre of gravity", "Rarely measured: sprung mass × (half the wheelbase)² or so is a start (typical-values.md); give it a doubt"),
        Part("aero", "Aerodynamic drag", new Section(
            Number("drag_area", QuantityKind.Area, Limits.NotNegative, "0.70 m²", "Drag coefficient times frontal area", "Coast-down, or 0.35 to 0.45 times width times height"),
            Number("height", QuantityKind.Length, Limits.NotNegative, "20 in", "Height above the ground at which the drag acts", "About the middle of the frontal area"),
            Number("air_density", QuantityKind.Density, Limits.NotNegative, "1.2 kg/m³", "Density of the air", "From a weather station; 1.2 kg/m³ at 20 °C at sea level")), Need.Optional, "no drag"),
        Part("ride_height", "How much higher the body stands since the points were measured; + is higher", new Section(
            Optional("front", QuantityKind.Length, Limits.Any, "0 in", "0", "At the front wheel centres", "Difference of the same spot's height above the floor, now and when measured"),
            Optional("rear", QuantityKind.Length, Limits.Any, "+0.5 in", "0", "At the rear axle", "As the front")), Need.Optional, "as measured"),
        new SchemaKey("ballast", new ListKind(new Section(
            Number("mass", QuantityKind.Mass, Limits.NotNegative, "40 lb", "Mass of the piece", "Scales"),
            Point("at", "-25 18 in", "Where its middle sits in the car as measured", "Tape from the axle centreline and from the floor", holes: false))),
            Need.Optional, "Masses added to the body since the scales were read; a list", "", "", "none"));

    public static Section Track() => new()
    {
        Forms =
        [
            new("number", "One grip everywhere", new Section(
                Optional("grip", QuantityKind.Number, Limits.Positive, "1.0", "1", "Factor on the tyres' grip", "1 for the track on which the tyres' grip was found"))),
            new("table", "Grip along the track, each tyre at its own place; may also stand one level deeper, under grip", new Section(
                Row("distance", QuantityKind.Length, Limits.Any, "0 30 60 ft", "Places along the track, 0 where the rear tyres start; the end values hold beyond the ends", "Tape from the staged rear tyres", rising: true),
                Row("grip", QuantityKind.Number, Limits.Positive, "1.0 0.9 1.0", "Factor on the tyres' grip at each place", "From a drag sled or from passes", against: "distance")), "distance"),
        ],
    };

    public static Section Run() => new(
        Optional("duration", QuantityKind.Time, new Limits("above 0, at most 60 s", 0, true, 60, false), "1.8 s", "1 s; with marks, until the last of them, at most 4 s", "How long to run", "1 s shows the launch"),
        Optional("sample", QuantityKind.Time, new Limits("1 µs to 1 s", 1e-6 * (1 - 1e-12), false, 1, false), "1 ms", "1 ms", "Time between rows of the trace", "1 ms is fine enough for every figure"),
        Optional("tolerance", QuantityKind.Number, Limits.Within(1e-13, 1e-2, "1e-13 to 0.01"), "1e-8", "1e-8", "Relative tolerance of the solver; the absolute one follows from each state's scale", "Leave it, unless you want to see that it does not matter"),
        Row("marks", QuantityKind.Length, Limits.Positive, "60 ft", "Distances at which to take the time, by the rear axle", "The timing system's: 60 ft, 330 ft", rising: true, need: Need.Optional, leftOut: "none"),
        Optional("rollout", QuantityKind.Length, Limits.NotNegative, "12 in", "0", "How far the car rolls before the clock starts", "7 to 13 in by how deep it is staged (common practice, no source)"));
}
