using System.Text;

namespace LaunchSim.Scenarios.Writing;

/// <summary>What is known of a pass that is to be written, in the notation of the pass file; null or empty where there is nothing to say.</summary>
public sealed record PassDraft
{
    /// <summary>What it is called.</summary>
    public string? Name { get; init; }

    /// <summary>When it was.</summary>
    public string? When { get; init; }

    /// <summary>The car's file, seen from the folder of the pass.</summary>
    public string? Car { get; init; }

    /// <summary>The car's content hash.</summary>
    public string? CarHash { get; init; }

    /// <summary>Settings that differ from the car's file; later ones win.</summary>
    public IReadOnlyList<(string Path, string Value)> Changed { get; init; } = [];

    /// <summary>The track in words.</summary>
    public string? Track { get; init; }

    /// <summary>The weather in words.</summary>
    public string? Weather { get; init; }

    /// <summary>Files of data with their mappings, seen from the folder of the pass.</summary>
    public IReadOnlyList<(string File, string? Mapping)> Logs { get; init; } = [];

    /// <summary>What was seen, by key.</summary>
    public IReadOnlyList<(string Key, string Value)> Seen { get; init; } = [];

    /// <summary>The notes.</summary>
    public string? Notes { get; init; }
}

/// <summary>The text of a new pass file.</summary>
/// <param name="Text">The text; ends in a line feed.</param>
/// <param name="Sources">For each line of the text, from the first on, what of the draft it holds, such as <c>seen.rear_open</c>; empty for a heading.</param>
public sealed record PassText(string Text, IReadOnlyList<string> Sources)
{
    /// <summary>Writes a draft.</summary>
    /// <param name="draft">The draft.</param>
    public static PassText Of(PassDraft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        var text = new StringBuilder();
        var sources = new List<string>();
        Value("name", draft.Name);
        Value("when", draft.When);
        Value("car", draft.Car);
        Value("car_hash", draft.CarHash);
        Section("changed", Last(draft.Changed));
        Value("track", draft.Track);
        Value("weather", draft.Weather);
        if (draft.Logs.Count > 0)
        {
            Line("logs:", "");
            for (int i = 0; i < draft.Logs.Count; i++)
            {
                (string file, string? mapping) = draft.Logs[i];
                Line($"  - {{file: {YamlScalar.InBraces(file)}{(mapping is null ? "" : $", mapping: {YamlScalar.InBraces(mapping)}")}}}", $"logs[{i}]");
            }
        }

        Section("seen", Last(draft.Seen));
        Value("notes", draft.Notes);
        return new PassText(text.ToString(), sources);

        void Line(string line, string source)
        {
            _ = text.Append(line).Append('\n');
            sources.Add(source);
        }

        void Value(string key, string? value)
        {
            if (value is { Length: > 0 })
            {
                Line($"{key}: {YamlScalar.Of(OnOneLine(value))}", key);
            }
        }

        void Section(string key, IReadOnlyList<(string Key, string Value)> values)
        {
            if (values.Count > 0)
            {
                Line(key + ":", "");
                foreach ((string inner, string value) in values)
                {
                    Line($"  {YamlScalar.Of(inner)}: {(value.Length > 0 && value[0] is '{' or '[' ? value : YamlScalar.Of(OnOneLine(value)))}", $"{key}.{inner}");
                }
            }
        }
    }

    // Later ones win, in the order in which the paths came first.
    private static IReadOnlyList<(string Key, string Value)> Last(IReadOnlyList<(string Key, string Value)> values) =>
        [.. values.GroupBy(value => value.Key, StringComparer.Ordinal).Select(same => same.Last())];

    private static string OnOneLine(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
