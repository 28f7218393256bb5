using LaunchSim.Dynamics;

namespace LaunchSim.Tests.Dynamics;

/// <summary>One axle's tyres in one call, as the equations of motion put them together for two axles at once.</summary>
internal static class WholeTire
{
    public static TireResult At(
        this TireForce tire, ContactMode contact, TravelBranch travel, bool onFloor,
        double height, double rise, double speed, double spin, double deflection)
    {
        double slip = tire.SlipRatio(deflection);
        tire.Touch(contact, travel, onFloor, 1, height, rise, speed, spin, slip, out TireResult result);
        tire.Push(contact, tire.Curve.At(slip), height, spin, TireForce.RollingShares(spin, spin)[0], ref result);
        return result;
    }
}
