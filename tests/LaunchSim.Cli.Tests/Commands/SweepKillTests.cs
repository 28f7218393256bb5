using System.Diagnostics;
using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Tests.Commands;

/// <summary>A sweep in a process of its own that is killed or asked to end, and goes on after it.</summary>
public class SweepKillTests
{
    private const int Kills = 50, Values = 400;

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    [Fact]
    public async Task Sweep_KilledAtFiftyInstants_LosesNoRowAndRepeatsNone()
    {
        using var folder = new Folder();
        string table = folder.Path("a.csv"), unfinished = table + ".unfinished";
        Assert.Equal(ExitCode.Done, Printed.By(Arguments(folder.Path("whole.csv"))).Code);
        byte[] whole = File.ReadAllBytes(folder.Path("whole.csv"));
        var random = new Random(7);
        int within = 0, finished = 0;
        for (int kill = 0; kill < Kills; kill++)
        {
            // Before the next instant a table that is finished makes room for a new one.
            if (File.Exists(table))
            {
                Assert.Equal(whole, File.ReadAllBytes(table));
                File.Delete(table);
                File.Delete(table + ".study");
                finished++;
            }

            long before = Length(unfinished);
            using Process process = Start(File.Exists(table + ".study") ? [.. Arguments(table), "--resume"] : Arguments(table));

            // Half of the instants are anywhere from the start on; the others are while rows are written.
            if (kill % 2 == 0)
            {
                await Task.Delay(random.Next(600));
            }
            else
            {
                long grown = before + 1 + random.Next(whole.Length / 4);
                var watch = Stopwatch.StartNew();
                while (Length(unfinished) < grown && !process.HasExited && watch.Elapsed < Patience)
                {
                    await Task.Delay(1);
                }
            }

            process.Kill();
            await process.WaitForExitAsync();
            if (File.Exists(unfinished))
            {
                // What stands there is the beginning of the whole, and no row that stood there before is gone.
                byte[] there = File.ReadAllBytes(unfinished);
                Assert.True(there.Length >= LastRow(whole, before), $"kill {kill}: {there.Length} bytes where {before} were");
                Assert.True(whole.AsSpan().StartsWith(there), $"kill {kill}: what is there is not the beginning of the whole table");
                within += there.Length > before ? 1 : 0;
            }
        }

        Assert.True(within >= 10, $"only {within} kills came while rows were written");
        if (!File.Exists(table))
        {
            using Process last = Start(File.Exists(table + ".study") ? [.. Arguments(table), "--resume"] : Arguments(table));
            await last.WaitForExitAsync();
            Assert.Equal(ExitCode.Done, last.ExitCode);
        }

        Assert.Equal(whole, File.ReadAllBytes(table));
        Assert.False(File.Exists(unfinished));
    }

    [Fact]
    public async Task Sweep_Interrupted_Returns130AndTellsHowToGoOn()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using var folder = new Folder();
        string table = folder.Path("a.csv"), unfinished = table + ".unfinished";
        using Process process = Start(["sweep", Files.DoorCar, "--vary", "rear.spring.rate=100 to 1000 by 1 lb/in", "--vary", "front.spring.rate=100 to 140 by 1 lb/in", "--csv", table]);
        var watch = Stopwatch.StartNew();
        while (Length(unfinished) < 5000 && !process.HasExited && watch.Elapsed < Patience)
        {
            await Task.Delay(10);
        }

        using (Process kill = Process.Start("kill", ["-INT", process.Id.ToString(System.Globalization.CultureInfo.InvariantCulture)]))
        {
            await kill.WaitForExitAsync();
        }

        using var limit = new CancellationTokenSource(Patience);
        string error = await process.StandardError.ReadToEndAsync(limit.Token);
        await process.WaitForExitAsync(limit.Token);
        Assert.Equal(ExitCode.Interrupted, process.ExitCode);
        Assert.Matches(@"^launchsim: interrupted; \d+ of 36941 rows are kept in `.*a\.csv\.unfinished`: the same command with --resume goes on from there\n$", error);
        Assert.Equal(["a.csv.study", "a.csv.unfinished"], folder.Names());
        Assert.Equal((byte)'\n', File.ReadAllBytes(unfinished)[^1]);
    }

    private static string[] Arguments(string table) =>
        ["sweep", Files.DoorCar, "--set", "run.duration=0.2 s", "--vary", $"rear.spring.rate=100 to {99 + Values} by 1 lb/in", "--csv", table];

    private static Process Start(string[] arguments) =>
        Process.Start(new ProcessStartInfo("dotnet", [typeof(App).Assembly.Location, .. arguments]) { RedirectStandardError = true, RedirectStandardOutput = true })!;

    private static long Length(string path)
    {
        var file = new FileInfo(path);
        return file.Exists ? file.Length : 0;
    }

    // A row that was cut off may be taken away.
    private static long LastRow(byte[] whole, long length) => whole.AsSpan(0, (int)Math.Min(length, whole.Length)).LastIndexOf((byte)'\n') + 1;
}
