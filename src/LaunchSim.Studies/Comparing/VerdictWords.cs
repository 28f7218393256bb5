using System.Globalization;
using LaunchSim.Reports.Numbers;
using LaunchSim.Reports.Words;
using LaunchSim.Studies.Aims;

namespace LaunchSim.Studies.Comparing;

/// <summary>Better or worse, in words.</summary>
public static class VerdictWords
{
    /// <summary>One word or two.</summary>
    /// <param name="verdict">The verdict.</param>
    public static string Of(Verdict verdict) => verdict switch
    {
        Verdict.Better => "better",
        Verdict.Worse => "worse",
        Verdict.NoMatter => "no matter",
        _ => "not known",
    };

    /// <summary>Points as a person reads them.</summary>
    /// <param name="points">The points.</param>
    public static string Points(double points) => points.ToString("0.0", CultureInfo.InvariantCulture);

    /// <summary>The conclusion in one sentence.</summary>
    /// <param name="difference">The two set-ups.</param>
    /// <param name="aims">What is wanted.</param>
    /// <param name="readout">The units.</param>
    public static string Of(SetUpDifference difference, AimSet aims, Readout readout)
    {
        ArgumentNullException.ThrowIfNull(difference);
        ArgumentNullException.ThrowIfNull(aims);
        string first = difference.First.Letter, other = difference.Other.Letter;
        if (difference.IsSame)
        {
            return $"{other} says the same as {first}: nothing differs.";
        }

        if (difference.Verdict == Verdict.Unknown)
        {
            ComparedSetUp stopped = difference.Other.Run.Failure is null ? difference.First : difference.Other;
            return $"Whether {other} is better than {first} cannot be said, for {stopped.Letter} did not come to its end. {FailureWords.Of(stopped.Run.Failure!)}";
        }

        string wanted = $"{aims.Profile.Words}{(aims.IsEntered ? ", by the aims entered" : "")}";
        string points = $"{Points(difference.Other.Score.Points)} points off what is wanted for {Points(difference.First.Score.Points)}";
        string verdict = difference.Verdict == Verdict.NoMatter
            ? $"For {wanted}, {other} is as good as {first}, {points}"
            : $"For {wanted}, {other} is {Of(difference.Verdict)} than {first}, {points}";
        string[] why = [.. new[] { Named(Verdict.Better), Named(Verdict.Worse) }.Where(text => text.Length > 0)];
        return why.Length == 0 ? $"{verdict}; no aim is met noticeably better or worse." : $"{verdict}: {string.Join("; ", why)}.";

        string Named(Verdict kind)
        {
            var values = new AimReadout(readout);
            AimVerdict[] own = [.. difference.Aims.Where(aim => aim.Verdict == kind).OrderByDescending(aim => aim.Aim.IsLimit).ThenByDescending(aim => Math.Abs(aim.Change))];
            return own.Length == 0 ? "" : $"{Of(kind)} in {string.Join(", ", own.Select(aim => $"{aim.Aim.Subject.Words} ({(aim.Aim.IsLimit ? "a limit: " : "")}{values.Value(aim.Aim, aim.After.Value)} for {values.Value(aim.Aim, aim.Before.Value)})"))}";
        }
    }
}
