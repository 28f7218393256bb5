using LaunchSim.Scenarios;

namespace LaunchSim.Studies.Comparing;

/// <summary>A value that is written differently in one of several scenarios than in the first of them.</summary>
/// <param name="Path">Its path in the notation of the file.</param>
/// <param name="Texts">What is written in each, in the order of the scenarios; null where it was left out.</param>
public sealed record WrittenDifference(string Path, IReadOnlyList<string?> Texts)
{
    /// <summary>All values that differ, in the order of the file; what only a later scenario has comes last.</summary>
    /// <param name="scenarios">The scenarios; the first is what the others are compared with.</param>
    public static IReadOnlyList<WrittenDifference> Of(IReadOnlyList<Scenario> scenarios)
    {
        ArgumentNullException.ThrowIfNull(scenarios);
        IReadOnlyList<WrittenValue>[] written = [.. scenarios.Select(scenario => scenario.Written)];
        Dictionary<string, WrittenValue>[] byPath = [.. written.Select(values => values.ToDictionary(value => value.Path, StringComparer.Ordinal))];
        var differences = new List<WrittenDifference>();
        foreach (string path in written.SelectMany(values => values.Select(value => value.Path)).Distinct(StringComparer.Ordinal))
        {
            WrittenValue?[] all = [.. byPath.Select(values => values.GetValueOrDefault(path))];
            if (!Array.TrueForAll(all, value => value is null ? all[0] is null : all[0]?.IsSameAs(value) == true))
            {
                differences.Add(new WrittenDifference(path, [.. all.Select(value => value?.Text)]));
            }
        }

        return differences;
    }
}
