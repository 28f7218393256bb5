using System.CommandLine;
using System.CommandLine.Completions;
using System.Globalization;
using LaunchSim.Cli.Completion;
using LaunchSim.Cli.Output;
using LaunchSim.Cli.Terminal;
using LaunchSim.Figures;
using LaunchSim.Studies.Grids;
using LaunchSim.Studies.Sweeps;

namespace LaunchSim.Cli.Commands;

/// <summary><c>launchsim sweep</c>: what one or two settings do, or the table of many.</summary>
internal sealed class SweepCommand
{
    // Some minutes on a usual machine.
    private const long UsualBudget = 100_000;

    private static readonly string Program = $"{ProgramVersion.Name} {ProgramVersion.Text}";

    private readonly StudyOptions _options = new("sweep");
    private readonly Option<string[]> _figure = new("--figure") { HelpName = "key", Arity = ArgumentArity.OneOrMore, CompletionSources = { Figures }, Description = "A figure to show, by its key as in docs/model.md; may be given again and again. The values of the aims when left out; the score comes always" };
    private readonly Option<string> _picture = new("--picture") { HelpName = "path", CompletionSources = { FileOffers.Ending(".png", ".svg") }, Description = "Draw curves over one setting or maps over two, .png or .svg; an earlier picture there is replaced" };
    private readonly Session _session;

    private SweepCommand(Session session) => _session = session;

    public static Command Create(Session session)
    {
        var sweep = new SweepCommand(session);
        var command = new Command("sweep", "Launch every combination of some settings' values: curves, maps, tables, and a sentence on what they show");
        sweep._options.AddTo(command);
        command.Options.Add(sweep._figure);
        command.Options.Add(sweep._picture);
        command.SetAction(sweep.Invoke);
        return command;
    }

    private int Invoke(ParseResult parsed)
    {
        if (_options.Read(parsed, _session, parsed.GetValue(_figure) ?? []) is not { } request)
        {
            return ExitCode.BadInput;
        }

        if (request.Study.Variations.Count == 0)
        {
            throw new InputException($"{request.Study.SourceFile}: found nothing to vary; write --vary path=values, as in --vary \"rear.tire.pressure.set=14 to 18 by 0.5 psi\"");
        }

        GridPlan plan = request.Plan();
        OutputFile? picture = Picture(parsed.GetValue(_picture), request, plan);
        OutputFile? parquet = request.Parquet is { } path ? OutputFile.Plan(path, OutputKind.Parquet, Inputs(request)) : null;
        request.RefuseBeyondBudget(plan, UsualBudget, _session.Cancellation);
        var tally = new SweepTally(plan, Measure.All(plan, request.Figures, request.Readout));
        using GridStudyRun run = StudyRuns.Open(request, plan);
        StudyRuns.Run(run, request.Threads, tally.Take, _session);
        if (!request.Shard.IsWhole)
        {
            return StudyRuns.Part(request, run, tally.Failed, _session);
        }

        tally.Present ??= GridRunner.Present(plan, _session.Cancellation);
        if (request.Json)
        {
            using var stream = new WriterStream(_session.Output);
            SweepJson.Write(tally, run.Rows(), stream);
        }
        else
        {
            _session.Output.Write(SweepText.Of(tally, _session.Screen));
        }

        _session.Output.Flush();
        Wrote(run);
        StudyRuns.Write(parquet, stream => GridParquet.Write(plan, run.Rows(), Program, stream, _session.Cancellation), _session);
        StudyRuns.Write(picture, stream => PictureTarget.Write(SweepPicture.Of(tally, run.Rows(), Program), picture!.Kind, stream), _session);
        return tally.Failed == tally.Count ? StudyRuns.NoneDone(request.Study.SourceFile, null, _session) : ExitCode.Done;
    }

    private static OutputFile? Picture(string? path, StudyRequest request, GridPlan plan)
    {
        if (path is null)
        {
            return null;
        }

        if (plan.Grid.Variations.Count > 2)
        {
            throw new InputException($"--picture: found {plan.Grid.Variations.Count} settings; allowed: one or two. Leave out --picture and take the table, or hold the others by --set");
        }

        return StudyRuns.Picture(path, request);
    }

    private static string[] Inputs(StudyRequest request) => [request.Study.SourceFile, request.Study.Scenario.SourceFile];

    private void Wrote(GridStudyRun run)
    {
        if (run.Table is { } table)
        {
            _session.Error.WriteLine(run.Kept == 0 ? $"wrote {table}" : string.Create(CultureInfo.InvariantCulture, $"wrote {table}, of whose {run.Count} rows {run.Kept} were there"));
        }
    }

    private static IEnumerable<CompletionItem> Figures(CompletionContext context) =>
        FigureCatalog.For(0).Definitions.Where(figure => figure.Key.StartsWith(context.WordToComplete, StringComparison.Ordinal)).Select(figure => Offer.Word(figure.Key, figure.Name));
}
