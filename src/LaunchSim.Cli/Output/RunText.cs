using System.Globalization;
using LaunchSim.Cli.Terminal;
using LaunchSim.Figures;
using LaunchSim.Integration;
using LaunchSim.Launch;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;

namespace LaunchSim.Cli.Output;

/// <summary>A launch in words and figures.</summary>
internal static class RunText
{
    // These close the report in words of their own.
    private const string LedgerTitle = "Energy";

    /// <summary>The whole report.</summary>
    /// <param name="run">The launch.</param>
    /// <param name="readout">The units.</param>
    /// <param name="screen">Where it is read.</param>
    public static string Of(LaunchOutcome run, Readout readout, Screen screen)
    {
        StandingCar car = run.Solution.Car;
        Page page = new Page(screen).Heading(StaticLineWords.Of(car.Line, car.Standing.Wheelbase, readout)).Blank();
        if (run.Failure is { } failure)
        {
            _ = page.Line(FailureWords.Of(failure)).Line("What follows holds up to there.").Blank();
        }

        foreach (Sentence sentence in Summary.Of(run.Figures, readout))
        {
            _ = page.Line(sentence.Text);
        }

        Table(page, run.Figures, readout);
        _ = page.Blank().Heading("What a model in one plane cannot know");
        var limits = new List<string>();
        LimitWords.Say(run.Figures, car.Car.TrackGrip.Count == 1, readout, limits);
        foreach (string sentence in limits)
        {
            _ = page.Line(sentence, 2);
        }

        _ = page.Line(LimitWords.Caution);
        Solution(page, run);
        return page.ToString();
    }

    private static void Table(Page page, FigureSet figures, Readout readout)
    {
        // Figures without a value, gathered by why there is none.
        var reasons = new List<string>();
        var missing = new List<List<string>>();
        var table = new TextTable(false, true, false);
        foreach (IFigureFamily family in figures.Catalog.Families)
        {
            if (family.Title != LedgerTitle)
            {
                Family(family);
            }
        }

        _ = page.Blank().Heading("Figures").Table(table);
        for (int i = 0; i < reasons.Count; i++)
        {
            _ = page.Line($"none: {string.Join("; ", missing[i])} ({reasons[i]})", 2);
        }

        void Family(IFigureFamily family)
        {
            bool titled = false;
            foreach (FigureDefinition definition in family.Definitions)
            {
                Figure figure = figures.Get(definition.Key);
                if (figure.Value is not { } value)
                {
                    Missing(definition.Name, figure.Reason ?? "no value in this run");
                    continue;
                }

                if (!titled)
                {
                    table.Group(family.Title);
                    titled = true;
                }

                (string number, string unit) = FigureFormat.Of(definition, value, readout);
                table.Add("  " + definition.Name, number, unit);
            }
        }

        void Missing(string name, string reason)
        {
            int at = reasons.IndexOf(reason);
            if (at < 0)
            {
                at = reasons.Count;
                reasons.Add(reason);
                missing.Add([]);
            }

            missing[at].Add(name);
        }
    }

    private static void Solution(Page page, LaunchOutcome run)
    {
        Statistics statistics = run.Solution.End.Statistics;
        string residual = run.Figures["energy_residual_largest_j"] is { } joules
            ? joules.ToString("0.0e-0", CultureInfo.InvariantCulture) + " J" : "none";
        string relative = run.Figures["energy_residual_ratio"] is { } ratio
            ? ", " + ratio.ToString("0.0e-0", CultureInfo.InvariantCulture) + " of the largest work" : "";
        string cost = string.Create(CultureInfo.InvariantCulture,
            $"{statistics.Steps} steps ({statistics.Rejected} rejected), {statistics.Evaluations} evaluations, tolerance {run.Scenario.Run.Tolerance:0.###e-0}");
        _ = page.Blank().Line($"Energy residual {residual}{relative}; {cost}")
            .Line($"{ProgramVersion.Name} {ProgramVersion.Text}, scenario {run.Scenario.Name}, {run.Scenario.ContentHash}");
    }
}
