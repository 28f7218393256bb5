using LaunchSim.Figures;
using LaunchSim.Reports.Decisive;
using LaunchSim.Scenarios.Doubtful;
using LaunchSim.Studies.Aims;
using LaunchSim.Studies.Chance;

namespace LaunchSim.Studies.Doubting;

/// <summary>How sure the answer is, given what could not be measured.</summary>
public sealed record DoubtResult
{
    /// <summary>What was run.</summary>
    public required DoubtPlan Plan { get; init; }

    /// <summary>How many cars were drawn.</summary>
    public required long Cars { get; init; }

    /// <summary>How many of them came to the end of their launch; shares and bands are of these.</summary>
    public required int Whole { get; init; }

    /// <summary>How many draws were impossible and drawn again.</summary>
    public required long Redrawn { get; init; }

    /// <summary>Why draws were impossible, with how many cars that was the first reason for; the most frequent first.</summary>
    public required IReadOnlyList<(string Reason, int Cars)> Refusals { get; init; }

    /// <summary>How many cars were given up after <see cref="PlausibleCars.MostDraws"/> draws.</summary>
    public required int GivenUp { get; init; }

    /// <summary>Why launches did not come to their end, with how many; the most frequent first.</summary>
    public required IReadOnlyList<(string Reason, int Cars)> Failures { get; init; }

    /// <summary>The launch of the file's own car.</summary>
    public required DoubtRow Own { get; init; }

    /// <summary>The sentence that matters most of the file's own car, by its key.</summary>
    public required string Foremost { get; init; }

    /// <summary>The figures, in the plan's order.</summary>
    public required IReadOnlyList<FigureBand> Figures { get; init; }

    /// <summary>The statements that hold for the file's own car or for any of the others, in the order in which they are said.</summary>
    public required IReadOnlyList<SentenceShare> Sentences { get; init; }

    /// <summary>The aims, in their order.</summary>
    public required IReadOnlyList<AimShare> Aims { get; init; }

    /// <summary>The score's points.</summary>
    public required Band Points { get; init; }

    /// <summary>In what share of the cars all limits are kept; of nothing when there is none.</summary>
    public required ShareInterval KeepsLimits { get; init; }

    /// <summary>What each number decides, the most decisive first.</summary>
    public required Ranking Ranking { get; init; }

    /// <summary>The bands on traces; none when nobody wanted them.</summary>
    public required IReadOnlyList<TraceBand> Traces { get; init; }

    /// <summary>Of how many cars the bands on traces are.</summary>
    public required int TraceCars { get; init; }
}

/// <summary>One figure over the plausible cars.</summary>
/// <param name="Figure">Which.</param>
/// <param name="Own">That of the file's own car, SI; not a number when it has none.</param>
/// <param name="Band">What nine cars in ten stay within, SI.</param>
/// <param name="Missing">How many cars have no such figure.</param>
public sealed record FigureBand(FigureDefinition Figure, double Own, Band Band, int Missing);

/// <summary>One statement over the plausible cars.</summary>
/// <param name="Key">The sentence's key.</param>
/// <param name="Statement">What it states.</param>
/// <param name="IsOwn">Whether it is said of the file's own car.</param>
/// <param name="Cars">For how many cars it holds.</param>
/// <param name="Share">In what share of the cars, with limits that hold the true share in 95 draws of 100.</param>
public sealed record SentenceShare(string Key, string Statement, bool IsOwn, int Cars, ShareInterval Share);

/// <summary>One aim over the plausible cars.</summary>
/// <param name="Aim">The aim.</param>
/// <param name="Own">Its value for the file's own car; not a number when it has none.</param>
/// <param name="Band">Its value over the cars.</param>
/// <param name="Keeps">In what share of the cars it is kept, with limits that hold the true share in 95 draws of 100.</param>
public sealed record AimShare(Aim Aim, double Own, Band Band, ShareInterval Keeps)
{
    /// <summary>Whether a value keeps an aim: a limit by the letter, any other aim within one point of what is wanted.</summary>
    /// <param name="aim">The aim.</param>
    /// <param name="value">The value; not a number when the launch has none.</param>
    public static bool IsKept(Aim aim, double value)
    {
        ArgumentNullException.ThrowIfNull(aim);
        return aim.PointsOf(value) <= (aim.IsLimit ? 0 : 1);
    }
}

/// <summary>What many cars do over time.</summary>
/// <param name="Name">The column's name as in the trace.</param>
/// <param name="Step">Time between rows, s; the first is the release.</param>
/// <param name="Rows">The band row by row, SI.</param>
/// <param name="Own">The file's own car, SI; not a number where its launch did not come so far.</param>
public sealed record TraceBand(string Name, double Step, IReadOnlyList<BandRow> Rows, IReadOnlyList<double> Own);

/// <summary>How much each number decides of what is not known of the answer.</summary>
/// <param name="Numbers">The numbers, the most decisive first.</param>
/// <param name="Together">What numbers decide only together, and what shares do not see: what is left of 1. Below 0 only by the draw's error.</param>
/// <param name="TogetherError">How far that may be off, one standard error.</param>
/// <param name="Cars">Of how many cars the shares are.</param>
/// <param name="Figures">The answer's figures with how much each counts in it; together 1. None where nothing varies.</param>
public sealed record Ranking(IReadOnlyList<NumberShare> Numbers, double Together, double TogetherError, int Cars, IReadOnlyList<(AnswerFigure Figure, double Weight)> Figures);

/// <summary>What one number decides.</summary>
/// <param name="Number">The number.</param>
/// <param name="Share">Its share of the variance of the answer's figures, weighed by <see cref="Ranking.Figures"/>; with its standard error.</param>
/// <param name="Most">The figure of the answer of which it decides most, null when none varies.</param>
/// <param name="ShareOfMost">Its share of that figure's variance.</param>
public sealed record NumberShare(DoubtfulNumber Number, VarianceShare Share, AnswerFigure? Most, VarianceShare ShareOfMost)
{
    /// <summary>
    /// How much narrower the spread of the answer's figures would be if the number were known exactly: 1 − √(1 − share), as
    /// the variance that is left is 1 − share.
    /// </summary>
    public double Narrower => 1 - Math.Sqrt(1 - Math.Clamp(Share.Share, 0, 1));

    /// <summary>Whether its share stands out of the draw's error: above two standard errors.</summary>
    public bool StandsOut => Share.Share > 2 * Share.StandardError;
}
