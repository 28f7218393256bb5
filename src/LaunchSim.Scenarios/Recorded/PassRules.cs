using LaunchSim.Scenarios.Reading;

namespace LaunchSim.Scenarios.Recorded;

/// <summary>What holds between the values of a pass file.</summary>
internal static class PassRules
{
    // Beyond as many standard deviations two observations contradict each other.
    private const double Surely = 2;

    public static void Check(BoundValues values, SeenFacts seen, MapNode root, Findings findings)
    {
        Hexadecimal(values, "car_hash", "the content hash, or eight of its first characters or more", findings);
        Hexadecimal(values, "seal", "as launchsim season wrote it", findings);
        if (values.Find("seen.marks") is { } marks && values.Find("seen.times") is null && !findings.Has("seen.times"))
        {
            findings.Error(marks.Place, marks.Path, "marks without times", "a time for each mark", "add times: with the times from the slip, or take marks away");
        }

        Order(values, seen, findings);
        FirstUpAgrees(values, seen, findings);
        Closing(values, root, findings);
    }

    private static void Hexadecimal(BoundValues values, string key, string allowed, Findings findings)
    {
        if (values.Find(key) is { } bound && bound.Text.Trim() is var text && (text.Length is < 8 or > 64 || !text.All(char.IsAsciiHexDigit)))
        {
            findings.Error(bound.Place, key, $"{Shown.Quoted(text)}, which is no hash", $"8 to 64 of 0 to 9 and a to f: {allowed}", "copy it, or take the key away");
        }
    }

    private static void Order(BoundValues values, SeenFacts seen, Findings findings)
    {
        Order("rear_moves", seen.RearMoves, "rear_open", seen.RearOpen, "the rear is open after it has moved");
        Order("front_tires_leave", seen.FrontTiresLeave, "front_tires_land", seen.FrontTiresLand, "tyres land after they have left");

        void Order(string first, SeenMoment? one, string second, SeenMoment? other, string mend)
        {
            if (one is null || other is null || other.Bound is SeenBound.Never or SeenBound.After)
            {
                return;
            }

            Place place = values.Find($"seen.{second}")!.Place;
            if (one.IsNever)
            {
                findings.Error(place, $"seen.{second}", $"{Shown.Quoted(other.Written)}, and `never` at {first}", "both, or neither", $"{mend}: look which is right");
            }
            else if (one.Bound != SeenBound.Before && other.Time < one.Time)
            {
                findings.Error(place, $"seen.{second}", $"{Shown.Quoted(other.Written)}, before {Shown.Quoted(one.Written)} at {first}", $"at or after {first}", $"{mend}: look which is which");
            }
        }
    }

    private static void FirstUpAgrees(BoundValues values, SeenFacts seen, Findings findings)
    {
        if (seen is not { FirstUp: { } said, FrontMoves: { } front, RearMoves: { } rear })
        {
            return;
        }

        string? times = front.IsNever && rear.IsNever ? "neither end moves"
            : front.IsNever ? said == FirstUp.Rear ? null : "only the rear moves"
            : rear.IsNever ? said == FirstUp.Front ? null : "only the front moves"
            : front.Bound != SeenBound.At || rear.Bound != SeenBound.At ? null
            : ByTimes(said, front.Time - rear.Time, Surely * (front.Sd + rear.Sd), seen.Together);
        if (times is not null)
        {
            Bound word = values.Find("seen.first_up")!;
            findings.Error(word.Place, word.Path, $"`{word.Text}`, and by front_moves and rear_moves {times}", "words and times that agree within their doubt", "keep what you are surer of");
        }
    }

    private static string? ByTimes(FirstUp said, double lag, double doubt, double together) => said switch
    {
        FirstUp.Front when lag > doubt => "the rear moves first",
        FirstUp.Rear when lag < -doubt => "the front moves first",
        FirstUp.Together when Math.Abs(lag) > together + doubt => lag > 0 ? "the rear moves first" : "the front moves first",
        _ => null,
    };

    private static void Closing(BoundValues values, MapNode root, Findings findings)
    {
        Bound? closed = values.Find("closed");
        if (closed is not null && DateText.TryRead(closed.Text, out DateTime end) && values.Find("when") is { } when && DateText.TryRead(when.Text, out DateTime start) && end.Date < start.Date)
        {
            findings.Error(closed.Place, "closed", $"{Shown.Quoted(closed.Text)}, before the pass of {Shown.Quoted(when.Text)}", "the day of the pass or later", "look at both days");
        }

        int count = values.CountOf("corrections");
        if (count > 0 && closed is null && !findings.Has("closed"))
        {
            findings.Error(values.PlaceOf("corrections[0]", root.Place), "corrections", "corrections of a pass that is not closed", "a pass that is closed, or changes without ado", "add closed: with its day, or take corrections away");
        }

        for (int i = 0; i < count; i++)
        {
            string at = $"corrections[{i}]";
            if (values.Find($"{at}.path") is { } path && !PassPath.IsKnown(path.Text.Trim(), out string? nearest))
            {
                findings.Error(path.Place, path.Path, $"{Shown.Quoted(path.Text)}, which no pass file has", "a path of this file, such as seen.rear_open or changed.rear.spring.rate", nearest is null ? "look the path up in the reference" : $"did you mean `{nearest}`?");
            }

            if (values.HasSection(at) && values.Find($"{at}.was") is null && values.Find($"{at}.is") is null)
            {
                findings.Error(values.PlaceOf(at, root.Place), at, "a correction with neither `was` nor `is`", "what stood there, what stands there now, or both", "say what was corrected");
            }
        }
    }
}
