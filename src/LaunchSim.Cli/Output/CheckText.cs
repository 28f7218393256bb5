using System.Globalization;
using LaunchSim.Cli.Terminal;
using LaunchSim.Reports;
using LaunchSim.Reports.Decisive;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios.Typical;

namespace LaunchSim.Cli.Output;

/// <summary>What a file lacks for a run, or which of its numbers decide the answer.</summary>
internal static class CheckText
{
    private const int Shown = 5;

    /// <summary>What a part file lacks: what is typical for each, and how to get it.</summary>
    /// <param name="lacking">What it lacks.</param>
    /// <param name="screen">Where it is read.</param>
    public static string OfLacking(IReadOnlyList<LackingValue> lacking, Screen screen)
    {
        var table = new TextTable(false, false);
        foreach (LackingValue value in lacking)
        {
            table.Add(value.Path, InItsPlace(value));
        }

        Page page = new Page(screen).Line("needed for a run; `launchsim new` can fill these in:", 2).Table(table).Blank().Heading("How to get them");
        foreach (IGrouping<HomeTest, LackingValue> same in lacking.Where(value => value.Entry?.HomeTest is not null).GroupBy(value => value.Entry!.HomeTest!))
        {
            _ = page.Line($"{string.Join(", ", same.Select(value => value.Path))}: {same.Key.How} ({same.Key.Takes})", 2);
        }

        return page.ToString();
    }

    /// <summary>The numbers that decide most, and those that change no sentence.</summary>
    /// <param name="decisive">What each number's doubt does.</param>
    /// <param name="readout">The units.</param>
    /// <param name="screen">Where it is read.</param>
    public static string OfDecisive(DecisiveNumbers decisive, Readout readout, Screen screen)
    {
        NumberEffect[] most = [.. decisive.Effects.Where(effect => effect.Score > 0).Take(Shown)];
        Page page = new Page(screen).Blank().Heading("The five numbers that decide this car's answer most")
            .Line(string.Create(CultureInfo.InvariantCulture, $"Each of the {decisive.Effects.Count} numbers that may be off was moved by its doubt, up and down, one at a time, and the launch run again."), 2)
            .Line($"The answer: {string.Join(", ", AnswerFigures.All.Select(figure => figure.Words["the ".Length..]))}; each change counts against one that matters (docs/commands.md).", 2);
        for (int i = 0; i < most.Length; i++)
        {
            Effect(page, i + 1, most[i], readout);
        }

        NumberEffect[] rest = [.. decisive.WithoutEffectOnSentences.Except(most)];
        if (rest.Length > 0)
        {
            _ = page.Blank().Heading("You need not measure these better").Line("Moved by its doubt, none of them changes which sentences the report says, only their digits:", 2);
            var table = new TextTable(false, false);
            foreach (IGrouping<string, string> section in rest.Select(effect => effect.Number.Path).GroupBy(Section))
            {
                table.Add(section.Key, string.Join(", ", section.Select(path => path[(section.Key.Length + 1)..])));
            }

            _ = page.Table(table);
        }

        return page.ToString();
    }

    private static void Effect(Page page, int place, NumberEffect effect, Readout readout)
    {
        string whose = effect.Number.IsEntered ? "" : " (the usual doubt; the file gives none)";
        _ = page.Blank().Line(string.Create(CultureInfo.InvariantCulture, $"{place}. {effect.Number.Path}: {effect.Number.Text}{whose}"), 2)
            .Line(EffectWords.Of(effect, readout), 5);
        if (effect.NewSentence is { } said)
        {
            _ = page.Line($"moved {(said.By.Share > 0 ? "up" : "down")}, the report says: {said.Sentence.Text}", 5);
        }

        foreach (MovedLaunch moved in effect.Moved.Where(moved => moved.Trouble is not null))
        {
            _ = page.Line($"moved {(moved.Share > 0 ? "up" : "down")}, it cannot be run to its end: {moved.Trouble}", 5);
        }

        if (effect.Number.Entry?.HomeTest is { } test)
        {
            _ = page.Line($"to get it better: {test.How} ({test.Takes})", 5);
        }
    }

    private static string InItsPlace(LackingValue value) =>
        value.Typical is { } typical ? $"typical: {typical}"
        : value.Needs.Count > 0 ? $"typical once {string.Join(" and ", value.Needs)} {(value.Needs.Count == 1 ? "is" : "are")} known"
        : value.Entry is null ? value.What
        : "to be measured";

    private static string Section(string path)
    {
        int first = path.IndexOf('.', StringComparison.Ordinal), second = path.IndexOf('.', first + 1);
        return second < 0 ? path[..first] : path[..second];
    }
}
