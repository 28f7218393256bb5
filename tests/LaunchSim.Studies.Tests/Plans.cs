using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Varying;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Grids;

namespace LaunchSim.Studies.Tests;

/// <summary>Small plans over scenarios of the repository.</summary>
internal static class Plans
{
    public static GridPlan Of(string file, IReadOnlyList<(string, string)> set, IReadOnlyList<string> figures, double tolerance, params string[] vary)
    {
        StudyResult read = new StudyReader(StandingCheck.Reader(ReadPurpose.Run)).Read(file, set, vary);
        Assert.True(read.Study is not null, string.Join('\n', read.Errors));
        AimSet aims = AimSet.Of(read.Study.Aims, null, out string? problem)!;
        Assert.Null(problem);
        return GridPlan.Of(read.Study, new SetUpGrid(read.Study.Variations), aims, figures, tolerance);
    }

    /// <summary>42 short launches of the shipped car, some of which have no rise lag.</summary>
    public static GridPlan Small(params string[] vary) =>
        Of(Files.DoorCar, [("run.duration", "0.2 s")], [], GridPlan.Tolerance, vary.Length > 0 ? vary : ["rear.spring.rate=120 to 250 by 10 lb/in", "rear.linkage.upper.body.use=all"]);
}

/// <summary>A folder that is gone after the test.</summary>
internal sealed class Folder : IDisposable
{
    public string At { get; } = Directory.CreateTempSubdirectory("launchsim").FullName;

    public string Path(string name) => System.IO.Path.Combine(At, name);

    public void Dispose() => Directory.Delete(At, true);
}
