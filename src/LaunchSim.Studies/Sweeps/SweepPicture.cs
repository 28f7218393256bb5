using System.Globalization;
using LaunchSim.Charts;
using LaunchSim.Charts.Studies;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Units;
using LaunchSim.Scenarios.Varying;
using LaunchSim.Studies.Grids;

namespace LaunchSim.Studies.Sweeps;

/// <summary>The picture of a sweep over one or two settings.</summary>
public static class SweepPicture
{
    /// <summary>The picture.</summary>
    /// <param name="tally">What came of the sweep.</param>
    /// <param name="rows">All its rows in order.</param>
    /// <param name="program">The program with its version.</param>
    /// <exception cref="ArgumentException">There are not one or two settings.</exception>
    public static Picture Of(SweepTally tally, IEnumerable<GridRow> rows, string program)
    {
        ArgumentNullException.ThrowIfNull(tally);
        ArgumentNullException.ThrowIfNull(rows);
        GridPlan plan = tally.Plan;
        int count = checked((int)plan.Grid.Count);
        double[][] values = [.. tally.Measures.Select(_ => new double[count])];
        bool[] failed = new bool[count], beyond = new bool[count];
        foreach (GridRow row in rows)
        {
            failed[row.SetUp] = row.Trouble is not null;
            beyond[row.SetUp] = row.Trouble is null && !row.Score.KeepsLimits;
            for (int i = 0; i < values.Length; i++)
            {
                values[i][row.SetUp] = tally.Measures[i].Of(row) / tally.Measures[i].Scale.Factor;
            }
        }

        return SweepChart.Of(new SweepView
        {
            Title = SweepConclusion.Of(tally).TrimEnd('.'),
            Imprint = $"{plan.Study.Name.ReplaceLineEndings(" ")} · {count.ToString("#,0", CultureInfo.InvariantCulture)} launches, aims: {plan.Aims.Profile.Name}{(plan.Aims.IsEntered ? " with the entered ones" : "")} · {program} · {plan.Study.Scenario.ContentHash[..8]}",
            Axes = [.. plan.Grid.Variations.Select(variation => Axis(plan.Study.Scenario, variation))],
            Measures = [.. tally.Measures.Select((measure, i) => new SweepMeasure
            {
                Name = measure.Name,
                Unit = measure.Scale.Unit,
                Decimals = measure.Scale.Decimals,
                Values = values[i],
                Present = tally.Present is { } now ? measure.Of(now) / measure.Scale.Factor : double.NaN,
                From = measure.Aim is { } low ? (low.From - low.Slack) / measure.Scale.Factor : double.NaN,
                To = measure.Aim is { } high ? (high.To + high.Slack) / measure.Scale.Factor : double.NaN,
            })],
            Failed = failed,
            BeyondLimits = beyond,
            Best = (int?)tally.Best?.SetUp,
        });
    }

    private static SweepAxis Axis(Scenario scenario, Variation variation)
    {
        if (!variation.IsScale)
        {
            return new SweepAxis
            {
                Name = variation.Path,
                Unit = "",
                Names = [.. variation.Values.Select(value => value.Value)],
                Numbers = null,
                Present = variation.Present >= 0 ? variation.Present : null,
            };
        }

        Unit unit = variation.Values[0].Quantity!.Unit;
        double[] numbers = [.. variation.Values.Select(value => value.Quantity!.Numbers[0])];
        return new SweepAxis
        {
            Name = variation.Path,
            Unit = unit.Text,
            Names = [.. numbers.Select(number => number.ToString(CultureInfo.InvariantCulture))],
            Numbers = numbers,
            Present = variation.Present >= 0 ? numbers[variation.Present] : scenario.Find(variation.Values[0].Path)?.Si() / unit.Factor,
        };
    }
}
