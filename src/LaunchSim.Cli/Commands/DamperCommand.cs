using System.CommandLine;
using System.Globalization;
using LaunchSim.Charts;
using LaunchSim.Charts.Dyno;
using LaunchSim.Cli.Completion;
using LaunchSim.Cli.Output;
using LaunchSim.Cli.Terminal;
using LaunchSim.Passes.Dyno;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Cli.Commands;

/// <summary><c>launchsim damper</c>: damper tables with clicks out of dyno sheets.</summary>
internal sealed class DamperCommand
{
    private readonly Argument<string[]> _files = new("DYNO.csv") { HelpName = "DYNO.csv", Arity = ArgumentArity.ZeroOrMore, CompletionSources = { FileOffers.Ending(".csv", ".txt") }, Description = "Dyno sheets, text with columns, of a damper without clicks or with a column for them; several are taken together" };
    private readonly Option<string[]> _click = new("--click") { HelpName = "click=file", Arity = ArgumentArity.OneOrMore, Description = "The sheet of one click, as in --click 3=stiff.csv; may be given again and again, also for one click twice (left and right)" };
    private readonly Option<string[]> _column = new("--column") { HelpName = "quantity=name", Arity = ArgumentArity.OneOrMore, Description = "Which column is which, where the names do not tell: velocity, force, extension, compression, displacement or click" };
    private readonly Option<string[]> _unit = new("--unit") { HelpName = "quantity=unit", Arity = ArgumentArity.OneOrMore, Description = "A column's unit, where the sheet does not tell, as in --unit force=lb" };
    private readonly Option<string> _extension = new("--extension") { HelpName = "positive|negative", Description = "The velocity's sign while the damper gets longer; the gas force tells it when left out" };
    private readonly Option<string> _gas = new("--gas") { HelpName = "force", Description = "The gas force in the place of the sheet's own, as in \"35 lb\"" };
    private readonly Option<string> _speeds = new("--speeds") { HelpName = "speeds", Description = "Speeds of the table, as in \"0 1 2 5 10 20 in/s\"; usual ones when left out" };
    private readonly Option<string> _set = new("--set-click") { HelpName = "click", Description = "The click that is set on the car; the lowest when left out" };
    private readonly Option<string> _picture = new("--picture") { HelpName = "path", CompletionSources = { FileOffers.Ending(".png", ".svg") }, Description = "Draw the measured loops and the tables, .png or .svg; an earlier picture there is replaced" };
    private readonly Option<string> _out = new("--out") { HelpName = "file", Description = "Write the lines to paste into this new .yaml file; nothing that is there is overwritten" };
    private readonly Option<bool> _json = new("--json") { Description = "Print one JSON document, in SI units, in the place of the text" };
    private readonly Option<string> _units = Settings.Units();
    private readonly Session _session;

    private DamperCommand(Session session) => _session = session;

    public static Command Create(Session session)
    {
        var damper = new DamperCommand(session);
        _ = damper._extension.AcceptOnlyFromAmong("positive", "negative");
        damper._units.Description = "Units of the tables; shop when left out";
        var command = new Command("damper", "Damper tables with clicks out of dyno sheets: gas force and hysteresis taken out and shown, ready to paste")
        {
            damper._files, damper._click, damper._column, damper._unit, damper._extension, damper._gas, damper._speeds, damper._set, damper._picture, damper._out, damper._json, damper._units,
        };
        command.SetAction(damper.Invoke);
        return command;
    }

    private int Invoke(ParseResult parsed)
    {
        (string? picturePath, string? outPath) = (parsed.GetValue(_picture), parsed.GetValue(_out));
        Targets.RefuseNameless(("--picture", picturePath), ("--out", outPath));
        List<(double? Click, string File)> files = Files(parsed);
        DynoMapping mapping = Mapping(parsed);
        double? gas = Number("--gas", parsed.GetValue(_gas), QuantityKind.Force, "35 lb")?[0];
        bool isShop = Settings.System(parsed.GetValue(_units), UnitSystem.Shop) == UnitSystem.Shop;
        IReadOnlyList<double> speeds = Speeds(parsed.GetValue(_speeds)) ?? DamperTableBuilder.UsualSpeeds(isShop);
        OutputFile? picture = picturePath is null ? null : OutputFile.Plan(picturePath, PictureTarget.KindOf(picturePath, null), files.Select(one => one.File));
        NewScenarioFile? target = outPath is null ? null : NewScenarioFile.Plan(outPath);
        if (Measure(files, mapping, parsed.GetValue(_extension) is { } sign ? sign == "positive" : null, gas) is not { } measurements)
        {
            return ExitCode.BadInput;
        }

        DamperTable table;
        try
        {
            table = DamperTableBuilder.Build(measurements, speeds);
        }
        catch (DynoException exception)
        {
            throw new InputException(exception.Message);
        }

        double? set = Click(parsed.GetValue(_set));
        double[] clicks = [.. table.Extension.Rows.Concat(table.Compression.Rows).Select(row => row.Click).OfType<double>().Distinct()];
        if (set is { } wanted && !clicks.Contains(wanted))
        {
            throw new InputException(string.Create(CultureInfo.InvariantCulture, $"--set-click {wanted}: found no row for it; allowed: {(clicks.Length > 0 ? string.Join(", ", clicks) : "none, since the table has no clicks")}"));
        }

        var readout = new Readout(isShop ? UnitSystem.Shop : UnitSystem.Si);
        string yaml = DamperYaml.Of(table, isShop, set);
        target?.Write(yaml, _session.Cancellation);
        StudyRuns.Write(picture, stream => PictureTarget.Write(Picture(table, files, readout), picture!.Kind, stream), _session);
        _session.Output.Write(parsed.GetValue(_json) ? DamperJson.Text(table) : DamperText.Of(table, yaml, readout, _session.Screen));
        if (target is not null)
        {
            _session.Error.WriteLine($"wrote {outPath}");
        }

        return ExitCode.Done;
    }

