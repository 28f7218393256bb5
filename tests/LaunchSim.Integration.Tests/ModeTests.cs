using CsCheck;

namespace LaunchSim.Integration.Tests;

/// <summary>Systems that switch between smooth modes: contact, clutch, friction, springs with kinks.</summary>
public class ModeTests
{
    private static readonly IntegratorOptions Options = new() { Tolerance = 1e-11 };

    [Fact]
    public void Contact_ThatCannotPull_LetsGoCoastsAndSeparatesAsInClosedForm()
    {
        // m = 1, k = 10, c = 1.5, contact at s > 0.5 from s = 2 at rest: presses, coasts while the damper would pull,
        // separates, reaches the other side. Closed form computed for this project; it agrees with the reference results
        // of ElastoGap in modelica/MAP-LIB_ReferenceResults (0.58337276, 0.87516038).
        bool pressing = true;
        var seen = new List<(double T, double S, double V)>();
        static double Force(ReadOnlySpan<double> y) => (10 * (y[0] - 0.5)) + (1.5 * y[1]);
        EventAction Note(double t, Span<double> y)
        {
            seen.Add((t, y[0], y[1]));
            return EventAction.Restart;
        }

        var script = new Script(2, (_, y, dy) => (dy[0], dy[1]) = (y[1], pressing ? -Force(y) : 0));
        script.On(EventDirection.Guard, (_, y) => pressing ? Force(y) : double.PositiveInfinity, (t, y) =>
        {
            pressing = false;
            return Note(t, y);
        });
        script.On(EventDirection.Falling, (_, y) => y[0] - 0.5, Note);
        script.On(EventDirection.Falling, (_, y) => y[0] + 0.5, Note);
        Solve.Scripted(script, 0, [2.0, 0], 1, Options);

        Assert.Equal([0, 1, 2], script.Fired.Select(f => f.Index));
        Assert.Equal(0.4333728825467383, seen[0].T, 1e-9);
        Assert.Equal(0.5140719760057898, seen[0].S - 0.5, 1e-9);
        Assert.Equal(-3.427146506705266, seen[0].V, 1e-9);
        Assert.Equal(0.5833728825467383, seen[1].T, 1e-9);
        Assert.Equal(0.8751608169240649, seen[2].T, 1e-9);
    }

    [Theory]
    [InlineData(400, 50, 0.317880794701987, 245.695364238411, 38145.6953642384, 339.655172413793)]
    [InlineData(0, 0, 0.137931034482759, 168.965517241379, 16551.724137931, 0)]
    public void Clutch_SlipToLock_IsTheClosedForm(
        double engine, double load, double lockTime, double lockSpeed, double heat, double torque)
    {
        // E = I1·I2·Δω²/2(I1+I2) and its like with torques: Shigley, ch. 16, from memory; numbers computed for this project.
        // The modes are linear in time: exact but for rounding, 1e-9 relative.
        Script clutch = Clutch(engine, load, _ => 600, out Func<bool> isLocked, out Func<double> torqueWhenLocked);
        (Integrator<Scripted> run, StepRecord steps) = Solve.Recorded(clutch, 0, [500.0, 100, 0], 1, Options);
        Assert.Single(clutch.Fired);
        Assert.Equal(lockTime, clutch.Fired[0].T, 1e-9);
        var y = new double[3];
        steps.At(steps.Find(clutch.Fired[0].T), clutch.Fired[0].T, y);
        Assert.Equal(lockSpeed, y[0], 1e-9 * 500);
        Assert.Equal(lockSpeed, y[1], 1e-9 * 500);
        Assert.Equal(heat, run.State[2], 1e-9 * heat);
        Assert.True(isLocked());
        Assert.Equal(torque, torqueWhenLocked(), 1e-9);
        Assert.Equal(run.State[0], run.State[1], 1e-10); // both speeds on, side by side
        Assert.Equal(lockSpeed + ((engine - load) / 1.45 * (1 - lockTime)), run.State[0], 1e-9 * 500);
    }

    [Fact]
    public void Clutch_WhoseCapacityFadesAfterLock_SlipsAgainWhenTheTorqueExceedsIt()
    {
        // Capacity 600 to 0.5 s, then in a straight line to 0 at 1 s: below 339.655172413793 from 0.716954022988506 s,
        // after which ω1' = (400 − capacity)/0.25 and ω2' = (capacity − 50)/1.2, in closed form.
        static double Capacity(double t) => t < 0.5 ? 600 : 1200 * (1 - t);
        Script clutch = Clutch(400, 50, Capacity, out Func<bool> isLocked, out _);
        clutch.Breaks.Add(0.5);
        Integrator<Scripted> run = Solve.Scripted(clutch, 0, [500.0, 100, 0], 0.9, Options);
        double torque = 492.5 / 1.45, release = 1 - (torque / 1200);
        Assert.Equal(2, clutch.Fired.Count);
        Assert.Equal(release, clutch.Fired[1].T, 1e-9);
        Assert.False(isLocked());
        double d = 0.9 - release, passed = (torque * d) - (600 * d * d);
        double together = 245.695364238411 + (350 / 1.45 * (release - 0.317880794701987));
        Assert.Equal(together + (((400 * d) - passed) / 0.25), run.State[0], 1e-8);
        Assert.Equal(together + ((passed - (50 * d)) / 1.2), run.State[1], 1e-8);
    }

