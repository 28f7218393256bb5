using System.Globalization;
using System.Text;
using CsCheck;
using LaunchSim.Passes.Dyno;
using LaunchSim.Scenarios;

namespace LaunchSim.Passes.Tests.Dyno;

public sealed class DamperTableTests
{
    private const double Inch = 0.0254, Pound = 4.4482216152605;

    /// <summary>A damper with a known law, gas and hysteresis, on a dyno that moves it in sines.</summary>
    private sealed record Sheet
    {
        public double Gas { get; init; } = 30;

        public double GasRate { get; init; } = 2;

        public double Lag { get; init; } = 0.001;

        public double Noise { get; init; }

        public double Stiffness { get; init; } = 1;

        public bool IsPositiveExtension { get; init; } = true;

        public bool IsForceReversed { get; init; }

        public double Top { get; init; } = 12;

        // The law in lb over in/s, extension stiffer than compression, both bending.
        public double Law(double speed) => speed >= 0 ? Stiffness * ((30 * speed) - (0.9 * speed * speed)) : Stiffness * 0.6 * ((25 * speed) + (0.7 * speed * speed));

        /// <summary>Rows of velocity, in/s; force, lb; displacement, in.</summary>
        public IEnumerable<(double Velocity, double Force, double Place)> Rows(int seed = 1, int cycles = 6)
        {
            var random = new Random(seed);
            double frequency = 2, amplitude = Top / (2 * Math.PI * frequency);
            for (int i = 0; i < 500 * cycles; i++)
            {
                double phase = 2 * Math.PI * i / 500;
                double place = -amplitude * Math.Cos(phase), velocity = Top * Math.Sin(phase), acceleration = Top * 2 * Math.PI * frequency * Math.Cos(phase);

                // The force comes late: that is the loop. Gas pushes the more the farther the shaft is in.
                double force = Law(velocity - (Lag * acceleration)) - (Gas - (GasRate * place)) + (Noise * Normal(random));
                int sign = IsPositiveExtension ? 1 : -1;
                yield return (sign * velocity, (IsForceReversed ? -sign : sign) * force, place);
            }
        }

        public string Text(string separator = ",", bool comma = false, int seed = 1)
        {
            var text = new StringBuilder("Shop dyno\nrun of today\n\n");
            text.Append(CultureInfo.InvariantCulture, $"Time (s){separator}Displacement (in){separator}Velocity (in/s){separator}Force (lbs)\n");
            int i = 0;
            foreach ((double velocity, double force, double place) in Rows(seed))
            {
                string line = string.Create(CultureInfo.InvariantCulture, $"{i++ * 0.001}{separator}{place:F5}{separator}{velocity:F5}{separator}{force:F3}\n");
                text.Append(comma ? line.Replace('.', ',') : line);
            }

            return text.ToString();
        }
    }

    [Theory]
    [InlineData(true, false, ",", false)]
    [InlineData(false, false, ",", false)]
    [InlineData(true, true, ";", true)]
    [InlineData(false, true, "\t", true)]
    public void Build_KnownDamperWithGasAndHysteresis_GivesItsLaw(bool isPositiveExtension, bool isReversed, string separator, bool comma)
    {
        var sheet = new Sheet { IsPositiveExtension = isPositiveExtension, IsForceReversed = isReversed };
        DamperMeasurement measured = Measure(sheet.Text(separator, comma));

        // At a standstill the late force is that of 0.15 in/s, 4.5 lb one way and 2.3 lb the other: half the difference stays in the gas.
        Assert.Equal(30 * Pound, measured.GasForce!.Value, 1.2 * Pound);
        Assert.True(measured.IsLoop);
        DamperTable table = DamperTableBuilder.Build([measured], DamperTableBuilder.UsualSpeeds(true));
        foreach (DamperSide side in new[] { table.Extension, table.Compression })
        {
            Assert.Equal(0, side.Speeds[0]);
            Assert.Equal(0, side.Rows[0].Forces[0]);
            Assert.Equal(10 * Inch, side.Speeds[^1], 1e-9);
            for (int i = 1; i < side.Speeds.Count; i++)
            {
                double speed = side.Speeds[i] / Inch * (side == table.Extension ? 1 : -1);
                double law = Math.Abs(sheet.Law(speed)) * Pound;

                // Both branches' mean is the law but for its bend over the lag: a percent, and a pound near a standstill.
                Assert.Equal(law, side.Rows[0].Forces[i], (0.02 * law) + (1.5 * Pound));
            }

            // Late force: less while it speeds up.
            Assert.True(side.Rows[0].Hysteresis[4] < 0);
        }
    }

