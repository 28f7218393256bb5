using CsCheck;

namespace LaunchSim.Integration.Tests;

/// <summary>What holds of any run: statuses, repeatability, memory, joints of steps.</summary>
public class RunTests
{
    private static readonly IntegratorOptions Options = new() { Tolerance = 1e-10 };

    /// <summary>A ball on a driven table as a struct without memory of its own: guards, restarts, a break each second.</summary>
    private struct Bouncer : IEventSystem
    {
        public readonly int Dimension => 2;

        public readonly int EventCount => 2;

        public readonly void Derivative(double t, ReadOnlySpan<double> y, Span<double> dy)
        {
            dy[0] = y[1];
            dy[1] = -9.81 - (0.01 * y[1] * Math.Abs(y[1]));
        }

        public readonly EventDirection Direction(int index) => index == 0 ? EventDirection.Falling : EventDirection.Guard;

        public readonly void DerivativeAndEvents(double t, ReadOnlySpan<double> y, Span<double> dy, Span<double> values)
        {
            Derivative(t, y, dy);
            values[0] = EventValue(0, t, y);
            values[1] = EventValue(1, t, y);
        }

        public readonly double Invariant(ReadOnlySpan<double> y) => 0;

        public readonly double EventValue(int index, double t, ReadOnlySpan<double> y) => index == 0 ? y[0] : 100 - y[0];

        public readonly EventAction OnEvent(int index, double t, Span<double> y)
        {
            (y[0], y[1]) = (0, 5 + Math.Sin(t));
            return EventAction.Restart;
        }

        public readonly double NextBreak(double t) => Math.Floor(t) + 1;

        public readonly EventAction OnBreak(double t, Span<double> y) => EventAction.Restart;
    }

    private struct Counter : IStepObserver
    {
        public int Steps;

        public static bool WantsSteps => true;

        public void Accepted(in DenseStep step) => Steps++;
    }

    private static void Pendulum(double t, ReadOnlySpan<double> y, Span<double> dy) => (dy[0], dy[1]) = (y[1], -9.81 * Math.Sin(y[0]));

    [Fact]
    public void SecondRun_OfOneIntegrator_AllocatesNothing()
    {
        var integrator = new Integrator<Bouncer>(default, Options);
        Counter counter = default;
        double[] start = [1.0, 0];
        integrator.Run(0, start, 500, ref counter);
        int first = counter.Steps;
        long before = GC.GetAllocatedBytesForCurrentThread();
        RunStatus status = integrator.Run(0, start, 500, ref counter);
        long after = GC.GetAllocatedBytesForCurrentThread();
        Assert.Equal(RunStatus.Completed, status);
        Assert.Equal(2 * first, counter.Steps);
        Assert.True(integrator.Statistics.Events > 400);
        Assert.Equal(0, after - before);
    }

    [Fact]
    public void SecondRecord_OfTheSameLength_AllocatesNothing()
    {
        var integrator = new Integrator<Bouncer>(default, Options);
        var record = new StepRecord();
        var recorder = new Recorder(record);
        double[] start = [1.0, 0];
        integrator.Run(0, start, 100, ref recorder);
        record.Clear();
        long before = GC.GetAllocatedBytesForCurrentThread();
        integrator.Run(0, start, 100, ref recorder);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.True(record.Count > 256);
    }

    [Fact]
    public void Run_Repeated_IsTheSameToTheBit()
    {
        var one = new Integrator<Bouncer>(default, Options);
        var other = new Integrator<Bouncer>(default, Options);
        NoObserver none = default;
        one.Run(0, [1.0, 0], 50, ref none);
        double[] first = one.State.ToArray();
        Statistics cost = one.Statistics;
        one.Run(0, [3.0, 1], 7, ref none); // leaves nothing behind
        one.Run(0, [1.0, 0], 50, ref none);
        other.Run(0, [1.0, 0], 50, ref none);
        Assert.Equal(first, one.State.ToArray());
        Assert.Equal(first, other.State.ToArray());
        Assert.Equal(cost, one.Statistics);
        Assert.Equal(cost, other.Statistics);
    }

