namespace LaunchSim.Figures;

/// <summary>A largest or smallest value.</summary>
/// <param name="Value">The value; not a number when the window holds none.</param>
/// <param name="Time">When, s: at a jump the instant alone, <see cref="Step"/> tells the side.</param>
/// <param name="Step">The step on whose dense output it lies.</param>
public readonly record struct Extremum(double Value, double Time, int Step)
{
    /// <summary>Whether there is one.</summary>
    public bool Exists => double.IsFinite(Value);
}