    [Theory]
    [InlineData(1e-3)]
    [InlineData(1)]
    [InlineData(60)]
    public void TransientSlip_StepOfSlip_RisesWithDistanceAtAnySpeed(double speed)
    {
        // u' = V_s − V_t·u/σ with V_s = κ·V: u/(κσ) = 1 − e^(−x/σ). Pacejka, Tyre and Vehicle Dynamics, ch. 7–8, from memory.
        const double sigma = 0.3, kappa = 0.05;
        (double Share, double Expected)[] rows =
            [(0.5, 0.393469340287367), (1, 0.632120558828558), (3, 0.950212931632136)];
        foreach ((double share, double expected) in rows)
        {
            double[] end = Solve.Plainly(
                1,
                (_, y, dy) => dy[0] = (kappa * speed) - (speed * y[0] / sigma),
                0,
                [0.0],
                share * sigma / speed,
                new IntegratorOptions { Tolerance = 1e-10, Scales = [kappa * sigma] });
            Assert.Equal(expected, end[0] / (kappa * sigma), 1e-8);
        }
    }

    [Fact]
    public void TransientSlip_TowardsStandstill_IsASpring()
    {
        // At V_t → 0 the deflection is the path slipped, the force C_κ/σ times it.
        const double sigma = 0.3, stiffness = 8e4, speed = 1e-9, path = 0.002;
        double[] end = Solve.Plainly(
            1, (_, y, dy) => dy[0] = path - (speed * y[0] / sigma), 0, [0.0], 1, new IntegratorOptions { Tolerance = 1e-10 });
        Assert.Equal(stiffness / sigma * path, stiffness * end[0] / sigma, 1e-5); // of 533 N
    }

    [Fact]
    public void PiecewiseLinearSpring_WithFrozenModes_ConvergesWithOrderFiveAcrossKinks()
    {
        // x'' = −k·x, k = 4 for x ≥ 0 and 1 below: half periods π/2 and π, in closed form; eight kinks to t = 20.
        double[] errors = FixedSteps(frozen: true);
        for (int i = 1; i < errors.Length; i++)
        {
            // log2 of the ratio: 5, by how the steps happen to lie against the kinks ±0.5.
            Assert.InRange(Math.Log2(errors[i - 1] / errors[i]), 4.5, 5.9);
        }
    }

    [Fact]
    public void PiecewiseLinearSpring_SteppedAcrossItsKinks_LosesTheOrder()
    {
        // The same without events: why guards are there. Three halvings should give 2^15; they give less than 2^9.
        double[] errors = FixedSteps(frozen: false);
        Assert.InRange(errors[0] / errors[^1], 1, 512);
        Assert.True(errors[^1] > 100 * FixedSteps(frozen: true)[^1]);
    }

    [Fact]
    public void AbsoluteValueOscillator_WithFrozenModes_KeepsTheToleranceAcrossKinks()
    {
        // x'' = −x − |x|/2: the spring above by other means, k = 1.5 and 0.5.
        foreach (double tolerance in (double[])[1e-6, 1e-8, 1e-10, 1e-12])
        {
            var script = Sided(1.5, 0.5, frozen: true);
            double[] end = Solve.Scripted(script, 0, [1.0, 0], 30, new() { Tolerance = tolerance }).State.ToArray();
            (double x, double v) = SidedExactly(1.5, 0.5, 30);
            Assert.InRange(Math.Abs(end[0] - x) + Math.Abs(end[1] - v), 0, 100 * tolerance); // 30 s of steps, each within it
        }
    }

    [Fact]
    public void PiecewiseLinearSpring_OfAnyStiffnesses_KeepsTheTolerance()
    {
        Gen.Select(Gen.Double[0.2, 9], Gen.Double[0.2, 9], Gen.Double[0.5, 30]).Sample((above, below, end) =>
        {
            double[] found = Solve.Scripted(Sided(above, below, frozen: true), 0, [1.0, 0], end, new() { Tolerance = 1e-9 }).State.ToArray();
            (double x, double v) = SidedExactly(above, below, end);
            // Up to 90 rad of oscillation, phase errors adding up; speeds up to 3, amplitudes up to √45.
            Assert.InRange(Math.Abs(found[0] - x) + Math.Abs(found[1] - v), 0, 2e-6);
        }, iter: 300);
    }

