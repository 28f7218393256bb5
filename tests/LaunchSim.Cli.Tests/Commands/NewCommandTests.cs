using LaunchSim.Cli.Terminal;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Typical;
using LaunchSim.Scenarios.Units;
using LaunchSim.Scenarios.Writing;
using Spectre.Console.Testing;

namespace LaunchSim.Cli.Tests.Commands;

public class NewCommandTests
{
    private static readonly string[] FourLink =
    [
        "--wheelbase", "105.5 in", "--front-scale", "1560 lb", "--rear-scale", "1440 lb", "--rear-radius", "13.1 in", "--front-radius", "12.6 in",
        "--lower-axle", "1.0 7.6 in", "--lower-body", "21 9 in", "--upper-axle", "2.5 17 in", "--upper-body", "14.0 14.6 in",
    ];

    private static readonly string[] Engine =
        ["--engine-speed", "2000 3000 4500 6000 7000 rpm", "--engine-torque", "480 600 680 650 560 lb-ft", "--launch-speed", "4200 rpm", "--gears", "2.1 1.45 1", "--shift-at", "6800 rpm", "--final-drive", "3.7"];

    public static TheoryData<string[]> Cars =>
    [
        [.. FourLink],
        [.. FourLink, "--units", "si", "--wheelie-bar", "-1470 100 mm", "--sixty-foot", "1.4 s"],
        [.. FourLink, "--driveline", "clutch", .. Engine],
        [.. FourLink, "--driveline", "converter", .. Engine, "--flash-speed", "4800 rpm"],
        [.. FourLink, "--driveline", "converter", .. Engine, "--set", "driveline.gears.ratios=1.8"],
        ["--linkage", "ladder-bar", .. FourLink[..10], "--pivot", "32 9.5 in", "--units", "si", "--rear-tire", "28x10.5-15", "--rear-dampers", "firm", "--front-dampers", "soft"],
        ["--linkage", "ladder-bar", "--wheelbase", "2400 mm", "--front-scale", "300 kgf", "--rear-scale", "420 kgf", "--rear-radius", "280 mm", "--front-radius", "260 mm", "--pivot", "900 250 mm", "--cg-height", "400 ±20 mm"],
        [.. FourLink, "--set", "rear.damper.travel.extend=3 in", "--set", "rear.damper.extension.speed=0 2 8 in/s", "--front-tire", "205/60R15"],
    ];

    [Theory]
    [MemberData(nameof(Cars))]
    public void New_WhatWasMeasured_WritesAFileThatPassesCheckAndRuns(string[] options)
    {
        using var folder = new Folder();
        string file = folder.Path("my car's.yaml");

        Printed begun = Printed.By(["new", file, .. options]);
        Assert.True(begun.Code == ExitCode.Done, begun.Error);
        Assert.Contains("instant centre", begun.Output, StringComparison.Ordinal);

        Printed check = Printed.By("check", file);
        Assert.Equal(ExitCode.Done, check.Code);
        Assert.Contains("no errors, no warnings", check.Output, StringComparison.Ordinal);

        Printed run = Printed.By("run", file);
        Assert.True(run.Code == ExitCode.Done, run.Error);
        Assert.Contains(" after release", run.Output, StringComparison.Ordinal);
    }

    /// <summary>A key that is added to the schema shows up in the starter, with a value or switched off.</summary>
    [Fact]
    public void Write_AnyCar_HoldsEveryKeyOfTheFormat()
    {
        using var folder = new Folder();
        string file = folder.Path("a.yaml");
        string text = "";
        foreach (string[] options in new string[][] { FourLink, [.. FourLink, "--driveline", "clutch", .. Engine], ["--linkage", "ladder-bar", .. FourLink[..10], "--pivot", "32 9.5 in", "--driveline", "converter", .. Engine] })
        {
            File.Delete(file);
            Assert.Equal(ExitCode.Done, Printed.By(["new", file, .. options]).Code);
            text += File.ReadAllText(file);
        }

        // Both forms of a track and of a damper's side are known; a starter takes the plain one.
        string[] notWritten = ["distance", "clicks", "set", "count_from", "base", "change", "holes", "use"];
        foreach (string key in ScenarioPathNames())
        {
            Assert.True(text.Contains(key + ":", StringComparison.Ordinal) || notWritten.Contains(key), key);
        }
    }

