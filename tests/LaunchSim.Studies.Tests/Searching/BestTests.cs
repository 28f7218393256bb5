using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Varying;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Grids;
using LaunchSim.Studies.Running;
using LaunchSim.Studies.Searching;

namespace LaunchSim.Studies.Tests.Searching;

public class BestTests
{
    private static readonly GridPlan Plan = Cars.Plan(
        Cars.Door, BestCollector.Figures, "rear.linkage.upper.body.use=all", "rear.damper.extension.set=0 to 12 by 4", "rear.tire.pressure.set=14 16 17 psi", "rear.spring.rate=130 150 lb/in");

    [Fact]
    public void Result_OfAWholeGrid_IsWhatTryingAllInAnotherOrderGives()
    {
        BestResult result = Whole(Plan, threads: 3);

        // Another order, another way to the car: text read anew, one thread, from the last to the first.
        using var worker = new LaunchWorker(Plan.Aims.Keys, Plan.Settings);
        double[] figures = new double[Plan.Aims.Keys.Count];
        var all = new List<(AimScore Score, long SetUp)>();
        for (long setUp = Plan.Grid.Count - 1; setUp >= 0; setUp--)
        {
            IEnumerable<(string, string)> changes = Plan.Grid.Edits(setUp).Select(edit => (edit.Path, edit.Value));
            Scenario changed = Cars.Door.With(changes).Scenario!;
            LaunchSim.Vehicle.Car car = GripHeld.Of(Cars.Door.Car!, changed.Car!);
            all.Add((worker.Run(car, figures, CancellationToken.None) is null ? Plan.Aims.Score(figures) : AimScore.None, setUp));
        }

        (AimScore Score, long SetUp)[] best = [.. all.OrderBy(one => one.Score).ThenBy(one => one.SetUp).Take(10)];
        Assert.True(result.IsProven);
        Assert.Equal(72, result.Tried);
        Assert.Equal(best.Select(one => one.SetUp), result.Best.Select(setUp => setUp.Row.SetUp));
        Assert.All(best.Zip(result.Best), pair => Assert.Equal(pair.First.Score.Points, pair.Second.Row.Score.Points, 1e-9));
        Assert.Equal(all.Count(one => one.Score.Beyond <= best[0].Score.Beyond && one.Score.Points <= best[0].Score.Points + 1), result.Top!.Count);
    }

    [Fact]
    public void NextDoor_OfTheBest_IsTheWorstOneStepAway()
    {
        var scores = new Dictionary<long, AimScore>();
        GridRunner.Run(Plan, 0, Plan.Grid.Count, 2, rows => rows.ToList().ForEach(row => scores[row.SetUp] = row.Score), CancellationToken.None);

        BestResult result = Whole(Plan, threads: 2);

        foreach (RankedSetUp setUp in result.Best)
        {
            // The first setting is a hole: nobody slips into another one.
            AimScore worst = scores.Where(other => StepsBetween(setUp.Row.SetUp, other.Key) == 1 && Plan.Grid.Place(setUp.Row.SetUp, 0) == Plan.Grid.Place(other.Key, 0)).Max(other => other.Value);
            Assert.Equal(worst, setUp.NextDoor.WorstScore);
            Assert.Equal(!worst.Exists || (setUp.Row.Score.KeepsLimits && !worst.KeepsLimits) || worst.Total > setUp.Row.Score.Total + 2, setUp.IsFragile);
        }
    }

    [Fact]
    public void PatternSearch_WithinItsBudget_EndsWhereNoNeighbourIsBetter()
    {
        GridPlan plan = Cars.Plan(Cars.Door, BestCollector.Figures, "rear.damper.extension.set=0 to 12 by 0.5", "rear.spring.rate=100 to 200 by 5 lb/in", "car.ride_height.rear=-1 to 1 by 1/8 in");
        var collector = new BestCollector(plan, false);
        var seen = new HashSet<long>();

        PatternSearch.Run(plan, 700, 1, 2, rows =>
        {
            Assert.All(rows, row => Assert.True(seen.Add(row.SetUp)));
            collector.Add(rows);
        }, CancellationToken.None);

        BestResult result = collector.Result();
        Assert.False(result.IsProven);
        Assert.InRange(result.Tried, 176, 700);
        Assert.All(plan.Grid.Neighbours(result.Best[0].Row.SetUp), neighbour => Assert.True(collector.Score(neighbour) is not { } score || score >= result.Best[0].Row.Score));
        Assert.Equal(result.Best[0].NextDoor.Count, result.Best[0].NextDoor.Known);
    }

    [Fact]
    public void PatternSearch_WhateverTheThreads_FindsTheSame()
    {
        GridPlan plan = Cars.Plan(Cars.Door, BestCollector.Figures, "rear.damper.extension.set=0 to 12 by 0.5", "rear.spring.rate=100 to 200 by 5 lb/in");

        List<GridRow> Search(int threads)
        {
            var rows = new List<GridRow>();
            PatternSearch.Run(plan, 120, 7, threads, rows.AddRange, CancellationToken.None);
            return rows;
        }

        Assert.Equal(Search(1).Select(row => (row.SetUp, row.Score)), Search(4).Select(row => (row.SetUp, row.Score)));
    }

    [Fact]
    public void Add_LaunchesThatFail_AreCountedAndNeverTheBest()
    {
        GridPlan plan = Cars.Plan(Cars.Door, BestCollector.Figures, "rear.spring.rate=150 175 lb/in");
        var collector = new BestCollector(plan, true);
        double[] none = [.. plan.Figures.Select(_ => double.NaN)];

        collector.Add([new GridRow(0, none, AimScore.None, AimScore.None, "stopped"), new GridRow(1, none, AimScore.None, AimScore.None, "stopped")]);

        BestResult result = collector.Result();
        Assert.Equal(2, result.Failed);
        Assert.Empty(result.Best);
        Assert.StartsWith("None of the 2 set-ups", BestWords.Conclusion(result, null), StringComparison.Ordinal);
    }

    private static BestResult Whole(GridPlan plan, int threads)
    {
        var collector = new BestCollector(plan, true);
        GridRunner.Run(plan, 0, plan.Grid.Count, threads, collector.Add, CancellationToken.None);
        return collector.Result();
    }

    private static int StepsBetween(long a, long b) =>
        Enumerable.Range(0, Plan.Grid.Variations.Count).Sum(i => Math.Abs(Plan.Grid.Place(a, i) - Plan.Grid.Place(b, i)));
}
