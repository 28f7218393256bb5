using LaunchSim.Studies.Running;

namespace LaunchSim.Studies.Grids;

/// <summary>
/// One run over a part of a grid: rows go to a table as they come, so that memory stays bounded, and each is shown to whoever
/// asks. What a table holds already is shown first and not run again.
/// </summary>
public sealed class GridStudyRun : IDisposable
{
    private readonly GridPlan _plan;
    private readonly RowFile _rows;
    private readonly string? _passing;

    private GridStudyRun(GridPlan plan, RowFile rows, string? passing, long from, long to) =>
        (_plan, _rows, _passing, From, To, Kept) = (plan, rows, passing, from, to, rows.Rows);

    /// <summary>The first set-up of the part.</summary>
    public long From { get; }

    /// <summary>The set-up after the last of the part.</summary>
    public long To { get; }

    /// <summary>How many rows the part has.</summary>
    public long Count => To - From;

    /// <summary>How many of them the table held when it was opened.</summary>
    public long Kept { get; }

    /// <summary>How many are safe by now.</summary>
    public long Done => _rows.Rows;

    /// <summary>The table's name; null when the rows are only kept until this is disposed of.</summary>
    public string? Table => _passing is null ? _rows.Path : null;

    /// <summary>Begins a run, or goes on with one.</summary>
    /// <param name="plan">What is run.</param>
    /// <param name="kind">What kind of study it is, such as <c>sweep</c>.</param>
    /// <param name="program">The program with its version: another one may write other digits.</param>
    /// <param name="shard">The part of the grid.</param>
    /// <param name="table">The finished table's name; null to keep the rows in a passing file.</param>
    /// <param name="resume">Whether to go on with the table that is there.</param>
    /// <exception cref="RowFileException">A table is in the way, or came from something else.</exception>
    /// <exception cref="IOException">It cannot be read or written.</exception>
    /// <exception cref="OverflowException">The grid has more set-ups than can be counted with a long.</exception>
    public static GridStudyRun Open(GridPlan plan, string kind, string program, Shard shard, string? table, bool resume)
    {
        ArgumentNullException.ThrowIfNull(plan);
        (long from, long to) = shard.Rows(plan.Grid.Count);
        string? passing = table is null ? Directory.CreateTempSubdirectory("launchsim-").FullName : null;
        RowFile? rows = null;
        try
        {
            rows = RowFile.Open(table ?? Path.Combine(passing!, "rows.csv"), GridTable.Header(plan), plan.Identity(kind, shard, program), resume);
            if (rows.Rows > to - from || (rows.IsFinished && rows.Rows < to - from))
            {
                throw new RowFileException($"`{rows.Path}` has {rows.Rows} whole rows where this study has {to - from}: it was changed; delete it and begin anew");
            }

            return new GridStudyRun(plan, rows, passing, from, to);
        }
        catch
        {
            rows?.Dispose();
            Remove(passing);
            throw;
        }
    }

    /// <summary>Runs what is missing and gives the table its name when all is there.</summary>
    /// <param name="threads">How many threads, at least one; the rows do not depend on it.</param>
    /// <param name="take">Receives every row of the part in order, those of an earlier run first, on the calling thread.</param>
    /// <param name="added">Told how many rows were added to the table, on the calling thread.</param>
    /// <param name="cancellation">Ends it; what the table holds is whole and can be gone on with.</param>
    /// <exception cref="RowTableException">A row of the earlier run cannot be read back.</exception>
    /// <exception cref="IOException">The table cannot be read or written.</exception>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public void Run(int threads, Action<GridRow> take, Action<int> added, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(take);
        ArgumentNullException.ThrowIfNull(added);
        long next = From;
        foreach (GridRow row in Kept > 0 ? Rows() : [])
        {
            cancellation.ThrowIfCancellationRequested();
            if (row.SetUp != next++)
            {
                throw new RowTableException($"`{_rows.Path}` holds set-up {row.SetUp} where {next - 1} is due: it was changed; delete it and begin anew");
            }

            take(row);
        }

        if (!_rows.IsFinished)
        {
            GridRunner.Run(_plan, From + Kept, To, threads, Take, cancellation);
            if (_passing is null)
            {
                _rows.Finish();
            }
        }

        void Take(IReadOnlyList<GridRow> rows)
        {
            _rows.Append(GridTable.Lines(_plan, rows), rows.Count);
            foreach (GridRow row in rows)
            {
                take(row);
            }

            added(rows.Count);
        }
    }

    /// <summary>The rows in the table, read anew: before or after the run, not within it.</summary>
    /// <exception cref="RowTableException">A row cannot be read back.</exception>
    /// <exception cref="IOException">The table cannot be read.</exception>
    public IEnumerable<GridRow> Rows() => _rows.Read(stream => GridTable.Read(_plan, stream, _rows.Path));

    /// <inheritdoc/>
    public void Dispose()
    {
        _rows.Dispose();
        Remove(_passing);
    }

    private static void Remove(string? folder)
    {
        try
        {
            if (folder is not null)
            {
                Directory.Delete(folder, true);
            }
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            // What is left in the folder for passing files does no harm.
        }
    }
}
