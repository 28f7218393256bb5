using LaunchSim.Launch;
using LaunchSim.Scenarios;
using LaunchSim.Vehicle;

namespace LaunchSim.Benchmarks;

/// <summary>Reads the car to measure with, and the launch of one second that all figures are for.</summary>
internal static class Cars
{
    public static RunSettings OneSecond { get; } = new() { Duration = 1 };

    public static StandingCar? Read(string file)
    {
        ReadResult read = StandingCheck.Reader(ReadPurpose.Run).Read(file);
        foreach (Diagnostic error in read.Errors)
        {
            Console.Error.WriteLine(error);
        }

        return read.Scenario?.Car is { } car ? StandingCar.Find(car) : null;
    }
}
