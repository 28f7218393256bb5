using System.CommandLine;
using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Commands;

/// <summary>The register of commands: one line a command.</summary>
internal static class CommandRegister
{
    /// <summary>The program's root with all its commands.</summary>
    /// <param name="session">Where they read and write.</param>
    public static RootCommand Create(Session session) => new("A car's first second off the line, from a scenario file")
    {
        RunCommand.Create(session),
        CheckCommand.Create(session),
        GeometryCommand.Create(session),
        MeasureCommand.Create(session),
        SchemaCommand.Create(session),
    };
}
