namespace LaunchSim.Integration.Tests;

/// <summary>Published and closed-form event instants.</summary>
public class EventLocationTests
{
    /// <summary>A ball from 1 m that keeps 0.7 of its speed. Model: modelica/Reference-FMUs BouncingBall.</summary>
    internal static Script Ball(EventDirection direction) => new Script(2, (_, y, dy) => (dy[0], dy[1]) = (y[1], -9.81)).On(
        direction,
        (_, y) => y[0],
        (_, y) =>
        {
            (y[0], y[1]) = (0, -0.7 * y[1]);
            return EventAction.Restart;
        });

    [Theory]
    [InlineData(EventDirection.Falling)]
    [InlineData(EventDirection.Guard)]
    public void BouncingBall_Impacts_AreTheClosedForm(EventDirection direction)
    {
        // Closed form t1 = √(2/g), flights 2·0.7^k·t1, computed for this project. Each flight is a parabola, which the
        // pair integrates exactly: what is left is location, 1e-13 an impact.
        double[] impacts =
            [0.451523640986, 1.08365673837, 1.52614990653, 1.83589512425, 2.05271677665, 2.20449193333, 2.31073454301];
        Script ball = Ball(direction);
        Solve.Scripted(ball, 0, [1.0, 0], 2.35, new IntegratorOptions { Tolerance = 1e-10 });
        Assert.Equal(impacts, ball.Fired.Select(f => f.T), (a, b) => Math.Abs(a - b) < 1e-10);
    }

    [Theory]
    [InlineData(1e-6)]
    [InlineData(1e-9)]
    public void RationalFunction_EventsOfBothDirections_LieWhereTheExactSolutionPutsThem(double tolerance)
    {
        // SciPy's test_ivp.py: exact t/(t+10), 10t/(t+10)²; roots of the exact solution computed with mpmath. Tolerance
        // 10·rtol on the relative error, as the source has it for states.
        static void Rational(double t, ReadOnlySpan<double> y, Span<double> dy) =>
            (dy[0], dy[1]) = (y[1] / t, y[1] * (y[0] + (2 * y[1]) - 1) / (t * (y[0] - 1)));

        Script Run(EventDirection first, EventDirection second)
        {
            var script = new Script(2, Rational);
            script.On(first, (_, y) => y[0] - Math.Pow(y[1], 0.7));
            script.On(second, (_, y) => Math.Pow(y[1], 0.6) - y[0]);
            var options = new IntegratorOptions { Tolerance = tolerance };
            Integrator<Scripted> run = Solve.Scripted(script, 5, [1.0 / 3, 2.0 / 9], 8, options);
            Assert.Equal(8.0 / 18, run.State[0], 10 * tolerance);
            Assert.Equal(80.0 / 324, run.State[1], 10 * tolerance);
            return script;
        }

        Script right = Run(EventDirection.Rising, EventDirection.Falling);
        Assert.Equal([0, 1], right.Fired.Select(f => f.Index));
        Assert.Equal(5.55057576624078, right.Fired[0].T, 5.55 * 10 * tolerance);
        Assert.Equal(7.54877666246693, right.Fired[1].T, 7.55 * 10 * tolerance);
        Assert.Empty(Run(EventDirection.Falling, EventDirection.Rising).Fired);
        Assert.Equal([0, 1], Run(EventDirection.Either, EventDirection.Either).Fired.Select(f => f.Index));
    }
}
