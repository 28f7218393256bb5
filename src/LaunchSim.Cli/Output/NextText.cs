using System.Globalization;
using LaunchSim.Cli.Terminal;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Next;

namespace LaunchSim.Cli.Output;

/// <summary>What to change next, in words and tables.</summary>
internal static class NextText
{
    /// <summary>The whole report.</summary>
    /// <param name="result">What came of it.</param>
    /// <param name="doubt">How sure it is; null when nobody asked.</param>
    /// <param name="scenario">The scenario as it stands.</param>
    /// <param name="readout">The units.</param>
    /// <param name="screen">Where it is read.</param>
    public static string Of(NextResult result, NextDoubt? doubt, Scenario scenario, Readout readout, Screen screen)
    {
        Page page = new Page(screen).Heading(NextWords.Conclusion(result, scenario, readout)).Blank();
        if (result.IsOffered)
        {
            _ = page.Line(NextWords.Offered).Blank();
        }

        AimText.Add(page, result.Aims, readout);
        _ = page.Blank().Heading("Single changes, best first").Table(Singles(result, scenario, readout), 2)
            .Line(NextWords.Gains, 2);
        Bars(page, result, scenario, readout);
        Pairs(page, result, scenario, readout);
        Slope(page, result, scenario);
        if (doubt is not null)
        {
            HelpText.Add(page, [.. doubt.Changes.Select(change => NextWords.Change(change, scenario))], doubt.Help);
        }

        return page.Blank().Line(NextWords.OneAtATime).Line(LimitWords.Caution).ToString();
    }

    private static TextTable Singles(NextResult result, Scenario scenario, Readout readout)
    {
        var table = new TextTable([false, true, true, .. result.Aims.Aims.Select(_ => true)]);
        _ = table.Named(["change", "gain", "minutes", .. result.Aims.Aims.Select(AimWords.Heading)]);
        table.Add(["as it stands", "", "", .. Cells(result, result.Now, readout)]);
        foreach (NextChange change in result.Singles)
        {
            string minutes = change.Minutes is { } time ? time.ToString("0.#", CultureInfo.InvariantCulture) : "";
            if (change.Trouble is { } trouble)
            {
                table.Add([NextWords.Change(change, scenario), "fails", minutes]);
                table.Add([$"  {trouble}"]);
                continue;
            }

            table.Add([NextWords.Change(change, scenario), NextWords.Gain(result.Score, change.Score), minutes, .. Cells(result, change.Figures, readout)]);
        }

        return table;
    }

    private static IEnumerable<string> Cells(NextResult result, double[] figures, Readout readout) =>
        result.Aims.Parts(figures).Select(part => AimWords.Cell(part.Aim, part.Value, readout));

    private static void Bars(Page page, NextResult result, Scenario scenario, Readout readout)
    {
        var lines = result.Singles.Select(change => (Change: change, Bars: NextWords.Bars(change, scenario, readout))).Where(entry => entry.Bars.Count > 0).ToList();
        if (lines.Count == 0)
        {
            return;
        }

        _ = page.Blank().Heading("New lengths of bars");
        foreach ((NextChange change, IReadOnlyList<string> bars) in lines)
        {
            _ = page.Line($"{NextWords.Change(change, scenario)}: {string.Join("; ", bars)}", 2);
        }
    }

    private static void Pairs(Page page, NextResult result, Scenario scenario, Readout readout)
    {
        if (result.Pairs.Count == 0)
        {
            _ = page.Blank().Line("No two changes together beat the best single one.");
            return;
        }

        _ = page.Blank().Heading("Both or neither: pairs that beat every single change");
        var table = new TextTable([false, true, true, .. result.Aims.Aims.Select(_ => true)]);
        _ = table.Named(["changes", "gain", "minutes", .. result.Aims.Aims.Select(AimWords.Heading)]);
        foreach (NextChange pair in result.Pairs)
        {
            bool first = true;
            foreach (SingleChange change in pair.Changes)
            {
                string words = NextWords.Change(change, scenario);
                if (first)
                {
                    table.Add([words, NextWords.Gain(result.Score, pair.Score), pair.Minutes is { } time ? time.ToString("0.#", CultureInfo.InvariantCulture) : "", .. Cells(result, pair.Figures, readout)]);
                }
                else
                {
                    table.Add([$"  with {words}", "", ""]);
                }

                first = false;
            }
        }

        _ = page.Table(table);
    }

    private static void Slope(Page page, NextResult result, Scenario scenario)
    {
        List<NextChange> apart = [.. result.Singles.Concat(result.Pairs).Where(change => change.HasSlope && change.Trouble is null)];
        if (apart.Count == 0)
        {
            return;
        }

        _ = page.Blank().Heading("Apart: what the entered grip-for-pressure slope would add")
            .Line("Changes of pressure are ranked with the tyres' grip held. The slope is the least known of all entered numbers; it decides nothing here.", 2);
        List<NextChange> moved = [.. apart.Where(change => AimWords.Score(change.Score) != AimWords.Score(change.WithSlope))];
        if (moved.Count == 0)
        {
            _ = page.Line("With the slope every score would be the same.", 2);
        }

        foreach (NextChange change in moved)
        {
            string verdict = result.BySlopeAlone.Contains(change) ? "; better by the slope alone" : "";
            _ = page.Line($"{NextWords.Change(change, scenario)}: {AimWords.Score(change.Score)} with grip held, {AimWords.Score(change.WithSlope)} with the slope{verdict}", 2);
        }
    }
}
