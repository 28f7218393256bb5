using LaunchSim.Scenarios.Doubtful;
using LaunchSim.Scenarios.Typical;
using LaunchSim.Scenarios.Units;
using LaunchSim.Vehicle;

namespace LaunchSim.Scenarios.Tests.Doubtful;

public class DoubtfulNumberTests
{
    public static TheoryData<string> Shipped => [.. Directory.EnumerateFiles(Path.Combine(Files.Root, "scenarios"), "*.yaml").Select(path => Path.GetFileName(path)!)];

    private static Scenario Read(string name, params (string, string)[] set) =>
        new ScenarioReader().Read(Path.Combine(Files.Root, "scenarios", name), set).Scenario!;

    private static DoubtfulNumber Number(Scenario scenario, string path) => DoubtfulNumbers.Of(scenario).Single(number => number.Path == path);

    [Theory]
    [MemberData(nameof(Shipped))]
    public void MovedByNothing_OfEveryShippedNumber_IsTheSameCarToTheBit(string name)
    {
        Scenario scenario = Read(name);
        Assert.All(DoubtfulNumbers.Of(scenario), number => Assert.Equal(scenario.ContentHash, scenario.With(number.Moved(0)).Scenario!.ContentHash));
    }

    [Theory]
    [MemberData(nameof(Shipped))]
    public void Moved_OfEveryShippedNumber_IsAnotherCarOrRefusedInWords(string name)
    {
        Scenario scenario = Read(name);
        foreach (DoubtfulNumber number in DoubtfulNumbers.Of(scenario))
        {
            foreach (double share in new[] { -1, -0.3, 1 })
            {
                ReadResult moved = scenario.With(number.Moved(share));

                // What is only reported, and how the run is timed, make no other car; a run of other marks is another run.
                Assert.True(moved.Scenario is null ? moved.Errors.Count > 0 : moved.Scenario.ContentHash != scenario.ContentHash, number.Path);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Shipped))]
    public void Numbers_OfEveryShippedScenario_HoldAllItsEnteredDoubts(string name)
    {
        Scenario scenario = Read(name);
        IReadOnlyList<DoubtfulNumber> numbers = DoubtfulNumbers.Of(scenario);
        Assert.Equal(numbers.Count, numbers.Select(number => number.Path).Distinct().Count());
        foreach ((string path, Doubt doubt) in scenario.Doubts)
        {
            DoubtfulNumber number = Assert.Single(numbers, number => number.Path == path);
            Assert.True(number.IsEntered);
            Assert.Equal(doubt, number.Doubt);
        }
    }

    [Fact]
    public void Number_WithItsOwnDoubt_MovesByIt()
    {
        Scenario scenario = Read("door-car.yaml", ("car.cg_height", "21 ±1.5 in"));
        DoubtfulNumber height = Number(scenario, "car.cg_height");
        Assert.Equal(("21 ±1.5 in", true), (height.Text, height.IsEntered));
        Assert.Equal([("car.cg_height", "22.5 in")], height.Moved(1));
        Assert.Equal([("car.cg_height", "20.25 in")], height.Moved(-0.5));
    }

    [Fact]
    public void Number_WithoutDoubt_HasTheUsualOneAndSaysSo()
    {
        DoubtfulNumber grip = Number(Read("door-car.yaml"), "rear.tire.grip");
        Assert.False(grip.IsEntered);
        Assert.Equal("2.3 ±0.3", grip.Text);
        Assert.Equal(0.15 * 2.3, grip.Doubt.HalfWidth, 1e-12);
        Assert.IsType<TypicalValue>(grip.Entry);
    }

