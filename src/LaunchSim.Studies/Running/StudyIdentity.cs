using System.Text;

namespace LaunchSim.Studies.Running;

/// <summary>
/// What a table of rows came from: everything that decides its content. Two runs with one identity write the same bytes.
/// Kept in a small text beside the table, a line a fact.
/// </summary>
public sealed class StudyIdentity
{
    private const string Title = "# What this table came from. --resume and merge compare it; leave it beside the table.";

    /// <summary>An identity out of its facts.</summary>
    /// <param name="facts">Names and values; the names unique, without a colon.</param>
    public StudyIdentity(IEnumerable<KeyValuePair<string, string>> facts) =>
        Facts = [.. facts.Select(fact => new KeyValuePair<string, string>(fact.Key, OneLine(fact.Value)))];

    /// <summary>The facts in order.</summary>
    public IReadOnlyList<KeyValuePair<string, string>> Facts { get; }

    /// <summary>A fact's value, or null.</summary>
    /// <param name="name">The fact's name.</param>
    public string? Find(string name) => Facts.FirstOrDefault(fact => fact.Key == name).Value;

    /// <summary>What differs from another identity: a sentence a fact, none when they are the same.</summary>
    /// <param name="found">The other one.</param>
    /// <param name="except">Facts that may differ.</param>
    public IReadOnlyList<string> Differences(StudyIdentity found, params string[] except)
    {
        ArgumentNullException.ThrowIfNull(found);
        return [.. Facts.Select(fact => fact.Key).Union(found.Facts.Select(fact => fact.Key)).Where(name => !except.Contains(name))
            .Where(name => Find(name) != found.Find(name))
            .Select(name => $"{name}: there {Short(found.Find(name))}, here {Short(Find(name))}")];
    }

    /// <summary>The text to keep.</summary>
    public override string ToString()
    {
        var text = new StringBuilder(Title).Append('\n');
        foreach (KeyValuePair<string, string> fact in Facts)
        {
            _ = text.Append(fact.Key).Append(": ").Append(fact.Value).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>Reads a kept text.</summary>
    /// <param name="text">The text.</param>
    /// <returns>The identity; null when the text is not one.</returns>
    public static StudyIdentity? Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        string[] lines = text.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        if (lines.Length < 2 || lines[0].TrimEnd('\r') != Title || !text.EndsWith('\n'))
        {
            return null;
        }

        var facts = new List<KeyValuePair<string, string>>();
        foreach (string line in lines.Skip(1))
        {
            int colon = line.IndexOf(": ", StringComparison.Ordinal);
            if (colon <= 0)
            {
                return null;
            }

            facts.Add(new(line[..colon], line[(colon + 2)..].TrimEnd('\r')));
        }

        return new StudyIdentity(facts);
    }

    // Long lists and hashes are told apart by their beginnings and ends.
    private static string Short(string? value) => value is null ? "nothing" : value.Length <= 80 ? value : $"{value[..50]} … {value[^20..]}";

    private static string OneLine(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
