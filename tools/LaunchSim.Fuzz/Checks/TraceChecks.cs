using System.Globalization;
using System.Text;

namespace LaunchSim.Fuzz.Checks;

/// <summary>Traces and tables: whole rows, finite numbers, nothing only where a column may be without a meaning.</summary>
internal static class TraceChecks
{
    private const string Begins = "time_s,distance_m,speed_mps,";

    /// <summary>What a ladder bar, an instant centre at infinity and a car without an engine leave empty.</summary>
    private static readonly HashSet<string> MayBeEmpty =
        ["upper_link_force_n", "lower_link_force_n", "anti_squat_percent", "instant_centre_ahead_m", "instant_centre_up_m", "engine_speed_radps", "gear"];

    public static IEnumerable<string> Traces(Outcome outcome) => outcome.Written
        .Where(file => file.Key.EndsWith(".csv", StringComparison.Ordinal))
        .SelectMany(file => Table(Encoding.UTF8.GetString(file.Value), outcome.Case.Command == "run").Select(complaint => $"{file.Key}: {complaint}"));

    private static IEnumerable<string> Table(string text, bool isTrace)
    {
        if (isTrace && !text.StartsWith(Begins, StringComparison.Ordinal))
        {
            yield return "does not begin like a trace";
            yield break;
        }

        if (!text.EndsWith('\n'))
        {
            yield return "ends within a row";
        }

        string[] rows = text.TrimEnd('\n').Split('\n');
        string[] columns = rows[0].Split(',');
        double before = double.NegativeInfinity;
        for (int row = 1; row < rows.Length; row++)
        {
            string[] cells = rows[row].Split(',');
            if (!isTrace)
            {
                // A name of a hole may have a comma in it, in quotes.
                if (cells.Length < columns.Length)
                {
                    yield return $"row {row} has {cells.Length} of {columns.Length} cells";
                }

                continue;
            }

            if (cells.Length != columns.Length)
            {
                yield return $"row {row} has {cells.Length} of {columns.Length} cells";
                yield break;
            }

            for (int i = 0; i < cells.Length; i++)
            {
                bool isNumber = double.TryParse(cells[i], NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number);
                if (!isNumber && !(cells[i].Length == 0 && MayBeEmpty.Contains(columns[i])))
                {
                    yield return $"{columns[i]} is `{cells[i]}` in row {row}";
                    yield break;
                }
            }

            double time = double.Parse(cells[0], CultureInfo.InvariantCulture);
            if (!(time > before))
            {
                yield return $"time does not rise in row {row}";
                yield break;
            }

            before = time;
        }
    }
}
