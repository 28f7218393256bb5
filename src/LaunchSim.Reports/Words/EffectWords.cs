using LaunchSim.Figures;
using LaunchSim.Reports.Decisive;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Reports.Words;

/// <summary>What a number's doubt does to the answer, in words that follow the number: <c>moves the rise lag by 23 ms</c>.</summary>
public static class EffectWords
{
    /// <summary>The words, without a full stop.</summary>
    /// <param name="effect">The effect.</param>
    /// <param name="readout">The units.</param>
    public static string Of(NumberEffect effect, Readout readout)
    {
        ArgumentNullException.ThrowIfNull(effect);
        if (effect.Largest is not { } move)
        {
            return "moves none of these figures";
        }

        string name = move.Figure.Words, way = move.By.Share > 0 ? "up" : "down";
        return (move.Before, move.After) switch
        {
            ({ } before, { } after) => $"moves {name} by {Amount(move.Figure, after - before, readout)}, from {Value(move.Figure, before, readout)} to {Value(move.Figure, after, readout)} (moved {way})",
            (null, { } after) => $"gives {name} a value, {Value(move.Figure, after, readout)}, where it has none (moved {way})",
            ({ } before, _) => $"leaves {name}, {Value(move.Figure, before, readout)}, without a value (moved {way})",
            _ => "moves none of these figures",
        };
    }

    private static string Amount(AnswerFigure figure, double change, Readout readout) => Scale(figure, readout).Text(Math.Abs(change));

    private static string Value(AnswerFigure figure, double value, Readout readout) => Scale(figure, readout).Text(value);

    // Differences of times are told in milliseconds, those of percent to a tenth.
    private static Scale Scale(AnswerFigure figure, Readout readout) => Unit(figure) switch
    {
        FigureUnit.Time => new("ms", 0.001, 0),
        FigureUnit.Length => readout.Travel,
        FigureUnit.Force => readout.Force,
        _ => Readout.Percent.With(1),
    };

    private static FigureUnit Unit(AnswerFigure figure) =>
        FigureCatalog.For(0).Families.SelectMany(family => family.Definitions).First(definition => definition.Key == figure.Key).Unit;
}
