using LaunchSim.Cli.Terminal;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios.Doubtful;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Doubting;
using LaunchSim.Studies.Running;

namespace LaunchSim.Cli.Output;

/// <summary>How sure the answer is, in words and tables.</summary>
internal static class DoubtText
{
    private const int ShownNumbers = 8, ShownTests = 3, LineLength = 58;

    /// <summary>The whole report.</summary>
    /// <param name="result">What came of it.</param>
    /// <param name="shard">The part of the cars that it is of.</param>
    /// <param name="readout">The units.</param>
    /// <param name="screen">Where it is read.</param>
    public static string Of(DoubtResult result, Shard shard, Readout readout, Screen screen)
    {
        Page page = new Page(screen).Heading(DoubtWords.Conclusion(result)).Blank();
        if (!shard.IsWhole)
        {
            _ = page.Line($"This is part {shard} of the cars alone.");
        }

        foreach (string sentence in DoubtWords.Cars(result))
        {
            _ = page.Line(sentence);
        }

        if (result.Plan.Numbers.Count == 0)
        {
            return page.ToString();
        }

        if (result.Whole > 0)
        {
            Sentences(page, result);
            First(page, result.Ranking);
            Figures(page, result, readout);
            Aims(page, result, readout);
        }

        Drawn(page, result.Plan);
        return page.Blank().Line("Plausible means: within the doubts that were drawn, in this model. What the model leaves out is in no share.").Line(LimitWords.Caution).ToString();
    }

    private static void Sentences(Page page, DoubtResult result)
    {
        var table = new TextTable(false, false, true, true).Named("", "holds", "in", "surely within");
        foreach (SentenceShare sentence in result.Sentences)
        {
            table.Add(sentence.IsOwn ? "*" : "", sentence.Statement, DoubtWords.Share(sentence.Share.Share), DoubtWords.Limits(sentence.Share));
        }

        _ = page.Blank().Heading("What is said, and in what share of the cars").Table(table, 2)
            .Line("* is said of the file's own car. The true share lies within the limits in 95 draws of 100.", 2);
    }

    private static void First(Page page, Ranking ranking)
    {
        _ = page.Blank().Heading("What to measure better first");
        if (ranking.Numbers.Count == 0)
        {
            _ = page.Line("Nothing of the answer varies among the cars.", 2);
            return;
        }

        var table = new TextTable(false, false, true, true, false).Named("number", "", "decides", "narrower", "most of");
        foreach (NumberShare number in ranking.Numbers.Where((number, i) => i == 0 || number.StandsOut).Take(ShownNumbers))
        {
            table.Add(number.Number.Path, DoubtWords.Doubt(number.Number), DoubtWords.Share(number.Share), DoubtWords.Share(number.Narrower), number.Most is { } most ? Bare(most.Words) : "");
        }

        int quiet = ranking.Numbers.Count(number => !number.StandsOut);
        _ = page.Table(table)
            .Line("decides: share of the variance of the answer (percent, rise lag, separation, hit, low, slip; each counts as far as it spreads by what of it matters), ± one standard error; narrower: by how much the answer would spread less, were the number known exactly.", 2)
            .Line(DoubtWords.Together(ranking), 2);
        if (quiet > 0)
        {
            _ = page.Line($"{quiet} of the {ranking.Numbers.Count} numbers do not stand out of the draw's error: leave them as they are.", 2);
        }

        foreach (NumberShare number in ranking.Numbers.Where(number => number.StandsOut && number.Number.Entry?.HomeTest is not null).Take(ShownTests))
        {
            _ = page.Line($"{number.Number.Path}: {number.Number.Entry!.HomeTest!.How} ({number.Number.Entry.HomeTest.Takes})", 2);
        }
    }

