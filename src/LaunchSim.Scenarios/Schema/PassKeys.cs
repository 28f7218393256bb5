using LaunchSim.Scenarios.Units;
using static LaunchSim.Scenarios.Schema.Keys;

namespace LaunchSim.Scenarios.Schema;

/// <summary>The pass file: which car, how it was set, and what was seen.</summary>
internal static class PassKeys
{
    /// <summary>All its keys.</summary>
    public static Section Pass { get; } = Rooted(new Section(
        Text("name", "Second pass, one hole down", "What this pass is called", Need.Optional, "the file's name"),
        Date("when", "2026-09-12 14:10", "When it was, by the clock of the place", "not known; in a season the order of the files' names then counts"),
        Text("car", "../door-car.yaml", "The file of the car, seen from this file's folder; a variant does as well", Need.Geometry, null),
        Text("car_hash", "3f2a9c41", "The car file's content hash as it was at the pass, before `changed`: eight characters of it or more, as the last line of `launchsim run` has it; a warning tells when the file differs now", Need.Optional, "the car file is taken as it is now"),
        new SchemaKey("changed", new ChangeKind(), Need.Optional, "Settings that differed from the car file, by path, as in a variant's `change`; what the model knows of track and air belongs here too (`track.grip`, `car.aero.air_density`)", "", "", "the car ran as its file says"),
        Text("track", "left lane, sprayed, cool", "The track, in words", Need.Optional, "nothing noted"),
        Text("weather", "18 °C, dry, head wind", "The weather, in words", Need.Optional, "nothing noted"),
        new SchemaKey("logs", new ListKind(Log()), Need.Optional, "Files of measured data", "", "", "none"),
        Part("seen", "What a person saw, each key if it was seen", Seen(), Need.Optional, "nothing was seen"),
        Date("closed", "2026-09-13", "The day from which on only corrections change this pass", "it may still be changed"),
        Text("seal", "9b1d07c2", "Digest of the values as they were closed or corrected, which `launchsim season` writes; a warning tells when they differ", Need.Optional, "changes by hand are not noticed"),
        new SchemaKey("corrections", new ListKind(Correction()), Need.Optional, "What was changed since it was closed", "", "", "none"),
        Text("notes", "Shook a little at 60 ft.", "Anything worth remembering", Need.Optional, "none")));

    /// <summary>Names of the moments below <c>seen</c>, in the order of the file.</summary>
    public static IReadOnlyList<string> Moments { get; } = [.. Seen().Keys.Where(key => key.Kind is MomentKind).Select(key => key.Name)];

    private static Section Log() => new(
        Text("file", "pass-2.csv", "The file, seen from this file's folder", Need.Geometry, null),
        Text("mapping", "logger.yaml", "The file that says which column is which quantity", Need.Optional, "the file says so itself"));

    private static Section Seen() => new(
        Optional("frames_per_second", QuantityKind.Number, Limits.Within(1, 100_000, "1 to 100,000"), "240", "no value may be a frame", "How many frames the video has in a second of the car's time", "The camera's setting while filming, not that of playing"),
        Optional("release_frame", QuantityKind.Number, Limits.NotNegative, "118", "frames count from 0 at the release", "The frame in which the release shows", "The last frame in which brake lights, a button's lamp or the still car say that it is held"),
        Optional("visible", QuantityKind.Length, Limits.Within(1e-4, 0.3, "0.1 mm to 300 mm"), "1/4 in", "1/4 in", "How far an end has to open before it is seen to move", "The width of a tape mark beside the wheel opening"),
        Word("first_up", "Which end is seen to move first; together means within one frame", Need.Optional, "not seen", "front", "rear", "together"),
        Moment("front_moves", "0.12 s", "When the front is seen to move", "First frame in which the front wheel opening has grown by `visible`", true),
        Moment("rear_moves", "frame 131", "When the rear is seen to move", "First frame in which the rear wheel opening has grown by `visible`", true),
        Moment("rear_open", "frame 170", "When the rear wheel opening first stands still", "First frame in which it does not grow any more; that it opens further later does not count", true),
        Moment("front_tires_leave", "never", "When the front tyres leave the ground", "First frame with light below them", true),
        Moment("front_tires_land", "0.55 s", "When they land", "First frame without light below them", true),
        Moment("spin_starts", "never", "When the rear tyres begin to spin", "First frame in which they turn faster than the car moves", true),
        Word("shake", "Whether the tyres shook; recorded and shown, not fitted, since the model has no tyre shake", Need.Optional, "not noted", "none", "light", "hard"),
        Row("marks", QuantityKind.Length, Limits.Positive, "60 ft", "Places of the timing beams", "The time slip", rising: true, need: Need.Optional, leftOut: "the car's `run.marks`"),
        new SchemaKey("times", new RowKind(QuantityKind.Time, Limits.Within(0, 60, "0 to 60 s"), Rising: true, Against: "marks", Doubted: true), Need.Optional, "Times at the marks as the beams see them: on a clock that starts when the car has rolled the car file's `run.rollout`", "The time slip", "1.52 s", "none"));

    private static Section Correction() => new(
        Date("when", "2026-09-14", "When it was corrected", null),
        Text("path", "seen.rear_open", "Which value of this file", Need.Geometry, null),
        Text("was", "frame 170", "What stood there", Need.Optional, "there was none"),
        Text("is", "frame 172", "What stands there now", Need.Optional, "it was taken away"),
        Text("why", "Counted from the wrong frame.", "Why", Need.Geometry, null));

    private static Section Rooted(Section section)
    {
        section.Hang("");
        return section;
    }
}
