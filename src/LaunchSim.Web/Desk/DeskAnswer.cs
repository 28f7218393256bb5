using System.Buffers;
using System.Text;
using System.Text.Json;
using LaunchSim.Scenarios;

namespace LaunchSim.Web.Desk;

/// <summary>What a request with a body comes to.</summary>
/// <param name="Status">The status code.</param>
/// <param name="Type">The content's type.</param>
/// <param name="Content">The content.</param>
internal sealed record DeskAnswer(int Status, string Type, ReadOnlyMemory<byte> Content)
{
    private const string Json = "application/json; charset=utf-8";

    /// <summary>The name under which a browser is to save the content; null for none.</summary>
    public string? FileName { get; init; }

    /// <summary>The policy of a page; null for what is none.</summary>
    public string? Policy { get; init; }

    /// <summary>Why it is refused, for the log; null when it is not.</summary>
    public string? Refusal { get; init; }

    /// <summary>An object.</summary>
    /// <param name="status">The status code.</param>
    /// <param name="write">Writes its members.</param>
    public static DeskAnswer Of(int status, Action<Utf8JsonWriter> write)
    {
        var buffer = new ArrayBufferWriter<byte>();
        using (Utf8JsonWriter json = DeskJson.Writer(buffer))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        return new DeskAnswer(status, Json, buffer.WrittenMemory);
    }

    /// <summary>A refusal.</summary>
    /// <param name="status">The status code.</param>
    /// <param name="sentence">Why.</param>
    public static DeskAnswer Refused(int status, string sentence) => Of(status, json => Desk.Refused.Write(json, sentence)) with { Refusal = sentence };

    /// <summary>A refusal with the places that it is about.</summary>
    /// <param name="status">The status code.</param>
    /// <param name="errors">The errors, at least one.</param>
    public static DeskAnswer Refused(int status, IReadOnlyList<Diagnostic> errors) =>
        Of(status, json => json.Findings("errors", errors)) with { Refusal = DeskLog.Plain(DeskJson.Sentence(errors[0])) };

    /// <summary>A page that is saved and not opened.</summary>
    /// <param name="page">The page.</param>
    /// <param name="name">The name under which.</param>
    public static DeskAnswer Of(Pages.HtmlPage page, string name) => new(200, "text/html; charset=utf-8", Encoding.UTF8.GetBytes(page.Text)) { FileName = name, Policy = page.Policy };
}
