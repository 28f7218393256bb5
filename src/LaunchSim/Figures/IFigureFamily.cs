namespace LaunchSim.Figures;

/// <summary>
/// Figures that belong together: declared once and read off a launch in one place. To add a family: implement this in
/// one file and add one line to <see cref="FigureFamilies"/>.
/// </summary>
public interface IFigureFamily
{
    /// <summary>Heading for tables.</summary>
    string Title { get; }

    /// <summary>The family's figures in order: always the same instances.</summary>
    IReadOnlyList<FigureDefinition> Definitions { get; }

    /// <summary>Reads the figures; those that it leaves out have no value. Must also work for a run of no length.</summary>
    /// <param name="launch">The launch.</param>
    /// <param name="figures">Takes the values.</param>
    void Read(LaunchReading launch, FigureWriter figures);
}
