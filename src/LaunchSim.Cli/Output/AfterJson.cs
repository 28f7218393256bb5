using System.Text.Json;
using LaunchSim.Passes.After;
using LaunchSim.Passes.Fitting;
using LaunchSim.Passes.Seen;
using LaunchSim.Reports.Numbers;
using LaunchSim.Studies.Next;

namespace LaunchSim.Cli.Output;

/// <summary>What is said between two passes as a document, SI units.</summary>
internal static class AfterJson
{
    /// <summary>Writes the document.</summary>
    /// <param name="result">What was worked out.</param>
    /// <param name="readout">The units of sentences.</param>
    /// <param name="stream">Where to.</param>
    public static void Write(AfterResult result, Readout readout, Stream stream)
    {
        using Utf8JsonWriter json = ResultJson.Writer(stream);
        json.WriteStartObject();
        ResultJson.Head(json, result.Pass.Scenario);
        json.WriteString("pass", result.Pass.Name);
        json.WriteString("pass_file", result.Pass.SourceFile);
        json.WriteString("conclusion", AfterWords.Conclusion(result, readout));
        json.WriteStartArray("seen");
        IReadOnlyList<SeenComparison>? after = result.Fit?.Seen is [var learned, ..] ? learned.After : null;
        foreach (SeenComparison fact in result.Seen)
        {
            json.WriteStartObject();
            SeenJson.Members(json, fact);
            json.Number("learned_s", after?.FirstOrDefault(one => one.Key == fact.Key)?.Predicted);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("learned");
        foreach (FittedValue value in result.Fit?.Values.Where(value => value.IsTold) ?? [])
        {
            json.WriteStartObject();
            json.WriteString("path", value.Parameter.Path);
            json.WriteString("before", value.Before);
            json.WriteString("after", value.After);
            json.Number("share_of_doubt_left", value.Sd);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Change(json, result, readout);
        json.WriteEndObject();
        json.Flush();
        stream.WriteByte((byte)'\n');
    }

    private static void Change(Utf8JsonWriter json, AfterResult result, Readout readout)
    {
        if (result.Change is not { } change || result.Help is not { } help)
        {
            json.WriteNull("change");
            return;
        }

        json.WriteStartObject("change");
        json.WriteString("words", NextWords.Change(change, result.Learned));
        json.WriteStartArray("settings");
        foreach (SingleChange one in change.Changes)
        {
            json.WriteStartObject();
            json.WriteString("path", one.Edit.Path);
            json.WriteString("value", one.Edit.Value);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.Number("minutes", change.Minutes);
        json.WriteStartArray("bars");
        foreach (string bar in NextWords.Bars(change, result.Learned, readout))
        {
            json.WriteStringValue(bar);
        }

        json.WriteEndArray();
        json.WriteNumber("cars", result.Cars);
        json.Number("helps_share", help.Helps.Share);
        json.Number("helps_share_low", help.Helps.Low);
        json.Number("helps_share_high", help.Helps.High);
        json.Number("hurts_share", help.Hurts.Share);
        json.WriteStartArray("signs");
        foreach (VideoSign sign in result.Signs)
        {
            json.WriteStartObject();
            json.WriteString("what", sign.Key);
            json.WriteString("words", AfterWords.Sign(sign, result.Pass.Seen));
            json.Number("bound_s", sign.Bound);
            json.WriteBoolean("no_later", sign.IsEarlier);
            json.Number("now_s", sign.Now);
            json.Number("share", sign.Share);
            json.Number("within_s", sign.Within);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteString("put_back", AfterWords.PutBack(change, result.Learned));
        json.WriteEndObject();
    }
}
