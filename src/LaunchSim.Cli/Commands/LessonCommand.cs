using System.CommandLine;
using System.Text;
using LaunchSim.Cli.Completion;
using LaunchSim.Cli.Output;
using LaunchSim.Cli.Terminal;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios.Units;
using LaunchSim.Web.Lesson;
using LaunchSim.Web.Pages;

namespace LaunchSim.Cli.Commands;

/// <summary><c>launchsim lesson</c>: an educator's page, in one file for a browser.</summary>
internal static class LessonCommand
{
    private const string UsualTarget = "lesson.html";

    public static Command Create(Session session)
    {
        var target = new Option<string>("--out") { HelpName = "file", CompletionSources = { FileOffers.Ending(".html") }, Description = $"The page, .html; {UsualTarget} when left out. An earlier page there is replaced" };
        Option<string> units = Settings.Units();
        units.Description = "Units of the lesson; shop when left out";
        var command = new Command("lesson", "A lesson to read in a browser: why more than 100 % separates the axle, from a free-body drawing to cars that move") { target, units };
        command.SetAction(parsed =>
        {
            OutputFile file = PageTarget.Plan(parsed.GetValue(target) ?? UsualTarget, []);
            var readout = new Readout(Settings.System(parsed.GetValue(units), UnitSystem.Shop));
            HtmlPage page = LessonPage.Of(readout, $"{ProgramVersion.Name} {ProgramVersion.Text}", session.Cancellation);
            file.Write(stream => stream.Write(Encoding.UTF8.GetBytes(page.Text)), session.Cancellation);
            session.Output.WriteLine($"{(file.Replaces ? "replaced" : "wrote")} {file.Shown}");
            return ExitCode.Done;
        });
        return command;
    }
}
