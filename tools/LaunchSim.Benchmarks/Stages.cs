using System.Diagnostics;
using System.Globalization;
using LaunchSim.Figures;
using LaunchSim.Launch;
using LaunchSim.Vehicle;

namespace LaunchSim.Benchmarks;

/// <summary>What each stage of one launch of a study takes, in microseconds and bytes, one stage a line.</summary>
internal static class Stages
{
    private const int Rounds = 400;
    private const double RoundSeconds = 0.004;
    private const double ThroughputSeconds = 3;

    /// <summary>What studies ask of every launch.</summary>
    private static readonly string[] StudyKeys =
    [
        "standing_anti_squat_percent", "rear_tire_load_static_n", "rise_lag_s", "front_rise_peak_m", "rear_rise_peak_m", "gap_lag_s",
        "separation_peak_m", "separation_peak_travel_left_m", "squat_peak_m", "hit_n", "hit_time_s", "lowest_rear_load_after_hit_n",
        "load_unrest_n", "grip_margin_lowest_ratio", "slip_beyond_peak_time_s", "front_tire_leaves_s",
        "front_top_stop_first_s", "front_top_stop_force_n", "front_bottom_stop_first_s", "front_bottom_stop_force_n",
        "rear_top_stop_first_s", "rear_top_stop_force_n", "rear_bottom_stop_first_s", "rear_bottom_stop_force_n",
        "acceleration_largest_mps2", "pitch_nose_up_largest_rad", "run_end_s",
    ];

    public static int Run(string file)
    {
        if (Cars.Read(file) is not { } standing)
        {
            return 2;
        }

        Car car = standing.Car;
        RunSettings settings = Cars.OneSecond;
        LaunchRunner runner = LaunchRunner.Create(standing, 1e-6);
        LaunchSolution solution = runner.Solve(settings);
        using var reader = new FigureReader(FigureSelection.Of(settings.Marks.Count, StudyKeys));
        var values = new double[StudyKeys.Length];
        Print("standing car", () => StandingCar.Find(car));
        Print("runner, new", () => LaunchRunner.Create(standing, 1e-6));
        Print("launch, not kept", () => runner.Run(settings));
        Print("launch, kept", () => solution = runner.Solve(settings, solution));
        Print("all figures", () => LaunchFigures.Read(solution, settings));
        Print("study's figures", () => reader.Read(solution, settings, values));
        Print("all of it, from car to figures", () =>
        {
            LaunchRunner next = LaunchRunner.Create(StandingCar.Find(car), 1e-6);
            solution = next.Solve(settings, solution);
            reader.Read(solution, settings, values);
        });
        foreach (string key in StudyKeys)
        {
            using var one = new FigureReader(FigureSelection.Of(settings.Marks.Count, [key]));
            Print($"  {key} alone", () => one.Read(solution, settings, values));
        }

        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture, $"{Throughput(car, settings):0} launches a second from car to figures, on {Environment.ProcessorCount} cores"));
        return 0;
    }

    /// <summary>Launches a second on all cores, each thread with memory of its own.</summary>
    private static double Throughput(Car car, RunSettings settings)
    {
        var clock = Stopwatch.StartNew();
        var counts = new long[Environment.ProcessorCount];
        Thread[] workers = [.. Enumerable.Range(0, counts.Length).Select(index => new Thread(() =>
        {
            using var reader = new FigureReader(FigureSelection.Of(settings.Marks.Count, StudyKeys));
            var values = new double[StudyKeys.Length];
            LaunchSolution? kept = null;
            for (; clock.Elapsed.TotalSeconds < ThroughputSeconds; counts[index]++)
            {
                kept = LaunchRunner.Create(StandingCar.Find(car), 1e-6).Solve(settings, kept);
                reader.Read(kept, settings, values);
            }
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

    /// <summary>Shortest mean time of some rounds: others who use the machine only make it longer.</summary>
    private static void Print(string name, Action stage)
    {
        var clock = Stopwatch.StartNew();
        long count = 0;
        while (clock.Elapsed.TotalSeconds < 0.5)
        {
            stage();
            count++;
        }

        Thread.Sleep(100);
        int calls = Math.Max(1, (int)(count * RoundSeconds / 0.5));
        double shortest = double.PositiveInfinity;
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int round = 0; round < Rounds; round++)
        {
            long start = Stopwatch.GetTimestamp();
            for (int i = 0; i < calls; i++)
            {
                stage();
            }

            shortest = Math.Min(shortest, Stopwatch.GetElapsedTime(start).TotalMicroseconds / calls);
        }

        double bytes = (GC.GetAllocatedBytesForCurrentThread() - before) / ((double)Rounds * calls);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name,-48} {shortest,9:0.0} us {bytes,10:0} bytes"));
    }
}
