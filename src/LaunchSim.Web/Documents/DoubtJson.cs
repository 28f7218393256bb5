using System.Text.Json;
using LaunchSim.Reports.Numbers;
using LaunchSim.Studies.Chance;
using LaunchSim.Studies.Doubting;

namespace LaunchSim.Web.Documents;

/// <summary>How sure a launch is, for the front end: bands on columns and figures, and in what share of the cars statements hold.</summary>
internal static class DoubtJson
{
    /// <summary>Writes the doubt's object.</summary>
    /// <param name="json">The writer, within the launch's object.</param>
    /// <param name="doubt">What came of the study.</param>
    /// <param name="readout">The units.</param>
    public static void Write(Utf8JsonWriter json, DoubtResult doubt, Readout readout)
    {
        json.WriteStartObject("doubt");
        json.WriteString("conclusion", DoubtWords.Conclusion(doubt));
        json.Texts("notes", DoubtWords.Cars(doubt).Append(DoubtWords.Drawn(doubt.Plan)));
        Bands(json, doubt.Traces);
        json.WriteStartObject("figures");
        foreach (FigureBand figure in doubt.Figures.Where(figure => double.IsFinite(figure.Band.Low) && double.IsFinite(figure.Band.High)))
        {
            (string low, string unit) = FigureFormat.Of(figure.Figure, figure.Band.Low, readout);
            (string high, _) = FigureFormat.Of(figure.Figure, figure.Band.High, readout);
            json.WriteString(figure.Figure.Key, low == high ? $"{low} {unit}".TrimEnd() : $"{low} to {high} {unit}".TrimEnd());
        }

        json.WriteEndObject();
        json.WriteStartArray("statements");
        foreach (SentenceShare sentence in doubt.Sentences)
        {
            json.WriteStartObject();
            json.WriteString("text", sentence.Statement);
            json.WriteString("share", DoubtWords.Share(sentence.Share.Share));
            json.WriteString("limits", DoubtWords.Limits(sentence.Share));
            json.WriteBoolean("own", sentence.IsOwn);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Bands(Utf8JsonWriter json, IReadOnlyList<TraceBand> traces)
    {
        json.WriteStartObject("bands");
        foreach (TraceBand trace in traces)
        {
            json.WriteStartObject(trace.Name);
            json.WriteNumber("step", trace.Step);
            ColumnJson.Write(json, "low", Floats(trace.Rows, row => row.Low));
            ColumnJson.Write(json, "high", Floats(trace.Rows, row => row.High));
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static float[] Floats(IReadOnlyList<BandRow> rows, Func<BandRow, double> read) => [.. rows.Select(row => (float)read(row))];
}
