using System.CommandLine;
using LaunchSim.Cli.Commands.Seasons;
using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Commands;

/// <summary>The register of commands: one line a command.</summary>
internal static class CommandRegister
{
    /// <summary>The program's root with all its commands.</summary>
    /// <param name="session">Where they read and write.</param>
    /// <param name="words">The words of the line: what is costly to make is made for the command that is among them.</param>
    public static RootCommand Create(Session session, IReadOnlyList<string> words)
    {
        var root = new RootCommand("A car's first second off the line, from a scenario file")
        {
            MeasureCommand.Create(session),
            ScalesCommand.Create(session),
            DamperCommand.Create(session),
            TorqueCommand.Create(session),
            NewCommand.Create(session, words.Contains("new")),
            RunCommand.Create(session),
            CompareCommand.Create(session),
            PageCommand.Create(session),
            LessonCommand.Create(session),
            CheckCommand.Create(session),
            GeometryCommand.Create(session),
            SweepCommand.Create(session),
            BestCommand.Create(session),
            NextCommand.Create(session),
            DoubtCommand.Create(session),
            MergeCommand.Create(session),
            AfterCommand.Create(session),
            PassCommand.Create(session),
            ColumnsCommand.Create(session),
            FitCommand.Create(session),
            SeasonCommand.Create(session),
            ServeCommand.Create(session),
            SchemaCommand.Create(session),
            CompletionCommand.Create(session),
            CompleteCommand.Create(session),
        };

        // The library's own way to ask for completions fails on unfinished lines; `complete` takes its place.
        root.Directives.Clear();
        return root;
    }
}
