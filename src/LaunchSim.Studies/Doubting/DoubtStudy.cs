using LaunchSim.Figures;
using LaunchSim.Studies.Chance;
using LaunchSim.Studies.Grids;
using LaunchSim.Studies.Running;

namespace LaunchSim.Studies.Doubting;

/// <summary>
/// How sure a car's answer is: plausible cars are drawn from its doubts, launched on all cores and gathered in order, so that
/// the result does not depend on the number of threads. With a table the rows survive a kill and can be gone on with.
/// </summary>
public sealed class DoubtStudy : IDisposable
{
    private const int BlockSize = 8;

    private readonly DoubtPlan _plan;
    private readonly RowFile? _rows;
    private readonly long _from, _to;

    private DoubtStudy(DoubtPlan plan, RowFile? rows, long from, long to) =>
        (_plan, _rows, _from, _to, Kept) = (plan, rows, from, to, rows?.Rows ?? 0);

    /// <summary>How many cars there are.</summary>
    public long Count => _to - _from;

    /// <summary>How many of them the table held when it was opened.</summary>
    public long Kept { get; }

    /// <summary>How many are safe in the table by now.</summary>
    public long Done => _rows?.Rows ?? 0;

    /// <summary>The table's name; null when there is none.</summary>
    public string? Table => _rows?.Path;

    /// <summary>Begins a study, or goes on with one.</summary>
    /// <param name="plan">What is run.</param>
    /// <param name="program">The program with its version: another one may write other digits.</param>
    /// <param name="shard">The part of the cars.</param>
    /// <param name="table">The finished table's name; null for none.</param>
    /// <param name="resume">Whether to go on with the table that is there.</param>
    /// <exception cref="RowFileException">A table is in the way, or came from something else.</exception>
    /// <exception cref="IOException">It cannot be read or written.</exception>
    public static DoubtStudy Open(DoubtPlan plan, string program, Shard shard, string? table, bool resume)
    {
        ArgumentNullException.ThrowIfNull(plan);
        (long from, long to) = shard.Rows(plan.Settings.Cars);
        RowFile? rows = table is null ? null : RowFile.Open(table, DoubtTable.Header(plan), plan.Identity(shard, program), resume);
        if (rows is not null && (rows.Rows > to - from || (rows.IsFinished && rows.Rows < to - from)))
        {
            rows.Dispose();
            throw new RowFileException($"`{rows.Path}` has {rows.Rows} whole rows where this study has {to - from}: it was changed; delete it and begin anew");
        }

        return new DoubtStudy(plan, rows, from, to);
    }

    /// <summary>Draws, launches and gathers all cars.</summary>
    /// <param name="plan">What is run.</param>
    /// <param name="wantsBands">Whether bands on traces are wanted.</param>
    /// <param name="cancellation">Ends it.</param>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static DoubtResult Run(DoubtPlan plan, bool wantsBands, CancellationToken cancellation)
    {
        using DoubtStudy study = Open(plan, "", Shard.Whole, null, false);
        return study.Run(wantsBands, _ => { }, cancellation);
    }

    /// <summary>Runs what is missing, and gives the table its name when all is there.</summary>
    /// <param name="wantsBands">Whether bands on traces are wanted; the cars that a table holds already are then launched again for them.</param>
    /// <param name="added">Told how many more cars are done, on the calling thread.</param>
    /// <param name="cancellation">Ends it; what the table holds is whole and can be gone on with.</param>
    /// <exception cref="RowTableException">A row of the earlier run cannot be read back.</exception>
    /// <exception cref="IOException">The table cannot be read or written.</exception>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public DoubtResult Run(bool wantsBands, Action<int> added, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(added);
        DoubtRow own = new DoubtWorker(_plan, null, cancellation).RunOwn(out string foremost, out LaunchReading course);
        using LaunchReading line = course;
        TraceBands? bands = wantsBands ? new TraceBands(_from, Count, course.Duration) : null;
        var gathered = new DoubtGatherer(_plan, Count);
        long next = _from;
        foreach (DoubtRow row in Kept > 0 ? _rows!.Read(stream => DoubtTable.Read(_plan, stream, _rows.Path)) : [])
        {
            cancellation.ThrowIfCancellationRequested();
            if (row.Car != next++)
            {
                throw new RowTableException($"`{_rows!.Path}` holds car {row.Car} where {next - 1} is due: it was changed; delete it and begin anew");
            }

            gathered.Add(row);
        }

        if (bands is not null && Kept > 0)
        {
            Launch(_from, _from + Math.Min(Kept, TraceBands.MostCars), bands, (_, _) => { }, cancellation);
        }

        Launch(_from + Kept, _to, bands, Take, cancellation);
        if (_rows is { IsFinished: false })
        {
            _rows.Finish();
        }

        return gathered.Close(own, foremost, bands?.Read(course) ?? [], bands?.Cars ?? 0);

        void Take(long first, DoubtRow[] rows)
        {
            _rows?.Append(DoubtTable.Lines(_plan, rows), rows.Length);
            foreach (DoubtRow row in rows)
            {
                gathered.Add(row);
            }

            added(rows.Length);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _rows?.Dispose();

    private void Launch(long from, long to, TraceBands? bands, Action<long, DoubtRow[]> take, CancellationToken cancellation)
    {
        if (from < to)
        {
            OrderedBlocks.Run(from, to, _plan.Settings.Threads, BlockSize, () => new DoubtWorker(_plan, bands, cancellation), (worker, car) => worker.Run(car), take, cancellation);
        }
    }
}
