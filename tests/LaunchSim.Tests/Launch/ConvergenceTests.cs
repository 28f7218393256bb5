using LaunchSim.Dynamics;
using LaunchSim.Launch;
using LaunchSim.Tests.Cars;
using LaunchSim.Vehicle;
using MathNet.Numerics;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Double;
using MathNet.Numerics.OdeSolvers;

namespace LaunchSim.Tests.Launch;

/// <summary>Order of convergence of a whole launch, and the same launch by another integrator.</summary>
public class ConvergenceTests
{
    private static readonly RunSettings OneSecond = new() { Duration = 1 };

    [Fact]
    public void SmoothLaunch_FromReleaseToTheEnd_ChangesNoMode()
    {
        // What the measurements of order below rest on: nothing in this launch kinks.
        LaunchSolution launch = LaunchRunner.Create(StandingCar.Find(SmoothCar.Create()), 1e-9).Solve(OneSecond);
        Assert.True(launch.End.Completed);
        Modes first = launch.Modes(0);
        for (int i = 1; i < launch.Steps; i++)
        {
            // Both lines of a damper have one slope.
            Modes modes = launch.Modes(i);
            modes.FrontDamper = first.FrontDamper;
            modes.RearDamper = first.RearDamper;
            Assert.Equal(first, modes);
        }
    }

    [Fact]
    public void SmoothLaunch_OverTolerance_ErrorFallsWithTheFifthPowerOfTheSteps()
    {
        // Dormand and Prince's pair is of order 5 with local extrapolation: the error goes with steps⁻⁵. The slope of a run
        // with changing step sizes is not exact: 5 ± 0.5. From 1e-9 on; above it stability, not accuracy, sets the steps.
        StandingCar standing = StandingCar.Find(SmoothCar.Create());
        double[] exact = End(standing, 1e-13, out _);
        double[] tolerances = [1e-9, 3e-10, 1e-10, 3e-11, 1e-11];
        var steps = new double[tolerances.Length];
        var errors = new double[tolerances.Length];
        for (int i = 0; i < tolerances.Length; i++)
        {
            double[] end = End(standing, tolerances[i], out int count);
            steps[i] = Math.Log(count);
            errors[i] = Math.Log(Error(end, exact));
        }

        double slope = -Fit.Line(steps, errors).B;
        Assert.InRange(slope, 4.5, 5.5);
    }

    [Theory]
    [InlineData(1e-6)]
    [InlineData(1e-8)]
    [InlineData(1e-10)]
    public void DoorCarLaunch_WithAllItsKinks_ErrorStaysNearTheTolerance(double tolerance)
    {
        // Located kinks keep the tolerance's meaning: within a hundred tolerances of each state's weight after a
        // whole launch, which amplifies early errors some ten times.
        StandingCar standing = StandingCar.Find(DoorCar.Create());
        double[] exact = End(standing, 1e-13, out _);
        Assert.InRange(Error(End(standing, tolerance, out _), exact), 0, 100 * tolerance);
    }

    [Fact]
    public void SmoothLaunch_ByMathNetsRungeKutta_AgreesAndConvergesWithOrderFour()
    {
        // An independent integrator on the product's right-hand side: classic RK4 of MathNet.Numerics 5.0. Its second stage
        // is taken at the wrong time, so time is made a state. Errors must fall sixteenfold with the step halved (±30 %).
        StandingCar standing = StandingCar.Find(SmoothCar.Create());
        double[] exact = End(standing, 1e-13, out _);
        LaunchRunner runner = LaunchRunner.Create(standing, 1e-8);
        var released = new double[StateLayout.Count];
        Modes modes = runner.Release(released);
        Vector<double> Rate(double _, Vector<double> y)
        {
            var rates = new double[StateLayout.Count + 1];
            runner.Rates(y[StateLayout.Count], y.AsArray() ?? y.ToArray(), modes, rates.AsSpan(0, StateLayout.Count));
            rates[StateLayout.Count] = 1;
            return DenseVector.OfArray(rates);
        }

        double ByRungeKutta(int n) =>
            Error(RungeKutta.FourthOrder(DenseVector.OfArray([.. released, 0]), 0, 1, n + 1, Rate)[^1].ToArray(), exact);
        double coarse = ByRungeKutta(2000), fine = ByRungeKutta(4000);
        Assert.InRange(coarse / fine, 16 / 1.3, 16 * 1.3);
        Assert.InRange(fine, 0, 1e-7);
    }

    private static double[] End(StandingCar standing, double tolerance, out int steps)
    {
        LaunchRunner runner = LaunchRunner.Create(standing, tolerance);
        LaunchEnd end = runner.Run(OneSecond);
        Assert.True(end.Completed);
        steps = (int)end.Statistics.Steps;
        return runner.State.ToArray();
    }

    // What counts as one of each state: 1 m, 0.1 rad, 1 m/s, 10 rad/s, 10 mm of contact, 1 kJ.
    private static readonly double[] Weights = [1, 0.1, 0.1, 0.1, 0.1, 1, 0.5, 0.5, 0.5, 0.5, 10, 10, 0.1, 0.01, 10, 0.01, 100, 1000, 1000];

    /// <summary>Root mean square over the states, each over its weight or its own size.</summary>
    internal static double Error(IReadOnlyList<double> found, IReadOnlyList<double> exact)
    {
        double sum = 0;
        for (int i = 0; i < StateLayout.Count; i++)
        {
            double error = (found[i] - exact[i]) / (Weights[i] + Math.Abs(exact[i]));
            sum += error * error;
        }

        return Math.Sqrt(sum / StateLayout.Count);
    }
}
