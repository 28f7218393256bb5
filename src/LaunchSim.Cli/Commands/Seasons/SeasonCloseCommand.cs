using System.CommandLine;
using LaunchSim.Cli.Terminal;
using LaunchSim.Passes.Seasons;

namespace LaunchSim.Cli.Commands.Seasons;

/// <summary><c>launchsim season close</c>: from now on only corrections change this pass.</summary>
internal static class SeasonCloseCommand
{
    public static Command Create(Session session)
    {
        Argument<string> file = SeasonInput.Pass();
        Option<string> day = SeasonInput.Day();
        var command = new Command("close", "Close a pass: from then on it changes only by corrections that say what was, what is and why") { file, day };
        command.SetAction(parsed =>
        {
            DateOnly when = SeasonInput.Day(parsed.GetValue(day));
            SeasonWritten written = SeasonInput.Write(book => book.Close(parsed.GetRequiredValue(file), when, session.Cancellation), session);
            SeasonInput.Tell(written.Errors.Concat(written.Warnings), session);
            if (written.File is null)
            {
                return ExitCode.BadInput;
            }

            session.Output.WriteLine($"closed {written.File}: from now on `launchsim season correct` changes it");
            return ExitCode.Done;
        });
        return command;
    }
}
