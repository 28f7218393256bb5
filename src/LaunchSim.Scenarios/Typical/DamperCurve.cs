namespace LaunchSim.Scenarios.Typical;

/// <summary>
/// A damper's force against speed by the damping it gives its corner. The wheel's critical damping is
/// c_c = 2·√(k_w·m) with the spring's rate at the wheel k_w = k·n² (n: change of spring length over wheel travel) and the
/// corner's sprung mass m. A damper that is to give the share ζ of it at a shaft speed v_0 of 0.127 m/s (5 in/s), and that moves d
/// times as fast as the wheel, pushes with ζ·c_c/d²·v_0 there; at other speeds with (v/v_0)^0.6 of that, which is how dampers
/// with a bleed and a shim stack fall off (common practice, no source).
/// </summary>
internal static class DamperCurve
{
    /// <summary>The shaft speed at which a damper is told by one number, m/s.</summary>
    public const double ReferenceSpeed = 5 * 0.0254;

    private const double Power = 0.6;

    /// <summary>Forces at some speeds, N.</summary>
    public static double[] Forces(double[] speeds, double atReference) =>
        [.. speeds.Select(speed => speed <= 0 ? 0 : atReference * Math.Pow(speed / ReferenceSpeed, Power))];

    /// <summary>The force at the reference speed, N.</summary>
    /// <param name="share">Share ζ of the critical damping.</param>
    /// <param name="wheelRate">Spring rate at the wheel, N/m.</param>
    /// <param name="sprung">Sprung mass of the corner, kg.</param>
    /// <param name="ratio">Damper speed over wheel speed.</param>
    public static double AtReference(double share, double wheelRate, double sprung, double ratio) =>
        share * 2 * Math.Sqrt(wheelRate * sprung) / (ratio * ratio) * ReferenceSpeed;

    /// <summary>What an entered curve gives at the reference speed, N: linear between its points, the last slope beyond, as the model has it.</summary>
    public static double Read(double[] speeds, double[] forces)
    {
        int count = Math.Min(speeds.Length, forces.Length);
        for (int i = 1; i < count; i++)
        {
            if (ReferenceSpeed <= speeds[i] || i == count - 1)
            {
                return forces[i - 1] + ((forces[i] - forces[i - 1]) * (ReferenceSpeed - speeds[i - 1]) / (speeds[i] - speeds[i - 1]));
            }
        }

        return double.NaN;
    }
}
