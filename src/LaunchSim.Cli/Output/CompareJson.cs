using System.Text;
using System.Text.Json;
using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;
using LaunchSim.Studies.Comparing;
using LaunchSim.Studies.Doubting;

namespace LaunchSim.Cli.Output;

/// <summary>A comparison as a JSON document: set-ups, what differs, verdicts, causes, sentences; numbers in SI units.</summary>
internal static class CompareJson
{
    /// <summary>The document, ended by a line feed.</summary>
    /// <param name="comparison">The comparison.</param>
    /// <param name="shares">In what share of plausible cars each other set-up is better than the first; null when nobody asked.</param>
    /// <param name="readout">Units of the sentences.</param>
    public static string Text(Comparison comparison, HelpResult? shares, Readout readout)
    {
        using var stream = new MemoryStream();
        using (Utf8JsonWriter json = ResultJson.Writer(stream))
        {
            json.WriteStartObject();
            json.WriteString("program", ProgramVersion.Name);
            json.WriteString("version", ProgramVersion.Text);
            json.WriteString("profile", comparison.Aims.Profile.Name);
            Array(json, "set_ups", comparison.SetUps, setUp => SetUp(json, setUp));
            Array(json, "written", comparison.Written, written => Written(json, written, comparison));
            Array(json, "differences", comparison.Differences, difference => Difference(json, comparison, difference, readout));
            if (shares is not null)
            {
                HelpText.Add(json, [.. comparison.SetUps.Skip(1).Select(setUp => setUp.Letter)], shares);
            }

            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length) + "\n";
    }

    private static void SetUp(Utf8JsonWriter json, ComparedSetUp setUp)
    {
        json.WriteString("letter", setUp.Letter);
        json.WriteString("name", setUp.Run.Scenario.Name);
        json.WriteString("file", setUp.Run.Scenario.SourceFile);
        json.WriteString("hash", setUp.Run.Scenario.ContentHash);
        json.WriteString("status", setUp.Run.Failure is null ? "done" : "stopped");
        RunJson.Failure(json, setUp.Run.Failure);
        json.Number("score_points", setUp.Score.Points);
        json.Number("beyond_limits_points", setUp.Score.Beyond);
        json.WriteStartObject("figures");
        foreach (Figure figure in setUp.Run.Figures)
        {
            json.Number(figure.Key, figure.Value);
        }

        json.WriteEndObject();
    }

    private static void Written(Utf8JsonWriter json, WrittenDifference written, Comparison comparison)
    {
        json.WriteString("path", written.Path);
        for (int i = 0; i < written.Texts.Count; i++)
        {
            json.WriteString(comparison.SetUps[i].Letter, written.Texts[i]);
        }
    }

    private static void Difference(Utf8JsonWriter json, Comparison comparison, SetUpDifference difference, Readout readout)
    {
        json.WriteString("from", difference.First.Letter);
        json.WriteString("to", difference.Other.Letter);
        json.WriteString("verdict", Word(difference.Verdict));
        json.WriteStartArray("conclusion");
        foreach (string sentence in ComparisonWords.Of(comparison, difference, readout))
        {
            json.WriteStringValue(sentence);
        }

        json.WriteEndArray();
        Array(json, "aims", difference.Aims, aim =>
        {
            json.WriteString("aim", aim.Aim.Subject.Name);
            json.Number("before", aim.Before.Value);
            json.Number("after", aim.After.Value);
            json.Number("points_before", aim.Before.Points);
            json.Number("points_after", aim.After.Points);
            json.WriteString("verdict", Word(aim.Verdict));
        });
        json.WriteStartObject("figures");
        int launch = comparison.Differences.ToList().IndexOf(difference) + 1;
        foreach (FigureRow row in comparison.Figures)
        {
            json.Number(row.Definition.Key, row.Difference(launch));
        }

        json.WriteEndObject();
        Causes(json, difference.Cause);
    }

    private static void Causes(Utf8JsonWriter json, Cause cause)
    {
        json.WriteStartObject("causes");
        Array(json, "rear_load", cause.Loads, load =>
        {
            json.WriteString("moment", Word(load.Moment));
            json.Number("change_n", load.Change);
            foreach (LoadPath path in Enum.GetValues<LoadPath>())
            {
                json.Number($"via_{Word(path)}_n", load.Of(path));
            }
        });
        Array(json, "dampers", cause.Dampers, damper =>
        {
            json.WriteString("motion", Word(damper.Motion));
            json.Number("from_s", damper.From);
            json.Number("until_s", damper.Until);
            json.Number("mean_force_change_n", damper.MeanForce);
            json.Number("energy_change_j", damper.Energy);
        });
        if (cause.Parting is { } parting)
        {
            json.WriteStartObject("parting");
            json.Number("time_s", parting.Time);
            json.WriteString("end", parting.IsRear ? "rear" : "front");
            json.WriteString("way", parting.IsOpening ? "opening" : "closing");
            json.Number("gap_before_m", parting.Before);
            json.Number("gap_after_m", parting.After);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("parting");
        }

        json.WriteEndObject();
    }

    private static string Word<T>(T value)
        where T : struct, Enum => JsonNamingPolicy.SnakeCaseLower.ConvertName(value.ToString());

    private static void Array<T>(Utf8JsonWriter json, string key, IEnumerable<T> items, Action<T> members)
    {
        json.WriteStartArray(key);
        foreach (T item in items)
        {
            json.WriteStartObject();
            members(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
