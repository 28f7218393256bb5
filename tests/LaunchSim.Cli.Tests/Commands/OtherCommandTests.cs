using System.Text.Json;
using LaunchSim.Cli.Terminal;
using LaunchSim.Reports.Words;
using Snapshooter.Xunit;

namespace LaunchSim.Cli.Tests.Commands;

public class OtherCommandTests
{
    [Fact]
    public void Check_CarThatCannotStand_IsTold()
    {
        Printed printed = Printed.By("check", Files.DoorCar, "--set", "car.ride_height.rear=+6 in");

        Assert.Equal(ExitCode.BadInput, printed.Code);
        Assert.Contains("top stop", printed.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Geometry_DoorCar_PrintsTheTables()
    {
        Printed printed = Printed.By("geometry", Files.DoorCar);

        Assert.Equal(ExitCode.Done, printed.Code);
        Snapshot.Match(printed.Output);
    }

    [Fact]
    public void Geometry_PartFile_ComparesAllBrackets()
    {
        Printed printed = Printed.By("geometry", Files.Test("part"));

        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.Contains("needs rear.tire.loaded_radius", printed.Output, StringComparison.Ordinal);
        Snapshot.Match(printed.Output);
    }

    [Fact]
    public void Geometry_LadderAndParallelBars_HaveWords()
    {
        Assert.Contains("ladder bar", Printed.By("geometry", Files.Test("ladder")).Output, StringComparison.Ordinal);
        Assert.Contains("instant centre is far away", Printed.By("geometry", Files.Test("parallel")).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Geometry_PercentAndLength_KeepWhatFits()
    {
        string output = Printed.By("geometry", Files.DoorCar, "--percent", "150 to 175", "--length", "25 to 50 in").Output;

        Assert.Contains("2 of 3 do not fit", output, StringComparison.Ordinal);
        Assert.Contains("165 %", output, StringComparison.Ordinal);
        Assert.DoesNotContain("116 %", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Geometry_JsonAndCsv_HoldTheTables()
    {
        using var folder = new Folder();

        Printed printed = Printed.By("geometry", Files.DoorCar, "--json", "--csv", folder.Path("g.csv"));

        using JsonDocument document = JsonDocument.Parse(printed.Output);
        Assert.Equal(3, document.RootElement.GetProperty("holes").GetArrayLength());
        int travel = document.RootElement.GetProperty("travel").GetArrayLength();
        string[] lines = File.ReadAllLines(folder.Path("g.csv"));
        Assert.Equal(1 + 3 + travel, lines.Length);
        Assert.All(lines, line => Assert.Equal(lines[0].Split(',').Length, line.Split(',').Length));
        Assert.Equal(ExitCode.Done, Printed.By("geometry", Files.DoorCar, "--csv", folder.Path("g.csv")).Code);
        Printed.By("run", Files.DoorCar, "--csv", folder.Path("g.csv")).IsRefused();
    }

    [Fact]
    public void Schema_Printed_IsJson()
    {
        using JsonDocument document = JsonDocument.Parse(Printed.By("schema").Output);

        Assert.Contains("2020-12", document.RootElement.GetProperty("$schema").GetString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--help")]
    [InlineData("run --help")]
    [InlineData("geometry --help")]
    [InlineData("--version")]
    public void Help_Asked_ExitsZero(string line)
    {
        Printed printed = Printed.By(line.Split(' '));

        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.NotEmpty(printed.Output);
    }
}
