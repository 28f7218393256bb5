using System.CommandLine;
using System.Text;
using LaunchSim.Charts;
using LaunchSim.Charts.Launch;
using LaunchSim.Cli.Completion;
using LaunchSim.Cli.Output;
using LaunchSim.Cli.Terminal;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios;

namespace LaunchSim.Cli.Commands;

/// <summary><c>launchsim run</c>: solves launches, says what happens, writes traces.</summary>
internal sealed class RunCommand
{
    private readonly Argument<string[]> _files = Settings.Files();
    private readonly Option<string> _csv = new("--csv") { HelpName = "path", CompletionSources = { FileOffers.Ending(".csv") }, Description = "Write the trace to this file; several scenarios need a folder. An earlier trace there is replaced" };
    private readonly Option<bool> _json = new("--json") { Description = "Print JSON in the place of the text; with --out the text stays and the documents go there" };
    private readonly Option<string> _out = new("--out") { HelpName = "folder", CompletionSources = { FileOffers.Folders }, Description = "Write NAME.csv and NAME.json of each scenario into this folder" };
    private readonly Option<string> _picture = new("--picture") { HelpName = "path", CompletionSources = { FileOffers.Ending(".png", ".svg") }, Description = "Draw the launch on one sheet, .png or .svg; several scenarios need a folder. An earlier picture there is replaced" };
    private readonly Option<string> _charts = new("--charts") { HelpName = "folder", CompletionSources = { FileOffers.Folders }, Description = "Draw all charts of each scenario into this folder, as NAME-CHART.png" };
    private readonly Option<string> _format = Settings.Format();
    private readonly Option<bool> _quiet = new("--quiet") { Description = "Print errors and warnings only, and what --json asks for" };
    private readonly Option<string[]> _set = Settings.Set();
    private readonly Option<string> _tolerance = new("--tolerance") { HelpName = "number", Description = "The solver's relative tolerance, as run.tolerance in the file" };
    private readonly Option<string> _units = Settings.Units();
    private readonly Session _session;

    private RunCommand(Session session) => _session = session;

    public static Command Create(Session session)
    {
        var run = new RunCommand(session);
        var command = new Command("run", "Solve the launch of one or more scenarios, say what happens, draw it, and write the trace")
        {
            run._files, run._csv, run._json, run._out, run._picture, run._charts, run._format, run._quiet, run._set, run._tolerance, run._units,
        };
        command.SetAction(run.Invoke);
        return command;
    }

    private int Invoke(ParseResult parsed)
    {
        IReadOnlyList<string> inputs = InputFiles.Find(parsed.GetRequiredValue(_files));
        List<(string, string)> overrides = Settings.Overrides(parsed.GetValue(_set));
        if (parsed.GetValue(_tolerance) is { } tolerance)
        {
            overrides.Add(("run.tolerance", tolerance));
        }

        if (Findings.ReadAll(StandingCheck.Reader(ReadPurpose.Run), inputs, overrides, _session) is not { } scenarios)
        {
            return ExitCode.BadInput;
        }

        IReadOnlyList<RunFiles> files = RunFiles.Plan(inputs, scenarios, new RunTargets
        {
            Csv = parsed.GetValue(_csv),
            Folder = parsed.GetValue(_out),
            Picture = parsed.GetValue(_picture),
            Charts = parsed.GetValue(_charts),
            Format = parsed.GetValue(_format),
        });
        bool asJson = parsed.GetValue(_json) && parsed.GetValue(_out) is null;
        RunReport[] reports = Solve(scenarios, files, scenario => new Readout(Settings.System(parsed.GetValue(_units), scenario.UnitSystem)), asJson);
        if (asJson)
        {
            Documents(reports);
        }

        bool quiet = parsed.GetValue(_quiet);
        foreach (RunReport report in reports)
        {
            if (!asJson && !quiet)
            {
                _session.Output.Write(scenarios.Count > 1 ? $"== {report.Name}\n{report.Text}\n" : report.Text);
            }

            report.Tell(_session, quiet);
        }

        return Array.TrueForAll(reports, report => report.IsDone) ? ExitCode.Done : ExitCode.Failed;
    }

