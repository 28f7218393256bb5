using LaunchSim.Studies.Grids;
using LaunchSim.Studies.Running;
using Parquet;
using Parquet.Schema;

namespace LaunchSim.Studies.Tests.Grids;

public class GridParquetTests
{
    [Fact]
    public async Task Write_ReadBack_HasTheTablesColumnsAndNumbers()
    {
        GridPlan plan = Plans.Small();
        using GridStudyRun run = GridStudyRun.Open(plan, "sweep", "test", Shard.Whole, null, resume: false);
        run.Run(2, _ => { }, _ => { }, CancellationToken.None);
        GridRow[] rows = [.. run.Rows()];
        Assert.Contains(rows, row => double.IsNaN(row.Figures[0]));
        using var stream = new MemoryStream();
        GridParquet.Write(plan, run.Rows(), "LaunchSim test", stream, CancellationToken.None);

        stream.Position = 0;
        await using ParquetReader reader = await ParquetReader.CreateAsync(stream);
        DataField[] fields = reader.Schema.GetDataFields();
        Assert.Equal(GridTable.Columns(plan), fields.Select(field => field.Name));
        Assert.Equal("LaunchSim test", reader.CustomMetadata["program"]);
        Assert.Equal(1, reader.RowGroupCount);
        using ParquetRowGroupReader group = reader.OpenRowGroupReader(0);
        long[] numbers = new long[rows.Length];
        await group.ReadAsync<long>(fields[0], numbers);
        Assert.Equal(rows.Select(row => row.SetUp), numbers);
        string?[] holes = new string?[rows.Length];
        await group.ReadAsync(fields[2], holes!);
        Assert.Equal(rows.Select(row => plan.Grid.Variations[1].Values[plan.Grid.Place(row.SetUp, 1)].Value), holes);
        double?[] lags = new double?[rows.Length];
        await group.ReadAsync<double>(fields[3], lags);
        Assert.Equal(rows.Select(row => double.IsNaN(row.Figures[0]) ? (double?)null : row.Figures[0]), lags);
    }
}
