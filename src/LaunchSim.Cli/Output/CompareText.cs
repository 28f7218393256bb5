using System.Globalization;
using LaunchSim.Cli.Terminal;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Comparing;
using LaunchSim.Studies.Doubting;

namespace LaunchSim.Cli.Output;

/// <summary>A comparison in words and tables: what differs, what it comes to and why, aims, figures.</summary>
internal static class CompareText
{
    // More than that nobody reads; another car differs in almost everything.
    private const int MostWritten = 20;

    /// <summary>The whole text.</summary>
    /// <param name="comparison">The comparison.</param>
    /// <param name="shares">In what share of plausible cars each other set-up is better than the first; null when nobody asked.</param>
    /// <param name="readout">The units.</param>
    /// <param name="screen">Where it is read.</param>
    public static string Of(Comparison comparison, HelpResult? shares, Readout readout, Screen screen)
    {
        Page page = new(screen);
        foreach (ComparedSetUp setUp in comparison.SetUps)
        {
            _ = page.Heading($"{setUp.Letter}: {setUp.Run.Scenario.Name} ({setUp.Run.Scenario.SourceFile})");
        }

        if (comparison.ChangesRuns)
        {
            _ = page.Line(SameRun(comparison, readout));
        }

        Stopped(page.Blank(), comparison);
        foreach (SetUpDifference difference in comparison.Differences)
        {
            foreach (string sentence in ComparisonWords.Of(comparison, difference, readout))
            {
                _ = page.Line(sentence);
            }
        }

        Written(page, comparison);
        Aims(page, comparison, readout);
        if (shares is not null)
        {
            HelpText.Add(page, [.. comparison.SetUps.Skip(1).Select(setUp => $"{setUp.Letter} in the place of {comparison.SetUps[0].Letter}")], shares);
        }

        Figures(page, comparison, readout);
        return page.Blank().Line(LimitWords.Caution).ToString();
    }

    private static string SameRun(Comparison comparison, Readout readout)
    {
        string time = comparison.Settings.Duration is { } duration ? $"for {Readout.Time.Text(duration)}, the shortest that a file asks for" : "up to the last mark";
        string marks = comparison.Settings.Marks.Count == 0 ? "" : $" and marks ({string.Join(", ", comparison.Settings.Marks.Select(readout.Distance.Text))})";
        return $"The files ask for different runs; all were run {time}, with the rollout{marks} of A. What would come later counts in no aim and no figure here; --set \"run.duration=…\" runs all for as long as you say.";
    }

    private static void Stopped(Page page, Comparison comparison)
    {
        foreach (ComparedSetUp setUp in comparison.SetUps)
        {
            if (setUp.Run.Failure is { } failure)
            {
                _ = page.Line($"{setUp.Letter}: {FailureWords.Of(failure)} Its figures hold up to there.");
            }
        }
    }

    private static void Written(Page page, Comparison comparison)
    {
        _ = page.Blank().Heading("What the files say differently");
        if (comparison.Written.Count == 0)
        {
            _ = page.Line("Nothing.", 2);
            return;
        }

        var table = new TextTable([.. Enumerable.Repeat(false, 1 + comparison.SetUps.Count)]);
        _ = table.Named(["", .. comparison.SetUps.Select(setUp => setUp.Letter)]);
        foreach (WrittenDifference difference in comparison.Written.Take(MostWritten))
        {
            table.Add([difference.Path, .. difference.Texts.Select(text => text is null ? "left out" : OneLine(text))]);
        }

        _ = page.Table(table);
        if (comparison.Written.Count > MostWritten)
        {
            _ = page.Line(string.Create(CultureInfo.InvariantCulture, $"and {comparison.Written.Count - MostWritten} more, which --csv and --json tell"), 2);
        }
    }

    private static void Aims(Page page, Comparison comparison, Readout readout)
    {
        var values = new AimReadout(readout);
        string[] others = [.. comparison.Differences.Select(difference => difference.Other.Letter)];
        string own = comparison.Aims.IsEntered ? ", with what A enters in their place" : "";
        _ = page.Blank().Heading($"Against the aims of the profile {comparison.Aims.Profile.Name} ({comparison.Aims.Profile.Words}){own}");
        var table = new TextTable([false, true, .. comparison.SetUps.Select(_ => true), .. others.Select(_ => false)]);
        _ = table.Named(["", "wanted", .. comparison.SetUps.Select(setUp => setUp.Letter), .. others.Select(letter => $"{letter} is")]);
        for (int i = 0; i < comparison.Aims.Aims.Count; i++)
        {
            Aim aim = comparison.Aims.Aims[i];
            table.Add([
                aim.Subject.Words["the ".Length..], values.Wanted(aim),
                .. comparison.SetUps.Select(setUp => values.Value(aim, setUp.Parts[i].Value)),
                .. comparison.Differences.Select(difference => VerdictWords.Of(difference.Aims[i].Verdict)),
            ]);
        }

        table.Add(["points off what is wanted", VerdictWords.Points(0), .. comparison.SetUps.Select(setUp => setUp.Score.Exists ? VerdictWords.Points(setUp.Score.Points) : "none"), .. comparison.Differences.Select(difference => VerdictWords.Of(difference.Verdict))]);
        _ = page.Table(table);
    }

    private static void Figures(Page page, Comparison comparison, Readout readout)
    {
        string[] letters = [.. comparison.SetUps.Select(setUp => setUp.Letter)];
        var table = new TextTable([false, .. letters.Select(_ => true), .. letters.Skip(1).Select(_ => true), false]);
        _ = table.Named(["", .. letters, .. letters.Skip(1).Select(letter => $"{letter} less {letters[0]}"), "unit"]);
        string family = "";
        int same = 0, none = 0;
        foreach (FigureRow row in comparison.Figures)
        {
            string[] numbers = [.. row.Values.Select(value => value is { } one ? FigureFormat.Of(row.Definition, one, readout).Number : "none")];
            if (row.Values.All(value => value is null))
            {
                none++;
            }
            else if (numbers.All(number => number == numbers[0]) || row.Definition.Key.StartsWith("energy_residual", StringComparison.Ordinal))
            {
                same++;
            }
            else
            {
                if (row.Family != family)
                {
                    table.Group(family = row.Family);
                }

                string unit = FigureFormat.Of(row.Definition, 0, readout).Unit;
                table.Add(["  " + row.Definition.Name, .. numbers, .. comparison.Differences.Select((_, i) => Difference(row, i + 1, readout)), unit]);
            }
        }

        if (same + none < comparison.Figures.Count)
        {
            _ = page.Blank().Heading("Figures that differ").Table(table);
        }

        _ = page.Line(string.Create(CultureInfo.InvariantCulture, $"{same} figures are the same in all to the digits shown by `launchsim run`; {none} have no value in any."), 2);
    }

    private static string Difference(FigureRow row, int launch, Readout readout)
    {
        if (row.Difference(launch) is not { } difference)
        {
            return "";
        }

        string number = FigureFormat.Of(row.Definition, difference, readout).Number;
        return number[0] == '-' || number.AsSpan().IndexOfAnyInRange('1', '9') < 0 ? number : "+" + number;
    }

    private static string OneLine(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
