using System.Globalization;
using System.Text;
using LaunchSim.Launch;
using LaunchSim.Passes.Measured;

namespace LaunchSim.DemoSeason;

/// <summary>Logs of a launch as two invented loggers would write them: with their units, zeros, delays, gaps and doubled rows.</summary>
internal static class LogFiles
{
    /// <summary>Turns of the driveshaft for one of the axle.</summary>
    public const double Ratio = 4.1;

    private const double Inch = 0.0254, Rpm = Math.PI / 30, Gravity = 9.80665;

    // What was logged before the release and after, s.
    private const double Before = 0.8, After = 1.5;

    private static readonly (string Name, string Unit, double Factor, int Decimals, Sensor Sensor)[] Dash =
    [
        ("Front RH", "in", Inch, 3, new(Quantity("front_ride_height"), 8e-4, 0.1427)),
        ("Rear RH", "in", Inch, 3, new(Quantity("rear_ride_height"), 8e-4, 0.1689)),
        ("Driveshaft", "rpm", Rpm / Ratio, 0, new(Quantity("driveshaft_speed"), 0.25, 0)),
        ("Accel X", "g", Gravity, 3, new(Quantity("acceleration"), 0.35, 0.02 * Gravity)),
    ];

    private static readonly (string Name, string Unit, double Factor, int Decimals, Sensor Sensor)[] Box =
    [
        ("RH_F", "mm", 1e-3, 1, new(Quantity("front_ride_height"), 1.2e-3, 0.0312)),
        ("RH_R", "mm", 1e-3, 1, new(Quantity("rear_ride_height"), 1.2e-3, 0.0478)),
        ("Wheel_R", "rad/s", 1, 2, new(Quantity("wheel_speed"), 0.3, 0)),
    ];

    /// <summary>Mapping of the dash logger.</summary>
    public const string DashMapping = """
        # The dash logger of the door car: commas, a time column, lines of text before the names.
        name: Dash logger
        time: {column: Time, unit: s}
        columns:
          - {column: Front RH, quantity: front_ride_height, unit: in, noise: 0.03 in}
          - {column: Rear RH, quantity: rear_ride_height, unit: in, noise: 0.03 in}
          - {column: Driveshaft, quantity: driveshaft_speed, unit: rpm, ratio: 4.10, noise: 12 rpm}
          - {column: Accel X, quantity: acceleration, unit: g, noise: 0.035 g}

        """;

    /// <summary>Mapping of the borrowed box.</summary>
    public const string BoxMapping = """
        # The borrowed box: semicolons, decimal commas, no column for the time.
        name: Borrowed box
        table: {separator: semicolon, decimal: comma}
        time: {rate: 200 Hz}
        columns:
          - {column: RH_F, quantity: front_ride_height, unit: mm, noise: 1.2 mm}
          - {column: RH_R, quantity: rear_ride_height, unit: mm, noise: 1.2 mm}
          - {column: Wheel_R, quantity: wheel_speed, unit: rad/s, noise: 0.3 rad/s}

        """;

    /// <summary>The dash logger's file.</summary>
    /// <param name="launch">The true launch.</param>
    /// <param name="name">What the pass is called.</param>
    /// <param name="dice">Chance.</param>
    public static string OfDash(LaunchSolution launch, string name, Dice dice)
    {
        const double Rate = 250;
        double release = 11 + (3 * dice.Uniform());
        var text = new StringBuilder($"Session,{name}\nVehicle,door car\nRate,250 Hz\n\n");
        _ = text.Append("Time").Append(string.Concat(Dash.Select(column => $",{column.Name}"))).Append('\n');
        _ = text.Append('s').Append(string.Concat(Dash.Select(column => $",{column.Unit}"))).Append('\n');
        int first = (int)Math.Ceiling((release - Before) * Rate), gap = 40 + dice.Below(200), twice = 300 + dice.Below(100);
        for (int row = 0; row < (Before + After) * Rate; row++)
        {
            double clock = (first + row) / Rate;
            string cells = Cells(Dash, launch, clock - release, row >= gap && row < gap + 6 ? 1 : -1, dice, ',');
            string line = string.Create(CultureInfo.InvariantCulture, $"{clock:0.000}{cells}\n");
            _ = text.Append(line).Append(row == twice ? line : "");
        }

        return text.ToString();
    }

    /// <summary>The box's file.</summary>
    /// <param name="launch">The true launch.</param>
    /// <param name="dice">Chance.</param>
    public static string OfBox(LaunchSolution launch, Dice dice)
    {
        const double Rate = 200;
        double release = Before + (0.3 * dice.Uniform());
        var text = new StringBuilder(string.Join(';', Box.Select(column => column.Name)) + "\n");
        int gap = 60 + dice.Below(150);
        for (int row = 0; row < (Before + After) * Rate; row++)
        {
            string cells = Cells(Box, launch, (row / Rate) - release, row >= gap && row < gap + 10 ? 0 : -1, dice, ';')[1..];
            _ = text.Append(cells.Replace('.', ',')).Append('\n');
        }

        return text.ToString();
    }

    private static string Cells((string Name, string Unit, double Factor, int Decimals, Sensor Sensor)[] columns, LaunchSolution launch, double time, int missing, Dice dice, char separator)
    {
        var cells = new StringBuilder();
        for (int i = 0; i < columns.Length; i++)
        {
            double value = columns[i].Sensor.At(launch, time, dice) / columns[i].Factor;
            _ = cells.Append(separator).Append(i == missing ? "" : value.ToString("F" + columns[i].Decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture));
        }

        return cells.ToString();
    }

    private static MeasuredQuantity Quantity(string key) => MeasuredQuantities.Find(key)!;
}
