using System.CommandLine;
using CsCheck;
using LaunchSim.Cli.Commands;
using LaunchSim.Cli.Terminal;
using LaunchSim.Scenarios;

namespace LaunchSim.Cli.Tests.Completion;

/// <summary>What the program offers at the cursor, which is at the end of each line; words are parted by spaces here.</summary>
public class CompleterTests
{
    [Theory]
    [InlineData("ge", "geometry")]
    [InlineData("c", "check columns compare completion")]
    [InlineData("-", "--help --version")]
    [InlineData("xyz", "")]
    [InlineData("xyz ", "")]
    [InlineData("run --units si --set a=1 --s", "--set")]
    [InlineData("run --un", "--units")]
    [InlineData("run --units ", "shop si")]
    [InlineData("run --units sh", "shop")]
    [InlineData("run --units=", "--units=shop --units=si")]
    [InlineData("run --units=si", "--units=si")]
    [InlineData("run --json=", "")]
    [InlineData("run --nothing=s", "")]
    [InlineData("run --tolerance ", "")]
    [InlineData("run -- --un", "")]
    [InlineData("new --wheelb", "--wheelbase")]
    [InlineData("new --linkage ", "four-link ladder-bar")]
    [InlineData("geometry --p", "--percent")]
    [InlineData("geometry a.yaml ", "")]
    [InlineData("compare --profile ", "in-step stay-down")]
    [InlineData("completion ", "bash fish powershell zsh")]
    [InlineData("completion bash ", "")]
    [InlineData("schema ", "")]
    [InlineData("check --set ", "aims. car. driveline. front. name= notes= rear. run. track.")]
    [InlineData("check --set rear.spring.r", "rear.spring.rate=")]
    [InlineData("check --set rear.spring.axle", "rear.spring.axle= rear.spring.axle.")]
    [InlineData("check --set rear.linkage.upper.body.", "rear.linkage.upper.body.ahead= rear.linkage.upper.body.up= rear.linkage.upper.body.use=")]
    [InlineData("check --set car.ballast[12].m", "car.ballast[12].mass=")]
    [InlineData("check --set=rear.spring.r", "--set=rear.spring.rate=")]
    [InlineData("check --set rear.spring.rate=", "")]
    [InlineData("check --set rear.spring.rate=17", "")]
    public void Line_AtItsEnd_OffersWhatFits(string line, string offered) =>
        Assert.Equal(offered.Split(' ', StringSplitOptions.RemoveEmptyEntries).Order(StringComparer.Ordinal), Texts(line).Order(StringComparer.Ordinal));

    [Fact]
    public void Line_Empty_OffersEveryCommandOfTheHelp() =>
        Assert.Equal(Root.Subcommands.Where(command => !command.Hidden).Select(command => command.Name), Texts(""));

    [Fact]
    public void Line_AfterAHyphen_OffersWhatWasNotGivenYet()
    {
        string[] all = [.. Root.Subcommands.Single(command => command.Name == "run").Options.Select(option => option.Name), "--help"];

        Assert.Equal(all, Texts("run --"));
        Assert.Equal(all.Except(["--json", "--csv"]), Texts("run a.yaml --json --csv x.csv --set a=1 --"));
    }

    [Fact]
    public void Cursor_InsideALine_LooksOnlyAtWhatStandsBefore()
    {
        Assert.Equal(["geometry"], Offered(0, "ge", "a.yaml", "--json").Select(offer => offer.Text));
        Assert.Contains("run", Offered(0).Select(offer => offer.Text));
        Assert.Equal(["shop", "si"], Offered(2, "run", "--units").Select(offer => offer.Text));
    }

    [Fact]
    public void Files_WhereAScenarioIsWanted_AreScenariosAndFolders()
    {
        using Folder folder = Cars();

        Assert.Equal([("a.yaml", "file"), ("b.yml", "file"), ("my cars/", "folder"), ("sub/", "folder")], Below(folder, "run", ""));
        Assert.Equal([("a.yaml", "file"), ("b.yml", "file"), ("my cars/", "folder"), ("sub/", "folder")], Below(folder, "geometry", ""));
        Assert.Equal([("my cars/", "folder"), ("sub/", "folder")], Below(folder, "new", ""));
        Assert.Equal([("my cars/", "folder")], Below(folder, "check", "my"));
        Assert.Equal([("my cars/race car.yaml", "file")], Below(folder, "check", "my cars/r"));
        Assert.Equal([(".hidden.yaml", "file")], Below(folder, "run", "."));
        Assert.Empty(Below(folder, "run", "nowhere/x"));
    }

