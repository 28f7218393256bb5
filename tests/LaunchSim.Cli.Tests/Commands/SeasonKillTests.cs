using System.Diagnostics;
using System.Globalization;
using LaunchSim.Cli.Terminal;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Cli.Tests.Commands;

/// <summary>Processes that write into a season and are killed at any instant: every file is whole, and the next one goes on.</summary>
public sealed class SeasonKillTests : IDisposable
{
    private const int Kills = 30;

    private readonly Folder _folder = new();
    private readonly string _season;

    public SeasonKillTests()
    {
        _ = _folder.Write("car.yaml", File.ReadAllText(Files.DoorCar));
        _season = _folder.Path("season");
        _folder.Write("season/pass-1.yaml", "car: ../car.yaml\nclosed: 2026-09-13\nseen: {rear_moves: 0.010 s}  # by Tom\n");
    }

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task Season_WritersKilledAtThirtyInstants_LeavesEveryFileWhole()
    {
        var random = new Random(11);
        int passes = 1, corrections = 0, within = 0, patience = 1200;
        for (int kill = 0; kill < Kills; kill++)
        {
            string[] arguments = kill % 2 == 0
                ? ["season", "add", _season, "--like", "last", "--seen", FormattableString.Invariant($"rear_moves=0.{100 + kill} s"), "--when", "2026-09-12 14:10"]
                : ["season", "correct", _folder.Path("season/pass-1.yaml"), FormattableString.Invariant($"seen.rear_moves=0.{100 + kill} s"), "--why", FormattableString.Invariant($"Look {kill}")];
            using Process process = Start(arguments);
            var watch = Stopwatch.StartNew();

            // Half of the instants are anywhere; the others are just when the lock is there or the folder changes.
            string before = State();
            int wait = random.Next(patience);
            while (!process.HasExited && (kill % 4 < 2 ? watch.ElapsedMilliseconds < wait : State() == before && watch.ElapsedMilliseconds < 20_000))
            {
                await Task.Delay(kill % 4 < 2 ? 5 : 0);
            }

            bool isKilled = !process.HasExited;
            process.Kill();
            await process.WaitForExitAsync();
            patience = isKilled ? patience : (int)Math.Clamp(watch.ElapsedMilliseconds, 200, 5000);
            within += isKilled && State() != before ? 1 : 0;

            // Whatever is there under a pass's name reads, and nothing that was there is gone or half.
            (int nowPasses, int nowCorrections) = Read();
            Assert.InRange(nowPasses, passes, passes + (kill % 2 == 0 ? 1 : 0));
            Assert.InRange(nowCorrections, corrections, corrections + (kill % 2 == 1 ? 1 : 0));
            (passes, corrections) = (nowPasses, nowCorrections);
        }

        Assert.True(within > 3, $"only {within} kills came while a writer was at work");

        // The next one takes over what the dead have left, and leaves the folder tidy.
        using Process last = Start(["season", "add", _season, "--like", "last"]);
        string error = await last.StandardError.ReadToEndAsync();
        await last.WaitForExitAsync();
        Assert.True(last.ExitCode == ExitCode.Done, error);
        Assert.Equal(passes + 1, Read().Passes);
        Assert.DoesNotContain(_folder.Names(), name => Path.GetFileName(name).StartsWith(".season-", StringComparison.Ordinal) || name.EndsWith(".season.lock", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Season_WritersAtOnce_LoseNoPass()
    {
        Process[] writers = [.. Enumerable.Range(0, 6).Select(i => Start(["season", "add", _season, "--like", "last", "--name", FormattableString.Invariant($"Writer {i}")]))];
        int done = 0;
        foreach (Process writer in writers)
        {
            string error = await writer.StandardError.ReadToEndAsync();
            await writer.WaitForExitAsync();
            Assert.True(writer.ExitCode == ExitCode.Done || (writer.ExitCode == ExitCode.BadInput && error.Contains("is being written to by process", StringComparison.Ordinal)), error);
            done += writer.ExitCode == ExitCode.Done ? 1 : 0;
            writer.Dispose();
        }

        Assert.True(done > 0);
        Assert.Equal(1 + done, Read().Passes);
        Assert.Equal(2 + 1 + done, _folder.Names().Length);
    }

    private (int Passes, int Corrections) Read()
    {
        var reader = new PassReader(StandingCheck.Reader(ReadPurpose.Run));
        int passes = 0, corrections = 0;
        foreach (string file in Directory.GetFiles(_season, "*.yaml"))
        {
            PassResult read = reader.Read(file);
            Assert.True(read.Pass is not null, $"{file}: {string.Join('\n', read.Errors)}\n{File.ReadAllText(file)}");
            Assert.NotEqual(false, read.Pass.IsSealWhole);
            passes++;
            corrections += read.Pass.Corrections.Count;
        }

        PassFile first = reader.Read(_folder.Path("season/pass-1.yaml")).Pass!;
        Assert.Contains("# by Tom", File.ReadAllText(_folder.Path("season/pass-1.yaml")), StringComparison.Ordinal);
        for (int i = 1; i < first.Corrections.Count; i++)
        {
            Assert.Equal(first.Corrections[i - 1].Is, first.Corrections[i].Was);
        }

        return (passes, corrections);
    }

    private string State() => string.Join('|', new DirectoryInfo(_season).EnumerateFiles().Select(file => string.Create(CultureInfo.InvariantCulture, $"{file.Name} {file.LastWriteTimeUtc.Ticks}")).Order(StringComparer.Ordinal));

    private static Process Start(string[] arguments) =>
        Process.Start(new ProcessStartInfo("dotnet", [typeof(App).Assembly.Location, .. arguments]) { RedirectStandardError = true, RedirectStandardOutput = true })!;
}
