namespace LaunchSim.Passes.Fitting;

/// <summary>How <see cref="LeastSquares"/> goes about it.</summary>
public sealed record LeastSquaresOptions
{
    /// <summary>
    /// What each parameter is moved by for a difference, to both sides, in its own unit, above 0. Null: 6·10⁻⁶ of its value
    /// there (the cube root of a double's precision), of 1 where it is 0; for models that are exact to rounding.
    /// </summary>
    public double[]? Steps { get; init; }

    /// <summary>What a residual costs.</summary>
    public RobustLoss Loss { get; init; } = RobustLoss.None;

    /// <summary>The first residual that the loss holds for; those before it, such as a prior's, cost their square.</summary>
    public int LossFrom { get; init; }

    /// <summary>Where to start from besides the first start. Each is followed to its end; the lowest end is the result.</summary>
    public IReadOnlyList<double[]> Starts { get; init; } = [];

    /// <summary>From each start at most so many iterations, 1 or more.</summary>
    public int MostIterations { get; init; } = 200;

    /// <summary>How far from the minimum may be taken for it, in standard errors of the parameters; above 0.</summary>
    /// <remarks>
    /// The relative offset of D. M. Bates and D. G. Watts, "A relative offset orthogonality convergence criterion for
    /// nonlinear least squares", 1981 (from memory): it has no unit and does not hang on how parameters are scaled.
    /// </remarks>
    public double Tolerance { get; init; } = 1e-6;

    /// <summary>
    /// Whether the residuals are in standard deviations. If so, a fit that is much better than these say (data without noise)
    /// stops at <see cref="Tolerance"/> of the standard errors that follow from them; if not, only those count that follow from what is left.
    /// </summary>
    public bool InStandardDeviations { get; init; } = true;

    /// <summary>On how many threads differences are taken, 1 or more; the result does not depend on it.</summary>
    public int Threads { get; init; } = 1;
}
