using System.Text;
using LaunchSim.Fuzz.Cases;
using LaunchSim.Fuzz.Mutations;
using LaunchSim.Scenarios.Paths;

namespace LaunchSim.Fuzz.Commands;

/// <summary>Values of options, those with which a command goes on and those that it may refuse.</summary>
internal static class OptionValues
{
    private const string EarlierTrace = "time_s,distance_m,speed_mps,acceleration_mps2\n0,0,0,0\n";

    /// <summary>--set, whose sound values are the case's own.</summary>
    public static FuzzOption Set { get; } = new("--set", 0, Odd: draft => OddSet(draft.Dice));

    /// <summary>One file mostly.</summary>
    public static int OneToThree(Dice dice) => dice.Chance(0.93) ? 1 : dice.From(2, 3);

    /// <summary>Two files mostly, now and then one too few.</summary>
    public static int TwoOrThree(Dice dice) => dice.Chance(0.05) ? 1 : dice.Chance(0.8) ? 2 : 3;

    /// <summary>A new file in the case's folder, or an earlier result that is to be replaced.</summary>
    public static string File(Draft draft, string extension)
    {
        if (draft.Dice.Chance(0.1))
        {
            draft.Add(CaseFile.OfText("earlier" + extension, EarlierTrace) with { IsEarlierResult = true });
            return InFolder("earlier" + extension);
        }

        return InFolder(draft.Named.Count > 1 ? "tables" : "table" + extension);
    }

    /// <summary>A pass of the case's car, or something that is none.</summary>
    public static string PassFile(Draft draft)
    {
        string car = draft.Named.Count > 0 ? draft.Named[0] : draft.Dice.Pick(["none.yaml", "pass.yaml"]);
        string seen = draft.Dice.Pick(
        [
            "seen: {rear_moves: 0.06 s, front_moves: 0.09 ±0.01 s, spin_starts: never}",
            "seen: {frames_per_second: 240, release_frame: 100, rear_open: frame 130, first_up: rear}",
            "seen: {marks: 60 ft, times: 1.5 s, shake: hard}",
            "seen: {rear_moves: frame 100}",
            "seen: {front_tires_leave: 0.5 s, front_tires_land: 0.2 s, first_up: left}",
            "seen:",
            "",
        ]);
        string logs = draft.Dice.Pick(["", "", "logs: [{file: log.csv, mapping: mapping.yaml}]", "logs: [{file: none.csv, mapping: pass.yaml}]"]);
        _ = Log(draft);
        _ = Mapping(draft);
        draft.Add(CaseFile.OfText("pass.yaml", $"name: A pass\ncar: {car}\n{draft.Dice.Pick(["", "changed: {rear.spring.rate: 175 lb/in}\n", "changed: {car: x}\n"])}{seen}\n{logs}\n"));
        return InFolder(draft.Dice.Pick(["pass.yaml", "pass.yaml", "pass.yaml", "none.yaml"]));
    }

    /// <summary>What a logger may have written of a launch: rather like one, with what loggers do to it; or a file that is none.</summary>
    public static string Log(Draft draft)
    {
        Dice dice = draft.Dice;
        bool hasCommas = dice.Chance(0.2);
        char separator = hasCommas ? ';' : ',';
        double release = dice.Between(0.3, 0.6), acceleration = dice.Between(3, 14), rise = dice.Between(-20, 60);
        var text = new StringBuilder(dice.Pick(["", "", "Logger 3, session 2\n\n"]));
        _ = text.AppendJoin(separator, ["Time", "Rear RH", "Wheel"]).Append('\n').Append(dice.Chance(0.5) ? $"s{separator}mm{separator}rad/s\n" : "");
        int last = dice.Pick([0, 1, 150, 150, 150, 150]);
        for (int row = 0; row < last; row++)
        {
            double time = 0.01 * (dice.Chance(0.01) ? row - 1 : row), since = Math.Max(0, time - release);
            string wheel = dice.Chance(0.01) ? dice.Pick(["", "NaN", "-", "1e999"]) : FormattableString.Invariant($"{(acceleration * since / 0.33) + dice.Between(-0.2, 0.2):F3}");
            string[] cells = [FormattableString.Invariant($"{time:F3}"), FormattableString.Invariant($"{(rise * Math.Min(1, 8 * since)) + dice.Between(-0.5, 0.5):F2}"), wheel];
            _ = text.AppendJoin(separator, cells.Select(cell => hasCommas ? cell.Replace('.', ',') : cell)).Append('\n');
        }

        draft.Add(CaseFile.OfText("log.csv", text.ToString()));
        return InFolder(dice.Pick(["log.csv", "log.csv", "log.csv", "log.csv", "log.csv", "log.csv", "log.csv", "log.csv", "none.csv", "marks.yaml"]));
    }

