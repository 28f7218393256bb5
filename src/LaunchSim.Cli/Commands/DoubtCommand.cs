using System.CommandLine;
using System.Globalization;
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
using LaunchSim.Studies.Running;

namespace LaunchSim.Cli.Commands;

/// <summary><c>launchsim doubt</c>: how sure the answer is, given what could not be measured.</summary>
internal sealed class DoubtCommand
{
    private const int MostThreads = 1024;

    private static readonly string Program = $"{ProgramVersion.Name} {ProgramVersion.Text}";

    private readonly Argument<string> _file = new("FILE") { HelpName = "FILE", CompletionSources = { FileOffers.Scenarios }, Description = "A scenario, or a study file that names one" };
    private readonly Option<string> _cars = new("--cars") { HelpName = "count", Description = $"How many plausible cars are drawn, {DoubtSettings.FewestCars} to {DoubtSettings.MostCars:#,0}; {DoubtSettings.UsualCars} when left out" };
    private readonly Option<string> _seed = new("--seed") { HelpName = "number", Description = "Seed of the draw, a whole number from 0; the same gives the same cars. 1 when left out" };
    private readonly Option<bool> _typical = new("--typical") { Description = "Also draw numbers without a ± from their usual doubt; done anyway when the file has no ±" };
    private readonly Option<string> _profile = Settings.Profile();
    private readonly Option<string> _threads = new("--threads") { HelpName = "count", Description = "How many threads run launches; as many as there are cores when left out. Results do not depend on it" };
    private readonly Option<string> _tolerance = new("--tolerance") { HelpName = "number", Description = "The solver's relative tolerance in all launches; 1e-6 when left out, which gives figures right to four digits or better" };
    private readonly Option<string> _csv = new("--csv") { HelpName = "path", CompletionSources = { FileOffers.Ending(".csv") }, Description = "Write a row for each car to this file as they come, in SI units; PATH.study beside it says what it came from" };
    private readonly Option<bool> _resume = new("--resume") { Description = "Go on with the table of --csv that was not finished" };
    private readonly Option<string> _shard = new("--shard") { HelpName = "k/n", Description = "Run the k-th of n parts of the cars into --csv, here or on another machine" };
    private readonly Option<string> _picture = new("--picture") { HelpName = "path", CompletionSources = { FileOffers.Ending(".png", ".svg") }, Description = "Draw bands, shares and what to measure first on one sheet, .png or .svg. An earlier picture there is replaced" };
    private readonly Option<bool> _json = new("--json") { Description = "Print one JSON document, in SI units, in the place of the text" };
    private readonly Option<string[]> _set = Settings.Set();
    private readonly Option<string> _units = Settings.Units();
    private readonly Session _session;

    private DoubtCommand(Session session) => _session = session;

    public static Command Create(Session session)
    {
        var doubt = new DoubtCommand(session);
        var command = new Command("doubt", "Draw plausible cars from what is not well known, and say how sure the answer is and what to measure first")
        {
            doubt._file, doubt._cars, doubt._seed, doubt._typical, doubt._profile, doubt._threads, doubt._tolerance, doubt._csv, doubt._resume, doubt._shard, doubt._picture, doubt._json, doubt._set, doubt._units,
        };
        command.SetAction(doubt.Invoke);
        return command;
    }

    private int Invoke(ParseResult parsed)
    {
        string file = parsed.GetRequiredValue(_file);
        List<(string, string)> overrides = Settings.Overrides(parsed.GetValue(_set));
        string? tolerance = parsed.GetValue(_tolerance);
        if (tolerance is not null)
        {
            overrides.Add(("run.tolerance", tolerance));
        }

        Targets.RefuseNameless(("--csv", parsed.GetValue(_csv)), ("--picture", parsed.GetValue(_picture)));
        (DoubtSettings settings, Shard shard) = Asked(parsed);
        StudyResult read = new StudyReader(StandingCheck.Reader(ReadPurpose.Run)).Read(file, overrides, []);
        foreach (Diagnostic finding in read.Errors.Concat(read.Warnings))
        {
            _session.Error.WriteLine(finding.ToString());
        }

        if (read.Study is not { Scenario: var scenario } study)
        {
            return ExitCode.BadInput;
        }

        AimSet aims = AimSet.Of(study.Aims, Settings.Profile(parsed.GetValue(_profile)), out string? problem) ?? throw new InputException(problem!);
        var plan = new DoubtPlan(scenario, aims, settings with { Tolerance = tolerance is null ? GridPlan.Tolerance : scenario.Run.Tolerance });
        OutputFile? picture = parsed.GetValue(_picture) is { } path ? OutputFile.Plan(path, PictureTarget.KindOf(path, null), [file]) : null;
        DoubtResult result = Run(plan, shard, parsed, picture is not null || parsed.GetValue(_json));
        var readout = new Readout(Settings.System(parsed.GetValue(_units), scenario.UnitSystem));
        _session.Output.Write(parsed.GetValue(_json) ? Document(result, readout) : DoubtText.Of(result, shard, readout, _session.Screen));
        _session.Output.Flush();
        if (picture is not null)
        {
            picture.Write(stream => PictureTarget.Write(DoubtPicture.Of(result, readout, Program), picture.Kind, stream), _session.Cancellation);
            _session.Error.WriteLine($"{(picture.Replaces ? "replaced" : "wrote")} {picture.Shown}");
        }

        return result.Whole > 0 ? ExitCode.Done : StudyRuns.NoneDone(file, result.Failures.Count > 0 ? result.Failures[0].Reason : null, _session);
    }

