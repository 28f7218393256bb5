using System.Globalization;
using System.Text;
using LaunchSim.Passes.Logs;

namespace LaunchSim.Passes.Tests.Logs;

/// <summary>Memory is counted for the whole process: what does so runs when nothing else does.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public class AloneTests
{
    public const string Name = "alone";
}

/// <summary>A log of some hundred megabytes with one launch in it: read without holding it.</summary>
[Collection(AloneTests.Name)]
public class LongLogTests
{
    private const long Size = 200_000_000;

    // What is live while it is read: the rows about a launch, whatever the log's length; a tenth of the file would be far more.
    private const long MostLive = 16_000_000;

    [Fact]
    public void Read_TwoHundredMegabytes_HoldsOnlyTheRowsAboutTheLaunch()
    {
        using var folder = new Folder();
        var launch = new LogWriter { Rate = 500, From = 11.5, To = 15, Columns = [.. new LogWriter().Columns] };
        string[] rows = launch.Text(LogWriter.DoorLaunch).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        string path = Path.Combine(folder.At, "log.csv");
        double release = Write(path, rows);
        string mapping = folder.Write("mapping.yaml", launch.Mapping);
        Assert.True(new FileInfo(path).Length > Size);

        long before = GC.GetTotalMemory(true), most = 0;
        int told = 0;
        LogResult read = LogReader.Read(path, mapping, LogWriter.DoorLaunch, share =>
        {
            // Collecting takes time: only at every fiftieth time that it is asked.
            most = told++ % 50 == 0 ? Math.Max(most, GC.GetTotalMemory(true) - before) : most;
        });

        Assert.Empty(read.Errors);
        Assert.InRange(Math.Abs(read.Log!.Alignment.Shift - release), 0, 0.01);
        Assert.True(told > 100);
        Assert.InRange(most, 0, MostLive);
    }

    private static double Write(string path, string[] rows)
    {
        using var writer = new StreamWriter(path, false, new UTF8Encoding(false), 1 << 20) { NewLine = "\n" };
        writer.WriteLine(rows[0] + ",Note");
        string note = "," + new string('7', 60);
        double time = 0, release = double.NaN;
        for (long written = 0, i = 0; written < Size; i++)
        {
            if (written > Size / 2 && double.IsNaN(release))
            {
                // The launch of the log begins at 11.5 s of its own clock and is released at 12.3456 s.
                release = time + 12.3456 - 11.5;
                double from = time;
                foreach (string row in rows.Skip(1))
                {
                    int comma = row.IndexOf(',', StringComparison.Ordinal);
                    time = from + double.Parse(row.AsSpan(0, comma), CultureInfo.InvariantCulture) - 11.5;
                    writer.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{time:0.####}{row[comma..]}{note}"));
                }
            }

            time += 0.002;
            string idle = string.Create(CultureInfo.InvariantCulture, $"{time:0.####},{118 + (i % 7 * 0.1):0.#},{96 + (i % 5 * 0.1):0.#},{i % 3}{note}");
            writer.WriteLine(idle);
            written += idle.Length + 1;
        }

        return release;
    }
}
