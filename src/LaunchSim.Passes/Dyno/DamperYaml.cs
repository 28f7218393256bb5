using System.Globalization;
using System.Text;

namespace LaunchSim.Passes.Dyno;

/// <summary>Damper tables as they are pasted into a scenario, below <c>front.damper</c> or <c>rear.damper</c>.</summary>
public static class DamperYaml
{
    /// <summary>Both sides.</summary>
    /// <param name="table">The tables.</param>
    /// <param name="isShop">In in/s and lb; otherwise in mm/s and N.</param>
    /// <param name="set">The click that is set; the lowest when null.</param>
    /// <returns>Lines that end in a line feed, not indented.</returns>
    public static string Of(DamperTable table, bool isShop, double? set)
    {
        ArgumentNullException.ThrowIfNull(table);
        var text = new StringBuilder();
        foreach (DamperSide side in new[] { table.Extension, table.Compression })
        {
            (double speed, string speedUnit, double force, string forceUnit) = isShop ? (0.0254, "in/s", 4.4482216152605, "lb") : (1e-3, "mm/s", 1.0, "N");
            _ = text.Append(side.Name).Append(":\n  speed: ").Append(Numbers(side.Speeds, speed)).Append(' ').Append(speedUnit).Append('\n');
            if (side.Rows is [{ Click: null } only])
            {
                _ = text.Append("  force: ").Append(Row(only)).Append('\n');
                continue;
            }

            _ = text.Append("  clicks:\n");
            foreach (DamperRow row in side.Rows)
            {
                _ = text.Append(CultureInfo.InvariantCulture, $"    {row.Click:R}: {Row(row)}\n");
            }

            _ = text.Append(CultureInfo.InvariantCulture, $"  set: {set ?? side.Rows[0].Click:R}\n");

            string Row(DamperRow row) =>
                $"{Numbers(row.Forces, force)} {forceUnit}{(row.DoubtPercent is { } doubt ? string.Create(CultureInfo.InvariantCulture, $" ±{Math.Max(0.1, doubt):0.0} %") : "")}";
        }

        return text.ToString();
    }

    // A tenth of a unit is more than any dyno repeats; rounding keeps a row from falling.
    private static string Numbers(IReadOnlyList<double> values, double factor) =>
        string.Join(' ', values.Select(value => Math.Round(value / factor, 1, MidpointRounding.AwayFromZero).ToString("0.#", CultureInfo.InvariantCulture)));

}
