using System.Runtime.CompilerServices;
using LaunchSim.Vehicle;

namespace LaunchSim.Geometry;

/// <summary>
/// Four-link in side view. λ turns the lower bar about its body pivot; the upper axle pivot lies where the circle about
/// the lower axle pivot (the housing) meets the circle about the upper body pivot (the upper bar), on the branch on which
/// the car was assembled. Derivatives from the closure |A_U − B_U|² = const, differentiated twice.
/// </summary>
public readonly struct FourLinkMap : ILinkageMap
{
    private readonly double _lowerBodyX, _lowerBodyZ, _upperBodyX, _upperBodyZ;

    // Measured: lower bar from body to axle; housing from lower to upper axle pivot; housing from lower pivot to centre.
    private readonly double _barX, _barZ, _housingX, _housingZ, _centreX, _centreZ;
    private readonly double _housingSquared, _perHousing, _closure, _branch, _perMargin;

    /// <summary>Builds the map.</summary>
    /// <param name="links">The four points of the measured car.</param>
    /// <param name="axleCentre">The axle centre of the measured car.</param>
    /// <param name="origin">The body frame's origin in the set-up frame.</param>
    public FourLinkMap(FourLink links, Point axleCentre, Point origin)
    {
        ArgumentNullException.ThrowIfNull(links);
        _lowerBodyX = links.LowerBody.Ahead - origin.Ahead;
        _lowerBodyZ = links.LowerBody.Up - origin.Up;
        _upperBodyX = links.UpperBody.Ahead - origin.Ahead;
        _upperBodyZ = links.UpperBody.Up - origin.Up;
        _barX = links.LowerAxle.Ahead - links.LowerBody.Ahead;
        _barZ = links.LowerAxle.Up - links.LowerBody.Up;
        _housingX = links.UpperAxle.Ahead - links.LowerAxle.Ahead;
        _housingZ = links.UpperAxle.Up - links.LowerAxle.Up;
        _centreX = axleCentre.Ahead - links.LowerAxle.Ahead;
        _centreZ = axleCentre.Up - links.LowerAxle.Up;
        _housingSquared = (_housingX * _housingX) + (_housingZ * _housingZ);
        _perHousing = 1 / _housingSquared;
        double upperX = links.UpperAxle.Ahead - links.UpperBody.Ahead, upperZ = links.UpperAxle.Up - links.UpperBody.Up;
        _closure = _housingSquared - ((upperX * upperX) + (upperZ * upperZ));
        _perMargin = 1 / (_housingSquared * ((upperX * upperX) + (upperZ * upperZ)));
        double dx = links.UpperBody.Ahead - links.LowerAxle.Ahead, dz = links.UpperBody.Up - links.LowerAxle.Up;
        _branch = (dx * _housingZ) - (dz * _housingX) >= 0 ? 1 : -1;
    }

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Pose(double sin, double cos, out LinkagePose pose)
    {
        double lx = (cos * _barX) - (sin * _barZ), lz = (sin * _barX) + (cos * _barZ);
        double ax = _lowerBodyX + lx, az = _lowerBodyZ + lz;
        double dx = _upperBodyX - ax, dz = _upperBodyZ - az;
        double distanceSquared = (dx * dx) + (dz * dz);
        double k = 0.5 * (distanceSquared + _closure);
        // Cross product of the line between the two circles' centres with the housing; its sign is the branch.
        double crossSquared = (_housingSquared * distanceSquared) - (k * k);
        double cross = _branch * Math.Sqrt(crossSquared);
        // Both divisions run beside the root, not after it.
        double perCrossSquared = 1 / crossSquared;
        double scale = 1 / distanceSquared;
        double ex = ((k * dx) - (cross * dz)) * scale, ez = ((k * dz) + (cross * dx)) * scale;
        double ux = ex - dx, uz = ez - dz;

        double perCross = cross * perCrossSquared;
        double angle1 = ((ux * lz) - (uz * lx)) * perCross;
        double wx = -lz - (ez * angle1), wz = lx + (ex * angle1);
        double squared = angle1 * angle1;
        double angle2 = ((ux * (lx + (ex * squared))) + (uz * (lz + (ez * squared))) - (wx * wx) - (wz * wz)) * perCross;

        double ca = ((_housingX * ex) + (_housingZ * ez)) * _perHousing, sa = ((_housingX * ez) - (_housingZ * ex)) * _perHousing;
        double cx = (ca * _centreX) - (sa * _centreZ), cz = (sa * _centreX) + (ca * _centreZ);
        pose.X = ax + cx;
        pose.Z = az + cz;
        pose.X1 = -lz - (angle1 * cz);
        pose.Z1 = lx + (angle1 * cx);
        pose.X2 = -lx - (squared * cx) - (angle2 * cz);
        pose.Z2 = -lz - (squared * cz) + (angle2 * cx);
        pose.Cos = ca;
        pose.Sin = sa;
        pose.Angle1 = angle1;
        pose.Angle2 = angle2;
        pose.Margin = crossSquared * _perMargin;
    }

    /// <inheritdoc/>
    public double Margin(double lambda)
    {
        (double sin, double cos) = Math.SinCos(lambda);
        double dx = _upperBodyX - _lowerBodyX - ((cos * _barX) - (sin * _barZ));
        double dz = _upperBodyZ - _lowerBodyZ - ((sin * _barX) + (cos * _barZ));
        double distanceSquared = (dx * dx) + (dz * dz);
        double upperSquared = _housingSquared - _closure;
        double k = 0.5 * (distanceSquared + _closure);
        // Squared sine of the angle between the upper bar and the line through both axle pivots.
        return ((_housingSquared * distanceSquared) - (k * k)) / (_housingSquared * upperSquared);
    }

    /// <inheritdoc/>
    public LinkForces Forces(double lambda, in LinkagePose pose, double forceX, double forceZ, double moment)
    {
        (BarPosition lower, BarPosition upper) = Positions(lambda, pose);
        (double lx, double lz) = Direction(lower);
        (double ux, double uz) = Direction(upper);
        // Arms from the axle centre to the axle pivots, over the housing's length to weigh like a force.
        double housing = Math.Sqrt(_housingSquared);
        double lowerArm = (((lower.Axle.Ahead - pose.X) * lz) - ((lower.Axle.Up - pose.Z) * lx)) / housing;
        double upperArm = (((upper.Axle.Ahead - pose.X) * uz) - ((upper.Axle.Up - pose.Z) * ux)) / housing;
        double couple = moment / housing;

        // Two unknown pulls, three equations. With bars that are all but parallel the two force equations say the same
        // twice: the best-conditioned pair of the three is solved, and the third is the check.
        double forces = (lx * uz) - (lz * ux), withX = (lx * upperArm) - (lowerArm * ux), withZ = (lz * upperArm) - (lowerArm * uz);
        double pullLower, pullUpper, left;
        if (Math.Abs(forces) >= Math.Max(Math.Abs(withX), Math.Abs(withZ)))
        {
            pullLower = ((forceX * uz) - (forceZ * ux)) / forces;
            pullUpper = ((lx * forceZ) - (lz * forceX)) / forces;
            left = (couple - (lowerArm * pullLower) - (upperArm * pullUpper)) * housing;
        }
        else if (Math.Abs(withX) >= Math.Abs(withZ))
        {
            pullLower = ((forceX * upperArm) - (couple * ux)) / withX;
            pullUpper = ((lx * couple) - (lowerArm * forceX)) / withX;
            left = (forceZ - (lz * pullLower) - (uz * pullUpper)) * housing;
        }
        else
        {
            pullLower = ((forceZ * upperArm) - (couple * uz)) / withZ;
            pullUpper = ((lz * couple) - (lowerArm * forceZ)) / withZ;
            left = (forceX - (lx * pullLower) - (ux * pullUpper)) * housing;
        }

        return new LinkForces(0.5 * pullUpper, 0.5 * pullLower, left);
    }

    /// <inheritdoc/>
    public IReadOnlyList<BarPosition> Bars(double lambda)
    {
        this.Pose(lambda, out LinkagePose pose);
        (BarPosition lower, BarPosition upper) = Positions(lambda, pose);
        return [lower, upper];
    }

    private (BarPosition Lower, BarPosition Upper) Positions(double lambda, in LinkagePose pose)
    {
        (double sin, double cos) = Math.SinCos(lambda);
        double ax = _lowerBodyX + (cos * _barX) - (sin * _barZ), az = _lowerBodyZ + (sin * _barX) + (cos * _barZ);
        (double hx, double hz) = pose.Turn(_housingX, _housingZ);
        return (
            new BarPosition("lower bar", new Point(ax, az), new Point(_lowerBodyX, _lowerBodyZ)),
            new BarPosition("upper bar", new Point(ax + hx, az + hz), new Point(_upperBodyX, _upperBodyZ)));
    }

    private static (double X, double Z) Direction(BarPosition bar) =>
        ((bar.Body.Ahead - bar.Axle.Ahead) / bar.Length, (bar.Body.Up - bar.Axle.Up) / bar.Length);
}
