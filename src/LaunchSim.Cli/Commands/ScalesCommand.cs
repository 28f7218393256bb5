using System.CommandLine;
using LaunchSim.Cli.Completion;
using LaunchSim.Cli.Output;
using LaunchSim.Cli.Terminal;
using LaunchSim.Passes.Scales;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Scales;
using LaunchSim.Scenarios.Writing;

namespace LaunchSim.Cli.Commands;

/// <summary><c>launchsim scales</c>: where the centre of gravity is, from corner scales and lifts of an axle.</summary>
internal sealed class ScalesCommand
{
    private readonly Argument<string> _file = new("FILE") { HelpName = "FILE", Arity = ArgumentArity.ZeroOrOne, CompletionSources = { FileOffers.Scenarios }, Description = "A scale sheet; leave it out and give one lift by options" };
    private readonly (Option<string> Option, string Key)[] _numbers =
    [
        (Quantity("--wheelbase", "\"105.5 ±1/8 in\""), "wheelbase"),
        (Quantity("--front-radius", "\"12.6 in\", front wheel centres above the floor"), "loaded_radius.front"),
        (Quantity("--rear-radius", "\"13.1 in\""), "loaded_radius.rear"),
        (Quantity("--front-scale", "\"1560 ±3 lb\", both front tyres on the level"), "level.front"),
        (Quantity("--rear-scale", "\"1440 ±3 lb\""), "level.rear"),
        (Word("--raised", "Which axle was raised"), "lifts.raised"),
        (Quantity("--height", "\"36 in\", the raised wheel centres above the level of the other axle's pads"), "lifts.height"),
        (Quantity("--load", "\"1600 ±3 lb\", both tyres of the axle that stayed on the scales"), "lifts.load"),
    ];

    private readonly Option<string> _into = new("--into") { HelpName = "scenario", CompletionSources = { FileOffers.Scenarios }, Description = "Put car.wheelbase, car.scales and car.cg_height with their ± into this scenario, in place; everything else of it is kept" };
    private readonly Option<bool> _json = new("--json") { Description = "Print one JSON document, in SI units, in the place of the text" };
    private readonly Option<string> _units = Settings.Units();
    private readonly Session _session;

    private ScalesCommand(Session session) => _session = session;

    public static Command Create(Session session)
    {
        var scales = new ScalesCommand(session);
        var command = new Command("scales", "Where the centre of gravity is, and how well that is known: from corner scales and one or more lifts of an axle") { scales._file };
        foreach ((Option<string> option, _) in scales._numbers)
        {
            command.Options.Add(option);
        }

        command.Options.Add(scales._into);
        command.Options.Add(scales._json);
        command.Options.Add(scales._units);
        command.SetAction(scales.Invoke);
        return command;
    }

    private int Invoke(ParseResult parsed)
    {
        Targets.RefuseNameless(("--into", parsed.GetValue(_into)));
        ScaleSheetResult read = Read(parsed);
        foreach (Diagnostic error in read.Errors)
        {
            _session.Error.WriteLine(error.ToString());
        }

        ScenarioInPlace? target = parsed.GetValue(_into) is { } into ? ScenarioInPlace.Open(into) : null;
        Scenario? scenario = target?.Read(_session);
        if (read.Sheet is not { } sheet || (target is not null && scenario is null))
        {
            return ExitCode.BadInput;
        }

        ScaleResult result;
        try
        {
            result = ScaleFit.Solve(sheet, _session.Cancellation);
        }
        catch (ScaleFitException exception)
        {
            throw new InputException($"{(sheet.SourceFile.Length > 0 ? sheet.SourceFile : "scales")}: {exception.Message}");
        }

        ValueEditResult? edit = target is null ? null : Edit(target, scenario!, result);
        if (edit is { Text: null })
        {
            return ExitCode.BadInput;
        }

        var readout = new Readout(Settings.System(parsed.GetValue(_units), sheet.UnitSystem));
        if (edit is not null)
        {
            target!.Write(edit, _session.Cancellation);
        }

        _session.Output.Write(parsed.GetValue(_json) ? ScalesJson.Text(result) : ScalesText.Of(result, readout, _session.Screen));
        foreach (ValueChange change in edit?.Changes ?? [])
        {
            _session.Error.WriteLine(FormattableString.Invariant($"{target!.Shown}:{change.Line}: {change.Path}: {change.Before} → {change.After}"));
        }

        if (edit is { Changes.Count: 0 })
        {
            _session.Error.WriteLine($"{target!.Shown}: these values stand there already");
        }

        return ExitCode.Done;
    }

    private ScaleSheetResult Read(ParseResult parsed)
    {
        List<(string Option, string Key, string Value)> given = [.. _numbers.Where(one => parsed.GetValue(one.Option) is not null).Select(one => (one.Option.Name, one.Key, parsed.GetValue(one.Option)!))];
        if (parsed.GetValue(_file) is { } file)
        {
            return given.Count == 0
                ? ScaleSheetReader.Read(file)
                : throw new InputException($"{given[0].Option}: found beside the file `{file}`; allowed: a scale sheet, or all numbers as options. Write it into the sheet");
        }

        List<string> lacking = [.. _numbers.Where(one => parsed.GetValue(one.Option) is null).Select(one => one.Option.Name)];
        return lacking.Count == 0
            ? ScaleSheetReader.ReadOptions(given)
            : throw new InputException(given.Count == 0 ? "found no scale sheet; name one, or give one lift by --wheelbase, --front-radius, --rear-radius, --front-scale, --rear-scale, --raised, --height and --load" : $"found no {string.Join(", ", lacking)}; one lift without a sheet needs all of them");
    }

    /// <summary>The readings go in as they were read, and the height as it came out, each in the unit that the file has there.</summary>
    private ValueEditResult Edit(ScenarioInPlace target, Scenario scenario, ScaleResult result)
    {
        ScaleRow Row(string words) => result.Rows.First(row => row.Words == words);
        (string Path, double Value, double HalfWidth)[] values =
        [
            ("car.wheelbase", Row("wheelbase").Read, Row("wheelbase").HalfWidth),
            ("car.scales.front", Row("front axle, level").Read, Row("front axle, level").HalfWidth),
            ("car.scales.rear", Row("rear axle, level").Read, Row("rear axle, level").HalfWidth),
            ("car.cg_height", result.Up.Value, result.Up.HalfWidth),
        ];
        ValueEditResult edit = ValueEdit.Apply(target.Text, target.Shown, target.Folder, [.. values.Select(one => (one.Path, DoubtedText.Of(one.Value, one.HalfWidth, scenario.Find(one.Path)!.Unit)))]);
        foreach (Diagnostic error in edit.Errors)
        {
            _session.Error.WriteLine(error.ToString());
        }

        return edit;
    }

    private static Option<string> Quantity(string name, string example) => new(name) { HelpName = "quantity", Description = $"As in {example}" };

    private static Option<string> Word(string name, string what)
    {
        var option = new Option<string>(name) { HelpName = "front|rear", Description = what };
        _ = option.AcceptOnlyFromAmong("front", "rear");
        return option;
    }
}
