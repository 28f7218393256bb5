using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using LaunchSim.Cli.Terminal;
using LaunchSim.Launch;
using Snapshooter.Xunit;

namespace LaunchSim.Cli.Tests.Commands;

public class RunCommandTests
{
    public static TheoryData<string> Cars => [.. Directory.GetFiles(Files.Tests, "*.yaml").Select(path => Path.GetFileNameWithoutExtension(path)!)
        .Where(name => name is not ("part" or "stalls"))];

    [Fact]
    public void Run_DoorCar_PrintsTheReport()
    {
        Printed printed = Printed.By("run", Files.DoorCar);

        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.Empty(printed.Error);
        Snapshot.Match(Scrubbed(printed.Output));
    }

    [Fact]
    public void Run_DoorCar_BeginsWithTheStaticLine() =>
        Assert.StartsWith("141 %, instant centre 35.9 in ahead and 10.0 in up, lower bar climbs 4.0°, upper falls 11.8°\n", Printed.By("run", Files.DoorCar).Output, StringComparison.Ordinal);

    [Theory]
    [MemberData(nameof(Cars))]
    public void Run_InventedCar_SaysWhatItDoes(string name)
    {
        Printed printed = Printed.By("run", Files.Test(name));

        Assert.Equal(ExitCode.Done, printed.Code);
        int end = printed.Output.IndexOf("\nFigures\n", StringComparison.Ordinal);
        Snapshot.Match(printed.Output[..end], $"Sentences_{name}");
    }

