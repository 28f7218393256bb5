using LaunchSim.Studies.Chance;
using LaunchSim.Studies.Grids;

namespace LaunchSim.Studies.Searching;

/// <summary>
/// Looks for good set-ups in a grid that is too large to run whole. A quarter of the budget goes to set-ups spread evenly
/// over the grid by a quasi-random sequence, the present one among them. From the best of these, eight walks are made: each
/// tries its neighbours and goes to the best while it is better (Hooke and Jeeves' pattern search of 1961 in its steepest form,
/// from memory), with steps of a quarter of each setting's values first and one value last. The same seed, the same answer,
/// whatever the number of threads. What it finds is no worse than any of its neighbours; that nothing better lies elsewhere
/// is not proven.
/// </summary>
public static class PatternSearch
{
    private const int Walks = 8;
    private const double SpreadShare = 0.25;

    /// <summary>Searches.</summary>
    /// <param name="plan">What is run.</param>
    /// <param name="budget">How many set-ups may be run; at least one.</param>
    /// <param name="seed">Seed of the spread.</param>
    /// <param name="threads">How many threads.</param>
    /// <param name="take">Receives rows as they are run, none twice.</param>
    /// <param name="cancellation">Ends it.</param>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static void Run(GridPlan plan, long budget, ulong seed, int threads, Action<IReadOnlyList<GridRow>> take, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(take);
        var known = new Dictionary<long, GridRow>();
        Try(Spread(plan.Grid, (long)Math.Min(HaltonSequence.IndexLimit, Math.Max(1, SpreadShare * budget)), seed));
        long[] starts = [.. known.Values.Where(row => row.Score.Exists).OrderBy(row => row.Score).ThenBy(row => row.SetUp).Take(Walks).Select(row => row.SetUp)];
        foreach (long start in starts)
        {
            Walk(start);
        }

        void Walk(long at)
        {
            for (int step = Widest(plan.Grid); step >= 1; step = step == 1 ? 0 : Math.Max(1, step / 2))
            {
                while (true)
                {
                    List<long> around = [.. Around(plan.Grid, at, step)];
                    Try(around);
                    GridRow here = known[at];
                    GridRow best = around.Where(known.ContainsKey).Select(setUp => known[setUp]).Where(row => row.Score < here.Score)
                        .OrderBy(row => row.Score).ThenBy(row => row.SetUp).FirstOrDefault(here);
                    if (best.SetUp == at)
                    {
                        break;
                    }

                    at = best.SetUp;
                }
            }
        }

        void Try(IEnumerable<long> setUps)
        {
            List<long> news = [.. setUps.Where(setUp => !known.ContainsKey(setUp)).Distinct().Take((int)Math.Min(int.MaxValue, Math.Max(0, budget - known.Count)))];
            if (news.Count == 0)
            {
                return;
            }

            IReadOnlyList<GridRow> rows = GridRunner.Run(plan, news, threads, cancellation);
            foreach (GridRow row in rows)
            {
                known[row.SetUp] = row;
            }

            take(rows);
        }
    }

    private static int Widest(SetUpGrid grid) => Math.Max(1, grid.Variations.Max(variation => variation.Values.Count) / 4);

    private static IEnumerable<long> Spread(SetUpGrid grid, long count, ulong seed)
    {
        if (grid.Present is { } present)
        {
            yield return present;
        }

        var sequence = new HaltonSequence(grid.Variations.Count, seed);
        double[] u = new double[grid.Variations.Count];
        for (long i = 0; i < count; i++)
        {
            sequence.Point(i, u);
            long setUp = 0;
            for (int k = 0; k < u.Length; k++)
            {
                int values = grid.Variations[k].Values.Count;
                setUp = grid.With(setUp, k, Math.Min(values - 1, (int)(u[k] * values)));
            }

            yield return setUp;
        }
    }

    private static IEnumerable<long> Around(SetUpGrid grid, long setUp, int step)
    {
        for (int i = 0; i < grid.Variations.Count; i++)
        {
            int place = grid.Place(setUp, i), last = grid.Variations[i].Values.Count - 1;

            // A short setting is stepped through by one value whatever the step of the long ones.
            int own = Math.Max(1, Math.Min(step, (last + 1) / 4));
            if (place > 0)
            {
                yield return grid.With(setUp, i, Math.Max(0, place - own));
            }

            if (place < last)
            {
                yield return grid.With(setUp, i, Math.Min(last, place + own));
            }
        }
    }
}
