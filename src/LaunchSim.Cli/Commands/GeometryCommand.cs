using System.CommandLine;
using LaunchSim.Cli.Completion;
using LaunchSim.Cli.Output;
using LaunchSim.Cli.Terminal;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios;

namespace LaunchSim.Cli.Commands;

/// <summary><c>launchsim geometry</c>: what the side view tells, for every choice of holes and through the travel.</summary>
internal static class GeometryCommand
{
    public static Command Create(Session session)
    {
        var file = new Argument<string>("FILE") { HelpName = "FILE", CompletionSources = { FileOffers.Scenarios }, Description = "A scenario, or the part of one that describes the side view" };
        var percent = new Option<string>("--percent") { HelpName = "range", Description = "Keep the holes that give this percent, as in \"150 to 175\"" };
        var length = new Option<string>("--length") { HelpName = "range", Description = "Keep the holes whose instant centre is this far ahead, as in \"30 to 50 in\"" };
        var csv = new Option<string>("--csv") { HelpName = "path", CompletionSources = { FileOffers.Ending(".csv") }, Description = "Write the tables, in SI units; an earlier table there is replaced" };
        var json = new Option<bool>("--json") { Description = "Print one JSON document, in SI units, in the place of the text" };
        var charts = new Option<string>("--charts") { HelpName = "folder", CompletionSources = { FileOffers.Folders }, Description = "Draw the side view, the map of holes and the travel into this folder, as NAME-CHART.png" };
        Option<string> format = Settings.Format();
        Option<string> units = Settings.Units();
        Option<string[]> set = Settings.Set();
        var command = new Command("geometry", "Percent, instant centre and bars in side view, for every choice of holes and through the travel") { file, percent, length, csv, json, charts, format, units, set };
        command.SetAction(parsed =>
        {
            string name = parsed.GetRequiredValue(file);
            Span? percentKept = Span.Percent(parsed.GetValue(percent)), lengthKept = Span.Length(parsed.GetValue(length));
            List<(string, string)> overrides = Settings.Overrides(parsed.GetValue(set));
            var files = GeometryFiles.Plan(name, parsed.GetValue(csv), parsed.GetValue(charts), parsed.GetValue(format));
            if (Findings.ReadAll(StandingCheck.Reader(ReadPurpose.Geometry), [name], overrides, session) is not [var scenario])
            {
                return ExitCode.BadInput;
            }

            var readout = new Readout(Settings.System(parsed.GetValue(units), scenario.UnitSystem));
            if (GeometryReport.ChoicesOf(scenario) > GeometryReport.MostChoices)
            {
                throw new InputException($"{scenario.SourceFile}: found brackets with more than 100,000 choices of holes together; leave out holes that you would not use");
            }

            bool keepsAll = percentKept is null && lengthKept is null;
            var report = GeometryReport.Of(scenario, readout.IsShop, keepsAll ? null
                : line => percentKept?.Holds(line.Percent) != false && lengthKept?.Holds(line.InstantCentreAhead) != false);
            files.Write(report, readout, session);
            session.Output.Write(parsed.GetValue(json) ? GeometryJson.Text(report) : GeometryText.Of(report, readout, session.Screen));
            return ExitCode.Done;
        });
        return command;
    }
}
