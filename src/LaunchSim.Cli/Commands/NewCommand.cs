using System.CommandLine;
using LaunchSim.Cli.Completion;
using LaunchSim.Cli.Output;
using LaunchSim.Cli.Terminal;
using LaunchSim.Launch;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Typical;
using LaunchSim.Scenarios.Units;
using LaunchSim.Scenarios.Writing;

namespace LaunchSim.Cli.Commands;

/// <summary><c>launchsim new</c>: begins a scenario, from options or by asking one thing after the other.</summary>
internal sealed class NewCommand
{
    private readonly Argument<string> _file = new("FILE") { HelpName = "FILE", CompletionSources = { FileOffers.Folders }, Description = "The scenario to begin, as in my-car.yaml; nothing that is there is ever overwritten" };
    private readonly Option<string> _name = new("--name") { HelpName = "text", Description = "What car and set-up are called; the file's name when left out" };
    private readonly Option<string> _linkage = Words("--linkage", "Which kind of rear linkage; four-link when left out", "four-link", "ladder-bar");
    private readonly Option<string> _driveline = Words("--driveline", "What is known of the torque: at the axle, or an engine's sheet with a clutch or a converter; axle-torque when left out", "axle-torque", "clutch", "converter");
    private readonly Option<string> _units = Words("--units", "Units of what is not entered; shop when left out", "shop", "si");
    private readonly Option<string> _frontDampers = Words("--front-dampers", "How firm the front dampers are, without a dyno sheet; medium when left out", "soft", "medium", "firm");
    private readonly Option<string> _rearDampers = Words("--rear-dampers", "How firm the rear dampers are", "soft", "medium", "firm");
    private readonly Option<string> _frontTire = new("--front-tire") { HelpName = "size", Description = "Size on the front tyres, as in 205/60R15" };
    private readonly Option<string> _rearTire = new("--rear-tire") { HelpName = "size", Description = "Size on the rear tyres, as in 275/60R15 or 28x10.5-15" };
    private readonly Option<string> _sixtyFoot = new("--sixty-foot") { HelpName = "time", Description = "The car's 60 ft time on the timing clock, as in \"1.50 s\": it gives the torque" };
    private readonly Option<string> _flashSpeed = new("--flash-speed") { HelpName = "speed", Description = "Engine speed to which the converter flashes, as in \"4200 rpm\"" };
    private readonly Option<string[]> _set = Settings.Set();
    private readonly (StarterQuestion Question, Option<string> Option)[] _questions;
    private readonly Session _session;

    private NewCommand(Session session, bool isNamed)
    {
        _session = session;
        _questions = isNamed ? [.. StarterQuestion.All.Select(question => (question, Of(question)))] : [];
    }

    /// <summary>The command.</summary>
    /// <param name="session">Where it reads and writes.</param>
    /// <param name="isNamed">
    /// Whether it is among the words of the line. If not, the options that come out of the schema are left out: they take
    /// longer to make than all that the other commands need until the first line of help.
    /// </param>
    public static Command Create(Session session, bool isNamed)
    {
        var begun = new NewCommand(session, isNamed);
        var command = new Command("new", "Begin a scenario: what you measured, typical values with their doubt for the rest, and how to measure each")
        {
            begun._file, begun._name, begun._linkage, begun._driveline, begun._units,
        };
        foreach ((_, Option<string> option) in begun._questions)
        {
            command.Add(option);
        }

        foreach (Option option in (Option[])[begun._rearTire, begun._frontTire, begun._rearDampers, begun._frontDampers, begun._sixtyFoot, begun._flashSpeed, begun._set])
        {
            command.Add(option);
        }

        command.SetAction(begun.InvokeAsync);
        return command;
    }

    private static Option<string> Of(StarterQuestion question) =>
        new("--" + question.Option) { HelpName = "value", Description = $"{question.What}, as in \"{question.Example(UnitSystem.Shop)}\"" };

    private async Task<int> InvokeAsync(ParseResult parsed, CancellationToken cancellation)
    {
        string path = parsed.GetRequiredValue(_file);
        NewScenarioFile file = NewScenarioFile.Plan(path);
        StarterCar car = Car(parsed, path);
        if (_session.Asker is { } asker && StarterScenario.Write(car, path).Missing.Count > 0)
        {
            // Linkage, driveline and units decide what is asked, so they come first unless they were given.
            var interview = new Interview(asker(), _session.Cancellation);
            car = await interview.AskAsync(car, option => parsed.GetResult(option switch
            {
                "units" => _units,
                "linkage" => _linkage,
                _ => _driveline,
            }) is not null);
        }

        StarterResult result = StarterScenario.Write(car, path);
        if (result.Text is null)
        {
            Refuse(path, car, result);
            return ExitCode.BadInput;
        }

        file.Write(result.Text, _session.Cancellation);
        Tell(path, result);
        return ExitCode.Done;
    }

