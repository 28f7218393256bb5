using System.Globalization;
using System.Xml.Linq;
using LaunchSim.Charts.Launch;
using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Tests.Commands;

/// <summary>Pictures from <c>run</c>: where they go, what is refused, and that nothing is lost or half written.</summary>
public class PictureTests
{
    private static readonly string[] Brief = ["--set", "run.duration=0.05 s", "--quiet"];

    private static Printed Run(params string[] args) => Printed.By(["run", .. args, .. Brief]);

    [Theory]
    [InlineData("a.svg")]
    [InlineData("a.png")]
    [InlineData("A.SVG")]
    public void Picture_OfOneScenario_IsOneSheet(string name)
    {
        using var folder = new Folder();

        Printed printed = Printed.By("run", Files.DoorCar, "--picture", folder.Path(name), "--set", "run.duration=0.05 s");

        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.Equal($"wrote {folder.Path(name)}\n", printed.Error);
        Assert.StartsWith("141 %", printed.Output, StringComparison.Ordinal);
        Assert.Equal([name], folder.Names());
        byte[] bytes = File.ReadAllBytes(folder.Path(name));
        if (name.EndsWith("png", StringComparison.Ordinal))
        {
            Assert.Equal([0x89, (byte)'P', (byte)'N', (byte)'G'], bytes[..4]);
        }
        else
        {
            Assert.StartsWith("141 %", XDocument.Parse(File.ReadAllText(folder.Path(name))).Root!.Elements().First(element => element.Name.LocalName == "title").Value, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Picture_ThatIsOurs_IsReplaced()
    {
        using var folder = new Folder();
        _ = Run(Files.DoorCar, "--picture", folder.Path("a.svg"));
        byte[] before = File.ReadAllBytes(folder.Path("a.svg"));

        Printed printed = Printed.By("run", Files.Test("ladder"), "--picture", folder.Path("a.svg"), "--set", "run.duration=0.05 s");

        Assert.Equal($"replaced {folder.Path("a.svg")}\n", printed.Error);
        Assert.NotEqual(before, File.ReadAllBytes(folder.Path("a.svg")));
    }

    [Theory]
    [InlineData("a.jpg", "found `.jpg`; allowed: a name that ends in .png or .svg")]
    [InlineData("a", "found a name without an ending; allowed")]
    [InlineData("", "--picture needs a name")]
    [InlineData("no/such/a.png", "cannot be written")]
    public void Picture_NameThatCannotBe_IsRefused(string name, string complaint)
    {
        using var folder = new Folder();

        Printed printed = Run(Files.DoorCar, "--picture", name.Length == 0 ? "" : folder.Path(name), "--csv", folder.Path("b.csv"));

        printed.IsRefused();
        Assert.Contains(complaint, printed.Error, StringComparison.Ordinal);
        Assert.Empty(folder.Names());
    }

    [Fact]
    public void Picture_ForeignFileOrScenarioInTheWay_IsRefused()
    {
        using var folder = new Folder();
        string foreign = folder.Write("a.svg", "<?xml version=\"1.0\"?><svg/>"), mine = folder.Write("b.yaml", File.ReadAllText(Files.DoorCar));

        Run(Files.DoorCar, "--picture", foreign).IsRefused();
        Run(mine, "--picture", mine).IsRefused();

        Assert.Equal("<?xml version=\"1.0\"?><svg/>", File.ReadAllText(foreign));
        Assert.Equal(["a.svg", "b.yaml"], folder.Names());
    }

    [Fact]
    public void Picture_OfSeveral_GoesIntoAFolder()
    {
        using var folder = new Folder();

        Printed file = Run(Files.DoorCar, Files.Test("ladder"), "--picture", folder.Path("a.png"));
        file.IsRefused();
        Assert.Contains("found a file for several scenarios; allowed: a folder", file.Error, StringComparison.Ordinal);

        Printed printed = Run(Files.DoorCar, Files.Test("ladder"), "--picture", folder.Path("new"), "--format", "svg");
        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.Equal(["new", System.IO.Path.Combine("new", "door-car.svg"), System.IO.Path.Combine("new", "ladder.svg")], folder.Names());
    }

    [Fact]
    public void Charts_OfACar_AreAllThatItHas()
    {
        using var folder = new Folder();

        Assert.Equal(ExitCode.Done, Run(Files.DoorCar, Files.Test("clutch"), "--charts", folder.Path("c"), "--format", "svg").Code);

        string[] names = [.. folder.Names().Where(name => name.EndsWith(".svg", StringComparison.Ordinal)).Select(name => System.IO.Path.GetFileNameWithoutExtension(name))];
        Assert.Contains("door-car-rises-and-gaps", names);
        Assert.Contains("clutch-driveline", names);
        Assert.DoesNotContain("door-car-driveline", names);
        Assert.Equal(17, names.Length);
        foreach (string name in folder.Names().Where(name => name.EndsWith(".svg", StringComparison.Ordinal)))
        {
            _ = XDocument.Load(folder.Path(name));
        }
    }

    [Theory]
    [InlineData("--format", "svg")]
    [InlineData("--format", "jpg", "--charts", "c")]
    [InlineData("--format", "svg", "--picture", "a.png")]
    [InlineData("--charts", "")]
    public void Format_ThatDoesNotFit_IsRefused(params string[] options)
    {
        using var folder = new Folder();

        Run([Files.DoorCar, .. options.Select(option => option is "c" or "a.png" ? folder.Path(option) : option)]).IsRefused();

        Assert.Empty(folder.Names());
    }

    [Fact]
    public void Charts_FileInThePlaceOfTheFolder_IsRefused()
    {
        using var folder = new Folder();
        string file = folder.Write("c", "mine");

        Run(Files.DoorCar, "--charts", file).IsRefused();

        Assert.Equal("mine", File.ReadAllText(file));
    }

    [Fact]
    public void Pictures_OfOneName_AreRefused()
    {
        using var folder = new Folder();
        string text = File.ReadAllText(Files.DoorCar);
        string one = folder.Write("x/car.yaml", text), other = folder.Write("y/car.yaml", text), grip = folder.Write("x/car-grip.yaml", text);

        Printed same = Run(one, other, "--charts", folder.Path("c")), chart = Run(one, grip, "--charts", folder.Path("c"), "--picture", folder.Path("c"));

        same.IsRefused();
        Assert.Contains($"{one} and {other} would both be written to", same.Error, StringComparison.Ordinal);
        chart.IsRefused();
        Assert.Contains("car-grip.png", chart.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(folder.Path("c")));
    }

    [Fact]
    public void Picture_OfARunThatStops_IsDrawnUpToThere()
    {
        using var folder = new Folder();

        Printed printed = Printed.By("run", Files.Test("stalls"), "--picture", folder.Path("a.svg"));

        Assert.Equal(ExitCode.Failed, printed.Code);
        Assert.Contains("The run stopped at", File.ReadAllText(folder.Path("a.svg")), StringComparison.Ordinal);
    }

    [Fact]
    public void Charts_OfNamesTooLong_AreRefusedBeforeAnythingIsRun()
    {
        using var folder = new Folder();
        string car = folder.Write($"{new string('n', 237)}.yaml", File.ReadAllText(Files.DoorCar));

        Printed printed = Run(car, "--charts", folder.Path("c"), "--csv", folder.Path("t/"), "--format", "svg");

        printed.IsRefused();
        Assert.Contains("more than 255 bytes", printed.Error, StringComparison.Ordinal);
        Assert.Equal([car], folder.Names().Select(folder.Path));
    }

    [Fact]
    public void Charts_ThatCannotBeWritten_LoseNothingElse()
    {
        // Where nobody, whatever his rights, can make a folder.
        const string Nowhere = "/proc/launchsim";
        if (!Directory.Exists("/proc"))
        {
            return;
        }

        using var folder = new Folder();
        Printed printed = Run(Files.DoorCar, "--charts", Nowhere, "--csv", folder.Path("t/"), "--format", "svg");

        Assert.Equal(ExitCode.Failed, printed.Code);
        printed.HasNoStackTrace();
        Assert.Equal(8, printed.Error.Split('\n').Count(line => line.Contains("could not be written", StringComparison.Ordinal)));
        Assert.True(File.Exists(folder.Path("t/door-car.csv")));
    }

    [Fact]
    public void Pictures_Cancelled_LeaveNothing()
    {
        using var folder = new Folder();
        using var source = new CancellationTokenSource();
        source.Cancel();

        Printed printed = Printed.By(source.Token, "run", Files.DoorCar, "--picture", folder.Path("a.png"), "--charts", folder.Path("c"));

        Assert.Equal(ExitCode.Interrupted, printed.Code);
        Assert.Empty(folder.Names());
    }

    [Fact]
    public void Pictures_InParallelAndInAnyCulture_HaveTheSameBytes()
    {
        using var folder = new Folder();
        string[] cars = [Files.DoorCar, Files.Test("ladder"), Files.Test("clutch")];
        _ = Run([.. cars, "--charts", folder.Path("together"), "--format", "svg"]);
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = new CultureInfo("de-DE");
            foreach (string car in cars)
            {
                _ = Run(car, "--charts", folder.Path("apart"), "--format", "svg");
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = before;
        }

        string[] together = [.. Directory.GetFiles(folder.Path("together")).Order(StringComparer.Ordinal)];
        Assert.Equal(LaunchCharts.Names(StandingDoorCar()).Count * 3 + 1, together.Length);
        foreach (string file in together)
        {
            Assert.Equal(File.ReadAllBytes(file), File.ReadAllBytes(folder.Path($"apart/{System.IO.Path.GetFileName(file)}")));
        }
    }

    private static Vehicle.Car StandingDoorCar() => new Scenarios.ScenarioReader().Read(Files.DoorCar).Scenario!.Car!;
}
