using System.Globalization;
using System.Text;
using System.Text.Json;
using LaunchSim.Cli.Output;
using LaunchSim.Cli.Terminal;
using LaunchSim.Studies.Grids;
using LaunchSim.Studies.Running;

namespace LaunchSim.Cli.Commands;

/// <summary>Runs over a grid at a terminal: with progress, and with a word on how to go on when they are interrupted.</summary>
internal static class StudyRuns
{
    /// <summary>Opens the table of a study.</summary>
    /// <param name="request">What was asked for.</param>
    /// <param name="plan">Its plan.</param>
    /// <exception cref="InputException">Something is in the way of the table, or it came from another study.</exception>
    public static GridStudyRun Open(StudyRequest request, GridPlan plan)
    {
        try
        {
            if (request.Csv is { } csv)
            {
                _ = OutputFile.Plan(csv, OutputKind.Rows, [request.Study.SourceFile, request.Study.Scenario.SourceFile]);
            }

            return GridStudyRun.Open(plan, request.Kind, $"{ProgramVersion.Name} {ProgramVersion.Text}", request.Shard, request.Csv, request.Resume);
        }
        catch (RowFileException exception)
        {
            throw new InputException(exception.Message);
        }
    }

    /// <summary>Runs what is missing.</summary>
    /// <param name="run">The run.</param>
    /// <param name="threads">How many threads.</param>
    /// <param name="take">Receives every row in order.</param>
    /// <param name="session">Shows progress.</param>
    /// <exception cref="InputException">A row of an earlier run cannot be read back.</exception>
    /// <exception cref="InterruptedStudyException">The user ended it.</exception>
    public static void Run(GridStudyRun run, int threads, Action<GridRow> take, Session session)
    {
        try
        {
            session.WithProgress("launches", run.Count, run.Kept, added => run.Run(threads, take, added, session.Cancellation));
        }
        catch (RowTableException exception)
        {
            throw new InputException(exception.Message);
        }
        catch (OperationCanceledException)
        {
            throw new InterruptedStudyException(run.Table is { } table
                ? string.Create(CultureInfo.InvariantCulture, $"interrupted; {run.Done} of {run.Count} rows are kept in `{RowFile.Unfinished(table)}`: the same command with --resume goes on from there")
                : "interrupted; nothing of it is kept: with --csv FILE the rows would be, and --resume would go on from them");
        }
    }

    /// <summary>Tells what came of a part of a study, whose rows are all that there is of it.</summary>
    /// <param name="request">What was asked for.</param>
    /// <param name="run">The run.</param>
    /// <param name="failed">How many launches did not come to their end.</param>
    /// <param name="session">Where it is told.</param>
    public static int Part(StudyRequest request, GridStudyRun run, long failed, Session session)
    {
        if (request.Json)
        {
            using var stream = new MemoryStream();
            using (Utf8JsonWriter json = ResultJson.Writer(stream))
            {
                json.WriteStartObject();
                ResultJson.Head(json, request.Study.Scenario);
                json.WriteString("part", request.Shard.ToString());
                json.WriteNumber("first_set_up", run.From);
                json.WriteNumber("set_ups_run", run.Count);
                json.WriteNumber("failed", failed);
                json.WriteEndObject();
            }

            session.Output.Write(Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length) + "\n");
        }
        else
        {
            session.Output.Write(string.Create(CultureInfo.InvariantCulture, $"Part {request.Shard}: {run.Count} set-ups from {run.From} on, {failed} of which did not come to their end. Join all parts with `launchsim merge`; with --csv and --resume on the joined table the same command then tells the whole.\n"));
        }

        session.Output.Flush();
        session.Error.WriteLine($"wrote {request.Csv}");
        return ExitCode.Done;
    }

    /// <summary>Says on the error stream that no launch of a study came to its end.</summary>
    /// <param name="file">The scenario.</param>
    /// <param name="reason">Why the first one did not; null when it is not known.</param>
    /// <param name="session">Where it is told.</param>
    public static int NoneDone(string file, string? reason, Session session)
    {
        session.Output.Flush();
        session.Error.WriteLine($"launchsim: {file}: no launch came to its end{(reason is null ? "; `launchsim run` says why" : $"; the first one {reason}")}");
        return ExitCode.Failed;
    }

    /// <summary>Says on the error stream that the launch of the set-up as it stands did not come to its end.</summary>
    /// <param name="file">The scenario.</param>
    /// <param name="reason">Why not.</param>
    /// <param name="session">Where it is told.</param>
    public static int NotDone(string file, string? reason, Session session)
    {
        session.Output.Flush();
        session.Error.WriteLine($"launchsim: {file}: the launch of the set-up as it stands {reason ?? "did not come to its end"}");
        return ExitCode.Failed;
    }

    /// <summary>Plans the picture of a study.</summary>
    /// <param name="path">Where it goes.</param>
    /// <param name="request">What was asked for.</param>
    /// <exception cref="InputException">It cannot go there, or there is none of a part of a study.</exception>
    public static OutputFile Picture(string path, StudyRequest request)
    {
        Targets.RefuseNameless(("--picture", path));
        return request.Shard.IsWhole
            ? OutputFile.Plan(path, PictureTarget.KindOf(path, null), [request.Study.SourceFile, request.Study.Scenario.SourceFile])
            : throw new InputException("--picture: found --shard; allowed: a whole study. Join the parts with `launchsim merge`, then give --picture with --resume and the joined table as --csv");
    }

    /// <summary>Writes a result and tells so.</summary>
    /// <param name="file">Where it goes; null for nowhere.</param>
    /// <param name="content">Writes it.</param>
    /// <param name="session">Is told.</param>
    public static void Write(OutputFile? file, Action<Stream> content, Session session)
    {
        if (file is not null)
        {
            session.Output.Flush();
            file.Write(content, session.Cancellation);
            session.Error.WriteLine($"{(file.Replaces ? "replaced" : "wrote")} {file.Shown}");
        }
    }
}
