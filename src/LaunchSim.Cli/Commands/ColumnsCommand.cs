using System.CommandLine;
using LaunchSim.Cli.Completion;
using LaunchSim.Cli.Output;
using LaunchSim.Cli.Terminal;
using LaunchSim.Passes.Logs.Proposing;
using LaunchSim.Scenarios;

namespace LaunchSim.Cli.Commands;

/// <summary><c>launchsim columns</c>: proposes which column of a log is what, and writes the mapping that says so.</summary>
internal static class ColumnsCommand
{
    public static Command Create(Session session)
    {
        var log = new Argument<string>("LOG") { HelpName = "LOG", CompletionSources = { FileOffers.Ending(".csv", ".txt", ".tsv") }, Description = "A log as text, a row for each instant" };
        var target = new Option<string>("--out") { HelpName = "file", CompletionSources = { FileOffers.Ending(".yaml") }, Description = "Write the mapping into this file, .yaml; nothing that is there is overwritten. Without it the mapping is printed below the table" };
        var command = new Command("columns", "Say which column of a log may be which quantity in which unit, why, and what is left open; write the mapping for `pass`") { log, target };
        command.SetAction(parsed =>
        {
            string file = parsed.GetRequiredValue(log);
            Targets.RefuseNameless(("--out", parsed.GetValue(target)));
            NewScenarioFile? mapping = parsed.GetValue(target) is { } path ? NewScenarioFile.Plan(path) : null;
            ProposalResult result = LogProgress.Read(session, file, progress => ColumnProposal.Of(file, progress, session.Cancellation));
            if (result.Proposal is not { } proposal)
            {
                foreach (Diagnostic error in result.Errors)
                {
                    session.Error.WriteLine(error.ToString());
                }

                return ExitCode.BadInput;
            }

            session.Output.Write(ColumnsText.Of(proposal, session.Screen));
            if (mapping is null)
            {
                session.Output.Write("\n" + proposal.Text());
            }

            session.Output.Flush();
            if (mapping is not null)
            {
                mapping.Write(proposal.Text(), session.Cancellation);
                session.Error.WriteLine($"wrote {parsed.GetValue(target)}");
            }

            return ExitCode.Done;
        });
        return command;
    }
}
