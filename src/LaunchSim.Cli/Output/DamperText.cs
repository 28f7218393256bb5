using System.Globalization;
using LaunchSim.Cli.Terminal;
using LaunchSim.Passes.Dyno;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Cli.Output;

/// <summary>Damper tables from dyno sheets, in words and tables.</summary>
internal static class DamperText
{
    private static readonly bool[] TwoNumbers = [true, true];

    /// <summary>The whole text; the lines to paste come last.</summary>
    /// <param name="table">The tables.</param>
    /// <param name="yaml">The lines to paste.</param>
    /// <param name="readout">The units.</param>
    /// <param name="screen">Where it is read.</param>
    public static string Of(DamperTable table, string yaml, Readout readout, Screen screen)
    {
        Page page = new Page(screen).Heading(Title(table, readout)).Blank().Heading("What was taken out");
        var gas = new TextTable(false, false, true, true, true).Named("sheet", "click", "gas force", "more with the shaft in †", "gas rate †");
        foreach (DamperMeasurement one in table.Measurements)
        {
            gas.Add(
                one.Run.Source,
                Click(one.Run.Click),
                one.GasForce is { } force ? readout.Force.With(1).Text(force) : "unknown",
                one.GasSwing is { } swing ? readout.Force.With(1).Text(swing) : "",
                one.GasRate is { } rate ? Rate(rate, readout) : "");
        }

        _ = page.Table(gas, 2).Line("† with what of the hysteresis is left at a standstill; the gas force is the mean of both ends of the stroke.");
        foreach (DamperSide side in new[] { table.Extension, table.Compression })
        {
            Side(page, side, readout);
        }

        foreach (string note in table.Notes)
        {
            _ = page.Line(note);
        }

        _ = page.Blank()
            .Line("± is the scatter of the sheet's own points, nineteen times in twenty; how true the dyno itself is, and that one unit is not the other, is not in it.")
            .Blank().Heading("To paste below front.damper or rear.damper; forces of one unit");
        return page + yaml;
    }

    /// <summary>The tables in one sentence.</summary>
    /// <param name="table">The tables.</param>
    /// <param name="readout">The units.</param>
    public static string Title(DamperTable table, Readout readout)
    {
        string Words(DamperSide side)
        {
            Scale force = readout.Force, speed = readout.ShaftSpeed;
            double low = side.Rows.Min(row => row.Forces[^1]), high = side.Rows.Max(row => row.Forces[^1]);
            string span = side.Rows.Count > 1 ? $"{force.Number(low)} to {force.Text(high)}" : force.Text(low);
            string clicks = side.Rows.Count > 1 ? $" over {side.Rows.Count} clicks" : side.IsSameForAllClicks ? " at all clicks" : "";
            return $"{span} at {speed.Text(side.Speeds[^1])}{clicks}";
        }

        return $"Extension resists with {Words(table.Extension)}, compression with {Words(table.Compression)}";
    }

    private static void Side(Page page, DamperSide side, Readout readout)
    {
        Scale speed = readout.ShaftSpeed, force = readout.Force.With(1);
        string reached = side.FastestMeasured > 1.05 * side.Speeds[^1] ? $"; measured up to {speed.Text(side.FastestMeasured)}" : "";
        var table = new TextTable([true, .. side.Rows.SelectMany(_ => TwoNumbers)]).Named(["speed", .. side.Rows.SelectMany(row => new[] { row.Click is null ? "force" : $"click {Click(row.Click)}", "loop" })]);
        for (int i = 0; i < side.Speeds.Count; i++)
        {
            table.Add([speed.Text(side.Speeds[i]), .. side.Rows.SelectMany(row => new[] { force.Text(row.Forces[i]), double.IsNaN(row.Hysteresis[i]) ? "" : force.WithSign(row.Hysteresis[i]) })]);
        }

        string same = side.IsSameForAllClicks ? ", the same at all clicks within the scatter" : "";
        _ = page.Blank().Heading($"{char.ToUpperInvariant(side.Name[0])}{side.Name[1..]}{same}{reached}").Table(table);
        string doubts = string.Join(", ", side.Rows.Select(row => row.DoubtPercent is { } doubt ? string.Create(CultureInfo.InvariantCulture, $"±{doubt:F1} %") : "not known, too few points"));
        _ = page.Line($"Scatter: {doubts}.{(side.Rows.Any(row => row.Hysteresis.Any(value => !double.IsNaN(value))) ? " Loop: half of speeding up less slowing down; the force is the mean of both." : "")}");
    }

    private static string Click(double? click) => click is { } number ? number.ToString("R", CultureInfo.InvariantCulture) : "";

    private static string Rate(double rate, Readout readout) => readout.IsShop
        ? string.Create(CultureInfo.InvariantCulture, $"{rate / (4.4482216152605 / 0.0254):F1} lb/in")
        : string.Create(CultureInfo.InvariantCulture, $"{rate / 1000:F2} N/mm");
}