    [Fact]
    public void Run_UnitsSi_PrintsSi()
    {
        string output = Printed.By("run", Files.DoorCar, "--units", "si").Output;

        Assert.Matches("^141 %, instant centre 91[12] mm ahead and 25[45] mm up", output);
        Assert.DoesNotContain(" in\n", output, StringComparison.Ordinal);
        Assert.DoesNotContain(" lb", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_Csv_WritesTheTrace()
    {
        using var folder = new Folder();
        string csv = folder.Path("a.csv");

        Printed printed = Printed.By("run", Files.DoorCar, "--csv", csv);

        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.Contains($"wrote {csv}", printed.Error, StringComparison.Ordinal);
        string text = File.ReadAllText(csv);
        Assert.DoesNotContain('\r', text);
        string[] lines = text.TrimEnd('\n').Split('\n');
        Assert.Equal(string.Join(',', TraceColumns.All.Select(column => column.Name)), lines[0]);
        Assert.Equal(1802, lines.Length);
        Assert.StartsWith("0,0,", lines[1], StringComparison.Ordinal);
        Assert.StartsWith("0.001,", lines[2], StringComparison.Ordinal);
        Assert.StartsWith("1.8,", lines[^1], StringComparison.Ordinal);
        int engine = TraceColumns.All.ToList().FindIndex(column => column.Name == "engine_speed_radps");
        Assert.All(lines.Skip(1), line => Assert.Equal("", line.Split(',')[engine]));
        Assert.DoesNotContain("NaN", text, StringComparison.Ordinal);
        Assert.Equal(["a.csv"], folder.Names());
    }

    [Fact]
    public void Run_Csv_HoldsTheVeryNumbersOfTheTrace()
    {
        using var folder = new Folder();
        _ = Printed.By("run", Files.Test("clutch"), "--csv", folder.Path("a.csv"));
        Scenarios.Scenario scenario = Scenarios.StandingCheck.Reader(Scenarios.ReadPurpose.Run).Read(Files.Test("clutch")).Scenario!;
        Trace trace = Trace.Of(LaunchSimulation.Solve(scenario.Car!, scenario.Run), scenario.Run.Sample);

        string[] lines = File.ReadAllLines(folder.Path("a.csv"));

        Assert.Equal(trace.Rows, lines.Length - 1);
        for (int row = 0; row < trace.Rows; row += 97)
        {
            string[] cells = lines[row + 1].Split(',');
            for (int column = 0; column < cells.Length; column++)
            {
                double value = trace.Column(column)[row];
                Assert.Equal(double.IsFinite(value) ? value : double.NaN, cells[column].Length == 0 ? double.NaN : double.Parse(cells[column], CultureInfo.InvariantCulture));
            }
        }
    }

    [Fact]
    public void Run_CsvOfTheLongestName_IsWritten()
    {
        using var folder = new Folder();
        string csv = folder.Path(new string('x', 251) + ".csv");

        Assert.Equal(ExitCode.Done, Printed.By("run", Files.DoorCar, "--csv", csv, "--set", "run.duration=0.1 s").Code);
        Assert.True(File.Exists(csv));
    }

    [Fact]
    public void Run_CsvThatIsOurs_IsReplaced()
    {
        using var folder = new Folder();
        string csv = folder.Path("a.csv");
        _ = Printed.By("run", Files.DoorCar, "--csv", csv, "--set", "run.duration=0.1 s");

        Printed printed = Printed.By("run", Files.DoorCar, "--csv", csv);

        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.Contains($"replaced {csv}", printed.Error, StringComparison.Ordinal);
        Assert.Equal(1802, File.ReadAllLines(csv).Length);
    }

    [Fact]
    public void Run_Json_IsOneDocument()
    {
        Printed printed = Printed.By("run", Files.DoorCar, "--json");

        using JsonDocument document = JsonDocument.Parse(printed.Output);
        JsonElement root = document.RootElement;
        Assert.Equal("LaunchSim", root.GetProperty("program").GetString());
        Assert.Equal(64, root.GetProperty("scenario").GetProperty("hash").GetString()!.Length);
        Assert.Equal("done", root.GetProperty("status").GetString());
        Assert.InRange(root.GetProperty("figures").GetProperty("rise_lag_s").GetDouble(), -0.2, 0.2);
        Assert.Equal(JsonValueKind.Null, root.GetProperty("figures").GetProperty("driveshaft_torque_largest_nm").ValueKind);
        Assert.InRange(root.GetProperty("statics").GetProperty("anti_squat_percent").GetDouble(), 140, 142);
        Assert.NotEmpty(root.GetProperty("events").EnumerateArray());
        Assert.True(root.GetProperty("statistics").GetProperty("steps").GetInt32() > 0);
    }

    [Fact]
    public void Run_JsonOfSeveral_IsAnArray()
    {
        using JsonDocument document = JsonDocument.Parse(Printed.By("run", Files.DoorCar, Files.Test("ladder"), "--json").Output);

        Assert.Equal(["Door car, as measured", "Ladder bar"], document.RootElement.EnumerateArray().Select(run => run.GetProperty("scenario").GetProperty("name").GetString()));
    }

    [Fact]
    public void Run_Quiet_PrintsNothing()
    {
        Printed printed = Printed.By("run", Files.DoorCar, "--quiet");

        Assert.Equal(new Printed(ExitCode.Done, "", ""), printed);
    }

    [Fact]
    public void Run_SetAndTolerance_TakeThePlaceOfTheFile()
    {
        string plain = Printed.By("run", Files.DoorCar).Output;
        string changed = Printed.By("run", Files.DoorCar, "--set", "rear.linkage.upper.body.use=3", "--set", "car.ride_height.rear=+0.5 in", "--tolerance", "1e-6").Output;

        Assert.DoesNotContain("141 %", changed, StringComparison.Ordinal);
        Assert.Contains("tolerance 1e-6", changed, StringComparison.Ordinal);
        Assert.NotEqual(plain.Split("scenario ")[^1], changed.Split("scenario ")[^1]);
    }

    [Fact]
    public void Run_FolderInParallel_GivesTheBytesOfSingleRuns()
    {
        using var folder = new Folder();
        foreach (string file in Directory.GetFiles(Files.Tests, "*.yaml").Where(file => !file.EndsWith("part.yaml", StringComparison.Ordinal)))
        {
            folder.Write($"in/{Path.GetFileName(file)}", File.ReadAllText(file).Replace("../../../scenarios/door-car.yaml", Files.DoorCar, StringComparison.Ordinal));
        }

        Printed all = Printed.By("run", folder.Path("in"), "--out", folder.Path("together"));
        Assert.Equal(ExitCode.Failed, all.Code);
        var texts = new List<string>();
        foreach (string file in Directory.GetFiles(folder.Path("in")).Order(StringComparer.Ordinal))
        {
            Printed one = Printed.By("run", file, "--out", folder.Path("apart"));
            texts.Add($"== {file}\n{one.Output}\n");
        }

        Assert.Equal(string.Concat(texts), all.Output);
        string[] written = [.. Directory.GetFiles(folder.Path("together")).Select(file => Path.GetFileName(file)!)];
        Assert.Equal(16, written.Length);
        foreach (string name in written)
        {
            Assert.Equal(File.ReadAllBytes(folder.Path($"apart/{name}")), File.ReadAllBytes(folder.Path($"together/{name}")));
        }
    }

    [Fact]
    public void Run_GermanCulture_ChangesNothing()
    {
        using var folder = new Folder();
        Printed plain = Printed.By("run", Files.DoorCar, "--csv", folder.Path("a.csv"));
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = new CultureInfo("de-DE");
            Assert.Equal(plain.Output, Printed.By("run", Files.DoorCar, "--csv", folder.Path("b.csv")).Output);
        }
        finally
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = before;
        }

        Assert.Equal(File.ReadAllBytes(folder.Path("a.csv")), File.ReadAllBytes(folder.Path("b.csv")));
    }