    [Fact]
    public void Files_OfAnOption_AreOfItsKind()
    {
        using Folder folder = Cars();

        Assert.Equal([("launch.csv", "file"), ("my cars/", "folder"), ("sub/", "folder")], Below(folder, "run --csv", ""));
        Assert.Equal([("my cars/", "folder"), ("sub/", "folder")], Below(folder, "run --out", ""));
        Assert.Equal([("--csv=" + folder.Path("launch.csv"), "file", "")], Offered(1, "run", "--csv=" + folder.Path("l")));
    }

    [Fact]
    public void Files_ThatWouldBreakALine_AreNotOffered()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        using var folder = new Folder();
        folder.Write("two\nlines.yaml", "");
        folder.Write("tab\there.yaml", "");

        Assert.Empty(Below(folder, "run", ""));
    }

    /// <summary>From nothing, following every beginning that is offered, one gets to every path of a scenario and to no other.</summary>
    [Fact]
    public void Paths_StepByStep_LeadToAllOfTheScenario()
    {
        var ends = new List<string>();
        var open = new Queue<string>([""]);
        while (open.TryDequeue(out string? word))
        {
            foreach ((string text, string kind, _) in Offered(2, "run", "--set", word))
            {
                Assert.Equal("part", kind);
                Assert.StartsWith(word, text, StringComparison.Ordinal);
                if (text.EndsWith('='))
                {
                    ends.Add(text[..^1]);
                }
                else
                {
                    Assert.EndsWith(".", text, StringComparison.Ordinal);
                    open.Enqueue(text);
                }
            }
        }

        Assert.Equal(ScenarioSchema.Paths.Where(path => !path.IsSection).Select(path => path.Path).Order(StringComparer.Ordinal), ends.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Offers_OfCommandsOptionsAndPaths_SayWhatTheyAre()
    {
        Assert.All(Offered(0, ""), offer => Assert.NotEmpty(offer.About));
        Assert.All(Offered(1, "run", "--"), offer => Assert.NotEmpty(offer.About));
        Assert.Equal(("rear.spring.rate=", "part", "Spring rate per side"), Assert.Single(Offered(2, "run", "--set", "rear.spring.rate")));
    }

    /// <summary>A shell asks at every key: whatever is typed, there is an answer and never a complaint.</summary>
    [Fact]
    public void Words_OfAnyKind_AreAnsweredQuietly() =>
        Gen.Select(Gen.OneOf(Gen.String[0, 8], Gen.OneOf("run", "check", "geometry", "completion", "--set", "--units", "--units=", "--csv", "--", "-", "@x", "[suggest]", "[", "=", "rear.", "\"", "''", "~/")).Array[0, 6], Gen.Int[0, 7])
            .Sample((words, at) =>
            {
                Printed printed = Printed.By(["complete", "--at", $"{at}", "--", .. words]);
                Assert.Equal((ExitCode.Done, ""), (printed.Code, printed.Error));
            }, iter: 300);

    private static RootCommand Root => CommandRegister.Create(new Session(TextWriter.Null, TextWriter.Null, CancellationToken.None), ["new"]);

    private static Folder Cars()
    {
        var folder = new Folder();
        foreach (string name in new[] { "a.yaml", "b.yml", "notes.txt", "launch.csv", ".hidden.yaml", "my cars/race car.yaml", "sub/c.yaml" })
        {
            folder.Write(name, "");
        }

        return folder;
    }

    private static (string, string)[] Below(Folder folder, string before, string word)
    {
        string[] words = before.Split(' ');
        string inside = folder.Path("") + (folder.Path("").EndsWith('/') ? "" : "/");
        return [.. Offered(words.Length, [.. words, inside + word]).Select(offer => (offer.Text[inside.Length..], offer.Kind)).Order()];
    }

    private static IEnumerable<string> Texts(string line)
    {
        string[] words = line.Split(' ');
        return Offered(words.Length - 1, words).Select(offer => offer.Text);
    }

    private static (string Text, string Kind, string About)[] Offered(int at, params string[] words)
    {
        Printed printed = Printed.By(["complete", "--at", $"{at}", "--", .. words]);
        Assert.Equal((ExitCode.Done, ""), (printed.Code, printed.Error));
        return [.. printed.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line.Split('\t') is [var text, var kind, var about] ? (text, kind, about) : throw new InvalidDataException(line))];
    }
}
