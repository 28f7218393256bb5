using System.Numerics;

namespace LaunchSim.Integration.Tests;

/// <summary>The tableau as data, and one step of the integrator against it.</summary>
public class PairTests
{
    private static readonly Tableau Pair = Tableau.DormandPrince;

    /// <summary>
    /// Interpolation matrix of SciPy's RK45 (scipy/integrate/_ivp/rk.py), written down from memory: y(t + θh) = y + h·Σ
    /// k_i·(P_i0·θ + P_i1·θ² + P_i2·θ³ + P_i3·θ⁴).
    /// </summary>
    private static readonly double[][] SciPy =
    [
        [1, -8048581381.0 / 2820520608, 8663915743.0 / 2820520608, -12715105075.0 / 11282082432],
        [0, 0, 0, 0],
        [0, 131558114200.0 / 32700410799, -68118460800.0 / 10900136933, 87487479700.0 / 32700410799],
        [0, -1754552775.0 / 470086768, 14199869525.0 / 1410260304, -10690763975.0 / 1880347072],
        [0, 127303824393.0 / 49829197408, -318862633887.0 / 49829197408, 701980252875.0 / 199316789632],
        [0, -282668133.0 / 205662961, 2019193451.0 / 616988883, -1453857185.0 / 822651844],
        [0, 40617522.0 / 29380423, -110615467.0 / 29380423, 69997945.0 / 29380423],
    ];

    public static TheoryData<double> Shares => [0, 0.1, 0.25, 1.0 / 3, 0.5, 0.75, 0.9, 1];

    [Fact]
    public void Weights_OfTheSolution_MeetAllConditionsOfOrderFive()
    {
        // 17 rooted trees; entries of a up to 12, so a few units of rounding of 1e-15.
        Assert.InRange(Pair.OrderDefect(Pair.B, 5), 0, 5e-15);
    }

    [Fact]
    public void Weights_OfTheEmbeddedSolution_AreOfOrderFourAndNoMore()
    {
        Assert.InRange(Pair.OrderDefect(Pair.Embedded, 4), 0, 5e-15);
        Assert.True(Pair.OrderDefect(Pair.Embedded, 5) > 1e-4); // else the estimate would vanish
    }

    [Theory]
    [MemberData(nameof(Shares))]
    public void Weights_OfTheDenseOutput_AreOfOrderFourAnywhereInTheStep(double theta)
    {
        Assert.InRange(Pair.OrderDefect(Pair.DenseWeights(theta), 4, theta), 0, 5e-15);
    }

    [Theory]
    [MemberData(nameof(Shares))]
    public void Weights_OfTheDenseOutput_AreSciPys(double theta)
    {
        double[] weights = Pair.DenseWeights(theta);
        for (int i = 0; i < weights.Length; i++)
        {
            double[] p = SciPy[i];
            // Rounding of sums of terms up to 7.
            Assert.Equal(theta * (p[0] + (theta * (p[1] + (theta * (p[2] + (theta * p[3])))))), weights[i], 1e-14);
        }
    }

    [Fact]
    public void Weights_OfTheDenseOutputAtTheEnd_AreThoseOfTheSolution()
    {
        Assert.Equal(Pair.B, Pair.DenseWeights(1));
    }

    [Theory]
    [InlineData(0.2)]
    [InlineData(-0.5)]
    [InlineData(-2)]
    [InlineData(-3.3)]
    public void Step_OnTheTestEquation_MultipliesByTheStabilityPolynomial(double z)
    {
        // R(z) = Σ z^k/k! (k ≤ 5) + z⁶/600: follows from the order conditions and b₆a₆₅a₅₄a₄₃a₃₂a₂₁ … of the tableau;
        // 1e-14: rounding.
        (double[] state, _) = OneStep(1, (_, y, dy) => dy[0] = z * y[0], [1.0], 1);
        Assert.Equal(Stability(z).Real, state[0], 1e-14 * Math.Max(1, Math.Pow(Math.Abs(z), 5)));
    }

    [Theory]
    [InlineData(0.3, 1.0)]
    [InlineData(-1.0, 2.5)]
    public void Step_OnARotation_MultipliesByTheStabilityPolynomial(double real, double imaginary)
    {
        (double[] state, _) = OneStep(
            2,
            (_, y, dy) => (dy[0], dy[1]) = ((real * y[0]) - (imaginary * y[1]), (imaginary * y[0]) + (real * y[1])),
            [1.0, 0],
            1);
        Complex expected = Stability(new Complex(real, imaginary));
        Assert.Equal(expected.Real, state[0], 1e-14 * 50); // terms up to 2.7⁵/120·… of either sign cancel
        Assert.Equal(expected.Imaginary, state[1], 1e-14 * 50);
    }

