using LaunchSim.Scenarios.Units;
using static LaunchSim.Scenarios.Schema.Keys;

namespace LaunchSim.Scenarios.Schema;

/// <summary>The mapping file: which column of a log is which quantity in which unit, and how its rows and times are written.</summary>
internal static class MappingKeys
{
    /// <summary>Words for separators, with the character that each stands for.</summary>
    public static IReadOnlyList<(string Word, char Character)> Separators { get; } = [("comma", ','), ("semicolon", ';'), ("tab", '\t'), ("space", ' '), ("bar", '|')];

    /// <summary>Words for units of a time column, with their seconds; <c>clock</c> is hours, minutes and seconds with colons between.</summary>
    public static IReadOnlyList<(string Word, double Seconds)> TimeUnits { get; } = [("s", 1), ("ms", 1e-3), ("us", 1e-6), ("min", 60), ("h", 3600), ("clock", 1)];

    /// <summary>All its keys.</summary>
    public static Section Mapping { get; } = Hung(new Section(
        Text("name", "Dash logger of the door car", "What this mapping is called", Need.Optional, "the file's name"),
        Text("notes", "Both rear sensors sit on the left.", "Anything worth remembering", Need.Optional, "none"),
        Part("table", "How the rows are written", Table(), Need.Optional, "told from the file itself"),
        Part("time", "Which instant a row belongs to", Time(), Need.Geometry),
        new SchemaKey("columns", new ListKind(Column()), Need.Geometry, "Which column is which quantity", "", "- {column: Rear RH, quantity: rear_ride_height, unit: mm}", null),
        Part("parallax", "What a camera that does not stand square to the car adds", Parallax(), Need.Optional, "none")));

    /// <summary>Keys of what parallax does: also in a file of marks.</summary>
    public static Section Parallax() => new(
        Number("doubt", QuantityKind.Number, Limits.Within(0, 0.5, "0 to 50 %"), "3 %", "How far off all lengths may be together, nineteen times in twenty", "How much nearer to the camera the mark is than the scale, over the distance of the camera", Need.Geometry),
        Text("note", "Camera 12 m away, sill 0.3 m nearer than the wheel", "Where the camera stood", Need.Optional, "none"));

    private static Section Table() => new(
        Word("separator", "What parts the cells of a row", Need.Optional, "told from the file", [.. Separators.Select(one => one.Word)]),
        Word("decimal", "What parts whole and decimals", Need.Optional, "told from the file", "point", "comma"),
        Text("comment", "#", "The character with which lines begin that are no rows", Need.Optional, "none"),
        Word("header", "Whether a row names the columns; without one columns are named by number, as in #3", Need.Optional, "names", "names", "none"),
        Optional("header_line", QuantityKind.Number, Limits.Within(1, 100_000, "1 to 100,000"), "14", "the first line that has all names of this mapping", "The line of the file in which the names stand", "Count from 1, empty lines too"),
        Text("missing", "-999 n/a", "Words that stand for no value, with spaces between; an empty cell and NaN always do", Need.Optional, "none"));

    private static Section Time() => new()
    {
        Forms =
        [
            new Form("a column", "A column has the time", new Section(
                Text("column", "Time", "The column of the time", Need.Geometry, null),
                Word("unit", "The unit of its numbers; `clock` is h:mm:ss or mm:ss with decimals", Need.Geometry, null, [.. TimeUnits.Select(one => one.Word)]),
                Release()), "column"),
            new Form("frames", "A column has the frame of a video", new Section(
                Text("frame", "Frame", "The column of the frame's number", Need.Geometry, null),
                Frames(),
                ReleaseFrame()), "frame"),
            new Form("a rate", "Rows come at a fixed rate", new Section(
                Optional("rate", QuantityKind.Frequency, Limits.Positive, "200 Hz", "a time column or frames", "How many rows come each second", "The logger's own setting"),
                Release()), "rate"),
        ],
    };

    /// <summary>How many frames a second a video has.</summary>
    public static SchemaKey Frames() => Number("frames_per_second", QuantityKind.Number, Limits.Within(1, 1e6, "1 to 1,000,000"), "240", "How many frames a second the video was taken with", "The camera's setting while taking, not that of the slowed film", Need.Geometry);

    /// <summary>The frame of the release.</summary>
    public static SchemaKey ReleaseFrame() => Optional("release_frame", QuantityKind.Number, Limits.Any, "96 ±1", "found by laying the data over the prediction", "The frame of the release, where it was seen", "The hand at the button, a lamp; not the first movement of the car");

    private static SchemaKey Release() => Optional("release", QuantityKind.Time, Limits.Any, "12.40 ±0.01 s", "found by laying the data over the prediction", "The release on the log's own clock, where it was recorded", "A channel of the button; not the first movement of the car");

    private static Section Column() => new(
        Text("column", "Rear RH", "The column's name as it stands in the log, or #3 for the third one", Need.Geometry, null),
        Text("quantity", "rear_ride_height", "What it measures", Need.Geometry, null),
        Optional("scale", QuantityKind.Number, Limits.Positive, "1", "1", "What the column's number is multiplied with before it has the unit", "From a sensor's sheet, as mm for each volt; or the linkage between sensor and what it measures"),
        Text("zero", "118 mm", "The reading of the standing car, after the scale", Need.Optional, "for heights, travels, angles, acceleration and pitch rate the mean before the release; for speeds 0"),
        Word("reversed", "Whether it falls where it should rise", Need.Optional, "no", "no", "yes"),
        Optional("ratio", QuantityKind.Number, Limits.Positive, "4.10", "the scenario's final_drive", "Turns of the driveshaft for one of the axle", "Count the teeth, or turn it by hand"),
        Optional("radius", QuantityKind.Length, Limits.Positive, "13.1 in", "the scenario's loaded radius", "Rolling radius, where a wheel's turning is logged as a speed over the ground", "What the logger was set to: its rollout divided by 2π"),
        Text("noise", "0.5 mm", "What one value is off by at random, one standard deviation", Need.Optional, "what such channels usually have"))
    {
        Forms =
        [
            new Form("a unit", "Its numbers have a unit", new Section(Text("unit", "mm", "The unit of its numbers, after the scale", Need.Geometry, null)), "unit"),
            new Form("pixels", "Its numbers are rows of a picture", new Section(
                Number("pixel", QuantityKind.Length, Limits.Positive, "2.1 ±0.1 mm", "What one pixel is at the car", "Something of known height beside the mark, such as the wheel, measured in pixels", Need.Geometry),
                Word("rows", "Which way the picture's rows are counted", Need.Optional, "down", "down", "up")), "pixel"),
        ],
    };

    private static Section Hung(Section section)
    {
        section.Hang("");
        return section;
    }
}
