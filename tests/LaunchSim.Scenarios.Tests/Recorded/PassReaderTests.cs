using Json.Schema;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Scenarios.Tests.Schema;
using LaunchSim.Vehicle;

namespace LaunchSim.Scenarios.Tests.Recorded;

public sealed class PassReaderTests : IDisposable
{
    private const string Whole = """
        name: Second pass, one hole down
        when: 2026-09-12 14:10
        car: ../door-car.yaml
        changed:
          rear.linkage.upper.body.use: 3
          rear.tire.pressure.set: 15 psi
          rear.damper.compression: {speed: 0 1 5 in/s, force: 0 40 130 lb}
        track: left lane, sprayed, cool
        weather: 18 °C, dry, head wind
        logs:
          - {file: pass-2.csv, mapping: logger.yaml}
        seen:
          frames_per_second: 240
          release_frame: 118
          first_up: rear
          rear_moves: Frame 131
          front_moves: frame 147 ±2
          rear_open: 0.22 ±0.02 s
          front_tires_leave: never
          front_tires_land: after 0.9 s
          spin_starts: before frame 142
          shake: light
          marks: 60 330 ft
          times: 1.520 ±0.004 4.310 s
        closed: 2026-09-13
        corrections:
          - {when: 2026-09-14, path: seen.rear_open, was: 0.21 s, is: 0.22 ±0.02 s, why: Counted again}
        notes: Shook a little at 60 ft.
        """;

    private readonly Folder _folder = new();

