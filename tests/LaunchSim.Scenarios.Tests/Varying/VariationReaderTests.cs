using LaunchSim.Scenarios.Varying;

namespace LaunchSim.Scenarios.Tests.Varying;

public class VariationReaderTests
{
    private static readonly Scenario Door = StandingCheck.Reader(ReadPurpose.Run).Read(Files.DoorCar).Scenario!;

    [Theory]
    [InlineData("rear.tire.pressure.set=14 15 16 psi", 3, "15 psi", 2)]
    [InlineData("rear.tire.pressure.set=14 to 18 by 0.5 psi", 9, "14.5 psi", 4)]
    [InlineData("rear.tire.pressure.set=0.9 1.0 1.1 bar", 3, "1 bar", -1)]
    [InlineData("car.cg_height=19 to 23 by 0.1 in", 41, "19.1 in", 20)]
    [InlineData("rear.linkage.upper.body.use=all", 3, "2", 1)]
    [InlineData("rear.linkage.upper.body.use=3 2", 2, "2", 1)]
    [InlineData("rear.damper.extension.set=all", 3, "6", 1)]
    [InlineData("rear.damper.extension.set=0 to 12 by 3", 5, "3", 2)]
    [InlineData("rear.linkage.lower.body.up=8 to 10 by 1/4 in", 9, "8.25 in", 4)]
    public void Read_ValuesInTheNotationOfTheFile_AreAllOfThem(string vary, int count, string second, int present)
    {
        Variation variation = One(vary);

        Assert.Equal(count, variation.Values.Count);
        Assert.Equal(second, variation.Values[1].Value);
        Assert.Equal(present, variation.Present);
    }

    [Fact]
    public void Read_PartOfABracketsPoint_MovesTheHoleInUse()
    {
        Variation variation = One("rear.linkage.upper.body.up=13 to 16 by 1/4 in");

        Assert.Equal(13, variation.Values.Count);
        Assert.Equal("rear.linkage.upper.body.up", variation.Path);
        Assert.Equal("rear.linkage.upper.body.holes.2.up", variation.Values[0].Path);
        Assert.Equal(13.25 * 0.0254, ((LaunchSim.Vehicle.FourLink)Door.With([variation.Values[1]]).Scenario!.Car!.Rear.Linkage).UpperBody.Up, 1e-12);
    }

    [Theory]
    [InlineData("rear.tyre.pressure.set=14 15 psi", "did you mean `rear.tire.pressure.set`?")]
    [InlineData("rear.tire.pressure.set=14 15", "unit")]
    [InlineData("rear.tire.pressure.set=14 15 in", "")]
    [InlineData("rear.tire.pressure.set=14 14 psi", "a second time")]
    [InlineData("rear.tire.pressure.set=18 to 14 by 1 psi", "from the lower to the higher")]
    [InlineData("rear.tire.pressure.set=14 to 18 by 0 psi", "by a step above 0")]
    [InlineData("rear.tire.pressure.set=14 to 18 psi", "A to B by C unit")]
    [InlineData("rear.tire.pressure.set=14 ±1 15 psi", "take the ± away")]
    [InlineData("rear.tire.pressure.set=0 to 1e6 by 0.001 psi", "at most 1000 values")]
    [InlineData("rear.linkage.upper.body.use=2 7", "`7` among the values")]
    [InlineData("rear.linkage.lower.body.use=all", "without a bracket with holes")]
    [InlineData("rear.spring.rate=-150 lb/in", "above 0")]
    [InlineData("rear.unsprung=340 9000 lb", "`9000 lb`")]
    [InlineData("front.tire=1 2", "a number below it")]
    [InlineData("rear.spring.rate", "path=values")]
    [InlineData("=1 2 lb/in", "path=values")]
    [InlineData("rear.spring.rate= ", "path=values")]
    public void Read_WhatIsWrong_SaysWhereWhatAndHowToMend(string vary, string says)
    {
        VariationResult result = VariationReader.Read(Door, [vary], "--vary");

        Assert.Empty(result.Variations);
        Diagnostic error = Assert.Single(result.Errors);
        Assert.StartsWith("--vary ", error.ToString(), StringComparison.Ordinal);
        Assert.Contains(says, error.ToString(), StringComparison.Ordinal);
        Assert.NotEmpty(error.Mend);
    }

    [Fact]
    public void Read_SeveralMistakes_AreToldAtOnce() =>
        Assert.Equal(3, VariationReader.Read(Door, ["rear.spring.rate=1", "nowhere=1 2", "car.cg_height=0 in"], "--vary").Errors.Count);

    [Theory]
    [InlineData("rear.spring.rate=140 150 lb/in", "rear.spring.rate=160 170 lb/in", "a second time")]
    [InlineData("rear.linkage.upper.body.use=all", "rear.linkage.upper.body.up=14 15 in", "which hole is in use")]
    [InlineData("rear.linkage.upper.body.up=14 15 in", "rear.linkage.upper.body.holes.2.up=14 15 in", "a second time")]
    public void Read_SettingsThatTouchEachOther_AreRefused(string one, string other, string says) =>
        Assert.Contains(says, Assert.Single(VariationReader.Read(Door, [one, other], "--vary").Errors).ToString(), StringComparison.Ordinal);

    [Fact]
    public void OfChoices_OfTheDoorCar_HasTheirMinutesAndWhatIsSet()
    {
        IReadOnlyList<Variation> choices = VariationReader.OfChoices(Door);

        Assert.Equal(Door.Choices.Select(choice => (choice.Path, choice.Values.Count, (double?)choice.Minutes)), choices.Select(choice => (choice.Path, choice.Values.Count, choice.Minutes)));
        Assert.Equal(4, choices.First(choice => choice.Path == "rear.tire.pressure.set").Present);
    }

    private static Variation One(string vary)
    {
        VariationResult result = VariationReader.Read(Door, [vary], "--vary");
        Assert.Empty(result.Errors);
        return Assert.Single(result.Variations);
    }
}
