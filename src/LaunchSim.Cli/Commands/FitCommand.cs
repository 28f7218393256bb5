using System.CommandLine;
using System.Globalization;
using System.Text;
using LaunchSim.Charts;
using LaunchSim.Cli.Completion;
using LaunchSim.Cli.Output;
using LaunchSim.Cli.Terminal;
using LaunchSim.Passes.Fitting;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Cli.Commands;

/// <summary><c>launchsim fit</c>: what passes say of what could not be measured.</summary>
internal sealed class FitCommand
{
    private const int MostStarts = 100;

    private readonly Argument<string> _file = new("FILE") { HelpName = "FILE", CompletionSources = { FileOffers.Scenarios }, Description = "The scenario whose numbers are to be found; its ± are what is known beforehand" };
    private readonly Argument<string[]> _passes = new("PASS") { HelpName = "PASS", Arity = ArgumentArity.OneOrMore, CompletionSources = { FileOffers.Scenarios }, Description = "Pass files with what was seen or logged" };
    private readonly Option<string[]> _free = new("--free") { HelpName = "path", Arity = ArgumentArity.OneOrMore, CompletionSources = { PathOffers.Of }, Description = "A number to find; may be given again and again. When left out: every number with a ± in the file, what can hardly be measured at home, and how far each adjuster is off its sheets" };
    private readonly Option<string> _starts = new("--starts") { HelpName = "count", Description = "How many places the search begins from; 4 when left out" };
    private readonly Option<string> _out = new("--out") { HelpName = "file.yaml", Description = "Write what was found as a variant of FILE, each number with its ±; nothing that is there is overwritten" };
    private readonly Option<string> _picture = new("--picture") { HelpName = "path", CompletionSources = { FileOffers.Ending(".pdf", ".png", ".svg") }, Description = "Draw every channel with both predictions and what is left of it: .pdf, or .png and .svg with a number for each page" };
    private readonly Option<bool> _json = new("--json") { Description = "Print one JSON document, in SI units, in the place of the text" };
    private readonly Option<string[]> _set = Settings.Set();
    private readonly Option<string> _units = Settings.Units();
    private readonly Session _session;

    private FitCommand(Session session) => _session = session;

    public static Command Create(Session session)
    {
        var fit = new FitCommand(session);
        var command = new Command("fit", "Find what could not be measured from passes, with intervals, and say what the passes do not tell")
        {
            fit._file, fit._passes, fit._free, fit._starts, fit._out, fit._picture, fit._json, fit._set, fit._units,
        };
        command.SetAction(fit.Invoke);
        return command;
    }

    private int Invoke(ParseResult parsed)
    {
        Targets.RefuseNameless(("--out", parsed.GetValue(_out)), ("--picture", parsed.GetValue(_picture)));
        int starts = Starts(parsed.GetValue(_starts));
        NewScenarioFile? target = parsed.GetValue(_out) is { } path ? NewScenarioFile.Plan(path) : null;
        if (parsed.GetValue(_picture) is { } picture)
        {
            _ = PageFiles.Plan(picture, []);
        }

        ReadResult read = StandingCheck.Reader(ReadPurpose.Run).Read(parsed.GetRequiredValue(_file), Settings.Overrides(parsed.GetValue(_set)));
        Findings.Write(read, _session.Error);
        if (read.Scenario is not { } scenario)
        {
            return ExitCode.BadInput;
        }

        IReadOnlyList<FitParameter> parameters = Parameters(parsed, scenario);
        string[] files = parsed.GetRequiredValue(_passes);
        FitPassesResult? passes = null;
        _session.WithProgress("passes", files.Length, added => passes = new FitPasses(read).Read(files, added, _session.Cancellation));
        foreach (Diagnostic finding in passes!.Errors.Concat(passes.Warnings))
        {
            _session.Error.WriteLine(finding.ToString());
        }

        if (passes.Errors.Count > 0)
        {
            return ExitCode.BadInput;
        }

        var model = FitModel.Of(parameters, passes.Passes);
        if (model.ResidualCount == model.DataStart)
        {
            throw new InputException("fit: found nothing seen and nothing logged in these passes; write under `seen:` what you saw, or name a log");
        }

        FitResult? result = null;
        string trouble = "";
        _session.WithProgress("starts", starts + 2, 0, added => result = Run(model, starts, added, out trouble));
        if (result is null)
        {
            throw new InputException($"fit: {trouble}");
        }

        Print(parsed, result, scenario, passes);
        if (target is not null)
        {
            string shown = parsed.GetRequiredValue(_out);
            string folder = Path.GetDirectoryName(Path.GetFullPath(shown)) ?? "";
            string seen = FileNames.From(folder, scenario.SourceFile);
            target.Write(FittedScenario.Text(result, scenario, seen, passes.Passes.Count), _session.Cancellation);
            _session.Error.WriteLine($"wrote {shown}");
        }

        return ExitCode.Done;
    }

    private FitResult? Run(FitModel model, int starts, Action<int> done, out string trouble)
    {
        trouble = "";
        try
        {
            FitResult result = Fit.Run(model, new FitSettings { Starts = starts }, _session.Cancellation);
            done(starts + 2);
            return result;
        }
        catch (InvalidOperationException exception)
        {
            trouble = exception.Message;
            return null;
        }
    }

    private void Print(ParseResult parsed, FitResult result, Scenario scenario, FitPassesResult passes)
    {
        var readout = new Readout(Settings.System(parsed.GetValue(_units), scenario.UnitSystem));
        if (parsed.GetValue(_json))
        {
            using var stream = new MemoryStream();
            FitJson.Write(result, scenario, stream);
            _session.Output.Write(Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length));
        }
        else
        {
            _session.Output.Write(FitText.Of(result, readout, _session.Screen));
            foreach (string remark in passes.Remarks)
            {
                _session.Error.WriteLine($"launchsim: {remark}");
            }
        }

        if (parsed.GetValue(_picture) is { } picture)
        {
            IReadOnlyList<Picture> pages = FitPictures.Of(result, scenario, readout, $"{ProgramVersion.Name} {ProgramVersion.Text}");
            if (pages.Count == 0)
            {
                throw new InputException("--picture: found no log among these passes, and seen facts are not drawn; leave it out");
            }

            foreach ((OutputFile file, Action<Stream> content) in PageFiles.Plan(picture, pages))
            {
                StudyRuns.Write(file, content, _session);
            }
        }
    }

    private IReadOnlyList<FitParameter> Parameters(ParseResult parsed, Scenario scenario)
    {
        string[] free = parsed.GetValue(_free) ?? [];
        if (free.Length == 0)
        {
            return FitParameters.Default(scenario);
        }

        IReadOnlyList<FitParameter> parameters = FitParameters.Of(scenario, free, out IReadOnlyList<string> problems);
        return problems.Count == 0 ? parameters : throw new InputException(string.Join(Environment.NewLine, problems.Select(problem => $"--free: {problem}")));
    }

    private static int Starts(string? given) =>
        given is null ? new FitSettings().Starts
        : int.TryParse(given, NumberStyles.None, CultureInfo.InvariantCulture, out int count) && count is >= 1 and <= MostStarts ? count
        : throw new InputException($"--starts: found `{given}`; allowed: a whole number from 1 to {MostStarts}");
}
