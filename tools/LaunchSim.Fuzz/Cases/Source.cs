using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Paths;
using LaunchSim.Scenarios.Schema;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Fuzz.Cases;

/// <summary>A value of a source: where it stands in the text and what it is.</summary>
/// <param name="Path">Its path.</param>
/// <param name="Key">Its key.</param>
/// <param name="Quantity">Its numbers and unit.</param>
/// <param name="At">Where it begins in the source's own text; negative when it stands in a base.</param>
/// <param name="Length">How many characters it takes.</param>
/// <param name="InBraces">Whether it stands in braces, where a comma parts entries.</param>
internal sealed record Slot(string Path, SchemaKey Key, Quantity Quantity, int At, int Length, bool InBraces);

/// <summary>A scenario that cases begin from, with every number in it.</summary>
internal sealed class Source
{
    private Source(string name, string text, Scenario scenario)
    {
        (Name, Text) = (name, text);
        BaseName = scenario.SourceFile is { } && text.Contains("\nbase: ", StringComparison.Ordinal)
            ? text.Split("\nbase: ")[1].Split('\n')[0].Trim() : null;
        Slots = [.. Find(scenario)];
    }

    /// <summary>The file's name.</summary>
    public string Name { get; }

    /// <summary>The file.</summary>
    public string Text { get; }

    /// <summary>The file from which it begins, or null.</summary>
    public string? BaseName { get; }

    /// <summary>All numbers, rows and points of the scenario, those of its bases too.</summary>
    public IReadOnlyList<Slot> Slots { get; }

    /// <summary>Reads a file.</summary>
    /// <param name="path">The file.</param>
    /// <exception cref="InvalidDataException">It has errors: cases begin from good scenarios.</exception>
    public static Source Of(string path)
    {
        ReadResult result = new ScenarioReader { Purpose = ReadPurpose.Check }.Read(path);
        return result.Scenario is { } scenario
            ? new Source(Path.GetFileName(path), File.ReadAllText(path), scenario)
            : throw new InvalidDataException($"{path} is no good scenario to begin from: {result.Errors[0]}");
    }

    private IEnumerable<Slot> Find(Scenario scenario)
    {
        foreach ((string known, SchemaKey key) in ScenarioPath.Known)
        {
            string path = known.Replace("[]", "[0]", StringComparison.Ordinal);
            if (scenario.Brackets.TryGetValue(path, out Bracket? bracket))
            {
                foreach ((string hole, _) in bracket.Holes)
                {
                    yield return Of(scenario, $"{path}.holes.{hole}", key, inText: false);
                }
            }
            else if (key.Kind is ClicksKind && scenario.Clicks.TryGetValue(path[..^".clicks".Length], out ClickInfo? clicks))
            {
                foreach (double click in clicks.Entered)
                {
                    yield return Of(scenario, FormattableString.Invariant($"{path}.{click}"), key, inText: false);
                }
            }
            else if (key.Kind is NumberKind or RowKind or PointKind && scenario.Find(path) is not null)
            {
                yield return Of(scenario, path, key, inText: true);
            }
        }
    }

    private Slot Of(Scenario scenario, string path, SchemaKey key, bool inText)
    {
        Quantity quantity = scenario.Find(path) ?? throw new InvalidDataException($"{Name}: no value at {path}.");
        string place = scenario.PlaceOf(path);
        string start = scenario.SourceFile + ":";
        if (!inText || !place.StartsWith(start, StringComparison.Ordinal))
        {
            return new Slot(path, key, quantity, -1, 0, false);
        }

        string[] numbers = place[start.Length..].Split(':');
        string[] lines = Text.Split('\n');
        int line = int.Parse(numbers[0], System.Globalization.CultureInfo.InvariantCulture) - 1;
        int column = int.Parse(numbers[1], System.Globalization.CultureInfo.InvariantCulture) - 1;
        string rest = lines[line][column..];
        bool inBraces = lines[line][..column].Count(c => c == '{') > lines[line][..column].Count(c => c == '}');
        int end = inBraces ? rest.AsSpan().IndexOfAny(',', '}') : rest.IndexOf(" #", StringComparison.Ordinal);
        string value = (end < 0 ? rest : rest[..end]).TrimEnd();
        return new Slot(path, key, quantity, lines.Take(line).Sum(text => text.Length + 1) + column, value.Length, inBraces);
    }
}
