using System.Text.Json;

namespace LaunchSim.Fuzz.Checks;

/// <summary>Documents: whole, every figure a finite number or none with a reason.</summary>
internal static class DocumentChecks
{
    private const string Begins = "{\n  \"program\": \"LaunchSim\"";

    // The ledger of a launch at a tolerance of this or finer closes this well for any car that is one; a work of next to nothing aside.
    private const double FineTolerance = 1e-6, LargestResidualRatio = 1e-5, LargestResidual = 0.01;

    public static IEnumerable<string> Documents(Outcome outcome)
    {
        if (outcome.Has("--json") && !outcome.Has("--out") && outcome.Code == 0 && !outcome.AsksForHelp)
        {
            foreach (string complaint in Document("the output stream", outcome.Output, outcome))
            {
                yield return complaint;
            }
        }

        foreach ((string name, byte[] content) in outcome.Written)
        {
            if (name.EndsWith(".json", StringComparison.Ordinal))
            {
                string text = System.Text.Encoding.UTF8.GetString(content);
                if (!text.StartsWith(Begins, StringComparison.Ordinal))
                {
                    yield return $"{name} does not begin like a document of this program";
                }

                foreach (string complaint in Document(name, text, outcome))
                {
                    yield return complaint;
                }
            }
        }
    }

    private static List<string> Document(string name, string text, Outcome outcome)
    {
        var complaints = new List<string>();
        try
        {
            using var document = JsonDocument.Parse(text);
            JsonElement root = document.RootElement;
            foreach (JsonElement one in root.ValueKind == JsonValueKind.Array ? root.EnumerateArray().ToArray() : [root])
            {
                Numbers(one, "", complaints);
                if (outcome.Case.Command == "run")
                {
                    Launch(one, outcome, complaints);
                }
            }
        }
        catch (JsonException exception)
        {
            complaints.Add($"no JSON: {exception.Message}");
        }

        return [.. complaints.Select(complaint => $"{name}: {complaint}")];
    }

    private static void Launch(JsonElement launch, Outcome outcome, List<string> complaints)
    {
        JsonElement reasons = launch.GetProperty("reasons");
        foreach (JsonProperty figure in launch.GetProperty("figures").EnumerateObject())
        {
            if (figure.Value.ValueKind == JsonValueKind.Null)
            {
                if (!reasons.TryGetProperty(figure.Name, out JsonElement reason) || reason.GetString() is "" or "no value in this run")
                {
                    complaints.Add($"{figure.Name} has no value and no reason");
                }
            }
            else if (figure.Value.ValueKind != JsonValueKind.Number)
            {
                complaints.Add($"{figure.Name} is no number: {figure.Value}");
            }
        }

        JsonElement figures = launch.GetProperty("figures");
        double tolerance = launch.GetProperty("statistics").GetProperty("tolerance").GetDouble();
        if (!outcome.Case.IsWild && tolerance <= FineTolerance && Value(figures, "energy_residual_ratio") > LargestResidualRatio && Value(figures, "energy_residual_largest_j") > LargestResidual)
        {
            complaints.Add($"the energy residual is {Value(figures, "energy_residual_ratio")} of the largest work");
        }

        string? status = launch.GetProperty("status").GetString();
        if (outcome.Code == 0 && status != "done")
        {
            complaints.Add($"status {status} with exit code 0");
        }
    }

    private static double Value(JsonElement figures, string key) =>
        figures.GetProperty(key) is { ValueKind: JsonValueKind.Number } number ? number.GetDouble() : 0;

    private static void Numbers(JsonElement element, string path, List<string> complaints)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.Number when !double.IsFinite(element.GetDouble()):
                complaints.Add($"{path} is not finite");
                break;
            case JsonValueKind.Array:
                foreach (JsonElement item in element.EnumerateArray())
                {
                    Numbers(item, path + "[]", complaints);
                }

                break;
            case JsonValueKind.Object:
                foreach (JsonProperty property in element.EnumerateObject())
                {
                    Numbers(property.Value, $"{path}.{property.Name}", complaints);
                }

                break;
        }
    }
}
