using System.CommandLine;
using System.CommandLine.Help;
using LaunchSim.Cli.Commands;
using LaunchSim.Cli.Terminal;
using LaunchSim.Fuzz.Cases;
using LaunchSim.Fuzz.Mutations;
using LaunchSim.Scenarios.Units;
using LaunchSim.Scenarios.Writing;

namespace LaunchSim.Fuzz.Commands;

/// <summary>The register of the commands and options that are tried: one line each. It is held against the program's own.</summary>
internal static class FuzzCommands
{
    private static readonly FuzzOption
        Json = new("--json", 0.35),
        Units = new("--units", 0.15, draft => draft.Dice.Pick(["shop", "si"]), draft => draft.Dice.Pick(["SI", "metric", "", "--json", "sho"])),
        Profile = new("--profile", 0.3, draft => draft.Dice.Pick(["in-step", "stay-down"]), draft => draft.Dice.Pick(["", "in step", "IN-STEP", "stay-up"])),
        Rows = new("--csv", 0.25, draft => OptionValues.NewFile(draft, ".csv"), draft => OptionValues.OddFile(draft, ".csv")),
        Csv = new("--csv", 0.25, draft => OptionValues.File(draft, ".csv"), draft => OptionValues.OddFile(draft, ".csv"));

    private static readonly FuzzOption
        Doubt = new("--doubt", 0.1),
        FewCars = new("--cars", 0.1, _ => "50", OptionValues.OddNumber),
        Typical = new("--typical", 0.1);

    private static readonly FuzzOption
        Linkage = new("--linkage", 0.4, draft => draft.Dice.Pick(["four-link", "ladder-bar"]), draft => draft.Dice.Pick(["", "three-link"])),
        Format = new("--format", 0.05, draft => draft.Dice.Pick(["png", "svg"]), draft => draft.Dice.Pick(["pdf", ""]));

    private static readonly FuzzOption
        Fitted = new("--fitted", 0.1, OptionValues.PassFile, draft => OptionValues.OddFile(draft, ".yaml")),
        Day = new("--when", 0.5, _ => "2026-09-13", draft => draft.Dice.Pick(["", "today", "2026-02-30", "13.9.2026"]));

    // What studies over a grid share.
    private static readonly FuzzOption[] Grid =
    [
        new("--vary", 0.95, draft => OptionValues.Vary(draft.Dice), draft => OptionValues.OddVary(draft.Dice)),
        Profile,
        new("--tolerance", 0.2, draft => OptionValues.Tolerance(draft.Dice), OptionValues.OddNumber),
        new("--threads", 0.3, draft => draft.Dice.Pick(["1", "2", "7"]), OptionValues.OddNumber),
        new("--budget", 0.2, draft => draft.Dice.Pick(["3", "20", "100"]), OptionValues.OddNumber),
        Rows,
        Json,
        new("--parquet", 0.1, draft => OptionValues.NewFile(draft, ".parquet"), draft => OptionValues.OddFile(draft, ".parquet")),
        new("--resume", 0.05),
        new("--shard", 0.1, draft => draft.Dice.Pick(["1/2", "2/2", "3/7"]), draft => draft.Dice.Pick(["0/2", "3/2", "", "1", "1/0", "a/b"])),
        Units,
        OptionValues.Set,
    ];

