using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Doubtful;

namespace LaunchSim.Passes.Tests.Fitting;

public sealed class ClickOffsetTests
{
    private const string Side = "rear.damper.extension";

    [Theory]
    [InlineData(0, 2)]
    [InlineData(0, 7.5)]
    [InlineData(12, -3)]
    [InlineData(6, 3)]
    [InlineData(6, -6)]
    public void Offset_AtASheetsClick_IsTheDamperAtThatManyClicksMore(double set, double offset)
    {
        Scenario car = Files.Scenario("door-car.yaml", ($"{Side}.set", FormattableString.Invariant($"{set}")));
        Scenario moved = car.With(ClickOffsets.Of(car, Side)!.Moved(offset / ClickOffsets.UsualDoubt)).Scenario!;
        Scenario other = car.With([($"{Side}.set", FormattableString.Invariant($"{set + offset}"))]).Scenario!;
        Assert.Equal(Forces(other), Forces(moved), (expected, found) => Math.Abs(expected - found) < 1e-9);
    }

    [Fact]
    public void Offset_OfNothing_ChangesNothing()
    {
        Scenario car = Files.Scenario("door-car.yaml");
        Assert.Equal(Forces(car), Forces(car.With(ClickOffsets.Of(car, Side)!.Moved(0)).Scenario!), (expected, found) => Math.Abs(expected - found) < 1e-9);
    }

    [Fact]
    public void Offset_WhereSheetsDoNotSayWhatAClickDoes_IsNone()
    {
        Assert.Null(ClickOffsets.Of(Files.Scenario("door-car.yaml"), "front.damper.extension"));
        Assert.Null(ClickOffsets.Of(Files.Scenario("door-car.yaml", ($"{Side}.clicks", "{0: 0 0 0 0 0 0 lb, 6: 0 35 60 105 155 225 lb, 12: 0 80 140 230 320 440 lb}")), Side));
    }

    [Theory]
    [InlineData(-4)]
    [InlineData(4)]
    public void Offset_BeyondTheSheets_GivesADamperThatNeverFallsWithSpeed(double share)
    {
        Scenario car = Files.Scenario("door-car.yaml");
        ReadResult moved = car.With(ClickOffsets.Of(car, Side)!.Moved(share));
        Assert.Empty(moved.Errors);
    }

    private static double[] Forces(Scenario car) => ((Vehicle.DamperTables)car.Car!.Rear.Damper).Extension.Y.ToArray();
}
