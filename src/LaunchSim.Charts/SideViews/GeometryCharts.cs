using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Charts.SideViews;

/// <summary>The pictures of the side view, by name.</summary>
public static class GeometryCharts
{
    private const string SideView = "side-view", Holes = "holes", Travel = "travel";

    /// <summary>The names of all pictures that there may be.</summary>
    public static IReadOnlyList<string> Names { get; } = [SideView, Holes, Travel];

    /// <summary>The pictures of a scenario; the one through the travel only when the height of the rear wheel centre is known.</summary>
    /// <param name="report">What the side view tells.</param>
    /// <param name="readout">The units.</param>
    public static IReadOnlyList<(string Name, Picture Picture)> Of(GeometryReport report, Readout readout)
    {
        var pictures = new List<(string, Picture)>
        {
            (SideView, SideViewPicture.Of(report, readout)),
            (Holes, HoleMapPicture.Of(report, readout)),
        };
        if (TravelPicture.Of(report, readout) is { } travel)
        {
            pictures.Add((Travel, travel));
        }

        return pictures;
    }
}
