using System.Globalization;
using System.Text;
using LaunchSim.Dynamics;
using LaunchSim.Passes.Measured;
using LaunchSim.Reports;
using LaunchSim.Scenarios;

namespace LaunchSim.Passes.Tests.Logs;

/// <summary>A log as a logger would have written it of a launch: with a clock of its own, its own zeros, noise.</summary>
internal sealed class LogWriter
{
    public static Scenario Door { get; } = Read(Files.DoorCar);

    public static LaunchOutcome DoorLaunch { get; } = LaunchOutcome.Of(Door, CancellationToken.None);

    public double Rate { get; init; } = 200;

    public double Release { get; init; } = 12.3456;

    public double From { get; init; } = 10;

    public double To { get; init; } = 16;

    public bool IsNoisy { get; init; } = true;

    public string Separator { get; init; } = ",";

    public string Junk { get; init; } = "";

    /// <summary>Names, each with the quantity's key and how a number of SI becomes the log's.</summary>
    public (string Name, string Quantity, Func<double, double> Written)[] Columns { get; init; } =
    [
        ("Rear RH", "rear_ride_height", value => 118 + (1e3 * value)),
        ("Front RH", "front_ride_height", value => 96 + (1e3 * value)),
        ("DS", "driveshaft_speed", value => value * 4.1 * 60 / (2 * Math.PI)),
    ];

    public string Mapping { get; init; } =
        """
        time: {column: Time, unit: s}
        columns:
          - {column: Rear RH, quantity: rear_ride_height, unit: mm}
          - {column: Front RH, quantity: front_ride_height, unit: mm}
          - {column: DS, quantity: driveshaft_speed, unit: rpm, ratio: 4.1}
        """;

    public static Scenario Read(string path)
    {
        ReadResult read = StandingCheck.Reader(ReadPurpose.Run).Read(path);
        Assert.Empty(read.Errors);
        return read.Scenario!;
    }

    public string Text(LaunchOutcome launch, int seed = 1)
    {
        var random = new Random(seed);
        var text = new StringBuilder(Junk);
        _ = text.AppendJoin(Separator, Columns.Select(column => column.Name).Prepend("Time")).Append('\n');
        int rows = (int)Math.Round((To - From) * Rate);
        for (int row = 0; row <= rows; row++)
        {
            double time = From + (row / Rate);
            _ = text.Append(time.ToString("0.#####", CultureInfo.InvariantCulture));
            foreach ((string _, string key, Func<double, double> written) in Columns)
            {
                MeasuredQuantity quantity = MeasuredQuantities.Find(key)!;
                double value = Value(launch, quantity, time - Release) + (IsNoisy ? quantity.Noise * Normal(random) : 0);
                _ = text.Append(Separator).Append(written(value).ToString("0.#####", CultureInfo.InvariantCulture));
            }

            _ = text.Append('\n');
        }

        return text.ToString();
    }

    /// <summary>The launch's own value; before the release that of the standing car, after its end the last one.</summary>
    public static double Value(LaunchOutcome launch, MeasuredQuantity quantity, double time)
    {
        if (time < 0 && quantity.Key is not "engine_speed")
        {
            return 0;
        }

        launch.Solution.At(Math.Clamp(time, 0, launch.Solution.Duration), out Observation seen);
        return quantity.Predicted(seen, launch.Solution.Car);
    }

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
