namespace LaunchSim.Integration.Tests;

/// <summary>The check of a kept quantity, on an oscillator x'' = −x whose energy ½(x² + x'²) is kept by the true solution.</summary>
public sealed class InvariantTests
{
    [Fact]
    public void Invariant_WithoutItsTolerance_DriftsWithTheStates() => Assert.InRange(WorstChange(double.PositiveInfinity, out _), 1e-6, 1);

    [Fact]
    public void Invariant_WithItsTolerance_ChangesByNoMoreInAnyStep()
    {
        double loose = WorstChange(double.PositiveInfinity, out Statistics few);
        double tight = WorstChange(1e-9, out Statistics many);

        Assert.InRange(tight, 0, 1e-9);
        Assert.True(loose > 100 * tight);
        Assert.True(many.Steps > few.Steps);
    }

    private static double WorstChange(double tolerance, out Statistics statistics)
    {
        var integrator = new Integrator<Oscillator>(default, new IntegratorOptions { Tolerance = 1e-3, InvariantTolerance = tolerance });
        var worst = new Worst { Before = 0.5 };
        Assert.Equal(RunStatus.Completed, integrator.Run(0, [1, 0], 20, ref worst));
        statistics = integrator.Statistics;
        return worst.Change;
    }

    private struct Worst : IStepObserver
    {
        public double Before, Change;

        public static bool WantsSteps => true;

        public void Accepted(in DenseStep step)
        {
            Span<double> y = stackalloc double[2];
            step.At(step.End, y);
            double energy = 0.5 * ((y[0] * y[0]) + (y[1] * y[1]));
            Change = Math.Max(Change, Math.Abs(energy - Before));
            Before = energy;
        }
    }

    private readonly struct Oscillator : IEventSystem
    {
        public int Dimension => 2;

        public int EventCount => 0;

        public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dy)
        {
            dy[0] = y[1];
            dy[1] = -y[0];
        }

        public EventDirection Direction(int index) => EventDirection.Guard;

        public void DerivativeAndEvents(double t, ReadOnlySpan<double> y, Span<double> dy, Span<double> values) => Derivative(t, y, dy);

        public double Invariant(ReadOnlySpan<double> y) => 0.5 * ((y[0] * y[0]) + (y[1] * y[1]));

        public double EventValue(int index, double t, ReadOnlySpan<double> y) => double.PositiveInfinity;

        public EventAction OnEvent(int index, double t, Span<double> y) => EventAction.Restart;

        public double NextBreak(double t) => double.PositiveInfinity;

        public EventAction OnBreak(double t, Span<double> y) => EventAction.Restart;
    }
}
