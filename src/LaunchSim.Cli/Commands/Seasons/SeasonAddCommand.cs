using System.CommandLine;
using System.CommandLine.Completions;
using System.Globalization;
using LaunchSim.Cli.Completion;
using LaunchSim.Cli.Terminal;
using LaunchSim.Passes.Seasons;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Scenarios.Writing;

namespace LaunchSim.Cli.Commands.Seasons;

/// <summary><c>launchsim season add</c>: writes the next pass, from options or by asking a few questions.</summary>
internal sealed class SeasonAddCommand
{
    private const int HashLength = 16;
    private const string Last = "last";

    private readonly Argument<string> _folder = new("FOLDER") { HelpName = "FOLDER", CompletionSources = { FileOffers.Folders }, Description = "The season's folder, which is made when it is not there" };
    private readonly Option<string> _car = new("--car") { HelpName = "file", CompletionSources = { FileOffers.Scenarios }, Description = "The car's file; that of the pass it is like, of season.yaml or of the last pass when left out" };
    private readonly Option<string> _like = new("--like") { HelpName = "pass|last", CompletionSources = { FileOffers.Scenarios }, Description = "Begin with the car and the changed settings of an earlier pass, or of the last one" };
    private readonly Option<string[]> _set = Settings.Set();
    private readonly Option<string> _name = new("--name") { HelpName = "text", Description = "What the pass is called" };
    private readonly Option<string> _when = new("--when") { HelpName = "date", Description = "When it was, as in \"2026-09-12 14:10\"; now when left out" };
    private readonly Option<string> _track = new("--track") { HelpName = "text", Description = "The track in words" };
    private readonly Option<string> _weather = new("--weather") { HelpName = "text", Description = "The weather in words" };
    private readonly Option<string[]> _seen = new("--seen") { HelpName = "key=value", Arity = ArgumentArity.OneOrMore, CompletionSources = { Keys }, Description = "What was seen, as in --seen \"rear_moves=frame 131\"; may be given again and again" };
    private readonly Option<string[]> _log = new("--log") { HelpName = "file:mapping", Arity = ArgumentArity.OneOrMore, CompletionSources = { FileOffers.Ending(".csv", ".yaml") }, Description = "A file of data and its mapping, or the file alone; may be given again and again" };
    private readonly Option<string> _notes = new("--notes") { HelpName = "text", Description = "Anything worth remembering" };
    private readonly Session _session;

    private SeasonAddCommand(Session session) => _session = session;

    public static Command Create(Session session)
    {
        var add = new SeasonAddCommand(session);
        add._set.Description = "A setting that differed from the car's file, as in --set \"rear.tire.pressure.set=15 psi\"; may be given again and again";
        var command = new Command("add", "Write the next pass: the car as it ran, and what was seen; asks on a terminal when only the folder is given")
        {
            add._folder, add._car, add._like, add._set, add._name, add._when, add._track, add._weather, add._seen, add._log, add._notes,
        };
        command.SetAction(add.InvokeAsync);
        return command;
    }

    private static IEnumerable<CompletionItem> Keys(CompletionContext context) =>
        PassEdit.SeenKeys.Where(key => key.Path.StartsWith(context.WordToComplete, StringComparison.Ordinal)).Select(key => Offer.Part(key.Path + "=", key.What));

    private async Task<int> InvokeAsync(ParseResult parsed, CancellationToken cancellation)
    {
        string folder = parsed.GetRequiredValue(_folder);
        if (File.Exists(folder))
        {
            throw new InputException($"`{folder}` is a file; allowed: the folder of a season, which is made when it is not there");
        }

        SeasonFileResult about = SeasonFileReader.Read(folder);
        PassFile? like = Earlier(parsed.GetValue(_like), folder, out bool isReadable);
        SeasonInput.Tell(about.Errors, _session);
        if (about.Season is null || !isReadable)
        {
            return ExitCode.BadInput;
        }

        PassFile? last = like ?? LastOf(folder);
        string car = parsed.GetValue(_car) ?? like?.CarFile ?? about.Season.CarFile ?? last?.CarFile
            ?? throw new InputException($"--car: found no car, neither in {SeasonFile.FileName} nor in an earlier pass; write --car FILE");
        ReadResult read = StandingCheck.Reader(ReadPurpose.Run).Read(car);
        Findings.Write(read, _session.Error);
        if (read.Scenario is not { } scenario)
        {
            return ExitCode.BadInput;
        }

        PassDraft draft = Draft(parsed, folder, car, scenario, like);
        bool isTyped = new Option[] { _like, _set, _seen, _log }.Any(option => parsed.GetResult(option) is { Implicit: false });
        if (!isTyped && _session.Asker is { } asker)
        {
            var interview = new PassInterview(asker(), one => Check(one, folder), _session.Cancellation);
            draft = await interview.AskAsync(draft, last, scenario);
        }

        return Write(folder, draft, parsed);
    }

