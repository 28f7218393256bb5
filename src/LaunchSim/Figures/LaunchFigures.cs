using LaunchSim.Launch;
using LaunchSim.Vehicle;

namespace LaunchSim.Figures;

/// <summary>The short way from a launch to its figures.</summary>
public static class LaunchFigures
{
    /// <summary>
    /// Reads all figures off a launch. They come from the dense solution and depend neither on the trace's sample nor on
    /// whether there is one. A launch that failed is read up to where it came.
    /// </summary>
    /// <param name="solution">The launch; not read by another thread meanwhile.</param>
    /// <param name="settings">The settings it was solved with: marks and rollout.</param>
    public static FigureSet Read(LaunchSolution solution, RunSettings settings)
    {
        ArgumentNullException.ThrowIfNull(solution);
        ArgumentNullException.ThrowIfNull(settings);
        using var launch = new LaunchReading(solution, settings);
        return ReadFrom(launch);
    }

    /// <summary>The same off a launch that is laid out already and may be looked at further.</summary>
    /// <param name="launch">The launch.</param>
    public static FigureSet ReadFrom(LaunchReading launch)
    {
        ArgumentNullException.ThrowIfNull(launch);
        var catalog = FigureCatalog.For(launch.Settings.Marks.Count);
        var writer = new FigureWriter(catalog);
        launch.ObserveWhole();
        IReadOnlyList<IFigureFamily> families = catalog.Families;
        for (int i = 0; i < families.Count; i++)
        {
            families[i].Read(launch, writer);
        }

        return writer.Close(launch.Events);
    }

    /// <summary>
    /// Chosen figures off a launch that is laid out already, in a small part of the time where places and speeds tell them:
    /// the others have no value, and what happened stands without its amounts.
    /// </summary>
    /// <param name="launch">The launch.</param>
    /// <param name="selection">The figures.</param>
    public static FigureSet ReadFrom(LaunchReading launch, FigureSelection selection)
    {
        ArgumentNullException.ThrowIfNull(launch);
        ArgumentNullException.ThrowIfNull(selection);
        var writer = new FigureWriter(selection.Catalog, selection.Wanted);
        foreach (IFigureFamily family in selection.Families)
        {
            family.Read(launch, writer);
        }

        return writer.Close(launch.Spells);
    }
}
