using LaunchSim.Vehicle;

namespace LaunchSim.Scenarios.Tests.Reading;

public class VariantTests
{
    private const double Inch = 0.0254;
    private const double PoundForce = 4.4482216152605;

    [Fact]
    public void Variant_OfTheFormatsExample_ChangesThreeValues()
    {
        using Folder folder = WithDoorCar();
        Scenario scenario = Good(folder.Write("v.yaml", """
            name: Upper bar one hole down
            base: door-car.yaml
            change:
              rear.linkage.upper.body.use: 3
              rear.damper.extension.set: 8
              car.ride_height.rear: +0.5 in
            """));
        Assert.Equal("Upper bar one hole down", scenario.Name);
        Assert.StartsWith("An invented car", scenario.Notes, StringComparison.Ordinal);
        Car car = scenario.Car!;
        Assert.Equal(new Point(14 * Inch, 13.8 * Inch), ((FourLink)car.Rear.Linkage).UpperBody);
        Assert.Equal(0.5 * Inch, car.Chassis.RearRideHeight, 1e-15);
        double[] between = [0, 50, 86.66666666666667, 146.66666666666666, 210, 296.66666666666663];
        Table extension = ((DamperTables)car.Rear.Damper).Extension;
        for (int i = 0; i < between.Length; i++)
        {
            Assert.Equal(between[i] * PoundForce, extension.Y[i], 1e-9);
        }

        Assert.Equal(8, scenario.Clicks["rear.damper.extension"].Set);
        Assert.Equal(5, scenario.Choices.Count);
    }

    [Fact]
    public void Variant_OfAVariant_LaysChangesOverChanges()
    {
        using Folder folder = WithDoorCar();
        folder.Write("sub/one.yaml", "name: one\nbase: ../door-car.yaml\nchange:\n  rear.spring.rate: 175 lb/in\n  front.spring.rate: 160 lb/in\n");
        Scenario scenario = Good(folder.Write("two.yaml", "base: sub/one.yaml\nchange:\n  rear.spring.rate: 200 lb/in\nchoices:\n  rear.spring.rate: {values: 150 lb/in, minutes: 1}\n"));
        Assert.Equal("one", scenario.Name);
        Assert.Equal("200 lb/in", scenario.Find("rear.spring.rate")!.ToString());
        Assert.Equal("160 lb/in", scenario.Find("front.spring.rate")!.ToString());
        Assert.Single(scenario.Choices);
    }

    [Fact]
    public void Variant_OfPointsPartsItemsAndSections_SetsThem()
    {
        using Folder folder = WithDoorCar();
        Scenario scenario = Good(folder.Write("v.yaml", """
            name: v
            base: door-car.yaml
            change:
              rear.linkage.lower.body: 20 9.5 in
              rear.linkage.upper.axle.up: 430 ±2 mm
              rear.linkage.upper.body.holes.2.ahead: 14.5 in
              rear.linkage.upper.body.holes.4: 14 13 in
              car.ballast[0].mass: 0 lb
              car.ballast[0].at.up: 10 in
              rear.damper.extension.clicks.6.0: 0 1 2 3 4 5 lb
              rear.damper.body: 0.5 23 in
              rear.wheelie_bar: {wheel: -60 5 in, rate: 900 lb/in, damping: 0 lb·s/in}
              rear.tire.pressure.set: 14 psi
              front.tire.pressure: {measured: 30 psi, set: 28 psi, vertical: 30 lb/in/psi, grip: 0 /psi}
              driveline.power.share: 0.5 1
              track: {distance: 0 30 60 ft, grip: 1.0 0.9 1.0}
            """));
        Car car = scenario.Car!;
        var linkage = (FourLink)car.Rear.Linkage;
        Assert.Equal(new Point(20 * Inch, 9.5 * Inch), linkage.LowerBody);
        Assert.Equal(2.5 * Inch, linkage.UpperAxle.Ahead, 1e-15);
        Assert.Equal(0.430, linkage.UpperAxle.Up, 1e-15);
        Assert.Equal(14.5 * Inch, linkage.UpperBody.Ahead, 1e-15);
        Assert.Equal(4, scenario.Brackets["rear.linkage.upper.body"].Holes.Count);
        Assert.Equal(0, car.Chassis.Ballast[0].Mass);
        Assert.Equal(new Point(-25 * Inch, 10 * Inch), car.Chassis.Ballast[0].At);
        Assert.Equal(5 * PoundForce, ((DamperTables)car.Rear.Damper).Extension.Y[^1], 1e-12);
        Assert.Equal(car.Rear.SpringAxleMount, car.Rear.DamperAxleMount);
        Assert.Equal(23 * Inch, car.Rear.DamperBodyMount.Up, 1e-14);
        Assert.Equal(0, car.Rear.WheelieBar!.Damping);
        Assert.Equal(0, car.Front.Tire.Pressure!.TorsionalRateSlope);
        Assert.Equal(0.5, car.Driveline.PowerShare.At(0));
        Assert.Equal(0.9, car.TrackGrip.At(30 * 12 * Inch), 1e-12);
        Assert.Equal(0.002, scenario.Doubts["rear.linkage.upper.axle.up"].HalfWidth, 1e-15);
    }

