using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;

namespace LaunchSim.Studies.Chance;

/// <summary>How normal variables with names hang together. Immutable.</summary>
/// <remarks>Independent variables z become correlated ones as Lz, with the correlations as LLᵀ (Cholesky's factor; textbook).</remarks>
public sealed class NormalCorrelations
{
    // What makes a matrix that rounding or an estimate left without a factor regular again: a thousandth less of each correlation, until it has one.
    private const double Shrunk = 0.999;
    private const int MostShrinks = 10_000;

    private readonly double[,] _matrix;

    /// <summary>Correlations.</summary>
    /// <param name="names">The variables' names, each once.</param>
    /// <param name="matrix">Symmetric, one row and column a name, ones on its diagonal, −1 to 1 beside it.</param>
    /// <exception cref="ArgumentException">The matrix is none of correlations between these names.</exception>
    public NormalCorrelations(IReadOnlyList<string> names, double[,] matrix)
    {
        ArgumentNullException.ThrowIfNull(names);
        ArgumentNullException.ThrowIfNull(matrix);
        if (matrix.GetLength(0) != names.Count || matrix.GetLength(1) != names.Count || names.Distinct().Count() != names.Count)
        {
            throw new ArgumentException("There has to be one row and one column for each name.", nameof(matrix));
        }

        for (int i = 0; i < names.Count; i++)
        {
            for (int j = 0; j < names.Count; j++)
            {
                if (i == j ? Math.Abs(matrix[i, i] - 1) > 1e-9 : !(Math.Abs(matrix[i, j]) <= 1 + 1e-9 && Math.Abs(matrix[i, j] - matrix[j, i]) <= 1e-9))
                {
                    throw new ArgumentException($"Found {matrix[i, j]} between {names[i]} and {names[j]}, which is no correlation or not the same both ways.", nameof(matrix));
                }
            }
        }

        Names = names;
        _matrix = (double[,])matrix.Clone();
    }

    /// <summary>The variables' names.</summary>
    public IReadOnlyList<string> Names { get; }

    /// <summary>What correlates draws of variables, some of which may be none of these, and of which some of these may be missing.</summary>
    /// <param name="names">The names of what is drawn.</param>
    public Correlator For(IReadOnlyList<string> names)
    {
        ArgumentNullException.ThrowIfNull(names);
        (int Own, int Drawn)[] both = [.. Names.Select((name, i) => (i, Array.IndexOf([.. names], name))).Where(pair => pair.Item2 >= 0)];
        if (both.Length < 2)
        {
            return new Correlator([], null);
        }

        double shrink = 1;
        for (int i = 0; i < MostShrinks; i++, shrink *= Shrunk)
        {
            var matrix = Matrix<double>.Build.Dense(both.Length, both.Length, (row, column) => row == column ? 1 : shrink * _matrix[both[row].Own, both[column].Own]);
            if (matrix.Evd(Symmetricity.Symmetric).EigenValues.All(value => value.Real > 1e-9))
            {
                return new Correlator([.. both.Select(pair => pair.Drawn)], matrix.Cholesky().Factor);
            }
        }

        return new Correlator([], null);
    }
}

/// <summary>Makes independent draws hang together. Immutable.</summary>
public sealed class Correlator
{
    private readonly int[] _places;
    private readonly Matrix<double>? _factor;

    internal Correlator(int[] places, Matrix<double>? factor) => (_places, _factor) = (places, factor);

    /// <summary>Correlates one draw; what has no correlation stays as it is.</summary>
    /// <param name="u">Independent probabilities strictly within 0 and 1, which become correlated ones.</param>
    public void Correlate(Span<double> u)
    {
        if (_factor is null)
        {
            return;
        }

        double[] independent = new double[_places.Length];
        for (int i = 0; i < _places.Length; i++)
        {
            independent[i] = NormalQuantile.Of(u[_places[i]]);
        }

        for (int i = 0; i < _places.Length; i++)
        {
            double value = 0;
            for (int j = 0; j <= i; j++)
            {
                value += _factor[i, j] * independent[j];
            }

            // A probability of 1 has no quantile; so far out no draw lies.
            u[_places[i]] = Math.Clamp(Normal.CDF(0, 1, value), double.Epsilon, 1 - 1e-16);
        }
    }
}
