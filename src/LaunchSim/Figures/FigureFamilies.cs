using LaunchSim.Figures.Families;

namespace LaunchSim.Figures;

/// <summary>The register of figure families: one line a family, in the order of tables.</summary>
public static class FigureFamilies
{
    /// <summary>The families for runs with a number of marks.</summary>
    /// <param name="marks">How many places are timed.</param>
    internal static IReadOnlyList<IFigureFamily> Create(int marks) =>
    [
        new StaticFigures(),
        new RiseFigures(),
        new GapFigures(),
        new SeparationFigures(),
        new RearLoadFigures(),
        new FrontTireFigures(),
        new GripFigures(),
        new DamperFigures(),
        new StopFigures(),
        new LinkFigures(),
        new PinionFigures(),
        new WheelieBarFigures(),
        new DrivelineFigures(),
        new CarFigures(),
        new MarkFigures(marks),
        new EnergyFigures(),
    ];
}
