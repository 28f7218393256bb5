using LaunchSim.Dynamics;
using LaunchSim.Geometry;
using LaunchSim.Integration;
using LaunchSim.Vehicle;

namespace LaunchSim.Launch;

/// <summary>How a launch ended.</summary>
/// <param name="Status">The integrator's word; a launch that ended at its mark or its duration is completed.</param>
/// <param name="Time">How far it came, s.</param>
/// <param name="Statistics">What it cost.</param>
public readonly record struct LaunchEnd(RunStatus Status, double Time, Statistics Statistics)
{
    /// <summary>Whether the launch came to the end that was asked for.</summary>
    public bool Completed => Status == RunStatus.Completed;
}

/// <summary>
/// Runs launches of one standing car. Holds all the memory that a launch needs, so that a second launch allocates
/// nothing; not shared between threads, while the standing car is.
/// </summary>
public abstract class LaunchRunner
{
    private protected LaunchRunner(StandingCar car, double tolerance)
    {
        Car = car;
        Tolerance = tolerance;
    }

    /// <summary>The standing car.</summary>
    public StandingCar Car { get; }

    /// <summary>Relative tolerance of the integration.</summary>
    public double Tolerance { get; }

    /// <summary>The states where the latest launch ended, by <see cref="StateLayout"/>.</summary>
    public abstract ReadOnlySpan<double> State { get; }

    /// <summary>The modes where the latest launch ended.</summary>
    public abstract Modes Modes { get; }

    /// <summary>Solves a launch without keeping its course.</summary>
    /// <param name="settings">Duration, marks and sample; the tolerance is the runner's own.</param>
    /// <param name="cancellation">Asked once a step.</param>
    public abstract LaunchEnd Run(RunSettings settings, CancellationToken cancellation = default);

    /// <summary>Goes on with a launch of this car from where an earlier part of it ended, without keeping its course.</summary>
    /// <param name="time">Time since release, s.</param>
    /// <param name="y">The state there by <see cref="StateLayout"/>.</param>
    /// <param name="modes">The modes there.</param>
    /// <param name="settings">Duration since release, marks and sample; the tolerance is the runner's own.</param>
    /// <param name="cancellation">Asked once a step.</param>
    public abstract LaunchEnd Continue(
        double time, ReadOnlySpan<double> y, Modes modes, RunSettings settings, CancellationToken cancellation = default);

    /// <summary>Solves a launch and keeps its course.</summary>
    /// <param name="settings">Duration, marks and sample; the tolerance is the runner's own.</param>
    /// <param name="reuse">An earlier solution, of this or any other car, whose memory is overwritten and which is not to be used any more; or null.</param>
    /// <param name="cancellation">Asked once a step.</param>
    public abstract LaunchSolution Solve(RunSettings settings, LaunchSolution? reuse = null, CancellationToken cancellation = default);

    /// <summary>Accelerations of the five coordinates and rates of all states at any state, with settled modes; for checks.</summary>
    /// <param name="t">Time since release, s.</param>
    /// <param name="y">The state by <see cref="StateLayout"/>.</param>
    /// <param name="modes">The modes to hold.</param>
    /// <param name="dy">Receives the rates.</param>
    public abstract void Rates(double t, ReadOnlySpan<double> y, Modes modes, Span<double> dy);

    /// <summary>The states and modes just after the release.</summary>
    /// <param name="y">Receives the states by <see cref="StateLayout"/>.</param>
    public abstract Modes Release(Span<double> y);

    /// <summary>The launch seen at any state; for checks.</summary>
    /// <param name="t">Time since release, s.</param>
    /// <param name="y">The state by <see cref="StateLayout"/>.</param>
    /// <param name="modes">The modes to hold.</param>
    public abstract Observation Observe(double t, ReadOnlySpan<double> y, Modes modes);

    /// <summary>A runner for a car: the register of linkages, damper laws and drivelines, one line a kind.</summary>
    /// <param name="car">The standing car.</param>
    /// <param name="tolerance">Relative tolerance, above 0.</param>
    /// <param name="mostSteps">Steps, accepted or not, after which a launch is given up.</param>
    /// <exception cref="NotSupportedException">A part of the car is of a kind that is not registered.</exception>
    public static LaunchRunner Create(StandingCar car, double tolerance, int mostSteps = LaunchFailure.MostSteps)
    {
        ArgumentNullException.ThrowIfNull(car);
        var solver = new SolverSettings(tolerance, mostSteps);
        Point centre = StandingCar.AxleCentre(car.Car);
        return car.Car.Rear.Linkage switch
        {
            FourLink fourLink => WithFrontDamper(car, solver, new FourLinkMap(fourLink, centre, car.Origin)),
            LadderBar ladderBar => WithFrontDamper(car, solver, new LadderBarMap(ladderBar, centre, car.Origin)),
            Linkage other => throw Unknown(other),
        };
    }