    [Fact]
    public void Run_Observed_IsTheSameToTheBitAsUnobserved()
    {
        var integrator = new Integrator<Bouncer>(default, Options);
        NoObserver none = default;
        Counter counter = default;
        integrator.Run(0, [1.0, 0], 20, ref none);
        double[] unobserved = integrator.State.ToArray();
        integrator.Run(0, [1.0, 0], 20, ref counter);
        Assert.Equal(unobserved, integrator.State.ToArray());
        Assert.Equal(integrator.Statistics.Steps, counter.Steps);
    }

    [Fact]
    public void Run_SplitAnywhere_EqualsTheWhole()
    {
        double[] whole = Solve.Plainly(2, Pendulum, 0, [1.0, 0], 3, Options);
        Gen.Double[0.01, 2.99].Sample(split =>
        {
            double[] middle = Solve.Plainly(2, Pendulum, 0, [1.0, 0], split, Options);
            double[] end = Solve.Plainly(2, Pendulum, split, middle, 3, Options);
            // 50 tolerances: each way has its own error of that size.
            Assert.Equal(whole[0], end[0], 5e-9);
            Assert.Equal(whole[1], end[1], 5e-9);
        }, iter: 100);
    }

    [Fact]
    public void Run_SplitAnywhere_LosesNoEventAndNoBreak()
    {
        // Also where the split falls on a break or on an event: elastic impacts at 1, 3, 5, 7 s, breaks at 2, 4, 6 s.
        double[] splits = [1, 2, 3, 4.5, 6, 7];
        foreach (double split in splits)
        {
            var script = new Script(2, (_, y, dy) => (dy[0], dy[1]) = (y[1], -2));
            script.On(EventDirection.Falling, (_, y) => y[0], (_, y) =>
            {
                (y[0], y[1]) = (0, Math.Abs(y[1]));
                return EventAction.Restart;
            });
            script.Breaks.AddRange([2, 4, 6]);
            double[] middle = Solve.Scripted(script, 0, [1.0, 0], split, Options).State.ToArray();
            Integrator<Scripted> run = Solve.Scripted(script, split, middle, 8, Options);
            Assert.Equal([2.0, 4, 6], script.BreaksSeen);
            Assert.Equal([1.0, 3, 5, 7], script.Fired.Select(f => f.T), (a, b) => Math.Abs(a - b) < 1e-11);
            Assert.Equal(1, run.State[0], 1e-10);
        }
    }

    [Fact]
    public void Run_ShiftedInTime_IsTheSame()
    {
        double[] expected = Solve.Plainly(2, Pendulum, 0, [1.0, 0], 3, Options);
        Gen.Double[-1000, 1000].Sample(shift =>
        {
            double[] end = Solve.Plainly(2, Pendulum, shift, [1.0, 0], 3 + shift, Options);
            // The length of the run is rounded by 1e-13, at speeds up to 3; the steps are all but the same.
            Assert.Equal(expected[0], end[0], 1e-11);
            Assert.Equal(expected[1], end[1], 1e-11);
        }, iter: 100);
    }

    [Fact]
    public void Dimension_OneToNine_PaddingStaysZeroAndStepsAreTheSame()
    {
        // n copies of one equation have the root mean square of one: the same steps, whatever the padding.
        static void Copies(double t, ReadOnlySpan<double> y, Span<double> dy, int n)
        {
            for (int i = 0; i < n; i++)
            {
                dy[i] = y[i] * Math.Cos(t);
            }
        }

        double[]? times = null;
        for (int n = 1; n <= 9; n++)
        {
            int dimension = n;
            var script = new Script(n, (t, y, dy) => Copies(t, y, dy, dimension));
            script.On(EventDirection.Rising, (_, y) => y[0] - 2);
            (Integrator<Scripted> run, StepRecord steps) =
                Solve.Recorded(script, 0, Enumerable.Repeat(1.0, n).ToArray(), 10, Options with { Tolerance = 1e-6 });
            double[] ends = Enumerable.Range(0, steps.Count).Select(steps.End).ToArray();
            times ??= ends;
            // The sum of 2, 4, 8 equal squares is exact, that of others is rounded: the estimate, a difference of numbers
            // 1e6 times as large, then differs by 1e-10, the step by less.
            double allowed = n is 1 or 2 or 4 or 8 ? 0 : 1e-9;
            Assert.Equal(times, ends, (a, b) => Math.Abs(a - b) <= allowed);
            Assert.All(run.State.ToArray(), y => Assert.Equal(Math.Exp(Math.Sin(10)), y, 1e-4));
            var padded = new double[(n + 7) / 8 * 8];
            for (int i = 0; i < steps.Count; i++)
            {
                padded.AsSpan().Clear();
                steps.At(i, steps.Start(i) + (0.3 * (steps.End(i) - steps.Start(i))), padded);
                Assert.All(padded[n..], p => Assert.Equal(0, p));
            }
        }
    }

