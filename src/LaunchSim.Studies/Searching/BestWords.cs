using System.Globalization;
using LaunchSim.Scenarios;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Grids;
using LaunchSim.Studies.Words;

namespace LaunchSim.Studies.Searching;

/// <summary>What is said of a search for the best set-up.</summary>
public static class BestWords
{
    /// <summary>The conclusion in one or two sentences.</summary>
    /// <param name="result">What came of it.</param>
    /// <param name="present">The score of the set-up as it stands; null when its launch fails.</param>
    public static string Conclusion(BestResult result, AimScore? present)
    {
        ArgumentNullException.ThrowIfNull(result);
        SetUpGrid grid = result.Plan.Grid;
        string size = grid.Size.ToString("#,0", CultureInfo.InvariantCulture), tried = result.Tried.ToString("#,0", CultureInfo.InvariantCulture);
        if (result.Best.Count == 0)
        {
            return $"None of the {tried} set-ups that were run came to the end of its launch.";
        }

        RankedSetUp best = result.Best[0];
        string what = SettingNames.Of(grid, best.Row.SetUp), score = AimWords.Score(best.Row.Score);
        string proof = result.IsProven ? $"the best of all {size} set-ups of the grid: each was run" : $"the best that was found in {tried} launches out of {size} set-ups; that none is better is not proven";
        string against = grid.Present == best.Row.SetUp ? "; it is the set-up as it stands"
            : present is { Exists: true } now ? best.Row.Score < now ? $", against {AimWords.Score(now)} as it stands" : $"; the set-up as it stands has {AimWords.Score(now)} and is not beaten" : "";
        string limits = best.Row.Score.KeepsLimits ? "" : " It does not keep all limits; none that was run does.";
        return $"{what} scores {score} points{against}: {proof}.{limits}{Edge(result, best)}{Fragile(best, grid)}";
    }

    /// <summary>What is next door of a set-up, in few words.</summary>
    /// <param name="setUp">The set-up.</param>
    public static string NextDoor(RankedSetUp setUp)
    {
        ArgumentNullException.ThrowIfNull(setUp);
        return setUp.NextDoor.Count == 0 ? "nothing" : setUp.NextDoor.Worst is null ? "not run"
            : $"{(setUp.IsFragile ? "fragile: " : "")}{(setUp.NextDoor.WorstScore.Exists ? AimWords.Score(setUp.NextDoor.WorstScore) : "fails")}{(setUp.NextDoor.Known < setUp.NextDoor.Count ? $" ({setUp.NextDoor.Known} of {setUp.NextDoor.Count} run)" : "")}";
    }

    /// <summary>How flat the top is, a sentence.</summary>
    /// <param name="result">What came of it; with a best set-up.</param>
    public static string Flatness(BestResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        if (result.Top is not { } top)
        {
            return "";
        }

        SetUpGrid grid = result.Plan.Grid;
        if (top.Count <= 1)
        {
            return $"The top is sharp: no other set-up that was run is within {AimWords.Points(top.Within)} points of the best.";
        }

        IReadOnlyList<string> names = SettingNames.Of(grid.Variations);
        string values = string.Join("; ", names.Select((name, i) => top.Values[i].Count == grid.Variations[i].Values.Count ? $"{name} anything"
            : $"{name} {string.Join(", ", top.Values[i].Select(place => grid.Variations[i].Values[place].Value))}"));
        return $"{top.Count.ToString("#,0", CultureInfo.InvariantCulture)} set-ups are within {AimWords.Points(top.Within)} points of the best, which nobody would notice, with {values}.";
    }

    // Where a setting ends because its list does, not because the adjuster does.
    private static string Edge(BestResult result, RankedSetUp best)
    {
        SetUpGrid grid = result.Plan.Grid;
        IReadOnlyList<string> names = SettingNames.Of(grid.Variations);
        string[] ends = [.. names.Where((_, i) => grid.Variations[i] is { IsScale: true, Values.Count: > 1 } setting
            && grid.Place(best.Row.SetUp, i) is var place && (place == 0 || place == setting.Values.Count - 1)
            && !(setting.Path.EndsWith(".set", StringComparison.Ordinal) && result.Plan.Study.Scenario.Clicks.TryGetValue(setting.Path[..^4], out ClickInfo? clicks)
                && setting.Values[place].Quantity!.Si() is var click && (click <= clicks.Entered[0] || click >= clicks.Entered[^1])))];
        return ends.Length == 0 ? "" : $" It lies at the end of what was tried of {string.Join(" and ", ends)}: beyond may be better still.";
    }

    private static string Fragile(RankedSetUp best, SetUpGrid grid)
    {
        if (!best.IsFragile)
        {
            return "";
        }

        string where = SettingNames.Of(grid, best.NextDoor.Worst!.Value);
        return best.NextDoor.WorstScore.Exists ? $" It is fragile: next door, with {where}, it is {AimWords.Score(best.NextDoor.WorstScore)}." : $" It is fragile: next door, with {where}, the launch fails.";
    }
}
