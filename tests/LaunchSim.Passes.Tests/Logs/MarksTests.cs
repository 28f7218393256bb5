using System.Globalization;
using LaunchSim.Passes.Aligning;
using LaunchSim.Passes.Logs;
using LaunchSim.Passes.Measured;

namespace LaunchSim.Passes.Tests.Logs;

[Collection("door launch")]
public class MarksTests
{
    [Fact]
    public void Read_MarksWithTheRelease_AreTakenAsWritten()
    {
        AlignedLog log = Read("""
            frames_per_second: 240
            release_frame: 96 ±1
            parallax: {doubt: 4 %}
            marks:
              - {frame: 120, front_gap: 1/2 in}
              - {frame: 144, rear_gap: 1 ±1/8 in, front_gap: 2 in}
            """);

        MeasuredSeries rear = log.Series.Single(series => series.Quantity.Key == "rear_gap");
        Assert.Equal(0.2, Assert.Single(rear.Times), 1e-12);
        Assert.Equal(0.0254, Assert.Single(rear.Values), 1e-12);
        Assert.Equal(0.0254 / 16, rear.Noise, 1e-9);
        Assert.Equal(0.02, rear.ScaleDoubt, 1e-12);
        Assert.Equal("as entered", log.Alignment.Method);
        Assert.Equal(0.5 / 240, log.Alignment.Sd, 1e-12);
    }

    [Fact]
    public void Read_MarksOfTheLaunchItself_AreLaidWhereTheyBelong()
    {
        // Seven frames of a 60 Hz video whose counter was at 512 at the release, read to 1/16 in.
        var text = new System.Text.StringBuilder("frames_per_second: 60\nmarks:\n");
        foreach (int frame in new[] { 518, 522, 526, 530, 534, 538, 544 })
        {
            double time = (frame - 512.4) / 60;
            double Seen(string key) => Math.Round(LogWriter.Value(LogWriter.DoorLaunch, MeasuredQuantities.Find(key)!, time) / 0.0254 * 16) / 16;
            _ = text.Append(CultureInfo.InvariantCulture, $"  - {{frame: {frame}, front_gap: {Seen("front_gap")} in, rear_gap: {Seen("rear_gap")} in}}\n");
        }

        AlignedLog log = Read(text.ToString());

        Assert.InRange(Math.Abs(log.Alignment.Shift - (512.4 / 60)), 0, 2 * log.Alignment.Sd);
        Assert.InRange(log.Alignment.Sd, 0, 0.02);
    }

    [Theory]
    [InlineData("marks: []\n", "no mark at all")]
    [InlineData("marks:\n  - {rear_gap: 1 in}\n", "without frame or time")]
    [InlineData("marks:\n  - {frame: 3, rear_gap: 1 in}\n", "without `frames_per_second`")]
    [InlineData("marks:\n  - {time: 0.1 s}\n", "a mark of nothing")]
    [InlineData("marks:\n  - {time: 0.1 s, rear_gp: 1 in}\n", "did you mean `rear_gap`?")]
    [InlineData("marks:\n  - {time: 0.1 s, rear_gap: 1}\n", "without a unit")]
    [InlineData("marks:\n  - {time: 0.1 s, rear_gap: 1 in}\n", "too few marks")]
    [InlineData("release: 0 s\nmarks:\n  - {time: 0.1 s, engine_speed: 5000 rpm}\n", "marks of nothing that the prediction has")]
    public void Read_WrongMarks_AreToldWithTheMend(string text, string said)
    {
        using var folder = new Folder();
        LogResult read = LogReader.Read(folder.Write("marks.yaml", text), null, LogWriter.DoorLaunch);

        Assert.Null(read.Log);
        Assert.Contains(read.Errors, error => error.ToString().Contains(said, StringComparison.Ordinal));
    }

    [Fact]
    public void Read_VideoRowsInPixels_GiveHeightsWithTheirDoubt()
    {
        // Rows of a picture count downward: a mark that comes up has ever smaller ones.
        var writer = new LogWriter
        {
            Rate = 240,
            From = 0,
            To = 2.5,
            Release = 0.4,
            IsNoisy = false,
            Columns = [("y rear", "rear_ride_height", value => Math.Round(700 - (value / 0.002))), ("y front", "front_ride_height", value => Math.Round(650 - (value / 0.002)))],
        };
        string[] lines = writer.Text(LogWriter.DoorLaunch).Split('\n');
        string frames = "Frame" + lines[0][4..] + "\n" + string.Join('\n', lines.Skip(1).Where(line => line.Length > 0).Select((line, i) => i.ToString(CultureInfo.InvariantCulture) + line[line.IndexOf(',', StringComparison.Ordinal)..]));
        using var folder = new Folder();
        string mapping = folder.Write("mapping.yaml", """
            time: {frame: Frame, frames_per_second: 240}
            columns:
              - {column: y rear, quantity: rear_ride_height, pixel: 2.0 ±0.1 mm}
              - {column: y front, quantity: front_ride_height, pixel: 2.0 ±0.1 mm}
            parallax: {doubt: 3 %}
            """);
        LogResult read = LogReader.Read(folder.Write("video.csv", frames), mapping, LogWriter.DoorLaunch);

        Assert.Empty(read.Errors);
        Assert.InRange(Math.Abs(read.Log!.Alignment.Shift - 0.4), 0, 2 * read.Log.Alignment.Sd);
        Assert.All(read.Log.Series, series => Assert.Equal(Math.Sqrt((0.05 * 0.05) + (0.03 * 0.03)) / 2, series.ScaleDoubt, 1e-9));

        string upward = folder.Write("up.yaml", File.ReadAllText(mapping).Replace("±0.1 mm}", "±0.1 mm, rows: up}", StringComparison.Ordinal));
        Assert.Contains("rows: up or rows: down", LogReader.Read(folder.Write("video.csv", frames), upward, LogWriter.DoorLaunch).Errors[0].Mend, StringComparison.Ordinal);
    }

    private static AlignedLog Read(string text)
    {
        using var folder = new Folder();
        LogResult read = LogReader.Read(folder.Write("marks.yaml", text), null, LogWriter.DoorLaunch);
        Assert.Empty(read.Errors);
        return read.Log!;
    }
}