    /// <summary>A mapping file for such a log, or one that does not fit it.</summary>
    public static string Mapping(Draft draft)
    {
        Dice dice = draft.Dice;
        string more = dice.Pick(["", "", "", ", reversed: yes", ", scale: 2", ", unit: lb", ", quantity: pitch"]);
        draft.Add(CaseFile.OfText("mapping.yaml", $"time: {dice.Pick(["{column: Time, unit: s}", "{column: Time, unit: s}", "{rate: 100 Hz}", "{column: Wheel, unit: ms}", "{}"])}\n{dice.Pick(["", "", "table: {decimal: comma}\n"])}columns:\n  - {{column: Rear RH, quantity: rear_ride_height, unit: mm{more}}}\n  - {{column: Wheel, quantity: wheel_speed, unit: rad/s}}\n"));
        return InFolder(dice.Pick(["mapping.yaml", "mapping.yaml", "mapping.yaml", "mapping.yaml", "mapping.yaml", "mapping.yaml", "mapping.yaml", "mapping.yaml", "log.csv", "none.yaml"]));
    }

    /// <summary>The case's own scenario.</summary>
    public static string Car(Draft draft) => InFolder(draft.Named.Count > 0 && !Path.IsPathRooted(draft.Named[0]) ? draft.Named[0] : "none.yaml");

    /// <summary>A folder with a pass in it, or one without.</summary>
    public static string SeasonFolder(Draft draft)
    {
        _ = PassFile(draft);
        draft.Add(CaseFile.OfText("season.yaml", draft.Dice.Pick(["name: A season\n", "fitted: pass.yaml\n", "car: [\n", ""])));
        return InFolder(draft.Dice.Pick([".", ".", ".", "none", "pass.yaml"]));
    }

    /// <summary>A damper dyno's sheet, or something that is none.</summary>
    public static string DynoSheet(Draft draft)
    {
        string rows = string.Concat(Enumerable.Range(0, 80).Select(i => FormattableString.Invariant($"{10 * Math.Sin(i / 6.0):F3},{(200 * Math.Sin(i / 6.0)) - draft.Dice.Between(0, 60):F2}\n")));
        draft.Add(CaseFile.OfText("dyno.csv", draft.Dice.Pick(["velocity (in/s),force (lb)\n", "v,f\n", "", "Velocity;Force\nin/s;lbf\n", "velocity (in/s),force (lb)\nnan,1\n"]) + rows));
        return InFolder(draft.Dice.Pick(["dyno.csv", "dyno.csv", "dyno.csv", "none.csv"]));
    }

    /// <summary>The same for one click.</summary>
    public static string DynoClick(Draft draft) => draft.Dice.Pick(["0", "6", "12.5"]) + "=" + DynoSheet(draft);

    /// <summary>A new file in the case's folder.</summary>
    public static string NewFile(Draft draft, string extension) => InFolder(draft.Dice.Pick(["rows", "other"]) + extension);

    /// <summary>A few values of a setting.</summary>
    public static string Vary(Dice dice) => dice.Pick(
        ["rear.spring.rate=130 150 175 lb/in", "rear.tire.pressure.set=14 to 16 by 1 psi", "car.cg_height=20 to 22 by 1 in", "rear.linkage.upper.body.use=all", "rear.damper.extension.set=all"]);

    /// <summary>Anything for a setting and its values.</summary>
    public static string OddVary(Dice dice) => dice.Below(6) switch
    {
        0 => OddSet(dice),
        1 => $"{dice.Pick([.. ScenarioPath.Known.Keys])}={dice.Pick(NumberMutations.Odd)} to {dice.Pick(NumberMutations.Odd)} by {dice.Pick(NumberMutations.Odd)} {dice.Pick(UnitMutations.Odd)}",
        2 => $"{dice.Pick([.. ScenarioPath.Known.Keys])}=all",
        3 => "rear.spring.rate=240 to 120 by 10 lb/in",
        4 => "rear.spring.rate=100 to 1100 by 1 lb/in",
        _ => dice.Pick(["", "=", "rear.spring.rate", "rear.spring.rate=", "rear.spring.rate=1 1 lb/in"]),
    };

