using CsCheck;
using LaunchSim.Dynamics;
using LaunchSim.Launch;
using LaunchSim.Tests.Cars;
using LaunchSim.Vehicle;
using DrivelineState = LaunchSim.Tests.Dynamics.AbsoluteCar.DrivelineState;

namespace LaunchSim.Tests.Dynamics;

/// <summary>
/// A random car at a random state anywhere on its constraints, seen by the product (with the modes that hold there) and by
/// the second formulation.
/// </summary>
internal sealed class RandomState
{
    private RandomState(Car car, double[] u)
    {
        Car = car;
        Absolute = new AbsoluteCar(car);
        Runner = LaunchRunner.Create(StandingCar.Find(car), 1e-8);
        Y = Absolute.Standing.ToArray();
        double[] spread =
        [
            20, 0.04, 0.1, 0.12, 0.12,
            20, 0.8, 1, 2, 2,
            60, 5, 0.2, 0.3 * car.Rear.Tire.RelaxationLength, 50, 0.2 * car.Front.Tire.RelaxationLength,
            500,
        ];
        for (int i = 0; i < spread.Length; i++)
        {
            Y[i] += spread[i] * u[i];
        }

        // The belt follows the rim; the engine turns forward; work and losses are any numbers.
        Y[StateLayout.BeltSpin] += Y[StateLayout.RimSpin];
        Y[StateLayout.EngineSpeed] = 50 + Math.Abs(Y[StateLayout.EngineSpeed]);
        Time = 0.7 * Math.Abs(u[17]);
        ClutchMode clutch = car.Driveline is EngineDriveline { Coupling: Clutch }
            ? u[18] < -0.3 ? ClutchMode.SlipsForward : u[18] < 0.3 ? ClutchMode.SlipsBack : ClutchMode.Locked
            : ClutchMode.SlipsForward;
        int gears = car.Driveline is EngineDriveline engine ? engine.Ratios.Count : 1;
        var drive = new DrivelineState(true, Math.Min(gears - 1, (int)(Math.Abs(u[19]) * gears)), clutch, 1);
        Seen = Absolute.At(Time, Y, drive);
        if (clutch == ClutchMode.Locked && Seen.CouplingTorque < 0)
        {
            // Efficiency works against a driven engine too.
            Seen = Absolute.At(Time, Y, drive with { DrivingSign = -1 });
        }

        Runner.Rates(Time, Y, Seen.Modes, Rates);
        Observation = Runner.Observe(Time, Y, Seen.Modes);
    }

    // Not where the linkage is about to come apart, which is beyond the dampers' stops: there no formulation has digits left.
    public static Gen<RandomState> Any { get; } = Gen.Select(RandomCar.Any, Gen.Double[-1, 1].Array[20]).Select((car, u) => new RandomState(car, u))
        .Where(r => r.Runner.Car.Map.Margin(r.Y[StateLayout.Linkage]) > 0.02);

    public Car Car { get; }

    public AbsoluteCar Absolute { get; }

    public LaunchRunner Runner { get; }

    public double Time { get; }

    public double[] Y { get; }

    /// <summary>By the product.</summary>
    public double[] Rates { get; } = new double[StateLayout.Count];

    /// <summary>By the product.</summary>
    public Observation Observation { get; }

    /// <summary>By the second formulation.</summary>
    public AbsoluteCar.Result Seen { get; }
}
