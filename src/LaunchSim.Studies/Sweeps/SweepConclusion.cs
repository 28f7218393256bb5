using System.Globalization;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios.Varying;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Grids;

namespace LaunchSim.Studies.Sweeps;

/// <summary>What a sweep shows, in one plain sentence, and what has to be known beside it.</summary>
public static class SweepConclusion
{
    // A step against the direction that is less than this share of the whole change is no turn.
    private const double Noise = 0.02;

    // A change of less than this share of a point is nothing to a person.
    private const double Little = 0.25;

    /// <summary>The sentence.</summary>
    /// <param name="tally">What came of the sweep.</param>
    public static string Of(SweepTally tally)
    {
        ArgumentNullException.ThrowIfNull(tally);
        if (tally.Best is null)
        {
            return $"None of the {Count(tally.Count)} launches came to its end; the first: {tally.FirstFailed?.Trouble}.";
        }

        string lead = tally.Plan.Grid.Variations is [var only] && tally.Rows is not null ? Along(tally, only) : Over(tally);
        return $"{lead}; {Best(tally)}.";
    }

    /// <summary>What has to be known beside it, a sentence each.</summary>
    /// <param name="tally">What came of the sweep.</param>
    public static IReadOnlyList<string> Notes(SweepTally tally)
    {
        ArgumentNullException.ThrowIfNull(tally);
        var notes = new List<string>();
        if (tally.Best is not null && tally.FirstFailed is { } failed)
        {
            notes.Add($"{Count(tally.Failed)} of the {Count(tally.Count)} launches did not come to {(tally.Failed == 1 ? "its" : "their")} end; the first, at {SetUp(tally.Plan, failed.SetUp)}: {failed.Trouble}.");
        }

        if (tally.BeyondLimits > 0)
        {
            string limits = string.Join(", ", tally.Plan.Aims.Aims.Where(aim => aim.IsLimit).Select(aim => aim.Subject.Words));
            notes.Add(tally.BeyondLimits == tally.Count - tally.Failed ? $"Every set-up breaks a limit ({limits}); they are ranked by score and points beyond it together."
                : tally.BeyondLimits == 1 ? $"One set-up breaks a limit ({limits}) and is ranked after all that do not."
                : $"{Count(tally.BeyondLimits)} set-ups break a limit ({limits}) and are ranked after all that do not.");
        }

        if (tally.Plan.HoldsGrip)
        {
            notes.Add("All of it is with the grip of the present pressures: what an entered grip-for-pressure slope adds is in the table of --csv, and does not rank.");
        }

        return notes;
    }