    private static LaunchRunner WithFrontDamper<TLinkage>(StandingCar car, SolverSettings solver, TLinkage linkage)
        where TLinkage : struct, ILinkageMap => car.Car.Front.Damper switch
        {
            DamperTables tables => WithRearDamper(car, solver, linkage, new TableDamper(tables)),
            DamperLaw other => throw Unknown(other),
        };

    private static LaunchRunner WithRearDamper<TLinkage, TFrontDamper>(StandingCar car, SolverSettings solver, TLinkage linkage, TFrontDamper front)
        where TLinkage : struct, ILinkageMap
        where TFrontDamper : struct, IDamperForce => car.Car.Rear.Damper switch
        {
            DamperTables tables => WithDriveline(car, solver, linkage, front, new TableDamper(tables)),
            DamperLaw other => throw Unknown(other),
        };

    private static LaunchRunner WithDriveline<TLinkage, TFrontDamper, TRearDamper>(
        StandingCar car, SolverSettings solver, TLinkage linkage, TFrontDamper front, TRearDamper rear)
        where TLinkage : struct, ILinkageMap
        where TFrontDamper : struct, IDamperForce
        where TRearDamper : struct, IDamperForce => car.Car.Driveline switch
        {
            AxleTorque torque => Closed(car, solver, linkage, front, rear, new AxleTorqueDriveline(torque)),
            EngineDriveline { Coupling: Clutch clutch } engine =>
                Closed(car, solver, linkage, front, rear, new EngineLine<ClutchCoupling>(engine, new ClutchCoupling(clutch))),
            EngineDriveline { Coupling: Converter converter } engine =>
                Closed(car, solver, linkage, front, rear, new EngineLine<ConverterCoupling>(engine, new ConverterCoupling(converter))),
            Driveline other => throw Unknown(other),
        };

    private static ClosedLaunchRunner<TLinkage, TFrontDamper, TRearDamper, TDriveline> Closed<TLinkage, TFrontDamper, TRearDamper, TDriveline>(
        StandingCar car, SolverSettings solver, TLinkage linkage, TFrontDamper front, TRearDamper rear, TDriveline driveline)
        where TLinkage : struct, ILinkageMap
        where TFrontDamper : struct, IDamperForce
        where TRearDamper : struct, IDamperForce
        where TDriveline : struct, IDriveline =>
        new(car, solver, new(car.Model, linkage, front, rear, driveline));

    private static NotSupportedException Unknown(object part) => new($"No dynamics are registered for {part.GetType().Name}.");
}

/// <summary>How accurately to solve, and when to give up.</summary>
internal readonly record struct SolverSettings(double Tolerance, int MostSteps);