    [Fact]
    public void Variant_WithUnknownPath_OffersTheNearest()
    {
        using Folder folder = WithDoorCar();
        Diagnostic error = Bad(folder.Write("v.yaml", "name: v\nbase: door-car.yaml\nchange:\n  rear.sprng.rate: 3 lb/in\n"));
        Assert.Contains("which no scenario has", error.Message, StringComparison.Ordinal);
        Assert.Contains("`rear.spring.rate`", error.Mend, StringComparison.Ordinal);
        Assert.Equal((4, 3), (error.Line, error.Column));
    }

    [Fact]
    public void Variant_WithWrongValue_IsReportedInTheVariant()
    {
        using Folder folder = WithDoorCar();
        string path = folder.Write("v.yaml", "name: v\nbase: door-car.yaml\nchange:\n  rear.spring.rate: 3 lb\n");
        Diagnostic error = Bad(path);
        Assert.Equal((path, 4, 23), (error.File, error.Line, error.Column));
    }

    [Fact]
    public void Variant_SectionPutInWhole_IsFoundInTheVariant()
    {
        using Folder folder = WithDoorCar();
        string path = folder.Write("v.yaml", "name: v\nbase: door-car.yaml\nchange:\n  rear.wheelie_bar: {wheel: -58 4 in, rate: 800 lb/in, damping: 8 lb·s/in}\n  rear.spring.rate: 160 lb/in\n");
        Scenario scenario = Good(path);
        Assert.Equal($"{path}:4:3", scenario.PlaceOf("rear.wheelie_bar"));
        Assert.Equal($"{path}:5:21", scenario.PlaceOf("rear.spring.rate"));
        Assert.StartsWith(Path.Combine(folder.At, "door-car.yaml") + ":", scenario.PlaceOf("rear.spring"), StringComparison.Ordinal);
    }

    [Fact]
    public void Variant_OfABrokenBase_ReportsTheBasesPlaceAndItsOwn()
    {
        using var folder = new Folder();
        folder.Write("door-car.yaml", Files.DoorCarWith("wheelbase: 105.5 in", "wheelbase: 105.5"));
        string path = folder.Write("v.yaml", "name: v\nbase: door-car.yaml\nchange:\n  rear.spring.rate: 3 lb\n");
        IReadOnlyList<Diagnostic> errors = new ScenarioReader().Read(path).Errors;
        Assert.Contains(errors, error => error.File == Path.Combine(folder.At, "door-car.yaml") && error.Line == 8 && error.Column == 14);
        Assert.Contains(errors, error => error.File == path && error.Line == 4);
        Assert.Equal(2, errors.Count);
    }

