using System.Numerics;

namespace LaunchSim.Integration;

/// <summary>
/// Integrates one system with Dormand–Prince 5(4), PI step control, dense output and located events. One instance holds
/// all the memory that a run needs and may be used for one run after another; it is not shared between threads.
/// The rules of event handling are numbered in <c>docs/events.md</c>.
/// </summary>
/// <typeparam name="TSystem">The system; a struct, so that every call is direct.</typeparam>
public sealed class Integrator<TSystem>
    where TSystem : struct, IEventSystem
{
    private const int MostEventsWithoutProgress = 64;
    private const int None = -1;

    // A run may find a better pace, but not one this many times better.
    private const double MostTimesTooMany = 10;
    private const int NotANumber = -2;

    // An advance of up to this many event tolerances is no progress, and an excursion that short is not looked for.
    private const double TolerancesOfProgress = 64;

    private readonly IntegratorOptions _options;
    private readonly DormandPrince _pair;
    private double[] _valuesBefore;
    private double[] _valuesAfter;

    // For each event the sign of its far side, or 0: crossed within the step in work; crossed together with another
    // event that fired first; fired at the instant from which the step in work starts.
    private readonly sbyte[] _crossed;
    private readonly sbyte[] _due;
    private readonly sbyte[] _fired;
    private bool _anyCrossed;
    private bool _anyDue;
    private bool _anyFired;
    private TSystem _system;
    private Statistics _statistics;

    /// <summary>Allocates the memory for runs of a system.</summary>
    /// <param name="system">The system.</param>
    /// <param name="options">Accuracy and limits.</param>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is not above 0, or the scales do not match the system.</exception>
    public Integrator(TSystem system, IntegratorOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(options.Tolerance);
        if (options.Scales is { } scales)
        {
            ArgumentOutOfRangeException.ThrowIfNotEqual(scales.Count, system.Dimension);
        }

        _system = system;
        _options = options;
        _pair = new DormandPrince(system.Dimension, options.Tolerance, options.Scales);
        _valuesBefore = new double[system.EventCount];
        _valuesAfter = new double[system.EventCount];
        _crossed = new sbyte[system.EventCount];
        _due = new sbyte[system.EventCount];
        _fired = new sbyte[system.EventCount];
    }

    /// <summary>The system in work: its mode and what it has cached.</summary>
    public ref TSystem System => ref _system;

    /// <summary>What the latest run cost.</summary>
    public Statistics Statistics => _statistics;

    /// <summary>How far the latest run came.</summary>
    public double Time { get; private set; }

    /// <summary>The states where the latest run ended.</summary>
    public ReadOnlySpan<double> State => _pair.State.AsSpan(0, _pair.Dimension);

    /// <summary>Runs from <paramref name="start"/> to <paramref name="end"/>.</summary>
    /// <typeparam name="TObserver">What sees the steps.</typeparam>
    /// <param name="start">The first instant.</param>
    /// <param name="state">The states there.</param>
    /// <param name="end">The last instant, above the first.</param>
    /// <param name="observer">Sees each accepted step.</param>
    /// <param name="cancellation">Asked once a step.</param>
    public RunStatus Run<TObserver>(
        double start, ReadOnlySpan<double> state, double end, ref TObserver observer, CancellationToken cancellation = default)
        where TObserver : struct, IStepObserver
    {
        DormandPrince pair = _pair;
        bool checksInvariant = double.IsFinite(_options.InvariantTolerance);
        double perInvariantTolerance = 1 / _options.InvariantTolerance;
        _statistics = default;
        Forget(_crossed, ref _anyCrossed);
        Forget(_due, ref _anyDue);
        Forget(_fired, ref _anyFired);
        state[..pair.Dimension].CopyTo(pair.State);
        double t = start;
        Time = t;
        StepControl control = StepControl.New();
        double proposed = double.NaN;
        int idle = 0;
        bool restart = t < end;
        int stepsBeforeLook = Math.Min(_options.MaximumSteps, _options.StepsBeforePace);

        // Also at the end: what an event or a break there leads to is settled before the run is over.
        while (restart)
        {
            // From here on the derivative and the event functions at (t, State) are not known.
            _statistics.Evaluations++;
            _system.DerivativeAndEvents(t, pair.State, pair.Stage(0), _valuesBefore);
            double kept = checksInvariant ? _system.Invariant(pair.State) : 0, keptNext = 0;
            if (FirstDue() is int due and >= 0)
            {
                if (++idle > MostEventsWithoutProgress)
                {
                    return RunStatus.Chattering;
                }

                if (Fire(due, t) == EventAction.Stop)
                {
                    return RunStatus.StoppedByEvent;
                }

                continue;
            }

            restart = false;
            if (double.IsNaN(proposed) && t < end)
            {
                proposed = _options.InitialStep ?? FirstStep(t, Math.Min(_options.MaximumStep, end - t));
            }

            while (!restart && t < end)
            {
                if (cancellation.IsCancellationRequested)
                {
                    return RunStatus.Cancelled;
                }

                if (_statistics.Steps + _statistics.Rejected is int tried && tried >= stepsBeforeLook
                    && (tried >= _options.MaximumSteps || (t - start) * MostTimesTooMany * _options.MaximumSteps < (end - start) * tried))
                {
                    return RunStatus.TooManySteps;
                }

                double nextBreak = _system.NextBreak(t);
                bool stopIsBreak = nextBreak <= end;
                double stop = stopIsBreak ? nextBreak : end;
                double left = stop - t;
                double h = Math.Min(proposed, _options.MaximumStep);
                bool onStop = h * 1.01 >= left;
                if (onStop)
                {
                    h = left;
                }
                else if (h * 2 > left)
                {
                    // Two even steps instead of a full one and a sliver.
                    h = 0.5 * left;
                }

                if (!(h > _options.StepFloor * Math.Max(1, Math.Abs(t))))
                {
                    if (!onStop)
                    {
                        return RunStatus.StepBelowFloor;
                    }

                    // What is left is rounding: the stop counts as reached.
                    t = Math.Max(t, stop);
                    Time = t;
                    if (stopIsBreak)
                    {
                        if (++idle > MostEventsWithoutProgress)
                        {
                            return RunStatus.Chattering;
                        }

                        if (_system.OnBreak(t, pair.State) == EventAction.Stop)
                        {
                            return RunStatus.StoppedByEvent;
                        }

                        restart = true;
                    }

                    continue;
                }

                Stages(t, h);
                double tNext = onStop ? stop : t + h;
                _statistics.Evaluations++;
                _system.DerivativeAndEvents(tNext, pair.Next, pair.Stage(6), _valuesAfter);
                double error = pair.ErrorNorm(h);
                if (checksInvariant && error <= 1)
                {
                    keptNext = _system.Invariant(pair.Next);
                    if (h > _options.InvariantStepFloor)
                    {
                        error = Math.Max(error, Math.Abs(keptNext - kept) * perInvariantTolerance);
                    }
                }

                int fired = None;
                double theta = double.PositiveInfinity;
                if (error <= 1)
                {
                    fired = FindEvent(t, h, out theta);
                    if (fired == NotANumber)
                    {
                        error = double.NaN;
                    }
                }

                if (!(error <= 1))
                {
                    _statistics.Rejected++;
                    proposed = h * control.Reject(error);
                    continue;
                }

                if (fired >= 0 && theta <= 0)
                {
                    // The mode was wrong from the start: it changes there, and the step is taken again.
                    if (++idle > MostEventsWithoutProgress)
                    {
                        return RunStatus.Chattering;
                    }

                    _statistics.StepsDiscarded++;
                    if (Fire(fired, t) == EventAction.Stop)
                    {
                        return RunStatus.StoppedByEvent;
                    }

                    restart = true;
                    continue;
                }

                _statistics.Steps++;
                proposed = Proposal(proposed, h, control.Accept(error));
                if (fired < 0)
                {
                    if (TObserver.WantsSteps)
                    {
                        pair.PrepareDense(h);
                        observer.Accepted(new DenseStep(t, tNext, h, pair.Coefficients, pair.Stride));
                    }

                    pair.Advance();
                    kept = keptNext;
                    (_valuesBefore, _valuesAfter) = (_valuesAfter, _valuesBefore);
                    Forget(_fired, ref _anyFired);
                    t = tNext;
                    Time = t;
                    idle = 0;
                    if (onStop && stopIsBreak)
                    {
                        if (_system.OnBreak(t, pair.State) == EventAction.Stop)
                        {
                            return RunStatus.StoppedByEvent;
                        }

                        restart = true;
                    }

                    continue;
                }

                _statistics.StepsDiscarded += 1 - theta;
                double tEvent = theta < 1 ? Math.Min(t + (theta * h), tNext) : tNext;
                idle = tEvent - t > TolerancesOfProgress * ToleranceAt(t) ? 0 : idle + 1;
                if (TObserver.WantsSteps)
                {
                    observer.Accepted(new DenseStep(t, tEvent, h, pair.Coefficients, pair.Stride));
                }

                DenseStep.Evaluate(pair.Coefficients, pair.Stride, theta, pair.State);
                t = tEvent;
                Time = t;
                if (idle > MostEventsWithoutProgress)
                {
                    return RunStatus.Chattering;
                }

                Forget(_fired, ref _anyFired);
                NoteOthersAt(fired, t);
                if (Fire(fired, t) == EventAction.Stop)
                {
                    return RunStatus.StoppedByEvent;
                }

                if (t >= stop && stopIsBreak && _system.OnBreak(t, pair.State) == EventAction.Stop)
                {
                    return RunStatus.StoppedByEvent;
                }

                restart = true;
            }
        }

        return RunStatus.Completed;
    }

    /// <summary>A good step that was cut short to land on an instant says nothing against the longer one proposed before it.</summary>
    private static double Proposal(double proposed, double h, double factor) =>
        h < proposed && factor >= 1 ? Math.Max(proposed, h * factor) : h * factor;

    private void Stages(double t, double h)
    {
        DormandPrince pair = _pair;
        pair.Second(h);
        Evaluate(t + (h * Nodes.Second), pair.Trial, pair.Stage(1));
        pair.Third(h);
        Evaluate(t + (h * Nodes.Third), pair.Trial, pair.Stage(2));
        pair.Fourth(h);
        Evaluate(t + (h * Nodes.Fourth), pair.Trial, pair.Stage(3));
        pair.Fifth(h);
        Evaluate(t + (h * Nodes.Fifth), pair.Trial, pair.Stage(4));
        pair.Sixth(h);
        Evaluate(t + h, pair.Trial, pair.Stage(5));
        pair.Solution(h);
    }

    private void Evaluate(double t, double[] y, Span<double> dy)
    {
        _statistics.Evaluations++;
        _system.Derivative(t, y, dy);
    }

    private EventAction Fire(int index, double t)
    {
        _statistics.Events++;
        _fired[index] = _crossed[index] != 0 ? _crossed[index] : _due[index];
        _anyFired = true;
        _due[index] = 0;
        return _system.OnEvent(index, t, _pair.State);
    }

    private static void Forget(sbyte[] signs, ref bool any)
    {
        if (any)
        {
            Array.Clear(signs);
            any = false;
        }
    }

    /// <summary>How closely an event is located at <paramref name="t"/>, rounding considered.</summary>
    private double ToleranceAt(double t) => Math.Max(_options.EventTolerance, 4e-16 * Math.Abs(t));

    /// <summary>Among the events that the step crossed, those that the one about to fire has not come before.</summary>
    private void NoteOthersAt(int fired, double t)
    {
        sbyte[] crossed = _crossed;
        for (int i = 0; i < crossed.Length; i++)
        {
            if (i != fired && crossed[i] != 0 && _system.Direction(i) != EventDirection.Guard)
            {
                _statistics.EventEvaluations++;
                if (_system.EventValue(i, t, _pair.State) * crossed[i] >= 0)
                {
                    _due[i] = crossed[i];
                    _anyDue = true;
                }
            }
        }
    }

    /// <summary>
    /// The first guard that is violated at the start, or event that was crossed together with the one before and has
    /// not been taken back by its handler; −1 for none.
    /// </summary>
    private int FirstDue()
    {
        // What the step crossed has been dealt with.
        Forget(_crossed, ref _anyCrossed);
        double[] values = _valuesBefore;
        for (int i = 0; i < values.Length; i++)
        {
            bool isDue = _due[i] != 0
                ? values[i] * _due[i] >= 0 && values[i] < double.PositiveInfinity
                : values[i] < 0 && _system.Direction(i) == EventDirection.Guard;
            if (isDue)
            {
                return i;
            }
        }

        Forget(_due, ref _anyDue);
        return None;
    }

    /// <summary>Whether no event function is near changing sign: most steps of most runs, seen at a glance.</summary>
    private static bool AllPositive(double[] values)
    {
        int i = 0;
        for (; i <= values.Length - Vector<double>.Count; i += Vector<double>.Count)
        {
            if (!Vector.GreaterThanAll(new Vector<double>(values, i), Vector<double>.Zero))
            {
                return false;
            }
        }

        for (; i < values.Length; i++)
        {
            if (!(values[i] > 0))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>
    /// The earliest event of the step and the share of the step at which it fires, 0 for a guard that leads out of its
    /// mode from the start; <see cref="None"/>, or <see cref="NotANumber"/> when a value at the end is none. Leaves the
    /// dense coefficients prepared when there is one.
    /// </summary>
    private int FindEvent(double t, double h, out double theta)
    {
        int first = None;
        theta = double.PositiveInfinity;
        bool prepared = false, anyFired = _anyFired;
        Forget(_crossed, ref _anyCrossed);
        double[] before = _valuesBefore, after = _valuesAfter;
        if (!anyFired && AllPositive(before) && AllPositive(after))
        {
            return None;
        }

        double tolerance = Math.Max(ToleranceAt(t) / h, 4e-16);
        for (int i = 0; i < after.Length; i++)
        {
            // Most event functions keep their sign; the direction is only asked of those that do not.
            double g0 = before[i], g1 = after[i];
            if (g0 > 0 && g1 > 0 && !(anyFired && _fired[i] > 0 && g0 < double.PositiveInfinity))
            {
                continue;
            }

            if (double.IsNaN(g1))
            {
                return NotANumber;
            }

            EventDirection direction = _system.Direction(i);
            bool falls = g1 <= 0 && direction != EventDirection.Rising;
            bool rises = g1 >= 0 && direction is EventDirection.Rising or EventDirection.Either;
            bool fromBorder = g0 == 0 || (anyFired && _fired[i] != 0 && g0 > 0 == _fired[i] > 0);
            if (fromBorder ? g1 == 0 || !(falls || rises) : !((falls && g0 > 0) || (rises && g0 < 0)))
            {
                continue;
            }

            if (!prepared)
            {
                _pair.PrepareDense(h);
                prepared = true;
            }

            var function = new AlongStep(this, i, t, h);
            double near = 0, nearValue = g0;
            if (fromBorder && !Excursion(ref function, g1, TolerancesOfProgress * tolerance, out near, out nearValue))
            {
                // Started on the border, or just behind it where the event has fired: without an excursion to the near
                // side there is nothing to cross, but a guard has to let go at once.
                if (direction == EventDirection.Guard)
                {
                    theta = 0;
                    return i;
                }

                continue;
            }

            _crossed[i] = (sbyte)(g1 != 0 ? Math.Sign(g1) : -Math.Sign(nearValue));
            _anyCrossed = true;
            double limit = Math.Min(1, theta);
            double limitValue = g1;
            if (limit < 1)
            {
                if (near >= limit)
                {
                    continue;
                }

                limitValue = function.At(limit);
                _statistics.EventEvaluations++;
                if (limitValue * _crossed[i] < 0)
                {
                    // Later than the event found before.
                    continue;
                }
            }

            double found = EventLocator.FarSide(
                ref function, near, nearValue, limit, limitValue, tolerance, ref _statistics.EventEvaluations);
            if (found < theta)
            {
                theta = found;
                first = i;
            }
        }

        return first;
    }

    /// <summary>
    /// Looks for a share of the step at which the function has the other sign than at the end, ever closer to the
    /// start: what leaves the border and comes back within the step passes one of them.
    /// </summary>
    private bool Excursion(ref AlongStep function, double farValue, double least, out double near, out double nearValue)
    {
        for (near = 0.5; near > least; near *= 0.125)
        {
            nearValue = function.At(near);
            _statistics.EventEvaluations++;
            if (nearValue != 0 && nearValue > 0 != farValue > 0)
            {
                return true;
            }
        }

        near = 0;
        nearValue = 0;
        return false;
    }

    /// <summary>A first step after Hairer, Nørsett, Wanner I, II.4.</summary>
    /// <param name="t">The start.</param>
    /// <param name="most">Where not to look beyond.</param>
    private double FirstStep(double t, double most)
    {
        DormandPrince pair = _pair;
        Span<double> k1 = pair.Stage(0), k2 = pair.Stage(1);
        double d0 = pair.Norm(pair.State), d1 = pair.Norm(k1);
        double h0 = Math.Min(d0 < 1e-5 || d1 < 1e-5 ? 1e-6 : 0.01 * d0 / d1, most);
        for (int i = 0; i < pair.Dimension; i++)
        {
            pair.Trial[i] = pair.State[i] + (h0 * k1[i]);
        }

        Evaluate(t + h0, pair.Trial, k2);
        for (int i = 0; i < pair.Dimension; i++)
        {
            pair.Trial[i] = k2[i] - k1[i];
        }

        double d2 = pair.Norm(pair.Trial) / h0;
        double larger = Math.Max(d1, d2);
        double h1 = larger <= 1e-15 ? Math.Max(1e-6, h0 * 1e-3) : Math.Pow(0.01 / larger, 1.0 / 5);
        double h = Math.Min(100 * h0, h1);
        return double.IsFinite(h) && h > 0 ? h : 1e-6;
    }

    private static class Nodes
    {
        public static readonly double Second = Tableau.DormandPrince.C[1];
        public static readonly double Third = Tableau.DormandPrince.C[2];
        public static readonly double Fourth = Tableau.DormandPrince.C[3];
        public static readonly double Fifth = Tableau.DormandPrince.C[4];
    }

    /// <summary>One event function along the dense output of the step in work.</summary>
    private readonly struct AlongStep(Integrator<TSystem> owner, int index, double t, double h) : IScalarFunction
    {
        public double At(double x)
        {
            DormandPrince pair = owner._pair;
            DenseStep.Evaluate(pair.Coefficients, pair.Stride, x, pair.Trial);
            return owner._system.EventValue(index, t + (x * h), pair.Trial);
        }
    }
}
