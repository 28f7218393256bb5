using LaunchSim.Vehicle;

namespace LaunchSim.Geometry;

/// <summary>What moving one end of a bar by a step is worth.</summary>
/// <param name="Point">The end that is moved.</param>
/// <param name="PercentUp">Change of percent when it is moved up.</param>
/// <param name="PercentAhead">Change of percent when it is moved ahead.</param>
public readonly record struct EndSensitivity(LinkagePoint Point, double PercentUp, double PercentAhead);

/// <summary>How much percent depends on what is hard to measure.</summary>
public static class Sensitivity
{
    /// <summary>Change of percent when the centre of gravity is higher by a step.</summary>
    /// <param name="view">The side view.</param>
    /// <param name="step">The step, m.</param>
    public static double ToCentreOfGravity(SideView view, double step)
    {
        ArgumentNullException.ThrowIfNull(view);
        return (view with { CentreOfGravityHeight = view.CentreOfGravityHeight + step }).Line.Percent - view.Line.Percent;
    }

    /// <summary>
    /// Change of percent when an end of a bar is moved by a step and the bar re-set so that the housing keeps its angle. Not
    /// a number where that cannot be put together.
    /// </summary>
    /// <param name="view">The side view.</param>
    /// <param name="step">The step, m.</param>
    /// <param name="build">The side view with another linkage, or null where there is none.</param>
    public static IReadOnlyList<EndSensitivity> ToEnds(SideView view, double step, Func<Linkage, SideView?> build)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(build);
        double now = view.Line.Percent;

        double Moved(LinkagePoint point, double ahead, double up)
        {
            Point at = view.Linkage.Get(point);
            return build(view.Linkage.With(point, new Point(at.Ahead + ahead, at.Up + up))) is { CanBeAssembled: true } moved
                ? moved.Line.Percent - now
                : double.NaN;
        }

        return [.. LinkagePoints.Of(view.Linkage).Select(point => new EndSensitivity(point, Moved(point, 0, step), Moved(point, step, 0)))];
    }
}
