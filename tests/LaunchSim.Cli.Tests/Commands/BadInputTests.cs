using System.Text;
using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Tests.Commands;

public class BadInputTests
{
    public static TheoryData<string, string> BadTexts { get; } = new()
    {
        { "empty", "" },
        { "not yaml", "{{{{" },
        { "a list", "- 1\n- 2\n" },
        { "unknown key", Files.DoorCarWith("wheelbase:", "wheelbas:") },
        { "missing key", Files.DoorCarWith("  cg_height: 21 in\n", "") },
        { "doubled key", Files.DoorCarWith("  cg_height: 21 in\n", "  cg_height: 21 in\n  cg_height: 22 in\n") },
        { "wrong dimension", Files.DoorCarWith("cg_height: 21 in", "cg_height: 21 lb") },
        { "no unit", Files.DoorCarWith("cg_height: 21 in", "cg_height: 21") },
        { "unit typo", Files.DoorCarWith("cg_height: 21 in", "cg_height: 21 inn") },
        { "decimal comma", Files.DoorCarWith("cg_height: 21 in", "cg_height: 21,5 in") },
        { "not a number", Files.DoorCarWith("cg_height: 21 in", "cg_height: .nan in") },
        { "infinite", Files.DoorCarWith("cg_height: 21 in", "cg_height: .inf in") },
        { "too large", Files.DoorCarWith("cg_height: 21 in", "cg_height: 1e400 in") },
        { "negative", Files.DoorCarWith("cg_height: 21 in", "cg_height: -21 in") },
        { "other digits", Files.DoorCarWith("cg_height: 21 in", "cg_height: ٢١ in") },
        { "tab", Files.DoorCarWith("  cg_height: 21 in", "\tcg_height: 21 in") },
        { "unsprung above the scales", Files.DoorCarWith("unsprung: 340 lb", "unsprung: 1640 lb") },
        { "bar below the floor", Files.DoorCarWith("wheel: -58 4 in", "wheel: -58 -1 in") },
        { "singular linkage", Files.DoorCarWith("axle: 2.5 17.0 in", "axle: 1.0 11.6 in").Replace("2: 14.0 14.6 in", "2: 1.0 30 in", StringComparison.Ordinal) },
        { "spring that would pull", Files.DoorCarWith("body: 0.5 24.0 in", "body: 0.5 -24.0 in") },
        { "deep nesting", string.Concat(Enumerable.Repeat("{a: ", 5000)) },
        { "alias bomb", "a: &a [x,x]\nb: &b [*a,*a,*a,*a,*a,*a,*a,*a]\nc: &c [*b,*b,*b,*b,*b,*b,*b,*b]\nd: [*c,*c,*c,*c,*c,*c]\n" },
        { "cycle of bases", "base: bad.yaml\n" },
        { "no such base", "base: nowhere.yaml\n" },
    };

    [Theory]
    [MemberData(nameof(BadTexts))]
    public void Run_BadText_IsRefusedWithItsPlace(string kind, string text)
    {
        using var folder = new Folder();
        string file = folder.Write("bad.yaml", text);

        Printed printed = Printed.By("run", file, "--out", folder.Path("out"), "--csv", folder.Path("a.csv"));

        printed.IsRefused();
        Assert.True(printed.Error.Contains($"{file}:", StringComparison.Ordinal), kind);
        Assert.Matches(@":\d+:\d+: error: ", printed.Error);
        Assert.Equal(["bad.yaml"], folder.Names());
    }