    private DoubtResult Run(DoubtPlan plan, Shard shard, ParseResult parsed, bool wantsBands)
    {
        string? csv = parsed.GetValue(_csv);
        try
        {
            if (csv is not null)
            {
                _ = OutputFile.Plan(csv, OutputKind.Cars, [plan.Scenario.SourceFile]);
            }

            using DoubtStudy study = DoubtStudy.Open(plan, Program, shard, csv, parsed.GetValue(_resume));
            try
            {
                DoubtResult? result = null;
                _session.WithProgress("cars", study.Count, study.Kept, added => result = study.Run(wantsBands, added, _session.Cancellation));
                return result!;
            }
            catch (OperationCanceledException)
            {
                throw new InterruptedStudyException(study.Table is { } table
                    ? string.Create(CultureInfo.InvariantCulture, $"interrupted; {study.Done} of {study.Count} rows are kept in `{RowFile.Unfinished(table)}`: the same command with --resume goes on from there")
                    : "interrupted; nothing of it is kept: with --csv FILE the rows would be, and --resume would go on from them");
            }
        }
        catch (Exception exception) when (exception is RowFileException or RowTableException)
        {
            throw new InputException(exception.Message);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException)
        {
            throw new OutputException($"`{csv}` could not be written: {exception.Message}");
        }
    }

    private (DoubtSettings Settings, Shard Shard) Asked(ParseResult parsed)
    {
        var wrong = new List<string>();
        long cars = Whole(parsed, _cars, DoubtSettings.FewestCars, DoubtSettings.MostCars, wrong) ?? DoubtSettings.UsualCars;
        long seed = Whole(parsed, _seed, 0, long.MaxValue, wrong) ?? 1;
        long threads = Whole(parsed, _threads, 1, MostThreads, wrong) ?? Environment.ProcessorCount;
        Shard shard = Shard.Whole;
        string? csv = parsed.GetValue(_csv);
        if (parsed.GetValue(_shard) is { } part)
        {
            if (!Shard.TryParse(part, out shard))
            {
                wrong.Add($"--shard {part}: found no part of a whole; allowed: k/n with k from 1 to n, as in --shard 3/20");
            }
            else if (csv is null)
            {
                wrong.Add($"--shard {part}: found no --csv; a part goes into a table of its own, as in --csv part-{shard.Number}.csv");
            }
        }

        if (csv is null && parsed.GetValue(_resume))
        {
            wrong.Add("--resume: found no --csv; it goes on with the table that --csv names");
        }

        if (csv is not null && !csv.EndsWith(OutputKind.Cars.Extension, StringComparison.OrdinalIgnoreCase))
        {
            wrong.Add($"--csv {csv}: found a name that does not end in .csv; write one that does, such as {csv}.csv");
        }

        if (shard.Of > cars)
        {
            wrong.Add($"--shard {shard}: found more parts than cars; allowed: at most {cars}");
        }

        return wrong.Count == 0
            ? (new DoubtSettings { Cars = (int)cars, Seed = (ulong)seed, Threads = (int)threads, WithTypical = parsed.GetValue(_typical) }, shard)
            : throw new InputException(string.Join("\nlaunchsim: ", wrong));
    }

    private static long? Whole(ParseResult parsed, Option<string> option, long least, long most, List<string> wrong)
    {
        if (parsed.GetValue(option) is not { } text)
        {
            return null;
        }

        if (long.TryParse(text, NumberStyles.AllowThousands, CultureInfo.InvariantCulture, out long number) && number >= least && number <= most)
        {
            return number;
        }

        string upTo = most < long.MaxValue ? string.Create(CultureInfo.InvariantCulture, $" to {most:#,0}") : "";
        wrong.Add(string.Create(CultureInfo.InvariantCulture, $"{option.Name} {text}: found no such number; allowed: a whole number from {least}{upTo}"));
        return null;
    }

    private static string Document(DoubtResult result, Readout readout)
    {
        using var stream = new MemoryStream();
        DoubtJson.Write(result, readout, stream);
        return Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }
}
