using System.CommandLine;
using LaunchSim.Cli.Terminal;

namespace LaunchSim.Cli.Commands.Seasons;

/// <summary><c>launchsim season</c>: a folder of passes, what they show, and how they are kept.</summary>
internal static class SeasonCommand
{
    public static Command Create(Session session) => new("season", "Keep a season's passes in a folder, one file each, and see what they show beside the predictions")
    {
        SeasonAddCommand.Create(session),
        SeasonListCommand.Create(session),
        SeasonShowCommand.Create(session),
        SeasonTrendCommand.Create(session),
        SeasonReportCommand.Create(session),
        SeasonCloseCommand.Create(session),
        SeasonCorrectCommand.Create(session),
    };
}
