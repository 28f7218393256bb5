using LaunchSim.Scenarios.Varying;

namespace LaunchSim.Scenarios.Tests.Varying;

public class EditReaderTests
{
    private static readonly Scenario Door = StandingCheck.Reader(ReadPurpose.Run).Read(Files.DoorCar).Scenario!;

    [Theory]
    [InlineData("rear.spring.rate", "175 lb/in", "rear.spring.rate", "175 lb/in")]
    [InlineData("rear.spring.rate", " 30 N/mm ", "rear.spring.rate", "30 N/mm")]
    [InlineData("rear.damper.extension.set", "8", "rear.damper.extension.set", "8")]
    [InlineData("rear.linkage.upper.body.use", "3", "rear.linkage.upper.body.use", "3")]
    [InlineData("rear.linkage.upper.body.up", "13-1/2 in", "rear.linkage.upper.body.holes.2.up", "13.5 in")]
    [InlineData("car.ballast[0].mass", "75 lb", "car.ballast[0].mass", "75 lb")]
    public void Read_OneValue_IsTheEdit(string path, string value, string editPath, string editValue)
    {
        ScenarioEdit edit = Assert.Single(EditReader.Read(Door, [(path, value)]).Edits);
        Assert.Equal((editPath, editValue), (edit.Path, edit.Value));
        Assert.NotNull(Door.With([edit]).Scenario);
    }

    [Theory]
    [InlineData("rear.spring.rate", "130 150 lb/in", "one value")]
    [InlineData("rear.spring.rate", "100 to 200 by 10 lb/in", "one value")]
    [InlineData("rear.linkage.upper.body.use", "all", "one value")]
    [InlineData("rear.linkage.upper.body.use", "1 2", "one value")]
    [InlineData("rear.linkage.upper.body.use", "9", "1, 2, 3")]
    [InlineData("rear.spring.rate", "150 ±5 lb/in", "take the ± away")]
    [InlineData("rear.spring.rate", "150 psi", "")]
    [InlineData("rear.spring.rate", "  ", "one value")]
    [InlineData("rear.sprung.rate", "150 lb/in", "rear.spring.rate")]
    [InlineData("rear.spring.rate", "150\0lb/in", "")]
    [InlineData("rear.linkage.lower.body", "21 9 in", "one number")]
    public void Read_AnythingElse_IsRefusedWithoutAPlaceInTheFile(string path, string value, string said)
    {
        EditResult read = EditReader.Read(Door, [(path, value), ("rear.damper.extension.set", "8")]);
        Assert.Empty(read.Edits);
        Diagnostic error = Assert.Single(read.Errors);
        Assert.Equal(0, error.Line);
        Assert.Contains(said, error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_APathTwice_TakesTheLaterValue()
    {
        ScenarioEdit edit = Assert.Single(EditReader.Read(Door, [("rear.spring.rate", "160 lb/in"), ("rear.spring.rate", "170 lb/in")]).Edits);
        Assert.Equal("170 lb/in", edit.Value);
    }
}
