using System.Text.Json;
using LaunchSim.Figures;
using LaunchSim.Integration;
using LaunchSim.Launch;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;

namespace LaunchSim.Cli.Output;

/// <summary>A launch as a JSON document: figures by key in SI units, events, statics, what it cost.</summary>
internal static class RunJson
{
    /// <summary>Writes the document to a stream, ended by a line feed.</summary>
    /// <param name="run">The launch.</param>
    /// <param name="readout">Units of the sentences.</param>
    /// <param name="stream">Where to.</param>
    public static void Write(LaunchOutcome run, Readout readout, Stream stream)
    {
        using (Utf8JsonWriter json = ResultJson.Writer(stream))
        {
            Write(json, run, readout);
        }

        stream.WriteByte((byte)'\n');
    }

    /// <summary>Writes the document's object.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="run">The launch.</param>
    /// <param name="readout">Units of the sentences.</param>
    public static void Write(Utf8JsonWriter json, LaunchOutcome run, Readout readout)
    {
        json.WriteStartObject();
        ResultJson.Head(json, run.Scenario);
        json.WriteString("status", run.Failure is null ? "done" : "stopped");
        Failure(json, run.Failure);
        json.Line("statics", run.Solution.Car.Line);
        json.WriteStartArray("summary");
        foreach (Sentence sentence in Summary.Of(run.Figures, readout))
        {
            json.WriteStringValue(sentence.Text);
        }

        json.WriteEndArray();
        Figures(json, run.Figures);
        Events(json, run.Figures.Events);
        Cost(json, run);
        json.WriteEndObject();
    }

    /// <summary>Writes why a launch stopped, or that it did not.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="failure">Why; or null.</param>
    public static void Failure(Utf8JsonWriter json, LaunchFailure? failure)
    {
        if (failure is null)
        {
            json.WriteNull("stopped");
            return;
        }

        json.WriteStartObject("stopped");
        json.Number("time_s", failure.Time);
        json.WriteString("part", failure.Part);
        json.WriteString("found", failure.Found);
        json.WriteString("look_at", failure.LookAt);
        json.WriteEndObject();
    }

    private static void Figures(Utf8JsonWriter json, FigureSet figures)
    {
        json.WriteStartObject("figures");
        foreach (Figure figure in figures)
        {
            json.Number(figure.Key, figure.Value);
        }

        json.WriteEndObject();
        json.WriteStartObject("reasons");
        foreach (Figure figure in figures.Where(figure => figure.Value is null))
        {
            json.WriteString(figure.Key, figure.Reason ?? "no value in this run");
        }

        json.WriteEndObject();
    }

    private static void Events(Utf8JsonWriter json, LaunchEvents events)
    {
        json.WriteStartArray("events");
        foreach (LaunchEvent one in events)
        {
            json.WriteStartObject();
            json.WriteString("kind", JsonNamingPolicy.SnakeCaseLower.ConvertName(one.Kind.ToString()));
            json.Number("time_s", one.Time);
            json.Number("until_s", one.Until);
            json.Number("amount", one.Amount);
            json.Number("amount_time_s", one.AmountTime);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Cost(Utf8JsonWriter json, LaunchOutcome run)
    {
        Statistics statistics = run.Solution.End.Statistics;
        json.WriteStartObject("statistics");
        json.Number("tolerance", run.Scenario.Run.Tolerance);
        json.Number("end_s", run.Solution.End.Time);
        json.WriteNumber("steps", statistics.Steps);
        json.WriteNumber("rejected", statistics.Rejected);
        json.WriteNumber("evaluations", statistics.Evaluations);
        json.WriteNumber("events", statistics.Events);
        json.WriteEndObject();
    }
}
