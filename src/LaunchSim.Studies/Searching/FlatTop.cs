using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Grids;

namespace LaunchSim.Studies.Searching;

/// <summary>How flat the top is: which set-ups do as well as the best, within what one would notice.</summary>
/// <param name="Within">Up to how many points more than the best.</param>
/// <param name="Count">How many set-ups that are, the best included.</param>
/// <param name="Values">For each setting, which of its values occur among them, by place.</param>
public sealed record FlatTop(double Within, long Count, IReadOnlyList<IReadOnlyList<int>> Values)
{
    /// <summary>One point: what one would notice.</summary>
    public const double Usual = 1;

    internal static FlatTop Of(SetUpGrid grid, IEnumerable<KeyValuePair<long, AimScore>> scores, AimScore best)
    {
        long count = 0;
        SortedSet<int>[] values = [.. grid.Variations.Select(_ => new SortedSet<int>())];
        foreach ((long setUp, AimScore score) in scores)
        {
            if (score.Exists && score.KeepsLimits == best.KeepsLimits && score.Total <= best.Total + Usual)
            {
                count++;
                for (int i = 0; i < values.Length; i++)
                {
                    _ = values[i].Add(grid.Place(setUp, i));
                }
            }
        }

        return new FlatTop(Usual, count, [.. values.Select(set => (IReadOnlyList<int>)[.. set])]);
    }
}
