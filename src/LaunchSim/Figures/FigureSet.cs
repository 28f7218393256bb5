using System.Collections;
using System.Diagnostics.CodeAnalysis;

namespace LaunchSim.Figures;

/// <summary>All figures of one launch in the order of their families, and the things that happened in it. Immutable.</summary>
public sealed class FigureSet : IReadOnlyList<Figure>
{
    private readonly Figure[] _figures;

    internal FigureSet(FigureCatalog catalog, Figure[] figures, LaunchEvents events)
    {
        Catalog = catalog;
        _figures = figures;
        Events = events;
    }

    /// <summary>The definitions, by family.</summary>
    public FigureCatalog Catalog { get; }

    /// <summary>What happened in the launch, in order.</summary>
    public LaunchEvents Events { get; }

    /// <inheritdoc/>
    public int Count => _figures.Length;

    /// <inheritdoc/>
    public Figure this[int index] => _figures[index];

    /// <summary>A figure's value in SI units, or null when it has none in this launch.</summary>
    /// <param name="key">The figure's key.</param>
    /// <exception cref="ArgumentException">There is no such figure.</exception>
    public double? this[string key] => Get(key).Value;

    /// <summary>A figure by its key.</summary>
    /// <param name="key">The figure's key.</param>
    /// <exception cref="ArgumentException">There is no such figure.</exception>
    public Figure Get(string key) =>
        TryGet(key, out Figure? figure) ? figure.Value : throw new ArgumentException($"There is no figure '{key}'.", nameof(key));

    /// <summary>A figure by its key, if there is one.</summary>
    /// <param name="key">The figure's key.</param>
    /// <param name="figure">The figure, or null.</param>
    public bool TryGet(string key, [NotNullWhen(true)] out Figure? figure)
    {
        figure = Catalog.TryFind(key, out int index) ? _figures[index] : null;
        return figure is not null;
    }

    /// <inheritdoc/>
    public IEnumerator<Figure> GetEnumerator() => ((IEnumerable<Figure>)_figures).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
