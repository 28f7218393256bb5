namespace LaunchSim.Figures;

/// <summary>Takes the values that the families read. A figure that is not written has no value.</summary>
public sealed class FigureWriter
{
    private readonly FigureCatalog _catalog;
    private readonly Figure[] _figures;

    internal FigureWriter(FigureCatalog catalog)
    {
        _catalog = catalog;
        _figures = new Figure[catalog.Definitions.Count];
        for (int i = 0; i < _figures.Length; i++)
        {
            _figures[i] = new Figure(catalog.Definitions[i], null, null);
        }
    }

    /// <summary>Writes a value; one that is not finite becomes none.</summary>
    /// <param name="figure">Which figure: an instance that its family declares.</param>
    /// <param name="value">Its value in SI units.</param>
    /// <param name="otherwise">Why there is none, in plain words, when it is not finite.</param>
    public void Set(FigureDefinition figure, double value, string? otherwise = null)
    {
        // Adding 0 turns a negative zero into a plain one.
        bool known = double.IsFinite(value);
        _figures[_catalog.IndexOf(figure)] = new Figure(figure, known ? value + 0.0 : null, known ? null : otherwise);
    }

    /// <summary>Says why there is no value.</summary>
    /// <param name="figure">Which figure: an instance that its family declares.</param>
    /// <param name="reason">Why, in plain words.</param>
    public void None(FigureDefinition figure, string reason) => Set(figure, double.NaN, reason);

    internal FigureSet Close(LaunchEvents events) => new(_catalog, _figures, events);
}
