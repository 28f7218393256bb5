using System.CommandLine;
using System.Globalization;
using System.Numerics;
using LaunchSim.Cli.Completion;
using LaunchSim.Cli.Output;
using LaunchSim.Cli.Terminal;
using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Varying;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Grids;
using LaunchSim.Studies.Running;

namespace LaunchSim.Cli.Commands;

/// <summary>What all studies share on the command line: the file, what is varied, what is wanted, how it is run, and where its rows go.</summary>
internal sealed class StudyOptions
{
    private const int MostThreads = 1024;

    public Argument<string> File { get; } = new("FILE") { HelpName = "FILE", CompletionSources = { FileOffers.Scenarios }, Description = "A scenario, or a study file that names one" };

    public Option<string[]> Vary { get; } = VaryOption();

    /// <summary>What is varied, as every study takes it.</summary>
    public static Option<string[]> VaryOption() => new("--vary")
    {
        HelpName = "path=values",
        Arity = ArgumentArity.OneOrMore,
        CompletionSources = { PathOffers.Of },
        Description = "What is varied, as in --vary \"rear.tire.pressure.set=14 to 18 by 0.5 psi\": a range, a list, names of holes, or all; may be given again and again. In the place of what a study file varies",
    };

    public Option<string> Profile { get; } = Settings.Profile();

    public Option<string> Tolerance { get; } = new("--tolerance") { HelpName = "number", Description = "The solver's relative tolerance in all launches; 1e-6 when left out, which gives figures right to four digits or better" };

    public Option<string> Threads { get; } = new("--threads") { HelpName = "count", Description = "How many threads run launches; as many as there are cores when left out. Results do not depend on it" };

    public Option<string> Budget { get; } = new("--budget") { HelpName = "count", Description = "How many launches this run may take" };

    public Option<string> Csv { get; } = new("--csv") { HelpName = "path", CompletionSources = { FileOffers.Ending(".csv") }, Description = "Write a row for each set-up to this file as they come, in SI units; PATH.study beside it says what it came from" };

    public Option<bool> Json { get; } = new("--json") { Description = "Print one JSON document, in SI units, in the place of the text" };

    public Option<string> Parquet { get; } = new("--parquet") { HelpName = "path", CompletionSources = { FileOffers.Ending(".parquet") }, Description = "Write the same rows as a Parquet file when all are there" };

    public Option<bool> Resume { get; } = new("--resume") { Description = "Go on with the table of --csv that was not finished" };

    public Option<string> Shard { get; } = new("--shard") { HelpName = "k/n", Description = "Run the k-th of n parts of the study into --csv, here or on another machine; `launchsim merge` joins them" };

    public Option<string> Units { get; } = Settings.Units();

    public Option<string[]> Set { get; } = Settings.Set();

    private readonly string _kind;

    /// <summary>The options of one study.</summary>
    /// <param name="kind">What kind of study it is, such as <c>sweep</c>.</param>
    public StudyOptions(string kind) => _kind = kind;

    /// <summary>Takes the argument and all options into a command.</summary>
    /// <param name="command">The command.</param>
    public void AddTo(Command command)
    {
        command.Arguments.Add(File);
        foreach (Option option in (Option[])[Vary, Profile, Tolerance, Threads, Budget, Csv, Json, Parquet, Resume, Shard, Units, Set])
        {
            command.Options.Add(option);
        }
    }

