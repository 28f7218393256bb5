using System.CommandLine;
using System.Text;
using LaunchSim.Cli.Completion;
using LaunchSim.Cli.Output;
using LaunchSim.Cli.Terminal;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Varying;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Doubting;
using LaunchSim.Studies.Grids;
using LaunchSim.Studies.Next;
using LaunchSim.Studies.Pictures;

namespace LaunchSim.Cli.Commands;

/// <summary><c>launchsim next</c>: which single change helps most, and which two only together.</summary>
internal sealed class NextCommand
{
    private readonly Argument<string> _file = new("FILE") { HelpName = "FILE", CompletionSources = { FileOffers.Scenarios }, Description = "A scenario, or a study file that names one" };
    private readonly Option<string[]> _vary = StudyOptions.VaryOption();
    private readonly Option<string> _profile = Settings.Profile();
    private readonly HelpOptions _help = new();
    private readonly Option<string> _picture = new("--picture") { HelpName = "path", CompletionSources = { FileOffers.Ending(".png", ".svg") }, Description = "Draw the score after each change, .png or .svg; an earlier picture there is replaced" };
    private readonly Option<string> _csv = new("--csv") { HelpName = "path", CompletionSources = { FileOffers.Ending(".csv") }, Description = "Write every change with what it does to each aim, in SI units; an earlier table there is replaced" };
    private readonly Option<bool> _json = new("--json") { Description = "Print one JSON document, in SI units, in the place of the text" };
    private readonly Option<string[]> _set = Settings.Set();
    private readonly Option<string> _units = Settings.Units();
    private readonly Session _session;

    private NextCommand(Session session) => _session = session;

    public static Command Create(Session session)
    {
        var next = new NextCommand(session);
        var command = new Command("next", "Try every single change among --vary or the file's choices, one step and two, and say which helps most")
        {
            next._file, next._vary, next._profile, next._help.Doubt, next._help.Cars, next._help.Typical, next._picture, next._csv, next._json, next._set, next._units,
        };
        command.SetAction(next.Invoke);
        return command;
    }

    private int Invoke(ParseResult parsed)
    {
        DoubtSettings? doubt = _help.Read(parsed);
        StudyResult read = new StudyReader(StandingCheck.Reader(ReadPurpose.Run)).Read(parsed.GetRequiredValue(_file), Settings.Overrides(parsed.GetValue(_set)), parsed.GetValue(_vary) ?? []);
        foreach (Diagnostic finding in read.Errors.Concat(read.Warnings))
        {
            _session.Error.WriteLine(finding.ToString());
        }

        if (read.Study is not { } study)
        {
            return ExitCode.BadInput;
        }

        Scenario scenario = study.Scenario;
        string[] inputs = [study.SourceFile, scenario.SourceFile];
        Targets.RefuseNameless(("--picture", parsed.GetValue(_picture)), ("--csv", parsed.GetValue(_csv)));
        OutputFile? picture = parsed.GetValue(_picture) is { } path ? OutputFile.Plan(path, PictureTarget.KindOf(path, null), inputs) : null;
        OutputFile? csv = parsed.GetValue(_csv) is { } place ? OutputFile.Plan(place, OutputKind.Changes, inputs) : null;

        AimSet aims = AimSet.Of(study.Aims, Settings.Profile(parsed.GetValue(_profile)), out string? problem) ?? throw new InputException(problem!);
        IReadOnlyList<Variation> settings = study.Variations.Count > 0 ? study.Variations : VariationReader.OfChoices(scenario);
        bool isOffered = settings.Count == 0;
        settings = isOffered ? OfferedChoices.Of(scenario) : settings;
        if (NextStudy.Changes(settings, scenario).Count == 0)
        {
            throw new InputException($"{study.SourceFile}: found nothing to change; write `choices` into the file, each with more than one value");
        }

        NextResult? result = null;
        _session.WithProgress("launches", NextStudy.Launches(settings, scenario), 0, added =>
            result = NextStudy.Run(scenario, settings, isOffered, aims, GridPlan.Tolerance, Environment.ProcessorCount, () => added(1), _session.Cancellation));
        NextDoubt? sure = null;
        if (doubt is not null && result!.Score.Exists && NextDoubt.Worth(result).Count > 0)
        {
            _session.WithProgress("cars", doubt.Cars, 0, added => sure = NextDoubt.Of(result, scenario, doubt, added, _session.Cancellation));
        }

        var readout = new Readout(Settings.System(parsed.GetValue(_units), scenario.UnitSystem));
        if (parsed.GetValue(_json))
        {
            using var stream = new MemoryStream();
            NextJson.Write(result!, sure, scenario, readout, stream);
            _session.Output.Write(Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length));
        }
        else
        {
            _session.Output.Write(NextText.Of(result!, sure, scenario, readout, _session.Screen));
        }

        StudyRuns.Write(csv, stream => NextCsv.Write(result!, stream), _session);
        StudyRuns.Write(picture, stream => PictureTarget.Write(StudyPictures.Next(result!, scenario, readout, $"{ProgramVersion.Name} {ProgramVersion.Text}"), picture!.Kind, stream), _session);
        return result!.Score.Exists ? ExitCode.Done : StudyRuns.NotDone(study.SourceFile, result.Trouble, _session);
    }
}
