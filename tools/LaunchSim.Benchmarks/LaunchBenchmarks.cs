using BenchmarkDotNet.Attributes;
using LaunchSim.Figures;
using LaunchSim.Launch;

namespace LaunchSim.Benchmarks;

/// <summary>One launch of one second: bare, kept, sampled, and read.</summary>
[MemoryDiagnoser]
public class LaunchBenchmarks
{
    private LaunchRunner _runner = null!;
    private LaunchSolution _solution = null!;

    /// <summary>Relative tolerance.</summary>
    [Params(1e-6, 1e-8)]
    public double Tolerance { get; set; }

    /// <summary>Reads the shipped example.</summary>
    [GlobalSetup]
    public void ReadCar()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "scenarios", "door-car.yaml")))
        {
            folder = Path.GetDirectoryName(folder);
        }

        StandingCar car = Cars.Read(Path.Combine(folder ?? ".", "scenarios", "door-car.yaml"))
            ?? throw new InvalidOperationException("The example car cannot be read.");
        _runner = LaunchRunner.Create(car, Tolerance);
        _solution = _runner.Solve(Cars.OneSecond);
    }

    /// <summary>The launch alone.</summary>
    [Benchmark(Baseline = true)]
    public LaunchEnd Launch() => _runner.Run(Cars.OneSecond);

    /// <summary>The launch with its dense course kept.</summary>
    [Benchmark]
    public LaunchSolution LaunchKept() => _solution = _runner.Solve(Cars.OneSecond, _solution);

    /// <summary>The trace alone, 1 ms.</summary>
    [Benchmark]
    public Trace Sample() => Trace.Of(_solution, 1e-3);

    /// <summary>The figures alone.</summary>
    [Benchmark]
    public FigureSet ReadFigures() => LaunchFigures.Read(_solution, Cars.OneSecond);
}
