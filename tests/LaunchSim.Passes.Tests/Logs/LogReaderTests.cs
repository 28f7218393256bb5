using LaunchSim.Passes.Aligning;
using LaunchSim.Passes.Logs;
using LaunchSim.Passes.Measured;

namespace LaunchSim.Passes.Tests.Logs;

[Collection("door launch")]
public class LogReaderTests
{
    [Theory]
    [InlineData(1000, 12.3456)]
    [InlineData(200, 12.3456)]
    [InlineData(50, 12.3419)]
    public void Read_LogOfTheLaunchItself_FindsTheReleaseWithinWhatItSays(double rate, double release)
    {
        AlignedLog log = Whole(new LogWriter { Rate = rate, Release = release });

        Assert.InRange(Math.Abs(log.Alignment.Shift - release), 0, 3 * log.Alignment.Sd);
        Assert.InRange(log.Alignment.Sd, 0, 0.004);
        Assert.Contains("driveshaft", log.Alignment.Method, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_LogOfTheLaunchItself_GivesTheLaunchBack()
    {
        AlignedLog log = Whole(new LogWriter());

        foreach (MeasuredSeries series in log.Series)
        {
            double[] off = [.. series.Times.Zip(series.Values).Where(point => point.First is > 0 and < 1.5).Select(point => point.Second - LogWriter.Value(LogWriter.DoorLaunch, series.Quantity, point.First))];
            double rms = Math.Sqrt(off.Average(x => x * x));
            Assert.InRange(rms, 0, 2.5 * series.Quantity.Noise);
        }
    }

    /// <summary>Times of the day, with decimal commas, below a line of units of which one begins with a number.</summary>
    [Fact]
    public void Read_TimesOfTheClockBelowUnits_AreTheSameLog()
    {
        var writer = new LogWriter();
        string[] lines = writer.Text(LogWriter.DoorLaunch).Replace(',', ';').Replace('.', ',').Split('\n', StringSplitOptions.RemoveEmptyEntries);
        for (int i = 1; i < lines.Length; i++)
        {
            string[] cells = lines[i].Split(';');
            cells[0] = $"14:03:{cells[0]}";
            lines[i] = string.Join(';', cells);
        }

        using var folder = new Folder();
        string log = folder.Write("log.csv", string.Join('\n', [lines[0], "[h:mm:ss];[mm];[mm];[1/min]", .. lines.Skip(1)]));
        LogResult read = LogReader.Read(log, folder.Write("mapping.yaml", writer.Mapping.Replace("unit: s}", "unit: clock}", StringComparison.Ordinal)), LogWriter.DoorLaunch);

        Assert.Empty(read.Errors);
        Assert.Equal((14 * 3600) + (3 * 60) + writer.Release, read.Log!.Alignment.Shift, 2e-3);
        Assert.Contains("1 row of words below the names left aside.", read.Log.Remarks);
    }

    [Fact]
    public void Read_HeightsAlone_AreAlignedByTheirShape()
    {
        LogWriter writer = Heights();
        AlignedLog log = Whole(writer);

        Assert.Contains("ride height", log.Alignment.Method, StringComparison.Ordinal);
        Assert.InRange(Math.Abs(log.Alignment.Shift - writer.Release), 0, 3 * log.Alignment.Sd + 1e-3);
        Assert.InRange(log.Alignment.Sd, 0, 0.01);
    }

    [Fact]
    public void Read_BurnoutBeforeThePass_TakesThePass()
    {
        // Wheels that spin up six times as fast while the car stands, then stop.
        string text = new LogWriter { From = 4, Release = 15, To = 18 }.Text(LogWriter.DoorLaunch);
        string[] lines = text.Split('\n');
        for (int i = 1; i < lines.Length; i++)
        {
            string[] cells = lines[i].Split(',');
            if (cells.Length == 4 && double.Parse(cells[0], System.Globalization.CultureInfo.InvariantCulture) is > 6 and < 10 and var time)
            {
                cells[3] = (6000 * Math.Min(1, (time - 6) / 0.4)).ToString(System.Globalization.CultureInfo.InvariantCulture);
                lines[i] = string.Join(',', cells);
            }
        }

        LogResult read = Read(string.Join('\n', lines), new LogWriter().Mapping);

        Assert.Empty(read.Errors);
        Assert.Equal(15, read.Log!.Alignment.Shift, 0.01);
    }

    [Fact]
    public void Read_EuropeanCommasJunkAndUnitsLine_ReadsTheSame()
    {
        var writer = new LogWriter { IsNoisy = false };
        string plain = writer.Text(LogWriter.DoorLaunch);
        string[] rows = plain.Split('\n');
        string european = "Recorder 7\nDriver \"Kim\n\n" + rows[0].Replace(',', ';') + "\ns;mm;mm;1/min\n" + string.Join('\n', rows[1..]).Replace(',', ';').Replace('.', ',');

        AlignedLog one = Read(plain, writer.Mapping).Log!, other = Read(european, writer.Mapping).Log!;

        Assert.Equal(one.Alignment.Shift, other.Alignment.Shift, 1e-9);
        Assert.Equal(one.Series[0].Values, other.Series[0].Values);
        Assert.Contains(other.Remarks, remark => remark.Contains("1 row of words", StringComparison.Ordinal));
    }

    [Fact]
    public void Read_GapsAndDoubledRows_AreToldAndHarmless()
    {
        var writer = new LogWriter();
        string[] rows = writer.Text(LogWriter.DoorLaunch).Split('\n');
        var spoilt = new List<string>();
        for (int i = 0; i < rows.Length; i++)
        {
            string[] cells = rows[i].Split(',');
            if (i > 0 && i % 7 == 0 && cells.Length == 4)
            {
                cells[1] = i % 2 == 0 ? "" : "NaN";
            }

            spoilt.Add(string.Join(',', cells));
            if (i > 0 && i % 100 == 0 && i < rows.Length - 1)
            {
                spoilt.Add(string.Join(',', cells));
            }
        }

        LogResult read = Read(string.Join('\n', spoilt), writer.Mapping);

        Assert.Empty(read.Errors);
        Assert.Contains(read.Log!.Remarks, remark => remark.Contains("12 rows had the time of the row before", StringComparison.Ordinal));
        Assert.Contains(read.Log.Remarks, remark => remark.Contains("`Rear RH` has no value in", StringComparison.Ordinal));
        Assert.InRange(Math.Abs(read.Log.Alignment.Shift - writer.Release), 0, 3 * read.Log.Alignment.Sd);
    }

    [Fact]
    public void Read_ReleaseEntered_IsTakenAndHeldAgainstTheData()
    {
        var writer = new LogWriter();
        LogResult right = Read(writer.Text(LogWriter.DoorLaunch), writer.Mapping.Replace("unit: s}", "unit: s, release: 12.345 ±0.004 s}", StringComparison.Ordinal));
        LogResult wrong = Read(writer.Text(LogWriter.DoorLaunch), writer.Mapping.Replace("unit: s}", "unit: s, release: 12.30 ±0.004 s}", StringComparison.Ordinal));

        Assert.Equal("as entered", right.Log!.Alignment.Method);
        Assert.Equal(0.002, right.Log.Alignment.Sd, 1e-9);
        Assert.DoesNotContain("it would be", right.Log.Alignment.Words, StringComparison.Ordinal);
        Assert.Equal(12.30, wrong.Log!.Alignment.Shift, 1e-9);
        Assert.Contains("ms later", wrong.Log.Alignment.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_FasterThanThereIsRoomFor_MakesRowsOne()
    {
        var writer = new LogWriter { Rate = 20000, From = 11.5, To = 14.5 };
        LogResult read = Read(writer.Text(LogWriter.DoorLaunch), writer.Mapping);

        Assert.Empty(read.Errors);
        Assert.Contains(read.Log!.Remarks, remark => remark.Contains("made one by their mean", StringComparison.Ordinal));
        Assert.InRange(Math.Abs(read.Log.Alignment.Shift - writer.Release), 0, 1e-3);
    }

    private static LogWriter Heights() => new()
    {
        Columns = [.. new LogWriter().Columns.Take(2)],
        Mapping = """
            time: {column: Time, unit: s}
            columns:
              - {column: Rear RH, quantity: rear_ride_height, unit: mm}
              - {column: Front RH, quantity: front_ride_height, unit: mm}
            """,
    };

    private static AlignedLog Whole(LogWriter writer)
    {
        LogResult read = Read(writer.Text(LogWriter.DoorLaunch), writer.Mapping);
        Assert.Empty(read.Errors);
        return read.Log!;
    }

    private static LogResult Read(string log, string mapping)
    {
        using var folder = new Folder();
        return LogReader.Read(folder.Write("log.csv", log), folder.Write("mapping.yaml", mapping), LogWriter.DoorLaunch);
    }
}
