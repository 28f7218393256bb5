using System.CommandLine;
using System.Text;
using LaunchSim.Cli.Completion;
using LaunchSim.Cli.Output;
using LaunchSim.Cli.Terminal;
using LaunchSim.Passes.Comparing;
using LaunchSim.Passes.Logs;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Web.Documents;
using LaunchSim.Web.Pages;

namespace LaunchSim.Cli.Commands;

/// <summary><c>launchsim pass</c>: the data of a pass over its prediction.</summary>
internal static class PassCommand
{
    public static Command Create(Session session)
    {
        var file = new Argument<string>("FILE") { HelpName = "FILE", CompletionSources = { FileOffers.Scenarios }, Description = "The scenario of the pass, as the car was set up; or its pass file, which names car, changes and logs" };
        var logs = new Argument<string[]>("LOG") { HelpName = "LOG", Arity = ArgumentArity.ZeroOrMore, CompletionSources = { FileOffers.Ending(".csv", ".txt", ".tsv", ".yaml", ".yml") }, Description = "Logs of that one pass: text in rows, or marks that were written down by hand (.yaml); each with a clock of its own. Those of the pass file when left out" };
        var mapping = new Option<string[]>("--mapping") { HelpName = "file", Arity = ArgumentArity.OneOrMore, CompletionSources = { FileOffers.Ending(".yaml", ".yml") }, Description = "Which column is which quantity: one file for all logs, or one for each in their order. Without it what `launchsim columns` is sure of is taken" };
        var csv = new Option<string>("--csv") { HelpName = "path", CompletionSources = { FileOffers.Ending(".csv") }, Description = "Write every value beside the predicted one, in SI units; an earlier table there is replaced" };
        var json = new Option<bool>("--json") { Description = "Print one JSON document, in SI units, in the place of the text" };
        var picture = new Option<string>("--picture") { HelpName = "path", CompletionSources = { FileOffers.Ending(".png", ".svg") }, Description = "Draw measured over predicted on one sheet, .png or .svg; an earlier picture there is replaced" };
        var charts = new Option<string>("--charts") { HelpName = "folder", CompletionSources = { FileOffers.Folders }, Description = "Draw a chart of each quantity into this folder, as NAME-measured-QUANTITY.png" };
        var page = new Option<string>("--page") { HelpName = "file", CompletionSources = { FileOffers.Ending(".html") }, Description = "Write one page to open in a browser, .html: the launch moving, with what was measured over its charts. An earlier page there is replaced" };
        Option<string> format = Settings.Format();
        Option<string> units = Settings.Units();
        Option<string[]> set = Settings.Set();
        var command = new Command("pass", "Lay the logs of a pass over its prediction: where t = 0 is and how sure, figures measured and predicted with their difference and its doubt, charts") { file, logs, mapping, csv, json, picture, charts, page, format, units, set };
        command.SetAction(parsed =>
        {
            string scenario = parsed.GetRequiredValue(file);
            string[] named = parsed.GetValue(logs) ?? [], mappings = parsed.GetValue(mapping) ?? [];
            (string Name, string Value)[] overrides = [.. Settings.Overrides(parsed.GetValue(set))];
            bool isPass = PassReader.IsPass(scenario);
            RefuseCounts(scenario, named, mappings, isPass, overrides.Length > 0);
            PassFile? pass = null;
            if (isPass && (pass = Findings.ReadPass(scenario, session)) is null)
            {
                return ExitCode.BadInput;
            }

            (string Log, string? Mapping)[] read = pass is not null && named.Length == 0 ? [.. pass.Logs.Select(log => (log.File, log.Mapping))]
                : [.. named.Select((log, i) => (log, mappings.Length == 0 ? null : mappings.Length == 1 ? mappings[0] : mappings[i]))];
            if (pass is not null && read.Length == 0)
            {
                throw new InputException($"{scenario}: found a pass without logs; allowed: logs in the pass file or behind it on the line; mend: what was only seen is compared by `launchsim after {scenario}`");
            }

            string[] inputs = [scenario, .. pass is null ? Array.Empty<string>() : [pass.CarFile], .. read.Select(one => one.Log), .. read.Select(one => one.Mapping).OfType<string>()];
            var targets = new RunTargets { Csv = parsed.GetValue(csv), Picture = parsed.GetValue(picture), Charts = parsed.GetValue(charts), Format = parsed.GetValue(format) };
            var files = PassFiles.Plan(inputs, targets, parsed.GetValue(page));
            Scenario? one = pass?.Scenario ?? (Findings.ReadAll(StandingCheck.Reader(ReadPurpose.Run), [scenario], overrides, session) is [var plain] ? plain : null);
            if (one is null)
            {
                return ExitCode.BadInput;
            }

            var run = LaunchOutcome.Of(one, pass?.Run ?? one.Run, session.Cancellation);
            if (ReadAll(read, run, session) is not { } aligned)
            {
                return ExitCode.BadInput;
            }

            var comparison = PassComparison.Of(run, aligned);
            files.PlanCharts(inputs, targets, PassPictures.Names(comparison));
            var readout = new Readout(Settings.System(parsed.GetValue(units), one.UnitSystem));
            session.Output.Write(parsed.GetValue(json) ? PassJson.Text(comparison, readout) : PassText.Of(comparison, readout, session.Screen));
            session.Output.Flush();
            files.Write(comparison, readout, session);
            PassFiles.Write(files.Page, stream => stream.Write(Encoding.UTF8.GetBytes(Page(comparison, readout).Text)), session);
            if (run.Failure is { } failure)
            {
                session.Error.WriteLine($"launchsim: {scenario}: {FailureWords.Of(failure)}");
                return ExitCode.Failed;
            }

            return ExitCode.Done;
        });
        return command;
    }

