using LaunchSim.Figures;
using LaunchSim.Launch;
using LaunchSim.Passes.Seen;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Vehicle;

namespace LaunchSim.Passes.Seasons;

/// <summary>A pass as predicted: by its own car, or by another such as the fitted one.</summary>
public sealed record PassPrediction
{
    private const string RiseLagKey = "rise_lag_s";

    /// <summary>The car as it ran.</summary>
    public required Scenario Scenario { get; init; }

    /// <summary>What would be seen of it.</summary>
    public required PredictedFacts Facts { get; init; }

    /// <summary>Each seen fact beside it.</summary>
    public required IReadOnlyList<SeenComparison> Comparisons { get; init; }

    /// <summary>The rise lag, s; not a number when an end squats.</summary>
    public required double RiseLag { get; init; }

    /// <summary>Why the launch did not come to its end; null when it did.</summary>
    public required LaunchFailure? Failure { get; init; }

    /// <summary>Predicts a pass by its own car.</summary>
    /// <param name="pass">The pass.</param>
    /// <param name="cancellation">Asked once a step.</param>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static PassPrediction Of(PassFile pass, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(pass);
        return Of(pass, pass.Scenario, pass.Run, cancellation);
    }

    /// <summary>Predicts a pass by another car, into which what the pass had changed is put.</summary>
    /// <param name="pass">The pass.</param>
    /// <param name="car">The car.</param>
    /// <param name="errors">Why the changes cannot be put into it; empty otherwise.</param>
    /// <param name="cancellation">Asked once a step.</param>
    /// <returns>The prediction; null when there are errors.</returns>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static PassPrediction? Of(PassFile pass, Scenario car, out IReadOnlyList<Diagnostic> errors, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(pass);
        ArgumentNullException.ThrowIfNull(car);
        ReadResult ran = car.With(pass.Changed);
        errors = ran.Errors;

        // Beams, rollout and how long it runs are matters of the pass, whichever car is put in its place.
        return ran.Scenario is { } scenario ? Of(pass, scenario, pass.Run with { Tolerance = scenario.Run.Tolerance }, cancellation) : null;
    }

    private static PassPrediction Of(PassFile pass, Scenario scenario, RunSettings settings, CancellationToken cancellation)
    {
        LaunchSolution solution = LaunchSimulation.Solve(scenario.Car!, settings, cancellation);
        cancellation.ThrowIfCancellationRequested();
        return Of(pass, scenario, settings, solution);
    }

    /// <summary>Reads the prediction of a pass by its own car off a launch that was solved already.</summary>
    internal static PassPrediction Of(PassFile pass, LaunchSolution solution) => Of(pass, pass.Scenario, pass.Run, solution);

    private static PassPrediction Of(PassFile pass, Scenario scenario, RunSettings settings, LaunchSolution solution)
    {
        using var launch = new LaunchReading(solution, settings);
        PredictedFacts facts = SeenPrediction.Read(launch, pass.Seen.Visible, [.. pass.Seen.Marks.Select(mark => mark.Distance)]);
        return new PassPrediction
        {
            Scenario = scenario,
            Facts = facts,
            Comparisons = SeenPrediction.Of(launch, pass.Seen),
            RiseLag = LaunchFigures.ReadFrom(launch, FigureSelection.Of(settings.Marks.Count, [RiseLagKey]))[RiseLagKey] ?? double.NaN,
            Failure = LaunchFailure.Of(solution),
        };
    }
}
