using LaunchSim.Cli.Commands;
using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Tests.Completion;

/// <summary>The scripts for the shells. That for bash is run; the others are looked at, and parsed where their shell is there.</summary>
public class ScriptTests
{
    public static TheoryData<string> Shells { get; } = [.. CompletionCommand.Shells];

    [Theory]
    [MemberData(nameof(Shells))]
    public void Script_OfEachShell_AsksTheProgramAndNothingElse(string shell)
    {
        Printed printed = Printed.By("completion", shell);

        Assert.Equal((ExitCode.Done, ""), (printed.Code, printed.Error));
        Assert.EndsWith("\n", printed.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("\r", printed.Output, StringComparison.Ordinal);
        Assert.Contains(" complete --at ", printed.Output, StringComparison.Ordinal);
        Assert.Contains(" -- ", printed.Output, StringComparison.Ordinal);
        Assert.Contains("2>/dev/null", printed.Output.Replace("2>$null", "2>/dev/null", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("bash", "complete -F _launchsim launchsim\n")]
    [InlineData("zsh", "compdef _launchsim launchsim\n")]
    [InlineData("fish", "complete --command launchsim ")]
    [InlineData("powershell", "Register-ArgumentCompleter -Native -CommandName launchsim ")]
    public void Script_OfEachShell_RegistersTheCommand(string shell, string registers) =>
        Assert.Contains("\n" + registers, Printed.By("completion", shell).Output, StringComparison.Ordinal);

    /// <summary>The line for the profile stands in the script and, to the letter, in the page of commands.</summary>
    [Theory]
    [MemberData(nameof(Shells))]
    public void Script_LineForTheProfile_IsThatOfThePage(string shell)
    {
        string line = Assert.Single(Printed.By("completion", shell).Output.Split('\n'), line => line.StartsWith("#   ", StringComparison.Ordinal))[4..];

        Assert.Contains($"launchsim completion {shell}", line, StringComparison.Ordinal);
        Assert.Contains($"`{line.Replace("|", "\\|", StringComparison.Ordinal)}`", File.ReadAllText(Path.Combine(Files.Root, "docs", "commands.md")), StringComparison.Ordinal);
    }

    [Fact]
    public void Script_OfAnUnknownShell_IsRefused() => Printed.By("completion", "csh").IsRefused();

    [ShellFact("zsh")]
    public void ZshScript_Parsed_HasNoError() => Parses("zsh", "-n");

    [ShellFact("fish")]
    public void FishScript_Parsed_HasNoError() => Parses("fish", "--no-execute");

    [ShellFact("bash")]
    public void BashScript_Sourced_OffersWhatFitsTheLine()
    {
        using var folder = new Folder();
        folder.Write("door car.yaml", "");
        folder.Write("sub/a.yaml", "");

        // As bash parts the line: at spaces, and at = and :, which are pieces of their own; an open quote holds its word.
        Case[] cases =
        [
            new("launchsim completion ", ["launchsim", "completion", ""], "bash fish powershell zsh"),
            new("launchsim ge", ["launchsim", "ge"], "geometry"),
            new("launchsim run --units ", ["launchsim", "run", "--units", ""], "shop si"),
            new("launchsim run --units=s", ["launchsim", "run", "--units", "=", "s"], "shop si"),
            new("launchsim run --units=", ["launchsim", "run", "--units", "="], "shop si"),
            new("launchsim   run   --un", ["launchsim", "run", "--un"], "--units"),
            new("launchsim run --set rear.spring.ra", ["launchsim", "run", "--set", "rear.spring.ra"], "rear.spring.rate="),
            new("launchsim run --set \"rear.spring.ra", ["launchsim", "run", "--set", "\"rear.spring.ra"], "rear.spring.rate= rear.spring.rate=..."),
            new("launchsim run --set rear.spring.rate=1", ["launchsim", "run", "--set", "rear.spring.rate", "=", "1"], ""),
            new("launchsim run --set a=b --js", ["launchsim", "run", "--set", "a", "=", "b", "--js"], "--json"),
            new($"launchsim run {folder.At}/door\\ c", ["launchsim", "run", $"{folder.At}/door\\ c"], $"{folder.At}/door car.yaml"),
            new($"launchsim run {folder.At}/s", ["launchsim", "run", $"{folder.At}/s"], $"{folder.At}/sub/"),
            new("launchsim r --json", ["launchsim", "r", "--json"], "run") { Point = "launchsim r".Length, Word = 1 },
            new("launchsim run --un door.yaml", ["launchsim", "run", "--un", "door.yaml"], "--units") { Point = "launchsim run --un".Length, Word = 2 },
        ];

        (int code, string output, string error) = Shell.Run("bash", Script(cases), "--noprofile", "--norc", "-s");

        Assert.Equal((0, ""), (code, error));
        string[] answers = output.Split("--\n");
        for (int i = 0; i < cases.Length; i++)
        {
            Assert.Equal((cases[i].Line, cases[i].Offered), (cases[i].Line, string.Join(' ', answers[i].Split('\n', StringSplitOptions.RemoveEmptyEntries))));
        }
    }

    private static string Script(IEnumerable<Case> cases)
    {
        var script = new System.Text.StringBuilder();
        script.Append($"launchsim() {{ dotnet {Quoted(typeof(App).Assembly.Location)} \"$@\"; }}\n");
        script.Append("eval \"$(launchsim completion bash)\"\n");
        foreach (Case one in cases)
        {
            script.Append($"COMP_LINE={Quoted(one.Line)} COMP_POINT={one.Point ?? one.Line.Length} COMP_CWORD={one.Word ?? one.Words.Length - 1}\n");
            script.Append($"COMP_WORDS=({string.Join(' ', one.Words.Select(Quoted))})\n");
            script.Append("_launchsim launchsim\n((${#COMPREPLY[@]})) && printf '%s\\n' \"${COMPREPLY[@]}\"\necho --\n");
        }

        return script.ToString();
    }

    private static string Quoted(string text) => $"'{text.Replace("'", "'\\''", StringComparison.Ordinal)}'";

    private static void Parses(string shell, string option)
    {
        using var folder = new Folder();
        string file = folder.Write("script", Printed.By("completion", shell).Output);

        (int code, string output, string error) = Shell.Run(shell, "", option, file);

        Assert.Equal((0, "", ""), (code, output, error));
    }

    private sealed record Case(string Line, string[] Words, string Offered)
    {
        public int? Point { get; init; }

        public int? Word { get; init; }
    }
}
