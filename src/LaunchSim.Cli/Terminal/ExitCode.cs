namespace LaunchSim.Cli.Terminal;

/// <summary>What the process returns.</summary>
internal static class ExitCode
{
    /// <summary>All that was asked for is done.</summary>
    public const int Done = 0;

    /// <summary>A run failed, or a result could not be written.</summary>
    public const int Failed = 1;

    /// <summary>A file, an option or a value is wrong; nothing was written.</summary>
    public const int BadInput = 2;

    /// <summary>Interrupted; no half file.</summary>
    public const int Interrupted = 130;
}
