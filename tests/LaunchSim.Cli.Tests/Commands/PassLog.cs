using System.Globalization;
using System.Text;

namespace LaunchSim.Cli.Tests.Commands;

/// <summary>A log as a logger of the door car might have written it: of its trace, with a clock, zeros and a little noise of its own.</summary>
internal static class PassLog
{
    public const string Mapping = """
        time: {column: Time, unit: s}
        columns:
          - {column: Rear RH, quantity: rear_ride_height, unit: mm}
          - {column: Front RH, quantity: front_ride_height, unit: mm}
          - {column: Wheel, quantity: wheel_speed, unit: rpm}
          - {column: v, quantity: speed, unit: km/h}

        """;

    /// <summary>Writes log.csv and mapping.yaml into a folder.</summary>
    public static (string Log, string Mapping) Write(Folder folder, double release = 3.2468, int rate = 200)
    {
        Assert.Equal(0, Printed.By("run", Files.DoorCar, "--quiet", "--csv", folder.Path("trace.csv")).Code);
        string[] lines = File.ReadAllLines(folder.Path("trace.csv"));
        File.Delete(folder.Path("trace.csv"));
        string[] names = lines[0].Split(',');
        double[][] columns = [.. new[] { "rear_rise_m", "front_rise_m", "wheel_speed_radps", "speed_mps" }.Select(name => Column(lines, Array.IndexOf(names, name)))];
        (double Zero, double Factor, double Noise)[] written = [(118, 1e3, 0.5), (96, 1e3, 0.5), (0, 60 / (2 * Math.PI), 2), (0, 3.6, 0.2)];
        var random = new Random(11);
        var text = new StringBuilder("Time,Rear RH,Front RH,Wheel,v\n");
        for (int row = 0; row <= 6 * rate; row++)
        {
            double time = row / (double)rate, at = 1000 * (time - release);
            _ = text.Append(time.ToString("0.####", CultureInfo.InvariantCulture));
            for (int i = 0; i < columns.Length; i++)
            {
                double value = written[i].Zero + (written[i].Factor * At(columns[i], at)) + (written[i].Noise * ((2 * random.NextDouble()) - 1));
                _ = text.Append(',').Append(value.ToString("0.###", CultureInfo.InvariantCulture));
            }

            _ = text.Append('\n');
        }

        return (folder.Write("log.csv", text.ToString()), folder.Write("mapping.yaml", Mapping));
    }

    private static double[] Column(string[] lines, int index) => [.. lines.Skip(1).Where(line => line.Length > 0).Select(line => double.Parse(line.Split(',')[index], CultureInfo.InvariantCulture))];

    private static double At(double[] column, double millisecond)
    {
        int row = (int)Math.Floor(millisecond);
        return row < 0 ? 0 : row >= column.Length - 1 ? column[^1] : column[row] + ((millisecond - row) * (column[row + 1] - column[row]));
    }
}
