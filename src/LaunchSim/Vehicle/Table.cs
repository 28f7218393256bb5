namespace LaunchSim.Vehicle;

/// <summary>
/// A piecewise-linear table y(x) with strictly increasing x. What it does beyond its ends is for its user to say:
/// dampers extend the last slope, all others hold the end value.
/// </summary>
public sealed class Table : IEquatable<Table>
{
    private readonly double[] _x;
    private readonly double[] _y;

    /// <summary>Builds a table from its two rows.</summary>
    /// <param name="x">Abscissae, strictly increasing, at least one.</param>
    /// <param name="y">Ordinates, one for each abscissa.</param>
    /// <exception cref="ArgumentException">The rows differ in length, are empty, hold a value that is not finite, or x does not increase.</exception>
    public Table(IEnumerable<double> x, IEnumerable<double> y)
    {
        _x = [.. x];
        _y = [.. y];
        if (_x.Length == 0 || _x.Length != _y.Length)
        {
            throw new ArgumentException($"A table needs two rows of one length: {_x.Length} and {_y.Length} numbers were given.");
        }

        for (int i = 0; i < _x.Length; i++)
        {
            if (!double.IsFinite(_x[i]) || !double.IsFinite(_y[i]) || (i > 0 && _x[i] <= _x[i - 1]))
            {
                throw new ArgumentException($"A table's first row must be finite and strictly increasing: entry {i} is {_x[i]}, its value {_y[i]}.");
            }
        }
    }

    /// <summary>The abscissae, strictly increasing.</summary>
    public ReadOnlySpan<double> X => _x;

    /// <summary>The ordinates.</summary>
    public ReadOnlySpan<double> Y => _y;

    /// <summary>Number of entries, at least one.</summary>
    public int Count => _x.Length;

    /// <summary>A table of one value that holds everywhere.</summary>
    /// <param name="value">The value, in the table's own unit.</param>
    public static Table Constant(double value) => new([0], [value]);

    /// <summary>The value at <paramref name="x"/>; end values hold beyond the ends.</summary>
    /// <param name="x">Where, in the unit of the first row.</param>
    public double At(double x)
    {
        if (x <= _x[0])
        {
            return _y[0];
        }

        for (int i = 1; i < _x.Length; i++)
        {
            if (x <= _x[i])
            {
                return _y[i - 1] + ((_y[i] - _y[i - 1]) * (x - _x[i - 1]) / (_x[i] - _x[i - 1]));
            }
        }

        return _y[^1];
    }

    /// <summary>The same table with every ordinate multiplied.</summary>
    /// <param name="factor">The factor, without unit.</param>
    public Table Scaled(double factor) => new(_x, _y.Select(y => y * factor));

    /// <inheritdoc/>
    public bool Equals(Table? other) => other is not null && X.SequenceEqual(other.X) && Y.SequenceEqual(other.Y);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Table);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(_x.Length, _x[0], _x[^1], _y[0], _y[^1]);
}
