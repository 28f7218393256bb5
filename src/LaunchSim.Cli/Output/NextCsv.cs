using System.Globalization;
using System.Text;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Next;

namespace LaunchSim.Cli.Output;

/// <summary>What could be changed next as a table: the set-up as it stands, every single change, the pairs; SI units.</summary>
internal static class NextCsv
{
    /// <summary>Writes the table.</summary>
    /// <param name="result">What came of trying changes.</param>
    /// <param name="stream">Where to.</param>
    public static void Write(NextResult result, Stream stream)
    {
        var text = new StringBuilder();
        string[] aims = [.. result.Aims.Aims.Select(aim => aim.Subject.Name)];
        Line(text, ["change", "steps", "minutes", "helps", "score_points", "beyond_limits_points", "score_with_grip_slope_points", .. aims, .. aims.Select(aim => aim + "_points"), "trouble"]);
        Row(text, result, "as it stands", "", null, "", result.Score, result.Score, result.Now, null);
        foreach (NextChange change in result.Singles.Concat(result.Pairs))
        {
            Row(
                text, result, string.Join(" and ", change.Changes.Select(one => $"{one.Edit.Path}={one.Edit.Value}")), string.Join(' ', change.Changes.Select(one => one.Steps.ToString(CultureInfo.InvariantCulture))),
                change.Minutes, result.Helps(change) ? "yes" : "no", change.Score, change.WithSlope, change.Figures, change.Trouble);
        }

        stream.Write(Encoding.UTF8.GetBytes(text.ToString()));
    }

    private static void Row(StringBuilder text, NextResult result, string change, string steps, double? minutes, string helps, AimScore score, AimScore slope, double[] figures, string? trouble)
    {
        IReadOnlyList<AimPart> parts = result.Aims.Parts(figures);
        Line(text, [change, steps, Number(minutes), helps, Number(score.Points), Number(score.Beyond), Number(slope.Points), .. parts.Select(part => Number(part.Value)), .. parts.Select(part => trouble is null ? Number(part.Points) : ""), trouble ?? ""]);
    }

    private static void Line(StringBuilder text, IEnumerable<string> cells) => text.AppendJoin(',', cells.Select(Quoted)).Append('\n');

    private static string Number(double? value) => value is { } number && double.IsFinite(number) ? (number + 0.0).ToString("R", CultureInfo.InvariantCulture) : "";

    private static string Quoted(string cell) => cell.AsSpan().IndexOfAny(",\"\n\r") < 0 ? cell : $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
