using LaunchSim.Figures;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios.Doubtful;

namespace LaunchSim.Reports.Decisive;

/// <summary>What one number's doubt does to the answer.</summary>
public sealed record NumberEffect
{
    /// <summary>The number.</summary>
    public required DoubtfulNumber Number { get; init; }

    /// <summary>The launches with it moved down and up by its doubt.</summary>
    public required IReadOnlyList<MovedLaunch> Moved { get; init; }

    /// <summary>
    /// How much it decides, without unit: of the worse of both moves, the root of the sum of the squares of the figures'
    /// changes, each over its scale.
    /// </summary>
    public required double Score { get; init; }

    /// <summary>The figure that moves most against its scale; null when none moves.</summary>
    public required FigureMove? Largest { get; init; }

    /// <summary>Whether one of the moves changes which sentences are said, cannot be run, or does not come to its end.</summary>
    public required bool ChangesSentences { get; init; }

    /// <summary>The first sentence that a move brings, and by which move; null when none does.</summary>
    public required (Sentence Sentence, MovedLaunch By)? NewSentence { get; init; }
}

/// <summary>How a figure moved.</summary>
/// <param name="Figure">The figure.</param>
/// <param name="Before">Its value before, SI; null for none.</param>
/// <param name="After">Its value after, SI; null for none.</param>
/// <param name="Scaled">The size of the change over the figure's scale, without unit; 1 where the figure came or went.</param>
/// <param name="By">The launch that moved it.</param>
public readonly record struct FigureMove(AnswerFigure Figure, double? Before, double? After, double Scaled, MovedLaunch By);
