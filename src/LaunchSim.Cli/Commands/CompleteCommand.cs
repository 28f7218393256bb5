using System.CommandLine;
using System.CommandLine.Completions;
using System.Globalization;
using LaunchSim.Cli.Completion;
using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Commands;

/// <summary>
/// <c>launchsim complete --at N -- WORD…</c>: what the scripts of <c>completion</c> ask. WORDs are those up to the cursor
/// without the program's name, N is the number of those before it: some shells drop a word that is empty.
/// </summary>
internal static class CompleteCommand
{
    public static Command Create(Session session)
    {
        var at = new Option<string>("--at") { Description = "How many words stand before the one at the cursor", Required = true };
        var words = new Argument<string[]>("WORD") { Arity = ArgumentArity.ZeroOrMore };
        var command = new Command("complete", "What may stand at the cursor, for the scripts of `completion`") { at, words };
        command.Hidden = true;
        command.SetAction(parsed =>
        {
            string[] said = parsed.GetValue(words)!;
            if (!int.TryParse(parsed.GetRequiredValue(at), NumberStyles.None, CultureInfo.InvariantCulture, out int given))
            {
                throw new InputException($"--at {parsed.GetRequiredValue(at)}: found no number of words; allowed: 0, 1, 2 and so on");
            }

            int before = Math.Min(given, said.Length);
            string word = before < said.Length ? said[before] : "";
            foreach (CompletionItem item in Completer.Complete((RootCommand)parsed.RootCommandResult.Command, parsed.Configuration, said[..before], word).Where(Offer.FitsLine))
            {
                session.Output.WriteLine(Offer.Line(item));
            }

            return ExitCode.Done;
        });
        return command;
    }
}
