using LaunchSim.Vehicle;

namespace LaunchSim.Geometry;

/// <summary>One point of a linkage that can be moved: an end of a bar.</summary>
public enum LinkagePoint
{
    /// <summary>The lower bar's end on the axle housing.</summary>
    LowerAxle,

    /// <summary>The lower bar's end on the body.</summary>
    LowerBody,

    /// <summary>The upper bar's end on the axle housing.</summary>
    UpperAxle,

    /// <summary>The upper bar's end on the body.</summary>
    UpperBody,

    /// <summary>The ladder bar's pivot on the body.</summary>
    Pivot,
}

/// <summary>Finds and moves the points of a linkage: one line a point.</summary>
public static class LinkagePoints
{
    /// <summary>The points that a linkage has, lower bar first.</summary>
    /// <param name="linkage">The linkage.</param>
    public static IReadOnlyList<LinkagePoint> Of(Linkage linkage) => linkage is FourLink
        ? [LinkagePoint.LowerAxle, LinkagePoint.LowerBody, LinkagePoint.UpperAxle, LinkagePoint.UpperBody]
        : [LinkagePoint.Pivot];

    /// <summary>Where a point of the linkage is.</summary>
    /// <param name="linkage">The linkage.</param>
    /// <param name="point">The point.</param>
    /// <exception cref="ArgumentException">The linkage has no such point.</exception>
    public static Point Get(this Linkage linkage, LinkagePoint point) => (linkage, point) switch
    {
        (FourLink four, LinkagePoint.LowerAxle) => four.LowerAxle,
        (FourLink four, LinkagePoint.LowerBody) => four.LowerBody,
        (FourLink four, LinkagePoint.UpperAxle) => four.UpperAxle,
        (FourLink four, LinkagePoint.UpperBody) => four.UpperBody,
        (LadderBar ladder, LinkagePoint.Pivot) => ladder.Pivot,
        _ => throw Unknown(point),
    };

    /// <summary>
    /// The linkage with a point elsewhere. The bar's length is re-set so that the housing stays at its measured angle, as
    /// one does when changing a hole.
    /// </summary>
    /// <param name="linkage">The linkage.</param>
    /// <param name="point">The point.</param>
    /// <param name="to">Where it goes.</param>
    /// <exception cref="ArgumentException">The linkage has no such point.</exception>
    public static Linkage With(this Linkage linkage, LinkagePoint point, Point to) => (linkage, point) switch
    {
        (FourLink four, LinkagePoint.LowerAxle) => four with { LowerAxle = to },
        (FourLink four, LinkagePoint.LowerBody) => four with { LowerBody = to },
        (FourLink four, LinkagePoint.UpperAxle) => four with { UpperAxle = to },
        (FourLink four, LinkagePoint.UpperBody) => four with { UpperBody = to },
        (LadderBar ladder, LinkagePoint.Pivot) => ladder with { Pivot = to },
        _ => throw Unknown(point),
    };

    private static ArgumentException Unknown(LinkagePoint point) => new($"The linkage has no point {point}.", nameof(point));
}
