using LaunchSim.Figures;

namespace LaunchSim.Studies.Comparing;

/// <summary>One figure of several launches, side by side.</summary>
/// <param name="Definition">What it is.</param>
/// <param name="Family">The title of its family.</param>
/// <param name="Values">Its value in each launch, SI; null where it has none.</param>
public sealed record FigureRow(FigureDefinition Definition, string Family, IReadOnlyList<double?> Values)
{
    /// <summary>How much more a launch has of it than the first one; null where either has none.</summary>
    /// <param name="launch">The launch, from 0.</param>
    public double? Difference(int launch) => Values[launch] - Values[0];

    /// <summary>All figures of launches with the same marks, in the order of their families.</summary>
    /// <param name="launches">The launches' figures.</param>
    public static IReadOnlyList<FigureRow> Of(IReadOnlyList<FigureSet> launches)
    {
        ArgumentNullException.ThrowIfNull(launches);
        return [.. launches[0].Catalog.Families.SelectMany(family => family.Definitions.Select(definition =>
            new FigureRow(definition, family.Title, [.. launches.Select(figures => figures[definition.Key])])))];
    }
}
