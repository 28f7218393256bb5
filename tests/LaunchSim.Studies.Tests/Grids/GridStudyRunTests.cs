using System.Text;
using LaunchSim.Studies.Grids;
using LaunchSim.Studies.Running;

namespace LaunchSim.Studies.Tests.Grids;

public class GridStudyRunTests
{
    [Fact]
    public void Run_WithOneOrFourThreads_WritesTheSameBytes()
    {
        using var folder = new Folder();
        GridPlan plan = Plans.Small();
        byte[] one = Written(plan, folder.Path("one.csv"), threads: 1), four = Written(plan, folder.Path("four.csv"), threads: 4);

        Assert.Equal(one, four);
        Assert.Equal(plan.Grid.Count + 1, one.Count(letter => letter == '\n'));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(5)]
    [InlineData(50)]
    public void Merge_OfAllParts_WritesTheBytesOfOneRun(int count)
    {
        using var folder = new Folder();
        GridPlan plan = Plans.Small();
        byte[] whole = Written(plan, folder.Path("whole.csv"));
        string[] parts = [.. Enumerable.Range(1, count).Reverse().Select(number => folder.Path($"part-{number}.csv"))];
        for (int number = 1; number <= count; number++)
        {
            _ = Written(plan, folder.Path($"part-{number}.csv"), new Shard(number, count));
        }

        var merge = RowMerge.Plan(parts, out IReadOnlyList<string> problems);
        Assert.Empty(problems);
        using var merged = new MemoryStream();
        merge!.Write(merged, CancellationToken.None);
        merge.WriteSidecar(folder.Path("merged.csv"));

        Assert.Equal(whole, merged.ToArray());
        Assert.Equal(File.ReadAllText(folder.Path("whole.csv.study")), File.ReadAllText(folder.Path("merged.csv.study")));
    }

    /// <summary>A file may be cut off at any byte: what is whole is kept, what is not is run again, nothing comes twice.</summary>
    [Fact]
    public void Resume_OfATableCutOffAnywhere_GivesTheBytesOfOneRun()
    {
        using var folder = new Folder();
        GridPlan plan = Plans.Small();
        byte[] whole = Written(plan, folder.Path("whole.csv"));
        string table = folder.Path("a.csv");
        var random = new Random(11);
        int[] cuts = [0, 1, 10, whole.Length - 1, whole.Length, .. Enumerable.Range(0, 25).Select(_ => random.Next(whole.Length))];
        foreach (int cut in cuts)
        {
            File.Copy(folder.Path("whole.csv.study"), table + ".study", true);
            File.WriteAllBytes(RowFile.Unfinished(table), whole[..cut]);
            using (GridStudyRun run = GridStudyRun.Open(plan, "sweep", "test", Shard.Whole, table, resume: true))
            {
                Assert.Equal(Math.Max(0, whole.AsSpan(0, cut).Count((byte)'\n') - 1), run.Kept);
                long next = 0;
                run.Run(2, row => Assert.Equal(next++, row.SetUp), _ => { }, CancellationToken.None);
                Assert.Equal(plan.Grid.Count, next);
            }

            Assert.Equal(whole, File.ReadAllBytes(table));
            File.Delete(table);
        }
    }

    [Fact]
    public void Cancel_WithinARun_KeepsWhatIsDoneForTheNextOne()
    {
        using var folder = new Folder();
        GridPlan plan = Plans.Small();
        byte[] whole = Written(plan, folder.Path("whole.csv"));
        string table = folder.Path("a.csv");
        using var cancel = new CancellationTokenSource();
        using (GridStudyRun run = GridStudyRun.Open(plan, "sweep", "test", Shard.Whole, table, resume: false))
        {
            Assert.ThrowsAny<OperationCanceledException>(() => run.Run(2, _ => { }, _ => cancel.Cancel(), cancel.Token));
            Assert.InRange(run.Done, 1, plan.Grid.Count - 1);
        }

        Assert.False(File.Exists(table));
        using (GridStudyRun run = GridStudyRun.Open(plan, "sweep", "test", Shard.Whole, table, resume: true))
        {
            Assert.InRange(run.Kept, 1, plan.Grid.Count - 1);
            run.Run(2, _ => { }, _ => { }, CancellationToken.None);
        }

        Assert.Equal(whole, File.ReadAllBytes(table));
    }

