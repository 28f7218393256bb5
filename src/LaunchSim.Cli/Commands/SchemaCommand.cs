using System.CommandLine;
using LaunchSim.Cli.Terminal;
using LaunchSim.Scenarios;

namespace LaunchSim.Cli.Commands;

/// <summary><c>launchsim schema</c>: the JSON Schema of the scenario file, for editors.</summary>
internal static class SchemaCommand
{
    public static Command Create(Session session)
    {
        var command = new Command("schema", "Print the JSON Schema of the scenario file, with which editors complete and check");
        command.SetAction(_ =>
        {
            session.Output.Write(ScenarioSchema.ToJsonText());
            return ExitCode.Done;
        });
        return command;
    }
}
