using System.Collections.Concurrent;

namespace LaunchSim.Figures;

/// <summary>
/// The definitions of all figures, in order, for runs with one number of marks. Immutable; one for each number of marks,
/// shared by all launches.
/// </summary>
public sealed class FigureCatalog
{
    private static readonly ConcurrentDictionary<int, FigureCatalog> Known = new();
    private readonly Dictionary<string, int> _byKey = new(StringComparer.Ordinal);
    private readonly Dictionary<FigureDefinition, int> _byDefinition = new(ReferenceEqualityComparer.Instance);

    private FigureCatalog(int marks)
    {
        Families = FigureFamilies.Create(marks);
        var definitions = new List<FigureDefinition>();
        foreach (IFigureFamily family in Families)
        {
            foreach (FigureDefinition definition in family.Definitions)
            {
                _byKey.Add(definition.Key, definitions.Count);
                _byDefinition.Add(definition, definitions.Count);
                definitions.Add(definition);
            }
        }

        Definitions = definitions;
    }

    /// <summary>The families in order.</summary>
    public IReadOnlyList<IFigureFamily> Families { get; }

    /// <summary>All definitions in order.</summary>
    public IReadOnlyList<FigureDefinition> Definitions { get; }

    /// <summary>The catalogue for runs with a number of marks.</summary>
    /// <param name="marks">How many places are timed; 0 or more.</param>
    public static FigureCatalog For(int marks) => Known.GetOrAdd(marks, static count => new FigureCatalog(count));

    /// <summary>Where a key stands in <see cref="Definitions"/>.</summary>
    /// <param name="key">The key.</param>
    /// <param name="index">Its place.</param>
    /// <returns>False when there is no such figure.</returns>
    public bool TryFind(string key, out int index) => _byKey.TryGetValue(key, out index);

    internal int IndexOf(FigureDefinition definition) => _byDefinition[definition];
}