    [Fact]
    public void PointWithPartsInTwoUnits_MovesEachInItsOwn()
    {
        Scenario scenario = Read("door-car.yaml", ("rear.spring.body.up", "610 ±4 mm"));
        DoubtfulNumber up = Number(scenario, "rear.spring.body.up"), ahead = Number(scenario, "rear.spring.body.ahead");
        Car moved = scenario.With(up.Moved(1)).Scenario!.Car!;
        Assert.Equal(0.614, moved.Rear.SpringBodyMount.Up, 1e-12);
        Assert.Equal(0.5 * 0.0254, moved.Rear.SpringBodyMount.Ahead, 1e-12);
        Assert.Equal(0.5 * 0.0254 - 0.003175, scenario.With(ahead.Moved(-1)).Scenario!.Car!.Rear.SpringBodyMount.Ahead, 1e-12);
    }

    [Fact]
    public void HolesOfABracket_MoveTogether()
    {
        Scenario scenario = Read("door-car.yaml");
        DoubtfulNumber up = Number(scenario, "rear.linkage.upper.body.up");
        Assert.Equal("14.6 ±0.06 in", up.Text);
        Scenario moved = scenario.With(up.Moved(1)).Scenario!;
        IReadOnlyList<KeyValuePair<string, Point>> before = scenario.Brackets["rear.linkage.upper.body"].Holes, after = moved.Brackets["rear.linkage.upper.body"].Holes;
        for (int i = 0; i < before.Count; i++)
        {
            Assert.Equal(before[i].Value.Up + (0.0254 / 16), after[i].Value.Up, 1e-12);
            Assert.Equal(before[i].Value.Ahead, after[i].Value.Ahead, 1e-15);
        }
    }

    [Fact]
    public void RowsOfClicks_AreScaledTogether()
    {
        Scenario scenario = Read("door-car.yaml");
        Scenario moved = scenario.With(Number(scenario, "rear.damper.extension.clicks").Moved(1)).Scenario!;
        foreach (string click in new[] { "0", "6", "12" })
        {
            Quantity before = scenario.Find("rear.damper.extension.clicks." + click)!, after = moved.Find("rear.damper.extension.clicks." + click)!;
            Assert.Equal(before.Numbers.Select(force => 1.1 * force), after.Numbers, (a, b) => Math.Abs(a - b) <= 1e-12 * Math.Abs(a));
        }
    }

    [Fact]
    public void Row_WithItsOwnPercent_IsScaledByIt()
    {
        Scenario scenario = Read("clutch-car.yaml");
        DoubtfulNumber torque = Number(scenario, "driveline.engine.torque");
        Assert.Equal(new Doubt(5, true), torque.Doubt);
        Assert.EndsWith("lb-ft ±5 %", torque.Text, StringComparison.Ordinal);
        Assert.Equal(0.95 * 520, scenario.With(torque.Moved(-1)).Scenario!.Find("driveline.engine.torque")!.Numbers[2], 1e-9);
    }

    [Fact]
    public void ValuesThatOnlyTheFileKnows_AreDoubtfulWhenItSaysSo()
    {
        Scenario scenario = Read("door-car.yaml", ("car.ballast[0].mass", "40 ±2 lb"), ("car.ballast[0].at", "-25 ±1 18 in"));
        Assert.Equal("42 lb", Number(scenario, "car.ballast[0].mass").Moved(1)[0].Value);
        Assert.Equal([("car.ballast[0].at.ahead", "-26 in")], Number(scenario, "car.ballast[0].at.ahead").Moved(-1));
        Assert.DoesNotContain(DoubtfulNumbers.Of(scenario), number => number.Path == "car.ballast[0].at.up");
        Assert.Null(Number(scenario, "car.ballast[0].mass").Entry);
    }

    [Fact]
    public void ChosenAndCountedNumbers_AreNotDoubtful()
    {
        string[] paths = [.. DoubtfulNumbers.Of(Read("clutch-car.yaml")).Select(number => number.Path)];
        Assert.DoesNotContain("driveline.gears.ratios", paths);
        Assert.DoesNotContain("driveline.final_drive", paths);
        Assert.DoesNotContain("driveline.clutch.time", paths);
        Assert.DoesNotContain("rear.damper.extension.set", paths);
        Assert.DoesNotContain("run.duration", paths);
    }
}
