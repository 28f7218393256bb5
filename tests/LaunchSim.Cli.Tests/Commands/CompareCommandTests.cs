using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using LaunchSim.Cli.Terminal;
using Snapshooter.Xunit;

namespace LaunchSim.Cli.Tests.Commands;

public class CompareCommandTests
{
    private static readonly string Lower = Path.Combine(Files.Root, "scenarios", "door-car-hole-lower.yaml");
    private static readonly string Soft = Path.Combine(Files.Root, "scenarios", "door-car-dampers-soft.yaml");

    [Fact]
    public void Compare_DoorCarWithItsLowerHole_PrintsTheReport()
    {
        Printed printed = Printed.By("compare", Files.DoorCar, Lower);

        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.Empty(printed.Error);
        Snapshot.Match(printed.Output.Replace(Files.Root, "", StringComparison.Ordinal));
    }

    [Fact]
    public void Compare_OneFile_IsRefused()
    {
        Printed printed = Printed.By("compare", Files.DoorCar);

        printed.IsRefused();
        Assert.Contains("two or more", printed.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Compare_OneFileTwice_SaysThatNothingDiffers()
    {
        Printed printed = Printed.By("compare", Files.DoorCar, Files.DoorCar);

        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.Contains("nothing differs", printed.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("Figures that differ", printed.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Compare_BadInput_IsRefusedWithTheMend()
    {
        Printed.By("compare", Files.DoorCar, "missing.yaml").IsRefused();
        Printed part = Printed.By("compare", Files.DoorCar, Files.Test("part"));
        part.IsRefused();
        Assert.Equal(Printed.By("run", Files.Test("part")).Error, part.Error);
        Printed profile = Printed.By("compare", Files.DoorCar, Lower, "--profile", "in-steb");
        profile.IsRefused();
        Assert.Contains("did you mean in-step?", profile.Error, StringComparison.Ordinal);
        Printed.By("compare", Files.DoorCar, Lower, "--profile", "").IsRefused();
        Printed.By("compare", Files.DoorCar, Lower, "--format", "svg").IsRefused();
        Printed.By("compare", Files.DoorCar, Lower, "--picture", "a.gif").IsRefused();
        Printed.By("compare", Files.DoorCar, Lower, "--csv", Files.DoorCar).IsRefused();
        Printed.By("compare", Files.DoorCar, Lower, "--set", "aims={rear_load: {least: 2}, rise_lag: {weight: x}}").IsRefused();
    }

    [Fact]
    public void Compare_ProfileAndAims_DecideTheVerdict()
    {
        string inStep = Printed.By("compare", Files.DoorCar, Soft).Output, stayDown = Printed.By("compare", Files.DoorCar, Soft, "--profile", "stay-down").Output;

        Assert.Contains("For both ends coming up in step, B is better than A", inStep, StringComparison.Ordinal);
        Assert.Contains("For the car staying down", stayDown, StringComparison.Ordinal);
        Assert.DoesNotContain("rise lag (", stayDown, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(80)]
    [InlineData(120)]
    public void Compare_OnATerminal_KeepsWithinItsWidth(int width)
    {
        foreach (string[] files in new[] { new[] { Files.DoorCar, Lower }, [Files.DoorCar, Files.Test("ladder"), Soft] })
        {
            using var output = new StringWriter { NewLine = "\n" };
            Assert.Equal(0, App.Run(["compare", .. files], new Session(output, TextWriter.Null, CancellationToken.None) { Screen = new Screen(true, width, true) }));
            string text = Regex.Replace(output.ToString(), "\u001b\\[[0-9;]*m", "");
            Assert.All(text.Split('\n'), line => Assert.InRange(new StringInfo(line).LengthInTextElements, 0, width));
        }
    }

    [Fact]
    public void Compare_Json_HoldsVerdictsAndCauses()
    {
        using JsonDocument document = JsonDocument.Parse(Printed.By("compare", Files.DoorCar, Soft, Lower, "--json").Output);
        JsonElement root = document.RootElement;

        Assert.Equal(3, root.GetProperty("set_ups").GetArrayLength());
        JsonElement difference = root.GetProperty("differences")[0];
        Assert.Equal(("A", "B"), (difference.GetProperty("from").GetString(), difference.GetProperty("to").GetString()));
        Assert.Equal("better", difference.GetProperty("verdict").GetString());
        Assert.Equal("rear_opening", difference.GetProperty("causes").GetProperty("dampers")[0].GetProperty("motion").GetString());
        double before = root.GetProperty("set_ups")[0].GetProperty("figures").GetProperty("hit_n").GetDouble(), after = root.GetProperty("set_ups")[1].GetProperty("figures").GetProperty("hit_n").GetDouble();
        Assert.Equal(after - before, difference.GetProperty("figures").GetProperty("hit_n").GetDouble(), 9);
    }

    [Fact]
    public void Compare_CsvAndPictures_AreWrittenAndReplaced()
    {
        using var folder = new Folder();
        string[] args = ["compare", Files.DoorCar, Lower, "--csv", folder.Path("c.csv"), "--picture", folder.Path("c.svg"), "--charts", folder.Path("charts"), "--set", "run.duration=0.2 s"];

        Assert.Equal(ExitCode.Done, Printed.By(args).Code);

        string[] lines = File.ReadAllLines(folder.Path("c.csv"));
        Assert.Equal("compared,key,A,B,B_less_A,B_is", lines[0]);
        Assert.Contains("written,rear.linkage.upper.body.use,2,3,,", lines);
        Assert.Contains(lines, line => line.StartsWith("figure,hit_n,", StringComparison.Ordinal));
        Assert.Contains("charts" + Path.DirectorySeparatorChar + "door-car-compared-load-paths.png", folder.Names());
        Assert.Contains($"replaced {folder.Path("c.csv")}", Printed.By(args).Error, StringComparison.Ordinal);
        Printed.By("run", Files.DoorCar, "--csv", folder.Path("c.csv")).IsRefused();
    }

    [Fact]
    public void Compare_MoreThanAPictureTellsApart_IsRefusedButTabled()
    {
        string[] files = [.. Enumerable.Repeat(Files.DoorCar, 7)];
        Printed.By(["compare", .. files, "--picture", "a.png"]).IsRefused();

        Assert.Equal(ExitCode.Done, Printed.By(["compare", .. files, "--set", "run.duration=0.1 s"]).Code);
    }

    [Fact]
    public void Compare_OneThatStops_ShowsItUpToThereAndFails()
    {
        Printed printed = Printed.By("compare", Files.Test("clutch"), Files.Test("stalls"));

        Assert.Equal(ExitCode.Failed, printed.Code);
        Assert.Contains("B: The run stopped at", printed.Output, StringComparison.Ordinal);
        Assert.Contains("The run stopped at", printed.Error, StringComparison.Ordinal);
        Assert.Contains("Figures that differ", printed.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Compare_WithDoubt_SaysInWhatShareOfPlausibleCarsTheOtherIsBetter()
    {
        Printed printed = Printed.By("compare", Files.DoorCar, Files.DoorCar, "--doubt", "--cars", "50", "--set", "run.duration=0.5 s");

        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.Contains("How sure: on 50 plausible cars", printed.Output, StringComparison.Ordinal);

        // A car is no better than itself.
        Assert.Matches(@"B in the place of A +0 % +0 % and 7 % +0 % +0\.00 to 0\.00", printed.Output);
    }
}
