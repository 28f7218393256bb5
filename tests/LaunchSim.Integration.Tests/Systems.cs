namespace LaunchSim.Integration.Tests;

internal delegate void Rate(double t, ReadOnlySpan<double> y, Span<double> dy);

/// <summary>A plain system from a delegate, for tests that are not about speed.</summary>
internal readonly struct Plain(int dimension, Rate rate) : IOdeSystem
{
    public int Dimension => dimension;

    public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dy) => rate(t, y, dy);
}

internal delegate double Border(double t, ReadOnlySpan<double> y);

internal delegate EventAction Handler(double t, Span<double> y);

/// <summary>One event: how it fires, what it watches, what it does.</summary>
internal sealed record Watch(EventDirection Direction, Border Value, Handler Act);

/// <summary>
/// A system with events from delegates. It writes down what the integrator asks of it, so that the rules can be read
/// off: every firing and every break with its instant.
/// </summary>
internal sealed class Script(int dimension, Rate rate)
{
    public int Dimension { get; } = dimension;

    public Rate Rate { get; set; } = rate;

    public List<Watch> Events { get; } = [];

    public List<double> Breaks { get; } = [];

    public Handler AtBreak { get; set; } = (_, _) => EventAction.Restart;

    public List<(int Index, double T)> Fired { get; } = [];

    public List<double> BreaksSeen { get; } = [];

    public List<double> DerivativeTimes { get; } = [];

    public Script On(EventDirection direction, Border value, Handler? act = null)
    {
        Events.Add(new Watch(direction, value, act ?? ((_, _) => EventAction.Restart)));
        return this;
    }
}

/// <summary>The struct by which the integrator sees a <see cref="Script"/>.</summary>
internal readonly struct Scripted(Script script) : IEventSystem
{
    public int Dimension => script.Dimension;

    public int EventCount => script.Events.Count;

    public void Derivative(double t, ReadOnlySpan<double> y, Span<double> dy)
    {
        script.DerivativeTimes.Add(t);
        script.Rate(t, y, dy);
    }

    public EventDirection Direction(int index) => script.Events[index].Direction;

    public void DerivativeAndEvents(double t, ReadOnlySpan<double> y, Span<double> dy, Span<double> values)
    {
        Derivative(t, y, dy);
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = script.Events[i].Value(t, y);
        }
    }

    public double Invariant(ReadOnlySpan<double> y) => 0;

    public double EventValue(int index, double t, ReadOnlySpan<double> y) => script.Events[index].Value(t, y);

    public EventAction OnEvent(int index, double t, Span<double> y)
    {
        script.Fired.Add((index, t));
        return script.Events[index].Act(t, y);
    }

    public double NextBreak(double t)
    {
        foreach (double b in script.Breaks)
        {
            if (b > t)
            {
                return b;
            }
        }

        return double.PositiveInfinity;
    }

    public EventAction OnBreak(double t, Span<double> y)
    {
        script.BreaksSeen.Add(t);
        return script.AtBreak(t, y);
    }
}

/// <summary>Keeps every step in a record.</summary>
internal readonly struct Recorder(StepRecord record) : IStepObserver
{
    public static bool WantsSteps => true;

    public void Accepted(in DenseStep step) => record.Add(step);
}

internal static class Solve
{
    /// <summary>Runs a plain system to the end and returns the states there.</summary>
    public static double[] Plainly(
        int dimension, Rate rate, double start, double[] state, double end, IntegratorOptions options, out Statistics statistics)
    {
        var integrator = new Integrator<WithoutEvents<Plain>>(new(new Plain(dimension, rate)), options);
        NoObserver none = default;
        Assert.Equal(RunStatus.Completed, integrator.Run(start, state, end, ref none));
        statistics = integrator.Statistics;
        return integrator.State.ToArray();
    }

    public static double[] Plainly(int dimension, Rate rate, double start, double[] state, double end, IntegratorOptions options) =>
        Plainly(dimension, rate, start, state, end, options, out _);

    /// <summary>Runs a scripted system and returns its integrator, the status asserted.</summary>
    public static Integrator<Scripted> Scripted(
        Script script, double start, double[] state, double end, IntegratorOptions options, RunStatus expected = RunStatus.Completed)
    {
        var integrator = new Integrator<Scripted>(new Scripted(script), options);
        NoObserver none = default;
        Assert.Equal(expected, integrator.Run(start, state, end, ref none));
        return integrator;
    }

    /// <summary>The same with every step kept.</summary>
    public static (Integrator<Scripted> Integrator, StepRecord Steps) Recorded(
        Script script, double start, double[] state, double end, IntegratorOptions options, RunStatus expected = RunStatus.Completed)
    {
        var integrator = new Integrator<Scripted>(new Scripted(script), options);
        var steps = new StepRecord();
        var recorder = new Recorder(steps);
        Assert.Equal(expected, integrator.Run(start, state, end, ref recorder));
        return (integrator, steps);
    }
}