    /// <summary>All commands.</summary>
    public static IReadOnlyList<FuzzCommand> All { get; } =
    [
        new("run", 74, OptionValues.OneToThree,
            Json,
            Csv,
            new("--out", 0.07, OptionValues.Folder, OptionValues.OddFolder),
            new("--quiet", 0.06),
            new("--tolerance", 0.2, draft => OptionValues.Tolerance(draft.Dice), OptionValues.OddNumber),
            Units,
            Picture(0.01),
            Charts(0.003),
            Format,
            OptionValues.Set),
        new("compare", 6, OptionValues.TwoOrThree,
            Json,
            Csv,
            Profile,
            Units,
            Picture(0.02),
            Charts(0.005),
            Format,
            Doubt,
            FewCars,
            Typical,
            OptionValues.Set)
        {
            IsStudy = true,
        },
        new("best", 2, _ => 1, [.. Grid, Picture(0.05)]) { IsStudy = true },
        new("next", 2, _ => 1,
            new("--vary", 0.3, draft => OptionValues.Vary(draft.Dice), draft => OptionValues.OddVary(draft.Dice)),
            Json,
            Csv,
            Units,
            Profile,
            Doubt,
            FewCars,
            Typical,
            Picture(0.05),
            OptionValues.Set)
        {
            IsStudy = true,
        },
        new("doubt", 2, _ => 1,
            new("--cars", 1, _ => "50", OptionValues.OddNumber),
            new("--seed", 0.3, draft => draft.Dice.Pick(["0", "1", "9223372036854775807"]), OptionValues.OddNumber),
            new("--typical", 0.3),
            Profile,
            new("--threads", 0.2, draft => draft.Dice.Pick(["1", "2"]), OptionValues.OddNumber),
            new("--tolerance", 0.1, _ => "1e-5", OptionValues.OddNumber),
            Csv,
            new("--resume", 0.05),
            new("--shard", 0.1, draft => draft.Dice.Pick(["1/2", "2/2", "1/1"]), draft => draft.Dice.Pick(["", "0/1", "3/2", "1", "a/b", "-1/2", "1/99"])),
            Picture(0.1),
            Json,
            Units,
            OptionValues.Set)
        {
            IsStudy = true,
        },
        new("page", 3, OptionValues.OneToThree,
            new("--out", 1, draft => OptionValues.File(draft, ".html"), draft => OptionValues.OddFile(draft, ".html")),
            Doubt,
            FewCars,
            Typical,
            Units,
            OptionValues.Set)
        {
            IsStudy = true,
        },
        new("lesson", 1, _ => 0,
            new FuzzOption("--out", 1, draft => OptionValues.File(draft, ".html"), draft => OptionValues.OddFile(draft, ".html")),
            Units),
        new("check", 3, _ => 1,
            Picture(0.1),
            Units,
            OptionValues.Set),
        new("geometry", 15, _ => 1,
            new("--percent", 0.15, draft => OptionValues.Range(draft.Dice, -50, 400, ""), OptionValues.OddRange),
            new("--length", 0.15, draft => OptionValues.Range(draft.Dice, -100, 400, " in"), OptionValues.OddRange),
            Csv,
            Json,
            Units,
            Charts(0.02),
            Format,
            OptionValues.Set),
        new("sweep", 3, _ => 1, [.. Grid, new FuzzOption("--figure", 0.2, draft => draft.Dice.Pick(["hit_n", "rise_lag_s", "separation_peak_m"]), draft => draft.Dice.Pick(["", "hit", "rise_lag"])), Picture(0.05)]) { IsStudy = true },
        new("merge", 1, _ => 0,
            new FuzzOption("--out", 0.9, draft => OptionValues.NewFile(draft, ".csv"), draft => OptionValues.OddFile(draft, ".csv")))
        {
            Argument = draft => OptionValues.InFolder(draft.Dice.Pick(["part.csv", "none.csv", "no/folder/part.csv"])),
        },
        new("columns", 1, _ => 0,
            new FuzzOption("--out", 0.5, draft => OptionValues.NewFile(draft, ".yaml"), draft => OptionValues.OddFile(draft, ".yaml")))
        {
            Argument = OptionValues.Log,
        },
        new("pass", 2, _ => 1,
            new("--mapping", 0.8, OptionValues.Mapping, draft => OptionValues.OddFile(draft, ".yaml")),
            Json,
            Csv,
            Picture(0.05),
            Charts(0.02),
            new("--page", 0.1, draft => OptionValues.File(draft, ".html"), draft => OptionValues.OddFile(draft, ".html")),
            Format,
            Units,
            OptionValues.Set)
        {
            Argument = OptionValues.Log,
        },
        new("pass", 1, _ => 1, Json, Csv, Units) { Argument = OptionValues.PassFile, NamesFiles = false },
        new("torque", 1, _ => 1,
            new FuzzOption("--mapping", 0.1, draft => OptionValues.NewFile(draft, ".yaml"), draft => OptionValues.OddFile(draft, ".yaml")),
            new("--sixty", 0.9, draft => $"{Spelling.Number(draft.Dice.Between(1.2, 2.2), draft.Dice)} s", OptionValues.OddQuantity),
            new("--distance", 0.2, draft => draft.Dice.Pick(["60 ft", "20 m", "330 ft"]), OptionValues.OddQuantity),
            Json,
            Units,
            OptionValues.Set)
        {
            IsStudy = true,
        },
        new("fit", 1, _ => 1,
            new("--free", 1, draft => draft.Dice.Pick(["car.cg_height", "rear.tire.grip", "rear.damper.extension.set"]), draft => draft.Dice.Pick(["", "car", "rear.tire.grp", "name"])),
            new("--starts", 1, _ => "1", OptionValues.OddNumber),
            new("--out", 0.1, draft => OptionValues.NewFile(draft, ".yaml"), draft => OptionValues.OddFile(draft, ".yaml")),
            Picture(0.05),
            Json,
            OptionValues.Set,
            Units)
        {
            Argument = OptionValues.PassFile,
            IsStudy = true,
        },
        new("after", 1, _ => 0,
            Profile,
            Json,
            Units)
        {
            // Without a car: what it refuses. What it does takes thousands of launches, too many for a case.
            Argument = OptionValues.PassFile,
        },
        new("season list", 1, _ => 1, Json, Units) { Argument = OptionValues.SeasonFolder, NamesFiles = false },
        new("season show", 1, _ => 1, Json, Units, Fitted) { Argument = OptionValues.PassFile, NamesFiles = false },
        new("season trend", 1, _ => 1, Json, Units, Fitted, Picture(0.1), new("--csv", 0.2, draft => OptionValues.NewFile(draft, ".csv"), draft => OptionValues.OddFile(draft, ".csv"))) { Argument = OptionValues.SeasonFolder, NamesFiles = false },
        new("season report", 1, _ => 1, new("--out", 1, draft => OptionValues.File(draft, ".html"), draft => OptionValues.OddFile(draft, ".html")), Units, Fitted) { Argument = OptionValues.SeasonFolder, NamesFiles = false },
        new("season close", 1, _ => 1, Day) { Argument = OptionValues.PassFile, NamesFiles = false, Changes = "pass.yaml" },
        new("season correct", 1, _ => 1, new("--why", 0.7, _ => "Seen again", draft => draft.Dice.Pick(["", "a\nb", "it's: a # reason"])), Day)
        {
            Argument = OptionValues.PassFile,
            NamesFiles = false,
            Changes = "pass.yaml",
            Second = draft => draft.Dice.Pick(["seen.shake=light", "changed.rear.spring.rate=150 lb/in", "track=", "seen.rear_moves=frame 3", "notes={a: [", "car=none.yaml", "closed=2026-09-13", "=", "x", "seen=1", "logs[7].file=a.csv"]),
        },
        new("season add", 1, _ => 1,
            new("--car", 0.9, OptionValues.Car, draft => OptionValues.OddFile(draft, ".yaml")),
            new("--like", 0.2, draft => draft.Dice.Pick(["last", OptionValues.PassFile(draft)]), draft => OptionValues.OddFile(draft, ".yaml")),
            new("--name", 0.3, draft => draft.Dice.Pick(["One hole down", "it's: a # pass", "- x"]), draft => draft.Dice.Pick(["", " ", "a\nb"])),
            new("--when", 0.5, _ => "2026-09-12 14:10", draft => draft.Dice.Pick(["", "now", "2026-02-30", "12.9.2026"])),
            new("--track", 0.2, _ => "left lane, sprayed", draft => draft.Dice.Pick(["", "\t", "{"])),
            new("--weather", 0.2, _ => "18 °C, dry", draft => draft.Dice.Pick(["", "a\nb"])),
            new("--seen", 0.6, draft => draft.Dice.Pick(["shake=none", "rear_moves=0.1 s", "first_up=rear", "times=1.5 s"]), draft => draft.Dice.Pick(["", "shake", "=", "rear_moves=frame 3", "shake={", "seen=x", "times=1e99 s"])),
            new("--log", 0.2, draft => draft.Dice.Pick(["a.csv", "a.csv:b.yaml"]), draft => draft.Dice.Pick(["", ":", "a:", ":b", "\0"])),
            new("--notes", 0.2, _ => "Shook a little.", draft => draft.Dice.Pick(["", "|", "a: b\n- c"])),
            OptionValues.Set)
        {
            NamesFiles = false,
            Argument = draft => OptionValues.InFolder(draft.Dice.Pick(["season", "season", ".", "no/folder", "none.yaml"])),
        },
        new("scales", 1, _ => 0,
            Reading("--wheelbase", "105.5 in", "2.7 ±0.01 m"),
            Reading("--front-radius", "12.6 in", "0.3 m"),
            Reading("--rear-radius", "13.1 ±1/8 in", "0.31 m"),
            Reading("--front-scale", "1560 ±3 lb", "700 kgf"),
            Reading("--rear-scale", "1440 lb", "6500 N"),
            new("--raised", 0.95, draft => draft.Dice.Pick(["front", "rear"]), draft => draft.Dice.Pick(["", "nose"])),
            Reading("--height", "30 in", "0.8 ±0.005 m"),
            Reading("--load", "1600 lb", "7000 N"),
            new("--into", 0, Odd: draft => OptionValues.OddFile(draft, ".yaml")),
            Json,
            Units),
        new("damper", 1, _ => 0,
            new FuzzOption("--click", 0.2, OptionValues.DynoClick, draft => draft.Dice.Pick(["", "=", "x=a.csv", "1=", "1e999=no.csv"])),
            new("--column", 0.1, draft => draft.Dice.Pick(["velocity=v", "force=f"]), draft => draft.Dice.Pick(["", "=", "speed=v", "velocity="])),
            new("--unit", 0.1, draft => draft.Dice.Pick(["velocity=in/s", "force=lb"]), draft => draft.Dice.Pick(["", "force=kg", "force=x", "weight=lb"])),
            new("--extension", 0.6, draft => draft.Dice.Pick(["positive", "negative"]), draft => draft.Dice.Pick(["", "up"])),
            new("--gas", 0.1, draft => draft.Dice.Pick(["35 lb", "150 N"]), OptionValues.OddQuantity),
            new("--speeds", 0.2, draft => draft.Dice.Pick(["0 1 2 5 in/s", "0 0.05 0.1 0.2 m/s"]), draft => draft.Dice.Pick(["", "0 in/s", "1 2 3 in/s", "0 2 1 in/s", "0 1 2 lb"])),
            new("--set-click", 0.1, draft => draft.Dice.Pick(["0", "6"]), OptionValues.OddNumber),
            Picture(0.05),
            new("--out", 0.1, draft => OptionValues.NewFile(draft, ".yaml"), draft => OptionValues.OddFile(draft, ".yaml")),
            Json,
            Units)
        {
            Argument = OptionValues.DynoSheet,
        },
        new("measure", 1, _ => 0,
            Linkage,
            Units,
            new("--paper", 0.3, draft => draft.Dice.Pick(["a4", "letter"]), draft => draft.Dice.Pick(["a5", "", "A4"])),
            new("--out", 1, draft => OptionValues.File(draft, draft.Dice.Pick([".svg", ".png", ".pdf"])), draft => OptionValues.OddFile(draft, ".pdf"))),
        new("new", 4, _ => 0,
        [
            .. StarterQuestion.All.Select(question => new FuzzOption("--" + question.Option, 0.9, draft => question.Example(draft.Dice.Pick([UnitSystem.Shop, UnitSystem.Si])), OptionValues.OddQuantity)),
            Linkage,
            Units,
            new("--driveline", 0.5, draft => draft.Dice.Pick(["axle-torque", "clutch", "converter"]), draft => draft.Dice.Pick(["engine", ""])),
            new("--name", 0.2, draft => draft.Dice.Pick(["Mine", "it's: a # car", "\"quoted\"", "- x"]), draft => draft.Dice.Pick(["", " ", "a\nb"])),
            Dampers("--front-dampers"),
            Dampers("--rear-dampers"),
            Tire("--front-tire"),
            Tire("--rear-tire"),
            new("--sixty-foot", 0.4, draft => $"{Spelling.Number(draft.Dice.Between(1.1, 2.5), draft.Dice)} s", OptionValues.OddQuantity),
            new("--flash-speed", 0.3, draft => $"{Spelling.Number(draft.Dice.Between(2500, 6500), draft.Dice)} rpm", OptionValues.OddQuantity),
            OptionValues.Set,
        ])
        {
            Argument = draft => OptionValues.InFolder(draft.Dice.Pick(["begun.yaml", "begun.yaml", "begun.yaml", "begun.yml", "begun.txt", "no/folder/a.yaml"])),
        },
        new("serve", 1, dice => dice.Below(2),
            new FuzzOption("--port", 0.5, draft => draft.Dice.Pick(["1", "80", "8080", "65535"]), draft => draft.Dice.Pick(["0", "-1", "65536", "", "x", "8080.0", "1e3", "٣", OptionValues.OddNumber(draft)])))
        {
            RunsUntilEnded = true,
        },
        new("completion", 1, _ => 0) { Argument = draft => draft.Dice.Pick(["bash", "zsh", "fish", "powershell", "tcsh", ""]) },
        new("complete", 1, _ => 0,
            new FuzzOption("--at", 1, draft => draft.Dice.Pick(["0", "1", "2", "9"]), draft => draft.Dice.Pick(NumberMutations.Odd)))
        {
            Argument = draft => draft.Dice.Pick(["", "run", "r", "geometry", "--set", "new", "--units", "x"]),
        },
        new("schema", 1, _ => 0),
    ];

