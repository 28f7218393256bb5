using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Doubtful;

namespace LaunchSim.Reports.Decisive;

/// <summary>A launch with one number moved by some of its doubt.</summary>
public sealed record MovedLaunch
{
    /// <summary>By how much of its doubt the number was moved; negative is down.</summary>
    public required double Share { get; init; }

    /// <summary>What was changed: paths and values in the notation of the file.</summary>
    public required IReadOnlyList<(string Path, string Value)> Changes { get; init; }

    /// <summary>The figures; null when the changed car was refused.</summary>
    public FigureSet? Figures { get; init; }

    /// <summary>The sentences; none when the changed car was refused.</summary>
    public IReadOnlyList<Sentence> Sentences { get; init; } = [];

    /// <summary>Why the changed car cannot be run, or did not come to its end; null when all is well.</summary>
    public string? Trouble { get; init; }

    /// <summary>Moves a number and solves the launch again.</summary>
    /// <param name="scenario">The scenario, read for a run.</param>
    /// <param name="number">One of its <see cref="DoubtfulNumbers"/>.</param>
    /// <param name="share">By how much of its doubt: 1 is up by all of it, −1 down.</param>
    /// <param name="readout">The units of the sentences.</param>
    /// <param name="cancellation">Asked once a step.</param>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static MovedLaunch Of(Scenario scenario, DoubtfulNumber number, double share, Readout readout, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentNullException.ThrowIfNull(number);
        IReadOnlyList<(string Path, string Value)> changes = number.Moved(share);
        ReadResult read = scenario.With(changes);
        if (read.Scenario is null)
        {
            return new MovedLaunch { Share = share, Changes = changes, Trouble = read.Errors[0].Message };
        }

        LaunchOutcome outcome = LaunchOutcome.Of(read.Scenario, cancellation);
        return new MovedLaunch
        {
            Share = share,
            Changes = changes,
            Figures = outcome.Figures,
            Sentences = Summary.Of(outcome.Figures, readout),
            Trouble = outcome.Failure is { } failure ? FailureWords.Of(failure) : null,
        };
    }
}