    private static double? Click(string? given) =>
        given is null ? null
        : double.TryParse(given, NumberStyles.Float, CultureInfo.InvariantCulture, out double click) && double.IsFinite(click) ? click
        : throw new InputException($"--set-click: found `{given}`; allowed: a click of the table, such as 6");

    private List<(double? Click, string File)> Files(ParseResult parsed)
    {
        var files = new List<(double? Click, string File)>();
        foreach (string file in parsed.GetValue(_files) ?? [])
        {
            files.Add((null, file));
        }

        foreach (string text in parsed.GetValue(_click) ?? [])
        {
            int equals = text.IndexOf('=', StringComparison.Ordinal);
            files.Add(equals > 0 && double.TryParse(text[..equals], NumberStyles.Float, CultureInfo.InvariantCulture, out double click) && double.IsFinite(click) && equals + 1 < text.Length
                ? (click, text[(equals + 1)..])
                : throw new InputException($"--click {text}: found no number before an equals sign; write --click 3=FILE.csv"));
        }

        if (files.Count == 0)
        {
            throw new InputException("found no dyno sheet; name one, or one for each click as in --click 3=FILE.csv");
        }

        return files.Any(one => one.Click is null) && files.Any(one => one.Click is not null)
            ? throw new InputException($"{files[0].File}: found beside --click; allowed: all sheets with a click or none. Say its click, as in --click 0={files[0].File}")
            : files;
    }

    private DynoMapping Mapping(ParseResult parsed)
    {
        return new DynoMapping(Read("--column", parsed.GetValue(_column)), Read("--unit", parsed.GetValue(_unit)));

        static Dictionary<DynoQuantity, string> Read(string option, string[]? given)
        {
            var read = new Dictionary<DynoQuantity, string>();
            foreach (string text in given ?? [])
            {
                int equals = text.IndexOf('=', StringComparison.Ordinal);
                if (equals < 0 || DynoQuantity.Find(text[..equals].Trim()) is not { } quantity || text[(equals + 1)..].Trim().Length == 0)
                {
                    throw new InputException($"{option} {text}: found no quantity before an equals sign; allowed: {string.Join(", ", DynoQuantity.All.Select(one => one.Key))}");
                }

                read[quantity] = text[(equals + 1)..].Trim();
            }

            return read;
        }
    }

    private static double[]? Speeds(string? given)
    {
        double[]? speeds = Number("--speeds", given, QuantityKind.Speed, "0 1 2 5 10 20 in/s");
        return speeds is null || (speeds.Length >= 3 && speeds[0] == 0 && speeds.Zip(speeds.Skip(1), (a, b) => b > a).All(rises => rises))
            ? speeds
            : throw new InputException($"--speeds {given}: found speeds that do not rise from 0; allowed: three or more, as in \"0 1 2 5 10 20 in/s\"");
    }

    private static double[]? Number(string option, string? given, QuantityKind kind, string example)
    {
        if (given is null)
        {
            return null;
        }

        return Quantity.TryParse(given, kind, out Quantity? quantity, out string problem)
            ? quantity!.AllSi()
            : throw new InputException($"{option} {given}: {problem}, as in \"{example}\"");
    }

    private List<DamperMeasurement>? Measure(List<(double? Click, string File)> files, DynoMapping mapping, bool? extensionIsPositive, double? gas)
    {
        var measurements = new List<DamperMeasurement>();
        bool isGood = true;
        foreach ((double? click, string file) in files)
        {
            _session.Cancellation.ThrowIfCancellationRequested();
            DynoReadResult read = DynoReader.Read(file, click, mapping);
            foreach (Diagnostic error in read.Errors)
            {
                _session.Error.WriteLine(error.ToString());
                isGood = false;
            }

            foreach (string note in read.Notes)
            {
                _session.Error.WriteLine(note);
            }

            foreach (DynoRun run in read.Runs)
            {
                DamperMeasurement? one = DynoSigns.Set(run, extensionIsPositive, gas, out string? problem);
                if (problem is not null)
                {
                    _session.Error.WriteLine(problem);
                }

                isGood &= one is not null;
                if (one is not null)
                {
                    measurements.Add(one);
                }
            }
        }

        return isGood ? measurements : null;
    }

    private static Picture Picture(DamperTable table, List<(double? Click, string File)> files, Readout readout)
    {
        IEnumerable<TableRow> Rows(DamperSide side) => side.Rows.Select(row => new TableRow(
            row.Click is { } click ? string.Create(CultureInfo.InvariantCulture, $"click {click}") : side.Name, side.Name == "extension", side.Speeds, row.Forces));
        return DamperSheetChart.Of(
            DamperText.Title(table, readout),
            string.Join(", ", files.Select(one => Path.GetFileName(one.File)).Distinct().Take(6)),
            [.. table.Measurements.Select(one => new MeasuredLoop(one.Velocities, [.. one.Forces.Select(force => force + (one.GasForce ?? 0))], one.IsLoop))],
            [.. Rows(table.Extension), .. Rows(table.Compression)],
            readout);
    }
}