    private static FuzzOption Picture(double share) =>
        new("--picture", share, draft => OptionValues.File(draft, draft.Dice.Pick([".svg", ".png"])), draft => OptionValues.OddFile(draft, draft.Dice.Pick([".svg", ".png", ".gif"])));

    private static FuzzOption Charts(double share) => new("--charts", share, OptionValues.Folder, OptionValues.OddFolder);

    private static FuzzOption Reading(string name, params string[] sound) => new(name, 0.95, draft => draft.Dice.Pick(sound), OptionValues.OddQuantity);

    private static FuzzOption Dampers(string name) => new(name, 0.3, draft => draft.Dice.Pick(["soft", "medium", "firm"]), draft => draft.Dice.Pick(["", "hard"]));

    private static FuzzOption Tire(string name) => new(name, 0.3, draft => draft.Dice.Pick(["275/60R15", "28x10.5-15", "P205/75-15"]), draft => draft.Dice.Pick(["wide", "", "0/0R0", "99999/60R15"]));

    /// <summary>Whether a line is one of a command that goes on until it is ended; an odd argument may have made another of it.</summary>
    /// <param name="command">The command that the case was made for.</param>
    /// <param name="arguments">The line.</param>
    public static bool RunsUntilEnded(string command, IReadOnlyList<string> arguments) =>
        All.Any(one => one.Name == command && one.RunsUntilEnded) && !All.Any(one => one.Name != command && one.Name == arguments[0]);

