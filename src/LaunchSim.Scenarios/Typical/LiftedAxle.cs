namespace LaunchSim.Scenarios.Typical;

/// <summary>
/// Height of the centre of gravity from lifting one axle with the suspension blocked:
/// z = r + (F' − F)·l/(W·tan α), sin α = H/l (open course notes).
/// </summary>
public static class LiftedAxle
{
    /// <summary>The height above the floor, m.</summary>
    /// <param name="weight">The whole car's weight W, N; above 0.</param>
    /// <param name="wheelbase">Wheelbase l, m; above 0.</param>
    /// <param name="radius">Height r of the wheel centres above what they stand on, m.</param>
    /// <param name="lift">By how much the axle was lifted H, m; above 0, below the wheelbase.</param>
    /// <param name="gain">By how much the other axle's scales gained F' − F, N.</param>
    /// <exception cref="ArgumentOutOfRangeException">The lift is not between 0 and the wheelbase.</exception>
    public static double Height(double weight, double wheelbase, double radius, double lift, double gain)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(lift);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(lift, wheelbase);
        return radius + (gain * wheelbase / (weight * Math.Tan(Math.Asin(lift / wheelbase))));
    }
}