    [Fact]
    public void Run_UnknownOption_IsNotTakenForAFile()
    {
        Printed printed = Printed.By("run", Files.DoorCar, "--quite");

        printed.IsRefused();
        Assert.Contains("no option `--quite`", printed.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_OptionForAValue_IsNamedAndNothingIsWritten()
    {
        Printed printed = Printed.By("run", Files.DoorCar, "--csv", "--json");

        printed.IsRefused();
        Assert.Contains("--csv: found the option --json in the place of a value", printed.Error, StringComparison.Ordinal);
        Assert.False(File.Exists("--json"));
    }

    [Fact]
    public void Run_ControlCharacter_IsNotGivenBackToTheTerminal()
    {
        Printed printed = Printed.By("run", Files.DoorCar, "--set", "\u001b[31m=1");

        printed.IsRefused();
        Assert.Contains("U+001B in argument 4", printed.Error, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', printed.Error);
    }

    [Fact]
    public void Run_LinkToNowhere_NamesTheMissingFolder()
    {
        using var folder = new Folder();
        _ = File.CreateSymbolicLink(folder.Path("a.csv"), folder.Path(Path.Combine("none", "b.csv")));

        Printed printed = Printed.By("run", Files.DoorCar, "--csv", folder.Path("a.csv"));

        printed.IsRefused();
        Assert.Contains($"there is no folder `{folder.Path("none")}`", printed.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_ClosedErrorStream_StillReturnsACode()
    {
        using var output = new StringWriter();
        using var error = new StreamWriter(new Closed()) { AutoFlush = true };

        Assert.Equal(ExitCode.Failed, App.Run(["run", "nowhere.yaml"], new Session(output, error, CancellationToken.None)));
    }

    // What a descriptor does that nobody opened.
    private sealed class Closed : MemoryStream
    {
        public override void Write(byte[] buffer, int offset, int count) => throw new UnauthorizedAccessException();

        public override void Write(ReadOnlySpan<byte> buffer) => throw new UnauthorizedAccessException();

        public override void Flush()
        {
        }
    }

    [Fact]
    public void Run_BytesThatAreNoText_AreRefused()
    {
        using var folder = new Folder();
        byte[] noise = new byte[5000];
        new Random(1).NextBytes(noise);

        Printed.By("run", folder.Write("noise.yaml", noise)).IsRefused();
        Printed.By("run", folder.Write("utf16.yaml", Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes("name: x")).ToArray())).IsRefused();
    }

    [Fact]
    public void Run_FileOf50Megabytes_IsRefused()
    {
        using var folder = new Folder();
        string file = folder.Path("large.yaml");
        using (FileStream stream = File.Create(file))
        {
            stream.SetLength(50_000_000);
        }

        Printed.By("run", file).IsRefused();
    }

    [Fact]
    public void Run_WindowsText_IsRead()
    {
        using var folder = new Folder();
        string file = folder.Write("crlf.yaml", "\uFEFF" + File.ReadAllText(Files.DoorCar).Replace("\n", "\r\n", StringComparison.Ordinal));

        Assert.Equal(Printed.By("run", Files.DoorCar).Output, Printed.By("run", file).Output);
    }

    [Fact]
    public void Run_AllMistakes_AreToldAtOnce()
    {
        using var folder = new Folder();
        string first = folder.Write("first.yaml", Files.DoorCarWith("cg_height: 21 in", "cg_height: 21").Replace("unsprung: 150 lb", "unsprung: -150 lb", StringComparison.Ordinal));
        string second = folder.Write("second.yaml", "name: nothing else\n");

        Printed printed = Printed.By("run", first, second, Files.DoorCar, "--out", folder.Path("out"));

        printed.IsRefused();
        Assert.Contains("car.cg_height", printed.Error, StringComparison.Ordinal);
        Assert.Contains("front.unsprung", printed.Error, StringComparison.Ordinal);
        Assert.Contains($"{second}:", printed.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder.Path("out")));
    }

    public static TheoryData<string[]> BadArguments { get; } = new()
    {
        Array.Empty<string>(),
        new[] { "rnu" },
        new[] { "run" },
        new[] { "run", Files.DoorCar, "--nonsense" },
        new[] { "run", Files.DoorCar, "--csv" },
        new[] { "run", Files.DoorCar, "--units", "metric" },
        new[] { "run", Files.DoorCar, "--units", "--json" },
        new[] { "run", Files.DoorCar, "--csv", "--json" },
        new[] { "run", Files.DoorCar, "--tolerance", "--quiet" },
        new[] { "run", Files.DoorCar, "--set", "--set", "rear.spring.rate=175 lb/in" },
        new[] { "geometry", Files.DoorCar, "--percent", "--json" },
        new[] { "run", Files.DoorCar, "--\u001b[31mred" },
        new[] { "run", Files.DoorCar, "--set", "rear.spring.rate" },
        new[] { "run", Files.DoorCar, "--set", "=1" },
        new[] { "run", Files.DoorCar, "--set", "rear.sprung.rate=175 lb/in" },
        new[] { "run", Files.DoorCar, "--set", "rear.spring.rate=175" },
        new[] { "run", Files.DoorCar, "--set", "rear.spring.rate=" },
        new[] { "run", Files.DoorCar, "--tolerance", "0" },
        new[] { "run", Files.DoorCar, "--tolerance", "NaN" },
        new[] { "run", Files.DoorCar, "--tolerance", "1,5" },
        new[] { "run", Files.DoorCar, "--tolerance", "small" },
        new[] { "run", Files.DoorCar + "x" },
        new[] { "run", "" },
        new[] { "run", "@nowhere" },
        new[] { "run", "no\0where" },
        new[] { "run", new string('x', 5000) },
        new[] { "run", Files.Test("part") },
        new[] { "check", "nowhere.yaml" },
        new[] { "geometry", "nowhere.yaml" },
        new[] { "geometry", Files.DoorCar, "--percent", "150" },
        new[] { "geometry", Files.DoorCar, "--percent", "175 to 150" },
        new[] { "geometry", Files.DoorCar, "--length", "30 to 50" },
        new[] { "geometry", Files.DoorCar, "--length", "30 to 50 lb" },
        new[] { "geometry", Files.DoorCar, "--length", "a to b in" },
    };

    [Theory]
    [MemberData(nameof(BadArguments))]
    public void Command_BadArguments_AreRefused(string[] args)
    {
        Printed printed = Printed.By(args);

        Assert.True(printed.Code == ExitCode.BadInput, $"exit {printed.Code}: {printed.Error}");
        Assert.NotEmpty(printed.Error);
        printed.HasNoStackTrace();
    }

    [Fact]
    public void Command_MistypedName_IsOfferedTheNearest() =>
        Assert.Contains("run", Printed.By("rnu").Error, StringComparison.Ordinal);

    [Fact]
    public void Run_EmptyFolder_IsRefused()
    {
        using var folder = new Folder();

        Printed.By("run", folder.At).IsRefused();
    }

    [Fact]
    public void Run_CsvOverAScenario_IsRefusedAndLeavesIt()
    {
        using var folder = new Folder();
        string file = folder.Write("car.yaml", File.ReadAllText(Files.DoorCar));
        string other = folder.Write("base.txt", File.ReadAllText(Files.DoorCar));
        string variant = folder.Write("variant.yaml", "base: base.txt\n");

        Printed.By("run", file, "--csv", file).IsRefused();
        Printed.By("run", file, "--csv", folder.Path("new.yaml")).IsRefused();
        Printed.By("run", variant, "--csv", other).IsRefused();
        Printed.By("run", other, "--csv", other).IsRefused();

        Assert.Equal(File.ReadAllText(Files.DoorCar), File.ReadAllText(file));
        Assert.Equal(File.ReadAllText(Files.DoorCar), File.ReadAllText(other));
        Assert.Equal(["base.txt", "car.yaml", "variant.yaml"], folder.Names());
    }

    [Fact]
    public void Run_CsvOverAForeignFile_IsRefusedAndLeavesIt()
    {
        using var folder = new Folder();
        string notes = folder.Write("notes.csv", "lap,time\n1,9.99\n");
        folder.Write("out/door-car.json", "{}");

        Printed.By("run", Files.DoorCar, "--csv", notes).IsRefused();
        Printed.By("run", Files.DoorCar, "--out", folder.Path("out")).IsRefused();

        Assert.Equal("lap,time\n1,9.99\n", File.ReadAllText(notes));
        Assert.Equal(["notes.csv", "out", "out/door-car.json"], folder.Names());
    }

    [Fact]
    public void Run_OutputThatCannotBe_IsRefused()
    {
        using var folder = new Folder();
        string file = folder.Write("file.txt", "x");

        Printed.By("run", Files.DoorCar, "--csv", folder.Path("no/where/a.csv")).IsRefused();
        Printed.By("run", Files.DoorCar, "--csv", Path.Combine(file, "a.csv")).IsRefused();
        Printed.By("run", Files.DoorCar, "--out", file).IsRefused();
        Printed.By("run", Files.DoorCar, "--csv", folder.Path(new string('x', 252) + ".csv")).IsRefused();
        Printed.By("run", Files.DoorCar, "--out", folder.Path(new string('x', 300))).IsRefused();
        Printed.By("run", Files.DoorCar, Files.Test("ladder"), "--csv", folder.Path("a.csv")).IsRefused();
        Assert.Equal(["file.txt"], folder.Names());
    }

    [Fact]
    public void Run_ClashOfNames_IsRefusedBeforeAnythingRuns()
    {
        using var folder = new Folder();
        string a = folder.Write("a/car.yaml", File.ReadAllText(Files.DoorCar)), b = folder.Write("b/car.yaml", File.ReadAllText(Files.DoorCar));

        Printed printed = Printed.By("run", a, b, "--out", folder.Path("out"));

        printed.IsRefused();
        Assert.Contains("would both be written", printed.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder.Path("out")));
    }
}
