using Parquet;
using Parquet.Schema;

namespace LaunchSim.Studies.Grids;

/// <summary>
/// A grid's rows by columns: the same columns as the table, numbers as numbers, nothing where there is none. Written in
/// groups of rows, so that no more than one group is in memory.
/// </summary>
public static class GridParquet
{
    /// <summary>Rows in a group.</summary>
    public const int GroupSize = 20_000;

    /// <summary>Writes rows.</summary>
    /// <param name="plan">What was run.</param>
    /// <param name="rows">The rows in order.</param>
    /// <param name="program">What wrote them.</param>
    /// <param name="stream">Where to; it can be sought in.</param>
    /// <param name="cancellation">Ends it.</param>
    /// <exception cref="IOException">It cannot be written.</exception>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static void Write(GridPlan plan, IEnumerable<GridRow> rows, string program, Stream stream, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(rows);
        WriteAll(plan, rows, program, stream, cancellation).GetAwaiter().GetResult();
    }

    private static async Task WriteAll(GridPlan plan, IEnumerable<GridRow> rows, string program, Stream stream, CancellationToken cancellation)
    {
        IReadOnlyList<string> names = GridTable.Columns(plan);
        int settings = plan.Grid.Variations.Count;
        DataField[] fields = [.. names.Select((name, i) => i == 0 ? new DataField<long>(name)
            : i <= settings || i == names.Count - 1 ? (DataField)new DataField<string>(name)
            : new DataField<double?>(name))];
        ParquetWriter writer = await ParquetWriter.CreateAsync(new ParquetSchema(fields), stream, cancellationToken: cancellation).ConfigureAwait(false);
        await using (writer.ConfigureAwait(false))
        {
            writer.CustomMetadata = new Dictionary<string, string> { ["program"] = program };
            foreach (GridRow[] group in rows.Chunk(GroupSize))
            {
                cancellation.ThrowIfCancellationRequested();
                using ParquetRowGroupWriter one = writer.CreateRowGroup();
                await one.WriteAsync<long>(fields[0], group.Select(row => row.SetUp).ToArray(), cancellationToken: cancellation).ConfigureAwait(false);
                for (int i = 0; i < settings; i++)
                {
                    await one.WriteAsync(fields[1 + i], group.Select(row => plan.Grid.Variations[i].Values[plan.Grid.Place(row.SetUp, i)].Value).ToArray()).ConfigureAwait(false);
                }

                int at = 1 + settings;
                for (int i = 0; i < plan.Figures.Count; i++)
                {
                    await Numbers(row => row.Figures[i]).ConfigureAwait(false);
                }

                await Numbers(row => row.Score.Points).ConfigureAwait(false);
                await Numbers(row => row.Score.Beyond).ConfigureAwait(false);
                if (plan.HoldsGrip)
                {
                    await Numbers(row => row.WithSlope.Points).ConfigureAwait(false);
                    await Numbers(row => row.WithSlope.Beyond).ConfigureAwait(false);
                    for (int i = 0; i < plan.Figures.Count; i++)
                    {
                        await Numbers(row => row.Held[i]).ConfigureAwait(false);
                    }
                }

                await one.WriteAsync(fields[at], group.Select(row => row.Trouble).ToArray()!).ConfigureAwait(false);

                Task Numbers(Func<GridRow, double> read) => one.WriteAsync<double>(
                    fields[at++], group.Select(row => read(row) is var value && double.IsFinite(value) ? value + 0.0 : (double?)null).ToArray(), cancellationToken: cancellation);
            }
        }
    }
}
