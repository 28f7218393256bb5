using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Varying;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Next;

namespace LaunchSim.Studies.Tests.Next;

public class NextTests
{
    [Fact]
    public void Changes_OfTheFilesChoices_AreOneAndTwoStepsFromThePresentValue()
    {
        IReadOnlyList<SingleChange> changes = NextStudy.Changes(VariationReader.OfChoices(Cars.Door), Cars.Door);

        Assert.Equal(["15 psi", "15.5 psi", "16.5 psi", "17 psi"], changes.Where(change => change.Edit.Path == "rear.tire.pressure.set").Select(change => change.Edit.Value));
        Assert.Equal([-1, 1], changes.Where(change => change.Edit.Path == "rear.linkage.upper.body.use").Select(change => change.Steps));

        // 40 lb lie between 25 and 50.
        Assert.Equal(["0 lb", "25 lb", "50 lb", "75 lb"], changes.Where(change => change.Edit.Path == "car.ballast[0].mass").Select(change => change.Edit.Value));
        Assert.Equal([-2, -1, 1, 2], changes.Where(change => change.Edit.Path == "car.ballast[0].mass").Select(change => change.Steps));
    }

    [Fact]
    public void Run_OnTheDoorCar_RanksByScoreAndCountsItsLaunches()
    {
        NextResult result = Run(Cars.Door, "rear.damper.extension.set=all", "rear.spring.rate=130 150 175 lb/in");

        // Clicks 0, 6, 12 and three springs: four single changes, four pairs, and the set-up as it stands.
        Assert.Equal(9, result.Launches);
        Assert.Equal(4, result.Singles.Count);
        Assert.Equal(result.Singles.OrderBy(change => change.Score).Select(change => change.Score), result.Singles.Select(change => change.Score));
        AimScore best = result.Singles[0].Score;
        Assert.All(result.Pairs, pair => Assert.True(pair.Score.Points < best.Points - NextResult.Noticeable));
    }

    [Fact]
    public void Run_GainThatOnlyTheGripSlopeGives_IsShownApartAndDoesNotHelp()
    {
        // Enough torque to spin, and a slope by which a psi less gives a tenth more grip.
        Scenario spins = Cars.Read(
            Files.DoorCar, ("rear.tire.grip", "1.75"), ("rear.tire.slip_stiffness", "30"), ("rear.tire.pressure.grip", "-0.1 /psi"), ("rear.tire.pressure.vertical", "0 lb/in/psi"), ("rear.tire.pressure.torsional", "0 kN·m/rad/psi"));

        NextResult result = Run(spins, "rear.tire.pressure.set=13 14 15 16 psi");

        NextChange softer = result.Singles.First(change => change.Changes[0].Edit.Value == "14 psi");
        Assert.True(softer.WithSlope.Points < result.Score.Points - 1, "the slope helps");
        Assert.Equal(result.Score.Points, softer.Score.Points, 1e-3);
        Assert.DoesNotContain(result.Singles, result.Helps);
        Assert.Contains(softer, result.BySlopeAlone);
        Assert.StartsWith("No single change helps", NextWords.Conclusion(result, spins, new LaunchSim.Reports.Numbers.Readout(spins.UnitSystem)), StringComparison.Ordinal);
    }

    [Fact]
    public void Run_ChangeThatIsRefused_IsARowWithItsReason()
    {
        // A ride height at which the linkage locks or the car cannot stand is told, not thrown.
        NextResult result = Run(Cars.Door, "rear.spring.rate=150 175 lb/in", "rear.linkage.upper.body.up=14.6 14.8 in");

        Assert.All(result.Singles, change => Assert.Null(change.Trouble));
        Assert.Equal(["rear.linkage.upper.body.up"], result.Singles.Where(change => change.Changes[0].Edit.Path == "rear.linkage.upper.body.holes.2.up").Select(change => change.Changes[0].Setting.Path));
    }

    [Theory]
    [MemberData(nameof(TestCars))]
    public void Offered_OnAnyCar_AreChangesThatItAllows(string car)
    {
        Scenario scenario = Cars.Read(Files.Test(car));

        IReadOnlyList<Variation> offered = OfferedChoices.Of(scenario);

        Assert.NotEmpty(offered);
        Assert.All(offered, variation =>
        {
            Assert.True(variation.Minutes > 0);
            Assert.All(variation.Values, value => Assert.NotNull(scenario.With([value]).Scenario));
            Assert.True(variation.Present >= 0 || variation.Path == "car.ride_height.rear", variation.Path);
        });
    }

    public static TheoryData<string> TestCars => [.. Files.TestCars];

    private static NextResult Run(Scenario scenario, params string[] vary) =>
        NextStudy.Run(scenario, Cars.Vary(scenario, vary), false, Cars.Aims(scenario), 1e-6, 2, null, CancellationToken.None);
}
