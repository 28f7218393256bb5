namespace LaunchSim.Integration;

/// <summary>
/// An explicit Runge–Kutta pair as data: nodes c, stage weights a, weights b of the solution and b̂ of the embedded
/// one, and the weights d of the dense output's last term. It can check its own order conditions.
/// </summary>
public sealed class Tableau
{
    private Tableau(double[] c, double[][] a, double[] b, double[] embedded, double[] dense)
    {
        C = c;
        A = a;
        B = b;
        Embedded = embedded;
        Dense = dense;
    }

    /// <summary>
    /// Dormand and Prince's 5(4) pair with seven stages, the last evaluated at the step's end. Coefficients: Dormand and
    /// Prince, J. Comp. Appl. Math. 6 (1980) 19–26; dense output: Hairer, Nørsett, Wanner, Solving Ordinary
    /// Differential Equations I, II.6 (both from memory, held against the order conditions and against the
    /// interpolation matrix of SciPy's RK45 in the tests).
    /// </summary>
    public static Tableau DormandPrince { get; } = new(
        [0, 1.0 / 5, 3.0 / 10, 4.0 / 5, 8.0 / 9, 1, 1],
        [
            [],
            [1.0 / 5],
            [3.0 / 40, 9.0 / 40],
            [44.0 / 45, -56.0 / 15, 32.0 / 9],
            [19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729],
            [9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656],
            [35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84],
        ],
        [35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84, 0],
        [5179.0 / 57600, 0, 7571.0 / 16695, 393.0 / 640, -92097.0 / 339200, 187.0 / 2100, 1.0 / 40],
        [
            -12715105075.0 / 11282082432,
            0,
            87487479700.0 / 32700410799,
            -10690763975.0 / 1880347072,
            701980252875.0 / 199316789632,
            -1453857185.0 / 822651844,
            69997945.0 / 29380423,
        ]);

    /// <summary>Nodes c.</summary>
    public IReadOnlyList<double> C { get; }

    /// <summary>Stage weights a, row by row below the diagonal.</summary>
    public IReadOnlyList<IReadOnlyList<double>> A { get; }

    /// <summary>Weights b of the solution that is carried on (order 5).</summary>
    public IReadOnlyList<double> B { get; }

    /// <summary>Weights b̂ of the embedded solution (order 4), from which the error is estimated.</summary>
    public IReadOnlyList<double> Embedded { get; }

    /// <summary>Weights d of the dense output's last term.</summary>
    public IReadOnlyList<double> Dense { get; }

    /// <summary>Number of stages.</summary>
    public int Stages => C.Count;

    /// <summary>
    /// Weights of the stages in the dense output at the share <paramref name="theta"/> of the step:
    /// y(t + θh) = y + h·Σ weights_i·k_i.
    /// </summary>
    /// <param name="theta">Share of the step, 0 to 1.</param>
    public double[] DenseWeights(double theta)
    {
        double rest = 1 - theta;
        var weights = new double[Stages];
        for (int i = 0; i < Stages; i++)
        {
            double first = i == 0 ? 1 : 0;
            double last = i == Stages - 1 ? 1 : 0;
            double r2 = B[i];
            double r3 = first - r2;
            double r4 = r2 - last - r3;
            weights[i] = theta * (r2 + (rest * (r3 + (theta * (r4 + (rest * Dense[i]))))));
        }

        return weights;
    }

    /// <summary>
    /// The largest amount by which <paramref name="weights"/> miss an order condition, over all rooted trees of up to
    /// <paramref name="order"/> nodes (17 trees at order 5), and by which a row of a misses its node.
    /// </summary>
    /// <param name="weights">b, b̂, or weights of the dense output.</param>
    /// <param name="order">1 to 5.</param>
    /// <param name="theta">Share of the step at which the weights are to hold; 1 for a whole step.</param>
    public double OrderDefect(IReadOnlyList<double> weights, int order, double theta = 1)
    {
        double worst = 0;
        for (int i = 0; i < Stages; i++)
        {
            worst = Math.Max(worst, Math.Abs(A[i].Sum() - C[i]));
        }

        double[] one = Enumerable.Repeat(1.0, Stages).ToArray();
        double[] c = [.. C];
        double[] c2 = Times(c, c), c3 = Times(c2, c), c4 = Times(c3, c);
        double[] ac = Apply(c), ac2 = Apply(c2), ac3 = Apply(c3);
        double[] aac = Apply(ac), aac2 = Apply(ac2), aaac = Apply(aac), acac = Apply(Times(c, ac));
        (int Nodes, double[] Vector, double Density)[] trees =
        [
            (1, one, 1),
            (2, c, 2),
            (3, c2, 3), (3, ac, 6),
            (4, c3, 4), (4, Times(c, ac), 8), (4, ac2, 12), (4, aac, 24),
            (5, c4, 5), (5, Times(c2, ac), 10), (5, Times(ac, ac), 20), (5, Times(c, ac2), 15), (5, ac3, 20),
            (5, Times(c, aac), 30), (5, acac, 40), (5, aac2, 60), (5, aaac, 120),
        ];
        foreach ((int nodes, double[] vector, double density) in trees)
        {
            if (nodes <= order)
            {
                double sum = 0;
                for (int i = 0; i < Stages; i++)
                {
                    sum += weights[i] * vector[i];
                }

                worst = Math.Max(worst, Math.Abs(sum - (Math.Pow(theta, nodes) / density)));
            }
        }

        return worst;
    }

    private static double[] Times(double[] a, double[] b) => a.Zip(b, (x, y) => x * y).ToArray();

    private double[] Apply(double[] v)
    {
        var result = new double[Stages];
        for (int i = 0; i < Stages; i++)
        {
            for (int j = 0; j < A[i].Count; j++)
            {
                result[i] += A[i][j] * v[j];
            }
        }

        return result;
    }
}
