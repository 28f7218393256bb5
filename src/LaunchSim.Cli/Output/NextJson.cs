using System.Text.Json;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios;
using LaunchSim.Studies.Next;

namespace LaunchSim.Cli.Output;

/// <summary>What to change next as a document, SI units.</summary>
internal static class NextJson
{
    /// <summary>Writes the document.</summary>
    /// <param name="result">What came of it.</param>
    /// <param name="doubt">How sure it is; null when nobody asked.</param>
    /// <param name="scenario">The scenario as it stands.</param>
    /// <param name="readout">The units of sentences.</param>
    /// <param name="stream">Where to.</param>
    public static void Write(NextResult result, NextDoubt? doubt, Scenario scenario, Readout readout, Stream stream)
    {
        using Utf8JsonWriter json = ResultJson.Writer(stream);
        json.WriteStartObject();
        ResultJson.Head(json, scenario);
        json.WriteString("conclusion", NextWords.Conclusion(result, scenario, readout));
        json.Aims(result.Aims);
        json.WriteBoolean("choices_are_offered", result.IsOffered);
        json.WriteNumber("launches", result.Launches);
        json.Score("present_score", result.Score);
        json.Parts(result.Aims, result.Now);
        Changes(json, "singles", result, result.Singles, scenario, readout);
        Changes(json, "pairs", result, result.Pairs, scenario, readout);
        if (doubt is not null)
        {
            HelpText.Add(json, [.. doubt.Changes.Select(change => string.Join("; ", change.Changes.Select(one => $"{one.Edit.Path}={one.Edit.Value}")))], doubt.Help);
        }

        json.WriteEndObject();
        json.Flush();
        stream.WriteByte((byte)'\n');
    }

    private static void Changes(Utf8JsonWriter json, string key, NextResult result, IReadOnlyList<NextChange> changes, Scenario scenario, Readout readout)
    {
        json.WriteStartArray(key);
        foreach (NextChange change in changes)
        {
            json.WriteStartObject();
            json.WriteStartArray("changes");
            foreach (SingleChange one in change.Changes)
            {
                json.WriteStartObject();
                json.WriteString("path", one.Edit.Path);
                json.WriteString("value", one.Edit.Value);
                json.WriteNumber("steps", one.Steps);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.Number("minutes", change.Minutes);
            json.WriteBoolean("helps", result.Helps(change));
            json.Score("score", change.Score);
            json.Score("score_with_grip_slope", change.WithSlope);
            json.WriteStartArray("bars");
            foreach (string bar in NextWords.Bars(change, scenario, readout))
            {
                json.WriteStringValue(bar);
            }

            json.WriteEndArray();
            json.WriteString("trouble", change.Trouble);
            json.Parts(result.Aims, change.Figures);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
