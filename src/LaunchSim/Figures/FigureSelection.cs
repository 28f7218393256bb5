namespace LaunchSim.Figures;

/// <summary>
/// The figures that a study wants of each launch, out of the catalogue. Immutable; shared by any number of
/// <see cref="FigureReader"/>s.
/// </summary>
public sealed class FigureSelection
{
    private readonly int[] _indices;
    private readonly bool[] _wanted;

    private FigureSelection(FigureCatalog catalog, int[] indices)
    {
        Catalog = catalog;
        _indices = indices;
        _wanted = new bool[catalog.Definitions.Count];
        foreach (int index in indices)
        {
            _wanted[index] = true;
        }

        Figures = Array.ConvertAll(indices, index => catalog.Definitions[index]);
        Families = catalog.Families.Where(family => family.Definitions.Any(figure => _wanted[catalog.IndexOf(figure)])).ToArray();
    }

    /// <summary>The catalogue that the figures are out of.</summary>
    public FigureCatalog Catalog { get; }

    /// <summary>The figures, in the order in which they were asked for.</summary>
    public IReadOnlyList<FigureDefinition> Figures { get; }

    /// <summary>The families that have to be read.</summary>
    internal IFigureFamily[] Families { get; }

    /// <summary>Which of the catalogue's figures are wanted.</summary>
    internal bool[] Wanted => _wanted;

    /// <summary>Where each figure stands in the catalogue.</summary>
    internal ReadOnlySpan<int> Indices => _indices;

    /// <summary>Chooses figures by their keys.</summary>
    /// <param name="marks">How many places the launches time; 0 or more.</param>
    /// <param name="keys">The keys, each once, in the order in which the values are wanted.</param>
    /// <exception cref="ArgumentException">Keys that are no figure's or come twice: all of them are named.</exception>
    public static FigureSelection Of(int marks, IEnumerable<string> keys)
    {
        ArgumentNullException.ThrowIfNull(keys);
        var catalog = FigureCatalog.For(marks);
        var indices = new List<int>();
        var unknown = new List<string>();
        var twice = new List<string>();
        foreach (string key in keys)
        {
            if (!catalog.TryFind(key, out int index))
            {
                unknown.Add(key);
            }
            else if (indices.Contains(index))
            {
                twice.Add(key);
            }
            else
            {
                indices.Add(index);
            }
        }

        if (unknown.Count + twice.Count > 0)
        {
            string[] wrong =
            [
                .. unknown.Select(key => $"There is no figure '{key}' in a run with {marks} {(marks == 1 ? "mark" : "marks")}."),
                .. twice.Select(key => $"The figure '{key}' is asked for twice."),
            ];
            throw new ArgumentException(string.Join(" ", wrong), nameof(keys));
        }

        return new FigureSelection(catalog, [.. indices]);
    }
}
