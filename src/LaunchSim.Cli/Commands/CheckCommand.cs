using System.CommandLine;
using System.Globalization;
using LaunchSim.Cli.Completion;
using LaunchSim.Cli.Output;
using LaunchSim.Cli.Terminal;
using LaunchSim.Reports;
using LaunchSim.Reports.Decisive;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Typical;

namespace LaunchSim.Cli.Commands;

/// <summary>
/// <c>launchsim check</c>: reads files, tells every error and warning, what a run still lacks, and which numbers decide the
/// answer.
/// </summary>
internal static class CheckCommand
{
    // Some hundred and fifty launches of so many steps each take a second or two.
    private const int MostSteps = 3000;

    public static Command Create(Session session)
    {
        Argument<string[]> files = Settings.Files();
        Option<string[]> set = Settings.Set();
        Option<string> units = Settings.Units();
        var picture = new Option<string>("--picture") { HelpName = "path", CompletionSources = { FileOffers.Ending(".png", ".svg") }, Description = "Draw the side view with every point as entered, .png or .svg, also of a file with errors; several scenarios need a folder" };
        var command = new Command("check", "Read scenario files, report every error and warning, list what a run still lacks, and tell which numbers decide the answer") { files, picture, set, units };
        command.SetAction(parsed =>
        {
            IReadOnlyList<string> found = InputFiles.Find(parsed.GetRequiredValue(files));
            return Check(found, Settings.Overrides(parsed.GetValue(set)), EnteredPictures.Plan(found, parsed.GetValue(picture)), parsed.GetValue(units), session);
        });
        return command;
    }

    private static int Check(IReadOnlyList<string> files, List<(string Path, string Value)> overrides, EnteredPictures pictures, string? units, Session session)
    {
        var reader = new ScenarioReader { Purpose = ReadPurpose.Check, CarCheck = StandingCheck.OfCar, GeometryCheck = StandingCheck.OfSideView, WarnsOfUnusual = true };
        bool good = true;
        foreach (string file in files)
        {
            session.Cancellation.ThrowIfCancellationRequested();
            ReadResult result = reader.Read(file, overrides);
            Findings.Write(result, session.Error);
            pictures.Write(file, result, session);
            good &= result.Scenario is not null;
            session.Output.WriteLine($"{file}: {Counted(result.Errors.Count, "error")}, {Counted(result.Warnings.Count, "warning")}");
            session.Output.Write(result.Scenario switch
            {
                null => "  what a run lacks shows once the errors are mended\n",
                { Car: null } part => CheckText.OfLacking(LackingValue.Of(part, Settings.System(units, part.UnitSystem)), session.Screen),
                var whole => "  needed for a run: nothing more\n" + Decisive(whole, new Readout(Settings.System(units, whole.UnitSystem)), session),
            });
        }

        return good ? ExitCode.Done : ExitCode.BadInput;
    }

    private static string Decisive(Scenario scenario, Readout readout, Session session)
    {
        LaunchOutcome launch = LaunchOutcome.Of(scenario, session.Cancellation);
        int steps = launch.Solution.End.Statistics.Steps;
        if (launch.Failure is null && steps > MostSteps)
        {
            return string.Create(CultureInfo.InvariantCulture, $"  One launch of this car takes {steps:N0} steps, where some hundreds are usual: a rate, a damping, a mass or the tolerance is far from those of a car.\n")
                + "  Which numbers decide the answer would take many such launches, and is told once they are mended.\n";
        }

        return launch.Failure is { } failure
            ? $"  {FailureWords.Of(failure)} Which numbers decide the answer is told once it comes to its end.\n"
            : CheckText.OfDecisive(DecisiveNumbers.Of(launch, readout, session.Cancellation), readout, session.Screen);
    }

    private static string Counted(int count, string what) =>
        count == 0 ? $"no {what}s" : string.Create(CultureInfo.InvariantCulture, $"{count} {what}{(count == 1 ? "" : "s")}");
}
