using System.Globalization;
using LaunchSim.Figures;
using LaunchSim.Launch;
using LaunchSim.Passes.Fitting;
using LaunchSim.Passes.Measured;
using LaunchSim.Passes.Torque;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Doubtful;
using LaunchSim.Vehicle;
using Xunit.Abstractions;

namespace LaunchSim.Passes.Tests.Torque;

public sealed class TorqueTests(ITestOutputHelper output)
{
    private const double FootPound = 1.3558179483314;

    [Fact]
    public void OfLogs_KnownCarWithNoise_FindsItsTable()
    {
        Scenario file = Read("door-car.yaml");
        Scenario truth = file.With([("driveline.torque", "0 3300 4700 4300 4500 lb-ft")]).Scenario!;
        TorqueResult result = TorqueFromLogs.Solve(file, [Log(truth, 1, ["driveshaft_speed", "acceleration"])], 2, default);
        Tell(result);
        double[] true_ = ((AxleTorque)truth.Car!.Driveline).Torque.Y.ToArray();
        Assert.Equal(true_.Length, result.Row.Torques.Count);

        // The model is the truth here: within the noise's own part of the doubt all of it, and nowhere far off.
        for (int k = 0; k < true_.Length; k++)
        {
            Assert.Equal(true_[k], result.Row.Torques[k], result.Row.HalfWidths[k]);
        }

        Assert.All(result.Channels, channel => Assert.InRange(channel.After, 0.7, 1.4));
        Assert.Contains(result.Channels, channel => channel.Before > 3);
        Assert.True(result.Row.Percent < 25);
    }

    [Theory]
    [InlineData("door-car.yaml")]
    [InlineData("ladder-bar.yaml")]
    public void OfLogs_CarsThatAreOffByTheirDoubt_NineOfTenPointsLieWithin(string name)
    {
        Scenario file = Read(name);
        var random = new Random(11);
        int within = 0, all = 0;
        for (int i = 0; i < 12; i++)
        {
            // Each doubtful number is off by a draw from its doubt, and the torque is another one.
            Scenario truth = Drawn(file, random);
            double[] torque = ((AxleTorque)truth.Car!.Driveline).Torque.Y.ToArray();
            TorqueResult result = TorqueFromLogs.Solve(file, [Log(truth, i + 1, ["driveshaft_speed", "acceleration"])], 2, default);
            for (int k = 0; k < result.Row.Torques.Count; k++)
            {
                within += Math.Abs(result.Row.Torques[k] - torque[k]) <= result.Row.HalfWidths[k] ? 1 : 0;
                all++;
            }
        }

        output.WriteLine($"{name}: {within} of {all}");
        Assert.True(within >= 0.9 * all, $"{within} of {all}");
    }

    [Fact]
    public void OfLogs_EngineCar_GivesTheAxleTorqueThatItHad()
    {
        Scenario file = Read("clutch-car.yaml");
        TorqueResult result = TorqueFromLogs.Solve(file, [Log(file, 3, ["wheel_speed", "front_wheel_speed"])], 2, default);
        Tell(result);
        LaunchSolution launch = LaunchSimulation.Solve(file.Car!, file.Run with { Duration = 1.2 });
        for (int k = 1; k + 1 < result.Row.At.Count; k++)
        {
            // A straight line between the table's times stands for a course that bends.
            launch.At(result.Row.At[k], out Dynamics.Observation seen);
            Assert.Equal(seen.AxleTorque, result.Row.Torques[k], result.Row.HalfWidths[k] + (0.15 * seen.AxleTorque));
        }
    }

    [Fact]
    public void OfLogs_NothingThatTells_IsRefused()
    {
        Scenario file = Read("door-car.yaml");
        Assert.Throws<TorqueException>(() => TorqueFromLogs.Solve(file, [Log(file, 1, ["rear_ride_height"])], 1, default));
        Assert.Throws<TorqueException>(() => TorqueFromLogs.Solve(file, [], 1, default));
    }

    [Theory]
    [InlineData("door-car.yaml", 0.85)]
    [InlineData("door-car.yaml", 1.03)]
    [InlineData("ladder-bar.yaml", 0.9)]
    [InlineData("converter-car.yaml", 0.9)]
    public void OfTime_TimeOfAKnownTorque_GivesItsFactor(string name, double factor)
    {
        Scenario file = Read(name);
        string path = file.Car!.Driveline is EngineDriveline ? "driveline.engine.torque" : "driveline.torque";
        double[] own = file.Find(path)!.Numbers.ToArray();
        string unit = file.Find(path)!.Unit.Text;
        Scenario truth = file.With([(path, string.Join(' ', own.Select(torque => (torque * factor).ToString("R", CultureInfo.InvariantCulture))) + " " + unit)]).Scenario!;
        RunSettings settings = truth.Run with { Marks = [18.288], Duration = 4 };
        double time = LaunchFigures.Read(LaunchSimulation.Solve(truth.Car!, settings), settings)["mark_1_beam_time_s"]!.Value;
        TorqueResult result = TorqueFromTime.Solve(file, 18.288, time, 0.005, default);
        output.WriteLine($"{name}: {time:F3} s, {result.Factor:F4} for {factor}, ±{result.Row.Percent:F0} %: {string.Join("; ", result.Causes.Take(4).Select(cause => $"{cause.Words} {cause.Percent:F1}"))}");
        Assert.Equal(factor, result.Factor!.Value, 2e-4);
        Assert.True(result.Row.Percent > 100 * TorqueFromTime.ShapeDoubt);
        Assert.Contains("one time alone", result.Notes[0], StringComparison.Ordinal);
    }

