using System.Globalization;
using System.Text.Json;

namespace LaunchSim.Web.Desk;

/// <summary>Something that was sent is not what it has to be; the message is a sentence without its final stop.</summary>
/// <param name="message">The sentence.</param>
internal sealed class MalformedException(string message) : Exception(message);

/// <summary>What was sent as JSON, taken apart; everything that is not as it has to be is refused.</summary>
internal static class Sent
{
    private static readonly JsonDocumentOptions Options = new() { MaxDepth = DeskLimits.Depth, AllowDuplicateProperties = false };

    /// <summary>The object that was sent.</summary>
    /// <param name="utf8">The text.</param>
    /// <exception cref="MalformedException">It is no JSON, or no object.</exception>
    public static JsonDocument Read(ReadOnlyMemory<byte> utf8)
    {
        JsonDocument document;
        try
        {
            document = JsonDocument.Parse(utf8, Options);
        }
        catch (JsonException exception)
        {
            throw new MalformedException($"found no JSON: {DeskLog.Plain(exception.Message)}");
        }

        if (document.RootElement.ValueKind != JsonValueKind.Object)
        {
            document.Dispose();
            throw new MalformedException("found no object; allowed: { … }");
        }

        return document;
    }

    /// <summary>A text.</summary>
    /// <param name="sent">The object.</param>
    /// <param name="key">Its key.</param>
    /// <param name="longest">Characters at the most.</param>
    /// <exception cref="MalformedException">There is none, or it is too long.</exception>
    public static string Text(JsonElement sent, string key, int longest = DeskLimits.Text) =>
        OptionalText(sent, key, longest) ?? throw new MalformedException($"found no `{key}`; allowed: a text");

    /// <summary>A text, or null when there is none.</summary>
    /// <param name="sent">The object.</param>
    /// <param name="key">Its key.</param>
    /// <param name="longest">Characters at the most.</param>
    /// <exception cref="MalformedException">It is no text, or too long.</exception>
    public static string? OptionalText(JsonElement sent, string key, int longest = DeskLimits.Text)
    {
        if (!sent.TryGetProperty(key, out JsonElement value))
        {
            return null;
        }

        if (value.ValueKind != JsonValueKind.String)
        {
            throw new MalformedException($"found no text as `{key}`");
        }

        string text;
        try
        {
            text = value.GetString()!;
        }
        catch (InvalidOperationException)
        {
            throw new MalformedException($"found half a character in `{key}`");
        }

        return text.Length <= longest ? text : throw new MalformedException(string.Create(CultureInfo.InvariantCulture, $"found {text.Length} characters as `{key}`; allowed: {longest}"));
    }

    /// <summary>A whole number.</summary>
    /// <param name="sent">The object.</param>
    /// <param name="key">Its key.</param>
    /// <param name="least">The least that is allowed.</param>
    /// <param name="most">The most that is allowed.</param>
    /// <exception cref="MalformedException">There is none, or it is another one.</exception>
    public static long Whole(JsonElement sent, string key, long least, long most) =>
        sent.TryGetProperty(key, out JsonElement value) && value.ValueKind == JsonValueKind.Number && value.TryGetInt64(out long number) && number >= least && number <= most
            ? number
            : throw new MalformedException(string.Create(CultureInfo.InvariantCulture, $"found no whole number as `{key}`; allowed: {least} to {most}"));

    /// <summary>Edits, in their order.</summary>
    /// <param name="sent">The object.</param>
    /// <param name="key">Their key.</param>
    /// <exception cref="MalformedException">They are no list, too many, or one is no path with a value.</exception>
    public static IReadOnlyList<(string Path, string Value)> Edits(JsonElement sent, string key = "edits") =>
        OptionalEdits(sent, key) ?? throw new MalformedException($"found no `{key}`; allowed: a list of {{\"path\": …, \"value\": …}}");

    /// <summary>Edits, in their order; null when there is no such key, or it says null.</summary>
    /// <param name="sent">The object.</param>
    /// <param name="key">Their key.</param>
    /// <exception cref="MalformedException">They are no list, too many, or one is no path with a value.</exception>
    public static IReadOnlyList<(string Path, string Value)>? OptionalEdits(JsonElement sent, string key)
    {
        if (!sent.TryGetProperty(key, out JsonElement list) || list.ValueKind == JsonValueKind.Null)
        {
            return null;
        }

        if (list.ValueKind != JsonValueKind.Array || list.GetArrayLength() > DeskLimits.Edits)
        {
            throw new MalformedException(string.Create(CultureInfo.InvariantCulture, $"found no list of edits as `{key}`; allowed: {DeskLimits.Edits} at the most"));
        }

        var edits = new List<(string, string)>(list.GetArrayLength());
        foreach (JsonElement edit in list.EnumerateArray())
        {
            if (edit.ValueKind != JsonValueKind.Object)
            {
                throw new MalformedException($"found no object in `{key}`; allowed: {{\"path\": …, \"value\": …}}");
            }

            edits.Add((Text(edit, "path"), Text(edit, "value")));
        }

        return edits;
    }
}
