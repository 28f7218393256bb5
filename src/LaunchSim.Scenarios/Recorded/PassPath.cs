using System.Text.RegularExpressions;
using LaunchSim.Scenarios.Paths;
using LaunchSim.Scenarios.Schema;

namespace LaunchSim.Scenarios.Recorded;

/// <summary>Paths of values in a pass file: <c>track</c>, <c>seen.rear_open</c>, <c>changed.rear.spring.rate</c>, <c>logs[0].file</c>.</summary>
internal static partial class PassPath
{
    private const string Changed = "changed.";

    /// <summary>Every path but those below <c>changed</c>, an item's index as 0.</summary>
    public static IReadOnlyList<string> All { get; } = [.. Below(PassKeys.Pass.Keys)];

    public static bool IsKnown(string path, out string? nearest)
    {
        nearest = null;
        if (path.StartsWith(Changed, StringComparison.Ordinal))
        {
            bool known = ScenarioPath.Resolve(path[Changed.Length..], out string? near) is not null;
            nearest = near is null ? null : Changed + near;
            return known;
        }

        string plain = Index().Replace(path, "[0]");
        if (All.Contains(plain))
        {
            return true;
        }

        nearest = Nearest.To(path, All) ?? (ScenarioPath.Resolve(path, out _) is null ? null : Changed + path);
        return false;
    }

    private static IEnumerable<string> Below(IEnumerable<SchemaKey> keys) => keys.SelectMany(key => key.Kind switch
    {
        SectionKind section => Below(section.Section.Keys),
        ListKind list => Below(list.Item.Keys),
        ChangeKind => [],
        _ => (IEnumerable<string>)[key.Path.Replace("[]", "[0]", StringComparison.Ordinal)],
    });

    [GeneratedRegex(@"\[\d+\]")]
    private static partial Regex Index();
}
