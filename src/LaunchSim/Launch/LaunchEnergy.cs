using LaunchSim.Dynamics;

namespace LaunchSim.Launch;

/// <summary>How much energy a launch is about, before it is solved.</summary>
internal static class LaunchEnergy
{
    private const double FirstSecond = 1;
    private const int Slices = 64;

    /// <summary>
    /// Kinetic energy after one second of a rigid car pushed by the driveline's torque, as far as the tyres' grip on the
    /// whole weight lets it, J.
    /// </summary>
    public static double About<TDriveline>(StandingCar car, TDriveline driveline)
        where TDriveline : struct, IDriveline
    {
        Standing standing = car.Standing;
        double weight = standing.RearLoad + standing.FrontLoad, mass = weight / LaunchModel.Gravity;
        double grip = car.Model.RearTire.Grip * weight;
        double impulse = 0;
        for (int i = 0; i < Slices; i++)
        {
            double torque = driveline.TorqueAtMost((i + 0.5) * FirstSecond / Slices);
            impulse += Math.Clamp(torque / car.Model.RearTire.FreeRadius, -grip, grip) * FirstSecond / Slices;
        }

        return 0.5 * impulse * impulse / mass;
    }
}
