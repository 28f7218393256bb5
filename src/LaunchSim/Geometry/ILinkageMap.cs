using LaunchSim.Vehicle;

namespace LaunchSim.Geometry;

/// <summary>
/// A linkage in side view as a smooth map λ → pose of the axle housing relative to the body. Implement it as a
/// read-only struct: the dynamics are closed over the type. All points are taken from one origin in the body.
/// </summary>
public interface ILinkageMap
{
    /// <summary>The pose at λ by its sine and cosine; not a number where the linkage cannot be assembled.</summary>
    /// <param name="sin">Sine of λ, the rotation of the lower bar (of the ladder bar) relative to the body since measured.</param>
    /// <param name="cos">Cosine of λ.</param>
    /// <param name="pose">Receives the pose.</param>
    void Pose(double sin, double cos, out LinkagePose pose);

    /// <summary>
    /// How far the linkage is from a singular position, where λ no longer says where the housing is: 1 at best, 0 there,
    /// negative or not a number where it cannot be assembled.
    /// </summary>
    /// <param name="lambda">Rotation since measured, rad.</param>
    double Margin(double lambda);

    /// <summary>
    /// What the body does to the housing through the linkage, from the force that it has to supply. The moment left over
    /// is zero when forces and accelerations agree: the housing's third equation.
    /// </summary>
    /// <param name="lambda">Rotation since measured, rad.</param>
    /// <param name="pose">The pose there.</param>
    /// <param name="forceX">Forward force on the housing that the linkage has to supply, both sides, body axes, N.</param>
    /// <param name="forceZ">Upward force, likewise, N.</param>
    /// <param name="moment">Moment on the housing about the axle centre that it has to supply, nose up, N·m.</param>
    LinkForces Forces(double lambda, in LinkagePose pose, double forceX, double forceZ, double moment);

    /// <summary>The bars in the body's axes at λ, for drawings and angles.</summary>
    /// <param name="lambda">Rotation since measured, rad.</param>
    IReadOnlyList<BarPosition> Bars(double lambda);
}

/// <summary>Forces in the bars, and what is left of the housing's moment balance.</summary>
/// <param name="Upper">Pull in the upper bar, N per side; not a number where there is none.</param>
/// <param name="Lower">Pull in the lower bar, N per side; not a number where there is none.</param>
/// <param name="MomentLeft">Moment on the housing that no bar accounts for, N·m, both sides.</param>
public readonly record struct LinkForces(double Upper, double Lower, double MomentLeft);

/// <summary>One bar in side view.</summary>
/// <param name="Name">What it is called in the trade: <c>lower bar</c>, <c>upper bar</c>, <c>ladder bar</c>.</param>
/// <param name="Axle">Its end on the axle housing, body axes from the map's origin, m.</param>
/// <param name="Body">Its end on the body, likewise.</param>
public readonly record struct BarPosition(string Name, Point Axle, Point Body)
{
    /// <summary>Length, m.</summary>
    public double Length => Math.Sqrt(((Body.Ahead - Axle.Ahead) * (Body.Ahead - Axle.Ahead)) + ((Body.Up - Axle.Up) * (Body.Up - Axle.Up)));

    /// <summary>Angle in the body's axes, rad, positive when it climbs to the front.</summary>
    public double Climb => Math.Atan2(Body.Up - Axle.Up, Body.Ahead - Axle.Ahead);
}

/// <summary>Shorthand for linkage maps off the hot path.</summary>
public static class LinkageMapExtensions
{
    /// <summary>The pose at λ; not a number where the linkage cannot be assembled.</summary>
    /// <typeparam name="TMap">The map's type.</typeparam>
    /// <param name="map">The linkage.</param>
    /// <param name="lambda">Rotation of the lower bar (of the ladder bar) relative to the body since measured, rad.</param>
    /// <param name="pose">Receives the pose.</param>
    public static void Pose<TMap>(this TMap map, double lambda, out LinkagePose pose)
        where TMap : ILinkageMap
    {
        ArgumentNullException.ThrowIfNull(map);
        (double sin, double cos) = Math.SinCos(lambda);
        map.Pose(sin, cos, out pose);
    }
}
