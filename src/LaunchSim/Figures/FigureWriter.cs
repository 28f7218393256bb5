namespace LaunchSim.Figures;

/// <summary>Takes the values that the families read. A figure that is not written has no value.</summary>
public sealed class FigureWriter
{
    private const string NotAsked = "not asked for";

    private readonly FigureCatalog _catalog;
    private readonly bool[]? _wanted;
    private readonly Figure[] _figures;

    internal FigureWriter(FigureCatalog catalog, bool[]? wanted = null)
    {
        _catalog = catalog;
        _wanted = wanted;
        _figures = new Figure[catalog.Definitions.Count];
        Clear();
    }

    /// <summary>Whether any of these figures is asked for: one that is not need not be read.</summary>
    /// <param name="figures">Instances that the family declares.</param>
    public bool Wants(params ReadOnlySpan<FigureDefinition> figures)
    {
        if (_wanted is null)
        {
            return true;
        }

        foreach (FigureDefinition figure in figures)
        {
            if (_wanted[_catalog.IndexOf(figure)])
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Writes a value; one that is not finite becomes none.</summary>
    /// <param name="figure">Which figure: an instance that its family declares.</param>
    /// <param name="value">Its value in SI units.</param>
    /// <param name="otherwise">Why there is none, in plain words, when it is not finite.</param>
    public void Set(FigureDefinition figure, double value, string? otherwise = null)
    {
        // Adding 0 turns a negative zero into a plain one.
        bool known = double.IsFinite(value);
        int index = _catalog.IndexOf(figure);
        if (_wanted is null || _wanted[index])
        {
            _figures[index] = new Figure(figure, known ? value + 0.0 : null, known ? null : otherwise);
        }
    }

    /// <summary>Says why there is no value.</summary>
    /// <param name="figure">Which figure: an instance that its family declares.</param>
    /// <param name="reason">Why, in plain words.</param>
    public void None(FigureDefinition figure, string reason) => Set(figure, double.NaN, reason);

    internal FigureSet Close(LaunchEvents events) => new(_catalog, _figures, events);

    /// <summary>The figures as they are so far, in the catalogue's order.</summary>
    internal ReadOnlySpan<Figure> Figures => _figures;

    /// <summary>Forgets all values.</summary>
    internal void Clear()
    {
        for (int i = 0; i < _figures.Length; i++)
        {
            _figures[i] = new Figure(_catalog.Definitions[i], null, _wanted is null || _wanted[i] ? null : NotAsked);
        }
    }
}
