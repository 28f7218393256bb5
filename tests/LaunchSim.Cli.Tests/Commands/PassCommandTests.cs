using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using LaunchSim.Cli.Terminal;
using Snapshooter.Xunit;

namespace LaunchSim.Cli.Tests.Commands;

public class PassCommandTests
{
    [Fact]
    public void Pass_LogOfTheDoorCar_PrintsTheReport()
    {
        using var folder = new Folder();
        (string log, string mapping) = PassLog.Write(folder);
        Printed printed = Printed.By("pass", Files.DoorCar, log, "--mapping", mapping);

        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.Empty(printed.Error);
        Snapshot.Match(printed.Output.Replace(Files.Root, "", StringComparison.Ordinal).Replace(folder.At, "", StringComparison.Ordinal));
    }

    /// <summary>A pass file names car, changes and logs.</summary>
    [Fact]
    public void Pass_OfAPassFile_IsThatOfItsCarAsItRan()
    {
        using var folder = new Folder();
        (string log, string mapping) = PassLog.Write(folder);
        string pass = folder.Write("pass.yaml", $"car: {Files.DoorCar}\nchanged: {{rear.linkage.upper.body.use: 3}}\nlogs: [{{file: log.csv, mapping: mapping.yaml}}]\n");
        Printed byFile = Printed.By("pass", pass), onTheLine = Printed.By("pass", pass, log, "--mapping", mapping), byHand = Printed.By("pass", Files.DoorCar, log, "--mapping", mapping, "--set", "rear.linkage.upper.body.use=3");

        Assert.Equal(ExitCode.Done, byFile.Code);
        Assert.Equal(Figures(byHand.Output), Figures(byFile.Output));
        Assert.Equal(byFile.Output, onTheLine.Output);
        static string Figures(string text) => text[text.IndexOf("Figures", StringComparison.Ordinal)..];
    }

    [Fact]
    public void Pass_AllOutputs_AreWrittenAndHoldTheSame()
    {
        using var folder = new Folder();
        (string log, string mapping) = PassLog.Write(folder);
        Printed printed = Printed.By("pass", Files.DoorCar, log, "--mapping", mapping, "--json", "--csv", folder.Path("all.csv"), "--picture", folder.Path("sheet.svg"), "--charts", folder.Path("charts"), "--page", folder.Path("page.html"), "--units", "si");

        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.Equal(
            ["all.csv", "charts", "charts/door-car-measured-front-ride-height.png", "charts/door-car-measured-rear-ride-height.png", "charts/door-car-measured-speed.png", "charts/door-car-measured-wheel-speed.png", "log.csv", "mapping.yaml", "page.html", "sheet.svg"],
            folder.Names());
        using var document = JsonDocument.Parse(printed.Output);
        JsonElement root = document.RootElement, lag = root.GetProperty("figures").GetProperty("rise_lag_s");
        Assert.Equal(3.2468, root.GetProperty("logs")[0].GetProperty("release_s").GetDouble(), 0.005);
        Assert.Equal(lag.GetProperty("measured").GetDouble() - lag.GetProperty("predicted").GetDouble(), lag.GetProperty("difference").GetDouble(), 1e-12);
        Assert.InRange(Math.Abs(root.GetProperty("figures").GetProperty("mark_1_time_s").GetProperty("difference").GetDouble()), 0, 0.01);
        string[] rows = File.ReadAllLines(folder.Path("all.csv"));
        Assert.Equal("quantity,source,time_s,measured,predicted", rows[0]);
        Assert.True(rows.Length > 1000);
        string page = File.ReadAllText(folder.Path("page.html"));
        Assert.Contains("\"measured\":[{\"key\":\"front_ride_height\"", page, StringComparison.Ordinal);
        Assert.DoesNotContain("http://", page.Replace("http://www.w3.org", "", StringComparison.Ordinal), StringComparison.Ordinal);

        // An earlier result is replaced, anything else is not.
        Assert.Equal(ExitCode.Done, Printed.By("pass", Files.DoorCar, log, "--mapping", mapping, "--csv", folder.Path("all.csv")).Code);
        Printed.By("pass", Files.DoorCar, log, "--mapping", mapping, "--csv", log).IsRefused();
    }

