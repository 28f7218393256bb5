using System.Runtime.CompilerServices;
using LaunchSim.Vehicle;

namespace LaunchSim.Geometry;

/// <summary>Ladder bar: the housing is rigid with a bar that turns by λ about one pivot on the body.</summary>
public readonly struct LadderBarMap : ILinkageMap
{
    private readonly double _pivotX, _pivotZ, _centreX, _centreZ;

    /// <summary>Builds the map.</summary>
    /// <param name="bar">The pivot of the measured car.</param>
    /// <param name="axleCentre">The axle centre of the measured car.</param>
    /// <param name="origin">The body frame's origin in the set-up frame.</param>
    public LadderBarMap(LadderBar bar, Point axleCentre, Point origin)
    {
        ArgumentNullException.ThrowIfNull(bar);
        _pivotX = bar.Pivot.Ahead - origin.Ahead;
        _pivotZ = bar.Pivot.Up - origin.Up;
        _centreX = axleCentre.Ahead - bar.Pivot.Ahead;
        _centreZ = axleCentre.Up - bar.Pivot.Up;
    }

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Pose(double sin, double cos, out LinkagePose pose)
    {
        double cx = (cos * _centreX) - (sin * _centreZ), cz = (sin * _centreX) + (cos * _centreZ);
        pose.X = _pivotX + cx;
        pose.Z = _pivotZ + cz;
        pose.X1 = -cz;
        pose.Z1 = cx;
        pose.X2 = -cx;
        pose.Z2 = -cz;
        pose.Cos = cos;
        pose.Sin = sin;
        pose.Angle1 = 1;
        pose.Angle2 = 0;
        pose.Margin = 1;
    }

    /// <inheritdoc/>
    public double Margin(double lambda) => 1;

    /// <inheritdoc/>
    public LinkForces Forces(double lambda, in LinkagePose pose, double forceX, double forceZ, double moment)
    {
        double armX = _pivotX - pose.X, armZ = _pivotZ - pose.Z;
        return new LinkForces(double.NaN, double.NaN, moment - ((armX * forceZ) - (armZ * forceX)));
    }

    /// <inheritdoc/>
    public IReadOnlyList<BarPosition> Bars(double lambda)
    {
        this.Pose(lambda, out LinkagePose pose);
        return [new BarPosition("ladder bar", new Point(pose.X, pose.Z), new Point(_pivotX, _pivotZ))];
    }
}
