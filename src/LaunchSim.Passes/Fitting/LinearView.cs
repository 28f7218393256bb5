using MathNet.Numerics.LinearAlgebra;

namespace LaunchSim.Passes.Fitting;

/// <summary>The model as a plane through one point: what the residuals tell of the parameters there, and how far the plane's lowest point is.</summary>
internal sealed class LinearView
{
    // A direction whose effect is smaller than this share of the largest one is lost in the rounding of differences.
    private const double Negligible = 1e-11;

    private readonly Vector<double> _singular;
    private readonly Matrix<double> _directions;
    private readonly int _rank;

    public LinearView(double[,] derivatives, double[] residuals, double[] weights)
    {
        int rows = residuals.Length, columns = derivatives.GetLength(1);
        Lengths = new double[columns];

        // Through the orthogonal factors and not the normal equations, which would square the condition; rows of zeros fill up
        // what has fewer residuals than parameters.
        var scaled = Matrix<double>.Build.Dense(Math.Max(rows, columns), columns);
        var right = Vector<double>.Build.Dense(scaled.RowCount);
        for (int k = 0; k < rows; k++)
        {
            double root = Math.Sqrt(weights[k]);
            right[k] = root * residuals[k];
            for (int i = 0; i < columns; i++)
            {
                scaled[k, i] = root * derivatives[k, i];
            }
        }

        for (int i = 0; i < columns; i++)
        {
            Lengths[i] = scaled.Column(i).L2Norm();
            if (Lengths[i] > 0)
            {
                scaled.SetColumn(i, scaled.Column(i) / Lengths[i]);
            }
        }

        var factors = scaled.QR(MathNet.Numerics.LinearAlgebra.Factorization.QRMethod.Thin);
        var inner = factors.R.Svd();
        _singular = inner.S;
        _directions = inner.VT;
        _rank = _singular.Count(value => value > Negligible * _singular[0]);
        var onto = inner.U.TransposeThisAndMultiply(factors.Q.TransposeThisAndMultiply(right));
        for (int i = 0; i < _rank; i++)
        {
            Decrease += onto[i] * onto[i];
        }
    }

    /// <summary>The length of each parameter's column of weighted derivatives; 0 for one without effect.</summary>
    public double[] Lengths { get; }

    /// <summary>By how much the sum of squares would fall at the plane's lowest point.</summary>
    public double Decrease { get; }

    /// <summary>Whether every direction of the parameters changes the residuals.</summary>
    public bool IsTold => _rank == Lengths.Length;

    /// <summary>(JᵀWJ)⁻¹, with infinite variances where a parameter cannot be told.</summary>
    public double[,] Covariance()
    {
        int count = Lengths.Length;
        double[,] covariance = new double[count, count];
        var isTold = new bool[count];
        for (int i = 0; i < count; i++)
        {
            // A parameter is lost when part of it lies in a direction that has no effect.
            isTold[i] = Lengths[i] > 0;
            for (int lost = _rank; lost < count; lost++)
            {
                isTold[i] &= Math.Abs(_directions[lost, i]) < 1e-6;
            }
        }

        for (int i = 0; i < count; i++)
        {
            for (int j = 0; j < count; j++)
            {
                double sum = 0;
                for (int k = 0; k < _rank; k++)
                {
                    sum += _directions[k, i] * _directions[k, j] / (_singular[k] * _singular[k]);
                }

                covariance[i, j] = isTold[i] && isTold[j] ? sum / (Lengths[i] * Lengths[j])
                    : i == j ? double.PositiveInfinity
                    : double.NaN;
            }
        }

        return covariance;
    }
}
