using LaunchSim.Scenarios.Varying;
using LaunchSim.Studies.Grids;

namespace LaunchSim.Studies.Words;

/// <summary>Short names for what is varied: as much of each path's end as tells it from the others.</summary>
public static class SettingNames
{
    private const int FewestParts = 2;

    /// <summary>A name for each variation, in their order.</summary>
    /// <param name="variations">What is varied.</param>
    public static IReadOnlyList<string> Of(IReadOnlyList<Variation> variations)
    {
        ArgumentNullException.ThrowIfNull(variations);
        string[][] parts = [.. variations.Select(variation => variation.Path.Split('.'))];
        return [.. parts.Select((own, i) =>
        {
            int count = Math.Min(FewestParts, own.Length);
            while (count < own.Length && parts.Where((_, j) => j != i).Any(other => other.TakeLast(count).SequenceEqual(own.TakeLast(count))))
            {
                count++;
            }

            return string.Join('.', own.TakeLast(count));
        })];
    }

    /// <summary>A set-up in words: <c>pressure.set 15 psi, body.use 3</c>.</summary>
    /// <param name="grid">The grid.</param>
    /// <param name="setUp">The set-up's number.</param>
    public static string Of(SetUpGrid grid, long setUp)
    {
        ArgumentNullException.ThrowIfNull(grid);
        IReadOnlyList<string> names = Of(grid.Variations);
        return string.Join(", ", names.Select((name, i) => $"{name} {grid.Variations[i].Values[grid.Place(setUp, i)].Value}"));
    }
}
