namespace LaunchSim.Figures.Families;

/// <summary>How far the housing turns in the body, both ways: what the pinion and the driveshaft's joints see.</summary>
internal sealed class PinionFigures : IFigureFamily
{
    private static readonly FigureDefinition
        Up = new("pinion_up_largest_rad", "Pinion, largest up", FigureUnit.Angle,
            "largest change of the housing's angle relative to the body since standing, pinion nose up; 0 when it only goes down"),
        Down = new("pinion_down_largest_rad", "Pinion, largest down", FigureUnit.Angle,
            "the same with the pinion's nose down, as a positive number; 0 when it only goes up");

    public string Title => "Pinion";

    public IReadOnlyList<FigureDefinition> Definitions { get; } = [Up, Down];

    public void Read(LaunchReading launch, FigureWriter figures)
    {
        figures.Set(Up, Math.Max(0, launch.Largest(Signal.Pinion).Value), NoFigure.NoRun);
        figures.Set(Down, Math.Max(0, -launch.Smallest(Signal.Pinion).Value), NoFigure.NoRun);
    }
}