    [Fact]
    public void Run_Trace_HasNoZeroWithASign()
    {
        using var folder = new Folder();

        _ = Printed.By("run", Files.DoorCar, "--csv", folder.Path("a.csv"), "--set", "run.duration=0.01 s");

        Assert.DoesNotMatch(@"(^|,)-0(,|$)", File.ReadAllText(folder.Path("a.csv")));
    }

    [Fact]
    public void Run_TyresThatSpin_WritesTheMarginAsNone()
    {
        string file = Path.Combine(Files.Root, "scenarios", "clutch-car.yaml");

        Assert.Matches(@"Grip margin, lowest +0\.000\n", Printed.By("run", file).Output);
    }

    [Fact]
    public void Run_ThatStops_TellsTimePartAndWhatToLookAt()
    {
        using var folder = new Folder();

        Printed printed = Printed.By("run", Files.Test("stalls"), "--csv", folder.Path("a.csv"));

        Assert.Equal(ExitCode.Failed, printed.Code);
        printed.HasNoStackTrace();
        Assert.Matches(@"The run stopped at 0\.\d+ s, engine: the engine came to a stop\. Look at launch speed", printed.Error);
        Assert.True(File.ReadAllLines(folder.Path("a.csv")).Length > 10);
    }

    [Theory]

    // A front axle of 130,000 tons on the tyres of a car; a damper that gives 1,600 lb within 0.004 in/s.
    [InlineData("car.scales.front=293635027 lb", 30_000)]
    [InlineData("front.damper.extension={speed: 0 0.106 0.11 20 in/s, force: 0 1 1635 2000 lb}", 130_000)]
    public void Run_TooQuickToFollow_StopsWithinItsSteps(string set, int most)
    {
        Printed printed = Printed.By("run", Files.DoorCar, "--set", set);

        Assert.Equal(ExitCode.Failed, printed.Code);
        Assert.Contains("too quick to be followed in 120,000 steps", printed.Error, StringComparison.Ordinal);
        Match cost = Regex.Match(printed.Output, @"; (\d+) steps \((\d+) rejected\)");
        Assert.InRange(int.Parse(cost.Groups[1].Value) + int.Parse(cost.Groups[2].Value), 1000, most);
    }

    [Fact]
    public void Run_Cancelled_Returns130AndLeavesNothing()
    {
        using var folder = new Folder();
        using var source = new CancellationTokenSource();
        source.Cancel();

        Printed printed = Printed.By(source.Token, "run", Files.DoorCar, "--csv", folder.Path("a.csv"));

        Assert.Equal(ExitCode.Interrupted, printed.Code);
        Assert.Empty(folder.Names());
    }

    // What changes with every change of solver or version is left out.
    private static string Scrubbed(string output) => Regex.Replace(output, @"\nEnergy residual .*\n.*\n", "\nENERGY RESIDUAL, STEPS, VERSION, HASH\n");
}
