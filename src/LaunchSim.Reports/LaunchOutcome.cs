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
        Car car = scenario.Car ?? throw new InvalidOperationException("The scenario was not read for a run.");
        LaunchSolution solution = LaunchSimulation.Solve(car, scenario.Run, cancellation);
        cancellation.ThrowIfCancellationRequested();
        return Read(scenario, solution);
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
