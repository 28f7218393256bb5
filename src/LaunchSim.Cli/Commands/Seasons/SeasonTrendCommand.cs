using System.CommandLine;
using LaunchSim.Cli.Completion;
using LaunchSim.Cli.Output;
using LaunchSim.Cli.Output.Seasons;
using LaunchSim.Cli.Terminal;
using LaunchSim.Passes.Seasons;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Cli.Commands.Seasons;

/// <summary><c>launchsim season trend</c>: times over the season against settings, prediction and fit beside them, and what was learned.</summary>
internal static class SeasonTrendCommand
{
    public static Command Create(Session session)
    {
        Argument<string> folder = SeasonInput.Folder();
        Option<string> fitted = SeasonInput.Fitted();
        var picture = new Option<string>("--picture") { HelpName = "path", CompletionSources = { FileOffers.Ending(".png", ".svg") }, Description = "Draw the season, .png or .svg; an earlier picture there is replaced" };
        var csv = new Option<string>("--csv") { HelpName = "path", CompletionSources = { FileOffers.Ending(".csv") }, Description = "Write a row for each pass with settings, seen, predicted and fitted times, in SI units; an earlier table there is replaced" };
        var json = new Option<bool>("--json") { Description = "Print one JSON document, in SI units, in the place of the text" };
        Option<string> units = Settings.Units();
        var command = new Command("trend", "Times over the season against settings, prediction and fit beside what was seen, and what can be learned from it") { folder, fitted, picture, csv, json, units };
        command.SetAction(parsed =>
        {
            if (SeasonInput.Read(parsed.GetRequiredValue(folder), parsed.GetValue(fitted), session) is not { } season)
            {
                return ExitCode.BadInput;
            }

            Targets.RefuseNameless(("--picture", parsed.GetValue(picture)), ("--csv", parsed.GetValue(csv)));
            OutputFile? drawn = parsed.GetValue(picture) is { } path ? OutputFile.Plan(path, PictureTarget.KindOf(path, null), SeasonInput.Inputs(season)) : null;
            OutputFile? table = parsed.GetValue(csv) is { } place ? OutputFile.Plan(place, OutputKind.Season, SeasonInput.Inputs(season)) : null;
            SeasonCourse course = SeasonInput.Predict(season, readsLogs: true, session);
            var readout = new Readout(SeasonInput.Units(parsed.GetValue(units), season));
            if (parsed.GetValue(json))
            {
                using var stream = new WriterStream(session.Output);
                SeasonJson.Write(course, SeasonLessons.Of(course, readout), stream);
            }
            else
            {
                session.Output.Write(SeasonTrendText.Of(course, readout, session.Screen));
            }

            StudyRuns.Write(table, stream => SeasonCsv.Write(course, stream), session);
            StudyRuns.Write(drawn, stream => PictureTarget.Write(SeasonPicture.Of(course, readout, $"{ProgramVersion.Name} {ProgramVersion.Text}"), drawn!.Kind, stream), session);
            return ExitCode.Done;
        });
        return command;
    }
}