    [Fact]
    public void New_FileThatIsThere_IsRefusedAndUntouched()
    {
        using var folder = new Folder();
        string file = folder.Write("a.yaml", "mine");

        Printed printed = Printed.By(["new", file, .. FourLink]);

        printed.IsRefused();
        Assert.Equal("mine", File.ReadAllText(file));
    }

    [Fact]
    public void New_NothingMeasured_SaysWhatToMeasureAndHow()
    {
        using var folder = new Folder();

        Printed printed = Printed.By("new", folder.Path("a.yaml"), "--linkage", "ladder-bar", "--units", "si");

        printed.IsRefused();
        foreach (string option in new[] { "--wheelbase", "--front-scale", "--rear-scale", "--rear-radius", "--front-radius", "--pivot" })
        {
            Assert.Contains(option, printed.Error, StringComparison.Ordinal);
        }

        Assert.DoesNotContain("--upper-body", printed.Error, StringComparison.Ordinal);
        Assert.Contains("plumb line", printed.Error, StringComparison.Ordinal);
        Assert.Contains(" mm\"", printed.Error, StringComparison.Ordinal);
        Assert.Empty(folder.Names());
    }

    [Theory]
    [InlineData("--wheelbase", "105.5", "--wheelbase \"105.5\": error: car.wheelbase")]
    [InlineData("--wheelbase", "105,5 in", "105.5")]
    [InlineData("--rear-scale", "1440 in", "--rear-scale")]
    [InlineData("--lower-body", "21 in", "--lower-body")]
    [InlineData("--rear-tire", "wide", "--rear-tire")]
    [InlineData("--sixty-foot", "-1 s", "--sixty-foot")]
    [InlineData("--set", "rear.spring.rat=150 lb/in", "rear.spring.rate")]
    [InlineData("--set", "car.ballast[0].mass=40 lb", "ballast")]
    [InlineData("--upper-body", "2.5 17 in", "rear.linkage")]
    public void New_WrongValue_NamesTheOptionAndWritesNothing(string option, string value, string said)
    {
        using var folder = new Folder();

        Printed printed = Printed.By(["new", folder.Path("a.yaml"), .. Without(option), option, value]);

        printed.IsRefused();
        Assert.Contains(said, printed.Error, StringComparison.Ordinal);
        Assert.Empty(folder.Names());
    }

    [Theory]
    [InlineData("a.txt")]
    [InlineData("nowhere/a.yaml")]
    [InlineData(".yaml")]
    public void New_NameThatCannotBe_IsRefused(string name)
    {
        using var folder = new Folder();

        Printed.By(["new", folder.Path(name), .. FourLink]).IsRefused();
        Assert.Empty(folder.Names());
    }

    [Fact]
    public async Task Ask_AnswersOneByOne_MakesTheSameCarAsOptions()
    {
        using var console = new TestConsole();
        console.Interactive();
        string[] answers =
        [
            "", "", "", // shop, four-link, axle-torque
            "105.5", "105.5 in", // without a unit it is asked again
            "1560 lb", "1440 lb", "", "13.1 in", "12.6 in",
            "1.0 7.6 in", "21 9 in", "2.5 17 in", "14.0 14.6 in",
            "", "", "", "",
            "", "", "", "firm", "", "1.5 s",
        ];
        foreach (string answer in answers)
        {
            console.Input.PushTextWithEnter(answer);
        }

        var empty = new StarterCar { Name = "a", Linkage = "four-link" };
        StarterCar car = await new Interview(console, CancellationToken.None).AskAsync(empty, _ => false);

        StarterResult asked = StarterScenario.Write(car, "a.yaml");
        Assert.NotNull(asked.Text);
        Assert.Equal(DamperFamily.Firm, car.Hints.RearDampers);
        Assert.Equal(1.5, car.Hints.SixtyFootTime);
        Assert.Contains("unit", console.Output, StringComparison.Ordinal);

        using var folder = new Folder();
        string file = folder.Path("a.yaml");
        Assert.Equal(ExitCode.Done, Printed.By(["new", file, .. FourLink, "--rear-dampers", "firm", "--sixty-foot", "1.5 s"]).Code);
        Assert.Equal(File.ReadAllText(file), asked.Text);
    }

