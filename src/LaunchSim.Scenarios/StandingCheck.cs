using LaunchSim.Geometry;
using LaunchSim.Launch;
using LaunchSim.Vehicle;

namespace LaunchSim.Scenarios;

/// <summary>
/// What only shows once the car is put together, as findings of the reader: whether the linkage closes and the car stands.
/// </summary>
public static class StandingCheck
{
    /// <summary>A reader that also puts the car together.</summary>
    /// <param name="purpose">What the scenario is read for.</param>
    public static ScenarioReader Reader(ReadPurpose purpose) => new() { Purpose = purpose, CarCheck = OfCar, GeometryCheck = OfSideView };

    /// <summary>Why a car cannot stand; empty when it does.</summary>
    /// <param name="car">The car.</param>
    public static IReadOnlyList<CarFinding> OfCar(Car car) =>
        StandingCar.TryFind(car, out _, out IReadOnlyList<StandingProblem> problems) ? [] : [.. problems.Select(Finding)];

    /// <summary>Why the linkage of a part file cannot be put together; empty when it can.</summary>
    /// <param name="part">What the side view needs.</param>
    public static IReadOnlyList<CarFinding> OfSideView(GeometryPart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return SideView.AsMeasured(part.Linkage, part.RearLoadedRadius, part.CentreOfGravityHeight, part.Wheelbase).CanBeAssembled
            ? []
            :
            [
                new CarFinding
                {
                    Path = "rear.linkage",
                    Found = "that the linkage as measured cannot be put together: both ends of a bar are the same point, or the upper bar and the axle housing stand in one line",
                    Mend = "check the bars' points",
                },
            ];
    }

    // The problem is a sentence; a finding goes on after the word found.
    private static CarFinding Finding(StandingProblem problem) => new()
    {
        Path = problem.Path,
        Found = "that " + Inside(problem.Found),
        Mend = Inside(problem.Mend),
    };

    private static string Inside(string sentence) =>
        sentence.Length == 0 ? "" : char.ToLowerInvariant(sentence[0]) + sentence[1..].TrimEnd('.');
}
