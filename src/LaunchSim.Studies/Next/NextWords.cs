using System.Globalization;
using LaunchSim.Geometry;
using LaunchSim.Launch;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios;
using LaunchSim.Studies.Aims;

namespace LaunchSim.Studies.Next;

/// <summary>What is said of changes.</summary>
public static class NextWords
{
    /// <summary>What is said where the file has no <c>choices</c> and usual changes were tried.</summary>
    public const string Offered = "The file has no `choices`: what is tried here are changes that are usual on such a car, with usual minutes (common practice, no source). Write your own into the file, and nothing else is proposed.";

    /// <summary>What gains are.</summary>
    public const string Gains = "A gain is in points towards the aims; a negative one is a loss. One step and two steps from the present value were tried.";

    /// <summary>What to do with the list.</summary>
    public const string OneAtATime = "One change at a time: after the pass, compare, and ask again.";

    /// <summary>What is gained from one score to another: points, or a limit that is kept or broken; empty when one of them is none.</summary>
    /// <param name="now">The score as it stands.</param>
    /// <param name="then">The score after the change.</param>
    public static string Gain(AimScore now, AimScore then) => !now.Exists || !then.Exists ? ""
        : now.KeepsLimits != then.KeepsLimits ? then.KeepsLimits ? "keeps a limit" : "breaks a limit"
        : (now.Total - then.Total).ToString("+0.00;-0.00;0.00", CultureInfo.InvariantCulture);

    /// <summary>The conclusion in one or two sentences.</summary>
    /// <param name="result">What came of it.</param>
    /// <param name="scenario">The scenario as it stands.</param>
    /// <param name="readout">The units.</param>
    public static string Conclusion(NextResult result, Scenario scenario, Readout readout)
    {
        ArgumentNullException.ThrowIfNull(result);
        if (!result.Score.Exists)
        {
            return "The set-up as it stands does not come to the end of its launch; nothing can be ranked against it.";
        }

        NextChange? best = result.Singles.FirstOrDefault(result.Helps);
        string pair = result.Pairs.Count > 0 ? $" Two together do more: {Change(result.Pairs[0], scenario)}, both or neither, {AimWords.Score(result.Pairs[0].Score)}." : "";
        if (best is null)
        {
            return $"No single change helps by more than {AimWords.Points(NextResult.Noticeable)} points; as it stands the score is {AimWords.Score(result.Score)}.{pair}";
        }

        string time = best.Minutes is { } minutes ? $", {Minutes(minutes)} of work" : "";
        return $"Change {Change(best, scenario)}{time}: the score goes from {AimWords.Score(result.Score)} to {AimWords.Score(best.Score)} points, {Effect(result, best, readout)}.{pair}";
    }

    /// <summary>A change: <c>rear.damper.extension.set 6 → 8, counted from soft</c>.</summary>
    /// <param name="change">The change.</param>
    /// <param name="scenario">The scenario as it stands.</param>
    public static string Change(NextChange change, Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(change);
        return string.Join(" and ", change.Changes.Select(one => Change(one, scenario)));
    }

    /// <summary>One setting put to another value.</summary>
    /// <param name="change">The change.</param>
    /// <param name="scenario">The scenario as it stands.</param>
    public static string Change(SingleChange change, Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(change);
        ArgumentNullException.ThrowIfNull(scenario);
        string path = change.Edit.Path;
        string? now = scenario.FindText(path) ?? scenario.Find(path) switch
        {
            { Count: 1 } number => new Scenarios.Units.Quantity(number.Numbers, number.Unit).ToString(),
            _ => null,
        };
        string counted = path.EndsWith(".set", StringComparison.Ordinal) && scenario.Clicks.TryGetValue(path[..^4], out ClickInfo? clicks) && clicks.CountFrom is { } from ? $", counted from {from}" : "";
        return now is null ? $"{change.Setting.Path} to {change.Edit.Value}{counted}" : $"{change.Setting.Path} {Short(now, change.Edit.Value)} → {change.Edit.Value}{counted}";
    }

    /// <summary>The new lengths of bars whose holes a change moves; none when it moves none.</summary>
    /// <param name="change">The change.</param>
    /// <param name="scenario">The scenario as it stands.</param>
    /// <param name="readout">The units.</param>
    public static IReadOnlyList<string> Bars(NextChange change, Scenario scenario, Readout readout)
    {
        ArgumentNullException.ThrowIfNull(change);
        ArgumentNullException.ThrowIfNull(scenario);
        if (!change.Changes.Any(one => one.Edit.Path.StartsWith("rear.linkage.", StringComparison.Ordinal)) || scenario.Car is not { } before || change.Scenario?.Car is not { } after
            || !StandingCar.TryFind(before, out StandingCar? now, out _) || !StandingCar.TryFind(after, out StandingCar? then, out _))
        {
            return [];
        }

        var lengths = new List<string>();
        for (int i = 0; i < Math.Min(now!.Line.Bars.Count, then!.Line.Bars.Count); i++)
        {
            (BarAngle old, BarAngle bar) = (now.Line.Bars[i], then.Line.Bars[i]);
            if (Math.Abs(bar.Length - old.Length) > 1e-6 || bar.Climb != old.Climb)
            {
                lengths.Add($"{bar.Name} {BarLengthWords.Of(new BarChange(bar.Name, bar.Length, bar.Length - old.Length), readout)}");
            }
        }

        return lengths;
    }

    /// <summary>Minutes as they are said.</summary>
    /// <param name="minutes">The time.</param>
    public static string Minutes(double minutes) => string.Create(CultureInfo.InvariantCulture, $"{minutes:0.#} min");

    /// <summary>The aim that moves most, in its own unit.</summary>
    private static string Effect(NextResult result, NextChange change, Readout readout)
    {
        IReadOnlyList<AimPart> before = result.Aims.Parts(result.Now), after = result.Aims.Parts(change.Figures);
        int most = Enumerable.Range(0, before.Count).OrderByDescending(i => Math.Abs(after[i].Points - before[i].Points) * Math.Max(after[i].Aim.Weight, after[i].Aim.IsLimit ? 1 : 0)).First();
        Aim aim = before[most].Aim;
        return $"{aim.Subject.Words} from {AimWords.Value(aim, before[most].Value, readout)} to {AimWords.Value(aim, after[most].Value, readout)}";
    }

    // A unit that both have is said once.
    private static string Short(string now, string then)
    {
        int unit = now.IndexOf(' ', StringComparison.Ordinal);
        return unit > 0 && then.EndsWith(now[unit..], StringComparison.Ordinal) ? now[..unit] : now;
    }
}
