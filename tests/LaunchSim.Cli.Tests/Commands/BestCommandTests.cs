using System.Text.Json;
using LaunchSim.Cli.Terminal;
using Snapshooter.Xunit;

namespace LaunchSim.Cli.Tests.Commands;

public class BestCommandTests
{
    private const string Holes = "rear.linkage.upper.body.use=all", Pressure = "rear.tire.pressure.set=15 16 17 psi";

    [Fact]
    public void Best_OfTheDoorCar_IsToldInWordsAndTables()
    {
        Printed printed = Printed.By("best", Files.DoorCar, "--vary", Holes, "--vary", "rear.damper.extension.set=all", "--vary", Pressure);

        Assert.Equal((ExitCode.Done, ""), (printed.Code, printed.Error));
        Snapshot.Match(printed.Output);
    }

    [Fact]
    public void Best_AsJson_HasTheSameBest()
    {
        Printed printed = Printed.By("best", Files.DoorCar, "--vary", Holes, "--vary", Pressure, "--json");

        using var document = JsonDocument.Parse(printed.Output);
        Assert.True(document.RootElement.GetProperty("is_proven").GetBoolean());
        Assert.Equal(9, document.RootElement.GetProperty("set_ups_run").GetInt32());
        Assert.Equal(9, document.RootElement.GetProperty("best").GetArrayLength());
    }

    [Fact]
    public void Best_FromAFinishedTable_SaysTheSameWithoutALaunch()
    {
        using var folder = new Folder();
        string table = folder.Path("t.csv");
        Printed first = Printed.By("best", Files.DoorCar, "--vary", Holes, "--vary", Pressure, "--csv", table);

        Printed again = Printed.By("best", Files.DoorCar, "--vary", Holes, "--vary", Pressure, "--csv", table, "--resume");

        Assert.Equal(ExitCode.Done, first.Code);
        Assert.Equal(first.Output, again.Output);
        Assert.Equal(10, File.ReadAllLines(table).Length);
    }

    [Fact]
    public void Best_BeyondItsBudget_SearchesAndSaysThatItIsNotProven()
    {
        Printed printed = Printed.By("best", Files.DoorCar, "--vary", "rear.damper.extension.set=0 to 12 by 0.5", "--vary", "rear.spring.rate=100 to 200 by 5 lb/in", "--budget", "60");

        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.Contains("that none is better is not proven", printed.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Best_WithoutAnythingToChoose_IsRefused()
    {
        using var folder = new Folder();
        string text = File.ReadAllText(Files.DoorCar);
        string car = folder.Write("car.yaml", text[..text.IndexOf("choices:", StringComparison.Ordinal)]);

        Printed printed = Printed.By("best", car);

        printed.IsRefused();
        Assert.Contains("found nothing to choose from", printed.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("rear.linkage.uper.body.use=all", "did you mean `rear.linkage.upper.body.use`?")]
    [InlineData("rear.spring.rate=150 to 130 by 5 lb/in", "from the lower to the higher")]
    [InlineData("rear.spring.rate=-1 2 lb/in", "above 0")]
    [InlineData("rear.damper.extension.set=6 30", "a click")]
    [InlineData("rear.spring.rate=all", "`all` at a number")]
    [InlineData("rear.tire.pressure.set", "path=values")]
    [InlineData("rear.linkage.upper.body=1 2 in", "a whole point")]
    public void Best_VaryThatIsWrong_IsRefusedWithAMend(string vary, string says)
    {
        Printed printed = Printed.By("best", Files.DoorCar, "--vary", vary);

        printed.IsRefused();
        Assert.Contains(says, printed.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Best_AimsThatContradictThemselves_AreRefused()
    {
        Printed printed = Printed.By("best", Files.DoorCar, "--vary", Holes, "--set", "aims.separation.from=5 in");

        printed.IsRefused();
        Assert.Contains("separation", printed.Error, StringComparison.Ordinal);
    }
}
