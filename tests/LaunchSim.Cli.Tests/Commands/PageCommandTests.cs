using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Tests.Commands;

public class PageCommandTests
{
    private const string Short = "run.duration=0.3 s";
    private static readonly string LadderBar = Path.Combine(Path.GetDirectoryName(Files.DoorCar)!, "ladder-bar.yaml");

    [Fact]
    public void Page_OfOneScenario_IsOneFileThatAllowsOnlyItsOwn()
    {
        using var folder = new Folder();

        Printed printed = Printed.By("page", Files.DoorCar, "--set", Short, "--out", folder.Path("door.html"));

        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.Equal($"wrote {folder.Path("door.html")}\n", printed.Output);
        Assert.Equal(["door.html"], folder.Names());
        string page = File.ReadAllText(folder.Path("door.html"));
        Assert.StartsWith("<!DOCTYPE html>", page, StringComparison.Ordinal);
        Assert.Contains("default-src 'none'; script-src 'sha256-", page, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe-", page, StringComparison.Ordinal);
        Assert.DoesNotContain("http:", page.Replace("http://www.w3.org/2000/svg", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void Page_OnAnEarlierPage_ReplacesIt()
    {
        using var folder = new Folder();
        Printed.By("page", Files.DoorCar, "--set", Short, "--out", folder.Path("p.html"));

        Printed again = Printed.By("page", Files.DoorCar, LadderBar, "--set", Short, "--units", "si", "--out", folder.Path("p.html"));

        Assert.Equal(ExitCode.Done, again.Code);
        Assert.Contains("replaced ", again.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Page_WithDoubt_HoldsBandsAndShares()
    {
        using var folder = new Folder();

        Printed printed = Printed.By("page", Files.DoorCar, "--set", Short, "--doubt", "--cars", "50", "--out", folder.Path("p.html"));

        Assert.Equal(ExitCode.Done, printed.Code);
        string page = File.ReadAllText(folder.Path("p.html"));
        Assert.Contains("\"bands\":{\"front_rise_m\":{\"step\":0.005", page, StringComparison.Ordinal);
        Assert.Contains("\"statements\":[{", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Page_OfOneCarTwice_TellsThemApartByTheirFiles()
    {
        using var folder = new Folder();
        string copy = folder.Write("copy.yaml", File.ReadAllText(Files.DoorCar));

        Printed.By("page", Files.DoorCar, copy, "--set", Short, "--out", folder.Path("p.html"));

        Assert.Contains("Door car, as measured (door-car) and Door car, as measured (copy)", File.ReadAllText(folder.Path("p.html")), StringComparison.Ordinal);
    }

    [Fact]
    public void Page_OfALaunchThatStops_IsWrittenAndSaysSo()
    {
        using var folder = new Folder();

        Printed printed = Printed.By("page", Files.DoorCar, "--set", "run.tolerance=1e-8", "--set", "driveline.torque=0 390000 440000 480000 480000 lb-ft", "--out", folder.Path("p.html"));

        Assert.Equal(ExitCode.Failed, printed.Code);
        Assert.Contains("door-car.yaml: ", printed.Error, StringComparison.Ordinal);
        Assert.Contains("\"stopped\":\"", File.ReadAllText(folder.Path("p.html")), StringComparison.Ordinal);
    }

    [Fact]
    public void Page_WhatIsInTheWayOrTooMuch_IsRefused()
    {
        using var folder = new Folder();
        string foreign = folder.Write("foreign.html", "<!DOCTYPE html><title>somebody else's</title>");
        string car = Files.DoorCar;

        Printed.By("page", car, "--out", foreign).IsRefused();
        Printed.By("page", car, "--out", folder.Path("p.htm")).IsRefused();
        Printed.By("page", car, "--out", folder.At).IsRefused();
        Printed.By("page", car, "--out", "").IsRefused();
        Printed.By("page", car, "--cars", "50", "--out", folder.Path("p.html")).IsRefused();
        Printed.By("page", car, car, car, car, "--out", folder.Path("p.html")).IsRefused();
        Printed.By("page", folder.Path("none.yaml"), "--out", folder.Path("p.html")).IsRefused();
        Printed.By("page").IsRefused();

        Assert.Equal(["foreign.html"], folder.Names());
    }
}
