using System.Globalization;
using System.Text;
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
    public static string Of(LaunchOutcome run, Readout readout)
    {
        StandingCar car = run.Solution.Car;
        var text = new StringBuilder();
        _ = text.Append(StaticLineWords.Of(car.Line, car.Standing.Wheelbase, readout)).Append("\n\n");
        if (run.Failure is { } failure)
        {
            _ = text.Append(FailureWords.Of(failure)).Append("\nWhat follows holds up to there.\n\n");
        }

        foreach (string sentence in Summary.Of(run.Figures, readout))
        {
            _ = text.Append(sentence).Append('\n');
        }

        Table(text, run.Figures, readout);
        _ = text.Append("\nWhat a model in one plane cannot know\n");
        var limits = new List<string>();
        LimitWords.Say(run.Figures, car.Car.TrackGrip.Count == 1, readout, limits);
        foreach (string sentence in limits)
        {
            _ = text.Append("  ").Append(sentence).Append('\n');
        }

        _ = text.Append(LimitWords.Caution).Append('\n');
        return Solution(text, run).ToString();
    }

    private static void Table(StringBuilder text, FigureSet figures, Readout readout)
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

        _ = text.Append("\nFigures\n").Append(table);
        for (int i = 0; i < reasons.Count; i++)
        {
            _ = text.Append("  none: ").AppendJoin("; ", missing[i]).Append(" (").Append(reasons[i]).Append(")\n");
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
                    table.Add(family.Title);
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

    private static StringBuilder Solution(StringBuilder text, LaunchOutcome run)
    {
        Statistics statistics = run.Solution.End.Statistics;
        string residual = run.Figures["energy_residual_largest_j"] is { } joules
            ? joules.ToString("0.0e-0", CultureInfo.InvariantCulture) + " J" : "none";
        string relative = run.Figures["energy_residual_ratio"] is { } ratio
            ? ", " + ratio.ToString("0.0e-0", CultureInfo.InvariantCulture) + " of the largest work" : "";
        return text
            .Append(CultureInfo.InvariantCulture, $"\nEnergy residual {residual}{relative}; ")
            .Append(CultureInfo.InvariantCulture, $"{statistics.Steps} steps ({statistics.Rejected} rejected), {statistics.Evaluations} evaluations, tolerance {run.Scenario.Run.Tolerance:0.###e-0}\n")
            .Append(CultureInfo.InvariantCulture, $"{ProgramVersion.Name} {ProgramVersion.Text}, scenario {run.Scenario.Name}, {run.Scenario.ContentHash}\n");
    }
}
