using LaunchSim.Figures;
using LaunchSim.Launch;
using LaunchSim.Scenarios;
using LaunchSim.Vehicle;

namespace LaunchSim.Reports;

/// <summary>One launch, solved.</summary>
public sealed class LaunchOutcome
{
    private LaunchOutcome(Scenario scenario, LaunchSolution solution, FigureSet figures) =>
        (Scenario, Solution, Figures, Failure) = (scenario, solution, figures, LaunchFailure.Of(solution));

    /// <summary>The scenario.</summary>
    public Scenario Scenario { get; }

    /// <summary>Its course.</summary>
    public LaunchSolution Solution { get; }

    /// <summary>What is read off it.</summary>
    public FigureSet Figures { get; }

    /// <summary>Why it did not come to its end; null when it did.</summary>
    public LaunchFailure? Failure { get; }

    /// <summary>Solves a scenario that was read for a run.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="cancellation">Asked once a step.</param>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static LaunchOutcome Of(Scenario scenario, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return Of(scenario, scenario.Run, cancellation);
    }

    /// <summary>Solves a scenario with other settings than its own, such as those of one that it is compared with.</summary>
    /// <param name="scenario">The scenario, read for a run.</param>
    /// <param name="settings">Duration, sample, tolerance and marks in the place of its own.</param>
    /// <param name="cancellation">Asked once a step.</param>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static LaunchOutcome Of(Scenario scenario, RunSettings settings, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        Car car = scenario.Car ?? throw new InvalidOperationException("The scenario was not read for a run.");
        LaunchSolution solution = LaunchSimulation.Solve(car, settings, cancellation);
        cancellation.ThrowIfCancellationRequested();
        return new LaunchOutcome(scenario, solution, LaunchFigures.Read(solution, settings));
    }

    /// <summary>Solves a scenario that was read for a run into the memory of an earlier launch: for many, one after the other.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="reuse">An earlier launch, of whatever car, that is no longer looked at; null for none.</param>
    /// <param name="cancellation">Asked once a step.</param>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static LaunchOutcome Of(Scenario scenario, LaunchSolution? reuse, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        Car car = scenario.Car ?? throw new InvalidOperationException("The scenario was not read for a run.");
        LaunchSolution solution = LaunchRunner.Create(StandingCar.Find(car), scenario.Run.Tolerance).Solve(scenario.Run, reuse, cancellation);
        cancellation.ThrowIfCancellationRequested();
        return new LaunchOutcome(scenario, solution, LaunchFigures.Read(solution, scenario.Run));
    }

    /// <summary>Reads a launch that was solved already.</summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="solution">The launch of its car with its settings.</param>
    public static LaunchOutcome Read(Scenario scenario, LaunchSolution solution)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        return new LaunchOutcome(scenario, solution, LaunchFigures.Read(solution, scenario.Run));
    }
}