    [Fact]
    public void Set_GasThatPushesMoreFartherIn_GivesItsRate()
    {
        DamperMeasurement measured = Measure(new Sheet { Lag = 0 }.Text());
        Assert.Equal(2 * Pound / Inch, measured.GasRate!.Value, 0.02 * Pound / Inch);
        Assert.Equal(30 * Pound, measured.GasForce!.Value, 0.05 * Pound);
    }

    [Fact]
    public void Build_Noise_CoversTheLawAsItSays() => Gen.Int[1, 1000000].Sample(
        seed =>
        {
            var sheet = new Sheet { Noise = 12, Lag = 0, GasRate = 0 };
            DamperTable table = DamperTableBuilder.Build([Measure(sheet.Text(seed: seed))], DamperTableBuilder.UsualSpeeds(true));
            DamperRow row = table.Extension.Rows[0];
            double forces = Math.Sqrt(row.Forces.Skip(1).Average(force => force * force));

            // Single points scatter by 12 lb: twice that over the row's own size.
            Assert.Equal(200 * 12 * Pound / forces, row.DoubtPercent!.Value, 0.12 * row.DoubtPercent.Value);
            double squares = row.Forces.Zip(table.Extension.Speeds, (force, speed) => Math.Pow(force - (sheet.Law(speed / Inch) * Pound), 2)).Sum();
            Assert.True(Math.Sqrt(squares / row.Forces.Sum(force => force * force)) < row.DoubtPercent / 100);
        },
        iter: 20);

    [Fact]
    public void Build_Clicks_GivesARowEachAndOneForTheSideThatDoesNotChange()
    {
        DamperMeasurement Click(double click, double stiffness)
        {
            var soft = new Sheet { Noise = 4 };
            var set = soft with { Stiffness = stiffness };
            var text = new StringBuilder("click,velocity [in/s],force [lbf]\n");
            foreach (((double v, double f, _), (double _, double harder, _)) in soft.Rows((int)click + 1).Zip(set.Rows((int)click + 1)))
            {
                text.Append(CultureInfo.InvariantCulture, $"{click},{v},{(v > 0 ? harder : f)}\n");
            }

            return Measure(text.ToString());
        }

        DamperTable table = DamperTableBuilder.Build([Click(6, 1.4), Click(0, 1), Click(12, 2)], DamperTableBuilder.UsualSpeeds(true));
        Assert.Equal([0, 6, 12], table.Extension.Rows.Select(row => row.Click!.Value));
        Assert.True(table.Compression.IsSameForAllClicks);
        Assert.Single(table.Compression.Rows);
        Assert.Empty(table.Notes);

        // What is printed is what the scenario file takes.
        string yaml = DamperYaml.Of(table, true, 6);
        string scenario = File.ReadAllText(Path.Combine(Root(), "scenarios", "door-car.yaml"));
        string[] lines = scenario.Split('\n');
        int rear = Array.FindIndex(lines, line => line.StartsWith("rear:", StringComparison.Ordinal));
        int damper = Array.FindIndex(lines, rear, line => line.StartsWith("  damper:", StringComparison.Ordinal));
        int travel = Array.FindIndex(lines, damper, line => line.StartsWith("    travel:", StringComparison.Ordinal));
        string pasted = string.Join('\n', [.. lines[..(damper + 1)], .. yaml.TrimEnd().Split('\n').Select(line => "    " + line), .. lines[travel..]]);
        ReadResult read = new ScenarioReader().ReadText(pasted, "pasted.yaml");
        Assert.DoesNotContain(read.Errors, error => !error.Path.StartsWith("choices", StringComparison.Ordinal));
    }

