using System.CommandLine;
using LaunchSim.Charts;
using LaunchSim.Charts.Measure;
using LaunchSim.Cli.Completion;
using LaunchSim.Cli.Output;
using LaunchSim.Cli.Terminal;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Cli.Commands;

/// <summary><c>launchsim measure</c>: a sheet to print, take to the car, and write the numbers on.</summary>
internal static class MeasureCommand
{
    public static Command Create(Session session)
    {
        var linkage = new Option<string>("--linkage") { HelpName = "four-link|ladder-bar", Description = "What guides the rear axle; four-link when left out" };
        _ = linkage.AcceptOnlyFromAmong("four-link", "ladder-bar");
        Option<string> units = Settings.Units();
        units.Description = "Units after the lines to write on; shop when left out";
        var paper = new Option<string>("--paper") { HelpName = "a4|letter", Description = "Paper, on its side; letter with shop units and a4 with si when left out. What is drawn fits on either" };
        _ = paper.AcceptOnlyFromAmong("a4", "letter");
        var target = new Option<string>("--out") { HelpName = "file", CompletionSources = { FileOffers.Ending(".pdf", ".svg", ".png") }, Description = "A .pdf with both pages, or an .svg or .png, which become NAME-1 and NAME-2; measure.pdf when left out" };
        var command = new Command("measure", "A measuring sheet to print and write on: what to measure, in which order, and under which key it goes into the file") { linkage, units, paper, target };
        command.SetAction(parsed =>
        {
            UnitSystem system = Settings.System(parsed.GetValue(units), UnitSystem.Shop);
            Paper sheet = (parsed.GetValue(paper) ?? (system == UnitSystem.Shop ? "letter" : "a4")) == "letter" ? Paper.Letter : Paper.A4;
            LinkageKind kind = parsed.GetValue(linkage) == "ladder-bar" ? LinkageKind.LadderBar : LinkageKind.FourLink;
            IReadOnlyList<Picture> pages = MeasuringSheet.Pages(kind, system, sheet);
            foreach ((OutputFile file, Action<Stream> content) in PageFiles.Plan(parsed.GetValue(target) ?? "measure.pdf", pages))
            {
                file.Write(content, session.Cancellation);
                session.Output.WriteLine($"{(file.Replaces ? "replaced" : "wrote")} {file.Shown}");
            }

            session.Output.WriteLine($"Print both pages at their own size, 100 %, on {sheet.Name}, on its side; the margins are at least 12 mm (0.47 in).");
            return ExitCode.Done;
        });
        return command;
    }
}
