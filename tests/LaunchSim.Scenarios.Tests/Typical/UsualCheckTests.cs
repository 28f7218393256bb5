using System.Text.RegularExpressions;
using LaunchSim.Scenarios.Typical;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Scenarios.Tests.Typical;

/// <summary>Mistakes as people make them: each is warned of once, at its place, with what was meant.</summary>
public class UsualCheckTests
{
    private static readonly ScenarioReader Reader = new() { Purpose = ReadPurpose.Check, CarCheck = StandingCheck.OfCar, GeometryCheck = StandingCheck.OfSideView, WarnsOfUnusual = true };

    public static TheoryData<string> Shipped => [.. Directory.EnumerateFiles(Path.Combine(Files.Root, "scenarios"), "*.yaml").Select(path => Path.GetFileName(path)!)];

    [Theory]
    [MemberData(nameof(Shipped))]
    public void ShippedScenario_HasNothingUnusual(string name) =>
        Assert.Empty(Reader.Read(Path.Combine(Files.Root, "scenarios", name)).Warnings);

    [Theory]
    // Per axle in the place of per side, and the other way round.
    [InlineData("rear.tire.vertical_rate", "1600 lb/in", "800 lb/in")]
    [InlineData("front.tire.vertical_rate", "2300 lb/in", "1150 lb/in")]
    [InlineData("rear.spring.rate", "300 lb/in", "150 lb/in")]
    [InlineData("front.spring.rate", "300 lb/in", "150 lb/in")]
    [InlineData("rear.tire.reference_load", "2000 lb", "1000 lb")]
    [InlineData("front.unsprung", "66 lb", "132 lb")]
    [InlineData("rear.unsprung", "170 lb", "340 lb")]
    // A factor of ten.
    [InlineData("rear.tire.vertical_rate", "8000 lb/in", "800 lb/in")]
    [InlineData("rear.spring.rate", "15 lb/in", "150 lb/in")]
    [InlineData("rear.spring.rate", "1500 lb/in", "150 lb/in")]
    [InlineData("car.cg_height", "2.1 in", "21 in")]
    [InlineData("car.wheelbase", "10.55 in", "105.5 in")]
    [InlineData("car.pitch_inertia", "19500 kg·m²", "1950 kg·m²")]
    [InlineData("rear.damper.travel.extend", "40 in", "4 in")]
    [InlineData("driveline.torque", "0 390 440 480 480 lb-ft", "4800 lb-ft at its largest")]
    [InlineData("rear.tire.grip", "23", "2.3")]
    [InlineData("rear.tire.peak_slip", "1.2", "0.12")]
    // Units.
    [InlineData("car.pitch_inertia", "1950 lb·ft²", "1950 kg·m²")]
    [InlineData("car.pitch_inertia", "46000 kg·m²", "46000 lb·ft²")]
    [InlineData("rear.tire.carcass.belt_inertia", "2.6 lb·ft²", "2.6 kg·m²")]
    [InlineData("rear.wheelie_bar.rate", "800 N/m", "800 lb/in")]
    [InlineData("rear.damper.compression.speed", "0 1 2 5 10 20 mm/s", "the same numbers in in/s")]
    [InlineData("rear.damper.compression.speed", "0 1 2 5 10 20 ft/s", "the same numbers in in/s")]
    [InlineData("rear.damper.extension.speed", "0 25 50 130 250 500 in/s", "the same numbers in mm/s")]
    [InlineData("rear.damper.compression.speed", "0 0.025 0.05 0.13 0.25 0.5 in/s", "the same numbers in m/s")]
    [InlineData("front.damper.compression.force", "0 35 60 110 170 260 N", "the same numbers in lb")]
    [InlineData("front.damper.compression.force", "0 155 270 490 750 1150 lb", "the same numbers in N")]
    // What is what.
    [InlineData("front.unsprung", "780 lb", "only what does not ride on the springs")]
    [InlineData("rear.unsprung", "1100 lb", "only what does not ride on the springs")]
    [InlineData("front.spring.motion_ratio", "1.3889", "0.72")]
    [InlineData("front.damper.motion_ratio", "1.0526", "0.95")]
    [InlineData("rear.tire.loaded_radius", "26.2 in", "13.1 in")]
    // Points.
    [InlineData("rear.linkage.lower.axle", "7.6 1.0 in", "1 7.6 in")]
    [InlineData("rear.linkage.lower.body", "9.0 21.0 in", "21 9 in")]
    [InlineData("rear.linkage.upper.axle", "17.0 2.5 in", "2.5 17 in")]
    [InlineData("rear.spring.body", "24.0 0.5 in", "0.5 24 in")]
    [InlineData("rear.wheelie_bar.wheel", "-58 4 mm", "-58 4 in")]
    public void UsualMistake_InTheDoorCar_IsWarnedOfOnceWithWhatWasMeant(string path, string value, string meant)
    {
        ReadResult read = Reader.Read(Files.DoorCar, [(path, value)]);

        // What holds between values may have something to say as well.
        Diagnostic warning = Assert.Single(read.Warnings, found => found.Message.Contains("outside the usual", StringComparison.Ordinal));
        Assert.StartsWith(path, warning.Path, StringComparison.Ordinal);
        Assert.Matches($"did you mean (.*, or )?{Regex.Escape(meant)} \\(", warning.Mend);
    }

