using System.Text.Json;
using LaunchSim.Studies.Aims;

namespace LaunchSim.Cli.Output;

/// <summary>Aims and scores in documents, SI units.</summary>
internal static class AimJson
{
    /// <summary>The aims in force.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="aims">The aims.</param>
    public static void Aims(this Utf8JsonWriter json, AimSet aims)
    {
        json.WriteString("profile", aims.Profile.Name);
        json.WriteStartArray("aims");
        foreach (Aim aim in aims.Aims)
        {
            json.WriteStartObject();
            json.WriteString("name", aim.Subject.Name);
            json.Number("from", aim.From);
            json.Number("to", aim.To);
            json.Number("point", aim.Point);
            json.Number("weight", aim.IsLimit ? null : aim.Weight);
            json.WriteBoolean("is_limit", aim.IsLimit);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>A score, or null.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="key">Its key.</param>
    /// <param name="score">The score.</param>
    public static void Score(this Utf8JsonWriter json, string key, AimScore? score)
    {
        if (score is not { Exists: true } known)
        {
            json.WriteNull(key);
            return;
        }

        json.WriteStartObject(key);
        json.Number("points", known.Points);
        json.Number("beyond_limits_points", known.Beyond);
        json.WriteEndObject();
    }

    /// <summary>How a score is put together.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="aims">The aims.</param>
    /// <param name="figures">The figures in the order of the aims' keys.</param>
    public static void Parts(this Utf8JsonWriter json, AimSet aims, ReadOnlySpan<double> figures)
    {
        json.WriteStartArray("parts");
        foreach (AimPart part in aims.Parts(figures))
        {
            json.WriteStartObject();
            json.WriteString("name", part.Aim.Subject.Name);
            json.Number("value", part.Value);
            json.Number("points", part.Points);
            json.Number("share", part.Share);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
