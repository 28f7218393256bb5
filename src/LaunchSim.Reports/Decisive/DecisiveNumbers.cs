using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios.Doubtful;
using LaunchSim.Scenarios.Typical;

namespace LaunchSim.Reports.Decisive;

/// <summary>
/// Which numbers decide a launch's answer: each is moved by its doubt, down and up, and the launch is solved again. The
/// doubts are taken one at a time; what two of them do together is for studies.
/// </summary>
public sealed record DecisiveNumbers
{
    /// <summary>All numbers that carry a doubt, the most decisive first; equal ones in the order of the file's reference.</summary>
    public required IReadOnlyList<NumberEffect> Effects { get; init; }

    /// <summary>Numbers that the register has typical values for and whose doubt changes no sentence in kind, in the order of the file's reference.</summary>
    public required IReadOnlyList<NumberEffect> WithoutEffectOnSentences { get; init; }

    /// <summary>Finds them. Uses all cores; the result does not depend on how many there are.</summary>
    /// <param name="launch">The launch as it stands.</param>
    /// <param name="readout">The units of the sentences.</param>
    /// <param name="cancellation">Asked once a step of each launch.</param>
    /// <exception cref="OperationCanceledException">Cancellation was asked for.</exception>
    public static DecisiveNumbers Of(LaunchOutcome launch, Readout readout, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(launch);
        IReadOnlyList<DoubtfulNumber> numbers = DoubtfulNumbers.Of(launch.Scenario);
        IReadOnlyList<Sentence> said = Summary.Of(launch.Figures, readout);
        var moved = new MovedLaunch[2 * numbers.Count];
        _ = Parallel.For(0, moved.Length, new ParallelOptions { CancellationToken = cancellation },
            i => moved[i] = MovedLaunch.Of(launch.Scenario, numbers[i / 2], i % 2 == 0 ? -1 : 1, readout, cancellation));
        NumberEffect[] effects = [.. numbers.Select((number, i) => Effect(launch.Figures, said, number, [moved[2 * i], moved[(2 * i) + 1]]))];
        return new DecisiveNumbers
        {
            Effects = [.. effects.OrderByDescending(effect => effect.Score)],
            WithoutEffectOnSentences = [.. effects.Where(effect => effect.Number.Entry is TypicalValue && !effect.ChangesSentences)],
        };
    }

    private static NumberEffect Effect(FigureSet before, IReadOnlyList<Sentence> said, DoubtfulNumber number, MovedLaunch[] moved)
    {
        FigureMove[][] moves = [.. moved.Select(launch => Moves(before, launch))];
        FigureMove largest = moves.SelectMany(each => each).OrderByDescending(move => move.Scaled).FirstOrDefault();
        string[] keys = [.. said.Select(sentence => sentence.Key)];
        return new NumberEffect
        {
            Number = number,
            Moved = moved,
            Score = moves.Max(each => Math.Sqrt(each.Sum(move => move.Scaled * move.Scaled))),
            Largest = largest.Scaled > 0 ? largest : null,
            ChangesSentences = moved.Any(launch => launch.Trouble is not null || !launch.Sentences.Select(sentence => sentence.Key).SequenceEqual(keys)),
            NewSentence = moved.SelectMany(launch => launch.Sentences.Where(sentence => !keys.Contains(sentence.Key)).Select(sentence => ((Sentence, MovedLaunch)?)(sentence, launch))).FirstOrDefault(),
        };
    }

    private static FigureMove[] Moves(FigureSet before, MovedLaunch launch) => launch.Figures is not { } after ? [] :
    [
        .. AnswerFigures.All.Select(figure => (before[figure.Key], after[figure.Key]) switch
        {
            ({ } was, { } now) => new FigureMove(figure, was, now, Math.Abs(now - was) / figure.Scale(before), launch),
            (null, null) => new FigureMove(figure, null, null, 0, launch),
            (var was, var now) => new FigureMove(figure, was, now, 1, launch),
        }),
    ];
}
