using System.Text.Json;
using System.Text.RegularExpressions;
using LaunchSim.Cli.Terminal;
using Snapshooter.Xunit;

namespace LaunchSim.Cli.Tests.Commands;

public class SweepCommandTests
{
    private const string Springs = "rear.spring.rate=130 150 175 200 lb/in", Holes = "rear.linkage.upper.body.use=all", Pressures = "rear.tire.pressure.set=14 to 18 by 1 psi";

    [Theory]
    [InlineData("Springs", Springs)]
    [InlineData("Holes", Holes)]
    [InlineData("Pressures", Pressures)]
    [InlineData("HolesAndPressures", Holes, Pressures)]
    [InlineData("OnlyThePresent", "rear.spring.rate=150 lb/in")]
    public void Sweep_OfDoorCar_SaysWhatItDoes(string name, params string[] vary)
    {
        Printed printed = Sweep(vary, []);
        Assert.Equal((ExitCode.Done, ""), (printed.Code, printed.Error));
        Snapshot.Match(printed.Output, $"Sweep_{name}");
    }

    [Fact]
    public void Sweep_WithFigures_ShowsThemInTheirUnits()
    {
        Printed printed = Sweep([Springs], ["--figure", "squat_peak_m", "--figure", "rise_lag_s", "--units", "si", "--profile", "stay-down"]);
        Assert.Equal((ExitCode.Done, ""), (printed.Code, printed.Error));
        Snapshot.Match(printed.Output);
    }

