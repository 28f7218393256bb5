namespace LaunchSim.Geometry;

/// <summary>What a person reads off the side view of a car at rest: percent, instant centre, bar angles, neutral line.</summary>
/// <param name="Percent">Percent anti-squat; infinite when the contact point would move level.</param>
/// <param name="Slope">Slope of the line from the rear contact point to the instant centre.</param>
/// <param name="InstantCentreAhead">Instant centre ahead of the rear wheel centre, m; not finite with parallel bars.</param>
/// <param name="InstantCentreUp">Instant centre above the ground, m; not finite with parallel bars.</param>
/// <param name="NeutralLineUp">Height of the neutral line at the instant centre, m; not finite with parallel bars.</param>
/// <param name="NeutralSlope">Slope h/L of the neutral line.</param>
/// <param name="Bars">Each bar: name, angle over the ground, rad, positive climbing to the front, and length, m.</param>
public sealed record StaticLine(
    double Percent,
    double Slope,
    double InstantCentreAhead,
    double InstantCentreUp,
    double NeutralLineUp,
    double NeutralSlope,
    IReadOnlyList<BarAngle> Bars)
{
    /// <summary>Reads the static line off a linkage at one position.</summary>
    /// <param name="map">The linkage.</param>
    /// <param name="lambda">Its position, rad since measured.</param>
    /// <param name="pitch">Pitch of the body since measured, rad, nose up positive.</param>
    /// <param name="wheelCentreHeight">Height of the rear wheel centre over the ground, m.</param>
    /// <param name="centreOfGravityHeight">Height h of the whole car's centre of gravity, m.</param>
    /// <param name="wheelbase">Wheelbase L, m.</param>
    public static StaticLine At(
        ILinkageMap map, double lambda, double pitch, double wheelCentreHeight, double centreOfGravityHeight, double wheelbase)
    {
        ArgumentNullException.ThrowIfNull(map);
        map.Pose(lambda, out LinkagePose pose);
        (double sin, double cos) = Math.SinCos(pitch);
        double slope = AntiSquat.Slope(pose, cos, sin, wheelCentreHeight);
        (double ahead, double up) = AntiSquat.InstantCentre(pose, cos, sin, wheelCentreHeight);
        double neutral = centreOfGravityHeight / wheelbase;
        return new StaticLine(
            AntiSquat.Percent(slope, centreOfGravityHeight, wheelbase), slope, ahead, up, neutral * ahead, neutral,
            map.Bars(lambda).Select(bar => new BarAngle(bar.Name, bar.Climb + pitch, bar.Length)).ToArray());
    }
}

/// <summary>A bar's angle over the ground and its length.</summary>
/// <param name="Name">What it is called in the trade.</param>
/// <param name="Climb">Angle over the ground, rad, positive when it climbs to the front.</param>
/// <param name="Length">Length between its ends in side view, m.</param>
public readonly record struct BarAngle(string Name, double Climb, double Length);
