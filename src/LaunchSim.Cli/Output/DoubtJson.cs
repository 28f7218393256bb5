using System.Text.Json;
using LaunchSim.Reports.Decisive;
using LaunchSim.Reports.Numbers;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Chance;
using LaunchSim.Studies.Doubting;

namespace LaunchSim.Cli.Output;

/// <summary>How sure the answer is as a document, SI units.</summary>
internal static class DoubtJson
{
    /// <summary>Writes the document.</summary>
    /// <param name="result">What came of it.</param>
    /// <param name="readout">The units of sentences.</param>
    /// <param name="stream">Where to.</param>
    public static void Write(DoubtResult result, Readout readout, Stream stream)
    {
        using Utf8JsonWriter json = ResultJson.Writer(stream);
        json.WriteStartObject();
        ResultJson.Head(json, result.Plan.Scenario);
        json.WriteString("conclusion", DoubtWords.Conclusion(result));
        Cars(json, result);
        Drawn(json, result.Plan);
        Sentences(json, result);
        Figures(json, result);
        json.Aims(result.Plan.Aims);
        Aims(json, result);
        Ranking(json, result.Ranking);
        Traces(json, result);
        json.WriteEndObject();
        json.Flush();
        stream.WriteByte((byte)'\n');
    }

    private static void Cars(Utf8JsonWriter json, DoubtResult result)
    {
        json.WriteStartObject("cars");
        json.WriteNumber("drawn", result.Cars);
        json.WriteNumber("seed", result.Plan.Settings.Seed);
        json.WriteNumber("tolerance", result.Plan.Settings.Tolerance);
        json.WriteNumber("came_to_the_end", result.Whole);
        json.WriteNumber("redrawn", result.Redrawn);
        json.WriteNumber("given_up", result.GivenUp);
        Reasons(json, "first_refusals", result.Refusals);
        Reasons(json, "stopped", result.Failures);
        json.WriteEndObject();
    }

    private static void Reasons(Utf8JsonWriter json, string key, IReadOnlyList<(string Reason, int Cars)> reasons)
    {
        json.WriteStartArray(key);
        foreach ((string reason, int cars) in reasons)
        {
            json.WriteStartObject();
            json.WriteString("reason", reason);
            json.WriteNumber("cars", cars);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Drawn(Utf8JsonWriter json, DoubtPlan plan)
    {
        json.WriteStartArray("numbers");
        foreach (Scenarios.Doubtful.DoubtfulNumber number in plan.Numbers)
        {
            json.WriteStartObject();
            json.WriteString("path", number.Path);
            json.WriteString("doubt", DoubtWords.Doubt(number));
            json.WriteBoolean("is_entered", number.IsEntered);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Sentences(Utf8JsonWriter json, DoubtResult result)
    {
        json.WriteStartArray("sentences");
        foreach (SentenceShare sentence in result.Sentences)
        {
            json.WriteStartObject();
            json.WriteString("key", sentence.Key);
            json.WriteString("statement", sentence.Statement);
            json.WriteBoolean("is_own", sentence.IsOwn);
            json.WriteNumber("cars", sentence.Cars);
            Share(json, "share", sentence.Share);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Share(Utf8JsonWriter json, string key, ShareInterval share)
    {
        json.Number(key, share.Share);
        json.Number(key + "_low", share.Low);
        json.Number(key + "_high", share.High);
    }

    private static void Band(Utf8JsonWriter json, double own, Band band)
    {
        json.Number("own", own);
        json.Number("low", band.Low);
        json.Number("median", band.Median);
        json.Number("high", band.High);
    }

    private static void Figures(Utf8JsonWriter json, DoubtResult result)
    {
        json.WriteStartObject("figures");
        foreach (FigureBand figure in result.Figures)
        {
            json.WriteStartObject(figure.Figure.Key);
            Band(json, figure.Own, figure.Band);
            json.WriteNumber("cars_without", figure.Missing);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void Aims(Utf8JsonWriter json, DoubtResult result)
    {
        json.WriteStartArray("aims_kept");
        foreach (AimShare aim in result.Aims)
        {
            json.WriteStartObject();
            json.WriteString("aim", aim.Aim.Subject.Name);
            json.WriteBoolean("is_limit", aim.Aim.IsLimit);
            Band(json, aim.Own, aim.Band);
            Share(json, "kept", aim.Keeps);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartObject("score_points");
        Band(json, result.Own.Score.Points, result.Points);
        json.WriteEndObject();
        json.WriteStartObject("limits");
        Share(json, "kept", result.KeepsLimits);
        json.WriteEndObject();
    }

    private static void Ranking(Utf8JsonWriter json, Ranking ranking)
    {
        json.WriteStartObject("measure_first");
        json.WriteNumber("cars", ranking.Cars);
        json.WriteStartObject("answer");
        foreach ((AnswerFigure figure, double weight) in ranking.Figures)
        {
            json.Number(figure.Key, weight);
        }

        json.WriteEndObject();
        json.WriteStartArray("numbers");
        foreach (NumberShare number in ranking.Numbers)
        {
            json.WriteStartObject();
            json.WriteString("path", number.Number.Path);
            json.Number("share", number.Share.Share);
            json.Number("share_error", number.Share.StandardError);
            json.Number("narrower", number.Narrower);
            json.WriteBoolean("stands_out", number.StandsOut);
            json.WriteString("most_of", number.Most?.Key);
            json.Number("share_of_most", number.ShareOfMost.Share);
            json.Number("share_of_most_error", number.ShareOfMost.StandardError);
            json.WriteString("how", number.Number.Entry?.HomeTest?.How);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.Number("together", ranking.Together);
        json.Number("together_error", ranking.TogetherError);
        json.WriteEndObject();
    }

    private static void Traces(Utf8JsonWriter json, DoubtResult result)
    {
        json.WriteStartObject("traces");
        json.WriteNumber("cars", result.TraceCars);
        json.Number("step_s", result.Traces.Count > 0 ? result.Traces[0].Step : null);
        foreach (TraceBand trace in result.Traces)
        {
            json.WriteStartObject(trace.Name);
            Column("own", trace.Own);
            Column("low", trace.Rows.Select(row => row.Low));
            Column("median", trace.Rows.Select(row => row.Median));
            Column("high", trace.Rows.Select(row => row.High));
            json.WriteEndObject();
        }

        json.WriteEndObject();

        void Column(string key, IEnumerable<double> values)
        {
            json.WriteStartArray(key);
            foreach (double value in values)
            {
                if (double.IsFinite(value))
                {
                    json.WriteNumberValue((float)value);
                }
                else
                {
                    json.WriteNullValue();
                }
            }

            json.WriteEndArray();
        }
    }
}