    [Fact]
    public void AbsoluteValueOscillator_WithoutEvents_PaysInRejectedSteps()
    {
        var options = new IntegratorOptions { Tolerance = 1e-9 };
        Integrator<Scripted> frozen = Solve.Scripted(Sided(1.5, 0.5, frozen: true), 0, [1.0, 0], 30, options);
        Integrator<Scripted> crossed = Solve.Scripted(Sided(1.5, 0.5, frozen: false), 0, [1.0, 0], 30, options);
        Assert.True(crossed.Statistics.Rejected > frozen.Statistics.Rejected + 10);
        Assert.True(crossed.Statistics.Evaluations > frozen.Statistics.Evaluations);
    }

    [Fact]
    public void DryFriction_WithFrozenModes_LosesTwoFrictionsAHalfCycleAndSticks()
    {
        // x'' = −x − μ·sign(v), μ = 0.15 from x = 1: turning points −0.7, 0.4, then |x| = 0.1 < μ: sticks at −0.1, t = 3π.
        const double friction = 0.15;
        int sign = -1;
        var turns = new List<(double T, double X)>();
        var script = new Script(2, (_, y, dy) => (dy[0], dy[1]) = (y[1], sign == 0 ? 0 : -y[0] - (friction * sign)));
        script.On(EventDirection.Guard, (_, y) => sign == 0 ? friction - Math.Abs(y[0]) : sign * y[1], (t, y) =>
        {
            turns.Add((t, y[0]));
            y[1] = 0;
            sign = Math.Abs(y[0]) < friction ? 0 : -sign;
            return EventAction.Restart;
        });
        Integrator<Scripted> run = Solve.Scripted(script, 0, [1.0, 0], 20, Options);
        Assert.Equal([Math.PI, 2 * Math.PI, 3 * Math.PI], turns.Select(x => x.T), (a, b) => Math.Abs(a - b) < 1e-8);
        Assert.Equal([-0.7, 0.4, -0.1], turns.Select(x => x.X), (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.Equal(-0.1, run.State[0], 1e-9);
        Assert.Equal(0, run.State[1]);
    }

    private static double[] FixedSteps(bool frozen)
    {
        (double x, double v) = SidedExactly(4, 1, 20);
        return new[] { 200, 400, 800, 1600 }.Select(n =>
        {
            var options = new IntegratorOptions { Tolerance = 1, InitialStep = 20.0 / n, MaximumStep = 20.0 / n };
            double[] end = Solve.Scripted(Sided(4, 1, frozen), 0, [1.0, 0], 20, options).State.ToArray();
            return Math.Abs(end[0] - x) + Math.Abs(end[1] - v);
        }).ToArray();
    }

    /// <summary>A spring of stiffness <paramref name="above"/> for x ≥ 0 and <paramref name="below"/> under it.</summary>
    private static Script Sided(double above, double below, bool frozen)
    {
        bool isAbove = true;
        var script = new Script(
            2, (_, y, dy) => (dy[0], dy[1]) = (y[1], -((frozen ? isAbove : y[0] >= 0) ? above : below) * y[0]));
        if (frozen)
        {
            script.On(EventDirection.Guard, (_, y) => isAbove ? y[0] : -y[0], (_, _) =>
            {
                isAbove = !isAbove;
                return EventAction.Restart;
            });
        }

        return script;
    }

    private static (double X, double V) SidedExactly(double above, double below, double t)
    {
        // From x = 1 at rest: a quarter above, half cycles of amplitude 1 above and 1/√below·√above below.
        double up = Math.Sqrt(above), down = Math.Sqrt(below);
        double phase = (t + (0.5 * Math.PI / up)) % ((Math.PI / up) + (Math.PI / down));
        if (phase < Math.PI / up)
        {
            return (Math.Sin(up * phase), up * Math.Cos(up * phase));
        }

        phase -= Math.PI / up;
        return (-up / down * Math.Sin(down * phase), -up * Math.Cos(down * phase));
    }

    /// <summary>Two inertias, 0.25 and 1.2: slipping until the speeds meet, locked while the torque allows; heat as a state.</summary>
    private static Script Clutch(
        double engine, double load, Func<double, double> capacity, out Func<bool> isLocked, out Func<double> torqueWhenLocked)
    {
        const double i1 = 0.25, i2 = 1.2;
        bool locked = false;
        double together = ((engine * i2) + (load * i1)) / (i1 + i2);
        isLocked = () => locked;
        torqueWhenLocked = () => together;
        var script = new Script(3, (t, y, dy) =>
        {
            double torque = locked ? together : capacity(t);
            dy[0] = (engine - torque) / i1;
            dy[1] = (torque - load) / i2;
            dy[2] = locked ? 0 : torque * (y[0] - y[1]);
        });
        script.On(EventDirection.Guard, (t, y) => locked ? capacity(t) - Math.Abs(together) : y[0] - y[1], (t, y) =>
        {
            locked = !locked && Math.Abs(together) <= capacity(t);
            double speed = ((i1 * y[0]) + (i2 * y[1])) / (i1 + i2);
            (y[0], y[1]) = (speed, speed);
            return EventAction.Restart;
        });
        return script;
    }
}