    [Fact]
    public void Step_OnGrowth_GivesThePublishedValueAndDenseMiddle()
    {
        // Computed for this project from the tableau and SciPy's P; 1e-14: rounding.
        (double[] state, double[] middle) = OneStep(1, (_, y, dy) => dy[0] = y[0], [1.0], 0.2);
        Assert.Equal(1.22140277333333, state[0], 1e-14);
        Assert.Equal(1.1051709839514834, middle[0], 1e-14);
    }

    [Fact]
    public void ErrorNorm_OnGrowth_IsTheClosedForm()
    {
        const double h = 0.2, tolerance = 1e-3;
        var pair = new DormandPrince(1, tolerance, null);
        pair.State[0] = 1;
        pair.Stage(0)[0] = 1;
        pair.Second(h);
        pair.Stage(1)[0] = pair.Trial[0];
        pair.Third(h);
        pair.Stage(2)[0] = pair.Trial[0];
        pair.Fourth(h);
        pair.Stage(3)[0] = pair.Trial[0];
        pair.Fifth(h);
        pair.Stage(4)[0] = pair.Trial[0];
        pair.Sixth(h);
        pair.Stage(5)[0] = pair.Trial[0];
        pair.Solution(h);
        pair.Stage(6)[0] = pair.Next[0];
        double error = (97 * Math.Pow(h, 5) / 120000) - (13 * Math.Pow(h, 6) / 40000) + (Math.Pow(h, 7) / 24000);
        Assert.Equal(2.384e-7, error, 1e-10); // as published, four digits
        // The weights sum to zero in place of cancelling exactly: 1e-17 on 2.4e-7.
        Assert.Equal(error, pair.ErrorNorm(h) * tolerance * (1 + pair.Next[0]), 1e-16);
    }

    [Theory]
    [InlineData(50, 7.936969888e-8, 0.01)]
    [InlineData(100, 2.801455417e-9, 0.01)]
    [InlineData(200, 9.102156536e-11, 0.01)]
    [InlineData(400, 2.886013781e-12, 0.05)]
    public void Error_AtFixedSteps_IsThePublishedOne(int steps, double expected, double relative)
    {
        // y' = y cos t to t = 10, exact e^sin 10. Errors computed for this project with an independent program; the last
        // is within a thousand roundings.
        double h = 10.0 / steps;
        var options = new IntegratorOptions { Tolerance = 1, InitialStep = h, MaximumStep = h };
        double[] end = Solve.Plainly(1, (t, y, dy) => dy[0] = y[0] * Math.Cos(t), 0, [1.0], 10, options, out Statistics statistics);
        Assert.Equal(steps, statistics.Steps);
        Assert.Equal(expected, Math.Abs(end[0] - Math.Exp(Math.Sin(10))), relative * expected);
    }

    [Fact]
    public void StepControl_AfterAnAcceptedStep_GivesThePublishedFactor()
    {
        // Formula of DOPRI5, number computed for this project.
        var control = StepControl.New();
        control.Accept(0.1);
        Assert.Equal(0.923458979650976, control.Accept(0.5), 1e-15);
    }

    [Fact]
    public void StepControl_AtItsLimits_KeepsThem()
    {
        var control = StepControl.New();
        Assert.Equal(StepControl.Largest, control.Accept(0));
        // The error kept is at least 1e-4.
        Assert.Equal(0.9 * Math.Pow(0.5, -0.17) * Math.Pow(1e-4, 0.04), control.Accept(0.5), 1e-15);
        Assert.Equal(StepControl.Smallest, control.Reject(1e9));
        Assert.Equal(StepControl.Smallest, control.Reject(double.NaN));
        Assert.Equal(0.9 * Math.Pow(2, -0.17), control.Reject(2), 1e-15);
        Assert.Equal(1, control.Accept(1e-6)); // no growth right after a rejection
        Assert.Equal(StepControl.Largest, control.Accept(1e-9));
    }

    private static Complex Stability(Complex z)
    {
        Complex sum = 1, term = 1;
        for (int k = 1; k <= 5; k++)
        {
            term *= z / k;
            sum += term;
        }

        return sum + (Complex.Pow(z, 6) / 600);
    }

    private static (double[] State, double[] Middle) OneStep(int dimension, Rate rate, double[] start, double h)
    {
        var options = new IntegratorOptions { Tolerance = 1e3, InitialStep = h, MaximumStep = h };
        var integrator = new Integrator<WithoutEvents<Plain>>(new(new Plain(dimension, rate)), options);
        var record = new StepRecord();
        var recorder = new Recorder(record);
        Assert.Equal(RunStatus.Completed, integrator.Run(0, start, h, ref recorder));
        Assert.Equal(1, record.Count);
        var middle = new double[dimension];
        record.At(0, 0.5 * h, middle);
        return (integrator.State.ToArray(), middle);
    }
}