    private static HtmlPage Page(PassComparison comparison, Readout readout) =>
        LaunchPage.Of([new DocumentedLaunch(comparison.Run, comparison.Run.Scenario.Name, null, comparison)], readout, $"{ProgramVersion.Name} {ProgramVersion.Text}");

    private static void RefuseCounts(string file, string[] logs, string[] mappings, bool isPass, bool isChanged)
    {
        if (Array.Find([.. logs, .. mappings], name => name.Length == 0) is not null)
        {
            throw new InputException("pass: found a file without a name; allowed: the scenario, then the logs, then --mapping with its file");
        }

        if (logs.Length == 0 && !isPass && File.Exists(file))
        {
            throw new InputException("pass: found a scenario and no log; allowed: a scenario and the logs of a pass, or a pass file that names its logs");
        }

        if (isPass && isChanged)
        {
            throw new InputException("--set: found beside a pass file; allowed: with a scenario; mend: what was set otherwise on that pass stands in the pass file, under changed");
        }

        if (mappings.Length > 0 && logs.Length == 0)
        {
            throw new InputException("--mapping: found without a log on the line; allowed: behind logs; mend: a pass file names the mapping beside each of its logs");
        }

        if (mappings.Length > 1 && mappings.Length != logs.Length)
        {
            throw new InputException($"--mapping: found {mappings.Length} mappings for {logs.Length} {(logs.Length == 1 ? "log" : "logs")}; allowed: one for all, or one for each in their order");
        }
    }

    private static List<ComparedLog>? ReadAll((string Log, string? Mapping)[] logs, LaunchOutcome run, Session session)
    {
        var aligned = new List<ComparedLog>();
        foreach ((string log, string? mapping) in logs)
        {
            LogResult result = LogProgress.Read(session, log, progress => LogReader.Read(log, mapping, run, progress, session.Cancellation));
            foreach (Diagnostic error in result.Errors)
            {
                session.Error.WriteLine(error.ToString());
            }

            if (result.Log is { } read)
            {
                aligned.Add(new ComparedLog(log, read));
            }
        }

        return aligned.Count == logs.Length ? aligned : null;
    }
}
