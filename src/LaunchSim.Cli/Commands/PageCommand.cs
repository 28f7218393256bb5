using System.CommandLine;
using System.Text;
using LaunchSim.Cli.Completion;
using LaunchSim.Cli.Output;
using LaunchSim.Cli.Terminal;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Doubting;
using LaunchSim.Web.Documents;
using LaunchSim.Web.Pages;

namespace LaunchSim.Cli.Commands;

/// <summary><c>launchsim page</c>: launches that move, in one file for a browser.</summary>
internal static class PageCommand
{
    private const string UsualTarget = "page.html";

    public static Command Create(Session session)
    {
        Argument<string[]> files = Settings.Files();
        var target = new Option<string>("--out") { HelpName = "file", CompletionSources = { FileOffers.Ending(".html") }, Description = $"The page, .html; {UsualTarget} when left out. An earlier page there is replaced" };
        Option<string> units = Settings.Units();
        Option<string[]> set = Settings.Set();
        var help = new HelpOptions();
        help.Doubt.Description = "Also show between which bounds nine plausible cars in ten stay, and how sure each statement is";
        var command = new Command("page", $"One page to open in a browser and to send around: the launch moving in slow motion with its charts, one to {LaunchPage.MostLaunches} set-ups") { files, target, help.Doubt, help.Cars, help.Typical, units, set };
        command.SetAction(parsed =>
        {
            string path = parsed.GetValue(target) ?? UsualTarget;
            IReadOnlyList<string> inputs = InputFiles.Find(parsed.GetRequiredValue(files));
            if (inputs.Count > LaunchPage.MostLaunches)
            {
                throw new InputException($"page: found {inputs.Count} scenarios; allowed: 1 to {LaunchPage.MostLaunches} on one page, name those that are to be laid over one another");
            }

            DoubtSettings? doubt = help.Read(parsed);
            OutputFile file = PageTarget.Plan(path, inputs);
            if (Findings.ReadAll(StandingCheck.Reader(ReadPurpose.Run), inputs, Settings.Overrides(parsed.GetValue(set)), session) is not { } scenarios)
            {
                return ExitCode.BadInput;
            }

            LaunchOutcome[] runs = [.. scenarios.Select(scenario => LaunchOutcome.Of(scenario, session.Cancellation))];
            DoubtResult?[] doubts = new DoubtResult?[runs.Length];
            if (doubt is not null)
            {
                Doubt(scenarios, doubt, doubts, session);
            }

            string[] names = Names(scenarios);
            var readout = new Readout(Settings.System(parsed.GetValue(units), scenarios[0].UnitSystem));
            HtmlPage page = LaunchPage.Of([.. runs.Select((run, i) => new DocumentedLaunch(run, names[i], doubts[i]))], readout, $"{ProgramVersion.Name} {ProgramVersion.Text}");
            file.Write(stream => stream.Write(Encoding.UTF8.GetBytes(page.Text)), session.Cancellation);
            session.Output.WriteLine($"{(file.Replaces ? "replaced" : "wrote")} {file.Shown}");
            foreach (LaunchOutcome run in runs.Where(run => run.Failure is not null))
            {
                session.Error.WriteLine($"launchsim: {run.Scenario.SourceFile}: {FailureWords.Of(run.Failure!)}");
            }

            return Array.TrueForAll(runs, run => run.Failure is null) ? ExitCode.Done : ExitCode.Failed;
        });
        return command;
    }

    private static void Doubt(IReadOnlyList<Scenario> scenarios, DoubtSettings settings, DoubtResult?[] doubts, Session session) =>
        session.WithProgress("cars", (long)settings.Cars * scenarios.Count, 0, added =>
        {
            for (int i = 0; i < scenarios.Count; i++)
            {
                AimSet aims = AimSet.Of(scenarios[i].Aims, null, out string? problem) ?? throw new InputException(problem!);
                using DoubtStudy study = DoubtStudy.Open(new DoubtPlan(scenarios[i], aims, settings), "", Studies.Running.Shard.Whole, null, false);
                doubts[i] = study.Run(wantsBands: true, added, session.Cancellation);
            }
        });

    // Two set-ups of one name are told apart by their files.
    private static string[] Names(IReadOnlyList<Scenario> scenarios) =>
        [.. scenarios.Select(scenario => scenarios.Count(other => other.Name == scenario.Name) > 1 ? $"{scenario.Name} ({Path.GetFileNameWithoutExtension(scenario.SourceFile)})" : scenario.Name)];
}
