using System.Text.Json;
using System.Xml.Linq;
using LaunchSim.Cli.Terminal;
using Snapshooter.Xunit;

namespace LaunchSim.Cli.Tests.Commands;

public class DoubtCommandTests
{
    private static readonly string[] Few = ["--cars", "50"];

    [Fact]
    public void Doubt_DoorCar_SaysHowSureItIs()
    {
        Printed printed = Printed.By(["doubt", Files.DoorCar, .. Few]);

        Assert.True(printed.Code == ExitCode.Done, printed.Error);
        Snapshot.Match(printed.Output);
    }

    [Theory]
    [InlineData("ladder")]
    [InlineData("clutch")]
    [InlineData("parallel")]
    [InlineData("spins")]
    public void Doubt_OtherCars_KeepTheirTablesWithin80Columns(string name)
    {
        Printed printed = Printed.By(["doubt", Files.Test(name), .. Few, "--typical"]);

        Assert.True(printed.Code == ExitCode.Done, printed.Error);
        printed.HasNoStackTrace();

        // Prose is broken by the terminal; rows of tables are not. Sentences have a stop, lists a colon or semicolon.
        string[] rows = [.. printed.Output.Split('\n').Where(line => line.StartsWith("  ", StringComparison.Ordinal) && line.AsSpan().IndexOfAny(':', ';') < 0 && !line.EndsWith('.'))];
        Assert.True(rows.Length > 30);
        Assert.All(rows, line => Assert.True(line.Length <= 80, line));
    }

    [Fact]
    public void Doubt_Threads_DoNotChangeTheText()
    {
        string one = Printed.By(["doubt", Files.DoorCar, .. Few, "--threads", "1"]).Output, three = Printed.By(["doubt", Files.DoorCar, .. Few, "--threads", "3"]).Output;

        Assert.NotEmpty(one);
        Assert.Equal(one, three);
    }

    [Fact]
    public void Doubt_Json_IsOneDocumentWithBands()
    {
        Printed printed = Printed.By(["doubt", Files.DoorCar, .. Few, "--json", "--set", "car.cg_height=21 ±1 in"]);

        using var document = JsonDocument.Parse(printed.Output);
        JsonElement root = document.RootElement;
        Assert.Equal(50, root.GetProperty("cars").GetProperty("drawn").GetInt32());
        Assert.Equal("car.cg_height", root.GetProperty("numbers")[0].GetProperty("path").GetString());
        Assert.Equal(6, root.GetProperty("traces").EnumerateObject().Count(one => one.Value.ValueKind == JsonValueKind.Object));
        Assert.True(root.GetProperty("figures").GetProperty("hit_n").GetProperty("high").GetDouble() > root.GetProperty("figures").GetProperty("hit_n").GetProperty("low").GetDouble());
    }

    [Fact]
    public void Doubt_CsvAndPicture_AreWrittenAndTheTableIsNotOverwritten()
    {
        using var folder = new Folder();
        string csv = folder.Path("cars.csv"), picture = folder.Path("sheet.svg");

        Printed printed = Printed.By(["doubt", Files.DoorCar, .. Few, "--csv", csv, "--picture", picture]);

        Assert.True(printed.Code == ExitCode.Done, printed.Error);
        Assert.Equal(["cars.csv", "cars.csv.study", "sheet.svg"], folder.Names());
        Assert.Equal(51, File.ReadAllLines(csv).Length);
        string[] texts = [.. XDocument.Load(picture).Descendants().Where(element => element.Name.LocalName == "text").Select(element => element.Value)];
        Assert.Contains("What to measure better first", texts);
        Printed.By(["doubt", Files.DoorCar, .. Few, "--csv", csv]).IsRefused();

        Printed again = Printed.By(["doubt", Files.DoorCar, .. Few, "--csv", csv, "--resume"]);
        Assert.Equal(printed.Output, again.Output);
    }

    [Theory]
    [InlineData("--cars 0", "50 to 1,000,000")]
    [InlineData("--cars many", "50 to 1,000,000")]
    [InlineData("--cars 1e9", "50 to 1,000,000")]
    [InlineData("--seed text", "--seed text: found no such number")]
    [InlineData("--seed -1", "a whole number from 0")]
    [InlineData("--threads 0", "1 to 1,024")]
    [InlineData("--shard 1/2", "found no --csv")]
    [InlineData("--shard 3/2 --csv a.csv", "k from 1 to n")]
    [InlineData("--shard 1/90 --csv a.csv --cars 50", "more parts than cars")]
    [InlineData("--resume", "found no --csv")]
    [InlineData("--csv table.txt", "does not end in .csv")]
    [InlineData("--picture sheet.gif", ".png or .svg")]
    [InlineData("--tolerance 0", "run.tolerance")]
    [InlineData("--cars 0 --seed x", "--seed x")]
    public void Doubt_BadOption_IsRefused(string options, string told)
    {
        Printed printed = Printed.By(["doubt", Files.DoorCar, .. options.Split(' ')]);

        printed.IsRefused();
        Assert.Contains(told, printed.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Doubt_PartFile_IsRefusedWithWhatItLacks()
    {
        Printed printed = Printed.By(["doubt", Files.Test("part"), .. Few]);

        printed.IsRefused();
        Assert.Contains("part.yaml", printed.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Doubt_Interrupted_KeepsItsRows()
    {
        using var folder = new Folder();
        using var stop = new CancellationTokenSource();
        stop.Cancel();

        Printed printed = Printed.By(stop.Token, ["doubt", Files.DoorCar, .. Few, "--csv", folder.Path("cars.csv")]);

        Assert.Equal(ExitCode.Interrupted, printed.Code);
        Assert.DoesNotContain("cars.csv", folder.Names());
    }

    [Fact]
    public void Doubt_InPartsThatAreJoined_WritesTheBytesOfOneRun()
    {
        using var folder = new Folder();
        string[] command = ["doubt", Files.DoorCar, "--cars", "50", "--set", "run.duration=0.3 s"];
        Assert.Equal(ExitCode.Done, Printed.By([.. command, "--csv", folder.Path("whole.csv")]).Code);
        foreach (int part in (int[])[1, 2, 3])
        {
            Assert.Equal(ExitCode.Done, Printed.By([.. command, "--csv", folder.Path($"{part}.csv"), "--shard", $"{part}/3"]).Code);
        }

        Assert.Equal(ExitCode.Done, Printed.By("merge", folder.Path("3.csv"), folder.Path("1.csv"), folder.Path("2.csv"), "--out", folder.Path("joined.csv")).Code);

        Assert.Equal(File.ReadAllBytes(folder.Path("whole.csv")), File.ReadAllBytes(folder.Path("joined.csv")));
        Assert.Equal(Printed.By([.. command, "--csv", folder.Path("whole.csv"), "--resume"]).Output, Printed.By([.. command, "--csv", folder.Path("joined.csv"), "--resume"]).Output);
    }
}
