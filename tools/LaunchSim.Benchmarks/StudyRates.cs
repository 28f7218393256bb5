using System.Diagnostics;
using System.Globalization;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Varying;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Doubting;
using LaunchSim.Studies.Grids;
using LaunchSim.Studies.Searching;

namespace LaunchSim.Benchmarks;

/// <summary>How quick studies are: launches a second on one core and on all, a search over 20,000 set-ups, 2,000 plausible cars.</summary>
internal static class StudyRates
{
    private const int Rounds = 3;

    public static int Run(string file)
    {
        ReadResult read = StandingCheck.Reader(ReadPurpose.Run).Read(file, [("run.duration", "1 s"), ("run.marks", "1 m")]);
        if (read.Scenario is not { } scenario || AimSet.Of(scenario.Aims, null, out _) is not { } aims)
        {
            Console.Error.WriteLine(string.Join('\n', read.Errors));
            return 2;
        }

        string[] vary = ["rear.spring.rate=120 to 169 by 1 lb/in", "front.spring.rate=131 to 170 by 1 lb/in", "rear.damper.extension.set=0 to 9 by 1"];
        VariationResult variations = VariationReader.Read(scenario, vary, "--vary");
        if (variations.Errors.Count > 0)
        {
            Console.Error.WriteLine(string.Join('\n', variations.Errors));
            return 2;
        }

        var study = new Study { Name = scenario.Name, SourceFile = file, Scenario = scenario, Variations = variations.Variations, Aims = scenario.Aims, Budget = null };
        GridPlan plan = GridPlan.Of(study, new SetUpGrid(variations.Variations), aims, BestCollector.Figures, GridPlan.Tolerance);
        int cores = Environment.ProcessorCount;
        _ = Seconds(() => Grid(plan, 2000, cores));
        double one = 3000 / Fastest(() => Grid(plan, 3000, 1)), all = 6000 / Fastest(() => Grid(plan, 6000, cores));
        double best = Fastest(() =>
        {
            var collector = new BestCollector(plan, true);
            GridRunner.Run(plan, 0, plan.Grid.Count, cores, collector.Add, CancellationToken.None);
            _ = collector.Result();
        });
        var doubt = new DoubtPlan(scenario, aims, new DoubtSettings { Cars = 2000, Threads = cores });
        double bands = Fastest(() =>
        {
            using DoubtStudy cars = DoubtStudy.Open(doubt, "benchmark", Studies.Running.Shard.Whole, null, false);
            _ = cars.Run(true, _ => { }, CancellationToken.None);
        });
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{{\"cores\": {cores}, \"launches_per_second_one_core\": {one:0}, \"launches_per_second_all_cores\": {all:0}, \"share_of_ideal\": {all / (one * cores):0.00}, \"best_{plan.Grid.Count}_s\": {best:0.00}, \"doubt_2000_with_bands_s\": {bands:0.00}}}"));
        return 0;
    }

    private static void Grid(GridPlan plan, long count, int threads) => GridRunner.Run(plan, 0, count, threads, _ => { }, CancellationToken.None);

    private static double Fastest(Action work) => Enumerable.Range(0, Rounds).Min(_ => Seconds(work));

    private static double Seconds(Action work)
    {
        long start = Stopwatch.GetTimestamp();
        work();
        return Stopwatch.GetElapsedTime(start).TotalSeconds;
    }
}
