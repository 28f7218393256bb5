using System.Text.Json;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Next;
using LaunchSim.Web.Documents;

namespace LaunchSim.Web.Desk;

/// <summary>What to change next, in the words of <c>launchsim next</c>, each row with the edits that make it.</summary>
internal static class NextList
{
    /// <summary>Writes the list.</summary>
    /// <param name="json">The writer, within the message's object.</param>
    /// <param name="result">What came of it.</param>
    /// <param name="scenario">The scenario as it stands.</param>
    /// <param name="readout">The units.</param>
    public static void Write(Utf8JsonWriter json, NextResult result, Scenario scenario, Readout readout)
    {
        json.WriteString("conclusion", NextWords.Conclusion(result, scenario, readout));
        json.WriteString("score", AimWords.Score(result.Score));
        json.Texts("notes", [.. result.IsOffered ? [NextWords.Offered] : Array.Empty<string>(), NextWords.Gains, NextWords.OneAtATime]);
        json.Texts("aims", result.Aims.Aims.Select(AimWords.Heading));
        json.Texts("now", Cells(result, result.Now, readout));
        Rows(json, "singles", result, result.Singles, scenario, readout);
        Rows(json, "pairs", result, result.Pairs, scenario, readout);
    }

    private static void Rows(Utf8JsonWriter json, string key, NextResult result, IReadOnlyList<NextChange> changes, Scenario scenario, Readout readout)
    {
        json.WriteStartArray(key);
        foreach (NextChange change in changes)
        {
            json.WriteStartObject();
            json.WriteString("words", NextWords.Change(change, scenario));
            json.Edits("edits", change.Changes.Select(one => one.Edit));
            json.Number("minutes", change.Minutes);
            json.WriteBoolean("helps", result.Helps(change));
            if (change.Trouble is { } trouble)
            {
                json.WriteString("trouble", trouble);
            }
            else
            {
                json.WriteString("gain", NextWords.Gain(result.Score, change.Score));
                json.WriteString("score", AimWords.Score(change.Score));
                json.WriteString("scoreWithGripSlope", AimWords.Score(change.WithSlope));
                json.Texts("cells", Cells(result, change.Figures, readout));
                json.Texts("bars", NextWords.Bars(change, scenario, readout));
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static IEnumerable<string> Cells(NextResult result, double[] figures, Readout readout) =>
        result.Aims.Parts(figures).Select(part => AimWords.Cell(part.Aim, part.Value, readout));
}
