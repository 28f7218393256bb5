using LaunchSim.Vehicle;

namespace LaunchSim.Geometry;

/// <summary>The register of linkages: one line a kind.</summary>
public static class LinkageMaps
{
    /// <summary>The map of a linkage.</summary>
    /// <param name="linkage">The linkage as measured.</param>
    /// <param name="axleCentre">The axle centre of the measured car.</param>
    /// <param name="origin">The body frame's origin in the set-up frame.</param>
    /// <exception cref="NotSupportedException">No map is registered for this kind of linkage.</exception>
    public static ILinkageMap Create(Linkage linkage, Point axleCentre, Point origin) => linkage switch
    {
        FourLink fourLink => new FourLinkMap(fourLink, axleCentre, origin),
        LadderBar ladderBar => new LadderBarMap(ladderBar, axleCentre, origin),
        _ => throw new NotSupportedException($"No map is registered for a linkage of kind {linkage?.GetType().Name}."),
    };
}