    [Fact]
    public void Sweep_WithAllFiles_WritesThemAndTellsSo()
    {
        using var folder = new Folder();
        string[] files = ["--csv", folder.Path("a.csv"), "--parquet", folder.Path("a.parquet"), "--picture", folder.Path("a.svg")];
        Printed printed = Sweep([Springs, Pressures], files);
        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.Equal(["wrote a.csv", "wrote a.parquet", "wrote a.svg"], printed.Error.Replace(folder.At + Path.DirectorySeparatorChar, "", StringComparison.Ordinal).TrimEnd().Split('\n'));
        Assert.Equal(["a.csv", "a.csv.study", "a.parquet", "a.svg"], folder.Names());
        Assert.Equal(21, File.ReadAllLines(folder.Path("a.csv")).Length);

        // Once more with what is there: nothing is run, all else is made anew.
        Printed again = Sweep([Springs, Pressures], [.. files, "--resume"]);
        Assert.Equal((ExitCode.Done, printed.Output), (again.Code, again.Output));
        Assert.Contains("of whose 20 rows 20 were there", again.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Sweep_Json_HoldsEveryRow()
    {
        Printed printed = Sweep([Springs], ["--json"]);
        Assert.Equal((ExitCode.Done, ""), (printed.Code, printed.Error));
        using var document = JsonDocument.Parse(printed.Output);
        JsonElement root = document.RootElement;
        Assert.Equal(4, root.GetProperty("rows").GetArrayLength());
        Assert.Equal("175 lb/in", root.GetProperty("rows")[2].GetProperty("values")[0].GetString());
        Assert.Equal(1, root.GetProperty("present_set_up").GetInt64());
        Assert.StartsWith("rear.spring.rate from 130 to 200 lb/in: ", root.GetProperty("conclusion").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1")]
    [InlineData("3")]
    public void Sweep_WithThreads_PrintsTheSame(string threads) =>
        Assert.Equal(Sweep([Springs], ["--json"]).Output, Sweep([Springs], ["--json", "--threads", threads]).Output);

    [Fact]
    public void Sweep_OfLaunchesThatStop_TellsWhyAndReturns1()
    {
        Printed printed = Printed.By("sweep", Files.Test("stalls"), "--vary", "rear.spring.rate=130 150 lb/in");
        Assert.Equal(ExitCode.Failed, printed.Code);
        Assert.Contains("no launch came to its end", printed.Error, StringComparison.Ordinal);
        Assert.StartsWith("None of the 2 launches came to its end; the first: stopped at ", printed.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Sweep_OfAStudyFile_TakesItsScenarioVaryAndAims()
    {
        using var folder = new Folder();
        string study = folder.Write("study.yaml", $$"""
            name: Springs
            scenario: {{Files.DoorCar}}
            vary:
              rear.spring.rate: 130 150 lb/in
            """);
        Printed printed = Printed.By("sweep", study);
        Assert.Equal((ExitCode.Done, ""), (printed.Code, printed.Error));
        Assert.StartsWith("rear.spring.rate from 130 to 150 lb/in: ", printed.Output, StringComparison.Ordinal);
    }

    public static TheoryData<string, string> BadInput { get; } = new()
    {
        { "--vary rear.sprng.rate=1 2 lb/in", "did you mean `rear.spring.rate`?" },
        { "--vary rear.spring.rate=-5 150 lb/in", "found the value `-5 lb/in`" },
        { "--vary rear.spring.rate=200 to 100 by 10 lb/in", "from the lower to the higher" },
        { "--vary rear.spring.rate=", "path=values" },
        { "", "found nothing to vary; write --vary path=values" },
        { $"--vary {Springs}|--figure|rise_lg_s", "--figure rise_lg_s: found no such figure; did you mean `rise_lag_s`?" },
        { $"--vary {Springs}|--shard|1/2", "--shard 1/2: found no --csv" },
        { $"--vary {Springs}|--shard|3/2|--csv|x.csv", "--shard 3/2: found no part of a whole" },
        { $"--vary {Springs}|--resume", "--resume: found no --csv" },
        { $"--vary {Springs}|--threads|0", "--threads 0: found no such count; allowed: a whole number from 1 to 1024" },
        { $"--vary {Springs}|--budget|some", "--budget some: found no such count" },
        { $"--vary {Springs}|--budget|2", "found 4 set-ups (4), which take about " },
        { $"--vary {Springs}|--csv|x.txt", "does not end in .csv" },
        { $"--vary {Springs}|--csv|", "--csv needs a name" },
        { $"--vary {Springs}|--parquet|x.csv", "does not end in .parquet" },
        { $"--vary {Springs}|--picture|x.gif", "ends in .png or .svg" },
        { $"--vary {Springs}|--tolerance|2", "run.tolerance" },
        { $"--vary {Springs}|--profile|up", "up" },
        { $"--vary {Springs}|--vary|{Holes}|--vary|{Pressures}|--picture|x.png", "--picture: found 3 settings; allowed: one or two" },
        { $"--vary {Springs}|--csv|x.csv|--shard|1/2|--picture|x.png", "--picture: found --shard" },
        { $"--vary {Springs}|--csv|x.csv|--shard|1/2|--parquet|x.parquet", "--parquet: found --shard" },
    };

    [Theory]
    [MemberData(nameof(BadInput))]
    public void Sweep_WithBadInput_IsRefused(string options, string named)
    {
        string[] parts = options.Length == 0 ? [] : [.. options.Split('|')];
        string[] arguments = [.. parts.Length > 0 ? (string[])["--vary", parts[0]["--vary ".Length..]] : [], .. parts.Skip(1)];
        Printed printed = Printed.By(["sweep", Files.DoorCar, .. arguments]);
        printed.IsRefused();
        Assert.Contains(named, printed.Error, StringComparison.Ordinal);
        Assert.False(File.Exists("x.csv") || File.Exists("x.csv.unfinished") || File.Exists("x.csv.study"));
    }

    [Fact]
    public void Sweep_WithSeveralMistakes_TellsAllOfThem()
    {
        Printed printed = Printed.By("sweep", Files.DoorCar, "--vary", "rear.sprng.rate=1 lb/in", "--threads", "x", "--resume", "--figure", "rise_lg_s");
        printed.IsRefused();
        Assert.Equal(4, printed.Error.TrimEnd().Split('\n').Length);
    }

    [Fact]
    public void Sweep_OfATrillion_SaysHowManyAndHowLong()
    {
        Printed printed = Sweep(["rear.spring.rate=100 to 1099 by 1 lb/in", "front.spring.rate=100 to 1099 by 1 lb/in", "car.cg_height=15 to 24.99 by 0.01 in", "rear.linkage.upper.body.up=14 to 15.998 by 0.002 in"], ["--set", "run.duration=50 ms"]);
        printed.IsRefused();
        Assert.Matches(@"^launchsim: found 1,000,000,000,000 set-ups \(1000 × 1000 × 1000 × 1000\), which take about [\d,.]+ (days|years) at the [\d,.]+ launches a second measured here just now with \d+ threads?; allowed: 100,000 unless --budget says more\. Vary fewer settings or take coarser steps\n$", printed.Error);
    }

    [Fact]
    public void Sweep_WithContradictoryAims_IsRefusedWithTheirPlace()
    {
        using var folder = new Folder();
        string study = folder.Write("study.yaml", $$"""
            scenario: {{Files.DoorCar}}
            vary:
              rear.spring.rate: 130 150 lb/in
            aims:
              separation: {from: 5 in}
            """);
        Printed printed = Printed.By("sweep", study);
        printed.IsRefused();
        Assert.Matches(@"study\.yaml:\d+:\d+", printed.Error);
    }

    [Fact]
    public void Sweep_IntoATableOfAnotherStudy_IsRefusedByWhatDiffers()
    {
        using var folder = new Folder();
        Assert.Equal(ExitCode.Done, Sweep([Springs], ["--csv", folder.Path("a.csv")]).Code);
        Printed printed = Sweep(["rear.spring.rate=130 150 lb/in"], ["--csv", folder.Path("a.csv"), "--resume"]);
        printed.IsRefused();
        Assert.Contains("vary rear.spring.rate: there 130 lb/in | 150 lb/in | 175 lb/in | 200 lb/in, here 130 lb/in | 150 lb/in", printed.Error, StringComparison.Ordinal);
        Sweep([Springs], ["--csv", folder.Path("a.csv")]).IsRefused();
        Sweep([Springs], ["--csv", folder.Write("mine.csv", "my,own\n")]).IsRefused();
        File.Move(folder.Path("a.csv"), folder.Path("a.csv.unfinished"));
        printed = Sweep([Springs], ["--csv", folder.Path("a.csv")]);
        printed.IsRefused();
        Assert.Contains("a study that was not finished. --resume goes on with it", printed.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Pace_TellsRateAndTimeLeft()
    {
        var pace = new Pace("launches", 10_000, 4_000);
        Assert.Equal("", pace.Text(1));
        pace.Add(1000);
        Assert.Equal("500 launches/s, 10 s left", pace.Text(2));
        Assert.Matches(new Regex("^[0-9.,]+ launches/s, .* left$"), pace.Text());
        Assert.Equal(["40 s", "12 min", "3.5 h", "21 days", "31 years"], new[] { 40, 720, 12600, 21 * 86400.0, 31 * 365.25 * 86400 }.Select(Pace.Duration));
    }

    private static Printed Sweep(string[] vary, string[] options) =>
        Printed.By(["sweep", Files.DoorCar, .. vary.SelectMany(one => new[] { "--vary", one }), .. options]);
}
