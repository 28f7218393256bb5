using LaunchSim.Scenarios.Reading;
using LaunchSim.Scenarios.Schema;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Recorded;

/// <summary>Reads files of marks. Whatever a file holds comes back as marks or as errors; it throws for no content.</summary>
/// <param name="quantities">What may be marked.</param>
public sealed class HandMarksReader(IReadOnlyList<RecordedQuantity> quantities)
{
    private const string Shape = "marks: a list under `marks:`";

    /// <summary>Reads a file.</summary>
    /// <param name="path">The file, as errors are to name it.</param>
    public HandMarksResult Read(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        var findings = new Findings();
        if (ScenarioText.Read(path, path, new Place(path, 0, 0), findings, "marks") is not { } text)
        {
            return new HandMarksResult(null, findings.Errors());
        }

        Node? node = NodeReader.Read(text, path, findings, Shape);
        if (node is not MapNode root)
        {
            if (node is not null)
            {
                findings.Error(node.Place, "", $"{Binder.Describe(node)} where marks are due", Shape, "see docs/logs.md");
            }

            return new HandMarksResult(null, findings.Errors());
        }

        if (root.Get("marks") is null && (root.Get("car") is not null || root.Get("base") is not null || root.Get("columns") is not null))
        {
            string what = root.Get("columns") is null ? "a scenario" : "a mapping";
            string mend = root.Get("columns") is null ? "name the log after the scenario" : "name it after --mapping, and the log that it is for in its place";
            findings.Error(root.Place, "", $"{what} where a log is due", Shape, mend);
            return new HandMarksResult(null, findings.Errors());
        }

        BoundValues values = Binder.Bind(MarkKeys.Of(quantities), root, findings);
        List<HandMark> marks = Marks(values, root, findings);
        double? perSecond = values.FindNumber("frames_per_second");
        Bound? frame = values.Find("release_frame"), time = values.Find("release");
        if (frame is not null && time is not null)
        {
            findings.Error(time.Place, time.Path, "`release` and `release_frame` together", "one of them", "take one away");
        }

        if (frame is not null && perSecond is null)
        {
            findings.Error(frame.Place, frame.Path, "a frame without `frames_per_second`", "how many frames a second the video has", "add frames_per_second: 240");
        }

        return new HandMarksResult(findings.HasErrors ? null : new HandMarks
        {
            Name = values.Find("name")?.Text.Trim() is { Length: > 0 } name ? name : Path.GetFileNameWithoutExtension(path),
            SourceFile = path,
            Marks = marks,
            FramesPerSecond = perSecond,
            Release = time?.Quantity!.Si() ?? frame?.Quantity!.Si() / perSecond,
            ReleaseDoubt = time?.Quantity!.SiDoubt() ?? frame?.Quantity!.SiDoubt() / perSecond,
            ParallaxDoubt = values.Number("parallax.doubt", 0),
        }, findings.Errors());
    }

    private List<HandMark> Marks(BoundValues values, MapNode root, Findings findings)
    {
        double? perSecond = values.FindNumber("frames_per_second");
        var marks = new List<HandMark>();
        int count = values.CountOf("marks");
        if (count == 0 && root.Get("marks") is ListNode none)
        {
            findings.Error(none.Place, "marks", "no mark at all", "at least one", "write - {frame: 120, rear_gap: 1/2 in}");
        }

        for (int i = 0; i < count; i++)
        {
            string at = $"marks[{i}]";
            Place place = values.PlaceOf(at, root.Place);
            Bound? frame = values.Find($"{at}.frame"), time = values.Find($"{at}.time");
            MarkedValue[] seen = [.. quantities.Select(quantity => (quantity.Key, Bound: values.Find($"{at}.{quantity.Key}"))).Where(one => one.Bound is not null)
                .Select(one => new MarkedValue(one.Key, one.Bound!.Quantity!.Si(), one.Bound.Quantity.SiDoubt()))];
            if (frame is null == time is null)
            {
                findings.Error(place, at, frame is null ? "a mark without frame or time" : "a mark with both frame and time", "one of frame and time", frame is null ? "add frame: 120, or time: 0.22 s" : "take one away");
            }
            else if (frame is not null && perSecond is null)
            {
                findings.Error(frame.Place, frame.Path, "a frame without `frames_per_second`", "how many frames a second the video has", "add frames_per_second: 240 above the marks");
            }
            else if (seen.Length == 0)
            {
                findings.Error(place, at, "a mark of nothing", $"at least one of {string.Join(", ", quantities.Select(quantity => quantity.Key))}", "add what was seen, as in rear_gap: 1/2 in");
            }
            else
            {
                marks.Add(new HandMark(time?.Quantity!.Si() ?? frame!.Quantity!.Si() / perSecond!.Value, seen, at, WrittenPlace.Of(place)));
            }
        }

        return marks;
    }
}
