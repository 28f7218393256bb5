using System.Globalization;
using LaunchSim.Scenarios.Paths;
using LaunchSim.Scenarios.Schema;
using LaunchSim.Scenarios.Units;
using LaunchSim.Vehicle;

namespace LaunchSim.Scenarios.Tests.Reading;

public class ScenarioTests
{
    private const double Inch = 0.0254;

    [Theory]
    [InlineData("name: \"a\\n  b\\tc\"", "a b c")]
    [InlineData("name: |\n  a\n  b", "a b")]
    public void Name_OfSeveralLines_ComesOnOne(string written, string name) =>
        Assert.Equal(name, Samples.Read(Files.DoorCarWith("name: Door car, as measured", written)).Name);

    [Fact]
    public void PartFile_ForGeometry_IsReadAndListsWhatARunLacks()
    {
        ReadResult result = new ScenarioReader { Purpose = ReadPurpose.Geometry }.ReadText(Samples.Part, "part.yaml");
        Assert.Empty(result.Errors);
        Scenario scenario = result.Scenario!;
        Assert.Null(scenario.Car);
        Assert.Equal("part", scenario.Name);
        Assert.Equal(105.5 * Inch, scenario.Geometry.Wheelbase, 1e-14);
        Assert.Null(scenario.Geometry.RearLoadedRadius);
        Assert.Equal("b", scenario.Brackets["rear.linkage.upper.body"].Use);
        Assert.Contains("front.spring.rate", scenario.MissingForRun);
        Assert.Contains("rear.tire.carcass.rim_inertia", scenario.MissingForRun);
        Assert.Contains("rear.damper.extension.force", scenario.MissingForRun);
        Assert.Contains("driveline.type", scenario.MissingForRun);
        Assert.DoesNotContain("rear.damper.axle", scenario.MissingForRun);
        Assert.Equal(Inch, scenario.Doubts["car.cg_height"].HalfWidth, 1e-15);
    }

