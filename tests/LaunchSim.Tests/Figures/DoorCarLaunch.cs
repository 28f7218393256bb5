using LaunchSim.Figures;
using LaunchSim.Launch;
using LaunchSim.Tests.Cars;
using LaunchSim.Vehicle;

namespace LaunchSim.Tests.Figures;

/// <summary>The example car's launch of one second, solved once a test class.</summary>
public sealed class DoorCarLaunch
{
    internal static readonly RunSettings Settings = new() { Duration = 1, Marks = [3, 18.288], Rollout = 0.3048 };

    internal LaunchSolution Solution { get; } = LaunchSimulation.Solve(DoorCar.Create(), Settings);

    internal FigureSet Read() => LaunchFigures.Read(Solution, Settings);

    internal static FigureSet Read(Car car, RunSettings settings) => LaunchFigures.Read(LaunchSimulation.Solve(car, settings), settings);

    internal static FigureSet Read(Car car) => Read(car, Settings);
}