    /// <summary>Reads the file and the options, and tells everything that is wrong with any of them.</summary>
    /// <param name="parsed">What was parsed.</param>
    /// <param name="session">Takes errors and warnings.</param>
    /// <param name="figures">Keys of further figures that are asked for.</param>
    /// <returns>What is asked for; null when something is wrong, which has been told.</returns>
    public StudyRequest? Read(ParseResult parsed, Session session, IReadOnlyList<string> figures)
    {
        var wrong = new List<string>();
        int threads = Whole(parsed, Threads, MostThreads, wrong) is { } given ? (int)given : Environment.ProcessorCount;
        long? budget = Whole(parsed, Budget, long.MaxValue, wrong);
        Shard shard = ReadShard(parsed, wrong);
        string? csv = parsed.GetValue(Csv), parquet = parsed.GetValue(Parquet);
        bool resume = parsed.GetValue(Resume);
        Refuse(csv is null && parsed.GetValue(Shard) is not null, $"--shard {parsed.GetValue(Shard)}: found no --csv; a part goes into a table of its own, as in --csv part-{shard.Number}.csv", wrong);
        Refuse(csv is null && resume, "--resume: found no --csv; it goes on with the table that --csv names", wrong);
        Refuse(parquet is not null && !shard.IsWhole, "--parquet: found --shard; allowed: a whole study. Join the parts with `launchsim merge` first", wrong);
        Tell(() => Targets.RefuseNameless(("--csv", csv), ("--parquet", parquet)), wrong);
        Refuse(csv is { Length: > 0 } && !csv.EndsWith(OutputKind.Rows.Extension, StringComparison.OrdinalIgnoreCase), $"--csv {csv}: found a name that does not end in .csv; write one that does, such as {csv}.csv", wrong);
        Refuse(parquet is { Length: > 0 } && !parquet.EndsWith(OutputKind.Parquet.Extension, StringComparison.OrdinalIgnoreCase), $"--parquet {parquet}: found a name that does not end in .parquet; write one that does", wrong);

        string file = parsed.GetRequiredValue(File);
        List<(string Path, string Value)> overrides = Settings.Overrides(parsed.GetValue(Set));
        string? tolerance = parsed.GetValue(Tolerance);
        if (tolerance is not null)
        {
            overrides.Add(("run.tolerance", tolerance));
        }

        StudyResult read = new StudyReader(StandingCheck.Reader(ReadPurpose.Run)).Read(file, overrides, parsed.GetValue(Vary) ?? []);
        foreach (Diagnostic finding in read.Errors.Concat(read.Warnings))
        {
            session.Error.WriteLine(finding.ToString());
        }

        Unknown(read.Study, figures, wrong);
        AimSet? aims = null;
        AimProfile? profile = null;
        Tell(() => profile = Settings.Profile(parsed.GetValue(Profile)), wrong);
        if (read.Study is { } study)
        {
            aims = AimSet.Of(study.Aims, profile, out string? problem);
            Refuse(problem is not null, problem ?? "", wrong);
        }

        foreach (string sentence in wrong)
        {
            session.Error.WriteLine($"launchsim: {sentence}");
        }

        return wrong.Count > 0 || read.Study is not { } sound || aims is null ? null : new StudyRequest
        {
            Kind = _kind,
            Study = sound,
            Aims = aims,
            Figures = figures,
            Tolerance = tolerance is null ? GridPlan.Tolerance : sound.Scenario.Run.Tolerance,
            Threads = threads,
            Budget = budget ?? sound.Budget,
            Shard = shard,
            Csv = csv,
            Resume = resume,
            Parquet = parquet,
            Json = parsed.GetValue(Json),
            Readout = new Readout(Settings.System(parsed.GetValue(Units), sound.Scenario.UnitSystem)),
        };
    }

    private static void Unknown(Study? study, IReadOnlyList<string> figures, List<string> wrong)
    {
        // How many marks are timed is not known of a study that cannot be read.
        var catalog = FigureCatalog.For(study?.Scenario.Run.Marks.Count ?? 0);
        foreach (string key in figures.Where(key => !catalog.TryFind(key, out _) && (study is not null || !key.StartsWith("mark_", StringComparison.Ordinal))))
        {
            string? near = Nearest.To(key, catalog.Definitions.Select(figure => figure.Key));
            wrong.Add($"--figure {key}: found no such figure; {(near is null ? "docs/model.md lists the keys" : $"did you mean `{near}`?")}");
        }
    }

    private Shard ReadShard(ParseResult parsed, List<string> wrong)
    {
        if (parsed.GetValue(Shard) is not { } text)
        {
            return Studies.Running.Shard.Whole;
        }

        Refuse(!Studies.Running.Shard.TryParse(text, out Shard shard), $"--shard {text}: found no part of a whole; allowed: k/n with k from 1 to n, as in --shard 3/20", wrong);
        return shard;
    }

