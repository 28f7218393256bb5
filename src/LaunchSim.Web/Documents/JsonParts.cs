using System.Text.Json;

namespace LaunchSim.Web.Documents;

/// <summary>What several documents have: numbers that may be none, lists of texts.</summary>
internal static class JsonParts
{
    /// <summary>A number, or null where there is none.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="key">Its key.</param>
    /// <param name="value">The value; none when it is null or not finite.</param>
    public static void Number(this Utf8JsonWriter json, string key, double? value)
    {
        if (value is { } number && double.IsFinite(number))
        {
            json.WriteNumber(key, number);
        }
        else
        {
            json.WriteNull(key);
        }
    }

    /// <summary>Texts.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="key">Their key.</param>
    /// <param name="texts">The texts.</param>
    public static void Texts(this Utf8JsonWriter json, string key, IEnumerable<string> texts)
    {
        json.WriteStartArray(key);
        foreach (string text in texts)
        {
            json.WriteStringValue(text);
        }

        json.WriteEndArray();
    }
}