    /// <summary>A place where nothing may be written, or where something else lies.</summary>
    public static string OddFile(Draft draft, string extension)
    {
        draft.Add(CaseFile.OfText("foreign" + extension, "lap,time\n1,9.99\n"));
        draft.Add(new CaseFile("folder" + extension, []) { IsFolder = true });
        return draft.Dice.Below(8) switch
        {
            0 => InFolder("foreign" + extension),
            1 => InFolder("folder" + extension),
            2 => InFolder("no/such/folder/a" + extension),
            3 => InFolder(draft.Named.Count > 0 ? draft.Named[0] : "new.yaml"),
            4 => InFolder("new.yaml"),
            5 => InFolder("foreign" + extension + "/a" + extension),
            6 => "",
            _ => InFolder(new string('x', 300) + extension),
        };
    }

    /// <summary>A new folder within the case's.</summary>
    public static string Folder(Draft draft) => InFolder(draft.Dice.Pick(["results", "deep/er/results", "results/"]));

    /// <summary>A folder that cannot be made.</summary>
    public static string OddFolder(Draft draft)
    {
        draft.Add(CaseFile.OfText("file", "x"));
        return draft.Dice.Pick([InFolder("file"), InFolder("file/below"), "", InFolder(new string('x', 300))]);
    }

    /// <summary>A tolerance that is allowed.</summary>
    public static string Tolerance(Dice dice) => Spelling.Number(dice.Spread(1e-9, 1e-3), dice);

    /// <summary>Anything for a number.</summary>
    public static string OddNumber(Draft draft) => draft.Dice.Pick(NumberMutations.Odd);

    /// <summary>Anything for a quantity.</summary>
    public static string OddQuantity(Draft draft) => $"{draft.Dice.Pick(NumberMutations.Odd)} {draft.Dice.Pick(UnitMutations.Odd)}";

    /// <summary>A range.</summary>
    public static string Range(Dice dice, double least, double most, string unit)
    {
        double from = dice.Between(least, most);
        return $"{Spelling.Number(from, dice)} to {Spelling.Number(dice.Between(from, most), dice)}{unit}";
    }

    /// <summary>Anything for a range.</summary>
    public static string OddRange(Draft draft) =>
        $"{draft.Dice.Pick(NumberMutations.Odd)}{draft.Dice.Pick([" to ", " to ", "to", "-", ""])}{draft.Dice.Pick(NumberMutations.Odd)} {draft.Dice.Pick(UnitMutations.Odd)}";

    private static string OddSet(Dice dice)
    {
        string path = dice.Pick([.. ScenarioPath.Known.Keys]).Replace("[]", dice.Pick(["[0]", "[0]", "[1]", "[-1]", "[x]", "[99999999999]", "["]), StringComparison.Ordinal)
            + dice.Pick(["", "", "", "", ".ahead", ".up", ".use", ".holes.2", ".holes.2.up", ".holes.", ".clicks.6", ".clicks.1e400", "[0]", ".", "..", ".x", " "]);
        string value = dice.Below(6) switch
        {
            0 => dice.Pick(NumberMutations.Odd),
            1 => $"{dice.Pick(NumberMutations.Odd)} {dice.Pick(UnitMutations.Odd)}",
            2 => $"{dice.Spread(1e-6, 1e6):R} {dice.Pick(UnitMutations.Odd)}",
            3 => dice.Pick(["{", "[", "{}", "[]", "{a: b}", "{holes: {1: 1 2 in}, use: 1}", "[{mass: 4 lb, at: 1 2 in}]", "{holes: {}, use: }", "&a 1", "*a", "!!str x", "'", "\"", "\"\\0\"", "\u001b[31m", "a\nb", "#", "1 #", "{type: axle-torque}"]),
            4 => $"{dice.Pick(NumberMutations.Odd)} {dice.Pick(NumberMutations.Odd)} {dice.Pick(UnitMutations.Odd)}",
            _ => new string(dice.Pick(['1', '[', '{', 'x', '±', ' ']), dice.From(1, 3000)),
        };
        return dice.Below(12) switch { 0 => path, 1 => "=" + value, 2 => path + "=", 3 => value, _ => $"{path}={value}" };
    }

    /// <summary>A name in the case's folder.</summary>
    public static string InFolder(string name) => $"{FuzzCase.Folder}/{name}";
}
