using System.Text.Json;

namespace LaunchSim.Web.Desk;

/// <summary>A refusal that is about no place in a file.</summary>
internal static class Refused
{
    /// <summary>Writes its one error.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="sentence">The sentence.</param>
    public static void Write(Utf8JsonWriter json, string sentence)
    {
        json.WriteStartArray("errors");
        json.WriteStartObject();
        json.WriteString("path", "");
        json.WriteString("text", sentence);
        json.WriteEndObject();
        json.WriteEndArray();
    }
}
