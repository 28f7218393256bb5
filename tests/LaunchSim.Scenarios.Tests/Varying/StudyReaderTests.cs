using LaunchSim.Scenarios.Varying;

namespace LaunchSim.Scenarios.Tests.Varying;

public sealed class StudyReaderTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("study-").FullName;

    public StudyReaderTests() => File.Copy(Files.DoorCar, Path.Combine(_folder, "door-car.yaml"));

    [Fact]
    public void Read_StudyFile_HasItsScenarioWhatIsVariedAndWhatIsWanted()
    {
        Study study = Read("""
            name: Where the bar goes
            scenario: door-car.yaml
            vary:
              rear.linkage.upper.body.use: all
              rear.tire.pressure.set: 14 to 18 by 1 psi
            aims:
              profile: stay-down
              front_height: {most: 4 in, weight: 3}
            budget: 500
            """).Study!;

        Assert.Equal(("Where the bar goes", 500L), (study.Name, study.Budget));
        Assert.Equal([3, 5], study.Variations.Select(variation => variation.Values.Count));
        Assert.Equal("stay-down", study.Aims!.Profile);
        Assert.Equal((4 * 0.0254, 3.0), (Math.Round(study.Aims.Aims[0].To!.Value, 10), study.Aims.Aims[0].Weight));
    }

    [Fact]
    public void Read_ScenarioFile_IsAStudyOfIt()
    {
        StudyResult result = new StudyReader(StandingCheck.Reader(ReadPurpose.Run)).Read(Files.DoorCar, [("aims.profile", "stay-down")], ["rear.spring.rate=140 150 lb/in"]);

        Assert.Equal("stay-down", result.Study!.Aims!.Profile);
        Assert.Single(result.Study.Variations);
    }

    [Theory]
    [InlineData("scenario: nowhere.yaml", "no file")]
    [InlineData("scenario: door-car.yaml\nvari:\n  a: b", "did you mean `vary`?")]
    [InlineData("vary:\n  rear.spring.rate: 1 2 lb/in", "no `scenario`")]
    [InlineData("scenario: door-car.yaml\nvary: everything", "where what is varied is due")]
    [InlineData("scenario: door-car.yaml\nvary:\n  rear.spring.rat: 140 lb/in", "did you mean `rear.spring.rate`?")]
    [InlineData("scenario: door-car.yaml\nvary:\n  rear.spring.rate: {values: 140 lb/in}", "where values are due")]
    [InlineData("scenario: door-car.yaml\nbudget: 0", "1 to 1,000,000,000")]
    [InlineData("scenario: door-car.yaml\naims:\n  rise_lag: {weight: 2, limit: yes}", "a weight and `limit: yes` together")]
    [InlineData("scenario: door-car.yaml\naims:\n  separation: {from: 3 in, to: 1 in}", "from the lower to the higher")]
    [InlineData("scenario: door-car.yaml\naims:\n  rise_lag: {near: 0 ±5 ms}", "take the ± away")]
    [InlineData("scenario: door-car.yaml\naims:\n  profile: instep", "did you mean `in-step`?")]
    [InlineData("scenario: door-car.yaml\naims:\n  rise_lag: {within: 0 ms}", "above 0")]
    public void Read_WhatIsWrong_SaysFileAndLine(string text, string says)
    {
        StudyResult result = Read(text);

        Assert.Null(result.Study);
        Assert.Contains(result.Errors, error => error.ToString().Contains(says, StringComparison.Ordinal));
        Assert.All(result.Errors, error => Assert.Matches(@"\.yaml:\d+:\d+: error: ", error.ToString()));
    }

    [Fact]
    public void Read_AimsInAVariant_TakeThePlaceOfTheBases()
    {
        string base1 = File.ReadAllText(Files.DoorCar) + "\naims:\n  rise_lag: {weight: 5}\n  load_unrest: {weight: 2}\n";
        File.WriteAllText(Path.Combine(_folder, "base.yaml"), base1);
        File.WriteAllText(Path.Combine(_folder, "variant.yaml"), "name: V\nbase: base.yaml\naims:\n  separation: {weight: 1}\n");

        Scenario variant = StandingCheck.Reader(ReadPurpose.Run).Read(Path.Combine(_folder, "variant.yaml")).Scenario!;

        Assert.Equal(["separation"], variant.Aims!.Aims.Select(aim => aim.Name));
    }

    [Fact]
    public void ScenarioReader_OnAStudyFile_SaysWhatItIs()
    {
        ReadResult read = StandingCheck.Reader(ReadPurpose.Run).ReadText("scenario: door-car.yaml\nvary:\n  rear.spring.rate: 140 lb/in\n", "study.yaml");

        Assert.Contains(read.Errors, error => error.Mend.StartsWith("this looks like a study file", StringComparison.Ordinal));
    }

    public void Dispose() => Directory.Delete(_folder, true);

    private StudyResult Read(string text)
    {
        string path = Path.Combine(_folder, "study.yaml");
        File.WriteAllText(path, text + "\n");
        return new StudyReader(StandingCheck.Reader(ReadPurpose.Run)).Read(path, [], []);
    }
}
