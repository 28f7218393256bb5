using System.Diagnostics;
using System.Xml.Linq;
using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Tests.Commands;

public class GeometryChartsTests
{
    private static readonly string[] Three = ["door-car-holes.png", "door-car-side-view.png", "door-car-travel.png"];

    [Fact]
    public void Charts_WholeFile_AreThreePicturesInAFolderThatIsMade()
    {
        using var folder = new Folder();
        string charts = folder.Path("charts");

        Printed printed = Printed.By("geometry", Files.DoorCar, "--charts", charts);

        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.Equal(Three, Directory.EnumerateFiles(charts).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Equal(3, printed.Error.Split('\n').Count(line => line.StartsWith("wrote ", StringComparison.Ordinal)));
        Assert.Contains("141 %", printed.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Charts_Again_ReplaceTheirOwnByTheSameBytes()
    {
        using var folder = new Folder();
        Printed.By("geometry", Files.DoorCar, "--charts", folder.At);
        byte[][] first = [.. Three.Select(name => File.ReadAllBytes(folder.Path(name)))];

        Printed again = Printed.By("geometry", Files.DoorCar, "--charts", folder.At);

        Assert.Equal(ExitCode.Done, again.Code);
        Assert.Contains("replaced ", again.Error, StringComparison.Ordinal);
        Assert.Equal(first, Three.Select(name => File.ReadAllBytes(folder.Path(name))));
    }

    [Fact]
    public void Charts_Svg_HoldTheirNumbersAsText()
    {
        using var folder = new Folder();

        Printed.By("geometry", Files.DoorCar, "--charts", folder.At, "--format", "svg");

        var document = XDocument.Load(folder.Path("door-car-side-view.svg"));
        string[] texts = [.. document.Descendants().Where(element => element.Name.LocalName == "text").Select(element => element.Value)];
        Assert.Contains(texts, text => text.Contains("neutral line, 100 %", StringComparison.Ordinal));
        Assert.Contains(texts, text => text.Contains("35.9 in ahead, 10.0 in up", StringComparison.Ordinal));
    }

    [Fact]
    public void Charts_PartFile_TellWhatTheTravelNeeds()
    {
        using var folder = new Folder();

        Printed printed = Printed.By("geometry", Files.Test("part"), "--charts", folder.At);

        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.Equal(["part-holes.png", "part-side-view.png"], folder.Names());
        Assert.Contains("rear.tire.loaded_radius", printed.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Charts_WhatIsInTheWay_IsRefusedBeforeAnythingIsWritten()
    {
        using var folder = new Folder();
        folder.Write("door-car-travel.png", "somebody else's");
        string file = folder.Write("file", "a file");

        Printed.By("geometry", Files.DoorCar, "--charts", folder.At).IsRefused();
        Printed.By("geometry", Files.DoorCar, "--charts", file).IsRefused();
        Printed.By("geometry", Files.DoorCar, "--charts", "").IsRefused();
        Printed.By("geometry", Files.DoorCar, "--charts", folder.At, "--format", "gif").IsRefused();
        Printed.By("geometry", Files.DoorCar, "--format", "svg").IsRefused();
        Printed.By("geometry", folder.Path("missing.yaml"), "--charts", folder.Path("new")).IsRefused();

        Assert.Equal(["door-car-travel.png", "file"], folder.Names());
    }

    [Fact]
    public void Charts_Interrupted_LeaveNothing()
    {
        using var folder = new Folder();

        Printed printed = Printed.By(new CancellationToken(true), "geometry", Files.DoorCar, "--charts", folder.At);

        Assert.Equal(ExitCode.Interrupted, printed.Code);
        Assert.Empty(folder.Names());
    }

    [Fact]
    public async Task Charts_OnAMachineWithoutFonts_AreTheSameBytes()
    {
        using var folder = new Folder();
        string fonts = folder.Write("fonts.conf", "<?xml version=\"1.0\"?>\n<!DOCTYPE fontconfig SYSTEM \"fonts.dtd\">\n<fontconfig></fontconfig>\n");
        Printed.By("geometry", Files.DoorCar, "--charts", folder.Path("here"));

        // A process of its own that is told of no font and of no folder of a user.
        var start = new ProcessStartInfo("dotnet", [typeof(App).Assembly.Location, "geometry", Files.DoorCar, "--charts", folder.Path("there")])
        {
            RedirectStandardError = true,
            RedirectStandardOutput = true,
        };
        start.Environment["FONTCONFIG_FILE"] = fonts;
        start.Environment["FONTCONFIG_PATH"] = folder.At;
        start.Environment["XDG_DATA_HOME"] = folder.At;
        start.Environment["XDG_DATA_DIRS"] = folder.At;
        using Process process = Process.Start(start)!;
        Task<string> error = process.StandardError.ReadToEndAsync(), output = process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync();

        Assert.True(process.ExitCode == 0, await error + await output);
        Assert.All(Three, name => Assert.Equal(File.ReadAllBytes(folder.Path($"here/{name}")), File.ReadAllBytes(folder.Path($"there/{name}"))));
    }
}
