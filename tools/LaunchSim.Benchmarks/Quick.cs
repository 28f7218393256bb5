using System.Diagnostics;
using System.Text.Json.Nodes;
using LaunchSim.Integration;
using LaunchSim.Launch;
using LaunchSim.Vehicle;

namespace LaunchSim.Benchmarks;

/// <summary>The figures of <c>docs/performance.md</c> in half a minute, as one line of JSON.</summary>
internal static class Quick
{
    private const int Launches = 2000;
    private const double WarmUpSeconds = 1.5;
    private const double ThroughputSeconds = 3;

    public static int Run(string file)
    {
        if (Cars.Read(file) is not { } car)
        {
            return 2;
        }

        LaunchRunner coarse = LaunchRunner.Create(car, 1e-6), fine = LaunchRunner.Create(car, 1e-8);
        double coarseTime = Median(() => coarse.Run(Cars.OneSecond)), fineTime = Median(() => fine.Run(Cars.OneSecond));
        LaunchSolution? kept = null;
        double traceTime = Median(() =>
        {
            kept = coarse.Solve(Cars.OneSecond, kept);
            Launch.Trace.Of(kept, 1e-3);
        });

        long before = GC.GetAllocatedBytesForCurrentThread();
        LaunchEnd end = coarse.Run(Cars.OneSecond);
        long allocated = GC.GetAllocatedBytesForCurrentThread() - before;
        Statistics cost = end.Statistics;
        Console.WriteLine(new JsonObject
        {
            ["launch_ms_1e6"] = Math.Round(coarseTime, 4),
            ["launch_ms_1e8"] = Math.Round(fineTime, 4),
            ["launch_ms_trace"] = Math.Round(traceTime, 4),
            ["evaluations"] = cost.Evaluations,
            ["event_evaluations"] = cost.EventEvaluations,
            ["events"] = cost.Events,
            ["steps"] = cost.Steps,
            ["rejected"] = cost.Rejected,
            ["allocated_bytes"] = allocated,
            ["launches_per_second"] = Math.Round(Throughput(car)),
            ["cores"] = Environment.ProcessorCount,
            ["completed"] = end.Completed,
        }.ToJsonString());
        return end.Completed ? 0 : 1;
    }

    /// <summary>Median time of one call, ms, once it runs at full optimisation.</summary>
    internal static double Median(Action launch)
    {
        // Two spells with a pause: the compiler works beside the first and is done before the second.
        for (int spell = 0; spell < 2; spell++)
        {
            for (long start = Stopwatch.GetTimestamp(); Stopwatch.GetElapsedTime(start).TotalSeconds < WarmUpSeconds / 2;)
            {
                launch();
            }

            Thread.Sleep(250);
        }

        var times = new double[Launches];
        for (int i = 0; i < times.Length; i++)
        {
            long start = Stopwatch.GetTimestamp();
            launch();
            times[i] = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        }

        Array.Sort(times);
        return times[times.Length / 2];
    }

    /// <summary>Launches a second on all cores, each thread with a runner of its own.</summary>
    private static double Throughput(StandingCar car)
    {
        int threads = Environment.ProcessorCount;
        var counts = new long[threads];
        var clock = Stopwatch.StartNew();
        Thread[] workers = [.. Enumerable.Range(0, threads).Select(index => new Thread(() =>
        {
            LaunchRunner runner = LaunchRunner.Create(car, 1e-6);
            long count = 0;
            while (clock.Elapsed.TotalSeconds < ThroughputSeconds)
            {
                runner.Run(Cars.OneSecond);
                count++;
            }

            counts[index] = count;
        }))];
        foreach (Thread worker in workers)
        {
            worker.Start();
        }

        foreach (Thread worker in workers)
        {
            worker.Join();
        }

        return counts.Sum() / clock.Elapsed.TotalSeconds;
    }
}
