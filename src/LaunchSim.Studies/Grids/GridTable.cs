using System.Globalization;
using System.Text;
using CsvHelper;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Running;

namespace LaunchSim.Studies.Grids;

/// <summary>
/// A grid's rows as text: the set-up's values as they are written in a scenario, figures in SI with the shortest numbers
/// that read back the same, nothing where there is none.
/// </summary>
public static class GridTable
{
    // Ends the names of figures with the grip of the present pressures.
    private const string HeldSuffix = "_grip_held";

    /// <summary>The names of the columns.</summary>
    /// <param name="plan">What is run.</param>
    public static IReadOnlyList<string> Columns(GridPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return
        [
            "set_up", .. plan.Grid.Variations.Select(variation => RowText.OneLine(variation.Path)), .. plan.Figures,
            "score_points", "beyond_limits_points", .. plan.HoldsGrip ? ["score_with_grip_slope_points", "beyond_limits_with_grip_slope_points", .. plan.Figures.Select(figure => figure + HeldSuffix)] : Array.Empty<string>(), "trouble",
        ];
    }

    /// <summary>The first line, without its end.</summary>
    /// <param name="plan">What is run.</param>
    public static string Header(GridPlan plan) => RowText.Header(Columns(plan));

    /// <summary>Rows as lines, each with its end.</summary>
    /// <param name="plan">What is run.</param>
    /// <param name="rows">The rows.</param>
    public static string Lines(GridPlan plan, IReadOnlyList<GridRow> rows)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(rows);
        var text = new StringWriter(CultureInfo.InvariantCulture);
        using var csv = new CsvWriter(text, RowText.Format);
        foreach (GridRow row in rows)
        {
            csv.WriteField(row.SetUp.ToString(CultureInfo.InvariantCulture));
            for (int i = 0; i < plan.Grid.Variations.Count; i++)
            {
                csv.WriteField(RowText.OneLine(plan.Grid.Variations[i].Values[plan.Grid.Place(row.SetUp, i)].Value));
            }

            foreach (double figure in row.Figures)
            {
                csv.WriteField(RowText.Number(figure));
            }

            Score(csv, row.Score);
            if (plan.HoldsGrip)
            {
                Score(csv, row.WithSlope);
                foreach (double figure in row.Held)
                {
                    csv.WriteField(RowText.Number(figure));
                }
            }

            csv.WriteField(row.Trouble is null ? "" : RowText.OneLine(row.Trouble));
            csv.NextRecord();
        }

        csv.Flush();
        return text.ToString();
    }

    /// <summary>Reads the rows of a finished or unfinished table back.</summary>
    /// <param name="plan">What was run.</param>
    /// <param name="path">The table.</param>
    /// <exception cref="RowTableException">A row is not one of this plan's.</exception>
    /// <exception cref="IOException">It cannot be read.</exception>
    public static IEnumerable<GridRow> Read(GridPlan plan, string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, 1 << 16);
        foreach (GridRow row in Read(plan, stream, path))
        {
            yield return row;
        }
    }

    /// <summary>Reads the rows of a table back.</summary>
    /// <param name="plan">What was run.</param>
    /// <param name="stream">The table from its first byte on; it is left open.</param>
    /// <param name="path">What the table is called.</param>
    /// <exception cref="RowTableException">A row is not one of this plan's.</exception>
    /// <exception cref="IOException">It cannot be read.</exception>
    public static IEnumerable<GridRow> Read(GridPlan plan, Stream stream, string path)
    {
        ArgumentNullException.ThrowIfNull(plan);
        using var reader = new StreamReader(stream, Encoding.UTF8, false, 1 << 14, leaveOpen: true);
        using var csv = new CsvReader(reader, RowText.Format);
        int columns = Columns(plan).Count, first = 1 + plan.Grid.Variations.Count, score = first + plan.Figures.Count;
        _ = csv.Read();
        while (csv.Read())
        {
            if (csv.Parser.Count != columns || !long.TryParse(csv[0], NumberStyles.None, CultureInfo.InvariantCulture, out long setUp))
            {
                throw new RowTableException($"`{path}`, line {csv.Parser.RawRow}: found a row that this study does not write; delete the table and begin anew");
            }

            double[] figures = new double[plan.Figures.Count];
            for (int i = 0; i < figures.Length; i++)
            {
                figures[i] = RowText.Number(csv[first + i]);
            }

            double[]? held = null;
            if (plan.HoldsGrip)
            {
                held = new double[figures.Length];
                for (int i = 0; i < held.Length; i++)
                {
                    held[i] = RowText.Number(csv[score + 4 + i]);
                }
            }

            var own = Score(csv, score);
            yield return new GridRow(setUp, figures, own, plan.HoldsGrip ? Score(csv, score + 2) : own, csv[columns - 1] is { Length: > 0 } trouble ? trouble : null, held);
        }
    }

    private static void Score(CsvWriter csv, AimScore score)
    {
        csv.WriteField(RowText.Number(score.Points));
        csv.WriteField(RowText.Number(score.Beyond));
    }

    private static AimScore Score(CsvReader csv, int at) =>
        csv[at] is { Length: > 0 } ? new AimScore(RowText.Number(csv[at]), RowText.Number(csv[at + 1])) : AimScore.None;

}

/// <summary>A table's row cannot be read back; the message is a sentence for the user.</summary>
/// <param name="message">The sentence.</param>
public sealed class RowTableException(string message) : Exception(message);
