namespace LaunchSim.Vehicle;

/// <summary>
/// A point in the set-up frame: the car at rest at ride height on a flat floor, driver aboard.
/// </summary>
/// <param name="Ahead">Distance ahead of the rear-axle centreline, m; negative behind it.</param>
/// <param name="Up">Height above the floor, m.</param>
public readonly record struct Point(double Ahead, double Up);
