using System.Text.Json;
using LaunchSim.Passes.Seen;

namespace LaunchSim.Cli.Output;

/// <summary>A seen fact beside its prediction in a document, SI units.</summary>
internal static class SeenJson
{
    /// <summary>Writes its members into an object that is open.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="fact">The fact.</param>
    public static void Members(Utf8JsonWriter json, SeenComparison fact)
    {
        json.WriteString("key", fact.Key);
        json.WriteString("kind", fact.Kind.ToString().ToLowerInvariant());
        json.WriteString("written", fact.Written);
        json.Number("seen_s", fact.Seen);
        json.Number("predicted_s", fact.Predicted);
        json.Number("difference_s", fact.Difference);
        json.Number("seen_sd_s", fact.Sd);
        json.WriteBoolean("agrees", fact.Agrees);
    }
}
