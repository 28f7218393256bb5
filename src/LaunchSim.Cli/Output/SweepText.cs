using System.Globalization;
using LaunchSim.Cli.Terminal;
using LaunchSim.Studies.Grids;
using LaunchSim.Studies.Sweeps;

namespace LaunchSim.Cli.Output;

/// <summary>A sweep for a person to read: the conclusion, what to know beside it, and its rows while they are few.</summary>
internal static class SweepText
{
    private const int MostRows = 60;

    /// <summary>The text.</summary>
    /// <param name="tally">What came of the sweep.</param>
    /// <param name="screen">Where it is read.</param>
    public static string Of(SweepTally tally, Screen screen)
    {
        Page page = new Page(screen).Line(SweepConclusion.Of(tally));
        foreach (string note in SweepConclusion.Notes(tally))
        {
            _ = page.Line(note);
        }

        if (tally.Rows is { Count: <= MostRows } rows)
        {
            _ = page.Blank();
            Table(page, tally, rows);
        }

        return page.ToString();
    }

    private static void Table(Page page, SweepTally tally, IReadOnlyList<GridRow> rows)
    {
        GridPlan plan = tally.Plan;
        int settings = plan.Grid.Variations.Count;
        var table = new TextTable([.. plan.Grid.Variations.Select(variation => variation.IsScale), .. tally.Measures.Select(_ => true), false]);
        _ = table.Named([.. plan.Grid.Variations.Select(variation => variation.Path), .. tally.Measures.Select(measure => measure.Scale.Unit.Length == 0 ? measure.Name : $"{measure.Name}, {measure.Scale.Unit}"), ""]);
        foreach (GridRow row in rows)
        {
            table.Add([.. plan.Grid.Variations.Select((variation, i) => variation.Values[plan.Grid.Place(row.SetUp, i)].Value), .. tally.Measures.Select(measure => Cell(measure, row)), Remark(tally, row)]);
        }

        if (plan.Grid.Present is null && tally.Present is { } now)
        {
            table.Add([.. plan.Grid.Variations.Select(variation => Present(plan, variation.Path)), .. tally.Measures.Select(measure => Cell(measure, now)), Remark(tally, now)]);
        }

        _ = page.Table(table, settings);
    }

    private static string Present(GridPlan plan, string path) =>
        plan.Study.Scenario.Find(path)?.ToString() ?? plan.Study.Scenario.FindText(path) ?? "";

    private static string Cell(Measure measure, GridRow row) => measure.Of(row) is var value && double.IsFinite(value) ? measure.Scale.Number(value) : "";

    private static string Remark(SweepTally tally, GridRow row)
    {
        var remarks = new List<string>();
        if (row.SetUp < 0 || row.SetUp == tally.Plan.Grid.Present)
        {
            remarks.Add("now");
        }

        if (tally.Best is { } best && row.Trouble is null && row.Score.CompareTo(best.Score) == 0 && tally.BestCount < tally.Count - tally.Failed)
        {
            remarks.Add("best");
        }

        if (row.Trouble is { } trouble)
        {
            remarks.Add(trouble);
        }
        else if (!row.Score.KeepsLimits)
        {
            remarks.Add(string.Create(CultureInfo.InvariantCulture, $"{row.Score.Beyond:0.#} points beyond a limit"));
        }

        return string.Join(", ", remarks);
    }
}
