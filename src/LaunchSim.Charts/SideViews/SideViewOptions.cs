using LaunchSim.Scenarios;

namespace LaunchSim.Charts.SideViews;

/// <summary>What a side view shows and how large.</summary>
internal sealed record SideViewOptions
{
    /// <summary>What is shown; the whole car when null.</summary>
    public SideViewWindow? Window { get; init; }

    /// <summary>Height of the labels.</summary>
    public double TextSize { get; init; } = 13;

    /// <summary>Points to label with their names and what was entered, in the place of the parts' names; those names when null.</summary>
    public IReadOnlyList<EnteredPoint>? Points { get; init; }

    /// <summary>Whether wheelbase, heights and the instant centre's place are drawn as dimensions.</summary>
    public bool HasDimensions { get; init; } = true;

    /// <summary>Whether percent line, neutral line and the bars' lines to the instant centre are drawn.</summary>
    public bool HasLines { get; init; } = true;

    /// <summary>Whether a faint shape of a car stands behind it, to tell the front from the rear.</summary>
    public bool HasBody { get; init; } = true;

    /// <summary>Whether springs, dampers, wheelie bar, ballast and the centre of gravity are drawn beside the linkage.</summary>
    public bool HasSurroundings { get; init; } = true;

    /// <summary>Whether everything is named, and not only what is constructed from the bars.</summary>
    public bool NamesParts { get; init; } = true;

    /// <summary>Whether anything is labelled.</summary>
    public bool HasLabels { get; init; } = true;
}

/// <summary>A side view that was drawn.</summary>
/// <param name="Projection">Where things are.</param>
/// <param name="Labels">Its labels; more can be placed beside them.</param>
/// <param name="Notes">What a legend has to say, a sentence each: what was left out.</param>
/// <param name="Outside">Points that lie too far away to be shown; those of other parts of the car when only a piece of it is shown.</param>
internal sealed record DrawnSideView(Projection Projection, Drawing.Labels Labels, IReadOnlyList<string> Notes, IReadOnlyList<EnteredPoint> Outside)
{
    /// <summary>What lies outside, as a short sentence; empty when nothing does.</summary>
    public string OutsideWords => Outside.Count == 0 ? ""
        : $"Outside the picture: {PointWords.Few([.. Outside.Select(point => $"{PointWords.Of(point)} at {point.Text}")], "; ")}.";
}
