using MathNet.Numerics.Optimization;

using static System.FormattableString;

namespace LaunchSim.Passes.Fitting;

/// <summary>
/// Nonlinear least squares on a plain residual function, by the Levenberg–Marquardt minimiser of MathNet.Numerics, in units
/// that are laid anew as it goes (<see cref="ResidualModel"/>).
/// </summary>
/// <remarks>
/// A robust loss enters as iteratively reweighted least squares: at every point that is taken, squares are weighted so that they
/// have the loss's slope, and a step is taken only if the loss itself falls. The solver is held against certified results; see
/// docs/validation.md.
/// </remarks>
public static class LeastSquares
{
    // A step of less than this in the model's units can no longer be told from rounding.
    private const double StepTolerance = 1e-30;

    // Levenberg–Marquardt's first damping, in units in which the normal matrix has ones on its diagonal (Madsen, Nielsen and
    // Tingleff 2004, from memory: 10⁻³ for a start that is not known to be good).
    private const double FirstDamping = 1e-3;

    // Iterations in one set of units: long enough to settle, short enough to follow a bent valley.
    private const int IterationsOfUnits = 25;

    // Where no step lowers the sum any more, this far from the minimum is still called one: a model that is solved in steps has a
    // sum with a little roughness.
    private const double RoughOffset = 0.1;

    /// <summary>Finds the parameters with the least sum of squares (or of robust costs).</summary>
    /// <param name="residuals">The residuals over the parameters.</param>
    /// <param name="residualCount">How many residuals there are, 1 or more.</param>
    /// <param name="start">Where to start, one value a parameter, all finite.</param>
    /// <param name="options">How to go about it.</param>
    /// <param name="cancellation">Ends it between two evaluations.</param>
    /// <exception cref="ArgumentException">A start or the steps have a wrong length or a value that is not finite, or an option is out of range.</exception>
    /// <exception cref="OperationCanceledException">It was cancelled.</exception>
    public static LeastSquaresResult Solve(
        ResidualFunction residuals, int residualCount, double[] start, LeastSquaresOptions options, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(residuals);
        ArgumentNullException.ThrowIfNull(start);
        ArgumentNullException.ThrowIfNull(options);
        Check(residualCount, start, options);

        var differences = new Differences(residuals, residualCount, options.Steps, options.Threads, cancellation);
        End? best = null;
        int iterations = 0;
        var sums = new List<double>();
        var ends = new List<double[]>();
        foreach (double[] one in options.Starts.Prepend(start))
        {
            End end = Follow(new ResidualModel(differences, residualCount, [.. one], options), options);
            iterations += end.Iterations;
            sums.Add(end.Model.Best.Sum);
            ends.Add(end.Model.Best.Parameters);
            best = best is null || end.Model.Best.Sum < best.Model.Best.Sum ? end : best;
        }

        ResidualModel model = best!.Model;
        bool isPossible = double.IsFinite(model.Best.Sum);
        return new LeastSquaresResult(
            model.Best.Parameters,
            isPossible ? model.View(model.Best).Covariance() : Filled(start.Length),
            isPossible ? model.Best.Sum : double.NaN,
            isPossible ? model.Best.Residuals : [.. Enumerable.Repeat(double.NaN, residualCount)],
            isPossible ? model.Best.Weights : [.. Enumerable.Repeat(double.NaN, residualCount)],
            iterations,
            differences.Calls,
            best.Converged,
            best.Reason,
            sums,
            ends);
    }

    private static End Follow(ResidualModel model, LeastSquaresOptions options)
    {
        if (!double.IsFinite(model.Best.Sum))
        {
            return new End(model, 0, false, "the model is impossible at the start");
        }

        double first = model.Best.Sum;
        bool isTold = model.View(model.Best).IsTold;
        int iterations = 0, standstills = 0;
        while (true)
        {
            var begin = model.LayUnits();
            if (model.IsMinimum(model.Best))
            {
                // From a start that was too far a step may overshoot to where nothing depends on a parameter any more.
                bool isLeft = model.View(model.Best).IsTold;
                if (isTold && !isLeft)
                {
                    return new End(model, iterations, false, Told(model, "went off to where the residuals no longer tell the parameters apart"));
                }

                return new End(model, iterations, true, Told(model, Invariant($"within {options.Tolerance:G3} of a standard error of the minimum{(isLeft ? "" : ", where the residuals do not tell the parameters apart")}")));
            }

            int left = options.MostIterations - iterations;
            if (left <= 0)
            {
                return new End(model, iterations, false, Told(model, Invariant($"still going down after {iterations} iterations")));
            }

            double before = model.Best.Sum;
            try
            {
                var minimizer = new LevenbergMarquardtMinimizer(FirstDamping, 0, StepTolerance, 0, Math.Min(left, IterationsOfUnits));
                iterations += Math.Max(1, minimizer.FindMinimum(model, begin).Iterations);
            }
            catch (ArithmeticException)
            {
                return new End(model, iterations, false, Told(model, "the numbers went out of range"));
            }

            standstills = model.Best.Sum < before * (1 - 1e-14) ? 0 : standstills + 1;
            if (standstills == 2)
            {
                double offset = model.Offset(model.Best);
                return model.Best.Sum <= 1e-20 * first
                    ? new End(model, iterations, true, Told(model, "nothing is left but rounding"))
                    : offset <= RoughOffset
                        ? new End(model, iterations, true, Told(model, Invariant($"no step lowers the sum any further, {offset:G2} of a standard error from the minimum")))
                        : new End(model, iterations, false, Told(model, Invariant($"no step lowers the sum any further, yet the slope there is no minimum's ({offset:G2} standard errors)")));
            }
        }
    }

    private static string Told(ResidualModel model, string reason) =>
        model.Missing.Count == 0
            ? reason
            : $"{reason}; beside some points the model is impossible on both sides, by parameter {string.Join(", ", model.Missing.Order().Select(i => i + 1))}";

    private static double[,] Filled(int count)
    {
        double[,] matrix = new double[count, count];
        for (int i = 0; i < count; i++)
        {
            for (int j = 0; j < count; j++)
            {
                matrix[i, j] = double.NaN;
            }
        }

        return matrix;
    }

    private static void Check(int residualCount, double[] start, LeastSquaresOptions options)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(residualCount, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(options.MostIterations, 1, nameof(options));
        ArgumentOutOfRangeException.ThrowIfLessThan(options.Threads, 1, nameof(options));
        if (!(options.Tolerance > 0 && double.IsFinite(options.Tolerance)))
        {
            throw new ArgumentException(Invariant($"The tolerance must be above 0, found {options.Tolerance}."), nameof(options));
        }

        if (start.Length == 0)
        {
            throw new ArgumentException("There is no parameter.", nameof(start));
        }

        foreach (double[] one in options.Starts.Prepend(start))
        {
            if (one.Length != start.Length || !Array.TrueForAll(one, double.IsFinite))
            {
                throw new ArgumentException($"Every start needs {start.Length} finite values.", nameof(start));
            }
        }

        if (options.Steps is { } steps && (steps.Length != start.Length || !Array.TrueForAll(steps, step => step > 0 && double.IsFinite(step))))
        {
            throw new ArgumentException($"The steps must be {start.Length} finite values above 0.", nameof(options));
        }
    }

    private sealed record End(ResidualModel Model, int Iterations, bool Converged, string Reason);
}
