using System.Text;
using LaunchSim.Passes.Logs;
using LaunchSim.Scenarios;

namespace LaunchSim.Passes.Tests.Logs;

/// <summary>Logs that cannot be read: each is told with its place, what was found, and how to mend it.</summary>
[Collection("door launch")]
public class BadLogTests
{
    private static readonly LogWriter Writer = new() { From = 11.5, To = 15 };
    private static readonly string Good = Writer.Text(LogWriter.DoorLaunch);

    [Fact]
    public void Read_EmptyFile_SaysSo() => Says(Refused(""), "an empty file");

    [Fact]
    public void Read_NamesOnly_SaysThatThereIsNoRow() => Says(Refused(Good[..(Good.IndexOf('\n', StringComparison.Ordinal) + 1)]), "no row of numbers");

    [Fact]
    public void Read_OneRow_SaysSo() => Says(Refused(string.Join('\n', Good.Split('\n').Take(2)) + "\n"), "one row");

    [Fact]
    public void Read_OneRowAgainAndAgain_SaysSo() => Says(Refused(Good.Split('\n')[0] + "\n" + string.Concat(Enumerable.Repeat(Good.Split('\n')[1] + "\n", 50))), "one row with a time of its own");

    [Fact]
    public void Read_NothingButNaN_SaysWhatWasSeen()
    {
        string log = Good.Split('\n')[0] + "\n" + string.Concat(Enumerable.Range(0, 400).Select(i => FormattableString.Invariant($"{i * 0.01},NaN,NaN,NaN\n")));

        Says(Refused(log), "without any number");
    }

    [Fact]
    public void Read_TimeRunningBackward_NamesTheRow()
    {
        string[] lines = Good.Split('\n');
        (lines[100], lines[101]) = (lines[101], lines[100]);

        Diagnostic error = Assert.Single(Refused(string.Join('\n', lines)));
        Assert.Contains("time running backward", error.Message, StringComparison.Ordinal);
        Assert.Equal((102, 1), (error.Line, error.Column));
    }

