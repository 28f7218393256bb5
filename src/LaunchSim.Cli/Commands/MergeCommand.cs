using System.CommandLine;
using System.Globalization;
using LaunchSim.Cli.Completion;
using LaunchSim.Cli.Output;
using LaunchSim.Cli.Terminal;
using LaunchSim.Studies.Running;

namespace LaunchSim.Cli.Commands;

/// <summary><c>launchsim merge</c>: joins the tables of a study's parts into the one that a single run would have written.</summary>
internal static class MergeCommand
{
    public static Command Create(Session session)
    {
        var parts = new Argument<string[]>("PART") { HelpName = "PART.csv", Arity = ArgumentArity.OneOrMore, CompletionSources = { FileOffers.Ending(".csv") }, Description = "The tables of all parts, in any order, each with its .study beside it" };
        var target = new Option<string>("--out") { HelpName = "path", Required = true, CompletionSources = { FileOffers.Ending(".csv") }, Description = "Where the whole table goes; nothing that is there is overwritten" };
        var command = new Command("merge", "Join the tables that `--shard` made into the same bytes as one run would have written") { parts, target };
        command.SetAction(parsed => Merge(parsed.GetRequiredValue(parts), parsed.GetRequiredValue(target), session));
        return command;
    }

    private static int Merge(string[] parts, string target, Session session)
    {
        Targets.RefuseNameless(("--out", target));
        if (!target.EndsWith(OutputKind.Rows.Extension, StringComparison.OrdinalIgnoreCase))
        {
            throw new InputException($"--out {target}: found a name that does not end in .csv; write one that does");
        }

        var file = OutputFile.Plan(target, OutputKind.Rows, []);
        if (file.Replaces || File.Exists(RowFile.Unfinished(target)))
        {
            throw new InputException($"--out {target}: `{(file.Replaces ? target : RowFile.Unfinished(target))}` is there already, and a table is never overwritten; name another file, or move it away");
        }

        if (RowMerge.Plan(parts, out IReadOnlyList<string> problems) is not { } merge)
        {
            foreach (string problem in problems)
            {
                session.Error.WriteLine($"launchsim: {problem}");
            }

            return ExitCode.BadInput;
        }

        try
        {
            merge.WriteSidecar(target);
        }
        catch (RowFileException exception)
        {
            throw new InputException(exception.Message);
        }

        file.Write(stream => merge.Write(stream, session.Cancellation), session.Cancellation);
        session.Output.Write(string.Create(CultureInfo.InvariantCulture, $"{merge.Rows} rows out of {parts.Length} parts.\n"));
        session.Output.Flush();
        session.Error.WriteLine($"wrote {target}");
        return ExitCode.Done;
    }
}
