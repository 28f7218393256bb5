using System.Globalization;
using System.Text.RegularExpressions;
using LaunchSim.Cli.Terminal;
using Snapshooter.Xunit;

namespace LaunchSim.Cli.Tests.Commands;

public class CheckCommandTests
{
    [Fact]
    public void Check_WholeFile_TellsWhatDecides()
    {
        Printed printed = Printed.By("check", Files.DoorCar);

        Assert.Equal((ExitCode.Done, ""), (printed.Code, printed.Error));
        Assert.StartsWith($"{Files.DoorCar}: no errors, no warnings\n  needed for a run: nothing more\n", printed.Output, StringComparison.Ordinal);
        Snapshot.Match(printed.Output[(Files.DoorCar.Length + 1)..]);
    }

    [Fact]
    public void Check_PartFile_ListsWhatARunLacksWithTypicalValuesAndHomeTests()
    {
        Printed printed = Printed.By("check", Files.Test("part"));

        Assert.Equal((ExitCode.Done, ""), (printed.Code, printed.Error));
        Snapshot.Match(printed.Output[(Files.Test("part").Length + 1)..]);
    }

    [Fact]
    public void Check_NumberThatIsNotUsual_WarnsWithItsPlaceAndGoesOn()
    {
        using var folder = new Folder();
        string file = folder.Write("mine.yaml", Files.DoorCarWith("vertical_rate: 800 lb/in", "vertical_rate: 1600 lb/in"));
        Printed printed = Printed.By("check", file);

        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.Matches(@"mine\.yaml:\d+:20: warning: rear\.tire\.vertical_rate: found `1600 lb/in`, outside the usual 440 to 1350 lb/in .*; mend: did you mean 800 lb/in", printed.Error);
        Assert.Contains("no errors, 1 warning\n", printed.Output, StringComparison.Ordinal);
        Assert.Contains("numbers that decide", printed.Output, StringComparison.Ordinal);

        Printed run = Printed.By("run", file, "--quiet");
        Assert.Equal((ExitCode.Done, ""), (run.Code, run.Error));
    }

    [Theory]
    [InlineData("car.wheelbase", "1e30 m")]
    [InlineData("car.cg_height", "1e-30 in")]
    [InlineData("rear.spring.rate", "1e200 lb/in")]
    [InlineData("rear.tire.vertical_rate", "1e-20 N/m")]
    [InlineData("rear.damper.compression.force", "0 1e100 1e100 1e100 1e100 1e100 N")]
    [InlineData("car.scales.front", "1e18 N")]
    [InlineData("front.spring.motion_ratio", "1e-9")]
    [InlineData("driveline.torque", "0 1e12 1e12 1e12 1e12 lb-ft")]
    public void Check_NumberBeyondAllSense_IsToldInWords(string path, string value)
    {
        Printed printed = Printed.By("check", Files.DoorCar, "--set", $"{path}={value}", "--set", "run.duration=0.2 s");

        printed.HasNoStackTrace();
        Assert.Contains(path, printed.Error, StringComparison.Ordinal);
        Assert.True(printed.Code is ExitCode.Done or ExitCode.BadInput, printed.Error);
    }

    [Fact]
    public void Check_LaunchThatStops_SaysSoInThePlaceOfWhatDecides()
    {
        Printed printed = Printed.By("check", Files.Test("stalls"));

        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.Contains("The run stopped at", printed.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("decide this car's answer most", printed.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_WithUnits_SpeaksThem()
    {
        string si = Printed.By("check", Files.DoorCar, "--units", "si", "--set", "run.duration=0.4 s").Output;
        Assert.Matches(@"by \d+ N, from", si);
        Assert.DoesNotMatch(@"by \d+ lb, from", si);
    }

    [Fact]
    public void Check_SeveralFiles_TellsEachAndFailsForOne()
    {
        Printed printed = Printed.By("check", Files.Test("part"), Path.Combine(Files.Tests, "nowhere.yaml"));
        Assert.Equal(ExitCode.BadInput, printed.Code);
    }

    [Fact]
    public void Check_Cancelled_ReturnsInterrupted()
    {
        using var source = new CancellationTokenSource();
        source.Cancel();
        Assert.Equal(ExitCode.Interrupted, Printed.By(source.Token, "check", Files.DoorCar).Code);
    }

    [Theory]
    [InlineData("door-car")]
    [InlineData("part")]
    public void Check_OnATerminal_KeepsWithinItsWidth(string name)
    {
        using var output = new StringWriter { NewLine = "\n" };
        string file = name == "part" ? Files.Test(name) : Files.DoorCar;
        Assert.Equal(0, App.Run(["check", file, "--set", "run.duration=0.4 s"], new Session(output, TextWriter.Null, CancellationToken.None) { Screen = new Screen(true, 80, false) }));
        string[] lines = Regex.Replace(output.ToString(), "\u001b\\[[0-9;]*m", "").Split('\n');

        // The first line names the file, however long that is.
        Assert.All(lines.Skip(1), line => Assert.InRange(new StringInfo(line).LengthInTextElements, 0, 80));
    }

    [Fact]
    public void Commands_OfThePage_NameEveryFigureOfTheAnswer()
    {
        string page = File.ReadAllText(Path.Combine(Files.Root, "docs", "commands.md"));
        Assert.All(Reports.Decisive.AnswerFigures.All, figure => Assert.Contains(figure.ScaleWords, page, StringComparison.Ordinal));
    }
}