    /// <summary>What a set-up is, in words.</summary>
    /// <param name="plan">What is run.</param>
    /// <param name="setUp">The set-up's number; below 0 for the present one.</param>
    public static string SetUp(GridPlan plan, long setUp)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return setUp < 0 ? "the present set-up"
            : plan.Grid.Variations is [var only] ? only.Values[(int)setUp].Value
            : string.Join(" and ", plan.Grid.Variations.Select((variation, i) => $"{variation.Path} {variation.Values[plan.Grid.Place(setUp, i)].Value}"));
    }

    // The aim whose share of the score changes most; of figures that were asked for, the first.
    private static int Leading(SweepTally tally)
    {
        int leading = 0;
        double most = 0;
        for (int i = 0; i < tally.Measures.Count; i++)
        {
            if (tally.Measures[i] is { Aim: { } aim } measure && tally.Ends(i) is { } ends)
            {
                double change = (aim.IsLimit ? 1 : aim.Weight) * Math.Abs(aim.PointsOf(measure.Of(ends.Most)) - aim.PointsOf(measure.Of(ends.Least)));
                if (change > most)
                {
                    (leading, most) = (i, change);
                }
            }
        }

        return leading;
    }

    private static string Along(SweepTally tally, Variation variation)
    {
        int leading = Leading(tally);
        Measure measure = tally.Measures[leading];
        string what = variation.Values.Count == 1 ? $"{variation.Path} at {variation.Values[0].Value}"
            : variation.IsScale ? $"{variation.Path} from {FromTo(variation.Values[0].Value, variation.Values[^1].Value)}"
            : $"{variation.Path} at {string.Join(", ", variation.Values.Take(8).Select(value => value.Value))}{(variation.Values.Count > 8 ? ", …" : "")}";
        (GridRow Row, double Value)[] seen = [.. tally.Rows!.Select(row => (row, measure.Of(row))).Where(one => double.IsFinite(one.Item2))];
        return seen.Length == 0 ? $"{what}: {measure.Words} has no value in any launch"
            : $"{what}: {measure.Words} {(variation.IsScale ? Course(tally.Plan, measure, seen) : Ends(tally, leading))}";
    }

    private static string Over(SweepTally tally)
    {
        int leading = Leading(tally);
        Measure measure = tally.Measures[leading];
        string course = "has no value";
        if (tally.Ends(leading) is { } ends)
        {
            (string low, string high) = (Text(measure.Scale, measure.Of(ends.Least)), Text(measure.Scale, measure.Of(ends.Most)));
            course = low == high ? $"stays at {low}" : $"lies between {FromTo(low, high).Replace(" to ", " and ", StringComparison.Ordinal)}";
        }

        return $"Over the {Count(tally.Count)} set-ups {measure.Words} {course}";
    }

    private static string Ends(SweepTally tally, int measure)
    {
        Scale scale = tally.Measures[measure].Scale;
        (GridRow least, GridRow most) = tally.Ends(measure)!.Value;
        double low = tally.Measures[measure].Of(least), high = tally.Measures[measure].Of(most);
        return scale.Number(low) == scale.Number(high) ? $"stays at {Text(scale, low)}"
            : $"is least, {Text(scale, low)}, at {SetUp(tally.Plan, least.SetUp)} and most, {Text(scale, high)}, at {SetUp(tally.Plan, most.SetUp)}";
    }

    private static string Course(GridPlan plan, Measure measure, (GridRow Row, double Value)[] seen)
    {
        Scale scale = measure.Scale;
        string Number(double value) => scale.Number(value);
        double first = seen[0].Value, last = seen[^1].Value, low = seen.Min(one => one.Value), high = seen.Max(one => one.Value);
        if (Number(low) == Number(high))
        {
            return $"stays at {Text(scale, first)}";
        }

        if (measure.Aim is { } aim && high - low < Little * aim.Point)
        {
            return $"hardly changes, {FromTo(Text(scale, low), Text(scale, high))}";
        }

        int down = Array.FindIndex(seen, one => one.Value == low), up = Array.FindIndex(seen, one => one.Value == high);
        double noise = Noise * (high - low);
        bool Rises(int from, int to) => Runs(seen, from, to, noise, 1);
        bool Falls(int from, int to) => Runs(seen, from, to, noise, -1);
        int end = seen.Length - 1;
        return Rises(0, end) ? $"rises from {FromTo(Text(scale, first), Text(scale, last))}"
            : Falls(0, end) ? $"falls from {FromTo(Text(scale, first), Text(scale, last))}"
            : Falls(0, down) && Rises(down, end) ? $"falls from {FromTo(Text(scale, first), Text(scale, low))} at {SetUp(plan, seen[down].Row.SetUp)} and rises to {Text(scale, last)}"
            : Rises(0, up) && Falls(up, end) ? $"rises from {FromTo(Text(scale, first), Text(scale, high))} at {SetUp(plan, seen[up].Row.SetUp)} and falls to {Text(scale, last)}"
            : $"goes up and down between {Text(scale, low)} at {SetUp(plan, seen[down].Row.SetUp)} and {Text(scale, high)} at {SetUp(plan, seen[up].Row.SetUp)}";
    }

    private static bool Runs((GridRow Row, double Value)[] seen, int from, int to, double noise, int sign)
    {
        double farthest = seen[from].Value;
        for (int i = from + 1; i <= to; i++)
        {
            if (sign * (seen[i].Value - farthest) < -noise)
            {
                return false;
            }

            farthest = sign > 0 ? Math.Max(farthest, seen[i].Value) : Math.Min(farthest, seen[i].Value);
        }

        return sign * (seen[to].Value - seen[from].Value) > 0;
    }

    private static string Best(SweepTally tally)
    {
        GridRow best = tally.Best!.Value;
        Scale scale = AimNumbers.Score;
        string points = Text(scale, best.Score.Points);
        if (tally.Count == 1)
        {
            return $"the score is {points}";
        }

        if (tally.BestCount == tally.Count - tally.Failed)
        {
            return $"all {Count(tally.BestCount)} {(tally.Failed > 0 ? "that came to their end " : "")}score the same, {points}";
        }

        // Not told apart with the digits that are shown.
        if (tally.Ends(tally.Measures.Count - 1) is { } ends && tally.BeyondLimits is var beyond && (beyond == 0 || beyond == tally.Count - tally.Failed)
            && scale.Number(ends.Least.Score.Points) == scale.Number(ends.Most.Score.Points))
        {
            return $"all {Count(tally.Count - tally.Failed)} {(tally.Failed > 0 ? "that came to their end " : "")}score about the same, {points}";
        }

        bool isPresent = tally.Present is { Trouble: null } now && now.Score.CompareTo(best.Score) == 0;
        string others = tally.BestCount > 1 ? $" and {Count(tally.BestCount - 1)} other{(tally.BestCount > 2 ? "s" : "")}" : "";
        string compared = isPresent ? ", no better than now"
            : tally.Present is { Trouble: null } like && like.Score.KeepsLimits == best.Score.KeepsLimits && scale.Number(like.Score.Points) == scale.Number(best.Score.Points) ? ", hardly better than now" : tally.Present is { Trouble: null } present ? $" (now {scale.Number(present.Score.Points)}{(present.Score.KeepsLimits ? "" : ", beyond a limit")})" : "";
        return $"the best score of the {Count(tally.Count)} set-ups, {points}{compared}, is at {SetUp(tally.Plan, best.SetUp)}{others}{(tally.BestCount > 1 ? "" : Edge(tally.Plan, best.SetUp))}";
    }

    private static string Edge(GridPlan plan, long setUp)
    {
        var edges = new List<string>();
        for (int i = 0; i < plan.Grid.Variations.Count; i++)
        {
            Variation variation = plan.Grid.Variations[i];
            int place = plan.Grid.Place(setUp, i), last = variation.Values.Count - 1;
            if (!variation.IsScale || last == 0 || (place > 0 && place < last))
            {
                continue;
            }

            bool isMore = variation.Values[place].Quantity!.Si() > variation.Values[last - place].Quantity!.Si();
            string of = plan.Grid.Variations.Count == 1 ? "" : $" of {variation.Path}";
            edges.Add($"the {(place == 0 ? "first" : "last")} value{of} tried: {(isMore ? "more" : "less")} may be better still");
        }

        return edges.Count == 0 ? "" : ", " + string.Join(", and ", edges);
    }

    // One unit for both when they have the same.
    private static string FromTo(string from, string to)
    {
        int blank = from.IndexOf(' ', StringComparison.Ordinal), other = to.IndexOf(' ', StringComparison.Ordinal);
        return blank > 0 && other > 0 && from[blank..] == to[other..] ? $"{from[..blank]} to {to}" : $"{from} to {to}";
    }

    private static string Text(Scale scale, double value) => scale.Unit.Length == 0 ? scale.Number(value) : scale.Text(value);

    private static string Count(long count) => count.ToString("#,0", CultureInfo.InvariantCulture);
}
