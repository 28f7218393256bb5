using System.Globalization;
using System.Text;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Comparing;

namespace LaunchSim.Cli.Output;

/// <summary>
/// A comparison in one table, SI units: a column a set-up, then for each but the first its difference and the verdict. The
/// first column says of what kind a row is.
/// </summary>
internal static class CompareCsv
{
    // Rows without numbers have neither difference nor verdict.
    private static readonly string[] Neither = ["", ""];

    /// <summary>Writes it.</summary>
    /// <param name="comparison">The comparison.</param>
    /// <param name="stream">Where to.</param>
    public static void Write(Comparison comparison, Stream stream)
    {
        string[] letters = [.. comparison.SetUps.Select(setUp => setUp.Letter)];
        var text = new StringBuilder(OutputKind.Comparison.Begins);
        _ = text.AppendJoin(',', [.. letters, .. letters.Skip(1).SelectMany(letter => new[] { $"{letter}_less_{letters[0]}", $"{letter}_is" })]).Append('\n');
        Row("file", "", setUp => setUp.Run.Scenario.SourceFile);
        Row("name", "", setUp => setUp.Run.Scenario.Name);
        Row("hash", "", setUp => setUp.Run.Scenario.ContentHash);
        Row("status", "", setUp => setUp.Run.Failure is null ? "done" : "stopped");
        foreach (WrittenDifference written in comparison.Written)
        {
            Line(["written", written.Path, .. written.Texts.Select(one => one ?? ""), .. comparison.Differences.SelectMany(_ => Neither)]);
        }

        for (int i = 0; i < comparison.Aims.Aims.Count; i++)
        {
            Aim aim = comparison.Aims.Aims[i];
            Numbers("aim", aim.Subject.Name, part => part.Parts[i].Value, difference => VerdictWords.Of(difference.Aims[i].Verdict));
            Numbers("points", aim.Subject.Name, part => part.Parts[i].Points, difference => VerdictWords.Of(difference.Aims[i].Verdict));
        }

        Numbers("score", "points", setUp => setUp.Score.Points, difference => VerdictWords.Of(difference.Verdict));
        Numbers("score", "beyond_limits_points", setUp => setUp.Score.Beyond, difference => VerdictWords.Of(difference.Verdict));
        foreach (FigureRow row in comparison.Figures)
        {
            Line(["figure", row.Definition.Key, .. row.Values.Select(value => Number(value)), .. comparison.Differences.SelectMany((_, i) => new[] { Number(row.Difference(i + 1)), "" })]);
        }

        stream.Write(Encoding.UTF8.GetBytes(text.ToString()));

        void Row(string kind, string key, Func<ComparedSetUp, string> value) =>
            Line([kind, key, .. comparison.SetUps.Select(value), .. comparison.Differences.SelectMany(_ => Neither)]);

        void Numbers(string kind, string key, Func<ComparedSetUp, double> value, Func<SetUpDifference, string> verdict) =>
            Line([kind, key, .. comparison.SetUps.Select(setUp => Number(value(setUp))), .. comparison.Differences.SelectMany(difference => new[] { Number(value(difference.Other) - value(difference.First)), verdict(difference) })]);

        void Line(IEnumerable<string> cells) => text.AppendJoin(',', cells.Select(Quoted)).Append('\n');
    }

    private static string Number(double? value) => value is { } number && double.IsFinite(number) ? (number + 0.0).ToString(CultureInfo.InvariantCulture) : "";

    private static string Quoted(string text) =>
        text.AsSpan().IndexOfAny(",\"\n\r") < 0 ? text : $"\"{text.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
