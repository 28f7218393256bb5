using System.CommandLine;
using LaunchSim.Cli.Output;
using LaunchSim.Cli.Output.Seasons;
using LaunchSim.Cli.Terminal;
using LaunchSim.Passes.Seasons;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Cli.Commands.Seasons;

/// <summary><c>launchsim season show</c>: one pass, predicted beside seen.</summary>
internal static class SeasonShowCommand
{
    public static Command Create(Session session)
    {
        Argument<string> file = SeasonInput.Pass();
        Option<string> fitted = SeasonInput.Fitted();
        var json = new Option<bool>("--json") { Description = "Print one JSON document, in SI units, in the place of the text" };
        Option<string> units = Settings.Units();
        var command = new Command("show", "One pass: how the car was set, what was seen beside what was predicted, and the notes") { file, fitted, json, units };
        command.SetAction(parsed => Show(parsed.GetRequiredValue(file), parsed.GetValue(fitted), parsed.GetValue(json), parsed.GetValue(units), session));
        return command;
    }

    private static int Show(string file, string? fitted, bool asJson, string? units, Session session)
    {
        ScenarioReader scenarios = StandingCheck.Reader(ReadPurpose.Run);
        PassResult read = new PassReader(scenarios).Read(file);
        SeasonFileResult about = SeasonFileReader.Read(Path.GetDirectoryName(file) ?? "");
        ReadResult? fit = (fitted ?? about.Season?.FittedFile) is { } name ? scenarios.Read(name) : null;
        SeasonInput.Tell(read.Errors.Concat(about.Errors).Concat(fit?.Errors ?? []).Concat(read.Warnings).Concat(fit?.Warnings ?? []), session);
        if (read.Pass is not { } pass || about.Season is null || fit is { Scenario: null })
        {
            return ExitCode.BadInput;
        }

        SeasonCourse course = SeasonInput.Predict(new Season { Folder = Path.GetDirectoryName(file) ?? "", Name = pass.Name, File = about.Season, Passes = [pass], Fitted = fit?.Scenario }, readsLogs: true, session);
        if (asJson)
        {
            using var stream = new WriterStream(session.Output);
            SeasonJson.Write(course, null, stream);
        }
        else
        {
            session.Output.Write(SeasonShowText.Of(course.Entries[0], new Readout(Settings.System(units, pass.Scenario.UnitSystem)), session.Screen));
        }

        return ExitCode.Done;
    }
}
