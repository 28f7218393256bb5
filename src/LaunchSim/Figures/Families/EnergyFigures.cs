namespace LaunchSim.Figures.Families;

/// <summary>The energy ledger: how far the run can be trusted as a solution of its equations.</summary>
internal sealed class EnergyFigures : IFigureFamily
{
    private static readonly FigureDefinition
        Work = new("axle_work_largest_j", "Work of the axle torque, largest", FigureUnit.Energy, "largest amount of the work of the axle torque so far in the run"),
        Residual = new("energy_residual_largest_j", "Energy residual, largest", FigureUnit.Energy,
            "largest amount of energy stored plus dissipated less work, over whole milliseconds and step ends"),
        Ratio = new("energy_residual_ratio", "Energy residual over work", FigureUnit.Ratio, "largest energy residual over the largest work");

    public string Title => "Energy";

    public IReadOnlyList<FigureDefinition> Definitions { get; } = [Work, Residual, Ratio];

    public void Read(LaunchReading launch, FigureWriter figures)
    {
        if (launch.Nodes == 0)
        {
            figures.None(Work, NoFigure.NoRun);
            figures.None(Residual, NoFigure.NoRun);
            figures.None(Ratio, NoFigure.NoRun);
            return;
        }

        double largest = 0;
        foreach (double residual in launch.Column(Signal.EnergyResidual))
        {
            if (Math.Abs(residual) > largest)
            {
                largest = Math.Abs(residual);
            }
        }

        double work = launch.Solution.LargestWork;
        figures.Set(Work, work);
        figures.Set(Residual, largest);
        figures.Set(Ratio, work > 0 ? largest / work : double.NaN, "the axle torque did no work");
    }
}