    private static void Figures(Page page, DoubtResult result, Readout readout)
    {
        var table = new TextTable(false, true, true, true, true, false).Named("", "own car", "5 %", "half", "95 %", "");
        var missing = new List<string>();
        var never = new List<string>();
        foreach (FigureBand figure in result.Figures)
        {
            string unit = "";
            string Cell(double value)
            {
                if (double.IsNaN(value))
                {
                    return "none";
                }

                (string number, unit) = FigureFormat.Of(figure.Figure, value, readout);
                return number;
            }

            if (double.IsNaN(figure.Own) && double.IsNaN(figure.Band.Median))
            {
                never.Add(figure.Figure.Name);
                continue;
            }

            table.Add(figure.Figure.Name, Cell(figure.Own), Cell(figure.Band.Low), Cell(figure.Band.Median), Cell(figure.Band.High), unit);
            if (figure.Missing > 0)
            {
                missing.Add($"{figure.Figure.Name} {DoubtWords.Count(figure.Missing)}");
            }
        }

        _ = page.Blank().Heading("Figures: below 5 %, half and 95 % of the cars").Table(table);
        if (missing.Count > 0)
        {
            _ = page.Line($"cars without a value, which are in no band: {string.Join("; ", missing)}", 2);
        }

        if (never.Count > 0)
        {
            _ = page.Line($"none in any car: {string.Join("; ", never)}", 2);
        }
    }

    private static void Aims(Page page, DoubtResult result, Readout readout)
    {
        var table = new TextTable(false, true, true, true, true, true).Named("", "own car", "5 %", "half", "95 %", "kept in");
        foreach (AimShare aim in result.Aims)
        {
            table.Add(AimWords.Heading(aim.Aim) + (aim.Aim.IsLimit ? " (limit)" : ""), AimWords.Cell(aim.Aim, aim.Own, readout), AimWords.Cell(aim.Aim, aim.Band.Low, readout),
                AimWords.Cell(aim.Aim, aim.Band.Median, readout), AimWords.Cell(aim.Aim, aim.Band.High, readout), DoubtWords.Percent(aim.Keeps));
        }

        table.Add("score, points", result.Own.Score.Exists ? AimWords.Points(result.Own.Score.Points) : "none", AimWords.Points(result.Points.Low), AimWords.Points(result.Points.Median), AimWords.Points(result.Points.High), "");
        AimText.Add(page.Blank(), result.Plan.Aims, readout);
        _ = page.Table(table).Line("kept: a limit by the letter, any other aim within one point of what is wanted.", 2);
    }

    private static void Drawn(Page page, DoubtPlan plan)
    {
        _ = page.Blank().Heading("What was drawn").Line(DoubtWords.Drawn(plan), 2);
        foreach (IGrouping<bool, DoubtfulNumber> whose in plan.Numbers.GroupBy(number => number.IsEntered).OrderByDescending(group => group.Key))
        {
            var table = new TextTable(false, false);
            foreach (IGrouping<string, DoubtfulNumber> section in whose.GroupBy(number => Section(number.Path)))
            {
                bool begun = false;
                foreach (string line in Lines(section.Select(number => $"{number.Path[(section.Key.Length + 1)..]} {DoubtWords.Doubt(number)}"), LineLength))
                {
                    table.Add(begun ? "" : section.Key, line);
                    begun = true;
                }
            }

            _ = page.Line(whose.Key ? "from the file:" : "usual:", 2).Table(table);
        }
    }

    // Commas stay at the ends of lines.
    private static IEnumerable<string> Lines(IEnumerable<string> parts, int width)
    {
        string line = "";
        foreach (string part in parts)
        {
            if (line.Length > 0 && line.Length + part.Length + 2 > width)
            {
                yield return line + ",";
                line = part;
            }
            else
            {
                line = line.Length == 0 ? part : $"{line}, {part}";
            }
        }

        yield return line;
    }

    private static string Bare(string words) => words.StartsWith("the ", StringComparison.Ordinal) ? words[4..] : words;

    private static string Section(string path)
    {
        int first = path.IndexOf('.', StringComparison.Ordinal), second = path.IndexOf('.', first + 1);
        return second < 0 ? path[..first] : path[..second];
    }
}
