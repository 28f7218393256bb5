using System.CommandLine;
using System.Globalization;
using LaunchSim.Cli.Output;
using LaunchSim.Cli.Terminal;
using LaunchSim.Scenarios;

namespace LaunchSim.Cli.Commands;

/// <summary><c>launchsim check</c>: reads files, tells every error and warning, and what a run still lacks.</summary>
internal static class CheckCommand
{
    public static Command Create(Session session)
    {
        Argument<string[]> files = Settings.Files();
        Option<string[]> set = Settings.Set();
        var picture = new Option<string>("--picture") { HelpName = "path", Description = "Draw the side view with every point as entered, .png or .svg, also of a file with errors; several scenarios need a folder" };
        var command = new Command("check", "Read scenario files, report every error and warning, and list what a run still lacks") { files, set, picture };
        command.SetAction(parsed =>
        {
            IReadOnlyList<string> found = InputFiles.Find(parsed.GetRequiredValue(files));
            return Check(found, Settings.Overrides(parsed.GetValue(set)), EnteredPictures.Plan(found, parsed.GetValue(picture)), session);
        });
        return command;
    }

    private static int Check(IReadOnlyList<string> files, List<(string Path, string Value)> overrides, EnteredPictures pictures, Session session)
    {
        ScenarioReader reader = StandingCheck.Reader(ReadPurpose.Check);
        bool good = true;
        foreach (string file in files)
        {
            session.Cancellation.ThrowIfCancellationRequested();
            ReadResult result = reader.Read(file, overrides);
            Findings.Write(result, session.Error);
            pictures.Write(file, result, session);
            good &= result.Scenario is not null;
            session.Output.WriteLine($"{file}: {Counted(result.Errors.Count, "error")}, {Counted(result.Warnings.Count, "warning")}");
            session.Output.WriteLine(result.Scenario switch
            {
                null => "  what a run lacks shows once the errors are mended",
                { MissingForRun.Count: 0 } => "  needed for a run: nothing more",
                var scenario => $"  needed for a run:\n    {string.Join("\n    ", scenario.MissingForRun)}",
            });
        }

        return good ? ExitCode.Done : ExitCode.BadInput;
    }

    private static string Counted(int count, string what) =>
        count == 0 ? $"no {what}s" : string.Create(CultureInfo.InvariantCulture, $"{count} {what}{(count == 1 ? "" : "s")}");
}
