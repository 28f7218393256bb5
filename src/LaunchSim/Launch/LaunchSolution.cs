using LaunchSim.Dynamics;
using LaunchSim.Geometry;
using LaunchSim.Integration;

namespace LaunchSim.Launch;

/// <summary>
/// The whole course of a launch, to be looked at anywhere: dense output of every step with the modes that held in it.
/// Not shared between threads.
/// </summary>
public abstract class LaunchSolution
{
    private protected LaunchSolution(StandingCar car, StepRecord record)
    {
        Car = car;
        Record = record;
    }

    /// <summary>The standing car that was launched.</summary>
    public StandingCar Car { get; private protected set; }

    /// <summary>The steps.</summary>
    internal StepRecord Record { get; }

    /// <summary>How the launch ended.</summary>
    public LaunchEnd End { get; internal set; }

    /// <summary>Steps after which it would have been given up.</summary>
    public int MostSteps { get; internal set; } = LaunchFailure.MostSteps;

    /// <summary>Number of steps.</summary>
    public abstract int Steps { get; }

    /// <summary>Last instant for which there is a course, s.</summary>
    public abstract double Duration { get; }

    /// <summary>Where a step begins and ends, s. A jump, if there is one, is between two steps.</summary>
    /// <param name="step">0 to <see cref="Steps"/> less one.</param>
    public abstract (double Start, double End) Step(int step);

    /// <summary>The modes that held during a step.</summary>
    /// <param name="step">0 to <see cref="Steps"/> less one.</param>
    public abstract Modes Modes(int step);

    /// <summary>The step that holds at an instant: where two meet, the later one, so that a jump shows the value after it.</summary>
    /// <param name="time">Time since release, s.</param>
    public abstract int Find(double time);

    /// <summary>The launch at an instant; at a jump the values after it.</summary>
    /// <param name="time">Time since release, s, from 0 to <see cref="Duration"/>.</param>
    /// <param name="seen">Receives the observation.</param>
    public void At(double time, out Observation seen) => At(Find(time), time, out seen);

    /// <summary>The launch at an instant by one step: at the step's end the values before a jump.</summary>
    /// <param name="step">The step.</param>
    /// <param name="time">Time since release, s, within the step.</param>
    /// <param name="seen">Receives the observation.</param>
    public abstract void At(int step, double time, out Observation seen);

    /// <summary>The states at an instant by one step.</summary>
    /// <param name="step">The step.</param>
    /// <param name="time">Time since release, s, within the step.</param>
    /// <param name="y">Receives the states by <see cref="StateLayout"/>.</param>
    public abstract void StateAt(int step, double time, Span<double> y);

    /// <summary>What places and speeds alone tell, at instants of one step: the same to the bit as the observation says.</summary>
    /// <param name="step">The step.</param>
    /// <param name="times">Times since release, s, within the step.</param>
    /// <param name="seen">Receives what is seen at each; as long as <paramref name="times"/>.</param>
    public abstract void Follow(int step, ReadOnlySpan<double> times, Span<Motion> seen);

    /// <summary>Acceleration of the sprung CG along the track, m/s², by one step: the same to the bit as the observation says.</summary>
    /// <param name="step">The step.</param>
    /// <param name="time">Time since release, s, within the step.</param>
    public abstract double AccelerationAt(int step, double time);

    /// <summary>
    /// The slope of one state's dense course at instants of one step, per s: near the rate that the equations of motion
    /// give, but for the error of integration.
    /// </summary>
    /// <param name="step">The step.</param>
    /// <param name="state">Which state, by <see cref="StateLayout"/>.</param>
    /// <param name="times">Times since release, s, within the step.</param>
    /// <param name="slopes">Receives the slopes; as long as <paramref name="times"/>.</param>
    public abstract void Slopes(int step, int state, ReadOnlySpan<double> times, Span<double> slopes);

    /// <summary>Largest work of the axle torque so far in the run, J, to which the energy residual is held.</summary>
    public abstract double LargestWork { get; }
}

/// <summary>A solution closed over the kinds of the car's parts.</summary>
internal sealed class ClosedLaunchSolution<TLinkage, TFrontDamper, TRearDamper, TDriveline>(
    StandingCar car, LaunchSystem<TLinkage, TFrontDamper, TRearDamper, TDriveline> system, StepRecord record) : LaunchSolution(car, record)
    where TLinkage : struct, ILinkageMap
    where TFrontDamper : struct, IDamperForce
    where TRearDamper : struct, IDamperForce
    where TDriveline : struct, IDriveline
{
    private readonly StepRecord _record = record;
    private readonly List<Modes> _modes = [];
    private const int MostAtOnce = 16;

    private readonly double[] _state = new double[StateLayout.Count];
    private readonly double[] _states = new double[MostAtOnce * StateLayout.MotionCount];
    private LaunchSystem<TLinkage, TFrontDamper, TRearDamper, TDriveline> _system = system;
    private double _energyAtRelease, _largestWork = double.NaN;

    public override int Steps => _record.Count;

    public override double Duration => _record.Count == 0 ? 0 : _record.End(_record.Count - 1);

    public override double LargestWork
    {
        get
        {
            if (double.IsNaN(_largestWork))
            {
                _largestWork = 0;
                for (int i = 0; i < Steps; i++)
                {
                    _record.At(i, _record.End(i), _state);
                    _largestWork = Math.Max(_largestWork, Math.Abs(_state[StateLayout.Work]));
                }
            }

            return _largestWork;
        }
    }

    /// <summary>Forgets an earlier launch, of whichever car of these kinds of parts, and makes ready for one of this car.</summary>
    public void Open(StandingCar car, in LaunchSystem<TLinkage, TFrontDamper, TRearDamper, TDriveline> system)
    {
        Car = car;
        _system = system;
        _record.Clear();
        _modes.Clear();
        _largestWork = double.NaN;
    }

    public void Add(in DenseStep step, in Modes modes)
    {
        _record.Add(step);
        _modes.Add(modes);
    }

    /// <summary>Reads what is wanted of every solution once the run is over.</summary>
    public void Close()
    {
        _system.Release(_state);
        _energyAtRelease = _system.Energy(_state);
    }

    public override (double Start, double End) Step(int step) => (_record.Start(step), _record.End(step));

    public override Modes Modes(int step) => _modes[step];

    public override int Find(double time) => _record.Find(time);

    public override void At(int step, double time, out Observation seen)
    {
        _record.At(step, time, _state);
        _system.Modes = _modes[step];
        _system.Observe(time, _state, _energyAtRelease, out seen);
    }

    public override void StateAt(int step, double time, Span<double> y) => _record.At(step, time, y[..StateLayout.Count]);

    public override void Follow(int step, ReadOnlySpan<double> times, Span<Motion> seen)
    {
        Span<double> states = _states;
        _system.Modes = _modes[step];
        for (int first = 0; first < times.Length; first += MostAtOnce)
        {
            int count = Math.Min(MostAtOnce, times.Length - first);
            _record.At(step, times.Slice(first, count), StateLayout.MotionCount, states);
            _system.Follow(states, StateLayout.MotionCount, seen.Slice(first, count));
        }
    }

    public override double AccelerationAt(int step, double time)
    {
        _record.At(step, time, _state);
        _system.Modes = _modes[step];
        return _system.Acceleration(time, _state);
    }

    public override void Slopes(int step, int state, ReadOnlySpan<double> times, Span<double> slopes) => _record.Slopes(step, state, times, slopes);
}
