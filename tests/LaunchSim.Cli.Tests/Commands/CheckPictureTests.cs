using System.Xml.Linq;
using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Tests.Commands;

public class CheckPictureTests
{
    [Fact]
    public void Picture_WholeFile_ShowsPointsAsEntered()
    {
        using var folder = new Folder();

        Printed printed = Printed.By("check", Files.DoorCar, "--picture", folder.Path("c.svg"));

        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.Contains("wrote ", printed.Error, StringComparison.Ordinal);
        Assert.Contains(Texts(folder.Path("c.svg")), text => text.Contains("14.0 14.6 in", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("car.ride_height.rear=+6 in")] // cannot stand
    [InlineData("rear.linkage.upper.body.holes.2=4 26.4 in")] // cannot be put together
    [InlineData("front.spring.rate=150 lb")] // elsewhere
    [InlineData("rear.linkage.lower.body=21 -9 in")] // one of its own points is refused
    public void Picture_FileWithAnError_IsDrawnAllTheSameAndTheErrorStays(string set)
    {
        using var folder = new Folder();

        Printed printed = Printed.By("check", Files.DoorCar, "--set", set, "--picture", folder.Path("c.png"));

        Assert.Equal(ExitCode.BadInput, printed.Code);
        Assert.Contains("error:", printed.Error, StringComparison.Ordinal);
        Assert.Equal(["c.png"], folder.Names());
    }

    [Fact]
    public void Picture_FileThatCannotBeRead_IsNotDrawn()
    {
        using var folder = new Folder();
        string file = folder.Write("car.yaml", "car: [");

        Printed printed = Printed.By("check", file, "--picture", folder.Path("c.png"));

        Assert.Equal(ExitCode.BadInput, printed.Code);
        Assert.Contains("not drawn", printed.Error, StringComparison.Ordinal);
        Assert.Equal(["car.yaml"], folder.Names());
    }

    [Fact]
    public void Picture_SeveralFiles_GoIntoAFolder()
    {
        using var folder = new Folder();

        Printed printed = Printed.By("check", Files.DoorCar, Files.Test("part"), "--picture", folder.Path("pictures"));

        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.Equal(["pictures", "pictures/door-car.png", "pictures/part.png"], folder.Names());
    }

    [Fact]
    public void Picture_WhatIsInTheWay_IsRefused()
    {
        using var folder = new Folder();
        string foreign = folder.Write("foreign.png", "somebody else's, and longer than a header");
        string twin = folder.Write("there/door-car.yaml", File.ReadAllText(Files.DoorCar));

        Printed.By("check", Files.DoorCar, "--picture", foreign).IsRefused();
        Printed.By("check", Files.DoorCar, "--picture", folder.Path("c.txt")).IsRefused();
        Printed.By("check", Files.DoorCar, "--picture", folder.Path("no/c.png")).IsRefused();
        Printed.By("check", Files.DoorCar, "--picture", "").IsRefused();
        Printed.By("check", Files.DoorCar, Files.Test("part"), "--picture", folder.Path("both.png")).IsRefused();
        Printed.By("check", Files.DoorCar, twin, "--picture", folder.Path("new")).IsRefused();

        Assert.Equal(["foreign.png", "there", "there/door-car.yaml"], folder.Names());
    }

    private static IEnumerable<string> Texts(string svg) =>
        XDocument.Load(svg).Descendants().Where(element => element.Name.LocalName == "text").Select(element => element.Value);
}
