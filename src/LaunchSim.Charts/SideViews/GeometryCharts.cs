using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Charts.SideViews;

/// <summary>A picture of the side view.</summary>
/// <param name="Name">What it is called in a file's name.</param>
/// <param name="Picture">The picture; null when there is nothing to draw.</param>
/// <param name="Lacks">Why there is nothing to draw; empty when there is.</param>
public sealed record GeometryChart(string Name, Picture? Picture, string Lacks = "");

/// <summary>The pictures of the side view.</summary>
public static class GeometryCharts
{
    private const string SideView = "side-view", Holes = "holes", Travel = "travel";

    /// <summary>The names of all pictures.</summary>
    public static IReadOnlyList<string> Names { get; } = [SideView, Holes, Travel];

    /// <summary>All pictures of a scenario, in the order of <see cref="Names"/>.</summary>
    /// <param name="report">What the side view tells.</param>
    /// <param name="readout">The units.</param>
    public static IReadOnlyList<GeometryChart> Of(GeometryReport report, Readout readout) =>
    [
        new(SideView, SideViewPicture.Of(report, readout)),
        HoleMapPicture.Of(report, readout) is { } holes ? new(Holes, holes)
            : new(Holes, null, "no bracket of the linkage has holes, and nothing of the side view has a doubt (±)"),
        TravelPicture.Of(report, readout) is { } travel ? new(Travel, travel)
            : new(Travel, null, "it needs rear.tire.loaded_radius, the height of the rear wheel centre above the floor"),
    ];
}
