using LaunchSim.Passes.Seasons;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Scenarios.Writing;

namespace LaunchSim.Passes.Tests.Seasons;

public sealed class SeasonBookTests : IDisposable
{
    private static readonly DateOnly Day = new(2026, 9, 13);

    private readonly Folder _folder = new();
    private readonly SeasonBook _book = new(StandingCheck.Reader(ReadPurpose.Run));

    public SeasonBookTests() => File.Copy(Files.DoorCar, _folder.Path("car.yaml"));

    private string Season => Directory.CreateDirectory(_folder.Path("season")).FullName;

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Add_OneAfterTheOther_AreNumberedAndNothingElseIsLeft()
    {
        for (int i = 1; i <= 11; i++)
        {
            SeasonWritten written = _book.Add(Season, Text(), CancellationToken.None);
            Assert.Equal($"pass-{i}.yaml", Path.GetFileName(written.File));
        }

        Assert.Equal(11, Directory.GetFileSystemEntries(Season).Length);
        Assert.Equal("pass-10.yaml", Path.GetFileName(SeasonFolder.Passes(Season)[9]));
    }

    [Fact]
    public void Add_AmongNamesOfAnotherManner_GoesOnInIt()
    {
        _folder.Write("season/01-as-measured.yaml", "car: ../car.yaml\n");
        _folder.Write("season/09-soft.yaml", "car: ../car.yaml\n");
        _folder.Write("season/logger.yaml", "columns: {}\n");

        Assert.Equal("10-one-hole-down-15-psi.yaml", Path.GetFileName(_book.Add(Season, Text("One hole down, 15 psi!"), CancellationToken.None).File));
    }

    [Fact]
    public void Add_WhatDoesNotRead_WritesNothing()
    {
        SeasonWritten written = _book.Add(Season, PassText.Of(new PassDraft { Car = "../car.yaml", Changed = [("rear.spring.rat", "1 lb/in")] }), CancellationToken.None);

        Assert.Null(written.File);
        Assert.Single(written.Errors);
        Assert.Empty(Directory.GetFileSystemEntries(Season));
    }

    [Fact]
    public void Correct_ClosedPass_KeepsWhatWasAndSealsIt()
    {
        string path = _folder.Write("season/pass-1.yaml", "# By the video\ncar: ../car.yaml\nseen: {rear_open: 0.10 s, first_up: rear}  # Tom\n");
        SeasonWritten closed = _book.Close(path, Day, CancellationToken.None);
        SeasonWritten corrected = _book.Correct(path, "seen.rear_open", "0.12 s", "Counted again", Day.AddDays(1), CancellationToken.None);
        SeasonWritten added = _book.Correct(path, "changed.rear.tire.pressure.set", "15 psi", "Forgotten", Day.AddDays(2), CancellationToken.None);
        SeasonWritten taken = _book.Correct(path, "seen.first_up", null, "It was another car", Day.AddDays(2), CancellationToken.None);

        Assert.Empty(closed.Errors.Concat(corrected.Errors).Concat(added.Errors).Concat(taken.Errors));
        PassFile pass = taken.Pass!;
        Assert.True(pass.IsSealWhole);
        Assert.Equal(
            [
                new("2026-09-14", "seen.rear_open", "0.10 s", "0.12 s", "Counted again"),
                new("2026-09-15", "changed.rear.tire.pressure.set", null, "15 psi", "Forgotten"),
                new("2026-09-15", "seen.first_up", "rear", null, "It was another car"),
            ],
            pass.Corrections);
        string text = File.ReadAllText(path);
        Assert.StartsWith("# By the video\ncar: ../car.yaml\nseen: {rear_open: 0.12 s}  # Tom\nclosed: 2026-09-13\n", text, StringComparison.Ordinal);
        Assert.Equal(text, text.ReplaceLineEndings("\n"));
        Assert.Single(Directory.GetFileSystemEntries(Season));
    }

    [Theory]
    [InlineData("seen.rear_open", "0.12 s", null, "without a reason")]
    [InlineData("seen.rear_opened", "0.12 s", "Why", "cannot be corrected")]
    [InlineData("closed", "2026-01-01", "Why", "cannot be corrected")]
    [InlineData("seen.rear_open", "0.10 s", "Why", "there already")]
    [InlineData("seen.shake", null, "Why", "nothing there to take away")]
    [InlineData("seen.rear_open", "0.12 in", "Why", "a length")]
    [InlineData("changed.rear.tire.pressure.set", "15 in", "Why", "a length")]
    [InlineData("logs[0].file", "a.csv", "Why", "a list that is not there")]
    public void Correct_WhatIsNoCorrection_LeavesTheFileAlone(string at, string? value, string? why, string says)
    {
        string path = _folder.Write("season/pass-1.yaml", "car: ../car.yaml\nseen: {rear_open: 0.10 s}\n");
        _ = _book.Close(path, Day, CancellationToken.None);
        string before = File.ReadAllText(path);

        SeasonWritten written = _book.Correct(path, at, value, why, Day, CancellationToken.None);

        Assert.Null(written.File);
        Assert.Contains(written.Errors, error => error.ToString().Contains(says, StringComparison.Ordinal));
        Assert.Equal(before, File.ReadAllText(path));
        Assert.Single(Directory.GetFileSystemEntries(Season));
    }