    /// <summary>What the program knows and the register does not, or the other way round: one sentence each.</summary>
    public static IReadOnlyList<string> Differences()
    {
        RootCommand root = CommandRegister.Create(new Session(TextWriter.Null, TextWriter.Null, CancellationToken.None), ["new"]);
        var known = new HashSet<string>(root.Subcommands.SelectMany(command => Named(command, "")));
        var tried = new HashSet<string>(All.SelectMany(command => command.Options.Select(option => $"{command.Name} {option.Name}").Append(command.Name)));
        return
        [
            .. known.Except(tried).Order(StringComparer.Ordinal).Select(name => $"`{name}` is not tried: give it a line in tools/LaunchSim.Fuzz/Commands/FuzzCommands.cs"),
            .. tried.Except(known).Order(StringComparer.Ordinal).Select(name => $"`{name}` is tried and the program does not have it: take its line out of tools/LaunchSim.Fuzz/Commands/FuzzCommands.cs"),
        ];
    }

    // A command that has commands is tried through them.
    private static IEnumerable<string> Named(Command command, string before) => command.Subcommands.Count > 0
        ? command.Subcommands.SelectMany(inner => Named(inner, $"{before}{command.Name} "))
        : command.Options.Where(option => option is not HelpOption).Select(option => $"{before}{command.Name} {option.Name}").Append(before + command.Name);
}
