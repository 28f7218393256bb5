namespace LaunchSim.Geometry;

/// <summary>Percent anti-squat and the neutral line, for a solid axle whose housing takes the drive torque.</summary>
public static class AntiSquat
{
    // Bars of one length and slope leave rounding, some 1e-16, of α': an instant centre a million kilometres away is none.
    private const double LeastTurn = 1e-12;

    /// <summary>
    /// Slope of the line from the rear contact point to the instant centre: −v_x/v_z of the housing point now at the
    /// contact point, right also with the instant centre at infinity. Infinite when that point moves level.
    /// </summary>
    /// <param name="pose">The linkage's pose.</param>
    /// <param name="cosine">Cosine of the body's pitch θ.</param>
    /// <param name="sine">Sine of the body's pitch θ.</param>
    /// <param name="wheelCentreHeight">Height of the rear wheel centre over the ground z_c, m.</param>
    public static double Slope(in LinkagePose pose, double cosine, double sine, double wheelCentreHeight)
    {
        // From the axle centre straight down to the ground, in the body's axes.
        double downX = -sine * wheelCentreHeight, downZ = -cosine * wheelCentreHeight;
        double bodyX = pose.X1 - (pose.Angle1 * downZ), bodyZ = pose.Z1 + (pose.Angle1 * downX);
        double x = (cosine * bodyX) - (sine * bodyZ), z = (sine * bodyX) + (cosine * bodyZ);
        return -x / z;
    }

    /// <summary>Percent anti-squat: 100 times the slope over that of the neutral line.</summary>
    /// <param name="slope">Slope of the line from the contact point to the instant centre.</param>
    /// <param name="centreOfGravityHeight">Height h of the whole standing car's centre of gravity, m.</param>
    /// <param name="wheelbase">Wheelbase L of the standing car, m.</param>
    public static double Percent(double slope, double centreOfGravityHeight, double wheelbase) =>
        100 * slope / (centreOfGravityHeight / wheelbase);

    /// <summary>
    /// The instant centre in the ground frame: ahead of the rear wheel centre and above the ground, m. Not finite when
    /// the housing does not turn against the body.
    /// </summary>
    /// <param name="pose">The linkage's pose.</param>
    /// <param name="cosine">Cosine of the body's pitch θ.</param>
    /// <param name="sine">Sine of the body's pitch θ.</param>
    /// <param name="wheelCentreHeight">Height of the rear wheel centre over the ground z_c, m.</param>
    public static (double Ahead, double Up) InstantCentre(in LinkagePose pose, double cosine, double sine, double wheelCentreHeight)
    {
        if (Math.Abs(pose.Angle1) < LeastTurn)
        {
            return (double.PositiveInfinity, double.PositiveInfinity);
        }

        double x = -pose.Z1 / pose.Angle1, z = pose.X1 / pose.Angle1;
        return ((cosine * x) - (sine * z), wheelCentreHeight + (sine * x) + (cosine * z));
    }
}
