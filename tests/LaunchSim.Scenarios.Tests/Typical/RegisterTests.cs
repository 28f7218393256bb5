using CsCheck;
using LaunchSim.Launch;
using LaunchSim.Scenarios.Paths;
using LaunchSim.Scenarios.Schema;
using LaunchSim.Scenarios.Typical;
using LaunchSim.Scenarios.Units;
using LaunchSim.Vehicle;

namespace LaunchSim.Scenarios.Tests.Typical;

public class RegisterTests
{
    // What is set and not measured, what only adds to the report, and what the car may have besides.
    private static readonly string[] NotInTheRegister = ["aims", "car.ballast", "rear.linkage.pinion_angle", "driveline.power", "track.distance", "run.duration", "run.sample", "run.tolerance", "run.marks", "front.damper.extension.set", "front.damper.compression.set", "rear.damper.extension.set", "rear.damper.compression.set"];

    public static TheoryData<string> Paths => [.. TypicalRegister.All.Select(entry => entry.Path)];

    [Fact]
    public void Register_HasEveryNumberRowAndPointOfTheScenario()
    {
        IEnumerable<string> known = ScenarioPath.Known.Where(pair => pair.Value.Kind is NumberKind or RowKind or PointKind).Select(pair => pair.Key);
        string[] left = [.. known.Where(path => TypicalRegister.Find(path) is null && !NotInTheRegister.Any(other => path == other || path.StartsWith(other + ".", StringComparison.Ordinal) || path.StartsWith(other + "[", StringComparison.Ordinal)))];
        Assert.Empty(left);
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public void Entry_Always_SaysWhatItRestsOn(string path)
    {
        RegisterEntry entry = TypicalRegister.Find(path)!;
        Assert.True(entry.EnteredDoubt is null or { Size: > 0 });
        Assert.NotEmpty(entry.What);
        if (entry is TypicalValue typical)
        {
            Assert.True(typical.Doubt is null or { Size: > 0 });
            Assert.NotEmpty(typical.Source);
            Assert.NotEmpty(typical.Formula);
            Assert.False(typical.Formula.EndsWith('.'));
            Assert.True(!typical.IsRow || typical.Doubt is null or { IsShare: true }, "a row is scaled as a whole");
        }
        else if (entry is MeasuredValue)
        {
            Assert.NotNull(entry.HomeTest);
        }

        Assert.True(entry.HomeTest is null || (entry.HomeTest.How.EndsWith('.') && entry.HomeTest.Takes.Length > 0 && !entry.HomeTest.Takes.EndsWith('.')));
    }

    [Theory]
    [InlineData(UnitSystem.Shop)]
    [InlineData(UnitSystem.Si)]
    public void TypicalText_OfMeasuredCars_ReadsBackWithinItsDoubt(UnitSystem system) => MeasuredCar.Gen.Sample(car =>
    {
        KnownCar known = car.Known();
        foreach (TypicalValue typical in TypicalRegister.All.OfType<TypicalValue>())
        {
            TypicalEstimate estimate = typical.For(known) ?? throw new InvalidOperationException($"{typical.Path} lacks {string.Join(", ", typical.Lacks(known))}");
            string text = estimate.Text(system);
            Assert.True(Quantity.TryParse(text, typical.Kind, out Quantity? read, out string problem), $"{typical.Path}: {text}: {problem}");
            Assert.Equal(estimate.Values.Count, read!.Count);
            for (int i = 0; i < read.Count; i++)
            {
                // Two figures are never more than five percent away.
                Assert.InRange(read.Si(i), Math.Min(0.95 * estimate.Values[i], 1.05 * estimate.Values[i]) - 1e-12, Math.Max(0.95 * estimate.Values[i], 1.05 * estimate.Values[i]) + 1e-12);
            }

            Assert.Equal(typical is { IsRow: true, Doubt: not null }, read.RowDoubtPercent is not null);
            Assert.Equal(typical is { IsRow: false, Doubt: not null }, read.SiDoubt() is not null);
        }
    }, iter: 200);

    [Fact]
    public void TypicalValues_OfMeasuredCars_AreUsual() => MeasuredCar.Gen.Sample(car =>
    {
        KnownCar known = car.Known();
        foreach (TypicalValue typical in TypicalRegister.All.OfType<TypicalValue>())
        {
            double[] values = [.. typical.For(known)!.Values];
            foreach (UsualSpan span in typical.UsualFor(known))
            {
                double judged = span.Part == ".up" ? values[1] : typical.Usual!.Judged(new KnownReading(known), values);
                Assert.True(span.Holds(judged), $"{typical.Path}{span.Part}: {judged} outside {span.Low} to {span.High}");
            }
        }
    }, iter: 200);

    [Fact]
    public void ScenarioOfMeasuredAndTypicalValues_OfAnyMeasuredCar_StandsAndLaunches() => MeasuredCar.Gen.Sample(car =>
    {
        foreach (UnitSystem system in new[] { UnitSystem.Shop, UnitSystem.Si })
        {
            var reader = new ScenarioReader { CarCheck = StandingCheck.OfCar, WarnsOfUnusual = true };
            ReadResult read = reader.ReadText(car.Text(system), "measured.yaml");
            Assert.True(read.Scenario is not null && read.Warnings.Count == 0, string.Join('\n', read.Errors.Concat(read.Warnings)) + "\n" + car.Text(system));
            LaunchSolution solution = LaunchSimulation.Solve(read.Scenario!.Car!, new RunSettings { Duration = 0.2, Tolerance = 1e-6 });
            Assert.Null(LaunchFailure.Of(solution));
        }
    }, iter: 30);

    [Fact]
    public void TypicalValue_WithoutWhatItComesFrom_SaysWhatItLacks()
    {
        var nothing = new KnownCar(new Dictionary<string, Quantity>());
        var inertia = (TypicalValue)TypicalRegister.Find("car.pitch_inertia")!;
        Assert.Null(inertia.For(nothing));
        Assert.Equal(["car.scales.front", "car.scales.rear", "car.wheelbase", "front.tire.loaded_radius", "rear.tire.loaded_radius"], inertia.Lacks(nothing).Order());
        Assert.Empty(inertia.UsualFor(nothing));
    }

    [Fact]
    public void MeasuredValues_AreTheOnlyThingsLacked()
    {
        var nothing = new KnownCar(new Dictionary<string, Quantity>());
        foreach (TypicalValue typical in TypicalRegister.All.OfType<TypicalValue>())
        {
            Assert.All(typical.Lacks(nothing), path => Assert.IsType<MeasuredValue>(TypicalRegister.Find(path)));
        }
    }
}