    [Fact]
    public void Correct_ClosedPassChangedByHand_IsNotSealedWithIt()
    {
        string path = _folder.Write("season/pass-1.yaml", "car: ../car.yaml\nseen: {rear_open: 0.10 s}\n");
        _ = _book.Close(path, Day, CancellationToken.None);
        File.WriteAllText(path, File.ReadAllText(path).Replace("0.10 s", "0.11 s", StringComparison.Ordinal));

        SeasonWritten written = _book.Correct(path, "seen.shake", "none", "Seen", Day, CancellationToken.None);

        Assert.Null(written.File);
        Assert.Contains("changed by hand", written.Errors.Single().Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Close_Twice_IsRefused()
    {
        string path = _folder.Write("season/pass-1.yaml", "car: ../car.yaml\n");

        Assert.Empty(_book.Close(path, Day, CancellationToken.None).Errors);
        Assert.Single(_book.Close(path, Day, CancellationToken.None).Errors);
    }

    [Fact]
    public void Correct_OpenPass_ChangesItWithoutARecord()
    {
        string path = _folder.Write("season/pass-1.yaml", "car: ../car.yaml\n");

        Assert.Empty(_book.Correct(path, "seen.shake", "light", null, Day, CancellationToken.None).Pass!.Corrections);
        Assert.Equal("car: ../car.yaml\nseen:\n  shake: light\n", File.ReadAllText(path));
    }

    [Fact]
    public void Add_WhileSomebodyWrites_SaysWho()
    {
        using (var held = SeasonLock.Take(Season))
        {
            SeasonHeldException refused = Assert.Throws<SeasonHeldException>(() => _book.Add(Season, Text(), CancellationToken.None));
            Assert.Contains($"process {Environment.ProcessId} on {Environment.MachineName}", refused.Message, StringComparison.Ordinal);
        }

        Assert.NotNull(_book.Add(Season, Text(), CancellationToken.None).File);
    }

    [Fact]
    public void Take_LockOfADeadProcess_IsTakenOverAndTold()
    {
        // No process of this machine started at the beginning of the century under our own number.
        var dead = new LockHolder(Environment.ProcessId, new DateTime(2001, 1, 1, 0, 0, 0, DateTimeKind.Utc), Environment.MachineName, DateTime.UtcNow, "0");
        _folder.Write("season/.season.lock", dead.Text);
        _folder.Write("season/.season-1.tmp", "half");

        SeasonWritten written = _book.Add(Season, Text(), CancellationToken.None);

        Assert.Equal(dead, written.TakenOver);
        Assert.Equal(["pass-1.yaml"], Directory.GetFileSystemEntries(Season).Select(Path.GetFileName));
    }

    [Theory]
    [InlineData("another-machine")]
    [InlineData(null)]
    public void Take_LockOfWhoMayLive_IsLeftAlone(string? machine)
    {
        // Of another machine nothing is certain; nor of lines that are not all there.
        string text = machine is null ? "process 1\nstarted" : new LockHolder(int.MaxValue, DateTime.UtcNow, machine, DateTime.UtcNow, "0").Text;
        string path = _folder.Write("season/.season.lock", text);

        _ = Assert.Throws<SeasonHeldException>(() => SeasonLock.Take(Season));
        Assert.Equal(text, File.ReadAllText(path));
    }

    [Fact]
    public async Task Take_FromManyThreads_HoldsOneAtATime()
    {
        int inside = 0, most = 0, taken = 0;
        Assert.True(Directory.Exists(Season));
        await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Task.Run(() =>
        {
            for (int i = 0; i < 200; i++)
            {
                try
                {
                    using var held = SeasonLock.Take(Season);
                    most = Math.Max(most, Interlocked.Increment(ref inside));
                    Interlocked.Increment(ref taken);
                    Interlocked.Decrement(ref inside);
                }
                catch (SeasonHeldException)
                {
                    // Another one has it.
                }
            }
        })));

        Assert.Equal(1, most);
        Assert.True(taken > 0);
        Assert.Empty(Directory.GetFileSystemEntries(Season));
    }

    private static PassText Text(string? name = null) => PassText.Of(new PassDraft { Name = name, Car = "../car.yaml", Seen = [("rear_moves", "0.1 s")] });
}
