using System.Diagnostics;
using System.Text.Json;
using System.Text.RegularExpressions;
using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Tests.Commands;

public partial class ScalesCommandTests
{
    private const string Sheet = """
        name: Door car, blocked
        wheelbase: 105.5 ±1/8 in
        loaded_radius: {front: 12.6 ±1/16 in, rear: 13.1 ±1/16 in}
        level: {front: 1560 ±3 lb, rear: 1440 ±3 lb}
        lifts:
          - {raised: rear, height: 38 ±1/8 in, load: 1624 ±3 lb}
          - {raised: rear, height: 31 ±1/8 in, load: 1605 ±3 lb}
        """;

    private static readonly string[] OneLift =
    [
        "scales", "--wheelbase", "2.7 m", "--front-radius", "0.31 m", "--rear-radius", "0.31 m", "--front-scale", "700 kgf", "--rear-scale", "800 kgf", "--raised", "rear", "--height", "0.81 m", "--load", "725.1259453814803 kgf",
    ];

    [Fact]
    public void Scales_OneLiftByOptions_IsThePublishedExample()
    {
        Printed printed = Printed.By([.. OneLift, "--json"]);
        Assert.Equal(ExitCode.Done, printed.Code);
        using var document = JsonDocument.Parse(printed.Output);
        Assert.Equal(0.55, document.RootElement.GetProperty("height_m").GetDouble(), 1e-9);
        Assert.Equal(JsonValueKind.Null, document.RootElement.GetProperty("agreement").ValueKind);
        Assert.Contains("--load 725.1259453814803 kgf", printed.Output, StringComparison.Ordinal);
        Assert.StartsWith("one lift: centre of gravity 550 ±", Printed.By(OneLift).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Scales_Sheet_SaysHowWellItIsKnownAndWhatHolds()
    {
        using var folder = new Folder();
        Printed printed = Printed.By("scales", folder.Write("sheet.yaml", Sheet));
        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.Matches(@"^Door car, blocked: centre of gravity 2\d\.\d+ ±0\.\d+ in above the floor, 54\.\d+ ±0\.\d+ in ahead of the rear axle\n", printed.Output);
        foreach (string words in new[] { "suspension is blocked", "the car secured", "rated for the load", "The readings agree", "Where the height's doubt comes from" })
        {
            Assert.Contains(words, printed.Output, StringComparison.Ordinal);
        }

        int[] shares = [.. Share().Matches(printed.Output).Select(match => int.Parse(match.Groups[1].Value))];
        Assert.InRange(shares.Sum(), 98, 102);
    }

    [Fact]
    public void Scales_SmallLift_SaysWhichWouldDo()
    {
        string[] low = [.. OneLift];
        (low[14], low[16]) = ("0.41 m", "705 kgf");
        Assert.Contains("The lift is too small to tell the height to 25 mm: with the rear wheel centres at ", Printed.By(low).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Into_Scenario_ReplacesFourValuesAndNothingElse()
    {
        using var folder = new Folder();
        string text = File.ReadAllText(Files.DoorCar).Replace("\n", "\r\n", StringComparison.Ordinal);
        string car = folder.Write("car.yaml", [0xEF, 0xBB, 0xBF, .. System.Text.Encoding.UTF8.GetBytes(text)]);
        string sheet = folder.Write("sheet.yaml", Sheet);
        Printed printed = Printed.By("scales", sheet, "--into", car);
        Assert.Equal(ExitCode.Done, printed.Code);
        string[] told = printed.Error.TrimEnd().Split('\n');
        Assert.Equal(4, told.Length);
        Assert.Matches(@"car\.yaml:\d+: car\.cg_height: 21 in → 2\d\.\d+ ±0\.\d+ in$", told[3]);

        byte[] bytes = File.ReadAllBytes(car);
        Assert.Equal([0xEF, 0xBB, 0xBF], bytes[..3]);
        string after = System.Text.Encoding.UTF8.GetString(bytes[3..]);
        string[] before = text.Split("\r\n"), now = after.Split("\r\n");
        Assert.Equal(before.Length, now.Length);
        Assert.Equal(3, Enumerable.Range(0, before.Length).Count(i => before[i] != now[i]));
        Assert.All(Enumerable.Range(0, before.Length), i => Assert.Equal(Comment(before[i]), Comment(now[i])));
        Assert.Equal(["car.yaml", "sheet.yaml"], folder.Names());
        Assert.Equal(ExitCode.Done, Printed.By("run", car, "--quiet").Code);

        // Once more changes nothing.
        Printed again = Printed.By("scales", sheet, "--into", car);
        Assert.Contains("stand there already", again.Error, StringComparison.Ordinal);
        Assert.Equal(bytes, File.ReadAllBytes(car));
    }

    [Fact]
    public void Into_LinkedScenario_KeepsTheLinkAndItsMode()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using var folder = new Folder();
        string car = folder.Write("car.yaml", File.ReadAllText(Files.DoorCar));
        File.SetUnixFileMode(car, UnixFileMode.UserRead | UnixFileMode.UserWrite);
        File.CreateSymbolicLink(folder.Path("link.yaml"), "car.yaml");
        Assert.Equal(ExitCode.Done, Printed.By("scales", folder.Write("sheet.yaml", Sheet), "--into", folder.Path("link.yaml")).Code);
        Assert.Equal("car.yaml", new FileInfo(folder.Path("link.yaml")).LinkTarget);
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(car));
        Assert.DoesNotContain("cg_height: 21 in", File.ReadAllText(car), StringComparison.Ordinal);
    }

    [Fact]
    public void Scales_BadInput_IsRefusedAndNothingIsWritten()
    {
        using var folder = new Folder();
        string sheet = folder.Write("sheet.yaml", Sheet), wrong = folder.Write("wrong.yaml", Sheet.Replace("38 ±1/8 in", "12 ±1/8 in", StringComparison.Ordinal));
        string car = folder.Write("car.yaml", File.ReadAllText(Files.DoorCar)), bad = folder.Write("bad.yaml", File.ReadAllText(Files.DoorCar).Replace("105.5 in", "105.5", StringComparison.Ordinal));
        string variant = folder.Write("variant.yaml", "base: car.yaml\nchange: {car.cg_height: 22 in}\n");
        string[] names = folder.Names();
        byte[][] contents = [.. names.Select(name => File.ReadAllBytes(folder.Path(name)))];
        foreach ((string[] arguments, string expected) in new (string[], string)[]
        {
            (["scales"], "found no scale sheet"),
            (["scales", "--wheelbase", "105 in"], "found no --front-radius"),
            (["scales", sheet, "--load", "1 lb"], "found beside the file"),
            (["scales", folder.Path("no.yaml")], "no file"),
            (["scales", wrong, "--into", car], "no higher than on the level"),
            (["scales", sheet, "--into", bad], "without a unit"),
            (["scales", sheet, "--into", folder.Path("no.yaml")], "found no such file"),
            (["scales", sheet, "--into", sheet], "unknown key"),
            (["scales", sheet, "--into", "a.csv"], "ends in .yaml"),
            (["scales", sheet, "--into", ""], "needs a name"),
            (["scales", sheet, "--into", variant], "name that file"),
            ([.. OneLift[..^1], "0 kgf"], "above 0"),
            ([.. OneLift[..^1], "1500 kgf"], "all of the car's weight"),
        })
        {
            Printed printed = Printed.By(arguments);
            printed.IsRefused();
            Assert.Contains(expected, printed.Error, StringComparison.Ordinal);
        }

        Assert.Equal(names, folder.Names());
        Assert.Equal(contents, names.Select(name => File.ReadAllBytes(folder.Path(name))));
    }

    [Fact]
    public async Task Into_KilledAtManyInstants_LeavesTheFileWhole()
    {
        using var folder = new Folder();
        string car = folder.Write("car.yaml", File.ReadAllText(Files.DoorCar));
        string[] sheets = [folder.Write("one.yaml", Sheet), folder.Write("other.yaml", Sheet.Replace("1624", "1621", StringComparison.Ordinal))];
        var whole = new HashSet<string> { File.ReadAllText(car) };
        var times = new List<double>();
        foreach (string sheet in sheets)
        {
            var watch = Stopwatch.StartNew();
            using Process process = Start(sheet, car);
            await process.WaitForExitAsync();
            times.Add(watch.Elapsed.TotalMilliseconds);
            Assert.Equal(ExitCode.Done, process.ExitCode);
            Assert.True(whole.Add(File.ReadAllText(car)));
        }

        var random = new Random(5);
        int before = 0, after = 0;
        for (int kill = 0; kill < 20; kill++)
        {
            string stood = File.ReadAllText(car);
            using Process process = Start(sheets[kill % 2], car);
            await Task.Delay((int)(times.Min() * (0.4 + (0.9 * random.NextDouble()))));
            process.Kill();
            await process.WaitForExitAsync();
            string now = File.ReadAllText(car);
            Assert.Contains(now, whole);
            before += now == stood ? 1 : 0;
            after += now == stood ? 0 : 1;
        }

        Assert.True(before > 0 && after > 0, $"{before} killed before it was written, {after} after");
    }

    private static string Comment(string line) => line.IndexOf('#', StringComparison.Ordinal) is >= 0 and var at ? line[at..] : "";

    private static Process Start(string sheet, string car) =>
        Process.Start(new ProcessStartInfo("dotnet", [typeof(App).Assembly.Location, "scales", sheet, "--into", car]) { RedirectStandardError = true, RedirectStandardOutput = true })!;

    [GeneratedRegex(@"^ +(\d+) %  ", RegexOptions.Multiline)]
    private static partial Regex Share();
}
