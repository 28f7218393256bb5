using LaunchSim.Scenarios.Recorded;
using LaunchSim.Scenarios.Units;
using static LaunchSim.Scenarios.Schema.Keys;

namespace LaunchSim.Scenarios.Schema;

/// <summary>A file of marks: what a person saw in single frames of a video, or at single instants, written down by hand.</summary>
internal static class MarkKeys
{
    /// <summary>All its keys.</summary>
    /// <param name="quantities">What may be marked.</param>
    public static Section Of(IReadOnlyList<RecordedQuantity> quantities)
    {
        var section = new Section(
            Text("name", "Phone behind the wall", "What these marks are called", Need.Optional, "the file's name"),
            Text("notes", "Read off by Kim.", "Anything worth remembering", Need.Optional, "none"),
            Optional("frames_per_second", QuantityKind.Number, Limits.Within(1, 1e6, "1 to 1,000,000"), "240", "marks then need a time", "How many frames a second the video was taken with", "The camera's setting while taking, not that of the slowed film"),
            MappingKeys.ReleaseFrame(),
            Optional("release", QuantityKind.Time, Limits.Any, "0 ±0.01 s", "found by laying the marks over the prediction", "The release on the clock of the marks, where it was seen", "A lamp, the hand at the button"),
            Part("parallax", "What a camera that does not stand square to the car adds", MappingKeys.Parallax(), Need.Optional, "none"),
            new SchemaKey("marks", new ListKind(Mark(quantities)), Need.Geometry, "What was seen, a line for each instant; lengths count from the standing car", "", "- {frame: 120, rear_gap: 1/2 in}", null));
        section.Hang("");
        return section;
    }

    private static Section Mark(IReadOnlyList<RecordedQuantity> quantities) => new(
    [
        Optional("frame", QuantityKind.Number, Limits.Any, "120", "its time", "The frame's number", "As the player of the video shows it"),
        Optional("time", QuantityKind.Time, Limits.Any, "0.22 s", "its frame", "The time on the clock of the marks", "As the player of the video shows it"),
        .. quantities.Select(quantity => Optional(quantity.Key, quantity.Kind, Limits.Any, quantity.Kind.Units.Count > 0 ? $"1 {quantity.Kind.Units[0]}" : "1", "not seen", $"The {quantity.Words} as it was seen", "Against something of known size beside it")),
    ]);
}