    [Fact]
    public void PartFile_ForARun_NamesEverythingThatIsMissingAtOnce()
    {
        IReadOnlyList<Diagnostic> errors = new ScenarioReader().ReadText(Samples.Part, "part.yaml").Errors;
        Assert.All(errors, error => Assert.Contains("needed for a run", error.Message, StringComparison.Ordinal));
        Assert.Equal(["car.pitch_inertia", "driveline", "front", "name", "rear.damper", "rear.housing_inertia", "rear.spring", "rear.tire", "rear.unsprung"], errors.Select(error => error.Path).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void PartFile_WithAHalfFilledSection_ListsTheRestOfIt()
    {
        Scenario scenario = new ScenarioReader { Purpose = ReadPurpose.Check }.ReadText(Samples.Part + "\n  tire: {loaded_radius: 13.1 in}\nfront: {unsprung: 150 lb}\n", "p").Scenario!;
        Assert.Equal(13.1 * Inch, scenario.Geometry.RearLoadedRadius!.Value, 1e-14);
        Assert.Contains("rear.tire.grip", scenario.MissingForRun);
        Assert.Contains("front.spring.rate", scenario.MissingForRun);
        Assert.DoesNotContain("front.unsprung", scenario.MissingForRun);
    }

    [Fact]
    public void PartFile_WithoutTheLinkage_IsAnErrorForEveryPurpose()
    {
        string text = Samples.Part.Replace("    lower: {axle: 1.0 7.6 in, body: 21.0 9.0 in}\n", "", StringComparison.Ordinal);
        foreach (ReadPurpose purpose in Enum.GetValues<ReadPurpose>())
        {
            Assert.Contains(new ScenarioReader { Purpose = purpose }.ReadText(text, "p").Errors, error => error.Path == "rear.linkage.lower");
        }
    }

    [Fact]
    public void LeftOut_Sections_TakeTheirDefaults()
    {
        string text = Files.DoorCarText;
        foreach (string start in new[] { "  aero:", "  ride_height:", "    - {mass", "  ballast:", "    pinion_angle:", "  wheelie_bar:", "    pressure:", "  power:", "track:", "  duration:", "  sample:", "  tolerance:", "  marks:", "  rollout:", "run:", "      count_from:" })
        {
            int at = text.IndexOf("\n" + start, StringComparison.Ordinal) + 1;
            text = text.Remove(at, text.IndexOf('\n', at) + 1 - at);
        }

        text = text[..text.IndexOf("choices:", StringComparison.Ordinal)];
        Scenario scenario = Samples.Read(text);
        Car car = scenario.Car!;
        Assert.Null(car.Chassis.Aero);
        Assert.Empty(car.Chassis.Ballast);
        Assert.Equal(0, car.Chassis.FrontRideHeight);
        Assert.Null(car.Rear.PinionAngle);
        Assert.Null(car.Rear.WheelieBar);
        Assert.Null(car.Rear.Tire.Pressure);
        Assert.Equal(Table.Constant(1), car.Driveline.PowerShare);
        Assert.Equal(Table.Constant(1), car.TrackGrip);
        Assert.Null(scenario.Run.Duration);
        Assert.Equal((1e-3, 1e-8, 0.0), (scenario.Run.Sample, scenario.Run.Tolerance, scenario.Run.Rollout));
        Assert.Empty(scenario.Run.Marks);
        Assert.Null(scenario.Clicks["rear.damper.extension"].CountFrom);
    }

    [Fact]
    public void Engine_WithClutch_IsRead()
    {
        var engine = Assert.IsType<EngineDriveline>(Samples.Read(Samples.WithDriveline(Samples.EngineClutch)).Car!.Driveline);
        Assert.Equal(4200 * 2 * Math.PI / 60, engine.Engine.LaunchSpeed, 1e-10);
        Assert.Equal([2.10, 1.45, 1.0], engine.Ratios);
        Assert.Equal(2, engine.ShiftAt.Count);
        Assert.Equal(engine.ShiftAt[0], engine.ShiftAt[1]);
        Assert.Equal(0.95, engine.Efficiency);
        Assert.Equal(430 * 1.3558179483314004, Assert.IsType<Clutch>(engine.Coupling).Capacity.At(0.05), 1e-10);
    }

    [Fact]
    public void Engine_WithConverter_IsRead()
    {
        Scenario scenario = Samples.Read(Samples.WithDriveline(Samples.EngineConverter));
        var engine = Assert.IsType<EngineDriveline>(scenario.Car!.Driveline);
        Assert.Equal(1, engine.Efficiency);
        Assert.Equal(6500 * 2 * Math.PI / 60, engine.ShiftAt[1], 1e-10);
        var converter = Assert.IsType<Converter>(engine.Coupling);
        Assert.Equal(190 * 2 * Math.PI / 60 / Math.Sqrt(1.3558179483314004), converter.CapacityFactor.Y[0], 1e-12);
        Assert.Equal(1.55, converter.TorqueRatio.At(0.4));
        Assert.Equal(new Doubt(5, true), scenario.Doubts["driveline.power.share"]);
    }

    [Fact]
    public void Engine_WithASingleGear_NeedsNoShift()
    {
        string text = Samples.WithDriveline(Samples.EngineClutch.Replace("{ratios: 2.10 1.45 1.0, shift_at: 6800 rpm, shift_time: 0.05 s}", "{ratios: 1.8}", StringComparison.Ordinal));
        Assert.Empty(((EngineDriveline)Samples.Read(text).Car!.Driveline).ShiftAt);
    }

    [Fact]
    public void LadderBar_WithHoles_IsRead()
    {
        string text = Files.DoorCarText;
        int from = text.IndexOf("    type: four-link", StringComparison.Ordinal);
        int to = text.IndexOf("  spring:\n    rate: 150 lb/in\n    axle", StringComparison.Ordinal);
        text = text[..from] + "    type: ladder-bar\n    pivot: {holes: {top: 32 10.5 in, bottom: 32 8.5 in}, use: bottom}\n" + text[to..];
        text = text.Replace("  rear.linkage.upper.body.use: {values: all, minutes: 12}", "  rear.linkage.pivot.use: {values: top bottom, minutes: 12}", StringComparison.Ordinal);
        Scenario scenario = Samples.Read(text);
        Assert.Equal(8.5 * Inch, Assert.IsType<LadderBar>(scenario.Car!.Rear.Linkage).Pivot.Up, 1e-15);
        Assert.Equal(["top", "bottom"], scenario.Choices[0].Values);
    }

    [Fact]
    public void Clicks_AtTheFrontAndInCompression_AreRead()
    {
        string text = Files.DoorCarWith("force: 0 35 60 110 170 260 lb", "clicks: {10: 0 10 20 30 40 50 lb, -2: 0 20 40 60 80 100 lb ±10 %}, set: 4, count_from: stiff");
        Scenario scenario = Samples.Read(text);
        Table table = ((DamperTables)scenario.Car!.Front.Damper).Compression;
        Assert.Equal(75 * 4.4482216152605, table.Y[^1], 1e-10);
        Assert.Equal([-2.0, 10], scenario.Clicks["front.damper.compression"].Entered);
        Assert.Equal(new Doubt(10, true), scenario.Doubts["front.damper.compression.clicks.-2"]);
    }

    [Fact]
    public void Doubts_OfPointsHolesAndRows_HaveTheirPaths()
    {
        string text = Files.DoorCarWith("lower: {axle: 1.0 7.6 in", "lower: {axle: 1.0 ±0.05 7.6 +-0.1 in")
            .Replace("2: 14.0 14.6 in", "2: 14.0 14.6 ±1/16 in", StringComparison.Ordinal)
            .Replace("force: 0 40 70 130 190 280 lb", "force: 0 40 70 130 190 280 lb ±10 %", StringComparison.Ordinal);
        Scenario scenario = Samples.Read(text);
        Assert.Equal(4, scenario.Doubts.Count);
        Assert.Equal(0.05 * Inch, scenario.Doubts["rear.linkage.lower.axle.ahead"].HalfWidth, 1e-16);
        Assert.Equal(0.1 * Inch, scenario.Doubts["rear.linkage.lower.axle.up"].HalfWidth, 1e-16);
        Assert.Equal(Inch / 16, scenario.Doubts["rear.linkage.upper.body.holes.2.up"].HalfWidth, 1e-16);
        Assert.Equal(new Doubt(10, true), scenario.Doubts["rear.damper.compression.force"]);
        foreach (string path in scenario.Doubts.Keys)
        {
            Assert.NotNull(scenario.With([(path, scenario.Find(path)!.ToString())]).Scenario);
        }
    }

    [Fact]
    public void EveryValue_WrittenBackAtItsPath_GivesTheSameCar()
    {
        Scenario scenario = new ScenarioReader().Read(Files.DoorCar).Scenario!;
        (string, string)[] all = [.. ScenarioPath.Known.Keys.Select(path => path.Replace("[]", "[0]", StringComparison.Ordinal))
            .Where(path => scenario.Find(path) is not null && !scenario.Brackets.ContainsKey(path)).Select(path => (path, scenario.Find(path)!.ToString()))];
        Assert.InRange(all.Length, 80, 120);
        Assert.Equal(scenario.ContentHash, scenario.With(all).Scenario!.ContentHash);
    }

    /// <summary>Tolerance 4e-15 relative: two roundings of a double, one for each conversion.</summary>
    [Fact]
    public void EveryValue_WrittenInSi_GivesTheSameCarToRounding()
    {
        foreach (string driveline in new[] { Samples.EngineClutch, Samples.EngineConverter })
        {
            Scenario shop = Samples.Read(Samples.WithDriveline(driveline));
            var si = new List<(string, string)>();
            foreach ((string path, SchemaKey key) in ScenarioPath.Known)
            {
                string at = path.Replace("[]", "[0]", StringComparison.Ordinal);
                QuantityKind? kind = key.Kind switch { NumberKind number => number.Quantity, RowKind row => row.Quantity, PointKind => QuantityKind.Length, _ => null };
                if (kind is not null && kind != QuantityKind.Number && shop.Find(at) is { } quantity && !shop.Brackets.ContainsKey(at))
                {
                    string unit = kind.Units[^1];
                    si.Add((at, string.Join(' ', quantity.AllSi().Select(number => number.ToString("R", CultureInfo.InvariantCulture))) + " " + unit));
                }
            }

            Scenario same = shop.With(si).Scenario!;
            Assert.Equal(UnitSystem.Si, same.UnitSystem);
            foreach ((string path, _) in si)
            {
                double[] one = shop.Find(path)!.AllSi();
                double[] other = same.Find(path)!.AllSi();
                Assert.All(one.Zip(other), pair => Assert.Equal(pair.First, pair.Second, 4e-15 * Math.Abs(pair.First)));
            }
        }
    }

    [Fact]
    public void With_AfterAnError_LeavesTheScenarioAsItWas()
    {
        Scenario scenario = new ScenarioReader().Read(Files.DoorCar).Scenario!;
        string hash = scenario.ContentHash;
        Assert.Null(scenario.With([("rear.spring.rate", "-3 lb/in")]).Scenario);
        Assert.Null(scenario.With([("rear.unsprung", "3000 lb")]).Scenario);
        Scenario changed = scenario.With([("rear.spring.rate", "175 lb/in")]).Scenario!;
        Assert.Equal("150 lb/in", scenario.Find("rear.spring.rate")!.ToString());
        Assert.Equal(hash, changed.With([("rear.spring.rate", "150 lb/in")]).Scenario!.ContentHash);
    }

    [Fact]
    public void With_FromManyThreads_GivesTheSameAsFromOne()
    {
        Scenario scenario = new ScenarioReader().Read(Files.DoorCar).Scenario!;
        string[] one = [.. Enumerable.Range(0, 200).Select(Hash)];
        string[] many = new string[200];
        Scenario fresh = new ScenarioReader().Read(Files.DoorCar).Scenario!;
        Parallel.For(0, 200, i => many[i] = fresh.With([("rear.spring.rate", $"{100 + i} lb/in"), ("car.ballast[0].mass", $"{i} lb")]).Scenario!.ContentHash);
        Assert.Equal(one, many);

        string Hash(int i) => scenario.With([("rear.spring.rate", $"{100 + i} lb/in"), ("car.ballast[0].mass", $"{i} lb")]).Scenario!.ContentHash;
    }

    [Fact]
    public void UnitSystem_OfAFileMostlyInSi_IsSi()
    {
        string si = Samples.Part.Replace("105.5 in", "2.68 m", StringComparison.Ordinal).Replace("1560 lb", "6940 N", StringComparison.Ordinal)
            .Replace("1440 lb", "6405 N", StringComparison.Ordinal).Replace(" in", " cm", StringComparison.Ordinal);
        Assert.Equal(UnitSystem.Si, new ScenarioReader { Purpose = ReadPurpose.Check }.ReadText(si, "x").Scenario!.UnitSystem);
        Assert.Equal(UnitSystem.Shop, new ScenarioReader { Purpose = ReadPurpose.Check }.ReadText(Samples.Part, "x").Scenario!.UnitSystem);
    }

    [Fact]
    public void CarCheck_WithFindings_PlacesThemInTheFile()
    {
        var reader = new ScenarioReader
        {
            CarCheck = _ =>
            [
                new CarFinding { Path = "rear.linkage", Found = "a linkage that locks 2 in into its travel", Mend = "move a pivot" },
                new CarFinding { Path = "rear.damper.axle", Severity = Severity.Warning, Found = "a damper that lies flat" },
            ],
        };
        ReadResult result = reader.ReadText(Files.DoorCarText, "x.yaml");
        Assert.Null(result.Scenario);
        Assert.Equal("x.yaml:42:3: error: rear.linkage: found a linkage that locks 2 in into its travel; mend: move a pivot", Assert.Single(result.Errors).ToString());
        Assert.Equal(53, Assert.Single(result.Warnings).Line);
    }

    [Fact]
    public void GeometryCheck_OfAPartFile_IsAsked()
    {
        var reader = new ScenarioReader { Purpose = ReadPurpose.Geometry, GeometryCheck = part => [new CarFinding { Path = "car.wheelbase", Found = $"{part.Wheelbase:F1} m" }] };
        Assert.Equal("2.7 m", Assert.Single(reader.ReadText(Samples.Part, "x").Errors).Message);
    }

    [Fact]
    public void Read_UnderACommaCulture_GivesTheSame()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        string hash = new ScenarioReader().Read(Files.DoorCar).Scenario!.ContentHash;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Scenario scenario = new ScenarioReader().Read(Files.DoorCar).Scenario!;
            Assert.Equal(hash, scenario.ContentHash);
            Assert.Equal("14.5 psi", scenario.Choices[2].Values[1]);
            Assert.Contains("105.5 ±1.055 in", Assert.Single(scenario.With([("car.wheelbase", "105.5 in ±1 %")]).Errors).Mend, StringComparison.Ordinal);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void Keys_QuotedOrAsYamlsOwnWords_AreText()
    {
        string text = Files.DoorCarWith("{1: 14.0 15.4 in, 2: 14.0 14.6 in, 3: 14.0 13.8 in}, use: 2}", "{on: 14.0 15.4 in, '2': 14.0 14.6 in, no: \"14.0 13.8 in\"}, use: no}");
        Scenario scenario = Samples.Read(text);
        Assert.Equal(["on", "2", "no"], scenario.Brackets["rear.linkage.upper.body"].Holes.Select(hole => hole.Key));
        Assert.Equal(13.8 * Inch, ((FourLink)scenario.Car!.Rear.Linkage).UpperBody.Up, 1e-15);
    }
}
