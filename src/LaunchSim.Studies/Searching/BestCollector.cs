using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Grids;

namespace LaunchSim.Studies.Searching;

/// <summary>Gathers what is told of the best set-ups while the rows come, in any order.</summary>
public sealed class BestCollector
{
    private const int Shown = 10;

    private readonly GridPlan _plan;
    private readonly List<GridRow> _best = [];
    private readonly Dictionary<long, AimScore>? _scores;
    private readonly AimScore[]? _all;
    private readonly Front _unrest, _separation;

    /// <summary>Gathers the rows of a whole grid or of some of it.</summary>
    /// <param name="plan">What is run.</param>
    /// <param name="isWhole">Whether every set-up of the grid will come.</param>
    public BestCollector(GridPlan plan, bool isWhole)
    {
        ArgumentNullException.ThrowIfNull(plan);
        _plan = plan;
        int lag = Place(Lag), unrest = Place(Unrest), separation = Place(Separation);
        _unrest = new Front(row => Math.Abs(row.Held[lag]), row => row.Held[unrest]);
        _separation = new Front(row => Math.Abs(row.Held[lag]), row => row.Held[separation]);
        if (isWhole)
        {
            _all = new AimScore[plan.Grid.Count];
            Array.Fill(_all, AimScore.None);
        }
        else
        {
            _scores = [];
        }

        int Place(string key)
        {
            for (int i = 0; i < plan.Figures.Count; i++)
            {
                if (plan.Figures[i] == key)
                {
                    return i;
                }
            }

            throw new ArgumentException($"The plan does not read {key}, which the fronts need.", nameof(plan));
        }
    }

    /// <summary>The figures of the fronts, which a plan has to read beside those of its aims.</summary>
    public static IReadOnlyList<string> Figures { get; } = [Lag, Unrest, Separation];

    private const string Lag = "rise_lag_s", Unrest = "load_unrest_n", Separation = "separation_peak_m";

    /// <summary>How many rows came.</summary>
    public long Count { get; private set; }

    /// <summary>How many of them did not come to their end.</summary>
    public long Failed { get; private set; }

    /// <summary>How many keep all limits.</summary>
    public long KeepLimits { get; private set; }

    /// <summary>Takes rows.</summary>
    /// <param name="rows">The rows; none twice.</param>
    public void Add(IReadOnlyList<GridRow> rows)
    {
        ArgumentNullException.ThrowIfNull(rows);
        foreach (GridRow row in rows)
        {
            Add(row);
        }
    }

    /// <summary>Takes a row.</summary>
    /// <param name="row">The row; none twice.</param>
    public void Add(GridRow row)
    {
        Count++;
        Failed += row.Trouble is null ? 0 : 1;
        KeepLimits += row.Score is { Exists: true, KeepsLimits: true } ? 1 : 0;
        if (_all is not null)
        {
            _all[row.SetUp] = row.Score;
        }
        else
        {
            _scores![row.SetUp] = row.Score;
        }

        if (IsUsable(row))
        {
            _unrest.Add(row);
            _separation.Add(row);
        }

        Rank(row);
    }

    /// <summary>A set-up's score; null when it was not run.</summary>
    /// <param name="setUp">The set-up's number.</param>
    public AimScore? Score(long setUp) => _all is not null ? _all[setUp] : _scores!.TryGetValue(setUp, out AimScore score) ? score : null;

    /// <summary>What came of it.</summary>
    public BestResult Result() => new()
    {
        Plan = _plan,
        Tried = Count,
        Failed = Failed,
        KeepLimits = KeepLimits,
        IsProven = _all is not null && Count == _plan.Grid.Count,
        Best = [.. _best.Select(row => new RankedSetUp(row, Next(row)))],
        LagAgainstUnrest = _unrest.Members,
        LagAgainstSeparation = _separation.Members,
        Top = _best.Count == 0 ? null : FlatTop.Of(_plan.Grid, _all is not null ? Numbered(_all) : _scores!, _best[0].Score),
    };

    // A car that breaks a limit or spins is no price that anybody pays for a smaller lag.
    private bool IsUsable(GridRow row)
    {
        if (row.Trouble is not null || !row.Score.KeepsLimits)
        {
            return false;
        }

        ReadOnlySpan<double> figures = row.Held.AsSpan(0, _plan.Aims.Keys.Count);
        for (int i = 0; i < _plan.Aims.Aims.Count; i++)
        {
            if (_plan.Aims.Aims[i].Subject.Name == "slip_past_peak" && _plan.Aims.Aims[i].PointsOf(_plan.Aims.Value(i, figures)) > 0)
            {
                return false;
            }
        }

        return true;
    }

    private static IEnumerable<KeyValuePair<long, AimScore>> Numbered(AimScore[] scores)
    {
        for (long i = 0; i < scores.LongLength; i++)
        {
            yield return new(i, scores[i]);
        }
    }

    // Of two that score the same the one of the lower number is first, in whatever order they came.
    private void Rank(GridRow row)
    {
        if (!row.Score.Exists)
        {
            return;
        }

        int at = _best.FindIndex(other => row.Score < other.Score || (row.Score.CompareTo(other.Score) == 0 && row.SetUp < other.SetUp));
        if (at < 0 && _best.Count < Shown)
        {
            _best.Add(row);
        }
        else if (at >= 0)
        {
            _best.Insert(at, row);
            if (_best.Count > Shown)
            {
                _best.RemoveAt(Shown);
            }
        }
    }

    private NextDoor Next(GridRow row)
    {
        AimScore worst = row.Score;
        long? where = null;
        int known = 0, all = 0;
        foreach (long neighbour in _plan.Grid.Neighbours(row.SetUp, scalesOnly: true))
        {
            all++;
            if (Score(neighbour) is not { } score)
            {
                continue;
            }

            known++;
            if (where is null || score > worst)
            {
                (worst, where) = (score, neighbour);
            }
        }

        return new NextDoor(all, known, where, worst);
    }
}
