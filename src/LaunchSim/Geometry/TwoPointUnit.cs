using System.Runtime.CompilerServices;
using LaunchSim.Vehicle;

namespace LaunchSim.Geometry;

/// <summary>A spring or damper between a point of the body and a point of the axle housing: its length against λ.</summary>
public readonly struct TwoPointUnit : IEquatable<TwoPointUnit>
{
    private readonly double _bodyX, _bodyZ, _axleX, _axleZ;

    /// <summary>Builds the unit.</summary>
    /// <param name="axleMount">Mount on the housing, measured car.</param>
    /// <param name="bodyMount">Mount on the body, measured car.</param>
    /// <param name="axleCentre">The axle centre of the measured car.</param>
    /// <param name="origin">The body frame's origin in the set-up frame.</param>
    public TwoPointUnit(Point axleMount, Point bodyMount, Point axleCentre, Point origin)
    {
        _bodyX = bodyMount.Ahead - origin.Ahead;
        _bodyZ = bodyMount.Up - origin.Up;
        _axleX = axleMount.Ahead - axleCentre.Ahead;
        _axleZ = axleMount.Up - axleCentre.Up;
    }

    /// <summary>Length ℓ, m, its derivative dℓ/dλ, m/rad, and the unit vector from body mount to axle mount, body axes.</summary>
    /// <param name="pose">The linkage's pose.</param>
    /// <param name="length">Receives the length, m.</param>
    /// <param name="lengthRate">Receives dℓ/dλ, m/rad.</param>
    /// <param name="directionX">Receives the unit vector's forward component.</param>
    /// <param name="directionZ">Receives the unit vector's upward component.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void At(in LinkagePose pose, out double length, out double lengthRate, out double directionX, out double directionZ)
    {
        double offsetX = (pose.Cos * _axleX) - (pose.Sin * _axleZ), offsetZ = (pose.Sin * _axleX) + (pose.Cos * _axleZ);
        double x = pose.X + offsetX - _bodyX, z = pose.Z + offsetZ - _bodyZ;
        double squared = (x * x) + (z * z);
        length = Math.Sqrt(squared);
        // The division runs beside the root, not after it.
        double perLength = length * (1 / squared);
        directionX = x * perLength;
        directionZ = z * perLength;
        lengthRate = (directionX * (pose.X1 - (pose.Angle1 * offsetZ))) + (directionZ * (pose.Z1 + (pose.Angle1 * offsetX)));
    }

    /// <summary>Offset of the axle mount from the axle centre, body axes, m.</summary>
    /// <param name="pose">The linkage's pose.</param>
    public (double X, double Z) AxleOffset(in LinkagePose pose) => pose.Turn(_axleX, _axleZ);

    /// <inheritdoc/>
    public bool Equals(TwoPointUnit other) =>
        _bodyX == other._bodyX && _bodyZ == other._bodyZ && _axleX == other._axleX && _axleZ == other._axleZ;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is TwoPointUnit other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(_bodyX, _bodyZ, _axleX, _axleZ);

    /// <summary>Whether both units stand on the same mounts.</summary>
    /// <param name="left">One unit.</param>
    /// <param name="right">The other.</param>
    public static bool operator ==(TwoPointUnit left, TwoPointUnit right) => left.Equals(right);

    /// <summary>Whether the units stand on different mounts.</summary>
    /// <param name="left">One unit.</param>
    /// <param name="right">The other.</param>
    public static bool operator !=(TwoPointUnit left, TwoPointUnit right) => !left.Equals(right);
}
