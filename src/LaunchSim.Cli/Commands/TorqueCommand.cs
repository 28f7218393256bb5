using System.CommandLine;
using LaunchSim.Cli.Completion;
using LaunchSim.Cli.Output;
using LaunchSim.Cli.Terminal;
using LaunchSim.Passes.Fitting;
using LaunchSim.Passes.Logs;
using LaunchSim.Passes.Torque;
using LaunchSim.Reports;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Units;

namespace LaunchSim.Cli.Commands;

/// <summary><c>launchsim torque</c>: a torque table with its doubt out of logs, or out of one time alone.</summary>
internal sealed class TorqueCommand
{
    // A slip is printed to the thousandth; a staging beam is good to some thousandths. Common practice, no source.
    private const double UsualTimeDoubt = 0.005;

    private const double SixtyFeet = 18.288;

    private readonly Argument<string> _file = new("FILE") { HelpName = "FILE", CompletionSources = { FileOffers.Scenarios }, Description = "The scenario of the pass, as the car was set up" };
    private readonly Argument<string[]> _logs = new("LOG") { HelpName = "LOG", Arity = ArgumentArity.ZeroOrMore, CompletionSources = { FileOffers.Ending(".csv", ".txt", ".tsv") }, Description = "Logs of that one pass with a speed of driveshaft or wheels, or an acceleration" };
    private readonly Option<string[]> _mapping = new("--mapping") { HelpName = "file", Arity = ArgumentArity.OneOrMore, CompletionSources = { FileOffers.Ending(".yaml", ".yml") }, Description = "Which column is which quantity: one file for all logs, or one for each in their order, as for `launchsim pass`" };
    private readonly Option<string> _sixty = new("--sixty") { HelpName = "time", Description = "In the place of logs: the 60 ft time on the slip, as in \"1.52 s\"" };
    private readonly Option<string> _distance = new("--distance") { HelpName = "length", Description = "Where that time was taken; \"60 ft\" when left out" };
    private readonly Option<bool> _json = new("--json") { Description = "Print one JSON document, in SI units, in the place of the text" };
    private readonly Option<string> _units = Settings.Units();
    private readonly Option<string[]> _set = Settings.Set();
    private readonly Session _session;

    private TorqueCommand(Session session) => _session = session;

    public static Command Create(Session session)
    {
        var torque = new TorqueCommand(session);
        var command = new Command("torque", "A torque table with its doubt out of the logs of a pass, or out of its 60 ft time alone, ready to paste")
        {
            torque._file, torque._logs, torque._mapping, torque._sixty, torque._distance, torque._json, torque._units, torque._set,
        };
        command.SetAction(torque.Invoke);
        return command;
    }

    private int Invoke(ParseResult parsed)
    {
        string file = parsed.GetRequiredValue(_file);
        string[] logs = parsed.GetValue(_logs) ?? [], mappings = parsed.GetValue(_mapping) ?? [];
        RefuseMixed(parsed, logs, mappings);
        (double Value, double HalfWidth)? time = One("--sixty", parsed.GetValue(_sixty), QuantityKind.Time, "1.52 s", UsualTimeDoubt);
        double distance = One("--distance", parsed.GetValue(_distance), QuantityKind.Length, "60 ft", 0)?.Value ?? SixtyFeet;
        if (Findings.ReadAll(StandingCheck.Reader(ReadPurpose.Run), [file], Settings.Overrides(parsed.GetValue(_set)), _session) is not [var scenario])
        {
            return ExitCode.BadInput;
        }

        List<string> remarks = [];
        TorqueResult result;
        try
        {
            if (time is { } slip)
            {
                result = TorqueFromTime.Solve(scenario, distance, slip.Value, slip.HalfWidth, _session.Cancellation);
            }
            else if (Read(scenario, logs, mappings, remarks) is { } read)
            {
                result = TorqueFromLogs.Solve(scenario, read, Environment.ProcessorCount, _session.Cancellation);
            }
            else
            {
                return ExitCode.BadInput;
            }
        }
        catch (TorqueException exception)
        {
            throw new InputException($"{file}: {exception.Message}");
        }

        var readout = new Readout(Settings.System(parsed.GetValue(_units), scenario.UnitSystem));
        if (!result.Row.IsEngine && scenario.Car!.Driveline is Vehicle.AxleTorque { PowerShare.Count: > 1 })
        {
            remarks.Add("The file's driveline.power stays: it multiplies this table.");
        }

        _session.Output.Write(parsed.GetValue(_json)
            ? TorqueJson.Text(result, scenario, remarks)
            : TorqueText.Of(result, TorqueYaml.Of(result.Row, readout.IsShop, scenario.Car!.Driveline is not Vehicle.AxleTorque), remarks, readout, _session.Screen));
        return ExitCode.Done;
    }

    private void RefuseMixed(ParseResult parsed, string[] logs, string[] mappings)
    {
        bool hasTime = parsed.GetValue(_sixty) is not null;
        if (Array.Find([.. logs, .. mappings], name => name.Length == 0) is not null)
        {
            throw new InputException("torque: found a file without a name; allowed: the scenario, then the logs, then --mapping with its file");
        }

        if (logs.Length == 0 && !hasTime)
        {
            throw new InputException("torque: found neither a log nor a time; name logs after the scenario, or write --sixty \"1.52 s\"");
        }

        if (logs.Length > 0 && (hasTime || parsed.GetValue(_distance) is not null))
        {
            throw new InputException($"{(hasTime ? "--sixty" : "--distance")}: found beside logs, which tell more; leave one out");
        }

        if (mappings.Length > 1 && mappings.Length != logs.Length)
        {
            throw new InputException($"--mapping: found {mappings.Length} mappings for {logs.Length} {(logs.Length == 1 ? "log" : "logs")}; allowed: one for all, or one for each in their order");
        }
    }

    private static (double Value, double HalfWidth)? One(string option, string? given, QuantityKind kind, string example, double usual)
    {
        if (given is null)
        {
            return null;
        }

        if (!Quantity.TryParse(given, kind, out Quantity? quantity, out string problem))
        {
            throw new InputException($"{option} {given}: {problem}, as in \"{example}\"");
        }

        return quantity!.Count == 1 && quantity.Si() > 0
            ? (quantity.Si(), quantity.SiDoubt() ?? usual)
            : throw new InputException($"{option} {given}: found {(quantity.Count == 1 ? "no number above 0" : $"{quantity.Count} numbers")}; allowed: one above 0, as in \"{example}\"");
    }

    private List<FitLog>? Read(Scenario scenario, string[] logs, string[] mappings, List<string> remarks)
    {
        var run = LaunchOutcome.Of(scenario, _session.Cancellation);
        var read = new List<FitLog>();
        for (int i = 0; i < logs.Length; i++)
        {
            string log = logs[i];
            string? mapping = mappings.Length == 0 ? null : mappings.Length == 1 ? mappings[0] : mappings[i];
            LogResult result = LogProgress.Read(_session, log, progress => LogReader.Read(log, mapping, run, progress, _session.Cancellation));
            foreach (Diagnostic error in result.Errors)
            {
                _session.Error.WriteLine(error.ToString());
            }

            if (result.Log is { } aligned)
            {
                remarks.Add($"{log}: {aligned.Alignment.Words}");
                remarks.AddRange(aligned.Remarks.Select(remark => $"{log}: {remark}"));
                read.Add(new FitLog(log, aligned.Series, aligned.Alignment.Sd));
            }
        }

        return read.Count == logs.Length ? read : null;
    }
}
