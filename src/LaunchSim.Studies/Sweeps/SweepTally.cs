using LaunchSim.Studies.Grids;

namespace LaunchSim.Studies.Sweeps;

/// <summary>
/// What is remembered of a sweep while its rows stream by: the best, the ends of every measure, what failed. Of a small sweep
/// also all rows.
/// </summary>
public sealed class SweepTally
{
    /// <summary>So many rows are remembered one by one.</summary>
    public const int MostRows = 1000;

    private readonly List<GridRow>? _rows;
    private readonly (GridRow Least, GridRow Most)?[] _ends;

    /// <summary>An empty tally.</summary>
    /// <param name="plan">What is run.</param>
    /// <param name="measures">What is shown of every launch.</param>
    public SweepTally(GridPlan plan, IReadOnlyList<Measure> measures)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(measures);
        (Plan, Measures) = (plan, measures);
        _rows = plan.Grid.Size <= MostRows ? [] : null;
        _ends = new (GridRow, GridRow)?[measures.Count];
    }

    /// <summary>What is run.</summary>
    public GridPlan Plan { get; }

    /// <summary>What is shown of every launch.</summary>
    public IReadOnlyList<Measure> Measures { get; }

    /// <summary>All rows in order; null when there are too many to remember.</summary>
    public IReadOnlyList<GridRow>? Rows => _rows;

    /// <summary>How many launches there were.</summary>
    public long Count { get; private set; }

    /// <summary>How many of them did not come to their end.</summary>
    public long Failed { get; private set; }

    /// <summary>The first that did not; null when all did.</summary>
    public GridRow? FirstFailed { get; private set; }

    /// <summary>How many broke a limit.</summary>
    public long BeyondLimits { get; private set; }

    /// <summary>The first of those with the best score; null when none has one.</summary>
    public GridRow? Best { get; private set; }

    /// <summary>How many have the best score.</summary>
    public long BestCount { get; private set; }

    /// <summary>The launch of the present set-up, if it is among them; otherwise it may be put here.</summary>
    public GridRow? Present { get; set; }

    /// <summary>The launches with the least and the largest value of a measure; null when none has a value.</summary>
    /// <param name="measure">Which, from 0.</param>
    public (GridRow Least, GridRow Most)? Ends(int measure) => _ends[measure];

    /// <summary>Takes note of a launch.</summary>
    /// <param name="row">The launch.</param>
    public void Take(GridRow row)
    {
        Count++;
        _rows?.Add(row);
        if (row.SetUp == Plan.Grid.Present)
        {
            Present = row;
        }

        if (row.Trouble is not null)
        {
            Failed++;
            FirstFailed ??= row;
            return;
        }

        BeyondLimits += row.Score.KeepsLimits ? 0 : 1;
        if (Best is not { } best || row.Score < best.Score)
        {
            (Best, BestCount) = (row, 1);
        }
        else if (row.Score.CompareTo(best.Score) == 0)
        {
            BestCount++;
        }

        for (int i = 0; i < _ends.Length; i++)
        {
            double value = Measures[i].Of(row);
            if (double.IsNaN(value))
            {
                continue;
            }

            (GridRow least, GridRow most) = _ends[i] ?? (row, row);
            _ends[i] = (value < Measures[i].Of(least) ? row : least, value > Measures[i].Of(most) ? row : most);
        }
    }
}
