using Spectre.Console;

namespace LaunchSim.Cli.Terminal;

/// <summary>Where a command reads and writes.</summary>
internal sealed class Session(TextWriter output, TextWriter error, CancellationToken cancellation)
{
    /// <summary>Results.</summary>
    public TextWriter Output { get; } = output;

    /// <summary>Errors, warnings, notices and progress.</summary>
    public TextWriter Error { get; } = error;

    /// <summary>Set when the user wants it to end.</summary>
    public CancellationToken Cancellation { get; } = cancellation;

    /// <summary>How results are read.</summary>
    public Screen Screen { get; init; } = Screen.Plain;

    /// <summary>How errors are read: progress is shown only where somebody watches.</summary>
    public Screen ErrorScreen { get; init; } = Screen.Plain;

    /// <summary>A console on which a person can be asked; null when nobody sits there.</summary>
    public Func<IAnsiConsole>? Asker { get; init; }

    /// <summary>Does a long job, and shows how far it is where somebody watches.</summary>
    /// <param name="what">What is being done.</param>
    /// <param name="count">How many pieces there are.</param>
    /// <param name="job">Does them; calls what it is given after each, from any thread.</param>
    public void WithProgress(string what, int count, Action<Action> job)
    {
        if (!ErrorScreen.IsTerminal)
        {
            job(() => { });
            return;
        }

        IAnsiConsole console = ErrorScreen.Console(Error);
        console.Profile.Capabilities.Interactive = true;
        console.Progress().AutoClear(true)
            .Columns(new TaskDescriptionColumn(), new ProgressBarColumn { Width = 24 }, new PercentageColumn(), new RemainingTimeColumn())
            .Start(context =>
            {
                ProgressTask task = context.AddTask(Markup.Escape(what), maxValue: count);
                job(() => task.Increment(1));
            });
    }
}