    private static long? Whole(ParseResult parsed, Option<string> option, long most, List<string> wrong)
    {
        if (parsed.GetValue(option) is not { } text)
        {
            return null;
        }

        // A budget is also written 1e9 or 1,000,000.
        bool isNumber = decimal.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowThousands | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out decimal number);
        bool isWhole = isNumber && number == decimal.Truncate(number) && number >= 1 && number <= most;
        Refuse(!isWhole, $"{option.Name} {text}: found no such count; allowed: a whole number from 1{(most < long.MaxValue ? string.Create(CultureInfo.InvariantCulture, $" to {most}") : "")}", wrong);
        return isWhole ? (long)number : null;
    }

    private static void Refuse(bool isWrong, string sentence, List<string> wrong)
    {
        if (isWrong)
        {
            wrong.Add(sentence);
        }
    }

    private static void Tell(Action check, List<string> wrong)
    {
        try
        {
            check();
        }
        catch (InputException exception)
        {
            wrong.Add(exception.Message);
        }
    }
}

/// <summary>A study as it was asked for, everything read and in itself sound.</summary>
internal sealed record StudyRequest
{
    // More than this no number of machines gets done.
    private const long MostParted = 1_000_000_000;

    /// <summary>What kind of study it is.</summary>
    public required string Kind { get; init; }

    /// <summary>The study.</summary>
    public required Study Study { get; init; }

    /// <summary>What is wanted.</summary>
    public required AimSet Aims { get; init; }

    /// <summary>Keys of figures that were asked for; known ones.</summary>
    public required IReadOnlyList<string> Figures { get; init; }

    /// <summary>The tolerance of all launches.</summary>
    public required double Tolerance { get; init; }

    /// <summary>How many threads.</summary>
    public required int Threads { get; init; }

    /// <summary>How many launches it may take; null when nobody said.</summary>
    public required long? Budget { get; init; }

    /// <summary>The part to run.</summary>
    public required Shard Shard { get; init; }

    /// <summary>Where rows go; null for nowhere.</summary>
    public required string? Csv { get; init; }

    /// <summary>Whether to go on with the table that is there.</summary>
    public required bool Resume { get; init; }

    /// <summary>Where the Parquet file goes; null for nowhere.</summary>
    public required string? Parquet { get; init; }

    /// <summary>Whether a document is printed in the place of the text.</summary>
    public required bool Json { get; init; }

    /// <summary>Units of what is printed.</summary>
    public required Readout Readout { get; init; }

    /// <summary>The plan over a grid of what is varied.</summary>
    public GridPlan Plan() => GridPlan.Of(Study, new SetUpGrid(Study.Variations), Aims, Figures, Tolerance);

    /// <summary>Refuses a part of a grid that has more rows than may be run, and says how long it would take.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="usual">How many may be run when nobody said.</param>
    /// <param name="cancellation">Ends the look at how quick launches are.</param>
    /// <exception cref="InputException">There are more.</exception>
    public void RefuseBeyondBudget(GridPlan plan, long usual, CancellationToken cancellation)
    {
        BigInteger all = plan.Grid.Size, rows = (all * Shard.Number / Shard.Of) - (all * (Shard.Number - 1) / Shard.Of);
        long most = Budget ?? usual;
        if (rows <= most && all <= long.MaxValue)
        {
            return;
        }

        double rate = GridRate.Of(plan, Threads, cancellation);
        string settings = string.Join(" × ", plan.Grid.Variations.Select(variation => variation.Values.Count.ToString(CultureInfo.InvariantCulture)));
        string part = Shard.IsWhole ? "" : $" in part {Shard}";
        throw new InputException(
            $"found {rows.ToString("#,0", CultureInfo.InvariantCulture)} set-ups{part} ({settings}), which take about {Pace.Duration((double)rows / rate)} at the {Pace.Rate(rate)} launches a second measured here just now with {Threads} {(Threads == 1 ? "thread" : "threads")}; "
            + $"allowed: {most.ToString("#,0", CultureInfo.InvariantCulture)}{(Budget is null ? " unless --budget says more" : ", by the budget")}. Vary fewer settings or take coarser steps"
            + (all <= MostParted ? "; or allow it by --budget and part it among machines by --shard" : ""));
    }
}
