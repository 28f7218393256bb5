using System.CommandLine;
using System.Text;
using LaunchSim.Cli.Completion;
using LaunchSim.Cli.Output;
using LaunchSim.Cli.Terminal;
using LaunchSim.Passes.After;
using LaunchSim.Passes.Fitting;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Studies.Aims;

namespace LaunchSim.Cli.Commands;

/// <summary><c>launchsim after</c>: one screen between two passes.</summary>
internal static class AfterCommand
{
    public static Command Create(Session session)
    {
        var pass = new Argument<string>("PASS") { HelpName = "PASS", CompletionSources = { FileOffers.Scenarios }, Description = "The pass file" };
        Option<string> profile = Settings.Profile();
        var json = new Option<bool>("--json") { Description = "Print one JSON document, in SI units, in the place of the text" };
        Option<string> units = Settings.Units();
        var command = new Command("after", "One screen between two passes: what was expected, what came, the one change to make, and what must be seen if it worked") { pass, profile, json, units };
        command.SetAction(parsed =>
        {
            if (Findings.ReadPass(parsed.GetRequiredValue(pass), session) is not { } file)
            {
                return ExitCode.BadInput;
            }

            AimSet aims = AimSet.Of(file.Scenario.Aims, Settings.Profile(parsed.GetValue(profile)), out string? problem) ?? throw new InputException(problem!);
            LaunchOutcome predicted = LaunchOutcome.Of(file.Scenario, file.Run, session.Cancellation);
            PassLogsResult logs = PassLogs.Read(file, predicted, session.Cancellation);
            foreach (Diagnostic error in logs.Errors)
            {
                session.Error.WriteLine(error.ToString());
            }

            if (logs.Errors.Count > 0)
            {
                return ExitCode.BadInput;
            }

            AfterResult result = AfterStudy.Run(file, predicted, logs.Logs, aims, session.Cancellation);
            var readout = new Readout(Settings.System(parsed.GetValue(units), file.Scenario.UnitSystem));
            if (parsed.GetValue(json))
            {
                using var stream = new MemoryStream();
                AfterJson.Write(result, readout, stream);
                session.Output.Write(Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length));
            }
            else
            {
                session.Output.Write(AfterText.Of(result, readout, session.Screen));
            }

            return result.Next.Score.Exists ? ExitCode.Done : StudyRuns.NotDone(file.SourceFile, result.Next.Trouble, session);
        });
        return command;
    }
}