    private StarterCar Car(ParseResult parsed, string path)
    {
        var entered = new List<(string, string)>();
        foreach ((StarterQuestion question, Option<string> option) in _questions)
        {
            if (parsed.GetValue(option) is { } value)
            {
                entered.Add((question.Path, value));
            }
        }

        foreach ((string at, string value) in Settings.Overrides(parsed.GetValue(_set)))
        {
            entered.Add((at, value));
        }

        string name = parsed.GetValue(_name) ?? Path.GetFileNameWithoutExtension(path);
        return new StarterCar
        {
            Name = name.Trim().Length > 0 ? name.Trim() : throw new InputException("--name: found nothing; allowed: what car and set-up are called"),
            Linkage = parsed.GetValue(_linkage) ?? "four-link",
            Driveline = Driveline(parsed.GetValue(_driveline)),
            Units = Settings.System(parsed.GetValue(_units), UnitSystem.Shop),
            Entered = entered,
            Hints = new TypicalHints
            {
                FrontTire = Tire("--front-tire", parsed.GetValue(_frontTire)),
                RearTire = Tire("--rear-tire", parsed.GetValue(_rearTire)),
                FrontDampers = Family(parsed.GetValue(_frontDampers)),
                RearDampers = Family(parsed.GetValue(_rearDampers)),
                SixtyFootTime = Number("--sixty-foot", parsed.GetValue(_sixtyFoot), QuantityKind.Time, "1.50 s"),
                FlashSpeed = Number("--flash-speed", parsed.GetValue(_flashSpeed), QuantityKind.AngularSpeed, "4200 rpm"),
            },
        };
    }

    private void Refuse(string path, StarterCar car, StarterResult result)
    {
        foreach (Diagnostic error in result.Errors)
        {
            _session.Error.WriteLine(InOptions(error).ToString());
        }

        if (result.Missing.Count > 0)
        {
            _session.Error.WriteLine($"launchsim: `{path}` is not written; to be measured first:");
            foreach (StarterQuestion question in result.Missing)
            {
                _session.Error.WriteLine($"  --{question.Option} \"{question.Example(car.Units)}\"  {question.What}. {question.How}");
            }
        }
        else
        {
            _session.Error.WriteLine($"launchsim: `{path}` is not written: these numbers do not make a car that stands, or one cannot be read");
        }
    }

    // An error names the option that was typed, not the path that it stands for.
    private Diagnostic InOptions(Diagnostic error)
    {
        foreach ((StarterQuestion question, Option<string> option) in _questions)
        {
            string prefix = $"--set {question.Path}=";
            if (error.File.StartsWith(prefix, StringComparison.Ordinal))
            {
                return error with { File = $"{option.Name} \"{error.File[prefix.Length..]}\"" };
            }
        }

        return error;
    }

    private void Tell(string path, StarterResult result)
    {
        Scenario scenario = StandingCheck.Reader(ReadPurpose.Run).ReadText(result.Text!, path).Scenario!;
        var standing = StandingCar.Find(scenario.Car!);
        Page page = new Page(_session.Screen)
            .Heading($"{StaticLineWords.Of(standing.Line, standing.Standing.Wheelbase, new Readout(scenario.UnitSystem))}")
            .Blank()
            .Line($"wrote {path}; {result.Typical.Count} of its values are typical ones, marked `# typical` in it.")
            .Line($"Next: `launchsim check {path}` tells which of them matter for this car, `launchsim run {path}` what it does.");
        _session.Output.Write(page.ToString());
    }

    internal static StarterDriveline Driveline(string? word) => word switch
    {
        "clutch" => StarterDriveline.Clutch,
        "converter" => StarterDriveline.Converter,
        _ => StarterDriveline.AxleTorque,
    };

    internal static DamperFamily Family(string? word) => word switch
    {
        "soft" => DamperFamily.Soft,
        "firm" => DamperFamily.Firm,
        _ => DamperFamily.Medium,
    };

    private static Option<string> Words(string name, string what, params string[] words)
    {
        var option = new Option<string>(name) { HelpName = string.Join('|', words), Description = what };
        _ = option.AcceptOnlyFromAmong(words);
        return option;
    }

    private static TireSize? Tire(string option, string? text) => text is null ? null
        : TireSize.Parse(text) ?? throw new InputException($"{option}: found `{text}`; allowed: a size as on the sidewall, as in 275/60R15 or 28x10.5-15");

    private static double? Number(string option, string? text, QuantityKind kind, string example)
    {
        if (text is null)
        {
            return null;
        }

        if (!Quantity.TryParse(text, kind, out Quantity? quantity, out string problem))
        {
            throw new InputException($"{option}: {problem}; as in \"{example}\"");
        }

        return quantity!.Count == 1 && quantity.Si() > 0 ? quantity.Si() : throw new InputException($"{option}: found `{text}`; allowed: one number above 0, as in \"{example}\"");
    }
}
