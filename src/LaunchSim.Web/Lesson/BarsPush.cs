using LaunchSim.Dynamics;
using LaunchSim.Launch;

namespace LaunchSim.Web.Lesson;

/// <summary>
/// What the bars press on the axle at one instant of a launch, N, and what of it the drawing knows: from the moment balance of
/// the housing about the instant centre (docs/model.md, sections 7, 10 and 12). With d and e the instant centre ahead of the
/// wheel centre and above the ground, z the wheel centre's height, F the thrust, T the axle torque, m_r and a the axle's mass and
/// acceleration, the links press with [F·e + (T − F·z) − (e − z)·m_r·a + …]/d.
/// </summary>
/// <param name="Engine">Change of the rear load that comes via the links, as the run has it.</param>
/// <param name="Drawing">F·e/d: the drawing's share, with the percent of that instant.</param>
/// <param name="Wheels">(T − F·z)/d: torque that does not become thrust at that radius. It spins up the wheels, rolls the tyre, and the tyre's rolling radius is larger than the centre's height.</param>
/// <param name="AxleMass">−(e − z)·m_r·a/d: the axle's own mass is carried along.</param>
public sealed record BarsPush(double Engine, double Drawing, double Wheels, double AxleMass)
{
    /// <summary>The housing's own turning, and springs and dampers that do not stand over the axle.</summary>
    public double Rest => Engine - Drawing - Wheels - AxleMass;

    /// <summary>Reads a launch whose bars meet at an instant centre.</summary>
    /// <param name="launch">The launch.</param>
    /// <param name="time">When, s.</param>
    public static BarsPush At(LaunchSolution launch, double time)
    {
        ArgumentNullException.ThrowIfNull(launch);
        launch.At(time, out Observation seen);
        double ahead = seen.InstantCentreAhead, up = seen.InstantCentreUp, height = seen.RearWheelHeight;
        return new BarsPush(
            seen.LoadViaLinks,
            seen.RearThrust * up / ahead,
            (seen.AxleTorque - (seen.RearThrust * height)) / ahead,
            -(up - height) * launch.Car.Model.RearMass * seen.Acceleration / ahead);
    }
}
