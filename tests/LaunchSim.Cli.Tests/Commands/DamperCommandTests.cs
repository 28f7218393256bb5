using System.Text.Json;
using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Tests.Commands;

public class DamperCommandTests
{
    private const string Soft = "Velocity (in/s),Rebound (lb),Compression (lb)\n0,0,0\n1,20,25\n3,50,55\n5,80,80\n10,120,120\n";
    private const string Hard = "Velocity (in/s),Rebound (lb),Compression (lb)\n0,0,0\n1,40,25\n3,90,55\n5,140,80\n10,230,120\n";
    private const string Speeds = "0 1 3 5 10 in/s";

    [Fact]
    public void Damper_TwoClicks_PrintsWhatAScenarioTakes()
    {
        using var folder = new Folder();
        string[] arguments = ["damper", "--click", "0=" + folder.Write("soft.csv", Soft), "--click", "6=" + folder.Write("hard.csv", Hard), "--speeds", Speeds, "--set-click", "6", "--picture", folder.Path("a.png"), "--out", folder.Path("table.yaml")];
        Printed printed = Printed.By(arguments);
        Assert.Equal(ExitCode.Done, printed.Code);
        const string Expected = """
            extension:
              speed: 0 1 3 5 10 in/s
              clicks:
                0: 0 20 50 80 120 lb
                6: 0 40 90 140 230 lb
              set: 6
            compression:
              speed: 0 1 3 5 10 in/s
              clicks:
                0: 0 25 55 80 120 lb
                6: 0 25 55 80 120 lb
              set: 6

            """;
        Assert.EndsWith(Expected, printed.Output, StringComparison.Ordinal);
        Assert.Equal(Expected, File.ReadAllText(folder.Path("table.yaml")));
        Assert.True(new FileInfo(folder.Path("a.png")).Length > 10_000);
        Printed again = Printed.By(arguments);
        again.IsRefused();
        Assert.Contains("is there already", again.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Damper_Json_IsInSi()
    {
        using var folder = new Folder();
        Printed printed = Printed.By("damper", folder.Write("soft.csv", Soft), "--speeds", Speeds, "--json");
        Assert.Equal(ExitCode.Done, printed.Code);
        using var document = JsonDocument.Parse(printed.Output);
        JsonElement row = document.RootElement.GetProperty("extension").GetProperty("rows")[0];
        Assert.Equal(120 * 4.4482216152605, row.GetProperty("force_n")[4].GetDouble(), 1e-9);
        Assert.Equal(JsonValueKind.Null, row.GetProperty("click").ValueKind);
        Assert.Equal(0.254, document.RootElement.GetProperty("extension").GetProperty("speed_mps")[4].GetDouble(), 1e-12);
    }

    [Fact]
    public void Damper_BadInput_IsRefusedAndNothingIsWritten()
    {
        using var folder = new Folder();
        string soft = folder.Write("soft.csv", Soft), plain = folder.Write("plain.csv", "velocity,force\n1,2\n-1,-2\n2,3\n"), empty = folder.Write("empty.csv", "");
        string[] names = folder.Names();
        foreach ((string[] arguments, string expected) in new (string[], string)[]
        {
            ([], "found no dyno sheet"),
            ([soft, "--click", "3=" + soft], "all sheets with a click or none"),
            (["--click", soft], "found no number before an equals sign"),
            ([plain], "the column `force` without a unit, with values from -2 to 3"),
            ([empty], "no line that names a velocity"),
            ([folder.Path("none.csv")], "no file"),
            ([folder.At], "which is a folder"),
            ([soft, "--column", "speed=v"], "found no quantity before an equals sign"),
            ([soft, "--speeds", "1 2 3 in/s"], "do not rise from 0"),
            ([soft, "--speeds", "0 1 2 lb"], "--speeds"),
            ([soft, "--gas", "3"], "without a unit"),
            ([soft, "--set-click", "3"], "the table has no clicks"),
            ([soft, "--picture", "a.gif"], ".png or .svg"),
            ([plain, "--unit", "velocity=m/s", "--unit", "force=N", "--out", folder.Path("a.yaml")], "say --extension positive"),
        })
        {
            Printed printed = Printed.By(["damper", .. arguments]);
            printed.IsRefused();
            Assert.Contains(expected, printed.Error, StringComparison.Ordinal);
        }

        Assert.Equal(names, folder.Names());
    }
}
