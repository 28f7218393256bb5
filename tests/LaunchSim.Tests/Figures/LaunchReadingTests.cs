using LaunchSim.Figures;
using LaunchSim.Launch;
using Xunit;

namespace LaunchSim.Tests.Figures;

public sealed class LaunchReadingTests(DoorCarLaunch launch) : IClassFixture<DoorCarLaunch>
{
    private const int PerMillisecond = 20;

    public static TheoryData<Signal> Signals => [.. Enum.GetValues<Signal>().Where(s => s != Signal.EnergyResidual)];

    [Theory]
    [MemberData(nameof(Signals))]
    public void Extrema_AnySignal_HoldAgainstFineSampling(Signal signal)
    {
        using var reading = new LaunchReading(launch.Solution, DoorCarLaunch.Settings);
        Extremum largest = reading.Largest(signal), smallest = reading.Smallest(signal);
        double most = double.NegativeInfinity, least = double.PositiveInfinity;
        foreach ((int step, double time) in FineSamples(launch.Solution))
        {
            double value = reading.At(signal, step, time);
            (most, least) = (Math.Max(most, value), Math.Min(least, value));
        }

        double swing = most - least;
        Assert.InRange(largest.Value, most - (1e-12 * swing), most + (1e-4 * swing));
        Assert.InRange(smallest.Value, least - (1e-4 * swing), least + (1e-12 * swing));
        Assert.Equal(largest.Value, reading.At(signal, largest.Step, largest.Time), 1e-12 * swing);
    }

    [Fact]
    public void Largest_BetweenNodes_IsFoundThere()
    {
        using var reading = new LaunchReading(launch.Solution, DoorCarLaunch.Settings);
        Extremum hit = reading.Largest(Signal.RearLoad, 0, 0.3);
        double atNodes = double.NegativeInfinity;
        for (int i = 0; i < reading.Nodes && reading.Times[i] <= 0.3; i++)
        {
            atNodes = Math.Max(atNodes, reading.Column(Signal.RearLoad)[i]);
        }

        // Second differences say how flat the top is: an extremum to 1e-8 s is right to far less than a millinewton.
        double around = Math.Max(reading.At(Signal.RearLoad, hit.Time - 2e-7), reading.At(Signal.RearLoad, hit.Time + 2e-7));
        Assert.True(hit.Value > atNodes);
        Assert.True(hit.Value >= around);
        Assert.Equal(around, hit.Value, 1e-5);
    }

    [Theory]
    [InlineData(0.07035, 0.09117)]
    [InlineData(0.3333, 0.5121)]
    [InlineData(0.10001, 0.10002)]
    [InlineData(0.9, 7)]
    public void Extrema_WindowOffTheNodes_StayInside(double from, double to)
    {
        using var reading = new LaunchReading(launch.Solution, DoorCarLaunch.Settings);
        Extremum largest = reading.Largest(Signal.RearLoad, from, to), smallest = reading.Smallest(Signal.RearLoad, from, to);
        double end = Math.Min(to, 1), most = double.NegativeInfinity, least = double.PositiveInfinity;
        for (int i = 0; i <= 2000; i++)
        {
            double value = reading.At(Signal.RearLoad, from + ((end - from) * i / 2000));
            (most, least) = (Math.Max(most, value), Math.Min(least, value));
        }

        Assert.InRange(largest.Time, from, end);
        Assert.InRange(smallest.Time, from, end);
        Assert.InRange(largest.Value, most - 1e-8, most + 1e-2);
        Assert.InRange(smallest.Value, least - 1e-2, least + 1e-8);
    }

    [Fact]
    public void Largest_WindowBehindTheEnd_DoesNotExist()
    {
        using var reading = new LaunchReading(launch.Solution, DoorCarLaunch.Settings);
        Assert.False(reading.Largest(Signal.RearLoad, 2, 3).Exists);
        Assert.True(double.IsNaN(reading.At(Signal.RearLoad, 2)));
    }

    [Fact]
    public void FirstAt_LevelBetweenNodes_IsOnTheLevel()
    {
        using var reading = new LaunchReading(launch.Solution, DoorCarLaunch.Settings);
        double time = reading.FirstAt(Signal.FrontRise, 0.05);
        Assert.Equal(0.05, reading.At(Signal.FrontRise, time), 1e-11);
        Assert.True(reading.At(Signal.FrontRise, time - 1e-9) < 0.05);
        Assert.True(double.IsNaN(reading.FirstAt(Signal.FrontRise, 10)));
    }

    [Fact]
    public void TimeAbove_DamperSpeed_AgreesWithFineSampling()
    {
        using var reading = new LaunchReading(launch.Solution, DoorCarLaunch.Settings);
        const int samples = 100_000;
        int above = 0;
        for (int i = 0; i < samples; i++)
        {
            above += reading.At(Signal.RearDamperSpeed, (i + 0.5) / samples) > 0.0127 ? 1 : 0;
        }

        // Each crossing may be off by a sample.
        Assert.Equal((double)above / samples, reading.TimeAbove(Signal.RearDamperSpeed, 0.0127), 2e-4);
    }

    [Fact]
    public void Nodes_ChangeOfModes_HaveBothSides()
    {
        using var reading = new LaunchReading(launch.Solution, DoorCarLaunch.Settings);
        double touch = LaunchFigures.Read(launch.Solution, DoorCarLaunch.Settings).Events.First(LaunchEventKind.FrontTopStop)!.Value.Time;
        int first = reading.Times.IndexOf(touch);
        Assert.Equal(touch, reading.Times[first + 1]);
        Assert.Equal(0, reading.Column(Signal.FrontTopForce)[first]);

        // The stop's damper pushes at once.
        Assert.True(reading.Column(Signal.FrontTopForce)[first + 1] > 100);
        Assert.True(reading.Largest(Signal.FrontTopForce, 0, touch).Value > 100);
    }

    private static IEnumerable<(int Step, double Time)> FineSamples(LaunchSolution solution)
    {
        for (int step = 0; step < solution.Steps; step++)
        {
            (double start, double end) = solution.Step(step);
            int count = 1 + (int)Math.Ceiling((end - start) * 1e3 * PerMillisecond);
            for (int i = 0; i <= count; i++)
            {
                yield return (step, start + ((end - start) * i / count));
            }
        }
    }
}
