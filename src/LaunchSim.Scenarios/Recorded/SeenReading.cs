using System.Globalization;
using LaunchSim.Scenarios.Reading;
using LaunchSim.Scenarios.Schema;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Recorded;

/// <summary>Bound values below <c>seen</c> → facts in SI, and what holds between them.</summary>
internal static class SeenReading
{
    /// <summary>Everything but the places of the beams, for which the car has to be read.</summary>
    public static SeenFacts Of(BoundValues values, Findings findings)
    {
        double? rate = values.FindNumber("seen.frames_per_second");
        double release = values.FindNumber("seen.release_frame") ?? 0;
        return new SeenFacts
        {
            FramesPerSecond = rate,
            ReleaseFrame = release,
            Visible = values.FindNumber("seen.visible") ?? SeenDoubt.UsualVisible,
            FirstUp = values.Find("seen.first_up")?.Text is { } end ? Enum.Parse<FirstUp>(end, ignoreCase: true) : null,
            FrontMoves = Moment("front_moves"),
            RearMoves = Moment("rear_moves"),
            RearOpen = Moment("rear_open"),
            FrontTiresLeave = Moment("front_tires_leave"),
            FrontTiresLand = Moment("front_tires_land"),
            SpinStarts = Moment("spin_starts"),
            Shake = values.Find("seen.shake")?.Text is { } shake ? Enum.Parse<Shake>(shake, ignoreCase: true) : null,
        };

        SeenMoment? Moment(string key) => values.Find($"seen.{key}") is { Moment: { } text } bound ? Timed(text, bound, rate, release, findings) : null;
    }

    /// <summary>With the times at the beams, whose places are the car's marks where the pass names none.</summary>
    public static SeenFacts WithMarks(SeenFacts seen, BoundValues values, Scenario? car, Findings findings)
    {
        if (values.Find("seen.times") is not { Quantity: { } times } bound)
        {
            return seen;
        }

        double[]? places = values.Find("seen.marks") is { } marks ? marks.Quantity!.AllSi() : car?.Run.Marks.ToArray();
        if (places is null)
        {
            return seen;
        }

        if (places.Length != times.Count)
        {
            string found = places.Length == 0 ? "times without marks: neither this file nor the car's names any" : $"{times.Count} of them, and {places.Length} marks in the car's file";
            findings.Error(bound.Place, bound.Path, found, "a time for each mark", "add marks: with the places of the beams, as in marks: 60 ft");
            return seen;
        }

        return seen with
        {
            Marks = [.. places.Select((place, i) => new SeenMark(
                place, times.Si(i), times.SiDoubt(i) is { } half ? SeenDoubt.OfWritten(Math.Max(half, Least)) : SeenDoubt.OfWritten(SeenDoubt.UsualBeam), Written(times, i)))],
        };
    }

    // A ± of nothing at all is taken for the thousandth that a time slip shows.
    private const double Least = 1e-4;

    private static string Written(Quantity times, int i)
    {
        string half = times.SiDoubt(i) is { } doubt ? string.Create(CultureInfo.InvariantCulture, $" ±{doubt / times.Unit.Factor:G6}") : "";
        return string.Create(CultureInfo.InvariantCulture, $"{times.Numbers[i]:R}{half} {times.Unit.Text}");
    }

    private static SeenMoment? Timed(MomentText text, Bound bound, double? rate, double release, Findings findings)
    {
        string written = ((ScalarNode)bound.Node).Text.Trim();
        Place place = ((ScalarNode)bound.Node).PlaceOf(text.NumberAt);
        if (text.Bound == SeenBound.Never)
        {
            return SeenMoment.Never(written);
        }

        if (text.IsFrame && rate is null)
        {
            findings.Error(place, bound.Path, $"{Shown.Quoted(written)} without `frames_per_second`", "frames with their rate, or a time", "add frames_per_second: 240, as the camera was set while filming");
            return null;
        }

        if (text.IsFrame && text.Number < release)
        {
            findings.Error(place, bound.Path, $"{Shown.Quoted(written)}, before the release in frame {release.ToString("R", CultureInfo.InvariantCulture)}", "a frame at or after the release", "look at release_frame and at the frame");
            return null;
        }

        if (!text.IsFrame && text.Number < 0)
        {
            findings.Error(place, bound.Path, $"{Shown.Quoted(written)}, before the release", "0 s or more, counted from the release", "look at the sign");
            return null;
        }

        double frame = text.IsFrame ? 1 / rate!.Value : 1;
        double time = (text.Number - (text.IsFrame ? release : 0)) * frame;
        if (time > PassRun.Longest)
        {
            findings.Error(place, bound.Path, $"{Shown.Quoted(written)}, {time.ToString("G4", CultureInfo.InvariantCulture)} s after the release", $"at most {PassRun.Longest} s, the longest run there is", text.IsFrame ? "look at frames_per_second and release_frame" : "look at the unit");
            return null;
        }

        double sd = text.HalfWidth is { } half ? SeenDoubt.OfWritten(Math.Max(half * frame, Least)) : SeenDoubt.OfUniform(text.IsFrame ? SeenDoubt.UsualFrames * frame : SeenDoubt.UsualTime);
        return new SeenMoment(time, sd, written, text.Bound);
    }
}
