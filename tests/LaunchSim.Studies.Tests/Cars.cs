using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Varying;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Grids;

namespace LaunchSim.Studies.Tests;

/// <summary>Scenarios and plans to study.</summary>
internal static class Cars
{
    public static Scenario Door { get; } = Read(Files.DoorCar);

    public static Scenario Read(string path, params (string Path, string Value)[] set)
    {
        ReadResult read = StandingCheck.Reader(ReadPurpose.Run).Read(path, set);
        Assert.Empty(read.Errors);
        return read.Scenario!;
    }

    public static IReadOnlyList<Variation> Vary(Scenario scenario, params string[] vary)
    {
        VariationResult read = VariationReader.Read(scenario, vary, "--vary");
        Assert.Empty(read.Errors);
        return read.Variations;
    }

    public static GridPlan Plan(Scenario scenario, IEnumerable<string> figures, params string[] vary)
    {
        var study = new Study { Name = "test", SourceFile = scenario.SourceFile, Scenario = scenario, Variations = Vary(scenario, vary), Aims = scenario.Aims, Budget = null };
        return GridPlan.Of(study, new SetUpGrid(study.Variations), Aims(scenario), figures, 1e-6);
    }

    public static AimSet Aims(Scenario scenario, string? profile = null)
    {
        AimSet? aims = AimSet.Of(scenario.Aims, profile is null ? null : AimProfiles.Find(profile), out string? problem);
        Assert.Null(problem);
        return aims!;
    }
}
