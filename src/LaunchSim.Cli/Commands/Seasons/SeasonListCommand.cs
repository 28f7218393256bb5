using System.CommandLine;
using LaunchSim.Cli.Output;
using LaunchSim.Cli.Output.Seasons;
using LaunchSim.Cli.Terminal;
using LaunchSim.Passes.Seasons;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Cli.Commands.Seasons;

/// <summary><c>launchsim season list</c>: the passes in a table.</summary>
internal static class SeasonListCommand
{
    public static Command Create(Session session)
    {
        Argument<string> folder = SeasonInput.Folder();
        var json = new Option<bool>("--json") { Description = "Print one JSON document, in SI units, in the place of the text" };
        Option<string> units = Settings.Units();
        var command = new Command("list", "The passes in a table: when, what was changed, the time, and which end moved first") { folder, json, units };
        command.SetAction(parsed =>
        {
            if (SeasonInput.Read(parsed.GetRequiredValue(folder), null, session) is not { } season)
            {
                return ExitCode.BadInput;
            }

            SeasonCourse course = SeasonInput.Predict(season, readsLogs: false, session);
            if (parsed.GetValue(json))
            {
                using var stream = new WriterStream(session.Output);
                SeasonJson.Write(course, null, stream);
            }
            else
            {
                session.Output.Write(SeasonListText.Of(course, new Readout(SeasonInput.Units(parsed.GetValue(units), season)), session.Screen));
            }

            return ExitCode.Done;
        });
        return command;
    }
}
