using LaunchSim.Scenarios;

namespace LaunchSim.Scenarios.Tests;

public sealed class TrackTableTests
{
    [Theory]
    [InlineData("track: {distance: 0 30 60 ft, grip: 1.0 0.9 1.0}")]
    [InlineData("track: {grip: {distance: 0 30 60 ft, grip: 1.0 0.9 1.0}}")]
    [InlineData("track:\n  grip:\n    distance: 0 30 60 ft\n    grip: 1.0 0.9 1.0")]
    public void TrackTable_EitherPlace_ReadsTheSame(string track)
    {
        string text = string.Join('\n', Files.DoorCarText.Split('\n').Select(line => line.StartsWith("track:", StringComparison.Ordinal) ? track : line)
            .Where(line => !line.StartsWith("                                                          # rear tyres start", StringComparison.Ordinal)));
        ReadResult result = new ScenarioReader().ReadText(text, "test.yaml");

        Assert.Empty(result.Errors);
        Assert.Equal([0, 9.144, 18.288], result.Scenario!.Car!.TrackGrip.X.ToArray(), (a, b) => Math.Abs(a - b) < 1e-12);
        Assert.Equal([1.0, 0.9, 1.0], result.Scenario.Car.TrackGrip.Y.ToArray());
    }

    [Fact]
    public void TrackTable_OneLevelDeeperInAChange_ReadsTheSame()
    {
        ReadResult result = new ScenarioReader().ReadText(Files.DoorCarText, "test.yaml", [("track", "{grip: {distance: 0 30 60 ft, grip: 1.0 0.9 1.0}}")]);

        Assert.Empty(result.Errors);
        Assert.Equal([1.0, 0.9, 1.0], result.Scenario!.Car!.TrackGrip.Y.ToArray());
    }
}
