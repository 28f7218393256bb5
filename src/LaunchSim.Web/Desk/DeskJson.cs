using System.Buffers;
using System.Text.Encodings.Web;
using System.Text.Json;
using LaunchSim.Scenarios;
using LaunchSim.Web.Documents;

namespace LaunchSim.Web.Desk;

/// <summary>What the desk tells, as JSON; one place for what several messages have.</summary>
internal static class DeskJson
{
    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, SkipValidation = true };

    /// <summary>A writer into a buffer.</summary>
    /// <param name="buffer">Where to.</param>
    public static Utf8JsonWriter Writer(IBufferWriter<byte> buffer) => new(buffer, Options);

    /// <summary>Edits.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="key">Their key.</param>
    /// <param name="edits">The edits.</param>
    public static void Edits(this Utf8JsonWriter json, string key, IEnumerable<ScenarioEdit> edits)
    {
        json.WriteStartArray(key);
        foreach (ScenarioEdit edit in edits)
        {
            json.WriteStartObject();
            json.WriteString("path", edit.Path);
            json.WriteString("value", edit.Value);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>Errors or warnings, each with its place.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="key">Their key.</param>
    /// <param name="findings">The findings.</param>
    /// <param name="lines">The lines that findings are in; null for none.</param>
    public static void Findings(this Utf8JsonWriter json, string key, IEnumerable<Diagnostic> findings, IReadOnlyDictionary<(string File, int Line), string>? lines = null)
    {
        json.WriteStartArray(key);
        foreach (Diagnostic finding in findings)
        {
            json.WriteStartObject();
            if (finding.Line > 0)
            {
                json.WriteString("file", finding.File);
                json.WriteNumber("line", finding.Line);
                json.WriteNumber("column", finding.Column);
                if (lines?.GetValueOrDefault((finding.File, finding.Line)) is { } line)
                {
                    json.WriteString("source", line);
                }
            }

            json.WriteString("path", finding.Path);
            json.WriteString("text", Sentence(finding));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>A finding as a sentence, without its place.</summary>
    /// <param name="finding">The finding.</param>
    public static string Sentence(Diagnostic finding) =>
        $"found {finding.Message}{(finding.Allowed.Length > 0 ? $"; allowed: {finding.Allowed}" : "")}{(finding.Mend.Length > 0 ? $"; mend: {finding.Mend}" : "")}";

    /// <summary>What may be moved.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="controls">The controls.</param>
    public static void Controls(this Utf8JsonWriter json, IReadOnlyList<Control> controls)
    {
        json.WriteStartArray("controls");
        foreach (Control control in controls)
        {
            json.WriteStartObject();
            json.WriteString("path", control.Path);
            json.WriteString("label", control.Label);
            json.WriteString("kind", control.Kind switch { ControlKind.Holes => "holes", ControlKind.Steps => "steps", _ => "number" });
            json.WriteString("value", control.Value);
            json.WriteString("unit", control.Unit);
            if (control.Range is { } range)
            {
                json.WriteNumber("from", range.From);
                json.WriteNumber("to", range.To);
                json.WriteNumber("step", range.Step);
                json.WriteString("range", range.ForWhat);
            }
            else
            {
                json.Texts("values", control.Values);
            }

            json.Number("minutes", control.Minutes);
            json.WriteBoolean("choice", control.IsChoice);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