    [Fact]
    public void Build_ForceThatFalls_IsEvenedAndSaid()
    {
        const string Falling = """
            Velocity (in/s),Rebound (lb),Compression (lb)
            0,0,0
            1,40,20
            3,80,45
            5,70,60
            10,120,90
            """;
        DynoReadResult read = DynoReader.ReadText(Falling, "pvp.csv", null, DynoMapping.None);
        Assert.Empty(read.Errors);
        DamperMeasurement measured = DynoSigns.Set(read.Runs[0], null, null, out _)!;
        DamperTable table = DamperTableBuilder.Build([measured], [.. new[] { 0, 1, 3, 5, 10 }.Select(speed => speed * Inch)]);
        double[] pounds = [.. table.Extension.Rows[0].Forces.Select(force => force / Pound)];
        Assert.Equal(75, pounds[2], 1e-6);
        Assert.Equal(75, pounds[3], 1e-6);
        Assert.Equal(40, pounds[1], 1e-6);
        Assert.Contains(table.Notes, note => note.Contains("falls with speed", StringComparison.Ordinal));
        Assert.Null(table.Extension.Rows[0].DoubtPercent);
        Assert.Equal(90, table.Compression.Rows[0].Forces[^1] / Pound, 1e-6);
    }

    [Fact]
    public void Set_WithoutGas_AsksForTheDirection()
    {
        DynoReadResult read = DynoReader.ReadText(new Sheet { Gas = 0, GasRate = 0, Lag = 0 }.Text(), "a.csv", null, DynoMapping.None);
        Assert.Null(DynoSigns.Set(read.Runs[0], null, null, out string? problem));
        Assert.Contains("--extension positive", problem, StringComparison.Ordinal);
        Assert.NotNull(DynoSigns.Set(read.Runs[0], true, null, out problem));
        Assert.Null(problem);
    }

    [Fact]
    public void Set_AgainstTheGas_SaysSo()
    {
        DynoReadResult read = DynoReader.ReadText(new Sheet().Text(), "a.csv", null, DynoMapping.None);
        Assert.NotNull(DynoSigns.Set(read.Runs[0], false, null, out string? problem));
        Assert.Contains("look at the sign", problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "no line that names a velocity")]
    [InlineData("a,b\n1,2\n", "the columns seem to be `a`, `b`")]
    [InlineData("velocity,force (lb)\n1,2\n3,4\n", "the column `velocity` without a unit, with values from 1 to 3")]
    [InlineData("velocity (in/s),force (kg)\n1,2\n", "the unit `kg`")]
    [InlineData("velocity (in/s),force (lb)\n1,x\nNaN,4\n1,2\n", "1 rows with numbers and 2 without")]
    [InlineData("velocity (in/s),mean velocity (in/s),rod velocity (in/s),force (lb)\n1,2,3,4\n", null)]
    [InlineData("shaft velocity (in/s),mean velocity (in/s),force (lb)\n1,2,3\n", "either of which may be the velocity")]
    public void Read_WrongSheet_SaysWhat(string text, string? expected)
    {
        DynoReadResult read = DynoReader.ReadText(text, "a.csv", null, DynoMapping.None);
        if (expected is null)
        {
            Assert.DoesNotContain(read.Errors, error => error.Message.Contains("either", StringComparison.Ordinal));
        }
        else
        {
            Assert.Contains(read.Errors, error => error.ToString().Contains(expected, StringComparison.Ordinal));
        }

        Assert.Empty(read.Runs);
    }

    [Fact]
    public void Set_ColumnsThatAreNoDamper_IsRefused()
    {
        var random = new Random(3);
        string text = "velocity (in/s),force (lb)\n" + string.Join('\n', Enumerable.Range(0, 200).Select(i => string.Create(CultureInfo.InvariantCulture, $"{Math.Sin(i / 9.0)},{Normal(random)}")));
        DynoReadResult read = DynoReader.ReadText(text, "a.csv", null, DynoMapping.None);
        Assert.Null(DynoSigns.Set(read.Runs[0], true, null, out string? problem));
        Assert.Contains("neither goes with the velocity nor against it", problem, StringComparison.Ordinal);
    }

    private static DamperMeasurement Measure(string text)
    {
        DynoReadResult read = DynoReader.ReadText(text, "a.csv", null, DynoMapping.None);
        Assert.Empty(read.Errors);
        DamperMeasurement? measured = DynoSigns.Set(Assert.Single(read.Runs), null, null, out string? problem);
        Assert.Null(problem);
        return measured!;
    }

    private static string Root()
    {
        string folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "LaunchSim.sln")))
        {
            folder = Path.GetDirectoryName(folder)!;
        }

        return folder;
    }

    private static double Normal(Random random) => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
