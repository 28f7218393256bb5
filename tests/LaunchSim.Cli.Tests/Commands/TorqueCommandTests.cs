using System.Text.Json;
using System.Text.RegularExpressions;
using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Tests.Commands;

public class TorqueCommandTests
{
    private static readonly string Season = Path.Combine(Files.Root, "scenarios", "season");

    [Fact]
    public void Torque_Sixty_PrintsAScaledTableThatTheScenarioTakes()
    {
        Printed printed = Printed.By("torque", Files.DoorCar, "--sixty", "1.55 ±0.01 s");
        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.Contains("From one time alone", printed.Output, StringComparison.Ordinal);
        string row = Regex.Match(printed.Output, "^torque: (.*)$", RegexOptions.Multiline).Groups[1].Value;
        Assert.EndsWith(" %", row, StringComparison.Ordinal);
        Printed run = Printed.By("run", Files.DoorCar, "--set", "driveline.torque=" + row, "--set", "run.marks=60 ft", "--set", "run.duration=3 s", "--json");
        using var document = JsonDocument.Parse(run.Output);

        // The row is printed to a pound-foot, a four-thousandth.
        Assert.Equal(1.55, document.RootElement.GetProperty("figures").GetProperty("mark_1_beam_time_s").GetDouble(), 5e-4);
    }

    [Fact]
    public void Torque_SeasonsLog_SaysHowWellItIsKnownAndWhy()
    {
        Printed printed = Printed.By("torque", Path.Combine(Season, "car.yaml"), Path.Combine(Season, "01-as-measured.csv"), "--mapping", Path.Combine(Season, "dash.yaml"), "--json");
        Assert.True(printed.Code == ExitCode.Done, printed.Error);
        using var document = JsonDocument.Parse(printed.Output);
        JsonElement root = document.RootElement;
        Assert.Equal(root.GetProperty("time_s").GetArrayLength(), root.GetProperty("torque_nm").GetArrayLength());
        Assert.InRange(root.GetProperty("doubt_percent").GetDouble(), 1, 25);
        Assert.All(root.GetProperty("channels").EnumerateArray(), channel => Assert.True(channel.GetProperty("after_sd").GetDouble() < 1.5));
        double[] shares = [.. root.GetProperty("causes").EnumerateArray().Select(cause => cause.GetProperty("percent").GetDouble())];
        Assert.Equal(shares.OrderDescending(), shares);
        Assert.Contains(root.GetProperty("notes").EnumerateArray(), note => note.GetString()!.Contains("t = 0", StringComparison.Ordinal));
    }

    [Fact]
    public void Torque_EngineCar_GivesTheRowsOfItsEngine()
    {
        string converter = Path.Combine(Files.Root, "scenarios", "converter-car.yaml");
        string output = Printed.By("torque", converter, "--sixty", "1.6 s", "--units", "shop").Output;
        Assert.Matches(@"To paste below driveline\.engine, in the place of its two rows\nspeed: 2000 [\d ]+ rpm\ntorque: [\d ]+ lb-ft ±[\d.]+ %\n$", output);
    }

    [Fact]
    public void Torque_BadInput_IsRefused()
    {
        using var folder = new Folder();
        string log = folder.Write("log.csv", "a,b\n1,2\n");
        foreach ((string[] arguments, string expected) in new (string[], string)[]
        {
            ([Files.DoorCar], "neither a log nor a time"),
            ([Files.DoorCar, "--sixty", "1.5"], "without a unit"),
            ([Files.DoorCar, "--sixty", "0 s"], "no number above 0"),
            ([Files.DoorCar, "--sixty", "1 2 s"], "2 numbers"),
            ([Files.DoorCar, "--sixty", "0.9 s"], "quicker than any torque"),
            ([Files.DoorCar, "--sixty", "9 s"], "slower than with a quarter"),
            ([Files.DoorCar, log, "--sixty", "1.5 s"], "found beside logs"),
            ([Files.DoorCar, log], "log.csv: error"),
            ([Files.DoorCar, folder.Path("none.csv")], "no file"),
            ([folder.Path("none.yaml"), "--sixty", "1.5 s"], "no file"),
            ([Files.DoorCar, log, "--mapping", "a.yaml", "--mapping", "b.yaml"], "2 mappings for 1 log"),
        })
        {
            Printed printed = Printed.By(["torque", .. arguments]);
            printed.IsRefused();
            Assert.Contains(expected, printed.Error, StringComparison.Ordinal);
        }

        Assert.Equal(["log.csv"], folder.Names());
    }
}
