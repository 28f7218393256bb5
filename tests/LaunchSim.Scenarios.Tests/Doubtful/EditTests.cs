using CsCheck;
using LaunchSim.Scenarios.Doubtful;
using LaunchSim.Scenarios.Varying;

namespace LaunchSim.Scenarios.Tests.Doubtful;

public class EditTests
{
    [Theory]
    [MemberData(nameof(Shipped))]
    public void With_EditsOfDoubtfulNumbers_IsWhatReadingThemGives(string path)
    {
        Scenario scenario = StandingCheck.Reader(ReadPurpose.Run).Read(path).Scenario!;
        IReadOnlyList<DoubtfulNumber> numbers = DoubtfulNumbers.Of(scenario);
        Gen.Double[-3, 3].Array[numbers.Count].Sample(
            shares =>
            {
                List<ScenarioEdit> edits = [.. numbers.SelectMany((number, i) => number.Edits(shares[i]))];

                ReadResult quick = scenario.With(edits), plain = scenario.With(edits.Select(edit => (edit.Path, edit.Value)));

                Assert.Equal(plain.Scenario?.ContentHash, quick.Scenario?.ContentHash);
                Assert.Equal(plain.Errors.Select(error => error.ToString()), quick.Errors.Select(error => error.ToString()));
            },
            iter: 60);
    }

    [Fact]
    public void With_EditOnAnEditedScenario_ReadsFurtherChangesOnTopOfIt()
    {
        Scenario scenario = Door();
        Scenario edited = scenario.With(Edits(scenario, "rear.spring.rate=175 lb/in")).Scenario!;

        Scenario both = edited.With([("front.spring.rate", "140 lb/in")]).Scenario!;

        Assert.Equal(scenario.With([("rear.spring.rate", "175 lb/in"), ("front.spring.rate", "140 lb/in")]).Scenario!.ContentHash, both.ContentHash);
    }

    [Fact]
    public void With_EditOfADoubtedNumber_KeepsItsDoubt()
    {
        Scenario scenario = Door().With([("car.cg_height", "21 ±1 in")]).Scenario!;

        Scenario edited = scenario.With(Edits(scenario, "car.cg_height=22 in")).Scenario!;

        Assert.Equal(0.0254, edited.Doubts["car.cg_height"].HalfWidth, 1e-12);
        Assert.Equal(22 * 0.0254, edited.Find("car.cg_height")!.Si(), 1e-12);
    }

    public static TheoryData<string> Shipped() => [.. Directory.GetFiles(Path.Combine(Files.Root, "scenarios"), "*.yaml").Order(StringComparer.Ordinal)];

    private static IReadOnlyList<ScenarioEdit> Edits(Scenario scenario, string vary) => [VariationReader.Read(scenario, [vary], "--vary").Variations[0].Values[0]];

    private static Scenario Door() => StandingCheck.Reader(ReadPurpose.Run).Read(Path.Combine(Files.Root, "scenarios", "door-car.yaml")).Scenario!;
}
