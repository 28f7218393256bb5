namespace LaunchSim.Passes.Fitting;

/// <summary>
/// What a residual costs: its square, or less than that where it is large, so that a few measurements that are plain wrong do
/// not pull the rest. Residuals are in standard deviations; what is minimised is the sum of <see cref="Cost"/>.
/// </summary>
/// <remarks>
/// P. J. Huber, "Robust estimation of a location parameter", 1964; constants for 95 % efficiency with normal errors from
/// P. W. Holland and R. E. Welsch, "Robust regression using iteratively reweighted least-squares", 1977. Both from memory.
/// </remarks>
public abstract record RobustLoss
{
    /// <summary>The plain square: least squares.</summary>
    public static RobustLoss None { get; } = new SquareLoss();

    /// <summary>Square up to 1.345, straight beyond. Convex: it makes no minimum that the square does not have.</summary>
    public static RobustLoss Huber { get; } = new HuberLoss(1.345);

    /// <summary>A logarithm, constant 2.385: a residual that is far off hardly counts. It can have several minima.</summary>
    public static RobustLoss Cauchy { get; } = new CauchyLoss(2.385);

    /// <summary>The cost of a residual, 0 and up; the residual's square near 0.</summary>
    /// <param name="residual">Of any sign.</param>
    public abstract double Cost(double residual);

    /// <summary>What a square of the same slope would have to be weighted with: Cost′(r) / 2r, above 0, at most 1.</summary>
    /// <param name="residual">Of any sign.</param>
    public abstract double Weight(double residual);

    private sealed record SquareLoss : RobustLoss
    {
        public override double Cost(double residual) => residual * residual;

        public override double Weight(double residual) => 1;
    }

    private sealed record HuberLoss(double Bend) : RobustLoss
    {
        public override double Cost(double residual)
        {
            double size = Math.Abs(residual);
            return size <= Bend ? size * size : Bend * ((2 * size) - Bend);
        }

        public override double Weight(double residual)
        {
            double size = Math.Abs(residual);
            return size <= Bend ? 1 : Bend / size;
        }
    }

    private sealed record CauchyLoss(double Bend) : RobustLoss
    {
        public override double Cost(double residual)
        {
            double share = residual / Bend;
            return Bend * Bend * double.LogP1(share * share);
        }

        public override double Weight(double residual)
        {
            double share = residual / Bend;
            return 1 / (1 + (share * share));
        }
    }
}
