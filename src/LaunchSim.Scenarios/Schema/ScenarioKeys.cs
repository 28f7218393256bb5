using static LaunchSim.Scenarios.Schema.Keys;

namespace LaunchSim.Scenarios.Schema;

/// <summary>The scenario file: every key declared once. Reader, JSON Schema and reference page all come from here.</summary>
internal static class ScenarioKeys
{
    /// <summary>A file that describes the car itself.</summary>
    public static Section Whole { get; } = Rooted(new Section(
        Text("name", "Door car, as measured", "What this car and set-up are called", Need.Run, null),
        Text("notes", "Flat floor, driver aboard, half a tank.", "Anything worth remembering", Need.Optional, "none"),
        Part("car", "The whole car as it stood on the scales", CarKeys.Car(), Need.Geometry),
        Part("front", "The front end, per side unless said otherwise", EndKeys.Front()),
        Part("rear", "The rear end: linkage, springs, dampers, tyres", EndKeys.Rear(), Need.Geometry),
        Part("driveline", "What puts torque into the axle shafts", DrivelineKeys.Driveline()),
        Part("track", "What the track gives", CarKeys.Track(), Need.Optional, "grip 1"),
        Part("run", "How long to run, and how finely", CarKeys.Run(), Need.Optional, "1 s in rows of 1 ms"),
        Part("aims", "What is wanted of the launch: studies rank set-ups by it", AimKeys.Aims(), Need.Optional, "those of the profile in-step"),
        new SchemaKey("choices", new ChoicesKind(), Need.Optional, "What can be changed at the track, how far, and how long it takes; studies propose nothing else", "", "", "none")));

    /// <summary>A file that begins from another one.</summary>
    public static Section Variant { get; } = Rooted(new Section(
        Text("name", "Upper bar one hole down", "What this variant is called", Need.Optional, "the name of the base"),
        Text("notes", "After the second pass.", "Anything worth remembering", Need.Optional, "the notes of the base"),
        Text("base", "door-car.yaml", "The file it begins from, seen from this file's folder; it may be a variant itself", Need.Geometry, null),
        new SchemaKey("change", new ChangeKind(), Need.Optional, "Paths, each with the value that takes the place of the base's", "", "", "none"),
        Part("aims", "As in a whole file; in the place of the base's aims", AimKeys.Aims(), Need.Optional, "those of the base"),
        new SchemaKey("choices", new ChoicesKind(), Need.Optional, "As in a whole file; in the place of the base's choices", "", "", "those of the base")));

    private static Section Rooted(Section section)
    {
        section.Hang("");
        return section;
    }
}
