using System.Globalization;
using LaunchSim.Cli.Terminal;
using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Grids;
using LaunchSim.Studies.Searching;
using LaunchSim.Studies.Words;

namespace LaunchSim.Cli.Output;

/// <summary>A search for the best set-up in words and tables.</summary>
internal static class BestText
{
    // A front may have hundreds of members; so many tell its shape.
    private const int ShownOfFront = 12;

    /// <summary>The whole report.</summary>
    /// <param name="result">What came of it.</param>
    /// <param name="present">The score of the set-up as it stands; null when its launch fails.</param>
    /// <param name="readout">The units.</param>
    /// <param name="screen">Where it is read.</param>
    public static string Of(BestResult result, AimScore? present, Readout readout, Screen screen)
    {
        GridPlan plan = result.Plan;
        Page page = new Page(screen).Heading(BestWords.Conclusion(result, present)).Blank();
        AimText.Add(page, plan.Aims, readout);
        if (result.Best.Count > 0)
        {
            _ = page.Blank().Heading(result.Best.Count == 1 ? "The only one that came to its end" : $"The best {result.Best.Count}").Table(Ranking(result, readout), 2);
            if (result.Best.Any(setUp => setUp.Row.SetUp == plan.Grid.Present))
            {
                _ = page.Line("* the set-up as it stands", 2);
            }

            _ = page.Line("Next door is the worst of what one value up or down of one setting gives, holes and other names left out; a set-up is called fragile when that fails, breaks a limit that it keeps, or is 2 points worse.", 2)
                .Line(BestWords.Flatness(result), 2);
            Front(page, "What the rise lag costs in load unrest", result, result.LagAgainstUnrest, "load_unrest_n", readout);
            Front(page, "What the rise lag costs in separation", result, result.LagAgainstSeparation, "separation_peak_m", readout);
        }

        if (result.Failed > 0)
        {
            _ = page.Blank().Line($"{result.Failed.ToString("#,0", CultureInfo.InvariantCulture)} of {result.Tried.ToString("#,0", CultureInfo.InvariantCulture)} launches did not come to their end, or the car was refused; with --csv the table says why for each.");
        }

        if (plan.HoldsGrip)
        {
            _ = page.Blank().Line("Pressures are ranked with the tyres' grip held at that of the present pressure: what the entered grip-for-pressure slope adds decides nothing here, and stands in the table of --csv in columns of its own.");
        }

        return page.Blank().Line(LimitWords.Caution).ToString();
    }

    private static TextTable Ranking(BestResult result, Readout readout)
    {
        GridPlan plan = result.Plan;
        IReadOnlyList<string> names = SettingNames.Of(plan.Grid.Variations);
        var table = new TextTable([true, true, .. names.Select(_ => true), .. plan.Aims.Aims.Select(_ => true), true]);
        _ = table.Named(["#", "score", .. names, .. plan.Aims.Aims.Select(AimWords.Heading), "next door"]);
        for (int i = 0; i < result.Best.Count; i++)
        {
            GridRow row = result.Best[i].Row;
            string mark = row.SetUp == plan.Grid.Present ? "*" : "";
            table.Add([
                $"{mark}{i + 1}", AimWords.Score(row.Score), .. Values(plan.Grid, row.SetUp),
                .. plan.Aims.Parts(row.Held.AsSpan(0, plan.Aims.Keys.Count)).Select(part => AimWords.Cell(part.Aim, part.Value, readout)), BestWords.NextDoor(result.Best[i]),
            ]);
        }

        return table;
    }

    private static void Front(Page page, string title, BestResult result, IReadOnlyList<GridRow> members, string key, Readout readout)
    {
        if (members.Count == 0)
        {
            return;
        }

        GridPlan plan = result.Plan;
        var catalog = FigureCatalog.For(plan.Settings.Marks.Count);
        FigureDefinition Definition(string name) => catalog.TryFind(name, out int index) ? catalog.Definitions[index] : throw new InvalidOperationException(name);
        int Place(string name) => plan.Figures.TakeWhile(figure => figure != name).Count();
        string Cell(GridRow row, string name)
        {
            (string number, string unit) = FigureFormat.Of(Definition(name), row.Held[Place(name)], readout);
            return $"{number} {unit}".TrimEnd();
        }

        IReadOnlyList<string> names = SettingNames.Of(plan.Grid.Variations);
        var table = new TextTable([true, true, true, .. names.Select(_ => true)]);
        _ = table.Named(["rise lag", Definition(key).Name.Split(',')[0].ToLowerInvariant(), "score", .. names]);
        foreach (GridRow row in Spread(members))
        {
            table.Add([Readout.Lag.Text(row.Held[Place("rise_lag_s")]), Cell(row, key), AimWords.Score(row.Score), .. Values(plan.Grid, row.SetUp)]);
        }

        _ = page.Blank().Heading(title).Table(table, 2)
            .Line(members.Count == 1 ? "One set-up beats all others in both." : $"Of these {members.Count} none is beaten in both by any set-up that was run, keeps all limits and does not slip for longer than is wanted{(members.Count > ShownOfFront ? $"; {ShownOfFront} are shown, evenly" : "")}.", 2);
    }

    private static IEnumerable<GridRow> Spread(IReadOnlyList<GridRow> members) => members.Count <= ShownOfFront ? members
        : Enumerable.Range(0, ShownOfFront).Select(i => members[(int)Math.Round(i * (members.Count - 1.0) / (ShownOfFront - 1))]);

    private static IEnumerable<string> Values(SetUpGrid grid, long setUp) => grid.Variations.Select((variation, i) => variation.Values[grid.Place(setUp, i)].Value);
}
