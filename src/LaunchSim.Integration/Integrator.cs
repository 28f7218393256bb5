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
    private const int ProbesForAStartOnZero = 12;

    private readonly IntegratorOptions _options;
    private readonly DormandPrince _pair;
    private readonly double[] _valuesBefore;
    private readonly double[] _valuesAfter;
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
        _statistics = default;
        state[..pair.Dimension].CopyTo(pair.State);
        double t = start;
        Time = t;
        StepControl control = StepControl.New();
        double proposed = double.NaN;
        int idleEvents = 0;

        while (t < end)
        {
            // From here on the derivative and the event functions at (t, State) are not known.
            Evaluate(t, pair.State, pair.Stage(0));
            _system.EventValues(t, pair.State, _valuesBefore);
            if (FirstViolatedGuard() is int violated and >= 0)
            {
                if (++idleEvents > MostEventsWithoutProgress)
                {
                    return RunStatus.Chattering;
                }

                if (Fire(violated, t, pair.State) == EventAction.Stop)
                {
                    return RunStatus.StoppedByEvent;
                }

                continue;
            }

            if (double.IsNaN(proposed))
            {
                proposed = Math.Min(_options.InitialStep ?? FirstStep(t), _options.MaximumStep);
            }

            bool restart = false;
            while (!restart && t < end)
            {
                if (cancellation.IsCancellationRequested)
                {
                    return RunStatus.Cancelled;
                }

                if (_statistics.Steps + _statistics.Rejected >= _options.MaximumSteps)
                {
                    return RunStatus.TooManySteps;
                }

                double stop = Math.Min(end, _system.NextBreak(t));
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
                    if (onStop && left >= 0)
                    {
                        // Two declared instants that are equal but for rounding.
                        t = stop;
                        Time = t;
                        if (_system.OnBreak(t, pair.State) == EventAction.Stop)
                        {
                            return RunStatus.StoppedByEvent;
                        }

                        restart = true;
                        continue;
                    }

                    return RunStatus.StepBelowFloor;
                }

                Stages(t, h);
                double tNext = onStop ? stop : t + h;
                Evaluate(tNext, pair.Next, pair.Stage(6));
                double error = pair.ErrorNorm(h);
                if (!(error <= 1))
                {
                    _statistics.Rejected++;
                    proposed = h * control.Reject(error);
                    continue;
                }

                _system.EventValues(tNext, pair.Next, _valuesAfter);
                int fired = FindEvent(t, h, out double theta);
                double factor;
                if (fired < 0)
                {
                    _statistics.Steps++;
                    factor = control.Accept(error);
                    proposed = Proposal(proposed, h, factor);
                    if (TObserver.WantsSteps)
                    {
                        pair.PrepareDense(h);
                        observer.Accepted(new DenseStep(t, tNext, h, pair.Coefficients, pair.Stride));
                    }

                    pair.Advance();
                    _valuesAfter.CopyTo(_valuesBefore, 0);
                    t = tNext;
                    Time = t;
                    idleEvents = 0;
                    if (onStop && stop < end)
                    {
                        if (_system.OnBreak(t, pair.State) == EventAction.Stop)
                        {
                            return RunStatus.StoppedByEvent;
                        }

                        restart = true;
                    }

                    continue;
                }

                restart = true;
                if (theta <= 0)
                {
                    // The mode was wrong from the start: it changes there, and the step is taken again.
                    if (++idleEvents > MostEventsWithoutProgress)
                    {
                        return RunStatus.Chattering;
                    }

                    _statistics.StepsDiscarded++;
                    if (Fire(fired, t, pair.State) == EventAction.Stop)
                    {
                        return RunStatus.StoppedByEvent;
                    }

                    continue;
                }

                _statistics.Steps++;
                _statistics.StepsDiscarded += 1 - theta;
                factor = control.Accept(error);
                proposed = Proposal(proposed, h, factor);
                double tEvent = t + (theta * h);
                idleEvents = tEvent > t ? 0 : idleEvents + 1;
                if (idleEvents > MostEventsWithoutProgress)
                {
                    return RunStatus.Chattering;
                }

                if (TObserver.WantsSteps)
                {
                    observer.Accepted(new DenseStep(t, tEvent, h, pair.Coefficients, pair.Stride));
                }

                DenseStep.Evaluate(pair.Coefficients, pair.Stride, theta, pair.State);
                t = tEvent;
                Time = t;
                if (Fire(fired, t, pair.State) == EventAction.Stop)
                {
                    return RunStatus.StoppedByEvent;
                }
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

    private EventAction Fire(int index, double t, double[] y)
    {
        _statistics.Events++;
        return _system.OnEvent(index, t, y);
    }

    private int FirstViolatedGuard()
    {
        double[] values = _valuesBefore;
        for (int i = 0; i < values.Length; i++)
        {
            if (values[i] < 0 && _system.Direction(i) == EventDirection.Guard)
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>
    /// The earliest event of the step and the share of the step at which it fires, 0 for a guard that was violated from
    /// the start; −1 for none. Leaves the dense coefficients prepared when there is one.
    /// </summary>
    private int FindEvent(double t, double h, out double theta)
    {
        int first = -1;
        theta = double.PositiveInfinity;
        double[] before = _valuesBefore, after = _valuesAfter;
        for (int i = 0; i < after.Length; i++)
        {
            // Most event functions keep their sign; the direction is only asked of those that do not.
            double g0 = before[i], g1 = after[i];
            if (g0 > 0 && g1 > 0)
            {
                continue;
            }

            EventDirection direction = _system.Direction(i);
            bool past = direction switch
            {
                EventDirection.Falling or EventDirection.Guard => g1 <= 0,
                EventDirection.Rising => g1 >= 0,
                _ => g0 > 0 ? g1 <= 0 : g1 >= 0,
            };
            if (!past || (g1 == 0 && g0 == 0))
            {
                continue;
            }

            if (first < 0)
            {
                _pair.PrepareDense(h);
            }

            var function = new AlongStep(this, i, t, h);
            double near = 0, nearValue = g0;
            if (g0 == 0)
            {
                // Starts on the border: only an excursion to the other side and back makes an event of it, or a guard
                // that leads out of its mode at once.
                if (direction == EventDirection.Either || !Excursion(ref function, g1, out near, out nearValue))
                {
                    if (direction == EventDirection.Guard && g1 < 0)
                    {
                        theta = 0;
                        return i;
                    }

                    continue;
                }
            }
            else if (g0 > 0 == g1 > 0 && g1 != 0)
            {
                continue;
            }

            double limit = Math.Min(1, theta);
            double farValue = limit < 1 ? function.At(limit) : g1;
            if (limit < 1)
            {
                _statistics.EventEvaluations++;
                if (farValue > 0 == nearValue > 0 && farValue != 0)
                {
                    // Later than the event found before.
                    continue;
                }

                if (near >= limit)
                {
                    continue;
                }
            }

            double tolerance = Math.Max(_options.EventTolerance, 4e-16 * Math.Abs(t)) / h;
            double found = EventLocator.FarSide(
                ref function, near, nearValue, limit, farValue, Math.Max(tolerance, 4e-16), ref _statistics.EventEvaluations);
            if (found < theta)
            {
                theta = found;
                first = i;
            }
        }

        return first;
    }

    private bool Excursion(ref AlongStep function, double farValue, out double near, out double nearValue)
    {
        near = 1;
        nearValue = 0;
        for (int probe = 0; probe < ProbesForAStartOnZero; probe++)
        {
            near *= 0.5;
            nearValue = function.At(near);
            _statistics.EventEvaluations++;
            if (nearValue != 0 && nearValue > 0 != farValue > 0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>A first step after Hairer, Nørsett, Wanner I, II.4.</summary>
    private double FirstStep(double t)
    {
        DormandPrince pair = _pair;
        Span<double> k1 = pair.Stage(0), k2 = pair.Stage(1);
        double d0 = pair.Norm(pair.State), d1 = pair.Norm(k1);
        double h0 = d0 < 1e-5 || d1 < 1e-5 ? 1e-6 : 0.01 * d0 / d1;
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
