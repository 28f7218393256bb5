using LaunchSim.Vehicle;

namespace LaunchSim.Launch;

/// <summary>The short way from a car to its launch.</summary>
public static class LaunchSimulation
{
    /// <summary>Finds the standing car and solves its launch.</summary>
    /// <param name="car">The car with its settings.</param>
    /// <param name="settings">Duration, sample, tolerance and marks.</param>
    /// <param name="cancellation">Asked once a step.</param>
    /// <exception cref="CannotStandException">The car cannot stand.</exception>
    public static LaunchSolution Solve(Car car, RunSettings settings, CancellationToken cancellation = default)
    {
        ArgumentNullException.ThrowIfNull(settings);
        return LaunchRunner.Create(StandingCar.Find(car), settings.Tolerance).Solve(settings, null, cancellation);
    }
}
