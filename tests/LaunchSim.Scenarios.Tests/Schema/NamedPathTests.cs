using LaunchSim.Scenarios.Paths;

namespace LaunchSim.Scenarios.Tests.Schema;

public class NamedPathTests
{
    [Fact]
    public void Paths_OfTheSchema_CanBeNamedAndSayWhatTheyAre()
    {
        Assert.All(ScenarioSchema.Paths, path =>
        {
            Assert.NotNull(ScenarioPath.Resolve(path.Path, out _));
            Assert.NotEmpty(path.What);
        });
        Assert.Equal(ScenarioSchema.Paths.Count, ScenarioSchema.Paths.Select(path => path.Path).Distinct().Count());
    }

    [Fact]
    public void Paths_OfTheSchema_AreAllThatAreKnownWithThePartsOfPoints()
    {
        string[] listed = [.. ScenarioSchema.Paths.Select(path => path.Path)];

        Assert.Superset(ScenarioPath.Known.Keys.Select(path => path.Replace("[]", "[0]", StringComparison.Ordinal)).ToHashSet(), listed.ToHashSet());
        Assert.Contains("rear.linkage.upper.body.use", listed);
        Assert.Contains("rear.spring.axle.up", listed);
        Assert.DoesNotContain("rear.wheelie_bar.wheel.use", listed);
    }
}
