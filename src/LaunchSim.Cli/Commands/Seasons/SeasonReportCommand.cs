using System.CommandLine;
using System.Text;
using LaunchSim.Cli.Completion;
using LaunchSim.Cli.Output;
using LaunchSim.Cli.Terminal;
using LaunchSim.Passes.Seasons;
using LaunchSim.Reports.Numbers;
using LaunchSim.Web.Seasons;

namespace LaunchSim.Cli.Commands.Seasons;

/// <summary><c>launchsim season report</c>: the season on one page for a browser or for paper.</summary>
internal static class SeasonReportCommand
{
    private const string UsualTarget = "season.html";

    public static Command Create(Session session)
    {
        Argument<string> folder = SeasonInput.Folder();
        var target = new Option<string>("--out") { HelpName = "file", CompletionSources = { FileOffers.Ending(".html") }, Description = $"The page, .html; {UsualTarget} when left out. An earlier page there is replaced" };
        Option<string> fitted = SeasonInput.Fitted();
        Option<string> units = Settings.Units();
        var command = new Command("report", "The season on one page, to read in a browser or to print: no network, no script") { folder, target, fitted, units };
        command.SetAction(parsed =>
        {
            if (SeasonInput.Read(parsed.GetRequiredValue(folder), parsed.GetValue(fitted), session) is not { } season)
            {
                return ExitCode.BadInput;
            }

            OutputFile file = PageTarget.Plan(parsed.GetValue(target) ?? UsualTarget, SeasonInput.Inputs(season));
            SeasonCourse course = SeasonInput.Predict(season, readsLogs: true, session);
            string text = SeasonPage.Of(course, new Readout(SeasonInput.Units(parsed.GetValue(units), season)), $"{ProgramVersion.Name} {ProgramVersion.Text}").Text;
            file.Write(stream => stream.Write(Encoding.UTF8.GetBytes(text)), session.Cancellation);
            session.Output.WriteLine($"{(file.Replaces ? "replaced" : "wrote")} {file.Shown}");
            return ExitCode.Done;
        });
        return command;
    }
}
