namespace LaunchSim.Passes.Fitting;

/// <summary>What <see cref="LeastSquares"/> found.</summary>
/// <param name="Parameters">The parameters with the lowest sum; the first start where the model was impossible at every start.</param>
/// <param name="Covariance">
/// (JᵀWJ)⁻¹ there: of parameters whose residuals are in standard deviations. A parameter that the residuals do not tell, alone
/// or against others, has an infinite variance and covariances that are not a number.
/// </param>
/// <param name="SumOfSquares">The lowest sum: of the residuals' squares, or of their cost where the loss is another. Not a number where impossible.</param>
/// <param name="Residuals">The residuals there; not numbers where impossible.</param>
/// <param name="Weights">What each residual's square was weighted with at the end, above 0, at most 1.</param>
/// <param name="Iterations">Iterations from all starts together.</param>
/// <param name="Evaluations">Calls of the residual function, those for differences among them, from all starts together.</param>
/// <param name="Converged">Whether a minimum was reached, in the sense of <see cref="Reason"/>.</param>
/// <param name="Reason">Why it ended there, in words.</param>
/// <param name="SumsOfStarts">The sum that each start ended with, in the order of the starts; infinite where the model was impossible at the start.</param>
/// <param name="EndsOfStarts">The parameters that each start ended at, in the same order.</param>
public sealed record LeastSquaresResult(
    double[] Parameters,
    double[,] Covariance,
    double SumOfSquares,
    double[] Residuals,
    double[] Weights,
    int Iterations,
    int Evaluations,
    bool Converged,
    string Reason,
    IReadOnlyList<double> SumsOfStarts,
    IReadOnlyList<double[]> EndsOfStarts)
{
    /// <summary>How many residuals there are more than parameters; 0 or more.</summary>
    public int DegreesOfFreedom => Math.Max(0, Residuals.Length - Parameters.Length);

    /// <summary>The square roots of <see cref="Covariance"/>'s diagonal.</summary>
    public double[] StandardErrors() => Roots(1);

    /// <summary>
    /// Standard errors for residuals whose standard deviation is not known: scaled so that what is left is as large as
    /// expected, √(sum / degrees of freedom). Not numbers when there are no more residuals than parameters.
    /// </summary>
    public double[] ScaledStandardErrors() => Roots(DegreesOfFreedom == 0 ? double.NaN : Math.Sqrt(SumOfSquares / DegreesOfFreedom));

    /// <summary>Correlation of two parameters, −1 to 1; not a number where one of them cannot be told.</summary>
    /// <param name="first">Number of the one, from 0.</param>
    /// <param name="second">Number of the other.</param>
    public double Correlation(int first, int second) =>
        Covariance[first, second] / Math.Sqrt(Covariance[first, first] * Covariance[second, second]);

    private double[] Roots(double scale)
    {
        double[] errors = new double[Parameters.Length];
        for (int i = 0; i < errors.Length; i++)
        {
            errors[i] = scale * Math.Sqrt(Covariance[i, i]);
        }

        return errors;
    }
}
