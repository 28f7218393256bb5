using LaunchSim.Scenarios.Units;

namespace LaunchSim.Reports.Numbers;

/// <summary>Numbers in the units and with the digits that a person reads, the same in every culture.</summary>
/// <param name="system">Whose units.</param>
public sealed class Readout(UnitSystem system)
{
    private const double Inch = 0.0254, Foot = 0.3048, PoundForce = 4.4482216152605, Mile = 1609.344, Gravity = 9.80665;

    /// <summary>Whose units.</summary>
    public UnitSystem System { get; } = system;

    /// <summary>Whether they are the shop's.</summary>
    public bool IsShop => System == UnitSystem.Shop;

    /// <summary>A movement of the suspension or a rise.</summary>
    public Scale Travel => IsShop ? new("in", Inch, 2) : new("mm", 0.001, 1);

    /// <summary>A place on the car.</summary>
    public Scale Place => IsShop ? new("in", Inch, 1) : new("mm", 0.001, 0);

    /// <summary>A way along the track.</summary>
    public Scale Distance => IsShop ? new("ft", Foot, 1) : new("m", 1, 2);

    /// <summary>A speed along the track.</summary>
    public Scale Speed => IsShop ? new("mph", Mile / 3600, 1) : new("km/h", 1 / 3.6, 1);

    /// <summary>A speed of a damper's shaft.</summary>
    public Scale ShaftSpeed => IsShop ? new("in/s", Inch, 1) : new("mm/s", 0.001, 0);

    /// <summary>An acceleration.</summary>
    public static Scale Acceleration => new("g", Gravity, 2);

    /// <summary>A force.</summary>
    public Scale Force => IsShop ? new("lb", PoundForce, 0) : new("N", 1, 0);

    /// <summary>A torque.</summary>
    public Scale Torque => IsShop ? new("lb-ft", PoundForce * Foot, 0) : new("N·m", 1, 0);

    /// <summary>An angle.</summary>
    public static Scale Angle => new("°", Math.PI / 180, 1);

    /// <summary>A time.</summary>
    public static Scale Time => new("s", 1, 3);

    /// <summary>A short time, such as a lag.</summary>
    public static Scale Lag => new("ms", 0.001, 0);

    /// <summary>A speed of rotation.</summary>
    public static Scale Rotation => new("rpm", Math.PI / 30, 0);

    /// <summary>Percent.</summary>
    public static Scale Percent => new("%", 1, 0);

    /// <summary>An energy.</summary>
    public static Scale Energy => new("J", 1, 1);
}