    [Fact]
    public void Pass_MarksBesideALog_AreLaidOverTheSamePrediction()
    {
        using var folder = new Folder();
        (string log, string mapping) = PassLog.Write(folder);
        string marks = folder.Write("marks.yaml", "release: 0 ±0.01 s\nmarks:\n  - {time: 0.1 s, rear_gap: 1/2 in}\n  - {time: 0.2 s, front_gap: 1-1/2 in}\n");
        Printed printed = Printed.By("pass", Files.DoorCar, log, marks, "--mapping", mapping);

        Assert.Equal(ExitCode.Done, printed.Code);
        Assert.Contains("marks.yaml: t = 0 is where the release was entered", printed.Output, StringComparison.Ordinal);
        Assert.Contains("Rear gap at 0.1 s", printed.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("log.csv", "an empty file", "")]
    [InlineData("log.csv", "no row of numbers", "Time,Rear RH,Front RH,Wheel,v\n")]
    [InlineData("log.csv", "one row", "Time,Rear RH,Front RH,Wheel,v\n0,1,2,3,4\n")]
    [InlineData("log.csv", "time running backward", "Time,Rear RH,Front RH,Wheel,v\n0,1,2,3,4\n2,1,2,3,4\n1,1,2,3,4\n3,1,2,3,4\n4,1,2,3,4\n")]
    [InlineData("log.csv", "without any number", "Time,Rear RH,Front RH,Wheel,v\n0,NaN,NaN,NaN,NaN\n1,NaN,NaN,NaN,NaN\n1.1,NaN,NaN,NaN,NaN\n1.15,NaN,NaN,NaN,NaN\n1.2,NaN,NaN,NaN,NaN\n1.3,NaN,NaN,NaN,NaN\n1.4,NaN,NaN,NaN,NaN\n1.5,NaN,NaN,NaN,NaN\n1.6,NaN,NaN,NaN,NaN\n1.7,NaN,NaN,NaN,NaN\n1.75,NaN,NaN,NaN,NaN\n1.8,NaN,NaN,NaN,NaN\n")]
    [InlineData("mapping.yaml", "a mapping of no column", "time: {rate: 200 Hz}\ncolumns: []\n")]
    [InlineData("mapping.yaml", "did you mean `Wheel`?", "time: {column: Time, unit: s}\ncolumns:\n  - {column: Whel, quantity: wheel_speed, unit: rpm}\n")]
    [InlineData("mapping.yaml", "which is it", "time: {column: Time, unit: s}\ncolumns:\n  - {column: Rear RH, quantity: rear_ride_height, unit: in}\n  - {column: Wheel, quantity: wheel_speed, unit: rpm}\n")]
    public void Pass_BadInput_IsRefusedAndNothingIsWritten(string file, string said, string text)
    {
        using var folder = new Folder();
        (string log, string mapping) = PassLog.Write(folder);
        _ = folder.Write(file, text);
        Printed printed = Printed.By("pass", Files.DoorCar, log, "--mapping", mapping, "--csv", folder.Path("all.csv"), "--picture", folder.Path("sheet.png"), "--charts", folder.Path("charts"), "--page", folder.Path("page.html"));

        printed.IsRefused();
        Assert.Contains(said, printed.Error, StringComparison.Ordinal);
        Assert.Equal(["log.csv", "mapping.yaml"], folder.Names());
    }

    [Fact]
    public void Pass_WrongWords_AreRefused()
    {
        using var folder = new Folder();
        (string log, string mapping) = PassLog.Write(folder);

        Printed.By("pass", Files.DoorCar, "none.csv").IsRefused();
        Printed.By("pass", "none.yaml", log).IsRefused();
        Printed.By("pass", Files.DoorCar).IsRefused();
        string seen = folder.Write("seen.yaml", $"car: {Files.DoorCar}\nseen: {{rear_moves: 0.06 s}}\n");
        Printed.By("pass", seen).IsRefused();
        Printed.By("pass", seen, log, "--mapping", mapping, "--set", "car.cg_height=22 in").IsRefused();
        Printed.By("pass", folder.Write("logged.yaml", $"car: {Files.DoorCar}\nlogs: [{{file: {log}, mapping: {mapping}}}]\n"), "--mapping", mapping).IsRefused();
        Printed.By("pass", folder.Write("wrong.yaml", $"car: {Files.DoorCar}\nlogs: [{{file: none.csv}}]\n")).IsRefused();
        Printed.By("pass", Files.DoorCar, Files.DoorCar).IsRefused();
        Printed.By("pass", Files.DoorCar, log, "--mapping", mapping, mapping).IsRefused();
        Printed.By("pass", Files.DoorCar, log, "--mapping", mapping, "--picture", "a.gif").IsRefused();
        Printed.By("pass", Files.DoorCar, log, "--mapping", mapping, "--page", "a.txt").IsRefused();
        Printed.By("pass", Files.DoorCar, log, "--mapping", mapping, "--format", "svg").IsRefused();
        Printed.By("pass", Files.DoorCar, log, "--mapping", mapping, "--csv", "").IsRefused();
        Printed.By("pass", Files.DoorCar, log, "--mapping", mapping, "--picture", folder.Path("a.csv"), "--csv", folder.Path("a.csv")).IsRefused();
        Assert.Equal(["log.csv", "logged.yaml", "mapping.yaml", "seen.yaml", "wrong.yaml"], folder.Names());
    }

    [Fact]
    public void Pass_WithoutAMapping_TakesWhatIsSureOrSaysHowToGetOne()
    {
        using var folder = new Folder();
        (string log, string _) = PassLog.Write(folder);
        Printed refused = Printed.By("pass", Files.DoorCar, log);
        refused.IsRefused();
        Assert.Contains($"launchsim columns {log} --out mapping.yaml", refused.Error, StringComparison.Ordinal);

        string plain = folder.Write("plain.csv", File.ReadAllText(log).Replace("Rear RH,Front RH,Wheel", "Rear RH [mm],Front RH [mm],Rear Wheel [rpm]", StringComparison.Ordinal));
        Printed taken = Printed.By("pass", Files.DoorCar, plain);
        Assert.Equal(ExitCode.Done, taken.Code);
        Assert.Contains("taken as proposed", taken.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Pass_Cancelled_LeavesNothingBehind()
    {
        using var folder = new Folder();
        (string log, string mapping) = PassLog.Write(folder);
        using var source = new CancellationTokenSource();
        source.Cancel();

        Assert.Equal(ExitCode.Interrupted, Printed.By(source.Token, "pass", Files.DoorCar, log, "--mapping", mapping, "--csv", folder.Path("all.csv")).Code);
        Assert.Equal(["log.csv", "mapping.yaml"], folder.Names());
    }

    [Theory]
    [InlineData(80)]
    [InlineData(120)]
    public void Pass_OnATerminal_KeepsWithinItsWidth(int width)
    {
        using var folder = new Folder();
        (string log, string mapping) = PassLog.Write(folder);
        foreach (string[] line in new[] { new[] { "pass", Files.DoorCar, log, "--mapping", mapping }, ["columns", log] })
        {
            using var output = new StringWriter { NewLine = "\n" };
            Assert.Equal(0, App.Run(line, new Session(output, TextWriter.Null, CancellationToken.None) { Screen = new Screen(true, width, true) }));
            string text = Regex.Replace(output.ToString(), "\u001b\\[[0-9;]*m", "");
            Assert.All(text.Split("\n\n#")[0].Split('\n'), one => Assert.InRange(new StringInfo(one).LengthInTextElements, 0, width));
        }
    }
}