    [Fact]
    public void OfTime_NearlyTheQuickestOfAll_IsStillMet()
    {
        // At 1.1 of the torque this car is about as quick as its tyres let it be: the scan alone steps over that.
        Scenario file = Read("door-car.yaml");
        double[] own = file.Find("driveline.torque")!.Numbers.ToArray();
        double TimeOf(double factor)
        {
            Scenario scaled = file.With([("driveline.torque", string.Join(' ', own.Select(torque => (torque * factor).ToString("R", CultureInfo.InvariantCulture))) + " lb-ft")]).Scenario!;
            RunSettings settings = scaled.Run with { Marks = [18.288], Duration = 4 };
            return LaunchFigures.Read(LaunchSimulation.Solve(scaled.Car!, settings), settings)["mark_1_beam_time_s"]!.Value;
        }

        double time = TimeOf(1.1);
        TorqueResult result = TorqueFromTime.Solve(file, 18.288, time, 0.005, default);
        Assert.Equal(time, TimeOf(result.Factor!.Value), 1e-4);
        Assert.Contains(result.Notes, note => note.Contains("the tyres spin", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0.9, "quicker than any torque")]
    [InlineData(9, "slower than with a quarter")]
    public void OfTime_TimeThatNoTorqueGives_IsRefused(double time, string expected)
    {
        var exception = Assert.Throws<TorqueException>(() => TorqueFromTime.Solve(Read("door-car.yaml"), 18.288, time, 0.01, default));
        Assert.Contains(expected, exception.Message, StringComparison.Ordinal);
    }

    private void Tell(TorqueResult result)
    {
        for (int k = 0; k < result.Row.At.Count; k++)
        {
            output.WriteLine($"{result.Row.At[k]:F3} s {result.Row.Torques[k] / FootPound:F0} ±{result.Row.HalfWidths[k] / FootPound:F0} lb-ft, file {result.Own[k] / FootPound:F0}");
        }

        output.WriteLine($"±{result.Row.Percent:F1} %; {string.Join("; ", result.Causes.Take(6).Select(cause => $"{cause.Words} {cause.Percent:F2}"))}");
        foreach (TorqueChannel channel in result.Channels)
        {
            output.WriteLine($"{channel.Words}: {channel.Before:F1} → {channel.After:F2}");
        }

        foreach (string note in result.Notes)
        {
            output.WriteLine(note);
        }
    }

    private static FitLog Log(Scenario truth, int seed, string[] keys)
    {
        var random = new Random(seed);
        LaunchSolution launch = LaunchSimulation.Solve(truth.Car!, truth.Run with { Duration = 1.2 });
        double late = 0.002 * Normal(random);
        return new FitLog("log", [.. keys.Select(key =>
        {
            MeasuredQuantity quantity = MeasuredQuantities.Find(key)!;
            double[] times = [.. Enumerable.Range(0, 110).Select(i => 0.01 * i)];
            double[] values = [.. times.Select(time =>
            {
                launch.At(Math.Clamp(time - late, 0, launch.Duration), out Dynamics.Observation seen);
                return quantity.Predicted(seen, launch.Car) + (quantity.Noise * Normal(random));
            })];
            return new MeasuredSeries(quantity, times, values, quantity.Noise, "made.csv, column " + key);
        })], 0.002);
    }

    private static Scenario Drawn(Scenario file, Random random)
    {
        while (true)
        {
            List<ScenarioEdit> edits = [];
            foreach (DoubtfulNumber number in DoubtfulNumbers.Of(file).Where(number => !number.Path.StartsWith("driveline.", StringComparison.Ordinal)))
            {
                edits.AddRange(number.Edits(Math.Clamp(Normal(random) / 2, -1, 1)));
            }

            KeptTireShape.Keep(file, edits);
            Scenario? moved = file.With(edits).Scenario;
            double[] own = file.Find("driveline.torque")!.Numbers.ToArray();
            string torque = string.Join(' ', own.Select(one => (one * (1 + (0.15 * Normal(random)))).ToString("R", CultureInfo.InvariantCulture))) + " " + file.Find("driveline.torque")!.Unit.Text;
            if (moved?.With([("driveline.torque", torque)]).Scenario is { } truth && LaunchFailure.Of(LaunchSimulation.Solve(truth.Car!, truth.Run with { Duration = 1.2 })) is null)
            {
                return truth;
            }
        }
    }

    private static Scenario Read(string name)
    {
        string folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "LaunchSim.sln")))
        {
            folder = Path.GetDirectoryName(folder)!;
        }

        ReadResult read = StandingCheck.Reader(ReadPurpose.Run).Read(Path.Combine(folder, "scenarios", name));
        Assert.Empty(read.Errors);
        return read.Scenario!;
    }

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
