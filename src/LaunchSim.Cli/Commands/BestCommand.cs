using System.CommandLine;
using System.Globalization;
using System.Text;
using LaunchSim.Cli.Completion;
using LaunchSim.Cli.Output;
using LaunchSim.Cli.Terminal;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Varying;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Grids;
using LaunchSim.Studies.Pictures;
using LaunchSim.Studies.Running;
using LaunchSim.Studies.Searching;

namespace LaunchSim.Cli.Commands;

/// <summary><c>launchsim best</c>: which of the set-ups that can be made does best by the aims.</summary>
internal sealed class BestCommand
{
    // What fits in a cup of coffee.
    private const long UsualBudget = 100_000;
    private const ulong Seed = 1;

    private static readonly string Program = $"{ProgramVersion.Name} {ProgramVersion.Text}";

    private readonly StudyOptions _options = new("best");
    private readonly Option<string> _picture = new("--picture") { HelpName = "path", CompletionSources = { FileOffers.Ending(".png", ".svg") }, Description = "Draw the scores of the best and what the rise lag costs, .png or .svg; an earlier picture there is replaced" };
    private readonly Session _session;

    private BestCommand(Session session) => _session = session;

    public static Command Create(Session session)
    {
        var best = new BestCommand(session);
        var command = new Command("best", "Find the set-up that does best by the aims, among what --vary or the file's choices allow");
        best._options.AddTo(command);
        command.Options.Add(best._picture);
        command.SetAction(best.Invoke);
        return command;
    }

    private int Invoke(ParseResult parsed)
    {
        if (_options.Read(parsed, _session, BestCollector.Figures) is not { } read)
        {
            return ExitCode.BadInput;
        }

        StudyRequest request = read.Study.Variations.Count > 0 ? read : read with { Study = read.Study with { Variations = VariationReader.OfChoices(read.Study.Scenario) } };
        if (request.Study.Variations.Count == 0)
        {
            throw new InputException($"{request.Study.SourceFile}: found nothing to choose from; give --vary \"path=values\", or write `choices` into the file");
        }

        GridPlan plan = request.Plan();
        bool isWhole = plan.Grid.Size <= (request.Budget ?? UsualBudget);
        if (!isWhole && (request.Csv is not null || request.Parquet is not null || plan.Grid.Size > long.MaxValue))
        {
            if (plan.Grid.Size <= long.MaxValue && request.Shard.IsWhole)
            {
                throw new InputException($"{(request.Csv is null ? "--parquet" : "--csv")}: found {plan.Grid.Size.ToString("#,0", CultureInfo.InvariantCulture)} set-ups, more than the budget of {(request.Budget ?? UsualBudget).ToString("#,0", CultureInfo.InvariantCulture)} launches: such a grid is searched, and a search has no table of all rows. Allow all of it by --budget, or leave the table out");
            }

            request.RefuseBeyondBudget(plan, UsualBudget, _session.Cancellation);
        }

        OutputFile? picture = parsed.GetValue(_picture) is { } path ? StudyRuns.Picture(path, request) : null;
        var collector = new BestCollector(plan, isWhole && request.Shard.IsWhole);
        if (isWhole && request is { Csv: null, Parquet: null })
        {
            // Nobody wants the rows: they need not be kept anywhere.
            _session.WithProgress("launches", plan.Grid.Count, 0, added => GridRunner.Run(plan, 0, plan.Grid.Count, request.Threads, rows =>
            {
                collector.Add(rows);
                added(rows.Count);
            }, _session.Cancellation));
        }
        else if (isWhole)
        {
            using GridStudyRun run = StudyRuns.Open(request, plan);
            StudyRuns.Run(run, request.Threads, collector.Add, _session);
            if (request.Parquet is { } parquet)
            {
                OutputFile file = OutputFile.Plan(parquet, OutputKind.Parquet, [request.Study.SourceFile, request.Study.Scenario.SourceFile]);
                StudyRuns.Write(file, stream => GridParquet.Write(plan, run.Rows(), Program, stream, _session.Cancellation), _session);
            }

            if (!request.Shard.IsWhole)
            {
                return StudyRuns.Part(request, run, collector.Failed, _session);
            }
        }
        else
        {
            long budget = request.Budget ?? UsualBudget;
            _session.WithProgress("launches", budget, 0, added => PatternSearch.Run(plan, budget, Seed, request.Threads, rows =>
            {
                collector.Add(rows);
                added(rows.Count);
            }, _session.Cancellation));
        }

        BestResult result = collector.Result();
        GridRow now = GridRunner.Present(plan, _session.Cancellation);
        AimScore? present = now.Trouble is null ? now.Score : null;
        Print(result, present, request);
        StudyRuns.Write(picture, stream => PictureTarget.Write(StudyPictures.Best(result, now.Trouble is null ? now.Figures : null, present, request.Readout, Program), picture!.Kind, stream), _session);
        return result.Best.Count > 0 ? ExitCode.Done : StudyRuns.NoneDone(request.Study.SourceFile, null, _session);
    }

    private void Print(BestResult result, AimScore? present, StudyRequest request)
    {
        if (request.Json)
        {
            using var stream = new MemoryStream();
            BestJson.Write(result, present, stream);
            _session.Output.Write(Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length));
        }
        else
        {
            _session.Output.Write(BestText.Of(result, present, request.Readout, _session.Screen));
        }
    }
}
