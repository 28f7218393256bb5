using System.Globalization;
using LaunchSim.Cli.Terminal;
using LaunchSim.Passes.Logs.Proposing;

namespace LaunchSim.Cli.Output;

/// <summary>What the columns of a log may be, as a table with why.</summary>
internal static class ColumnsText
{
    /// <summary>The whole text.</summary>
    /// <param name="proposal">The proposal.</param>
    /// <param name="screen">Where it is read.</param>
    public static string Of(LogProposal proposal, Screen screen)
    {
        Page page = new(screen);
        _ = page.Heading(proposal.SourceFile).Line($"{proposal.Layout}.").Line($"{proposal.Rows}.");
        var table = new TextTable(true, false, false, false, false, false, false);
        _ = table.Named("#", "column", "lowest to highest", "may be", "unit", "", "why");
        foreach (ProposedColumn column in proposal.Columns)
        {
            table.Add(
                column.Number.ToString(CultureInfo.InvariantCulture), OneLine(column.Name), column.Range, column.Quantity ?? "", column.Unit ?? (column.Quantity is null ? "" : "?"),
                column.Certainty.ToString().ToLowerInvariant(), column.Why);
        }

        _ = page.Blank().Table(table, 2).Blank();
        int sure = proposal.Columns.Count(column => column.Certainty == Certainty.Sure), likely = proposal.Columns.Count(column => column.Certainty == Certainty.Likely);
        return page.Line(string.Create(CultureInfo.InvariantCulture, $"{sure} sure by name and unit, {likely} likely: some of it was told from the numbers; the rest is left open.")).ToString();
    }

    private static string OneLine(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
