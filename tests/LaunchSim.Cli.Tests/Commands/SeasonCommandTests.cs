using System.Text.Json;
using LaunchSim.Cli.Terminal;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Scenarios.Writing;
using Spectre.Console.Testing;

namespace LaunchSim.Cli.Tests.Commands;

public sealed class SeasonCommandTests : IDisposable
{
    private readonly Folder _folder = new();
    private readonly string _car, _season;

    public SeasonCommandTests()
    {
        _car = _folder.Write("car.yaml", File.ReadAllText(Files.DoorCar));
        _season = _folder.Path("season");
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Add_FirstPassAndOneLikeIt_WritesWhatWasGiven()
    {
        Printed first = Printed.By("season", "add", _season, "--car", _car, "--when", "2026-09-12 14:10", "--name", "As measured", "--seen", "first_up=rear", "--seen", "frames_per_second=240", "--seen", "rear_moves=frame 13", "--log", $"{_folder.Path("a.csv")}:{_folder.Path("season/map.yaml")}");
        Printed second = Printed.By("season", "add", _season, "--like", "last", "--set", "rear.linkage.upper.body.use=3", "--when", "2026-09-12 14:50", "--track", "left lane", "--weather", "18 °C", "--notes", "One hole: down");
        Printed third = Printed.By("season", "add", _season, "--like", _folder.Path("season/pass-2.yaml"), "--set", "rear.tire.pressure.set=15 psi", "--when", "2026-09-12 15:30");

        Assert.All([first, second, third], printed => Assert.Equal(ExitCode.Done, printed.Code));
        Assert.Contains("no file", first.Error, StringComparison.Ordinal);
        Assert.Equal("", third.Error);
        string hash = new ScenarioReader().Read(_car).Scenario!.ContentHash[..16];
        Assert.Equal($"""
            name: As measured
            when: 2026-09-12 14:10
            car: ../car.yaml
            car_hash: {hash}
            logs:
              - {'{'}file: ../a.csv, mapping: map.yaml{'}'}
            seen:
              first_up: rear
              frames_per_second: 240
              rear_moves: frame 13

            """, File.ReadAllText(_folder.Path("season/pass-1.yaml")));
        Assert.Equal($"""
            when: 2026-09-12 15:30
            car: ../car.yaml
            car_hash: {hash}
            changed:
              rear.linkage.upper.body.use: 3
              rear.tire.pressure.set: 15 psi

            """, File.ReadAllText(_folder.Path("season/pass-3.yaml")));
        Assert.Equal(["car.yaml", "season", "season/pass-1.yaml", "season/pass-2.yaml", "season/pass-3.yaml"], _folder.Names());
    }

    [Theory]
    [InlineData("--seen \"rear_moves=13\": error: seen.rear_moves: found", "--seen", "rear_moves=13")]
    [InlineData("did you mean `rear_moves`?", "--seen", "rear_move=0.1 s")]
    [InlineData("--set \"rear.tire.pressure.set=15 in\": error", "--set", "rear.tire.pressure.set=15 in")]
    [InlineData("did you mean `rear.spring.rate`?", "--set", "rear.spring.rat=150 lb/in")]
    [InlineData("--when \"today\": error", "--when", "today")]
    [InlineData("--seen 5: found no key", "--seen", "5")]
    [InlineData("--like last: found no readable pass", "--like", "last")]
    [InlineData("no file", "--like", "nowhere.yaml")]
    [InlineData("--name: found nothing", "--name", " ")]
    public void Add_WhatIsWrong_NamesTheOptionAndWritesNothing(string says, params string[] options)
    {
        Printed printed = Printed.By(["season", "add", _season, "--car", _car, "--seen", "shake=none", .. options]);

        printed.IsRefused();
        Assert.Contains(says, printed.Error, StringComparison.Ordinal);
        Assert.Equal(["car.yaml"], _folder.Names());
    }

    [Fact]
    public void Add_WithoutACarAnywhere_SaysWhereToNameIt()
    {
        Printed printed = Printed.By("season", "add", _season, "--seen", "shake=none");

        printed.IsRefused();
        Assert.Contains("write --car FILE", printed.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Add_WithSeasonsCar_TakesIt()
    {
        _folder.Write("season/season.yaml", "car: ../car.yaml\n");

        Assert.Equal(ExitCode.Done, Printed.By("season", "add", _season, "--seen", "shake=none").Code);
    }

    [Fact]
    public void List_Season_IsATable()
    {
        Three();

        Printed printed = Printed.By("season", "list", _season);

        Assert.Equal((ExitCode.Done, ""), (printed.Code, printed.Error));
        string[] lines = printed.Output.Split('\n');
        Assert.Matches(@"pass +when +60 ft +rise lag predicted +seen to move first +shake +changed", lines[2]);
        Assert.Matches(@"pass-1 +2026-09-12 14:10 +1\.520 s +-47 ms +rear: rear 0\.054 s, front 0\.090 s +light +open +as in the car's file$", lines[3]);
        Assert.Matches(@"pass-2 .* closed +rear\.linkage\.upper\.body\.use 2 → 3$", lines[4]);
    }

    [Fact]
    public void Show_ClosedAndCorrectedPass_HasItsFactsAndCorrections()
    {
        Three();
        string pass = _folder.Path("season/pass-2.yaml");
        Printed corrected = Printed.By("season", "correct", pass, "seen.rear_open=0.11 s", "--why", "Counted again", "--when", "2026-09-14");
        Printed printed = Printed.By("season", "show", pass);

        Assert.Equal((ExitCode.Done, ""), (corrected.Code, corrected.Error));
        Assert.Equal($"corrected seen.rear_open in {pass}: 0.10 s → 0.11 s, Counted again\n", corrected.Output);
        Assert.Equal((ExitCode.Done, ""), (printed.Code, printed.Error));
        Assert.Contains("closed 2026-09-13", printed.Output, StringComparison.Ordinal);
        Assert.Matches(@"2026-09-14 +seen\.rear_open +0\.10 s +0\.11 s +Counted again", printed.Output);
        Assert.Matches(@"(?m)^  Rear fully open +0\.110 ±0\.023 s +0\.\d{3} s ", printed.Output);
    }

    [Fact]
    public void Trend_Season_WritesTablePictureAndDocument()
    {
        Three();
        _folder.Write("fitted.yaml", "name: Fitted\nbase: car.yaml\nchange: {car.cg_height: 22 in}\n");

        Printed printed = Printed.By("season", "trend", _season, "--fitted", _folder.Path("fitted.yaml"), "--csv", _folder.Path("t.csv"), "--picture", _folder.Path("t.svg"), "--json");

        Assert.Equal(ExitCode.Done, printed.Code);
        using var document = JsonDocument.Parse(printed.Output);
        JsonElement[] passes = [.. document.RootElement.GetProperty("passes").EnumerateArray()];
        Assert.Equal(3, passes.Length);
        Assert.NotEqual(JsonValueKind.Null, passes[0].GetProperty("times")[0].GetProperty("fitted_s").ValueKind);
        Assert.NotEmpty(document.RootElement.GetProperty("learned").EnumerateArray());
        string[] table = File.ReadAllLines(_folder.Path("t.csv"));
        Assert.StartsWith("pass,file,when,", table[0], StringComparison.Ordinal);
        Assert.All(table, line => Assert.Equal(table[0].Count(c => c == ','), line.Count(c => c == ',') - (line.Contains('"', StringComparison.Ordinal) ? 1 : 0)));
        Assert.Contains("<title>season: 3 passes", File.ReadAllText(_folder.Path("t.svg")), StringComparison.Ordinal);
    }

    [Fact]
    public void Trend_InText_SaysWhatWasLearned()
    {
        Three();

        Printed printed = Printed.By("season", "trend", _season, "--units", "si");

        Assert.Equal((ExitCode.Done, ""), (printed.Code, printed.Error));
        foreach (string heading in new[] { "How far the predictions can be trusted", "What went with which change", "Tyre shake", "Noted" })
        {
            Assert.Contains($"\n{heading}\n", printed.Output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Report_Season_IsOneFileThatAllowsNothingButItself()
    {
        Three();
        string page = _folder.Path("out.html");

        Printed printed = Printed.By("season", "report", _season, "--out", page);

        Assert.Equal((ExitCode.Done, ""), (printed.Code, printed.Error));
        string text = File.ReadAllText(page);
        Assert.Contains("default-src 'none'; script-src 'none'; style-src 'sha256-", text, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", text, StringComparison.Ordinal);
        Assert.DoesNotContain(" style=", text, StringComparison.Ordinal);
        Assert.DoesNotContain("<b>", text, StringComparison.Ordinal);
        Assert.Contains("&lt;b&gt;", text, StringComparison.Ordinal);
        Assert.Equal(ExitCode.BadInput, Printed.By("season", "report", _season, "--out", _folder.Path("season/pass-1.yaml")).Code);
    }

    [Theory]
    [InlineData("list", "nowhere")]
    [InlineData("trend", "car.yaml")]
    [InlineData("report", "empty")]
    [InlineData("show", "car.yaml")]
    [InlineData("close", "nowhere.yaml")]
    [InlineData("correct", "car.yaml", "seen.shake=none")]
    [InlineData("correct", "car.yaml", "none")]
    [InlineData("close", "car.yaml", "--when", "13.9.2026")]
    public void Season_WhatIsNotThereOrNoPass_IsRefused(string command, string file, params string[] more)
    {
        Directory.CreateDirectory(_folder.Path("empty"));

        Printed.By(["season", command, _folder.Path(file), .. more]).IsRefused();
        Assert.Equal(["car.yaml", "empty"], _folder.Names());
    }

    [Fact]
    public void List_SeasonWithAWrongPass_TellsWhereAndShowsNothing()
    {
        Three();
        _folder.Write("season/pass-4.yaml", "car: ../car.yaml\nseen: {rear_moves: 5}\n");

        Printed printed = Printed.By("season", "list", _season);

        printed.IsRefused();
        Assert.Contains("pass-4.yaml:2:20: error: seen.rear_moves: found `5`, neither a time nor a frame", printed.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Ask_PassAtATerminal_AsksAFewThingsAndAsksAgainWhatIsWrong()
    {
        using var console = new TestConsole();
        console.Interactive();
        Scenario car = StandingCheck.Reader(ReadPurpose.Run).Read(_car).Scenario!;
        string[] answers =
        [
            "rear.spring.rat=150 lb/in", "rear.spring.rate=175 lb/in", "",
            "left lane", "",
            "rear", "240", "118", "frame 100", "frame 131", "frame 147", "", "never", "never", "light", "1.52 s", "Went well.",
        ];
        foreach (string answer in answers)
        {
            console.Input.PushTextWithEnter(answer);
        }

        IReadOnlyList<Diagnostic> Check(PassDraft draft) => new PassReader(StandingCheck.Reader(ReadPurpose.Run)).ReadText(PassText.Of(draft).Text, _folder.Path("season/new.yaml")).Errors;
        PassDraft asked = await new PassInterview(console, Check, CancellationToken.None).AskAsync(new PassDraft { Car = "../car.yaml" }, null, car);

        Assert.Equal([("rear.spring.rate", "175 lb/in")], asked.Changed);
        Assert.Equal(
            [("first_up", "rear"), ("frames_per_second", "240"), ("release_frame", "118"), ("rear_moves", "frame 131"), ("front_moves", "frame 147"), ("front_tires_leave", "never"), ("spin_starts", "never"), ("shake", "light"), ("times", "1.52 s")], asked.Seen);
        Assert.Equal(("left lane", null, "Went well."), (asked.Track, asked.Weather, asked.Notes));
        Assert.Contains("did you mean `rear.spring.rate`?", console.Output.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Contains("before the release", console.Output.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Empty(Check(asked));
    }

    private void Three()
    {
        _folder.Write("season/pass-1.yaml", "when: 2026-09-12 14:10\ncar: ../car.yaml\nseen: {first_up: rear, rear_moves: 0.054 s, front_moves: 0.090 s, shake: light, times: 1.520 s}\nnotes: Loose <b>belt</b>.\n");
        _folder.Write("season/pass-2.yaml", "when: 2026-09-12 14:50\ncar: ../car.yaml\nchanged: {rear.linkage.upper.body.use: 3}\nseen: {rear_open: 0.10 s, shake: none, times: 1.510 s}\n");
        _folder.Write("season/pass-3.yaml", "when: 2026-09-12 15:30\ncar: ../car.yaml\nchanged: {rear.linkage.upper.body.use: 3, rear.tire.pressure.set: 15 psi}\nseen: {times: 1.512 s}\n");
        Assert.Equal(ExitCode.Done, Printed.By("season", "close", _folder.Path("season/pass-2.yaml"), "--when", "2026-09-13").Code);
    }
}