    private RunReport[] Solve(IReadOnlyList<Scenario> scenarios, IReadOnlyList<RunFiles> files, Func<Scenario, Readout> readout, bool asJson)
    {
        var reports = new RunReport[scenarios.Count];
        if (scenarios.Count == 1)
        {
            reports[0] = RunReport.Of(scenarios[0], files[0], readout(scenarios[0]), asJson, _session);
            return reports;
        }

        var options = new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount, CancellationToken = _session.Cancellation };
        _session.WithProgress("launches", scenarios.Count, done => Parallel.For(0, scenarios.Count, options, i =>
        {
            reports[i] = RunReport.Of(scenarios[i], files[i], readout(scenarios[i]), asJson, _session);
            done();
        }));
        return reports;
    }

    private void Documents(RunReport[] reports)
    {
        string[] documents = [.. reports.Select(report => report.Text)];
        _session.Output.Write(documents.Length == 1 ? documents[0] : $"[\n{string.Join(",\n", documents.Select(text => text.TrimEnd('\n')))}\n]\n");
    }

    /// <summary>One scenario's results: what to print, what was written, what went wrong.</summary>
    private sealed record RunReport(string Name, string Text, IReadOnlyList<string> Troubles, IReadOnlyList<string> Notices)
    {
        private static readonly string Program = $"{ProgramVersion.Name} {ProgramVersion.Text}";

        public bool IsDone => Troubles.Count == 0;

        public static RunReport Of(Scenario scenario, RunFiles files, Readout readout, bool asJson, Session session)
        {
            CancellationToken cancellation = session.Cancellation;
            LaunchOutcome run = LaunchOutcome.Of(scenario, cancellation);
            var notices = new List<string>();
            var troubles = new List<string>();
            if (run.Failure is { } failure)
            {
                troubles.Add($"{scenario.SourceFile}: {FailureWords.Of(failure)}");
            }

            Write(files.Csv, stream => TraceCsv.Write(run.Solution, scenario.Run.Sample, stream, cancellation));
            Write(files.Json, stream => RunJson.Write(run, readout, stream));
            Write(files.Picture, stream => PictureTarget.Write(LaunchCharts.Sheet(run, readout, Program), files.Picture!.Kind, stream));
            if (files.Charts.Count > 0)
            {
                foreach ((string name, Picture picture) in LaunchCharts.Charts(run, readout, Program))
                {
                    Write(files.Charts[name], stream => PictureTarget.Write(picture, files.Charts[name].Kind, stream));
                }
            }

            return new RunReport(scenario.SourceFile, asJson ? Document(run, readout) : RunText.Of(run, readout, session.Screen), troubles, notices);

            // What cannot be written does not keep the rest from being written.
            void Write(OutputFile? file, Action<Stream> content)
            {
                if (file is null)
                {
                    return;
                }

                try
                {
                    file.Write(content, cancellation);
                    notices.Add($"{(file.Replaces ? "replaced" : "wrote")} {file.Shown}");
                }
                catch (OutputException exception)
                {
                    troubles.Add(exception.Message);
                }
            }
        }

        public void Tell(Session session, bool quiet)
        {
            // What follows belongs after the report, also where both streams are one terminal.
            session.Output.Flush();
            if (!quiet)
            {
                foreach (string notice in Notices)
                {
                    session.Error.WriteLine(notice);
                }
            }

            foreach (string trouble in Troubles)
            {
                session.Error.WriteLine($"launchsim: {trouble}");
            }
        }

        private static string Document(LaunchOutcome run, Readout readout)
        {
            using var stream = new MemoryStream();
            RunJson.Write(run, readout, stream);
            return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
        }
    }
}