    [Fact]
    public void Warning_InAFile_HasPlaceUnitsSourceAndHomeTest()
    {
        ReadResult read = Reader.ReadText(Files.DoorCarWith("vertical_rate: 800 lb/in", "vertical_rate: 8000 lb/in"), "my.yaml");

        Diagnostic warning = Assert.Single(read.Warnings);
        int line = Files.DoorCarText.Split('\n').TakeWhile(text => !text.Contains("vertical_rate: 800 lb/in", StringComparison.Ordinal)).Count() + 1;
        Assert.Equal(("my.yaml", line, 20), (warning.File, warning.Line, warning.Column));
        Assert.StartsWith("`8000 lb/in`, outside the usual 440 to 1350 lb/in for a tyre of this size and pressure (regression", warning.Message, StringComparison.Ordinal);
        Assert.Contains("did you mean 800 lb/in (a decimal point out of place)? To get it: read the scale", warning.Mend, StringComparison.Ordinal);
        Assert.NotNull(read.Scenario);
    }

    [Fact]
    public void Warning_InSiFile_SpeaksSi()
    {
        ReadResult read = Reader.Read(Path.Combine(Files.Root, "scenarios", "sixty-percent.yaml"), [("rear.spring.rate", "300 N/mm")]);
        Diagnostic warning = Assert.Single(read.Warnings);
        Assert.Contains(" N/mm for the rear of a car of this weight", warning.Message, StringComparison.Ordinal);
        Assert.Contains("did you mean 30 N/mm", warning.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void ScalesOfOneTireEach_AreTakenForTheCauseOfAllElse()
    {
        ReadResult read = Reader.Read(Files.DoorCar, [("car.scales.front", "780 lb"), ("car.scales.rear", "720 lb")]);
        Assert.Equal(["car.scales.front", "car.scales.rear"], read.Warnings.Select(warning => warning.Path));
        Assert.All(read.Warnings, warning => Assert.Contains("both sides together", warning.Mend, StringComparison.Ordinal));
    }

    [Fact]
    public void HolesOfOneBracket_AreWarnedOfOnce()
    {
        ReadResult read = Reader.Read(Files.DoorCar, [("rear.linkage.upper.body", "{holes: {1: 154 14 in, 2: 146 14 in, 3: 138 14 in}, use: 2}")]);
        Assert.Equal("rear.linkage.upper.body.holes.1.ahead", Assert.Single(read.Warnings, warning => warning.Message.Contains("outside the usual", StringComparison.Ordinal)).Path);
    }

    [Fact]
    public void UnusualNumber_BehindAnError_IsToldAsWell()
    {
        // The pressure's slope leaves no rate at 14 psi: that is an error, of which the point out of place is the cause.
        ReadResult read = Reader.Read(Files.DoorCar, [("rear.tire.vertical_rate", "80 lb/in")]);
        Assert.NotEmpty(read.Errors);
        Assert.Contains("did you mean 800 lb/in", Assert.Single(read.Warnings).Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void FindingAtTheNumberItself_IsNotDoubled()
    {
        ReadResult read = Reader.Read(Files.DoorCar, [("rear.wheelie_bar.wheel", "58 4 in")]);
        Assert.Contains("put a minus", Assert.Single(read.Warnings).Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void PartFile_IsJudgedByWhatItHas()
    {
        const string Part = """
            car: {wheelbase: 2.68 m, scales: {front: 7000 N, rear: 6400 N}, cg_height: 5.3 m}
            rear:
              linkage:
                type: four-link
                lower: {axle: 25 193 mm, body: 229 533 mm}
                upper: {axle: 64 420 mm, body: 356 371 mm}
            """;
        ReadResult read = Reader.ReadText(Part, "part.yaml");
        Assert.Equal(["car.cg_height", "rear.linkage.lower.body.up"], read.Warnings.Select(warning => warning.Path));
    }

    [Theory]
    [InlineData("")]
    [InlineData("car: {}")]
    [InlineData("car: {wheelbase: x, scales: {front: 1 N}}\nrear: {tire: {vertical_rate: 1 lb/in}, spring: 3}")]
    [InlineData("rear: {linkage: {type: four-link, lower: {body: {holes: {1: 900 900 in}, use: 7}}}, damper: {extension: {speed: 0 1 in/s, clicks: {1: 0 1 2 lb}, set: 9}}}")]
    [InlineData("front: {damper: {extension: {speed: 0 in/s, force: 0 lb}}}\ntrack: {distance: 0 9 ft, grip: 1 1 1}")]
    public void BrokenFile_IsJudgedAsFarAsItGoes(string text) => Assert.NotEmpty(Reader.ReadText(text, "broken.yaml").Errors);

    [Fact]
    public void FileFullOfMistakes_GetsEachOfThem()
    {
        (string Path, string Value)[] mistakes =
        [
            ("car.pitch_inertia", "1950 lb·ft²"),
            ("front.unsprung", "780 lb"),
            ("front.spring.motion_ratio", "1.39"),
            ("rear.linkage.lower.body", "9.0 21.0 in"),
            ("rear.tire.vertical_rate", "1600 lb/in"),
            ("rear.damper.compression.speed", "0 1 2 5 10 20 mm/s"),
            ("rear.tire.grip", "23"),
        ];
        ReadResult read = Reader.Read(Files.DoorCar, mistakes);
        Assert.All(mistakes, mistake => Assert.Contains(read.Warnings, warning => warning.Path.StartsWith(mistake.Path, StringComparison.Ordinal)));
    }

    [Fact]
    public void Warnings_OfRulesAndOfUsage_ComeInTheOrderOfTheFile()
    {
        // The tyre's own rule warns of the stiffness, which stands after the inertia in the file.
        string text = Files.DoorCarWith("slip_stiffness: 40", "slip_stiffness: 30").Replace("pitch_inertia: 1950", "pitch_inertia: 19500", StringComparison.Ordinal);
        ReadResult read = Reader.ReadText(text, "my.yaml");
        Assert.Equal(["car.pitch_inertia", "rear.tire.slip_stiffness"], read.Warnings.Select(warning => warning.Path));
    }

    [Fact]
    public void Run_IsNotFloodedWithWhatIsOnlyUnusual() =>
        Assert.Empty(StandingCheck.Reader(ReadPurpose.Run).Read(Files.DoorCar, [("rear.spring.rate", "300 lb/in")]).Warnings);

    [Fact]
    public void Variation_IsNotJudgedAgain()
    {
        Scenario scenario = Reader.Read(Files.DoorCar).Scenario!;
        Assert.Empty(scenario.With([("rear.spring.rate", "300 lb/in")]).Warnings);
        Assert.Single(UsualCheck.Of(scenario.With([("rear.spring.rate", "300 lb/in")]).Scenario!));
    }

    [Fact]
    public void Lacking_OfAPartFile_HasTypicalValuesThatCanBeCopied()
    {
        Scenario part = Reader.ReadText("""
            car: {wheelbase: 105.5 in, scales: {front: 1560 lb, rear: 1440 lb}, cg_height: 21 in}
            rear: {linkage: {type: ladder-bar, pivot: 32 9.5 in}, tire: {loaded_radius: 13.1 in}}
            """, "part.yaml").Scenario!;
        IReadOnlyList<LackingValue> lacking = LackingValue.Of(part, UnitSystem.Shop);

        Assert.Equal(part.MissingForRun, lacking.Select(value => value.Path));
        Assert.Equal("155 ±40 lb", lacking.Single(value => value.Path == "front.unsprung").Typical);
        Assert.Equal(["front.tire.loaded_radius"], lacking.Single(value => value.Path == "car.pitch_inertia").Needs);
        Assert.IsType<MeasuredValue>(lacking.Single(value => value.Path == "front.tire.loaded_radius").Entry);
        Assert.Equal("axle-torque or engine", lacking.Single(value => value.Path == "driveline.type").What);
        foreach (LackingValue value in lacking.Where(value => value.Typical is not null))
        {
            Assert.True(Quantity.TryParse(value.Typical!, value.Entry!.Kind, out _, out string problem), problem);
        }
    }
}
