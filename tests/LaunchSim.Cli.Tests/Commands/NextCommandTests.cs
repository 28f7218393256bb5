using System.Text.Json;
using LaunchSim.Cli.Terminal;
using Snapshooter.Xunit;

namespace LaunchSim.Cli.Tests.Commands;

public class NextCommandTests
{
    [Fact]
    public void Next_OfTheDoorCar_IsToldInWordsAndTables()
    {
        Printed printed = Printed.By("next", Files.DoorCar);

        Assert.Equal((ExitCode.Done, ""), (printed.Code, printed.Error));
        Snapshot.Match(printed.Output);
    }

    [Fact]
    public void Next_WithoutChoices_OffersUsualChangesAndSaysSo()
    {
        using var folder = new Folder();
        string text = File.ReadAllText(Files.DoorCar);
        string car = folder.Write("car.yaml", text[..text.IndexOf("choices:", StringComparison.Ordinal)]);

        Printed printed = Printed.By("next", car, "--profile", "stay-down", "--units", "si");

        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.Contains("The file has no `choices`", printed.Output, StringComparison.Ordinal);
        Assert.Contains("the car staying down", printed.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Next_WithDoubt_SaysInWhatShareEachHelps()
    {
        string[] command = ["next", Files.DoorCar, "--doubt", "--cars", "50", "--json"];
        Printed printed = Printed.By(command);

        using var document = JsonDocument.Parse(printed.Output);
        JsonElement doubt = document.RootElement.GetProperty("doubt");
        Assert.Equal(50, doubt.GetProperty("cars").GetInt32());
        Assert.All(doubt.GetProperty("changes").EnumerateArray(), change =>
        {
            double share = change.GetProperty("helps_share").GetDouble();
            Assert.InRange(share, change.GetProperty("helps_share_low").GetDouble() - 1e-12, change.GetProperty("helps_share_high").GetDouble() + 1e-12);
        });
        Assert.Equal(printed.Output, Printed.By(command).Output);
    }

    [Theory]
    [InlineData("--cars", "100")]
    [InlineData("--doubt", "--cars", "7")]
    [InlineData("--doubt", "--cars", "many")]
    [InlineData("--typical")]
    [InlineData("--profile", "in step")]
    public void Next_OptionsThatAreWrong_AreRefused(params string[] options) => Printed.By(["next", Files.DoorCar, .. options]).IsRefused();

    [Fact]
    public void Next_PartOfACar_IsRefused() => Printed.By("next", Files.Test("part")).IsRefused();

    [Fact]
    public void Next_WithCsv_WritesEveryChange()
    {
        using var folder = new Folder();

        Printed printed = Printed.By("next", Files.DoorCar, "--csv", folder.Path("n.csv"));

        string[] lines = File.ReadAllLines(folder.Path("n.csv"));
        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.StartsWith("change,steps,minutes,helps,score_points,", lines[0], StringComparison.Ordinal);
        Assert.StartsWith("as it stands,", lines[1], StringComparison.Ordinal);
        Assert.Contains(lines, line => line.StartsWith("rear.damper.extension.set=4,-2,1,yes,", StringComparison.Ordinal));
        Assert.All(lines, line => Assert.Equal(lines[0].Count(c => c == ','), line.Count(c => c == ',')));
    }

    [Fact]
    public void Next_WithVary_TriesThatInThePlaceOfTheChoices()
    {
        Printed printed = Printed.By("next", Files.DoorCar, "--vary", "rear.tire.pressure.set=15 16 17 psi", "--json");

        using var document = JsonDocument.Parse(printed.Output);
        Assert.Equal(["15 psi", "17 psi"], document.RootElement.GetProperty("singles").EnumerateArray().Select(change => change.GetProperty("changes")[0].GetProperty("value").GetString()!).Order(StringComparer.Ordinal));
    }
}
