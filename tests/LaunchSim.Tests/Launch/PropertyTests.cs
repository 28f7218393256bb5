using System.Globalization;
using CsCheck;
using LaunchSim.Dynamics;
using LaunchSim.Launch;
using LaunchSim.Tests.Cars;
using LaunchSim.Vehicle;

namespace LaunchSim.Tests.Launch;

/// <summary>What must hold of any launch whatever its numbers.</summary>
public class PropertyTests
{
    [Fact]
    public void Launch_SplitAnywhere_EqualsTheWhole() => Gen.Select(RandomCar.Any, Gen.Double[0.05, 0.95]).Sample(
        (car, share) =>
        {
            // Two runs with other steps: equal within what the tolerance of 1e-11 leaves after a second.
            LaunchRunner runner = LaunchRunner.Create(StandingCar.Find(car), 1e-11);
            LaunchEnd whole = runner.Run(new RunSettings { Duration = 0.6 });
            double[] end = runner.State.ToArray();
            Modes modes = runner.Modes;
            double middle = share * whole.Time;
            runner.Run(new RunSettings { Duration = middle });
            LaunchEnd rest = runner.Continue(middle, runner.State.ToArray(), runner.Modes, new RunSettings { Duration = 0.6 });
            Assert.Equal(whole.Status, rest.Status);
            Assert.Equal(whole.Time, rest.Time, 1e-9);
            Assert.InRange(ConvergenceTests.Error(runner.State.ToArray(), end), 0, 1e-8);
            Assert.Equal(modes.Gear, runner.Modes.Gear);
            Assert.Equal(modes.Clutch, runner.Modes.Clutch);
        },
        iter: 100);

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(8)]
    public void Launch_OnAnyNumberOfThreads_IsTheSameToTheBit(int threads)
    {
        Car[] cars = [DoorCar.Create(), .. RandomCar.Series(Bars.FourLink, Power.Clutch, 3), .. RandomCar.Series(Bars.Ladder, Power.Converter, 3)];
        StandingCar[] standing = cars.Select(StandingCar.Find).ToArray();
        long[][] alone = standing.Select(Bits).ToArray();
        var together = new long[cars.Length * 6][];
        Parallel.For(0, together.Length, new ParallelOptions { MaxDegreeOfParallelism = threads }, i => together[i] = Bits(standing[i % cars.Length]));
        for (int i = 0; i < together.Length; i++)
        {
            Assert.Equal(alone[i % cars.Length], together[i]);
        }
    }

    [Fact]
    public void Launch_InAnyCulture_IsTheSameToTheBit()
    {
        long[] here = Bits(StandingCar.Find(DoorCar.Create()));
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal("1,5", 1.5.ToString()); // the culture is really there
            Assert.Equal(here, Bits(StandingCar.Find(DoorCar.Create())));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Launch_OfAUsedRunner_IsTheSameToTheBit()
    {
        StandingCar standing = StandingCar.Find(RandomCar.Series(Bars.FourLink, Power.Clutch, 1).Single());
        LaunchRunner runner = LaunchRunner.Create(standing, 1e-8);
        var settings = new RunSettings { Duration = 1 };
        runner.Run(settings);
        double[] first = runner.State.ToArray();
        runner.Run(new RunSettings { Marks = [1] });
        runner.Run(settings);
        Assert.Equal(first, runner.State.ToArray());
        LaunchSolution solution = runner.Solve(settings);
        Assert.Equal(first, runner.State.ToArray());
        var end = new double[StateLayout.Count];
        solution.StateAt(solution.Steps - 1, solution.Duration, end);
        Assert.InRange(ConvergenceTests.Error(end, first), 0, 1e-14);
    }

    public static TheoryData<double, double> Sizes => new() { { 1, 3 }, { 0.5, 0.125 }, { 2.5, 7 } };

    [Theory]
    [MemberData(nameof(Sizes))]
    public void Launch_OfACarOfAnotherSizeAndWeight_IsTheSameInItsOwnMeasure(double length, double mass)
    {
        // Froude's similarity: with gravity given, lengths ×λ, masses ×μ and times ×√λ go together. Only the model's two
        // fixed speeds break it: rolling resistance is left out, and there is no engine. Step control sees other scales:
        // equal within what a tolerance of 1e-11 leaves.
        Car car = DoorCar.Create();
        car = car with
        {
            Front = car.Front with { Tire = car.Front.Tire with { RollingResistance = 0 } },
            Rear = car.Rear with { Tire = car.Rear.Tire with { RollingResistance = 0, Pressure = null } },
        };
        double time = Math.Sqrt(length);
        LaunchSolution one = LaunchRunner.Create(StandingCar.Find(car), 1e-11).Solve(new RunSettings { Duration = 0.8 });
        LaunchSolution other = LaunchRunner.Create(StandingCar.Find(Similar.Of(car, length, mass)), 1e-11).Solve(new RunSettings { Duration = 0.8 * time });
        for (int i = 0; i <= 80; i++)
        {
            double t = i / 100.0;
            one.At(t, out Observation a);
            other.At(t * time, out Observation b);
            Assert.Equal(a.Distance, b.Distance / length, 1e-8);
            Assert.Equal(a.Separation, b.Separation / length, 1e-8);
            Assert.Equal(a.FrontTravel, b.FrontTravel / length, 1e-8);
            Assert.Equal(a.Pitch, b.Pitch, 1e-8);
            Assert.Equal(a.RearSlipRatio, b.RearSlipRatio, 1e-7);
            Assert.Equal(a.RearLoad, b.RearLoad / mass, 1e-2);
            Assert.Equal(a.Work, b.Work / mass / length, 1e-2);
        }
    }

    [Fact]
    public void Separation_WithStifferRearExtension_IsNeverGreater()
    {
        // A property of the family that ships; no theorem. Peaks from the dense solution, 0.5 ms apart: they are flat.
        foreach (double height in new[] { 13.0, 13.8, 14.6, 15.4 })
        {
            double before = double.PositiveInfinity;
            foreach (double stiffness in new[] { 0.25, 0.5, 0.75, 1, 1.5, 2, 3, 5, 8 })
            {
                Car car = DoorCar.WithUpperPivotAt(height);
                var tables = (DamperTables)car.Rear.Damper;
                car = car with { Rear = car.Rear with { Damper = tables with { Extension = tables.Extension.Scaled(stiffness) } } };
                double peak = PeakSeparation(LaunchRunner.Create(StandingCar.Find(car), 1e-8).Solve(new RunSettings { Duration = 1 }));
                Assert.True(peak <= before + 1e-6, $"pivot at {height} in, extension ×{stiffness}: {peak * 1000:F3} mm after {before * 1000:F3} mm");
                before = peak;
            }
        }
    }

    internal static double PeakSeparation(LaunchSolution launch)
    {
        double peak = double.NegativeInfinity;
        for (int i = 0; i <= 2000 * launch.Duration; i++)
        {
            launch.At(i / 2000.0, out Observation seen);
            peak = Math.Max(peak, seen.Separation);
        }

        return peak;
    }

    private static long[] Bits(StandingCar car)
    {
        LaunchRunner runner = LaunchRunner.Create(car, 1e-8);
        LaunchSolution launch = runner.Solve(new RunSettings { Duration = 0.5 });
        var bits = new List<long>(runner.State.ToArray().Select(BitConverter.DoubleToInt64Bits));
        for (int i = 0; i <= 20; i++)
        {
            launch.At(i / 20.0 * launch.Duration, out Observation seen);
            bits.Add(BitConverter.DoubleToInt64Bits(seen.RearLoad));
            bits.Add(BitConverter.DoubleToInt64Bits(seen.EnergyResidual));
        }

        return [.. bits];
    }
}
