using LaunchSim.Geometry;
using LaunchSim.Launch;
using LaunchSim.Vehicle;

namespace LaunchSim.Charts.SideViews;

/// <summary>From points of the measured car to where they are in the standing car, over the ground.</summary>
internal readonly struct SetUpFrame
{
    private readonly double _cos, _sin, _originX, _originZ, _wheelX, _wheelZ, _axleHeight, _wheelHeight;
    private readonly LinkagePose _pose;

    private SetUpFrame(double pitch, Point origin, LinkagePose pose, double axleHeight, double wheelHeight)
    {
        (_sin, _cos) = Math.SinCos(pitch);
        (_originX, _originZ, _wheelX, _wheelZ) = (origin.Ahead, origin.Up, pose.X, pose.Z);
        (_axleHeight, _wheelHeight, _pose) = (axleHeight, wheelHeight, pose);
    }

    /// <summary>The measured car itself: points stay where they were entered.</summary>
    public static SetUpFrame AsMeasured { get; } = new(0, default, new LinkagePose { Cos = 1 }, 0, 0);

    /// <summary>The standing car.</summary>
    /// <param name="standing">The standing car.</param>
    public static SetUpFrame Of(StandingCar standing)
    {
        standing.Map.Pose(standing.Standing.Lambda, out LinkagePose pose);
        return new SetUpFrame(standing.Standing.Pitch, standing.Origin, pose, standing.Car.Rear.Tire.LoadedRadius, standing.Standing.RearWheelHeight);
    }

    /// <summary>A point of the body.</summary>
    /// <param name="entered">As entered.</param>
    public Point Body(Point entered) => Turned(entered.Ahead - _originX - _wheelX, entered.Up - _originZ - _wheelZ);

    /// <summary>A point of the axle housing.</summary>
    /// <param name="entered">As entered.</param>
    public Point Housing(Point entered)
    {
        (double x, double z) = _pose.Turn(entered.Ahead, entered.Up - _axleHeight);
        return Turned(x, z);
    }

    private Point Turned(double x, double z) => new((_cos * x) - (_sin * z), _wheelHeight + (_sin * x) + (_cos * z));
}