    public PassReaderTests()
    {
        _folder.Write("door-car.yaml", Files.DoorCarText);
        _folder.Write("season/pass-2.csv", "time\n");
        _folder.Write("season/logger.yaml", "");
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Read_EveryKey_IsThereInSi()
    {
        PassFile pass = Read(Whole);

        Assert.Equal(("Second pass, one hole down", "2026-09-12 14:10", new DateTime(2026, 9, 12, 14, 10, 0)), (pass.Name, pass.When, pass.Time!.Value));
        Assert.Equal(("left lane, sprayed, cool", "18 °C, dry, head wind", "Shook a little at 60 ft."), (pass.Track, pass.Weather, pass.Notes));
        Assert.Equal(
            [("rear.linkage.upper.body.use", "3"), ("rear.tire.pressure.set", "15 psi"), ("rear.damper.compression", "{speed: 0 1 5 in/s, force: 0 40 130 lb}")], pass.Changed);
        Assert.True(File.Exists(pass.Logs[0].File));
        Assert.True(File.Exists(pass.Logs[0].Mapping));
        Assert.True(pass.IsClosed);
        Assert.Equal(new PassCorrection("2026-09-14", "seen.rear_open", "0.21 s", "0.22 ±0.02 s", "Counted again"), pass.Corrections.Single());

        SeenFacts seen = pass.Seen;
        Assert.Equal((FirstUp.Rear, Shake.Light, 240.0, 6.35e-3), (seen.FirstUp, seen.Shake, seen.FramesPerSecond, seen.Visible));
        Assert.True(seen.FrontTiresLeave!.IsNever);
        Assert.Equal((SeenBound.After, 0.9), (seen.FrontTiresLand!.Bound, seen.FrontTiresLand.Time));
        Assert.Equal((SeenBound.Before, 0.1), (seen.SpinStarts!.Bound, Math.Round(seen.SpinStarts.Time, 12)));
        Assert.Equal([60 * 0.3048, 330 * 0.3048], seen.Marks.Select(mark => Math.Round(mark.Distance, 9)));
        Assert.Equal(["1.52 ±0.004 s", "4.31 s"], seen.Marks.Select(mark => mark.Written));
    }

    [Fact]
    public void Read_Moments_HaveTheDoubtTheReferenceSays()
    {
        SeenFacts seen = Read(Whole).Seen;

        // One frame either way, equally likely: 1/√3 frames. With ±, nineteen times in twenty: 1/1.96 of it.
        Assert.Equal(13 / 240.0, seen.RearMoves!.Time, 12);
        Assert.Equal(1 / 240.0 / Math.Sqrt(3), seen.RearMoves.Sd, 12);
        Assert.Equal(2 / 240.0 / 1.959964, seen.FrontMoves!.Sd, 7);
        Assert.Equal(0.02 / 1.959964, seen.RearOpen!.Sd, 7);
        Assert.Equal(0.02 / Math.Sqrt(3), seen.FrontTiresLand!.Sd, 12);
        Assert.Equal([0.004 / 1.959964, 0.002 / 1.959964], seen.Marks.Select(mark => Math.Round(mark.Sd, 7)), (a, b) => Math.Abs(a - b) < 1e-7);
    }

    [Fact]
    public void Read_Changed_IsPutIntoTheCarAndLeavesItsFileAlone()
    {
        PassFile pass = Read(Whole);

        Assert.Equal("3", pass.Scenario.FindText("rear.linkage.upper.body.use"));
        Assert.Equal("2", pass.CarScenario.FindText("rear.linkage.upper.body.use"));
        Assert.Equal(pass.Scenario.ContentHash, pass.CarScenario.With(pass.Changed).Scenario!.ContentHash);
        Assert.Contains("pass.yaml:6:", pass.Scenario.PlaceOf("rear.tire.pressure.set"), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_NothingButTheCar_IsAPass()
    {
        PassFile pass = Read("car: ../door-car.yaml\nnotes:\n");

        Assert.Equal("pass", pass.Name);
        Assert.True(pass.Seen.IsEmpty);
        Assert.Null(pass.Time);
        Assert.False(pass.IsClosed);
        Assert.Equal(1.8, pass.Run.Duration);
    }

    [Fact]
    public void Read_CarChangedSince_Warns()
    {
        string hash = Read("car: ../door-car.yaml\n").CarScenario.ContentHash;

        Assert.Empty(Result($"car: ../door-car.yaml\ncar_hash: {hash}\n").Warnings);
        Assert.Empty(Result($"car: ../door-car.yaml\ncar_hash: {hash[..10]}\nchanged: {{rear.tire.pressure.set: 15 psi}}\n").Warnings);
        Diagnostic warning = Assert.Single(Result("car: ../door-car.yaml\ncar_hash: 0123456789\n").Warnings);
        Assert.Equal((2, 11), (warning.Line, warning.Column));
        Assert.Contains(hash[..10], warning.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_Sealed_WarnsOnlyWhenValuesChanged()
    {
        string text = "car: ../door-car.yaml\nclosed: 2026-09-13\nseen: {rear_moves: 0.1 s}\n";
        string seal = Read(text).Digest;

        Assert.True(Read(text + $"seal: {seal}\nnotes: More of them.\n").IsSealWhole);
        Assert.True(Read($"# Looked at again\nseal: '{seal}'\nseen:\n  rear_moves:   0.1 s\nclosed: 2026-09-13\ncar: ../door-car.yaml\n").IsSealWhole);
        PassResult changed = Result(text.Replace("0.1 s", "0.2 s", StringComparison.Ordinal) + $"seal: {seal}\n");
        Assert.False(changed.Pass!.IsSealWhole);
        Assert.Contains("season correct", Assert.Single(changed.Warnings).Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_TimesWithoutMarks_AreAtTheCarsMarks()
    {
        SeenMark mark = Assert.Single(Read("car: ../door-car.yaml\nseen: {times: 1.52 s}\n").Seen.Marks);

        Assert.Equal(18.288, mark.Distance, 9);
    }

    [Theory]
    [InlineData("", "", 1.0)]
    [InlineData("", "rear_open: 1.4 s", 1.65)]
    [InlineData("", "marks: 60 ft, times: 1.52 s", null)]
    [InlineData("  duration: 0.5 s\n", "marks: 60 ft, times: 1.52 s", 2.27)]
    [InlineData("  duration: 3 s\n", "marks: 60 ft, times: 1.52 s", 3.0)]
    public void Run_WhateverWasSeen_ComesToIt(string run, string seen, double? duration)
    {
        string car = Files.DoorCarWith("  duration: 1.8 s\n", run).Replace("  marks: 60 ft\n", "", StringComparison.Ordinal);
        _folder.Write("other.yaml", car);
        RunSettings settings = Read($"car: ../other.yaml\nseen: {{{seen}}}\n").Run;

        Assert.Equal(duration, settings.Duration is { } set ? Math.Round(set, 9) : null);
        Assert.Equal(seen.Contains("marks", StringComparison.Ordinal) ? 1 : 0, settings.Marks.Count);
    }

    [Fact]
    public void Read_SeveralMistakes_AreToldAllAtOnceInPassAndCar()
    {
        PassResult result = Result("car: ../door-car.yaml\nwhen: today\nchanged: {rear.spring.rat: 1 lb/in}\nseen: {rear_moves: 5, first_up: up}\n");

        Assert.Equal([2, 3, 4, 4], result.Errors.Select(error => error.Line).Order());
        Assert.Contains(result.Errors, error => error.Mend.Contains("rear.spring.rate", StringComparison.Ordinal));
    }

    [Fact]
    public void ScenarioReader_OnAPassFile_SaysWhatItIs()
    {
        string path = _folder.Write("season/pass.yaml", Whole);

        Assert.Contains(StandingCheck.Reader(ReadPurpose.Run).Read(path).Errors, error => error.Mend.StartsWith("this looks like a pass file", StringComparison.Ordinal));
    }

    [Fact]
    public void Schema_OnAPassWithEveryKey_AcceptsIt()
    {
        JsonSchema schema = JsonSchema.FromText(ScenarioSchema.PassToJsonText());

        Assert.True(schema.Evaluate(EditorYaml.Documents(Whole + "\ncar_hash: 0123456789\nseal: 0123456789abcdef").Single()).IsValid);
    }

    private PassFile Read(string text)
    {
        PassResult result = Result(text);
        Assert.Empty(result.Errors);
        return result.Pass!;
    }

    private PassResult Result(string text) =>
        new PassReader(StandingCheck.Reader(ReadPurpose.Run)).Read(_folder.Write("season/pass.yaml", text));
}
