using System.CommandLine;
using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Commands;

/// <summary><c>launchsim completion</c>: a script by which a shell asks the program for completions.</summary>
internal static class CompletionCommand
{
    /// <summary>The shells, by the name of the script that is embedded for each.</summary>
    public static readonly string[] Shells = ["bash", "zsh", "fish", "powershell"];

    public static Command Create(Session session)
    {
        var shell = new Argument<string>("SHELL") { HelpName = string.Join('|', Shells), Description = "Which shell" };
        _ = shell.AcceptOnlyFromAmong(Shells);
        var command = new Command("completion", "Print a script that completes commands, options, files and paths in a shell; its first lines tell how to switch it on") { shell };
        command.SetAction(parsed =>
        {
            session.Output.Write(Script(parsed.GetRequiredValue(shell)));
            return ExitCode.Done;
        });
        return command;
    }

    private static string Script(string shell)
    {
        using Stream stream = typeof(CompletionCommand).Assembly.GetManifestResourceStream($"completion.{shell}")
            ?? throw new InputException($"completion: found no shell `{shell}`; allowed: {string.Join(", ", Shells)}");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