    private PassDraft Draft(ParseResult parsed, string folder, string car, Scenario scenario, PassFile? like) => new()
    {
        Name = OneLine("--name", parsed.GetValue(_name)),
        When = parsed.GetValue(_when) is { } when ? OneLine("--when", when) : DateTime.Now.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture),
        Car = FromFolder(folder, car),
        CarHash = scenario.ContentHash[..HashLength],
        Changed = [.. like?.Changed ?? [], .. Settings.Overrides(parsed.GetValue(_set))],
        Track = OneLine("--track", parsed.GetValue(_track)),
        Weather = OneLine("--weather", parsed.GetValue(_weather)),
        Logs = [.. (parsed.GetValue(_log) ?? []).Select(log => Log(folder, log))],
        Seen = [.. (parsed.GetValue(_seen) ?? []).Select(SeenPair)],
        Notes = parsed.GetValue(_notes),
    };

    private int Write(string folder, PassDraft draft, ParseResult parsed)
    {
        PassText text = PassText.Of(draft);
        IReadOnlyList<Diagnostic> errors = Check(draft, folder);
        if (errors.Count > 0)
        {
            SeasonInput.Tell(errors.Select(error => InOptions(error, text, parsed)), _session);
            _session.Error.WriteLine("launchsim: no pass is written");
            return ExitCode.BadInput;
        }

        _ = Directory.CreateDirectory(folder);
        SeasonWritten written = SeasonInput.Write(book => book.Add(folder, text, _session.Cancellation), _session);
        SeasonInput.Tell(written.Errors.Concat(written.Warnings), _session);
        if (written.File is null)
        {
            return ExitCode.BadInput;
        }

        _session.Output.WriteLine($"wrote {written.File}; `launchsim season show {written.File}` sets it beside the prediction");
        return ExitCode.Done;
    }

    private static IReadOnlyList<Diagnostic> Check(PassDraft draft, string folder) =>
        new PassReader(StandingCheck.Reader(ReadPurpose.Run)).ReadText(PassText.Of(draft).Text, Shown(folder)).Errors;

    private static string Shown(string folder) => Path.Combine(folder, "the new pass");

    // An error names the option that was typed, not a line of a file that is not there.
    private Diagnostic InOptions(Diagnostic error, PassText text, ParseResult parsed)
    {
        if (error.Line < 1 || error.Line > text.Sources.Count || !error.File.EndsWith("the new pass", StringComparison.Ordinal))
        {
            return error;
        }

        string source = text.Sources[error.Line - 1], line = text.Text.Split('\n')[error.Line - 1];
        string value = line[(line.IndexOf(": ", StringComparison.Ordinal) + 1)..].Trim();
        int dot = source.IndexOf('.', StringComparison.Ordinal);
        string option = dot < 0 ? source.StartsWith("logs", StringComparison.Ordinal) ? $"--log {value}" : $"--{source.Replace('_', '-')} \"{value}\""
            : source[..dot] == "seen" ? $"--seen \"{source[(dot + 1)..]}={value}\""
            : Settings.Overrides(parsed.GetValue(_set)).Any(one => one.Path == source[(dot + 1)..]) ? $"--set \"{source[(dot + 1)..]}={value}\""
            : $"--like: {source[(dot + 1)..]}={value}";
        return error with { File = option, Line = 0, Column = 0 };
    }

    private PassFile? Earlier(string? like, string folder, out bool isReadable)
    {
        isReadable = true;
        if (like is null)
        {
            return null;
        }

        if (like == Last)
        {
            return LastOf(folder) ?? throw new InputException($"--like last: found no readable pass in `{folder}`; allowed: a season with a pass; write --like FILE, or leave it out");
        }

        PassResult read = new PassReader(StandingCheck.Reader(ReadPurpose.Run)).Read(like);
        SeasonInput.Tell(read.Errors, _session);
        isReadable = read.Pass is not null;
        return read.Pass;
    }

    // A season in which one file is wrong can still get its next pass.
    private static PassFile? LastOf(string folder)
    {
        if (!Directory.Exists(folder))
        {
            return null;
        }

        var reader = new PassReader(StandingCheck.Reader(ReadPurpose.Run));
        return SeasonFolder.Passes(folder).Reverse().Select(file => reader.Read(file).Pass).FirstOrDefault(pass => pass is not null);
    }

    private static (string Key, string Value) SeenPair(string given)
    {
        int equals = given.IndexOf('=', StringComparison.Ordinal);
        return equals > 0 ? (given[..equals].Trim(), given[(equals + 1)..].Trim())
            : throw new InputException($"--seen {given}: found no key before an equals sign; write --seen \"key=value\", as in --seen \"rear_moves=frame 131\"");
    }

    private static (string File, string? Mapping) Log(string folder, string given)
    {
        // The colon of a drive is none between two files.
        int colon = given.LastIndexOf(':');
        return colon > 1 ? (FromFolder(folder, given[..colon]), FromFolder(folder, given[(colon + 1)..])) : (FromFolder(folder, given), null);
    }

    private static string FromFolder(string folder, string file)
    {
        try
        {
            return FileNames.From(folder, file);
        }
        catch (Exception exception) when (exception is ArgumentException or NotSupportedException or PathTooLongException)
        {
            throw new InputException($"found `{file}`; allowed: the name of a file");
        }
    }

    private static string? OneLine(string option, string? text) => text is null || text.Trim().Length > 0 ? text?.Trim()
        : throw new InputException($"{option}: found nothing; allowed: a text, or leave the option out");
}
