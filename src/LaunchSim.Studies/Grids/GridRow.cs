using LaunchSim.Studies.Aims;

namespace LaunchSim.Studies.Grids;

/// <summary>One launch of a grid.</summary>
/// <param name="SetUp">The set-up's number.</param>
/// <param name="Figures">Its figures in the order of the plan; not a number where it has none.</param>
/// <param name="Score">Its score with the grip of the present pressures: what set-ups are ranked by.</param>
/// <param name="WithSlope">Its score with what the entered grip-for-pressure slope adds; the same where no pressure is varied.</param>
/// <param name="Trouble">Why the launch did not come to its end; null when it did.</param>
/// <param name="HeldFigures">Its figures with the grip of the present pressures; null where they are the same.</param>
public readonly record struct GridRow(long SetUp, double[] Figures, AimScore Score, AimScore WithSlope, string? Trouble, double[]? HeldFigures = null)
{
    /// <summary>The figures with the grip of the present pressures, which the score belongs to; the same as the entered ones where no pressure is set.</summary>
    public double[] Held => HeldFigures ?? Figures;
}
