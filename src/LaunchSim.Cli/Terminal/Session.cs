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
    public void WithProgress(string what, int count, Action<Action> job) => WithProgress(what, count, 0, added => job(() => added(1)));

    /// <summary>Does a long job, and shows how far it is, how quick, and how long it still takes, where somebody watches.</summary>
    /// <param name="what">What is being done, in the plural, such as <c>launches</c>.</param>
    /// <param name="count">How many pieces there are.</param>
    /// <param name="before">How many of them were done before; they do not count for how quick it is.</param>
    /// <param name="job">Does them; tells what it is given how many more are done, from any thread.</param>
    public void WithProgress(string what, long count, long before, Action<Action<int>> job)
    {
        if (!ErrorScreen.IsTerminal)
        {
            job(_ => { });
            return;
        }

        IAnsiConsole console = ErrorScreen.Console(Error);
        console.Profile.Capabilities.Interactive = true;
        var pace = new Pace(what, count, before);
        console.Progress().AutoClear(true)
            .Columns(new TaskDescriptionColumn(), new ProgressBarColumn { Width = 24 }, new PercentageColumn(), new PaceColumn(pace))
            .Start(context =>
            {
                ProgressTask task = context.AddTask(Markup.Escape(what), maxValue: Math.Max(1, count));
                task.Value = before;
                job(more =>
                {
                    pace.Add(more);
                    task.Increment(more);
                });
            });
    }
}
