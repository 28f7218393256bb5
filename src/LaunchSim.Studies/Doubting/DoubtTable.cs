using System.Globalization;
using System.Text;
using CsvHelper;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Doubtful;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Grids;
using LaunchSim.Studies.Running;

namespace LaunchSim.Studies.Doubting;

/// <summary>
/// Plausible cars as rows of text: what was drawn, figures in SI with the shortest numbers that read back the same and
/// nothing where there is none, score, sentences, trouble.
/// </summary>
public static class DoubtTable
{
    /// <summary>
    /// The names of the columns. What was drawn stands under its path, in SI; of rows it is the factor on all of the row, of a
    /// bracket's holes what is added to all of them in m.
    /// </summary>
    /// <param name="plan">What is run.</param>
    public static IReadOnlyList<string> Columns(DoubtPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return
        [
            "car", "redrawn", .. plan.Numbers.Select(number => number.Path + Kind(number)), .. plan.Figures.Select(figure => figure.Key),
            "score_points", "beyond_limits_points", "sentences", "first_refusal", "trouble",
        ];
    }

    /// <summary>The first line, without its end.</summary>
    /// <param name="plan">What is run.</param>
    public static string Header(DoubtPlan plan) => RowText.Header(Columns(plan));

    /// <summary>Rows as lines, each with its end.</summary>
    /// <param name="plan">What is run.</param>
    /// <param name="rows">The rows.</param>
    public static string Lines(DoubtPlan plan, IReadOnlyList<DoubtRow> rows)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(rows);
        var text = new StringWriter(CultureInfo.InvariantCulture);
        using var csv = new CsvWriter(text, RowText.Format);
        double[] u = new double[plan.Numbers.Count];
        foreach (DoubtRow row in rows)
        {
            csv.WriteField(row.Car.ToString(CultureInfo.InvariantCulture));
            csv.WriteField(row.Redrawn.ToString(CultureInfo.InvariantCulture));
            plan.Plausible.Uniform(row.Car, Math.Min(row.Redrawn, PlausibleCars.MostDraws - 1), u);
            for (int i = 0; i < u.Length; i++)
            {
                csv.WriteField(RowText.Number(Drawn(plan.Numbers[i], PlausibleCars.ShareOfDoubt(u[i]))));
            }

            foreach (double figure in row.Figures)
            {
                csv.WriteField(RowText.Number(figure));
            }

            csv.WriteField(RowText.Number(row.Score.Points));
            csv.WriteField(RowText.Number(row.Score.Beyond));
            csv.WriteField(string.Join(' ', row.Sentences));
            csv.WriteField(RowText.OneLine(row.Refusal));
            csv.WriteField(RowText.OneLine(row.Trouble));
            csv.NextRecord();
        }

        csv.Flush();
        return text.ToString();
    }

    /// <summary>Reads the rows of a table back.</summary>
    /// <param name="plan">What was run.</param>
    /// <param name="stream">The table from its first byte on; it is left open.</param>
    /// <param name="path">What the table is called.</param>
    /// <exception cref="RowTableException">A row is not one of this plan's.</exception>
    /// <exception cref="IOException">It cannot be read.</exception>
    public static IEnumerable<DoubtRow> Read(DoubtPlan plan, Stream stream, string path)
    {
        ArgumentNullException.ThrowIfNull(plan);
        using var reader = new StreamReader(stream, Encoding.UTF8, false, 1 << 14, leaveOpen: true);
        using var csv = new CsvReader(reader, RowText.Format);
        int columns = Columns(plan).Count, first = 2 + plan.Numbers.Count, score = first + plan.Figures.Count;
        _ = csv.Read();
        while (csv.Read())
        {
            if (csv.Parser.Count != columns || !long.TryParse(csv[0], NumberStyles.None, CultureInfo.InvariantCulture, out long car)
                || !int.TryParse(csv[1], NumberStyles.None, CultureInfo.InvariantCulture, out int redrawn))
            {
                throw new RowTableException($"`{path}`, line {csv.Parser.RawRow}: found a row that this study does not write; delete the table and begin anew");
            }

            double[] figures = new double[plan.Figures.Count];
            for (int i = 0; i < figures.Length; i++)
            {
                figures[i] = RowText.Number(csv[first + i]);
            }

            AimScore own = csv[score] is { Length: > 0 } ? new AimScore(RowText.Number(csv[score]), RowText.Number(csv[score + 1])) : AimScore.None;
            yield return new DoubtRow(car, redrawn, Text(csv[score + 3]), figures, own, csv[score + 2]!.Split(' ', StringSplitOptions.RemoveEmptyEntries), Text(csv[score + 4]));
        }
    }

    /// <summary>What a number was drawn as: in SI; of rows the factor on them, of a bracket's holes what is added to all of them.</summary>
    /// <param name="number">The number.</param>
    /// <param name="share">By how much of its doubt it was moved.</param>
    internal static double Drawn(DoubtfulNumber number, double share)
    {
        if (number.Doubt.IsPercent)
        {
            return 1 + (share * number.Doubt.HalfWidth / 100);
        }

        return number.Edits(share) is [ScenarioEdit { Quantity: { } quantity }] ? quantity.Si() : share * number.Doubt.HalfWidth;
    }

    private static string Kind(DoubtfulNumber number) => number.Doubt.IsPercent ? ".factor" : number.Edits(0).Count > 1 ? ".error_m" : "";

    private static string? Text(string? text) => text is { Length: > 0 } ? text : null;
}
