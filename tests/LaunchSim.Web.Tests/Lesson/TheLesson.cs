using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios.Units;
using LaunchSim.Web.Lesson;

namespace LaunchSim.Web.Tests.Lesson;

/// <summary>The lesson's launches and numbers, solved once for all tests.</summary>
internal static class TheLesson
{
    private static readonly Lazy<LessonRuns> Solved = new(() => LessonRuns.Solve(CancellationToken.None));
    private static readonly Lazy<LessonNumbers> ShopNumbers = new(() => new LessonNumbers(Solved.Value, new Readout(UnitSystem.Shop), CancellationToken.None));
    private static readonly Lazy<LessonNumbers> SiNumbers = new(() => new LessonNumbers(Solved.Value, new Readout(UnitSystem.Si), CancellationToken.None));

    public static LessonRuns Runs => Solved.Value;

    public static LessonNumbers Shop => ShopNumbers.Value;

    public static LessonNumbers Si => SiNumbers.Value;
}
