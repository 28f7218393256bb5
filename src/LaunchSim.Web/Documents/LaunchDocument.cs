using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using LaunchSim.Charts.Launch;
using LaunchSim.Figures;
using LaunchSim.Launch;
using LaunchSim.Passes.Comparing;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Studies.Doubting;

namespace LaunchSim.Web.Documents;

/// <summary>Launches as the front end reads them: the car from the side, columns against time, figures and words.</summary>
public static class LaunchDocument
{
    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The document as text.</summary>
    /// <param name="launches">One or more launches; the first is the present set-up.</param>
    /// <param name="readout">The units.</param>
    /// <param name="program">Program and version.</param>
    /// <param name="finest">Least time between two rows, s: a whole number of milliseconds.</param>
    public static string Text(IReadOnlyList<DocumentedLaunch> launches, Readout readout, string program, double finest = ColumnJson.Finest)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Options))
        {
            Write(json, launches, readout, program, finest);
        }

        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }

    /// <summary>Writes the document's object.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="launches">One or more launches; the first is the present set-up.</param>
    /// <param name="readout">The units.</param>
    /// <param name="program">Program and version.</param>
    /// <param name="finest">Least time between two rows, s: a whole number of milliseconds.</param>
    public static void Write(Utf8JsonWriter json, IReadOnlyList<DocumentedLaunch> launches, Readout readout, string program, double finest = ColumnJson.Finest)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(launches);
        ArgumentNullException.ThrowIfNull(readout);
        json.WriteStartObject();
        json.WriteString("program", program);
        UnitsJson.Write(json, readout);
        json.WriteString("caution", LimitWords.Caution);
        json.WriteStartArray("launches");
        foreach (DocumentedLaunch launch in launches)
        {
            Launch(json, launch, readout, program, finest);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Launch(Utf8JsonWriter json, DocumentedLaunch launch, Readout readout, string program, double finest)
    {
        LaunchOutcome run = launch.Run;
        StandingCar car = run.Solution.Car;
        json.WriteStartObject();
        json.WriteString("name", launch.Name);
        json.WriteString("file", run.Scenario.SourceFile);
        json.WriteString("hash", run.Scenario.ContentHash);
        json.WriteString("notes", run.Scenario.Notes);
        json.WriteString("staticLine", StaticLineWords.Of(car.Line, car.Standing.Wheelbase, readout));
        if (run.Failure is { } failure)
        {
            json.WriteString("stopped", FailureWords.Of(failure));
        }

        json.WriteNumber("duration", run.Solution.Duration);
        ColumnJson.Write(json, run.Solution, finest);
        CarJson.Write(json, run.Scenario, car);
        json.WriteStartArray("answers");
        foreach (Answer answer in Answer.Of(run, readout))
        {
            json.WriteStartObject();
            json.WriteString("part", answer.Part);
            json.WriteString("lead", answer.Lead);
            json.WriteString("text", answer.Text);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        FiguresJson.Write(json, run.Figures, readout);
        Sentences(json, "sentences", Summary.Of(run.Figures, readout));
        var limits = new List<string>();
        LimitWords.Say(run.Figures, car.Car.TrackGrip.Count == 1, readout, limits);
        json.Texts("limits", limits);
        Events(json, run.Figures.Events);
        json.WriteStartObject("titles");
        foreach ((string name, string title) in LaunchCharts.Titles(run, readout, program))
        {
            json.WriteString(name, title);
        }

        json.WriteEndObject();
        if (launch.Doubt is { } doubt)
        {
            DoubtJson.Write(json, doubt, readout);
        }

        if (launch.Measured is { } measured)
        {
            MeasuredJson.Write(json, measured, readout, finest);
        }

        json.WriteEndObject();
    }

    private static void Sentences(Utf8JsonWriter json, string name, IEnumerable<Sentence> sentences)
    {
        json.WriteStartArray(name);
        foreach (Sentence sentence in sentences)
        {
            json.WriteStartObject();
            json.WriteString("key", sentence.Key);
            json.WriteString("text", sentence.Text);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Events(Utf8JsonWriter json, LaunchEvents events)
    {
        json.WriteStartArray("events");
        foreach (LaunchEvent one in events)
        {
            json.WriteStartObject();
            json.WriteString("kind", JsonNamingPolicy.KebabCaseLower.ConvertName(one.Kind.ToString()));
            json.WriteString("words", EventWords.Of(one.Kind));
            json.WriteNumber("time", one.Time);
            if (one.Until is { } until)
            {
                json.WriteNumber("until", until);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}

/// <summary>A launch to be shown.</summary>
/// <param name="Run">The launch.</param>
/// <param name="Name">What it is called beside others.</param>
/// <param name="Doubt">How sure it is; null when nobody asked.</param>
/// <param name="Measured">What was measured of the pass that it predicts; null without logs.</param>
public sealed record DocumentedLaunch(LaunchOutcome Run, string Name, DoubtResult? Doubt = null, PassComparison? Measured = null);