    [Fact]
    public void Read_WordInACell_NamesLineAndColumn()
    {
        string[] lines = Good.Split('\n');
        string[] cells = lines[50].Split(',');
        cells[2] = "n/a";
        lines[50] = string.Join(',', cells);

        Diagnostic error = Assert.Single(Refused(string.Join('\n', lines)));
        Assert.Contains("`n/a` in the column `Front RH`", error.Message, StringComparison.Ordinal);
        Assert.Equal((51, cells[0].Length + cells[1].Length + 3), (error.Line, error.Column));
        Assert.Contains("missing:", error.Mend, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_ManyWrongCells_TellsSomeAndStops() => Assert.InRange(Refused(Good.Replace(",9", ",x9", StringComparison.Ordinal)).Count, 20, 30);

    [Fact]
    public void Read_RaggedRows_NamesThem()
    {
        string[] lines = Good.Split('\n');
        lines[30] += ",7";
        lines[40] = lines[40][..lines[40].LastIndexOf(',')];

        IReadOnlyList<Diagnostic> errors = Refused(string.Join('\n', lines));
        Assert.Equal([31, 41], errors.Select(error => error.Line));
        Assert.Contains("5 cells below 4 names", errors[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_LastRowCutOff_IsLeftAside()
    {
        LogResult read = Read(Good.TrimEnd('\n')[..^12]);

        Assert.Empty(read.Errors);
        Assert.Contains(read.Log!.Remarks, remark => remark.Contains("cut off", StringComparison.Ordinal));
    }

    [Fact]
    public void Read_QuoteThatIsNotClosed_NamesItsLine()
    {
        string[] lines = Good.Split('\n');
        lines[60] = "\"" + lines[60];

        IReadOnlyList<Diagnostic> errors = Refused(string.Join('\n', lines));
        Assert.Contains("quote mark", errors[0].Message, StringComparison.Ordinal);
        Assert.InRange(errors[0].Line, 61, 62);
    }

    [Fact]
    public void Read_BinaryFile_SaysSo()
    {
        byte[] bytes = new byte[5000];
        new Random(1).NextBytes(bytes);
        Says(Refused(bytes), "binary");
        Says(Refused([.. Encoding.UTF8.GetBytes(Good[..2000]), 0, 0, .. Encoding.UTF8.GetBytes(Good[2000..])]), "zero byte");
    }

    [Fact]
    public void Read_ZeroBytesFarBehind_AreFoundToo()
    {
        string far = new LogWriter { From = 0, To = 40 }.Text(LogWriter.DoorLaunch);
        Diagnostic error = Assert.Single(Refused([.. Encoding.UTF8.GetBytes(far), .. new byte[10], .. "\n"u8]));

        Assert.Contains("zero byte", error.Message, StringComparison.Ordinal);
        Assert.True(error.Line > 8000);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Read_Utf16_SaysSo(bool hasMark)
    {
        var encoding = new UnicodeEncoding(false, hasMark);
        Says(Refused([.. encoding.GetPreamble(), .. encoding.GetBytes(Good)]), "UTF-16");
    }

    [Fact]
    public void Read_OneEndlessLine_SaysSo() => Says(Refused(Good + new string('7', 200_000)), "a line of more than");

    [Fact]
    public void Read_MissingFileOrFolder_SaysSo()
    {
        using var folder = new Folder();
        string mapping = folder.Write("mapping.yaml", Writer.Mapping);

        Says(LogReader.Read(Path.Combine(folder.At, "none.csv"), mapping, LogWriter.DoorLaunch).Errors, "no file");
        Says(LogReader.Read(folder.At, mapping, LogWriter.DoorLaunch).Errors, "a folder");
        Says(LogReader.Read(folder.Write("log.csv", Good), Path.Combine(folder.At, "none.yaml"), LogWriter.DoorLaunch).Errors, "no file");
    }

    [Fact]
    public void Read_MappingToAColumnThatIsNotThere_OffersTheNearest()
    {
        Diagnostic error = Assert.Single(Refused(Good, Writer.Mapping.Replace("Rear RH", "Rear RHH", StringComparison.Ordinal)));

        Assert.EndsWith("mapping.yaml", error.File, StringComparison.Ordinal);
        Assert.Equal(3, error.Line);
        Assert.Contains("did you mean `Rear RH`?", error.Mend, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("rear_ride_height, unit: mm", "rear_ride_height, unit: in", "in mm it would be")]
    [InlineData("rear_ride_height, unit: mm", "rear_ride_height, unit: m", "in mm it would be")]
    [InlineData("unit: rpm, ratio: 4.1", "unit: rad/s, ratio: 4.1", "in rpm it would be")]
    public void Read_WrongUnit_AsksBackWithTheRange(string right, string wrong, string asked)
    {
        Diagnostic error = Assert.Single(Refused(Good, Writer.Mapping.Replace(right, wrong, StringComparison.Ordinal)));

        Assert.Contains("runs from", error.Message, StringComparison.Ordinal);
        Assert.Contains(asked, error.Message, StringComparison.Ordinal);
        Assert.Contains("which is it", error.Message, StringComparison.Ordinal);
        Assert.EndsWith("mapping.yaml", error.File, StringComparison.Ordinal);
    }

    /// <summary>Units that lie close. No road goes by so much faster than was predicted.</summary>
    [Theory]
    [InlineData(3.6, "mph", "km/h")]
    [InlineData(3.6 / 1.609344, "km/h", "mph")]
    public void Read_SpeedInAUnitThatLiesClose_AsksBack(double perSecond, string written, string meant)
    {
        LogWriter writer = OfSpeed(perSecond);
        Diagnostic error = Assert.Single(Refused(writer.Text(LogWriter.DoorLaunch), writer.Mapping.Replace("UNIT", written, StringComparison.Ordinal)));

        Assert.Contains($"in {meant} it would move as predicted; which is it", error.Message, StringComparison.Ordinal);
        Assert.Contains($"write unit: {meant}", error.Mend, StringComparison.Ordinal);
    }

    /// <summary>A rise may be another than was predicted: that is told and not refused.</summary>
    [Fact]
    public void Read_TravelInAUnitThatLiesClose_SaysSo()
    {
        using var folder = new Folder();
        var writer = new LogWriter
        {
            Columns = [("Rear", "rear_ride_height", value => 100 * value), ("DS", "driveshaft_speed", value => value * 4.1 * 60 / (2 * Math.PI))],
            Mapping = "time: {column: Time, unit: s}\ncolumns:\n  - {column: Rear, quantity: rear_ride_height, unit: UNIT}\n  - {column: DS, quantity: driveshaft_speed, unit: rpm, ratio: 4.1}\n",
        };
        string log = folder.Write("log.csv", writer.Text(LogWriter.DoorLaunch));

        Assert.Contains(Read("in"), remark => remark.Contains("If the logger wrote cm, write unit: cm", StringComparison.Ordinal));
        Assert.DoesNotContain(Read("cm"), remark => remark.Contains("If the logger wrote", StringComparison.Ordinal));
        IReadOnlyList<string> Read(string unit)
        {
            LogResult read = LogReader.Read(log, folder.Write($"{unit}.yaml", writer.Mapping.Replace("UNIT", unit, StringComparison.Ordinal)), LogWriter.DoorLaunch);
            Assert.Empty(read.Errors);
            return read.Log!.Remarks;
        }
    }

    [Fact]
    public void Read_SpeedInItsOwnUnit_IsTaken()
    {
        using var folder = new Folder();
        LogWriter writer = OfSpeed(3.6);
        LogResult read = LogReader.Read(folder.Write("log.csv", writer.Text(LogWriter.DoorLaunch)), folder.Write("mapping.yaml", writer.Mapping.Replace("UNIT", "km/h", StringComparison.Ordinal)), LogWriter.DoorLaunch);
        Assert.Empty(read.Errors);
    }

    private static LogWriter OfSpeed(double perSecond) => new()
    {
        Columns = [("Speed", "speed", value => perSecond * value), ("DS", "driveshaft_speed", value => value * 4.1 * 60 / (2 * Math.PI))],
        Mapping = "time: {column: Time, unit: s}\ncolumns:\n  - {column: Speed, quantity: speed, unit: UNIT}\n  - {column: DS, quantity: driveshaft_speed, unit: rpm, ratio: 4.1}\n",
    };

    [Fact]
    public void Read_RatioForgotten_AsksForIt()
    {
        Says(Refused(Good, Writer.Mapping.Replace(", ratio: 4.1", "", StringComparison.Ordinal)), "without a ratio");
        Says(Refused(Good, Writer.Mapping.Replace("ratio: 4.1", "ratio: 1", StringComparison.Ordinal)), "times as much as predicted");
    }

    [Fact]
    public void Read_SensorTheWrongWayRound_AsksForReversed()
    {
        Diagnostic error = Assert.Single(Refused(Good, Writer.Mapping.Replace("front_ride_height, unit: mm", "front_ride_height, unit: mm, reversed: yes", StringComparison.Ordinal)));

        Assert.Contains("falling over the launch", error.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("unit: ms", "its times in s would be")]
    [InlineData("unit: min", "its times in s would be")]
    public void Read_TimeInTheWrongUnit_AsksBack(string unit, string asked) =>
        Says(Refused(Good, Writer.Mapping.Replace("Time, unit: s", $"Time, {unit}", StringComparison.Ordinal)), asked);

    [Fact]
    public void Read_NoLaunchInIt_SaysWhatWasSeen()
    {
        string idle = new LogWriter { Release = 100, From = 0, To = 20 }.Text(LogWriter.DoorLaunch);

        Diagnostic error = Assert.Single(Refused(idle));
        Assert.Contains("no launch in the log", error.Message, StringComparison.Ordinal);
        Assert.Contains("rear_ride_height from", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_ReleaseOutsideTheLog_SaysSo() =>
        Says(Refused(Good, Writer.Mapping.Replace("unit: s}", "unit: s, release: 99 s}", StringComparison.Ordinal)), "no row about the release");

    [Fact]
    public void Read_MarkOutsideThePass_NamesTheMark()
    {
        using var folder = new Folder();
        string marks = folder.Write("marks.yaml", "release: 0 s\nmarks:\n  - {time: 0.1 s, rear_gap: 1/2 in}\n  - {time: 22 s, rear_gap: 1 in}\n");
        Diagnostic error = Assert.Single(LogReader.Read(marks, null, LogWriter.DoorLaunch).Errors);

        Assert.Contains("a mark outside the pass", error.Message, StringComparison.Ordinal);
        Assert.Equal(4, error.Line);

        string free = folder.Write("free.yaml", "frames_per_second: 100\nmarks:\n  - {frame: 10, rear_gap: 1/2 in}\n  - {frame: 20, rear_gap: 1 in}\n  - {frame: 25, front_gap: 1 in}\n  - {frame: 2500, front_gap: 2 in}\n");
        Assert.Equal(6, Assert.Single(LogReader.Read(free, null, LogWriter.DoorLaunch).Errors).Line);
    }

    [Fact]
    public void Read_ScenarioInThePlaceOfALog_SaysSo() => Says(LogReader.Read(Files.DoorCar, null, LogWriter.DoorLaunch).Errors, "a scenario where a log is due");

    private static void Says(IReadOnlyList<Diagnostic> errors, string what)
    {
        Assert.NotEmpty(errors);
        Assert.Contains(errors, error => error.ToString().Contains(what, StringComparison.Ordinal));
        Assert.All(errors, error =>
        {
            Assert.NotEmpty(error.Allowed);
            Assert.NotEmpty(error.Mend);
        });
    }

    private static IReadOnlyList<Diagnostic> Refused(string log, string? mapping = null) => Refused(Encoding.UTF8.GetBytes(log), mapping);

    private static IReadOnlyList<Diagnostic> Refused(byte[] log, string? mapping = null)
    {
        LogResult read = Read(log, mapping);
        Assert.Null(read.Log);
        return read.Errors;
    }

    private static LogResult Read(string log) => Read(Encoding.UTF8.GetBytes(log), null);

    private static LogResult Read(byte[] log, string? mapping)
    {
        using var folder = new Folder();
        return LogReader.Read(folder.Write("log.csv", log), folder.Write("mapping.yaml", mapping ?? Writer.Mapping), LogWriter.DoorLaunch);
    }
}
