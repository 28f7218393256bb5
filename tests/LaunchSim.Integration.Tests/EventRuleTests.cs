using System.Reflection;
using System.Text.RegularExpressions;

namespace LaunchSim.Integration.Tests;

/// <summary>The rules of <c>docs/events.md</c>, by their numbers there.</summary>
public class EventRuleTests
{
    private static readonly IntegratorOptions Options = new() { Tolerance = 1e-10 };

    private static void Clock(double t, ReadOnlySpan<double> y, Span<double> dy) => dy[0] = 1;

    [Fact]
    public void Rules_AsWritten_EachNameTestsThatExist()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "LaunchSim.sln")))
        {
            folder = Path.GetDirectoryName(folder);
        }

        string text = File.ReadAllText(Path.Combine(folder!, "docs", "events.md"));
        string[] rules = Regex.Split(text, @"^\*\*\d+\. ", RegexOptions.Multiline)[1..];
        Assert.Equal(12, rules.Length);
        foreach (string rule in rules)
        {
            MatchCollection names = Regex.Matches(rule, @"^- `(\w+)\.(\w+)`", RegexOptions.Multiline);
            Assert.NotEmpty(names);
            foreach (Match name in names)
            {
                MethodInfo? test = GetType().Assembly.GetType($"{GetType().Namespace}.{name.Groups[1].Value}")?.GetMethod(name.Groups[2].Value);
                Assert.True(test?.GetCustomAttribute<FactAttribute>() is not null, name.Value);
            }
        }
    }

    // Rule 1 ---------------------------------------------------------------------------------------------------------

    [Fact]
    public void Guard_WhileItsModeHolds_RightHandSideDoesNotSwitch()
    {
        // y' = mode: 1 before the border at y = 1, 3 behind it. Every stage of the step that overshoots still sees 1, so
        // the solution up to the border is exact: rounding only.
        bool behind = false;
        var seen = new List<(double Y, double Rate)>();
        var script = new Script(1, (_, y, dy) =>
        {
            dy[0] = behind ? 3 : 1;
            seen.Add((y[0], dy[0]));
        });
        script.On(EventDirection.Guard, (_, y) => behind ? double.PositiveInfinity : 1 - y[0], (_, _) =>
        {
            behind = true;
            return EventAction.Restart;
        });
        Integrator<Scripted> run = Solve.Scripted(script, 0, [0.0], 2, Options);
        Assert.Equal(1, script.Fired[0].T, 1e-13); // the event tolerance
        Assert.Equal(4, run.State[0], 1e-12); // 1 + 3·1, location error times the jump of the rate
        Assert.Contains(seen, s => s.Y > 1.01 && s.Rate == 1); // went on smoothly beyond the border
    }

    // Rule 2 ---------------------------------------------------------------------------------------------------------

    [Fact]
    public void Event_OnRejectedSteps_DoesNotFire()
    {
        // A first step far too large crosses the border many times over; its error is refused before events are asked.
        var script = new Script(2, (_, y, dy) => (dy[0], dy[1]) = (y[1], -400 * y[0]));
        script.On(EventDirection.Falling, (_, y) => y[0]);
        Integrator<Scripted> run = Solve.Scripted(script, 0, [1.0, 0], 0.5, Options with { InitialStep = 0.5 });
        Assert.True(run.Statistics.Rejected > 0);
        // cos 20t falls at t = π/40 and 5π/40, closed form; the tolerance is that of the integration over 20 rad/s.
        Assert.Equal([Math.PI / 40, 5 * Math.PI / 40], script.Fired.Select(f => f.T), (a, b) => Math.Abs(a - b) < 1e-9);
    }

    // Rule 3 ---------------------------------------------------------------------------------------------------------

    [Theory]
    [InlineData(EventDirection.Falling, -1)]
    [InlineData(EventDirection.Rising, 1)]
    [InlineData(EventDirection.Either, 1)]
    [InlineData(EventDirection.Guard, -1)]
    public void Event_WhenItFires_StateIsOnTheFarSide(EventDirection direction, int sign)
    {
        double seen = double.NaN;
        var script = new Script(1, (t, _, dy) => dy[0] = Math.Exp(t));
        script.On(direction, (_, y) => sign * (y[0] - 2), (_, y) =>
        {
            seen = y[0] - 2;
            return EventAction.Stop;
        });
        Solve.Scripted(script, 0, [1.0], 2, Options, RunStatus.StoppedByEvent);
        // y = e^t: passes 2 at ln 2. Behind the border, by no more than the event tolerance times the rate.
        Assert.InRange(seen, 0, 3e-13);
        Assert.Equal(Math.Log(2), script.Fired[0].T, 1e-9);
    }

    [Theory]
    [InlineData(1e-3)]
    [InlineData(1e-6)]
    [InlineData(1e-10)]
    public void Event_WithALooserTolerance_StaysOnTheFarSideWithinIt(double tolerance)
    {
        var script = new Script(2, (_, y, dy) => (dy[0], dy[1]) = (y[1], -y[0]));
        script.On(EventDirection.Falling, (_, y) => y[0], (_, _) => EventAction.Stop);
        Solve.Scripted(script, 0, [1.0, 0], 3, Options with { EventTolerance = tolerance }, RunStatus.StoppedByEvent);
        // cos t: π/2; 1e-10 for the integration.
        Assert.InRange(script.Fired[0].T - (Math.PI / 2), -1e-10, tolerance + 1e-10);
    }

    [Fact]
    public void Events_OfAMirroredSystem_AreTheSameToTheBit()
    {
        // Rising is falling of the mirror image, and rounding is symmetric.
        List<(int, double)> Run(int sign)
        {
            var script = new Script(2, (_, y, dy) => (dy[0], dy[1]) = (y[1], -y[0] * (1 + (y[0] * y[0]))));
            script.On(sign > 0 ? EventDirection.Rising : EventDirection.Falling, (_, y) => y[0] - (sign * 0.3));
            script.On(EventDirection.Either, (_, y) => y[1]);
            Solve.Scripted(script, 0, [sign * 1.0, 0], 50, Options);
            return script.Fired;
        }

        Assert.Equal(Run(1), Run(-1));
        Assert.True(Run(1).Count > 20);
    }

    [Theory]
    [InlineData(EventDirection.Falling, 1)]
    [InlineData(EventDirection.Rising, -1)]
    [InlineData(EventDirection.Guard, 1)]
    public void Event_CrossedTheOtherWay_DoesNotFire(EventDirection direction, int sign)
    {
        // A guard is violated at the start then and hands over there, not at the crossing.
        var script = new Script(1, Clock);
        script.On(direction, (_, y) => sign * (y[0] - 1), (_, _) => EventAction.Stop);
        if (direction == EventDirection.Guard)
        {
            Solve.Scripted(script, 0, [0.0], 2, Options, RunStatus.StoppedByEvent);
            Assert.Equal([(0, 0.0)], script.Fired);
        }
        else
        {
            Solve.Scripted(script, 0, [0.0], 2, Options);
            Assert.Empty(script.Fired);
        }
    }

    [Theory]
    [InlineData(EventDirection.Falling, -1)]
    [InlineData(EventDirection.Rising, 1)]
    public void Event_TouchingZeroAtAStepsEndFromItsFarSide_DoesNotFire(EventDirection direction, int sign)
    {
        // From the far side to exactly 0 at the step's end and back: not a crossing in its direction.
        var script = new Script(1, (_, _, dy) => dy[0] = 0);
        script.On(direction, (t, _) => sign * Math.Abs(t - 1));
        script.Breaks.Add(1);
        Solve.Scripted(script, 0, [0.0], 2, Options with { MaximumStep = 0.25, InitialStep = 0.25 });
        Assert.Empty(script.Fired);
    }

    // Rule 4 ---------------------------------------------------------------------------------------------------------

    [Fact]
    public void Events_OfOneStep_TheEarliestFiresAndTheRestIsLookedAtAfresh()
    {
        // The first one's handler takes the second one's cause away.
        var script = new Script(1, Clock);
        script.On(EventDirection.Rising, (_, y) => y[0] - 0.75);
        script.On(EventDirection.Rising, (_, y) => y[0] - 0.5, (_, y) =>
        {
            y[0] = -10;
            return EventAction.Restart;
        });
        Solve.Scripted(script, 0, [0.0], 1, Options with { InitialStep = 1 });
        Assert.Single(script.Fired);
        Assert.Equal(1, script.Fired[0].Index);
    }

    [Theory]
    [InlineData(EventDirection.Rising, 1)]
    [InlineData(EventDirection.Falling, -1)]
    [InlineData(EventDirection.Either, 1)]
    public void Events_AtOneInstant_FireOneAfterTheOther(EventDirection direction, int sign)
    {
        var script = new Script(1, Clock);
        for (int i = 0; i < 4; i++)
        {
            script.On(direction, (_, y) => sign * (y[0] - 0.5));
        }

        Solve.Scripted(script, 0, [0.0], 1, Options);
        Assert.Equal([0, 1, 2, 3], script.Fired.Select(f => f.Index).Order());
        Assert.Single(script.Fired.Select(f => f.T).Distinct());
    }

    [Fact]
    public void Events_AtOneInstantWhoseCauseTheFirstTakesAway_OnlyTheFirstFires()
    {
        var script = new Script(1, Clock);
        for (int i = 0; i < 2; i++)
        {
            script.On(EventDirection.Rising, (_, y) => y[0] - 0.5, (_, y) =>
            {
                y[0] = -10;
                return EventAction.Restart;
            });
        }

        Solve.Scripted(script, 0, [0.0], 1, Options);
        Assert.Single(script.Fired);
    }

    // Rule 5 ---------------------------------------------------------------------------------------------------------

    [Fact]
    public void Guard_ViolatedAtTheStart_FiresAtOnceBeforeAnyStep()
    {
        bool right = false;
        var script = new Script(1, Clock);
        script.On(EventDirection.Guard, (_, y) => right ? 1 : -1, (_, _) =>
        {
            right = true;
            return EventAction.Restart;
        });
        Integrator<Scripted> run = Solve.Scripted(script, 3, [0.0], 4, Options);
        Assert.Equal([(0, 3.0)], script.Fired);
        Assert.Equal(0, run.Statistics.StepsDiscarded);
    }

    // Rule 6 ---------------------------------------------------------------------------------------------------------

    [Fact]
    public void Guard_StartingOnItsBorderAndLeadingOut_FiresAtTheStartAndTheStepIsRetaken()
    {
        bool below = false;
        var script = new Script(1, (_, _, dy) => dy[0] = below ? -2 : -1);
        script.On(EventDirection.Guard, (_, y) => below ? double.PositiveInfinity : y[0], (_, _) =>
        {
            below = true;
            return EventAction.Restart;
        });
        (Integrator<Scripted> run, StepRecord steps) = Solve.Recorded(script, 0, [0.0], 1, Options);
        Assert.Equal([(0, 0.0)], script.Fired);
        Assert.Equal(-2, run.State[0], 1e-14);
        Assert.True(steps.End(0) > 0); // the step in the wrong mode was not shown to the observer
        Assert.Equal(1, run.Statistics.StepsDiscarded);
    }

    [Fact]
    public void Guard_StartingOnItsBorderAndLeadingIn_DoesNotFire()
    {
        var script = new Script(1, Clock).On(EventDirection.Guard, (_, y) => y[0]);
        Solve.Scripted(script, 0, [0.0], 1, Options);
        Assert.Empty(script.Fired);
    }

    [Theory]
    [InlineData(EventDirection.Guard, 1)]
    [InlineData(EventDirection.Falling, 1)]
    [InlineData(EventDirection.Rising, -1)]
    [InlineData(EventDirection.Either, 1)]
    [InlineData(EventDirection.Either, -1)]
    public void Event_StartingOnItsBorderAndComingBackWithinAStep_Fires(EventDirection direction, int sign)
    {
        // y = t(1 − t) leaves 0 at the start and passes it at t = 1, well within one step of 4.
        var script = new Script(1, (t, _, dy) => dy[0] = 1 - (2 * t));
        script.On(direction, (_, y) => sign * y[0], (_, _) => EventAction.Stop);
        Solve.Scripted(script, 0, [0.0], 4, Options with { InitialStep = 4 }, RunStatus.StoppedByEvent);
        Assert.Equal(1, script.Fired[0].T, 1e-12);
    }

    [Theory]
    [InlineData(EventDirection.Falling, 1)]
    [InlineData(EventDirection.Rising, -1)]
    [InlineData(EventDirection.Either, 1)]
    public void Event_FiredJustBehindItsBorderAndReversed_FiresOnItsNextCrossing(EventDirection direction, int sign)
    {
        // A ball whose handler only turns the speed round leaves its height a hair below the floor: the next flight
        // starts on the far side and ends there, all within one step. Impacts of an elastic ball from 1 m under 2 m/s²:
        // at 1, 3, 5, 7 s.
        var script = new Script(2, (_, y, dy) => (dy[0], dy[1]) = (y[1], -2));
        script.On(direction, (_, y) => sign * y[0], (_, y) =>
        {
            y[1] = -y[1];
            return EventAction.Restart;
        });
        Solve.Scripted(script, 0, [1.0, 0], 8, Options);
        Assert.Equal([1.0, 3, 5, 7], script.Fired.Select(f => f.T), (a, b) => Math.Abs(a - b) < 1e-11);
    }

    [Fact]
    public void Event_FiredAndGoingOnBehindItsBorder_FiresOnce()
    {
        var script = new Script(1, Clock).On(EventDirection.Rising, (_, y) => y[0] - 0.1);
        Solve.Scripted(script, 0, [0.0], 1000, Options);
        Assert.Single(script.Fired);
    }

    // Rule 7 ---------------------------------------------------------------------------------------------------------

    [Fact]
    public void Event_AfterItsHandler_DerivativeIsEvaluatedAnewWithTheNewState()
    {
        var script = new Script(1, (_, y, dy) => dy[0] = y[0]);
        script.On(EventDirection.Rising, (_, y) => y[0] - 2, (t, y) =>
        {
            y[0] = -1;
            return EventAction.Restart;
        });
        Integrator<Scripted> run = Solve.Scripted(script, 0, [1.0], 1, Options);
        Assert.Equal(-Math.Exp(1 - Math.Log(2)), run.State[0], 1e-8); // closed form; 100 tolerances
        Assert.Contains(script.Fired[0].T, script.DerivativeTimes);
    }

    // Rule 8 ---------------------------------------------------------------------------------------------------------

    [Fact]
    public void Breaks_Declared_AreStepEndsToTheBit()
    {
        var script = new Script(2, (_, y, dy) => (dy[0], dy[1]) = (y[1], -y[0]));
        script.Breaks.AddRange([0.1, 0.1 + 1e-12, 0.3, 1.0 / 3, 2]);
        (_, StepRecord steps) = Solve.Recorded(script, 0, [1.0, 0], 2, Options);
        Assert.Equal(script.Breaks, script.BreaksSeen);
        double[] ends = Enumerable.Range(0, steps.Count).Select(steps.End).ToArray();
        Assert.All(script.Breaks, b => Assert.Contains(b, ends));
        for (int i = 1; i < steps.Count; i++)
        {
            Assert.Equal(steps.End(i - 1), steps.Start(i));
        }
    }

    [Fact]
    public void Breaks_EqualButForRounding_AreAllSeen()
    {
        var script = new Script(1, Clock);
        script.Breaks.AddRange([0.3, Math.BitIncrement(0.3), 1]);
        Integrator<Scripted> run = Solve.Scripted(script, 0, [0.0], 1, Options);
        Assert.Equal(script.Breaks, script.BreaksSeen);
        Assert.Equal(1, run.State[0], 1e-14);
    }

    [Fact]
    public void Break_OnTheInstantOfAnEvent_ComesAfterIt()
    {
        var order = new List<string>();
        var script = new Script(1, Clock);
        script.Breaks.Add(0.5);
        script.On(EventDirection.Rising, (t, _) => t - 0.5, (_, _) =>
        {
            order.Add("event");
            return EventAction.Restart;
        });
        script.AtBreak = (_, _) =>
        {
            order.Add("break");
            return EventAction.Restart;
        };
        Solve.Scripted(script, 0, [0.0], 1, Options);
        Assert.Equal(["event", "break"], order);
    }

    [Fact]
    public void Break_ThatStops_EndsTheRunThere()
    {
        var script = new Script(1, Clock) { AtBreak = (_, _) => EventAction.Stop };
        script.Breaks.Add(0.5);
        Integrator<Scripted> run = Solve.Scripted(script, 0, [0.0], 1, Options, RunStatus.StoppedByEvent);
        Assert.Equal(0.5, run.Time);
    }

    // Rule 9 ---------------------------------------------------------------------------------------------------------

    [Fact]
    public void Guards_HandingOverToEachOther_AreReportedAsChattering()
    {
        // Two modes of which each pushes over the other's border.
        bool up = true;
        var script = new Script(1, (_, _, dy) => dy[0] = up ? -1 : 1);
        Handler swap = (_, _) =>
        {
            up = !up;
            return EventAction.Restart;
        };
        script.On(EventDirection.Guard, (_, y) => up ? y[0] : -y[0], swap);
        Integrator<Scripted> run = Solve.Scripted(script, 0, [1.0], 3, Options, RunStatus.Chattering);
        Assert.Equal(1, run.Time, 1e-10);
        Assert.InRange(run.Statistics.Events, 64, 70);
    }

    [Fact]
    public void Ball_WhoseBouncesPileUp_IsReportedAsChatteringByAGuard()
    {
        // Row 3's ball beyond the limit of its impacts, 2.55863396558581 s in closed form. The flights shrink by 0.7 down
        // to what location resolves, some 1e-11 s.
        Script ball = EventLocationTests.Ball(EventDirection.Guard);
        Integrator<Scripted> run = Solve.Scripted(ball, 0, [1.0, 0], 4, Options, RunStatus.Chattering);
        Assert.Equal(2.55863396558581, run.Time, 1e-9);
        Assert.InRange(run.State[0], -1e-12, 1e-12);
    }

    [Fact]
    public void Breaks_ThatDoNotAdvance_AreReportedAsChattering()
    {
        // A system that names the same instant over and over, by mistake.
        var integrator = new Integrator<StuckBreak>(default, Options);
        NoObserver none = default;
        Assert.Equal(RunStatus.Chattering, integrator.Run(0, [0.0], 1, ref none));
        Assert.Equal(0.5, integrator.Time);
    }

    private struct StuckBreak : IEventSystem
    {
        public readonly int Dimension => 1;

        public readonly int EventCount => 0;

        public readonly void Derivative(double t, ReadOnlySpan<double> y, Span<double> dy) => dy[0] = 1;

        public readonly EventDirection Direction(int index) => EventDirection.Either;

        public readonly void DerivativeAndEvents(double t, ReadOnlySpan<double> y, Span<double> dy, Span<double> values)
        {
            Derivative(t, y, dy);
        }

        public readonly double Invariant(ReadOnlySpan<double> y) => 0;

        public readonly double EventValue(int index, double t, ReadOnlySpan<double> y) => 1;

        public readonly EventAction OnEvent(int index, double t, Span<double> y) => EventAction.Restart;

        public readonly double NextBreak(double t) => 0.5;

        public readonly EventAction OnBreak(double t, Span<double> y) => EventAction.Restart;
    }

    // Rule 10 --------------------------------------------------------------------------------------------------------

    [Fact]
    public void RightHandSide_NotANumberBeyondABorder_IsApproachedWithSmallerSteps()
    {
        // y' = −√(1 − t²)⁻¹… ends at t = 1 where the root has no value: y = arccos t, and the run stops at its floor.
        var script = new Script(1, (t, _, dy) => dy[0] = -1 / Math.Sqrt(1 - (t * t)));
        Integrator<Scripted> run = Solve.Scripted(script, 0, [Math.PI / 2], 2, Options, RunStatus.StepBelowFloor);
        Assert.InRange(run.Time, 1 - 1e-6, 1);
        Assert.Equal(Math.Acos(run.Time), run.State[0], 1e-7);
    }

    [Fact]
    public void EventFunction_NotANumber_IsTreatedLikeTheRightHandSide()
    {
        // Silence would step over the border at t = 0.9: the function has no value from 1 on.
        var script = new Script(1, Clock);
        script.On(EventDirection.Falling, (t, _) => Math.Sqrt(1 - t) - Math.Sqrt(0.1), (_, _) => EventAction.Stop);
        Solve.Scripted(script, 0, [0.0], 4, Options with { InitialStep = 4 }, RunStatus.StoppedByEvent);
        Assert.Equal(0.9, script.Fired[0].T, 1e-12);
    }

    [Fact]
    public void RightHandSide_NotANumberAtTheStart_IsReportedAtOnce()
    {
        var script = new Script(1, (_, _, dy) => dy[0] = double.NaN);
        Integrator<Scripted> run = Solve.Scripted(script, 0, [0.0], 1, Options, RunStatus.StepBelowFloor);
        Assert.Equal(0, run.Time);
        Assert.InRange(run.Statistics.Rejected, 1, 30);
    }

    // Rule 11 --------------------------------------------------------------------------------------------------------

    [Theory]
    [InlineData(0.0024, 0)]
    [InlineData(0.0026, 1)]
    public void Function_DippingWithinAStep_IsMissedUpToTheDepthStated(double depth, int fired)
    {
        // A parabola of second derivative 2 with its lowest point in the middle of a step of 0.1: |g″|h²/8 = 0.0025.
        var script = new Script(1, Clock);
        script.On(EventDirection.Falling, (t, _) => ((t - 1.05) * (t - 1.05)) - depth);
        Solve.Scripted(script, 0, [0.0], 2, Options with { InitialStep = 0.1, MaximumStep = 0.1 });
        Assert.Equal(fired, script.Fired.Count);
    }

    [Fact]
    public void Ball_WhoseBouncesPileUp_FallsThroughAPlainEvent()
    {
        // The same ball watched by a direction only: once a flight is shorter than 64 event tolerances it is missed, and
        // nothing says that the far side is forbidden. Whoever must not pass a border needs a guard.
        Script ball = EventLocationTests.Ball(EventDirection.Falling);
        Integrator<Scripted> run = Solve.Scripted(ball, 0, [1.0, 0], 4, Options);
        Assert.Equal(2.55863396558581, ball.Fired[^1].T, 1e-9);
        Assert.True(run.State[0] < -1);
    }

    // Rule 12 --------------------------------------------------------------------------------------------------------

    [Fact]
    public void Events_AtTheEndOfTheRun_AreSettledBeforeItIsOver()
    {
        bool switched = false;
        var script = new Script(1, Clock);
        script.On(EventDirection.Guard, (_, _) => switched ? -1 : 1, (_, _) =>
        {
            switched = false;
            return EventAction.Restart;
        });
        script.Breaks.Add(1);
        script.AtBreak = (_, _) =>
        {
            switched = true;
            return EventAction.Restart;
        };
        Solve.Scripted(script, 0, [0.0], 1, Options);
        Assert.Equal([1.0], script.BreaksSeen);
        Assert.Equal([(0, 1.0)], script.Fired);
    }
}
