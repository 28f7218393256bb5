using System.CommandLine;
using LaunchSim.Cli.Completion;
using LaunchSim.Cli.Output;
using LaunchSim.Cli.Terminal;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Comparing;
using LaunchSim.Studies.Doubting;

namespace LaunchSim.Cli.Commands;

/// <summary><c>launchsim compare</c>: set-ups side by side, what differs between their launches, and why.</summary>
internal static class CompareCommand
{
    public static Command Create(Session session)
    {
        Argument<string[]> files = Settings.Files();
        var csv = new Option<string>("--csv") { HelpName = "path", CompletionSources = { FileOffers.Ending(".csv") }, Description = "Write all figures with their differences, in SI units; an earlier table there is replaced" };
        var json = new Option<bool>("--json") { Description = "Print one JSON document, in SI units, in the place of the text" };
        var picture = new Option<string>("--picture") { HelpName = "path", CompletionSources = { FileOffers.Ending(".png", ".svg") }, Description = "Draw side views and launches over one another on one sheet, .png or .svg; an earlier picture there is replaced" };
        var charts = new Option<string>("--charts") { HelpName = "folder", CompletionSources = { FileOffers.Folders }, Description = "Draw all charts, the launches over one another, into this folder, as NAME-compared-CHART.png" };
        Option<string> format = Settings.Format();
        Option<string> profile = Settings.Profile();
        Option<string> units = Settings.Units();
        Option<string[]> set = Settings.Set();
        var help = new HelpOptions();
        var command = new Command("compare", "Set-ups side by side: the first against each of the others, better or worse by the aims, and why") { files, csv, json, picture, charts, format, profile, help.Doubt, help.Cars, help.Typical, units, set };
        command.SetAction(parsed =>
        {
            IReadOnlyList<string> inputs = InputFiles.Find(parsed.GetRequiredValue(files));
            if (inputs.Count < 2)
            {
                throw new InputException($"compare: found one scenario, {inputs[0]}; allowed: two or more, the first of which the others are compared with");
            }

            DoubtSettings? doubt = help.Read(parsed);
            AimProfile? wanted = Settings.Profile(parsed.GetValue(profile));
            if (Findings.ReadAll(StandingCheck.Reader(ReadPurpose.Run), inputs, Settings.Overrides(parsed.GetValue(set)), session) is not { } scenarios)
            {
                return ExitCode.BadInput;
            }

            AimSet aims = AimSet.Of(scenarios[0].Aims, wanted, out string? problem) ?? throw new InputException(problem!);
            var targets = new RunTargets { Csv = parsed.GetValue(csv), Picture = parsed.GetValue(picture), Charts = parsed.GetValue(charts), Format = parsed.GetValue(format) };
            var places = CompareFiles.Plan(inputs, targets);
            Comparison comparison = null!;
            session.WithProgress("launches", scenarios.Count, done => comparison = Comparison.Of(scenarios, aims, done, session.Cancellation));
            HelpResult? shares = null;
            if (doubt is not null)
            {
                session.WithProgress("cars", doubt.Cars, 0, added => shares = HelpShares.Of([.. comparison.SetUps.Select(setUp => setUp.Run.Scenario)], aims, doubt, holdsGrip: false, added, session.Cancellation, comparison.Settings));
            }

            var readout = new Readout(Settings.System(parsed.GetValue(units), scenarios[0].UnitSystem));
            session.Output.Write(parsed.GetValue(json) ? CompareJson.Text(comparison, shares, readout) : CompareText.Of(comparison, shares, readout, session.Screen));
            session.Output.Flush();
            places.Write(comparison, readout, session);
            return Stopped(comparison, session) ? ExitCode.Failed : ExitCode.Done;
        });
        return command;
    }

    private static bool Stopped(Comparison comparison, Session session)
    {
        ComparedSetUp[] stopped = [.. comparison.SetUps.Where(setUp => setUp.Run.Failure is not null)];
        foreach (ComparedSetUp setUp in stopped)
        {
            session.Error.WriteLine($"launchsim: {setUp.Run.Scenario.SourceFile}: {FailureWords.Of(setUp.Run.Failure!)}");
        }

        return stopped.Length > 0;
    }
}
