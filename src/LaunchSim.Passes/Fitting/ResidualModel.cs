using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;

namespace LaunchSim.Passes.Fitting;

/// <summary>
/// Residuals as the minimiser of MathNet.Numerics sees them, in units of their own: parameters count from 1 in steps that
/// change the model by as much as is left of the residuals, and the sum counts in what it was when the units were laid.
/// </summary>
/// <remarks>
/// <para>The library's own wrapper takes one-sided steps and knows neither impossible points nor robust losses, and its damping adds
/// the same to every parameter whatever its unit: on parameters such as 0.006 and 6000 it creeps. In these units it does not.</para>
/// <para>It stops when a step is small against the squared length of the parameters; counted from 1 that length is never 0.</para>
/// </remarks>
internal sealed class ResidualModel : IObjectiveModel
{
    private readonly Differences _differences;
    private readonly LeastSquaresOptions _options;
    private readonly int _residualCount;
    private readonly HashSet<int> _missing = [];
    private Instant _now;
    private double[] _origin = [];
    private double[] _units = [];
    private double _unitSum = 1;

    public ResidualModel(Differences differences, int residualCount, double[] start, LeastSquaresOptions options)
    {
        (_differences, _residualCount, _options) = (differences, residualCount, options);
        Best = _now = At(start);
    }

    /// <summary>The lowest point so far.</summary>
    public Instant Best { get; private set; }

    /// <summary>Numbers of parameters for which somewhere no difference could be taken, because the model is impossible on both sides.</summary>
    public IReadOnlyCollection<int> Missing => _missing;

    /// <summary>What the minimiser stands at when it ends is the last point that it tried, be it refused; what it is asked for is the best.</summary>
    public Vector<double> Point => Vector<double>.Build.Dense(Best.Parameters.Length, i => 1 + ((Best.Parameters[i] - _origin[i]) / _units[i]));

    public double Value => _now.Sum / _unitSum;

    public Vector<double> Gradient
    {
        get
        {
            // Near enough: a slope of nothing is what the minimiser ends upon.
            int count = _units.Length;
            if (IsMinimum(_now))
            {
                return Vector<double>.Build.Dense(count);
            }

            double[,] derivatives = Derivatives(_now);
            return Vector<double>.Build.Dense(count, i =>
            {
                double sum = 0;
                for (int k = 0; k < _residualCount; k++)
                {
                    sum += derivatives[k, i] * _now.Weights[k] * _now.Residuals[k];
                }

                return sum * _units[i] / _unitSum;
            });
        }
    }

    public Matrix<double> Hessian
    {
        get
        {
            double[,] derivatives = Derivatives(_now);
            return Matrix<double>.Build.Dense(_units.Length, _units.Length, (i, j) =>
            {
                double sum = 0;
                for (int k = 0; k < _residualCount; k++)
                {
                    sum += derivatives[k, i] * _now.Weights[k] * derivatives[k, j];
                }

                return sum * _units[i] * _units[j] / _unitSum;
            });
        }
    }

    public int DegreeOfFreedom => _residualCount - _units.Length;

    public int FunctionEvaluations { get; set; }

    public int JacobianEvaluations { get; set; }

    public bool IsGradientSupported => true;

    public bool IsHessianSupported => true;

    public Vector<double> ObservedY => Vector<double>.Build.Dense(_residualCount);

    public Matrix<double> Weights => Matrix<double>.Build.DenseOfDiagonalArray(_now.Weights);

    public Vector<double> ModelValues => Vector<double>.Build.Dense((double[])_now.Residuals.Clone());

    /// <summary>Lays the units anew about the best point, and gives where the minimiser is to begin: at that point.</summary>
    public Vector<double> LayUnits()
    {
        _now = Best;
        var view = View(Best);
        _origin = Best.Parameters;
        _unitSum = Best.Sum > 0 ? Best.Sum : 1;
        _units = new double[_origin.Length];
        for (int i = 0; i < _units.Length; i++)
        {
            // A parameter without effect here may have one elsewhere; its unit is then as good as any.
            double unit = Math.Sqrt(_unitSum) / view.Lengths[i];
            _units[i] = double.IsFinite(unit) ? unit : _origin[i] == 0 ? 1 : Math.Abs(_origin[i]);
        }

        return Vector<double>.Build.Dense(_units.Length, 1.0);
    }

    public void EvaluateAt(Vector<double> parameters)
    {
        double[] point = new double[_units.Length];
        bool isBest = true;
        for (int i = 0; i < point.Length; i++)
        {
            point[i] = _origin[i] + ((parameters[i] - 1) * _units[i]);
            isBest &= Math.Abs(point[i] - Best.Parameters[i]) <= 1e-15 * Math.Abs(point[i]);
            if (!double.IsFinite(point[i]))
            {
                throw new ArithmeticException("The minimiser left the range of numbers.");
            }
        }

        _now = isBest ? Best : At(point);
        if (_now.Sum < Best.Sum)
        {
            Best = _now;
        }
    }

    /// <summary>How far a point is from the minimum, in standard errors of the parameters that follow from what is left there.</summary>
    public double Offset(Instant instant)
    {
        int count = instant.Parameters.Length;
        double decrease = View(instant).Decrease;
        double left = Math.Max(0, instant.Sum - decrease) / Math.Max(1, _residualCount - count);
        if (_options.InStandardDeviations)
        {
            left = Math.Max(left, 1);
        }

        return decrease == 0 ? 0 : Math.Sqrt(decrease / count / left);
    }

    public bool IsMinimum(Instant instant) => instant.Sum == 0 || Offset(instant) <= _options.Tolerance;

    public LinearView View(Instant instant) => instant.View ??= new LinearView(Derivatives(instant), instant.Residuals, instant.Weights);

    public void SetParameters(Vector<double> initialGuess, List<bool>? isFixed = null)
    {
    }

    public IObjectiveModel CreateNew() => throw new NotSupportedException();

    public IObjectiveModel Fork() => throw new NotSupportedException();

    public IObjectiveFunction ToObjectiveFunction() => throw new NotSupportedException();

    private double[,] Derivatives(Instant instant) => instant.Derivatives ??= _differences.Take(instant.Parameters, instant.Residuals, _missing);

    private Instant At(double[] point)
    {
        double[] residuals = new double[_residualCount], weights = new double[_residualCount];
        double sum = double.PositiveInfinity;
        if (_differences.Evaluate(point, residuals))
        {
            sum = 0;
            for (int k = 0; k < residuals.Length; k++)
            {
                RobustLoss loss = k < _options.LossFrom ? RobustLoss.None : _options.Loss;
                sum += loss.Cost(residuals[k]);
                weights[k] = loss.Weight(residuals[k]);
            }

            // A sum beyond all numbers is no lower than any other, and not a number would end the minimiser.
            sum = double.IsFinite(sum) ? sum : double.PositiveInfinity;
        }

        return new Instant(point, residuals, weights, sum);
    }

    /// <summary>One point; its derivatives are taken when they are first asked for.</summary>
    internal sealed class Instant(double[] parameters, double[] residuals, double[] weights, double sum)
    {
        public double[] Parameters => parameters;

        public double[] Residuals => residuals;

        public double[] Weights => weights;

        /// <summary>The sum of costs; infinite where the model is impossible.</summary>
        public double Sum => sum;

        public double[,]? Derivatives { get; set; }

        public LinearView? View { get; set; }
    }
}