    /// <summary>What differs is named, whatever decides the content of a row.</summary>
    [Fact]
    public void Resume_OfAnotherStudy_IsRefusedByWhatDiffers()
    {
        using var folder = new Folder();
        _ = Written(Plans.Small(), folder.Path("a.csv"));

        Refused(Plans.Small("rear.spring.rate=120 to 250 by 10 lb/in", "rear.linkage.upper.body.use=1 3"), "vary rear.linkage.upper.body.use: there 1 | 2 | 3, here 1 | 3");
        Refused(Plans.Of(Files.DoorCar, [("run.duration", "0.2 s"), ("front.spring.rate", "200 lb/in")], [], GridPlan.Tolerance, Vary), "scenario: there ");
        Refused(Plans.Of(Files.DoorCar, [("run.duration", "0.2 s")], ["front_rise_peak_m"], GridPlan.Tolerance, Vary), "figures: there ");
        Refused(Plans.Of(Files.DoorCar, [("run.duration", "0.2 s")], [], 1e-7, Vary), "tolerance: there 1E-06, here 1E-07");

        // A hole that is not in use now is no part of the scenario's hash; as a value it decides.
        Refused(Plans.Of(Files.DoorCar, [("run.duration", "0.2 s"), ("rear.linkage.upper.body.holes.3", "14.0 13.7 in")], [], GridPlan.Tolerance, Vary), "cars: there ");
        Refused(Plans.Small(), "part: there 1/1, here 1/2", new Shard(1, 2));

        void Refused(GridPlan plan, string named, Shard? shard = null)
        {
            RowFileException refused = Assert.Throws<RowFileException>(() => GridStudyRun.Open(plan, "sweep", "test", shard ?? Shard.Whole, folder.Path("a.csv"), resume: true));
            Assert.Contains(named, refused.Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Open_WithATableInTheWay_IsRefused()
    {
        using var folder = new Folder();
        GridPlan plan = Plans.Small("rear.spring.rate=120 130 lb/in");
        _ = Written(plan, folder.Path("a.csv"));
        Assert.Contains("is there already", Assert.Throws<RowFileException>(() => Open("a.csv", false)).Message, StringComparison.Ordinal);
        File.Move(folder.Path("a.csv"), RowFile.Unfinished(folder.Path("a.csv")));
        Assert.Contains("--resume goes on with it", Assert.Throws<RowFileException>(() => Open("a.csv", false)).Message, StringComparison.Ordinal);
        Assert.Contains("nothing to go on with", Assert.Throws<RowFileException>(() => Open("b.csv", true)).Message, StringComparison.Ordinal);
        File.WriteAllText(folder.Path("c.csv.study"), "my own");
        Assert.Contains("does not come from this program", Assert.Throws<RowFileException>(() => Open("c.csv", false)).Message, StringComparison.Ordinal);
        using GridStudyRun first = Open("d.csv", false);
        Assert.ThrowsAny<IOException>(() => Open("d.csv", true));

        GridStudyRun Open(string name, bool resume) => GridStudyRun.Open(plan, "sweep", "test", Shard.Whole, folder.Path(name), resume);
    }

    [Fact]
    public void Open_OfATableThatWasChanged_IsRefused()
    {
        using var folder = new Folder();
        GridPlan plan = Plans.Small("rear.spring.rate=120 130 140 lb/in");
        string table = folder.Path("a.csv");
        string[] lines = Encoding.UTF8.GetString(Written(plan, table)).Split('\n');
        File.WriteAllText(table, string.Join('\n', lines[..3]) + "\n");
        Assert.Contains("has 2 whole rows where this study has 3", Assert.Throws<RowFileException>(Resume).Message, StringComparison.Ordinal);
        File.WriteAllText(table, string.Join('\n', [lines[0], lines[2], lines[1], lines[3], ""]));
        using GridStudyRun run = Resume();
        Assert.Contains("holds set-up 1 where 0 is due", Assert.Throws<RowTableException>(() => run.Run(1, _ => { }, _ => { }, CancellationToken.None)).Message, StringComparison.Ordinal);

        GridStudyRun Resume() => GridStudyRun.Open(plan, "sweep", "test", Shard.Whole, table, resume: true);
    }

    [Fact]
    public void Run_WithALaunchThatFails_IsARowWithItsReason()
    {
        GridPlan plan = Plans.Of(Files.Test("stalls"), [], [], GridPlan.Tolerance, "rear.spring.rate=130 150 175 lb/in");
        using GridStudyRun run = GridStudyRun.Open(plan, "sweep", "test", Shard.Whole, null, resume: false);
        var rows = new List<GridRow>();
        run.Run(2, rows.Add, _ => { }, CancellationToken.None);
        Assert.Equal(3, rows.Count);
        Assert.All(rows, row => Assert.StartsWith("stopped at ", row.Trouble, StringComparison.Ordinal));
        Assert.All(rows, row => Assert.False(row.Score.Exists));
        Assert.Equal(rows.Select(row => row.Trouble), run.Rows().Select(row => row.Trouble));
    }

    [Fact]
    public void Header_WithAHoleNamedLikeAList_IsQuoted()
    {
        using var folder = new Folder();
        string car = folder.Path("car.yaml");
        File.WriteAllText(car, $$"""
            name: Odd holes
            base: {{Files.DoorCar}}
            choices: {}
            change:
              rear.linkage.upper.body: {holes: {'a,"b': 14.0 14.6 in, c: 14.0 13.8 in}, use: 'a,"b'}
            """);
        GridPlan plan = Plans.Of(car, [("run.duration", "0.1 s")], [], GridPlan.Tolerance, "rear.linkage.upper.body.holes.a,\"b.up=14.5 14.6 in");
        byte[] written = Written(plan, folder.Path("a.csv"));
        Assert.StartsWith("set_up,\"rear.linkage.upper.body.holes.a,\"\"b.up\",", Encoding.UTF8.GetString(written), StringComparison.Ordinal);
        Assert.Equal(2, GridTable.Read(plan, folder.Path("a.csv")).Count());
    }

    private static readonly string[] Vary = ["rear.spring.rate=120 to 250 by 10 lb/in", "rear.linkage.upper.body.use=all"];

    private static byte[] Written(GridPlan plan, string table, Shard? shard = null, int threads = 2)
    {
        using (GridStudyRun run = GridStudyRun.Open(plan, "sweep", "test", shard ?? Shard.Whole, table, resume: false))
        {
            run.Run(threads, _ => { }, _ => { }, CancellationToken.None);
        }

        Assert.False(File.Exists(RowFile.Unfinished(table)));
        return File.ReadAllBytes(table);
    }
}