    [Fact]
    public void Variant_OfAMissingBase_SaysSoAtItsPlace()
    {
        using Folder folder = WithDoorCar();
        string path = folder.Write("v.yaml", "name: v\nbase: door-cra.yaml\nchange:\n  rear.spring.rat: 3 lb/in\n");
        IReadOnlyList<Diagnostic> errors = new ScenarioReader().Read(path).Errors;
        Assert.Equal([(2, 7), (4, 3)], errors.Select(error => (error.Line, error.Column)));
        Assert.Contains("`door-car.yaml`", errors[0].Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void Variant_InACycle_ShowsTheCycle()
    {
        using var folder = new Folder();
        folder.Write("b.yaml", "base: c.yaml");
        folder.Write("c.yaml", "base: b.yaml");
        Diagnostic error = Bad(folder.Write("a.yaml", "base: b.yaml"));
        Assert.Contains("a cycle of bases", error.Message, StringComparison.Ordinal);
        Assert.Matches("b.yaml → .*c.yaml → .*b.yaml", error.Message);
    }

    [Fact]
    public void Variant_OfItself_IsACycle()
    {
        using var folder = new Folder();
        Assert.Contains("a cycle of bases", Bad(folder.Write("a.yaml", "base: ./a.yaml")).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Variant_InALongChain_IsRefused()
    {
        using Folder folder = WithDoorCar();
        for (int i = 0; i < 30; i++)
        {
            folder.Write($"v{i}.yaml", $"base: v{i + 1}.yaml");
        }

        Assert.Contains("a chain of more than", Bad(Path.Combine(folder.At, "v0.yaml")).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("base: door-car.yaml\nrun: {duration: 1 s}\n", "`run` in a variant")]
    [InlineData("base: door-car.yaml\nchanges: {}\n", "`changes` in a variant")]
    [InlineData("change:\n  rear.spring.rate: 3 lb/in\n", "`change` without `base`")]
    [InlineData("base: [a]\n", "as the base")]
    [InlineData("base: door-car.yaml\nchange: [a]\n", "where changes are due")]
    [InlineData("base: door-car.yaml\nchange:\n  rear.spring.rate:\n", "nothing after the colon")]
    [InlineData("base: door-car.yaml\nchange:\n  rear.linkage.upper.body.up: 3 in\n", "where a bracket with holes stands")]
    [InlineData("base: door-car.yaml\nchange:\n  rear.linkage.lower.body.use: 3\n", "without a bracket")]
    [InlineData("base: door-car.yaml\nchange:\n  rear.linkage.lower.body.holes.3: 3 4 in\n", "without a bracket")]
    [InlineData("base: door-car.yaml\nchange:\n  car.ballast[1].mass: 3 lb\n", "item 1 of a list of 1")]
    [InlineData("base: door-car.yaml\nchange:\n  front.damper.extension.clicks.1: 0 1 2 3 4 5 lb\n", "without clicks")]
    [InlineData("base: door-car.yaml\nchange:\n  rear.spring.rate: 3 lb/in\n  rear.spring.rate: 4 lb/in\n", "a second time")]
    public void Variant_ThatCannotBe_IsRefused(string text, string found)
    {
        using Folder folder = WithDoorCar();
        Assert.Contains(found, Bad(folder.Write("v.yaml", "name: v\n" + text)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Variant_InAText_NeedsAFolder()
    {
        Assert.Contains("in no folder", Assert.Single(new ScenarioReader().ReadText("base: door-car.yaml", "x").Errors).Message, StringComparison.Ordinal);
        Assert.Empty(new ScenarioReader().ReadText("base: door-car.yaml", "x", folder: Path.Combine(Files.Root, "scenarios")).Errors);
    }

    [Fact]
    public void ContentHash_OfTheSameValues_IsTheSameHoweverLayered()
    {
        using Folder folder = WithDoorCar();
        string whole = Good(folder.Write("w.yaml", Files.DoorCarText
            .Replace("rate: 150 lb/in\n    axle", "rate: 175 lb/in # stiffer\n    axle", StringComparison.Ordinal)
            .Replace("  wheelbase: 105.5 in\n", "", StringComparison.Ordinal)
            .Replace("  cg_height: 21 in\n", "  cg_height: 21 ±1 in\n  wheelbase: 105-1/2 in\n", StringComparison.Ordinal))).ContentHash;
        string layered = Good(folder.Write("v.yaml", "name: other\nbase: door-car.yaml\nchange: {rear.spring.rate: 175 lb/in}\n")).ContentHash;
        string set = Good(Path.Combine(folder.At, "door-car.yaml"), ("rear.spring.rate", "175 lb/in")).ContentHash;
        string varied = Good(Files.DoorCar).With([("rear.spring.rate", "175 lb/in")]).Scenario!.ContentHash;
        Assert.Equal(whole, layered);
        Assert.Equal(whole, set);
        Assert.Equal(whole, varied);
        Assert.NotEqual(whole, Good(Files.DoorCar).ContentHash);
        Assert.Matches("^[0-9a-f]{64}$", whole);
    }

    [Fact]
    public void Overrides_WithErrors_NameTheirOrigin()
    {
        ReadResult result = new ScenarioReader().Read(Files.DoorCar, [("rear.spring.rat", "3 lb/in"), ("rear.spring.rate", "3"), ("car.wheelbase", ""), ("rear.linkage.upper.body", "{holes: {1: 3 4}, use: 1}")]);
        Assert.Equal(4, result.Errors.Count);
        Assert.StartsWith("--set rear.spring.rat=3 lb/in: error: found", result.Errors[0].ToString(), StringComparison.Ordinal);
        Assert.Contains(result.Errors, error => error.ToString().StartsWith("--set rear.spring.rate=3: error: rear.spring.rate: found `3`", StringComparison.Ordinal));
    }

    [Fact]
    public void With_ABracketInPlaceOfAPoint_IsRead()
    {
        Scenario scenario = Good(Files.DoorCar).With([("rear.spring.body", "{holes: {low: 0.5 23 in, high: 0.5 24 in}, use: low}"), ("rear.spring.body.use", "high")]).Scenario!;
        Assert.Equal(24 * Inch, scenario.Car!.Rear.SpringBodyMount.Up, 1e-14);
        Assert.Equal(24 * Inch, scenario.Car!.Rear.DamperBodyMount.Up, 1e-14);
        Assert.Equal("high", scenario.FindText("rear.spring.body.use"));
        Assert.Equal("24 in", scenario.Find("rear.spring.body.up")!.ToString());
        Assert.Equal("0.5 23 in", scenario.Find("rear.spring.body.holes.low")!.ToString());
    }

    private static Folder WithDoorCar()
    {
        var folder = new Folder();
        folder.Write("door-car.yaml", Files.DoorCarText);
        return folder;
    }

    private static Scenario Good(string path, params (string, string)[] set)
    {
        ReadResult result = new ScenarioReader().Read(path, set);
        Assert.Empty(result.Errors);
        return result.Scenario!;
    }

    private static Diagnostic Bad(string path) => Assert.Single(new ScenarioReader().Read(path).Errors);
}