    [Fact]
    public void Scales_GivenPerState_ActAsAbsoluteTolerances()
    {
        // The second state is 1e-6 of the first: with its scale it is as accurate, relatively.
        static void Rate(double t, ReadOnlySpan<double> y, Span<double> dy) => (dy[0], dy[1]) = (0, 1e-6 * Math.Cos(20 * t) * 20);
        var options = new IntegratorOptions { Tolerance = 1e-8 };
        double Error(IntegratorOptions o) => Math.Abs((Solve.Plainly(2, Rate, 0, [1.0, 0], 3, o)[1] * 1e6) - Math.Sin(60));
        Assert.InRange(Error(options with { Scales = [1.0, 1e-6] }), 0, 1e-6);
        Assert.True(Error(options) > Error(options with { Scales = [1.0, 1e-6] }));
    }

    // Statuses -------------------------------------------------------------------------------------------------------

    [Fact]
    public void Run_BeyondItsStepLimit_SaysSoAndHowFarItCame()
    {
        var script = new Script(2, Pendulum);
        Integrator<Scripted> run = Solve.Scripted(
            script, 0, [1.0, 0], 100, Options with { MaximumSteps = 50 }, RunStatus.TooManySteps);
        Assert.Equal(50, run.Statistics.Steps + run.Statistics.Rejected);
        Assert.InRange(run.Time, 0.1, 99);
    }

    [Theory]

    // The pendulum takes about 5 steps a second at the test's tolerance: 40 bring it a few seconds on.
    [InlineData(100, RunStatus.Completed)]
    [InlineData(1e7, RunStatus.TooManySteps)]
    public void Run_AtAHopelessPace_IsGivenUpEarly(double end, RunStatus expected)
    {
        var script = new Script(2, Pendulum);
        Integrator<Scripted> run = Solve.Scripted(script, 0, [1.0, 0], end, Options with { StepsBeforePace = 40 }, expected);
        if (expected == RunStatus.TooManySteps)
        {
            Assert.Equal(40, run.Statistics.Steps + run.Statistics.Rejected);
        }
    }

    [Fact]
    public void Run_Cancelled_EndsBetweenTwoSteps()
    {
        using var source = new CancellationTokenSource();
        var script = new Script(2, Pendulum);
        script.On(EventDirection.Falling, (_, y) => y[0], (_, _) =>
        {
            source.Cancel();
            return EventAction.Restart;
        });
        var integrator = new Integrator<Scripted>(new Scripted(script), Options);
        NoObserver none = default;
        Assert.Equal(RunStatus.Cancelled, integrator.Run(0, [1.0, 0], 100, ref none, source.Token));
        Assert.Equal(script.Fired[0].T, integrator.Time);
    }

    [Fact]
    public void Run_StoppedByAnEvent_LeavesItsTimeAndState()
    {
        var script = new Script(2, Pendulum).On(EventDirection.Falling, (_, y) => y[0], (_, _) => EventAction.Stop);
        Integrator<Scripted> run = Solve.Scripted(script, 0, [1.0, 0], 100, Options, RunStatus.StoppedByEvent);
        Assert.Equal(script.Fired[0].T, run.Time);
        Assert.InRange(run.State[0], -1e-11, 0);
    }

    [Fact]
    public void Run_IntoASingularity_FallsBelowItsStepFloor()
    {
        // y' = y², y(0) = 1 has its pole at t = 1.
        var script = new Script(1, (_, y, dy) => dy[0] = y[0] * y[0]);
        Integrator<Scripted> run = Solve.Scripted(script, 0, [1.0], 2, Options, RunStatus.StepBelowFloor);
        Assert.Equal(1, run.Time, 1e-6);
    }

    [Fact]
    public void Run_OfNoLength_CompletesWithItsStart()
    {
        var script = new Script(1, Pendulum);
        Integrator<Scripted> run = Solve.Scripted(script, 1, [3.0], 1, Options);
        Assert.Equal(3, run.State[0]);
        Assert.Equal(0, run.Statistics.Evaluations);
    }

