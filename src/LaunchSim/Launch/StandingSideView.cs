using LaunchSim.Dynamics;
using LaunchSim.Geometry;
using LaunchSim.Vehicle;

namespace LaunchSim.Launch;

/// <summary>The side view of a whole car as it stands, with its ride height, ballast and pressures.</summary>
public static class StandingSideView
{
    /// <summary>The side view of a standing car.</summary>
    /// <param name="car">The standing car.</param>
    public static SideView SideView(this StandingCar car)
    {
        ArgumentNullException.ThrowIfNull(car);
        Standing standing = car.Standing;
        return new SideView
        {
            Linkage = car.Car.Rear.Linkage,
            Map = car.Map,
            Lambda = standing.Lambda,
            Pitch = standing.Pitch,
            RearWheelHeight = standing.RearWheelHeight,
            CentreOfGravityHeight = standing.CentreOfGravityHeight,
            Wheelbase = standing.Wheelbase,
        };
    }

    /// <summary>The side view of a car with another linkage, or null when it cannot stand.</summary>
    /// <param name="car">The car.</param>
    /// <param name="linkage">The linkage in the place of the car's.</param>
    public static SideView? WithLinkage(this Car car, Linkage linkage)
    {
        ArgumentNullException.ThrowIfNull(car);
        return StandingCar.TryFind(car with { Rear = car.Rear with { Linkage = linkage } }, out StandingCar? standing, out _)
            ? standing!.SideView()
            : null;
    }

    /// <summary>Whether a position of the linkage is within the rear dampers' travel, stops not touched.</summary>
    /// <param name="car">The standing car.</param>
    /// <param name="pose">The position.</param>
    public static bool WithinTravel(this StandingCar car, in LinkagePose pose)
    {
        ArgumentNullException.ThrowIfNull(car);
        car.Model.Damper.At(pose, out double length, out _, out _, out _);
        return length <= car.Model.TopLength && length >= car.Model.BottomLength;
    }
}
