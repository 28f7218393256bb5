using System.CommandLine;
using System.Globalization;
using LaunchSim.Cli.Completion;
using LaunchSim.Cli.Output;
using LaunchSim.Cli.Terminal;
using LaunchSim.Scenarios;
using LaunchSim.Web.Desk;

namespace LaunchSim.Cli.Commands;

/// <summary><c>launchsim serve</c>: the live desk in a browser on this machine.</summary>
internal static class ServeCommand
{
    private const int MostPort = 65_535;

    public static Command Create(Session session)
    {
        var named = new Argument<string?>("FILE") { HelpName = "FILE|FOLDER", Arity = ArgumentArity.ZeroOrOne, CompletionSources = { FileOffers.Scenarios }, Description = "A scenario, or a folder of scenarios; the current folder when left out" };
        var port = new Option<string>("--port") { HelpName = "number", Description = $"The port, 1 to {MostPort}; a free one when left out" };
        var command = new Command("serve", "Open the live desk in a browser, on this machine only: pick holes, turn clicks, and see at once what the launch does") { named, port };
        command.SetAction(parsed => Serve(parsed.GetValue(named), parsed.GetValue(port), session));
        return command;
    }

    private static int Serve(string? named, string? port, Session session)
    {
        (string folder, string? file) = Place(named ?? ".");
        var settings = new DeskSettings { Folder = folder, File = file, Port = Port(port), Log = session.Error, Program = $"{ProgramVersion.Name} {ProgramVersion.Text}" };
        if (session.Cancellation.IsCancellationRequested)
        {
            session.Output.WriteLine("ended before it began; nothing was opened");
            return ExitCode.Done;
        }

        try
        {
            Run(settings, session).GetAwaiter().GetResult();
            return ExitCode.Done;
        }
        catch (DeskException exception)
        {
            throw new InputException($"--port: {exception.Message}");
        }
    }

    private static async Task Run(DeskSettings settings, Session session)
    {
        await using DeskServer server = await DeskServer.StartAsync(settings);
        session.Output.WriteLine(server.Address);
        session.Output.WriteLine("Open this address in a browser. It can be reached from this machine only, and only with the token in it.");
        session.Output.WriteLine($"Nothing outside {settings.Folder} is read. Ctrl-C ends it.");
        session.Output.Flush();
        await Task.Delay(Timeout.InfiniteTimeSpan, session.Cancellation).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        session.Error.WriteLine("the desk is closed");
    }

    /// <summary>The folder to be served, and the file in it when one was named.</summary>
    private static (string Folder, string? File) Place(string named)
    {
        try
        {
            string full = Path.GetFullPath(named);
            if (Directory.Exists(full))
            {
                return (full, null);
            }

            if (!File.Exists(full))
            {
                throw new InputException($"found no file or folder `{named}`; name a scenario, or a folder of scenarios");
            }

            (string folder, string file) = (Path.GetDirectoryName(full)!, Path.GetFileName(full));
            return new FolderBoundary(folder).Refusal(full) is { } refusal
                ? throw new InputException($"found `{named}`, {refusal}; name the file itself")
                : (folder, file);
        }
        catch (Exception exception) when (exception is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new InputException($"`{named}` cannot be served: {exception.Message}");
        }
    }

    private static int? Port(string? text) => text is null ? null
        : int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int port) && port is > 0 and <= MostPort ? port
        : throw new InputException($"--port {text}: found no such port; allowed: a whole number from 1 to {MostPort}, as in --port 8080");
}