/// <summary>A runner closed over the kinds of its parts.</summary>
internal sealed class ClosedLaunchRunner<TLinkage, TFrontDamper, TRearDamper, TDriveline> : LaunchRunner
    where TLinkage : struct, ILinkageMap
    where TFrontDamper : struct, IDamperForce
    where TRearDamper : struct, IDamperForce
    where TDriveline : struct, IDriveline
{
    private readonly Integrator<LaunchSystem<TLinkage, TFrontDamper, TRearDamper, TDriveline>> _integrator;
    private readonly double[] _start = new double[StateLayout.Count];
    private readonly int _mostSteps;
    private LaunchSystem<TLinkage, TFrontDamper, TRearDamper, TDriveline> _probe;

    public ClosedLaunchRunner(StandingCar car, SolverSettings solver, LaunchSystem<TLinkage, TFrontDamper, TRearDamper, TDriveline> system)
        : base(car, solver.Tolerance)
    {
        double tolerance = solver.Tolerance;
        _mostSteps = solver.MostSteps;
        double energy = LaunchEnergy.About(car, system.Driveline);
        _integrator = new(system, new IntegratorOptions
        {
            Tolerance = tolerance,
            Scales = StateLayout.Scales(energy),
            InvariantTolerance = (LedgerShare * tolerance * energy) + (LedgerRounding * (energy + WeightEnergy(car))),
            InvariantStepFloor = ShortestLedgerStep,
            InitialStep = FirstStep(tolerance),
            MaximumStep = LongestStep,
            MaximumSteps = solver.MostSteps,
            StepsBeforePace = StepsBeforePace,
        });
        _probe = new(car.Model, system.Linkage, system.FrontDamper, system.RearDamper, system.Driveline);
    }

    // A launch starts from rest with torque that rises from 0: the derivative there says nothing about what is to come.
    private static double FirstStep(double tolerance) => 1e-3 * Math.Pow(tolerance / 1e-6, 0.2);

    private const double LongestStep = 0.02;

    // Some times what a whole launch takes: whoever is still at its beginning then will not come to its end.
    private const int StepsBeforePace = 20_000;

    // A launch takes some hundreds of steps whose errors partly cancel: the share of the ledger's tolerance that one may take.
    private const double LedgerShare = 0.01;

    // What the ledger's sums may lose to rounding, relative to the energies in them.
    private const double LedgerRounding = 1e-13;
    private const double ShortestLedgerStep = 2e-6;

    /// <summary>Potential energy of the whole car's weight at its CG height, J: the size of the sums that the ledger rounds.</summary>
    private static double WeightEnergy(StandingCar car) =>
        (car.Standing.RearLoad + car.Standing.FrontLoad) * car.Standing.CentreOfGravityHeight;

    public override ReadOnlySpan<double> State => _integrator.State;

    public override Modes Modes => _integrator.System.Modes;

    public override LaunchEnd Run(RunSettings settings, CancellationToken cancellation = default)
    {
        var nothing = default(NoObserver);
        return Run(settings, ref nothing, cancellation);
    }

    public override LaunchEnd Continue(
        double time, ReadOnlySpan<double> y, Modes modes, RunSettings settings, CancellationToken cancellation = default)
    {
        y[..StateLayout.Count].CopyTo(_start);
        _integrator.System.Resume(modes);
        var nothing = default(NoObserver);
        return RunFrom(time, settings, ref nothing, cancellation);
    }

    public override LaunchSolution Solve(RunSettings settings, LaunchSolution? reuse = null, CancellationToken cancellation = default)
    {
        var solution = reuse as ClosedLaunchSolution<TLinkage, TFrontDamper, TRearDamper, TDriveline>
            ?? new ClosedLaunchSolution<TLinkage, TFrontDamper, TRearDamper, TDriveline>(Car, _probe, reuse?.Record ?? new StepRecord());
        solution.Open(Car, _probe);
        var recorder = new Recorder(this, solution);
        solution.MostSteps = _mostSteps;
        solution.End = Run(settings, ref recorder, cancellation);
        solution.Close();
        return solution;
    }

    public override void Rates(double t, ReadOnlySpan<double> y, Modes modes, Span<double> dy)
    {
        _probe.Modes = modes;
        _probe.Derivative(t, y, dy);
    }

    public override Modes Release(Span<double> y)
    {
        _probe.Release(y);
        return _probe.Modes;
    }

    public override Observation Observe(double t, ReadOnlySpan<double> y, Modes modes)
    {
        Span<double> released = stackalloc double[StateLayout.Count];
        _probe.Release(released);
        double energy = _probe.Energy(released);
        _probe.Modes = modes;
        _probe.Observe(t, y, energy, out Observation seen);
        return seen;
    }

    private LaunchEnd Run<TObserver>(RunSettings settings, ref TObserver observer, CancellationToken cancellation)
        where TObserver : struct, IStepObserver
    {
        _integrator.System.Release(_start);
        return RunFrom(0, settings, ref observer, cancellation);
    }

    private LaunchEnd RunFrom<TObserver>(double start, RunSettings settings, ref TObserver observer, CancellationToken cancellation)
        where TObserver : struct, IStepObserver
    {
        ref LaunchSystem<TLinkage, TFrontDamper, TRearDamper, TDriveline> system = ref _integrator.System;
        bool toMark = settings.Duration is null && settings.Marks.Count > 0;
        system.EndAfter(toMark ? settings.Marks.Max() : double.PositiveInfinity, settings.Sample);
        double end = settings.Duration ?? (toMark ? RunSettings.LongestDuration : RunSettings.DefaultDuration);
        RunStatus status = _integrator.Run(start, _start, end, ref observer, cancellation);
        if (status == RunStatus.StoppedByEvent && system.ReachedMark)
        {
            status = RunStatus.Completed;
        }

        return new LaunchEnd(status, _integrator.Time, _integrator.Statistics);
    }

    /// <summary>Keeps each step with the modes that held in it.</summary>
    private readonly struct Recorder(
        ClosedLaunchRunner<TLinkage, TFrontDamper, TRearDamper, TDriveline> runner,
        ClosedLaunchSolution<TLinkage, TFrontDamper, TRearDamper, TDriveline> solution) : IStepObserver
    {
        public static bool WantsSteps => true;

        public void Accepted(in DenseStep step) => solution.Add(step, runner._integrator.System.Modes);
    }
}
