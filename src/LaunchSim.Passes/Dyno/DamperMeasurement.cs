namespace LaunchSim.Passes.Dyno;

/// <summary>One run with its signs set right: shaft speed positive while the damper gets longer, force positive in the direction of positive speed.</summary>
/// <param name="Run">The run as it was read.</param>
/// <param name="Velocities">Speeds, m/s; positive is extension.</param>
/// <param name="Forces">What the dyno pulls with, N; positive while it pulls the damper longer. The gas still in it, as a constant below.</param>
/// <param name="GasForce">The force that pushes the shaft out at a standstill, N; taken off at zero speed. Null when the run never comes near zero.</param>
/// <param name="GasSwing">By how much more it pushes with the shaft in than with the shaft out, N; null where the rows do not go through whole strokes.</param>
/// <param name="GasRate">How much the gas force grows with the shaft's way in, N/m; null without displacement.</param>
/// <param name="IsLoop">Whether the rows go through whole strokes, so that speeding up and slowing down can be told apart.</param>
public sealed record DamperMeasurement(
    DynoRun Run, IReadOnlyList<double> Velocities, IReadOnlyList<double> Forces, double? GasForce, double? GasSwing, double? GasRate, bool IsLoop)
{
    /// <summary>What the damper resists with at a row, N, the gas taken out: positive against its movement either way.</summary>
    /// <param name="row">The row.</param>
    public double Resistance(int row) => (Forces[row] + (GasForce ?? 0)) * (Velocities[row] >= 0 ? 1 : -1);
}