    [Fact]
    public async Task Ask_PointsThatCannotBeABar_AreAskedAgain()
    {
        using var console = new TestConsole();
        console.Interactive();
        StarterCar car = new()
        {
            Name = "a",
            Linkage = "four-link",
            Entered = [("car.wheelbase", "105.5 in"), ("car.scales.front", "1560 lb"), ("car.scales.rear", "1440 lb"), ("car.cg_height", "21 in"), ("rear.tire.loaded_radius", "13.1 in"), ("front.tire.loaded_radius", "12.6 in"), ("rear.linkage.lower.axle", "1.0 7.6 in"), ("rear.linkage.lower.body", "21 9 in")],
        };

        // The same point twice is seen at once; a bar in line with its bracket only when the car is put together.
        string[] answers = ["2.5 17 in", "2.5 17 in", "4 26.4 in", "", "", "", "", "", "", "", "", "", ""];
        string[] again = ["1.0 7.6 in", "21 9 in", "2.5 17 in", "14 14.6 in"];
        foreach (string answer in answers.Concat(again))
        {
            console.Input.PushTextWithEnter(answer);
        }

        StarterCar mended = await new Interview(console, CancellationToken.None).AskAsync(car, _ => true);

        Assert.NotNull(StarterScenario.Write(mended, "a.yaml").Text);
        Assert.Contains("the same point", console.Output, StringComparison.Ordinal);
        Assert.Contains("one line", console.Output.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void Question_EachOne_HasAnExampleThatItTakes()
    {
        var car = new StarterCar { Name = "a", Linkage = "four-link" };
        foreach (StarterQuestion question in StarterQuestion.All)
        {
            foreach (UnitSystem units in Enum.GetValues<UnitSystem>())
            {
                StarterCar other = car with { Linkage = question.Path.EndsWith("pivot", StringComparison.Ordinal) ? "ladder-bar" : "four-link", Driveline = StarterDriveline.Clutch, Units = units };
                Assert.Empty(StarterScenario.Check(other, question.Path, question.Example(units)));
                Assert.NotEmpty(question.How);
            }
        }
    }

    private static HashSet<string> ScenarioPathNames()
    {
        using var schema = System.Text.Json.JsonDocument.Parse(ScenarioSchema.ToJsonText());
        var names = new HashSet<string>();
        Gather(schema.RootElement);
        return names;

        void Gather(System.Text.Json.JsonElement element)
        {
            if (element.ValueKind == System.Text.Json.JsonValueKind.Object)
            {
                foreach (System.Text.Json.JsonProperty property in element.EnumerateObject())
                {
                    if (property.Name == "properties" && property.Value.ValueKind == System.Text.Json.JsonValueKind.Object)
                    {
                        names.UnionWith(property.Value.EnumerateObject().Select(key => key.Name).Where(name => !name.Contains('.', StringComparison.Ordinal)));
                    }

                    Gather(property.Value);
                }
            }
            else if (element.ValueKind == System.Text.Json.JsonValueKind.Array)
            {
                foreach (System.Text.Json.JsonElement item in element.EnumerateArray())
                {
                    Gather(item);
                }
            }
        }
    }

    private static string[] Without(string option)
    {
        int at = Array.IndexOf(FourLink, option);
        return at < 0 ? FourLink : [.. FourLink[..at], .. FourLink[(at + 2)..]];
    }
}
