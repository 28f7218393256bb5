namespace LaunchSim.Passes.Scales;

/// <summary>
/// A rigid car on four tyres, and with its wheel centres at other heights: suspension blocked, tyres that keep their shape, wheels
/// free to roll, so that the ground only pushes up, right under the wheel centres.
/// </summary>
/// <param name="Weight">The whole car's weight, N.</param>
/// <param name="Ahead">The centre of gravity ahead of the rear wheel centres on the level, m.</param>
/// <param name="Up">Its height above the floor on the level, m.</param>
/// <param name="Wheelbase">Distance of the wheel centres along the level floor, m.</param>
/// <param name="FrontRadius">Height of the front wheel centres on the level, m.</param>
/// <param name="RearRadius">Height of the rear wheel centres on the level, m.</param>
/// <remarks>
/// <para>With wheel centres of different heights their line is inclined on the level already, by β₀ with tan β₀ = (r_f − r_r)/l, and
/// their distance is c = l/cos β₀. With the centres at heights h_f and h_r the line is inclined by β, sin β = (h_f − h_r)/c, and the body
/// has turned nose up by θ = β − β₀. The centre of gravity, at b and z − r_r from the rear centres on the level, is then
/// b·cos θ − (z − r_r)·sin θ ahead of them, and the front centres c·cos β. Moments about the rear contact give the front load
/// F_f = W·(b·cos θ − (z − r_r)·sin θ)/(c·cos β), and the rear carries the rest.</para>
/// <para>With r_f = r_r = r this is the published relation z = r + (F′ − F)·l/(W·tan α), sin α = H/l, for either axle.</para>
/// </remarks>
public readonly record struct LiftedCar(double Weight, double Ahead, double Up, double Wheelbase, double FrontRadius, double RearRadius)
{
    /// <summary>The load of the front axle, N; not a number where the wheel centres cannot be so far apart in height.</summary>
    /// <param name="frontHeight">Height of the front wheel centres above one level, m.</param>
    /// <param name="rearHeight">Height of the rear wheel centres above the same level, m.</param>
    public double FrontLoad(double frontHeight, double rearHeight)
    {
        double rise = FrontRadius - RearRadius;
        double centres = Math.Sqrt((Wheelbase * Wheelbase) + (rise * rise));
        double line = Math.Asin((frontHeight - rearHeight) / centres);
        double turned = line - Math.Atan2(rise, Wheelbase);
        return Weight * ((Ahead * Math.Cos(turned)) - ((Up - RearRadius) * Math.Sin(turned))) / (centres * Math.Cos(line));
    }

    /// <summary>By how much the body turned from the level, nose up, rad.</summary>
    /// <param name="frontHeight">Height of the front wheel centres, m.</param>
    /// <param name="rearHeight">Height of the rear wheel centres, m.</param>
    public double Turned(double frontHeight, double rearHeight)
    {
        double rise = FrontRadius - RearRadius;
        return Math.Asin((frontHeight - rearHeight) / Math.Sqrt((Wheelbase * Wheelbase) + (rise * rise))) - Math.Atan2(rise, Wheelbase);
    }
}
