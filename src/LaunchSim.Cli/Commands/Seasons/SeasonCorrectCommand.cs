using System.CommandLine;
using LaunchSim.Cli.Terminal;
using LaunchSim.Passes.Seasons;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Cli.Commands.Seasons;

/// <summary><c>launchsim season correct</c>: one value of a pass, with a record of it once the pass is closed.</summary>
internal static class SeasonCorrectCommand
{
    public static Command Create(Session session)
    {
        Argument<string> file = SeasonInput.Pass();
        var change = new Argument<string>("path=value") { HelpName = "path=value", Description = "Which value and what it is to be, as in \"seen.rear_open=frame 172\"; nothing after the equals sign takes it away" };
        var why = new Option<string>("--why") { HelpName = "text", Description = "Why; needed for a closed pass, in which it is kept with what was and what is" };
        Option<string> day = SeasonInput.Day();
        var command = new Command("correct", "Correct one value of a pass; a closed one keeps what was, what is, why and when") { file, change, why, day };
        command.SetAction(parsed =>
        {
            string given = parsed.GetRequiredValue(change);
            int equals = given.IndexOf('=', StringComparison.Ordinal);
            if (equals < 1)
            {
                throw new InputException($"path=value: found `{given}`, no path before an equals sign; write \"path=value\", as in \"seen.rear_open=frame 172\"");
            }

            string path = given[..equals].Trim(), value = given[(equals + 1)..].Trim();
            if (value.Contains('\n', StringComparison.Ordinal))
            {
                throw new InputException($"path=value: found several lines for `{path}`; allowed: a value on one line");
            }

            DateOnly when = SeasonInput.Day(parsed.GetValue(day));
            SeasonWritten written = SeasonInput.Write(book => book.Correct(parsed.GetRequiredValue(file), path, value.Length == 0 ? null : value, parsed.GetValue(why), when, session.Cancellation), session);
            SeasonInput.Tell(written.Errors.Concat(written.Warnings), session);
            if (written is not { File: { } changed, Pass: { } pass })
            {
                return ExitCode.BadInput;
            }

            PassCorrection? last = pass.IsClosed ? pass.Corrections[^1] : null;
            session.Output.WriteLine(last is null
                ? $"changed {path} in {changed}; the pass is open, so that nothing had to be recorded"
                : $"corrected {path} in {changed}: {last.Was ?? "nothing"} → {last.Is ?? "nothing"}, {last.Why}");
            return ExitCode.Done;
        });
        return command;
    }
}
