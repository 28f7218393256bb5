using System.Globalization;
using LaunchSim.Reports.Words;
using LaunchSim.Scenarios.Doubtful;
using LaunchSim.Studies.Chance;

namespace LaunchSim.Studies.Doubting;

/// <summary>How sure a car's answer is, in words.</summary>
public static class DoubtWords
{
    /// <summary>The conclusion in one sentence: how sure the foremost sentence is, and what to measure first.</summary>
    /// <param name="result">What came of it.</param>
    public static string Conclusion(DoubtResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        if (result.Plan.Numbers.Count == 0)
        {
            return "No number of this file may be off: there is nothing to draw cars from.";
        }

        if (result.GivenUp == result.Cars)
        {
            return $"None of the {Count(result.Cars)} cars that were drawn is possible: the doubts leave hardly any car that stands.";
        }

        if (result.Whole == 0)
        {
            return $"None of the {Count(result.Cars)} plausible cars comes to the end of its launch.";
        }

        string sure = result.Own.Trouble is not null
            ? $"The file's own car stops before the end of its launch; of {Count(result.Cars)} plausible cars {Count(result.Whole)} come to theirs"
            : result.Sentences.First(sentence => sentence.Key == result.Foremost) is var foremost
                ? $"In {Percent(foremost.Share)} of the plausible cars {foremost.Statement}, as in the file's own car"
                : "";
        return $"{sure}; {First(result)}.";
    }

    /// <summary>What to measure first, in words that follow a semicolon.</summary>
    /// <param name="result">What came of it.</param>
    private static string First(DoubtResult result) => result.Ranking.Numbers is [{ StandsOut: true } first, ..]
        ? $"measure {first.Number.Path} better first, which decides {Share(first.Share)} of what is not known of the answer"
        : result.Ranking.Numbers.Count == 0 ? "nothing of the answer varies among them"
        : "no single number decides what is not known of the answer";

    /// <summary>A counted share with its limits: <c>91 % (89 to 92 %)</c>.</summary>
    /// <param name="share">The share.</param>
    public static string Percent(ShareInterval share) => double.IsNaN(share.Share) ? "none" : $"{Share(share.Share)} ({Limits(share)})";

    /// <summary>The limits alone: <c>89 to 92 %</c>.</summary>
    /// <param name="share">The share.</param>
    public static string Limits(ShareInterval share) => string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(100 * share.Low):0} to {Math.Ceiling(100 * share.High):0} %");

    /// <summary>A share: in whole percent, but never all or nothing where it is not.</summary>
    /// <param name="share">0 to 1.</param>
    public static string Share(double share) => double.IsNaN(share) ? "none"
        : share is > 0 and < 0.005 ? "under 1 %"
        : share is > 0.995 and < 1 ? "over 99 %"
        : string.Create(CultureInfo.InvariantCulture, $"{100 * share:0} %");

    /// <summary>A share of variance with its error: <c>45 ±2 %</c>.</summary>
    /// <param name="share">The share.</param>
    public static string Share(VarianceShare share) => double.IsNaN(share.Share) ? "none"
        : string.Create(CultureInfo.InvariantCulture, $"{100 * Math.Max(0, share.Share):0} ±{Math.Max(1, 100 * share.StandardError):0} %");

    /// <summary>A number with its doubt; of rows the doubt alone.</summary>
    /// <param name="number">The number.</param>
    public static string Doubt(DoubtfulNumber number)
    {
        ArgumentNullException.ThrowIfNull(number);
        return number.Doubt.IsPercent ? number.Text[number.Text.LastIndexOf('±')..] : number.Text;
    }

    /// <summary>From which doubts cars were drawn, in one sentence.</summary>
    /// <param name="plan">What was run.</param>
    public static string Drawn(DoubtPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        int entered = plan.Numbers.Count(number => number.IsEntered), usual = plan.Numbers.Count - entered;
        string one = plan.Numbers.Count == 1 ? "number was" : "numbers were", each = plan.Numbers.Count == 1 ? "from its" : "each from its";
        return usual == 0 ? $"{plan.Numbers.Count} {one} drawn, {each} ± in the file; all others were taken as exact. --typical also draws those without a ± from the usual doubt."
            : entered == 0 && !plan.Settings.WithTypical ? $"The file has no ±: the usual doubt of such numbers was taken in its place, for {usual} of them."
            : $"{plan.Numbers.Count} {one} drawn: {entered} from a ± in the file, {usual} from the usual doubt of such a number.";
    }

    /// <summary>What became of the cars: how many were impossible, given up, stopped; sentences, the first always.</summary>
    /// <param name="result">What came of it.</param>
    public static IEnumerable<string> Cars(DoubtResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        yield return $"{Count(result.Cars)} cars were drawn, seed {result.Plan.Settings.Seed}; half of each ± is one standard deviation. {Count(result.Whole)} came to the end of their launch, and all that follows is of these.";
        if (result.Redrawn > 0)
        {
            yield return $"{Count(result.Redrawn)} {(result.Redrawn == 1 ? "draw was" : "draws were")} impossible as a car and drawn again (cars by their first reason: {Reasons(result.Refusals)}).";
        }

        if (result.GivenUp > 0)
        {
            yield return $"{Count(result.GivenUp)} {(result.GivenUp == 1 ? "car was" : "cars were")} given up, impossible in {PlausibleCars.MostDraws} draws each: the file's doubts leave hardly any car that stands.";
        }

        if (result.Failures.Count > 0)
        {
            int failed = result.Failures.Sum(one => one.Cars);
            yield return $"{Count(failed)} {(failed == 1 ? "launch" : "launches")} stopped before the end: {Reasons(result.Failures)}.";
        }
    }

    /// <summary>What numbers decide only together.</summary>
    /// <param name="ranking">The ranking.</param>
    public static string Together(Ranking ranking)
    {
        ArgumentNullException.ThrowIfNull(ranking);
        return ranking.Together > 2 * ranking.TogetherError
            ? $"The remaining {Share(new VarianceShare(ranking.Together, ranking.TogetherError))} no number decides alone: numbers act together, or by leaps."
            : $"What numbers decide only together is lost in the draw's error of {100 * ranking.TogetherError:0} %.";
    }

    /// <summary>Thousands apart.</summary>
    /// <param name="count">A count.</param>
    public static string Count(long count) => count.ToString("#,0", CultureInfo.InvariantCulture);

    private static string Reasons(IReadOnlyList<(string Reason, int Cars)> reasons)
    {
        const int shown = 2;
        string told = string.Join("; ", reasons.Take(shown).Select(one => $"{Count(one.Cars)} for {one.Reason.TrimEnd('.')}"));
        int rest = reasons.Skip(shown).Sum(one => one.Cars);
        return rest > 0 ? $"{told}; {Count(rest)} for something else" : told;
    }
}