    [Fact]
    public void Run_WithoutAnEnd_StopsByItsEvent()
    {
        var script = new Script(2, Pendulum).On(EventDirection.Falling, (_, y) => y[0], (_, _) => EventAction.Stop);
        Solve.Scripted(script, 0, [1.0, 0], double.PositiveInfinity, Options, RunStatus.StoppedByEvent);
    }

    [Fact]
    public void Options_OutOfRange_AreRefused()
    {
        var system = new Scripted(new Script(2, Pendulum));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Integrator<Scripted>(system, new() { Tolerance = 0 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => new Integrator<Scripted>(system, new() { Scales = [1.0] }));
    }

    // Steps kept -----------------------------------------------------------------------------------------------------

    [Fact]
    public void Record_AtAJoint_FindsTheLaterStep()
    {
        (_, StepRecord steps) = Solve.Recorded(new Script(2, Pendulum), 0, [1.0, 0], 3, Options);
        Assert.True(steps.Count > 5);
        for (int i = 0; i < steps.Count; i++)
        {
            Assert.Equal(i, steps.Find(steps.Start(i)));
            Assert.Equal(i, steps.Find(0.5 * (steps.Start(i) + steps.End(i))));
        }

        Assert.Equal(0, steps.Find(-1));
        Assert.Equal(steps.Count - 1, steps.Find(steps.End(steps.Count - 1)));
        Assert.Equal(steps.Count - 1, steps.Find(100));
    }

    [Fact]
    public void Record_AtAJoint_IsContinuousWithItsSlope()
    {
        (_, StepRecord steps) = Solve.Recorded(new Script(2, Pendulum), 0, [1.0, 0], 3, Options);
        double[] left = new double[2], right = new double[2], leftNear = new double[2], rightNear = new double[2];
        for (int i = 1; i < steps.Count; i++)
        {
            double t = steps.Start(i), d = 1e-6 * (steps.End(i) - t);
            steps.At(i - 1, t, left);
            steps.At(i, t, right);
            steps.At(i - 1, t - d, leftNear);
            steps.At(i, t + d, rightNear);
            Assert.Equal(left[0], right[0], 1e-15 * 4); // rounding
            Assert.Equal(left[1], right[1], 1e-15 * 8);
            // One-sided differences: curvature 10·d and rounding 1e-16/d, d above 1e-8.
            Assert.Equal((left[0] - leftNear[0]) / d, (rightNear[0] - right[0]) / d, 1e-5);
        }
    }

    [Fact]
    public void Record_AtAnEvent_JumpsToTheValuesBehindIt()
    {
        (Integrator<Scripted> run, StepRecord steps) = Solve.Recorded(
            EventLocationTests.Ball(EventDirection.Falling), 0, [1.0, 0], 1, Options);
        int after = steps.Find(Math.Sqrt(2 / 9.81) + 1e-12);
        double t = steps.Start(after);
        double[] before = new double[2], behind = new double[2];
        steps.At(after - 1, t, before);
        steps.At(steps.Find(t), t, behind);
        double speed = Math.Sqrt(2 * 9.81);
        Assert.Equal(-speed, before[1], 1e-11); // a parabola: exact but for location, 1e-13 s at 10 m/s²
        Assert.Equal(0.7 * speed, behind[1], 1e-11);
        Assert.Equal(1, run.Statistics.Events);
    }

    [Fact]
    public void Record_UsedAgainForAnotherDimension_HoldsTheNewRun()
    {
        var record = new StepRecord();
        foreach (int n in (int[])[2, 9, 1])
        {
            record.Clear();
            var recorder = new Recorder(record);
            var plain = new Plain(n, (_, y, dy) => y[..dy.Length].CopyTo(dy));
            var integrator = new Integrator<WithoutEvents<Plain>>(new(plain), Options with { MaximumStep = 1e-3 });
            integrator.Run(0, Enumerable.Range(1, n).Select(i => (double)i).ToArray(), 1, ref recorder);
            var y = new double[n];
            record.At(record.Find(0.7), 0.7, y);
            Assert.True(record.Count >= 1000);
            Assert.Equal(n * Math.Exp(0.7), y[n - 1], 1e-8);
        }
    }
}
