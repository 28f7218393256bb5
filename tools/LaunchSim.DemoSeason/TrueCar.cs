using LaunchSim.Launch;
using LaunchSim.Passes.Fitting;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Doubtful;
using LaunchSim.Vehicle;

namespace LaunchSim.DemoSeason;

/// <summary>A car whose true numbers nobody in the season knows: those of its file, each moved within its doubt.</summary>
/// <param name="parameters">The numbers.</param>
/// <param name="deviations">By how many standard deviations of its doubt each is off.</param>
internal sealed class TrueCar(IReadOnlyList<FitParameter> parameters, IReadOnlyList<double> deviations)
{
    /// <summary>A car drawn from its doubts.</summary>
    public static TrueCar Drawn(IReadOnlyList<FitParameter> parameters, Dice dice) => new(parameters, [.. parameters.Select(_ => dice.Normal())]);

    /// <summary>The numbers.</summary>
    public IReadOnlyList<FitParameter> Parameters { get; } = parameters;

    /// <summary>By how many standard deviations each is off.</summary>
    public IReadOnlyList<double> Deviations { get; } = deviations;

    /// <summary>The true launch of a set-up.</summary>
    /// <param name="setUp">The set-up as it is known.</param>
    /// <param name="settings">How long, and what is timed.</param>
    /// <returns>Null when the true car cannot be, or does not come to the end.</returns>
    public LaunchSolution? Launch(Scenario setUp, RunSettings settings)
    {
        var edits = new List<ScenarioEdit>();
        for (int i = 0; i < Parameters.Count; i++)
        {
            edits.AddRange(Parameters[i].In(setUp)?.Edits(Deviations[i]) ?? []);
        }

        KeptTireShape.Keep(setUp, edits);
        if (setUp.With(edits).Scenario?.Car is not { } car || !StandingCar.TryFind(car, out StandingCar? standing, out _))
        {
            return null;
        }

        LaunchSolution launch = LaunchRunner.Create(standing!, settings.Tolerance).Solve(settings);
        return LaunchFailure.Of(launch) is null ? launch : null;
    }
}
