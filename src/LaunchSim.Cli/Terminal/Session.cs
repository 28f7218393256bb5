namespace LaunchSim.Cli.Terminal;

/// <summary>Where a command reads and writes.</summary>
internal sealed class Session(TextWriter output, TextWriter error, CancellationToken cancellation)
{
    private readonly Lock _errorLock = new();

    /// <summary>Results.</summary>
    public TextWriter Output { get; } = output;

    /// <summary>Errors, warnings, notices and progress.</summary>
    public TextWriter Error { get; } = error;

    /// <summary>Set when the user wants it to end.</summary>
    public CancellationToken Cancellation { get; } = cancellation;

    /// <summary>Whether somebody watches the error stream.</summary>
    public bool ShowsProgress { get; init; }

    /// <summary>Shows how far a long job is, on one line that is overwritten; nothing when nobody watches.</summary>
    /// <param name="done">How many are done.</param>
    /// <param name="of">Of how many.</param>
    public void Progress(int done, int of)
    {
        if (!ShowsProgress)
        {
            return;
        }

        lock (_errorLock)
        {
            Error.Write(done < of ? $"\r{done} of {of}" : $"\r{new string(' ', 24)}\r");
        }
    }
}
