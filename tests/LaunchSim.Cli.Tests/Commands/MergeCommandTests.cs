using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Tests.Commands;

public class MergeCommandTests
{
    private const string Springs = "rear.spring.rate=120 to 220 by 10 lb/in";

    [Fact]
    public void Merge_OfAllParts_WritesTheBytesOfOneRun()
    {
        using var folder = new Folder();
        Part(folder, "whole.csv");
        string[] parts = [.. Enumerable.Range(1, 3).Select(number => Part(folder, $"part-{number}.csv", "--shard", $"{number}/3"))];
        string merged = folder.Path("merged.csv");
        Printed printed = Printed.By(["merge", parts[2], parts[0], parts[1], "--out", merged]);

        Assert.Equal((ExitCode.Done, "11 rows out of 3 parts.\n", $"wrote {merged}\n"), (printed.Code, printed.Output, printed.Error));
        Assert.Equal(File.ReadAllBytes(folder.Path("whole.csv")), File.ReadAllBytes(merged));
        Assert.Equal(File.ReadAllBytes(folder.Path("whole.csv.study")), File.ReadAllBytes(merged + ".study"));

        // The joined table is as good as one run's to go on with.
        Printed again = Sweep("--csv", merged, "--resume");
        Assert.Equal((ExitCode.Done, Sweep().Output), (again.Code, again.Output));
    }

    [Fact]
    public void Merge_OfPartsThatDoNotFit_IsRefusedByWhatIsWrong()
    {
        using var folder = new Folder();
        string one = Part(folder, "1.csv", "--shard", "1/3"), two = Part(folder, "2.csv", "--shard", "2/3"), three = Part(folder, "3.csv", "--shard", "3/3");
        string other = Part(folder, "other.csv", "--shard", "3/3", "--tolerance", "1e-7"), half = Part(folder, "half.csv", "--shard", "1/2");

        Refused("these are missing: 2, 3", one);
        Refused("one is missing: 2", one, three);
        Refused("are both part 1/3", one, one, two, three);
        Refused("tolerance: in `" + other + "` 1E-07, in `" + one + "` 1E-06", one, two, other);
        Refused("was parted in two ways", one, two, half);
        Refused("there is no file", one, two, folder.Path("none.csv"));
        Refused("which says what it came from", one, two, folder.Write("bare.csv", "set_up,\n"));
        folder.Write("foreign.csv", "set_up,\n");
        folder.Write("foreign.csv.study", "mine\n");
        Refused("does not come from this program", one, two, folder.Path("foreign.csv"));

        string[] lines = File.ReadAllLines(three);
        File.WriteAllText(three, string.Join('\n', lines[..^1]) + "\n");
        Refused("has 3 whole rows where part 3/3 has 4", one, two, three);
        File.Move(three, three + ".unfinished");
        Refused("is not finished", one, two, three);

        void Refused(string named, params string[] parts)
        {
            Printed printed = Printed.By(["merge", .. parts, "--out", folder.Path("out.csv")]);
            printed.IsRefused();
            Assert.Contains(named, printed.Error, StringComparison.Ordinal);
            Assert.DoesNotContain(folder.Names(), name => name.StartsWith("out.csv", StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData("out.csv")]
    [InlineData("out.csv.unfinished")]
    public void Merge_OntoATableThatIsThere_IsRefused(string there)
    {
        using var folder = new Folder();
        string part = Part(folder, "1.csv", "--shard", "1/1");
        folder.Write(there, "set_up,x\n");
        Printed.By("merge", part, "--out", folder.Path("out.csv")).IsRefused();
        Assert.Equal("set_up,x\n", File.ReadAllText(folder.Path(there)));
    }

    private static string Part(Folder folder, string name, params string[] options)
    {
        Printed printed = Sweep(["--csv", folder.Path(name), .. options]);
        Assert.True(printed.Code == ExitCode.Done, printed.Error);
        return folder.Path(name);
    }

    private static Printed Sweep(params string[] options) => Printed.By(["sweep", Files.DoorCar, "--set", "run.duration=0.2 s", "--vary", Springs, .. options]);
}
