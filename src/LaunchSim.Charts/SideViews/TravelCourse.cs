using LaunchSim.Geometry;
using LaunchSim.Launch;
using LaunchSim.Reports;

namespace LaunchSim.Charts.SideViews;

/// <summary>The static line through the travel, finely, and where the dampers' stops end it.</summary>
/// <param name="Rows">The rows, lowest body first.</param>
/// <param name="Bottom">How low the body comes, m below standing as a negative number; null when no stop is known or met.</param>
/// <param name="Top">How high the body comes above standing, m; null when no stop is known or met.</param>
internal sealed record TravelCourse(IReadOnlyList<TravelRow> Rows, double? Bottom, double? Top)
{
    private const double Step = 0.001;

    // Without stops as far as the table goes; with them, no farther than a suspension ever does.
    private const int Down = 76, Up = 102, Farthest = 250, Halvings = 40;

    /// <summary>Works it out; null when the height of the rear wheel centre is not known.</summary>
    /// <param name="report">What the side view tells.</param>
    public static TravelCourse? Of(GeometryReport report)
    {
        if (report.Travel is null)
        {
            return null;
        }

        SideView view = report.View;
        if (report.Scenario.Car is not { } car || !StandingCar.TryFind(car, out StandingCar? standing, out _))
        {
            return new TravelCourse(TravelTable.Of(view, Step, Down, Up), null, null);
        }

        bool Within(LinkagePose pose) => standing!.WithinTravel(pose);
        IReadOnlyList<TravelRow> rows = TravelTable.Of(view, Step, Farthest, Farthest, Within);
        return new TravelCourse(rows, -Stop(view, -rows[0].BodyUp, false, Within), Stop(view, rows[^1].BodyUp, true, Within));
    }

    // Between the last row within the travel and the next one, which the linkage still has to reach.
    private static double? Stop(SideView view, double reached, bool isUp, Func<LinkagePose, bool> within)
    {
        bool Reaches(double way, Func<LinkagePose, bool>? limit) => TravelTable.Of(view, way, isUp ? 0 : 1, isUp ? 1 : 0, limit).Count == 2;
        double low = reached, high = reached + Step;
        if (reached > (Farthest - 0.5) * Step || !Reaches(high, null))
        {
            return null;
        }

        for (int i = 0; i < Halvings; i++)
        {
            double middle = 0.5 * (low + high);
            (low, high) = Reaches(middle, within) ? (middle, high) : (low, middle);
        }

        return low;
    }
}
