using System.CommandLine;
using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Commands;

/// <summary>The register of commands: one line a command.</summary>
internal static class CommandRegister
{
    /// <summary>The program's root with all its commands.</summary>
    /// <param name="session">Where they read and write.</param>
    public static RootCommand Create(Session session)
    {
        var root = new RootCommand("A car's first second off the line, from a scenario file")
        {
            MeasureCommand.Create(session),
            NewCommand.Create(session),
            RunCommand.Create(session),
            CheckCommand.Create(session),
            GeometryCommand.Create(session),
            SchemaCommand.Create(session),
            CompletionCommand.Create(session),
            CompleteCommand.Create(session),
        };

        // The library's own way to ask for completions fails on unfinished lines; `complete` takes its place.
        root.Directives.Clear();
        return root;
    }
}
