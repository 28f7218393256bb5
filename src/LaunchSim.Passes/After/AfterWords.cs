using System.Globalization;
using LaunchSim.Passes.Fitting;
using LaunchSim.Passes.Seen;
using LaunchSim.Reports.Numbers;
using LaunchSim.Scenarios;
using LaunchSim.Scenarios.Recorded;
using LaunchSim.Studies.Next;

namespace LaunchSim.Passes.After;

/// <summary>What is said between two passes.</summary>
public static class AfterWords
{
    /// <summary>What to do where no change helps.</summary>
    public const string NoChange = "No single change among the choices helps by more than one would notice: make another pass as it stands, and see whether it repeats.";

    /// <summary>Where a video shows nothing of a change.</summary>
    public const string NoSign = "Nothing that a video would show moves by a frame in most of the plausible cars: judge it by beam times over several passes.";

    /// <summary>How the pass compares with what was predicted.</summary>
    /// <param name="result">What was worked out.</param>
    /// <param name="readout">The units.</param>
    public static string Conclusion(AfterResult result, Readout readout)
    {
        ArgumentNullException.ThrowIfNull(result);
        if (result.Seen.Count == 0)
        {
            return result.Fit is null ? "Nothing was seen or logged of this pass that could be laid beside the prediction." : "The log was laid beside the prediction; nothing was seen besides.";
        }

        SeenComparison[] off = [.. result.Seen.Where(fact => !fact.Agrees && !fact.IsRepeated).OrderByDescending(fact => Math.Abs(fact.Residual))];
        return off.Length == 0
            ? $"All {result.Seen.Count} seen facts are as predicted, within what can be seen."
            : $"{off.Length} of {result.Seen.Count} seen facts are not as predicted: {string.Join("; ", off.Take(2).Select(fact => $"{Lower(SeenText.Name(fact, readout))} {Off(fact)}"))}.";
    }

    /// <summary>What the pass says of the car: what it tells best.</summary>
    /// <param name="fit">What came of the fit.</param>
    public static string Learned(FitResult fit)
    {
        ArgumentNullException.ThrowIfNull(fit);
        FittedValue[] told = [.. fit.Values.Where(value => value.IsTold).OrderBy(value => value.Sd)];
        return string.Join("; ", told.Take(3).Select(value => $"{value.Parameter.Path} {value.After} (file {Short(value)})"));
    }

    /// <summary>What stands over the signs.</summary>
    /// <param name="result">What was found.</param>
    public static string SignsHeading(AfterResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return result.Signs.Count == 0 ? "What the video shows"
            : result.Signs[0].Within < result.Pass.Seen.Together ? string.Create(CultureInfo.InvariantCulture, $"It worked if a video of {VideoSigns.PhoneFrames:0} frames a second shows")
            : "It worked if the video shows";
    }

    /// <summary>One sign: <c>rear gap fully open by 0.22 s (frame 171), now 0.27 s</c>.</summary>
    /// <param name="sign">The sign.</param>
    /// <param name="seen">What frames there are.</param>
    public static string Sign(VideoSign sign, SeenFacts seen)
    {
        ArgumentNullException.ThrowIfNull(sign);
        ArgumentNullException.ThrowIfNull(seen);
        if (double.IsNaN(sign.Bound))
        {
            return $"{sign.Words.Replace("begin to ", "do not ", StringComparison.Ordinal).Replace("leave", "stay down", StringComparison.Ordinal)} any more{Now(sign)}";
        }

        // To the side on which the bound is kept by more: a promise is not to be broken by rounding.
        double bound = (sign.IsEarlier ? Math.Ceiling(sign.Bound * 1000) : Math.Floor(sign.Bound * 1000)) / 1000;
        if (sign.IsLag)
        {
            string after = bound >= 0 ? $"{Readout.Time.Text(bound)} after the rear" : $"{Readout.Time.Text(-bound)} before the rear";
            string limit = sign.IsEarlier == bound < 0 || (!sign.IsEarlier && bound >= 0) ? "at least" : sign.IsEarlier ? "no later than" : "no more than";
            return $"front moves {limit} {after}{Now(sign)}";
        }

        string frame = seen.FramesPerSecond is { } rate ? string.Create(CultureInfo.InvariantCulture, $" (frame {seen.ReleaseFrame + Math.Round(bound * rate):0})") : "";
        return $"{sign.Words} {(sign.IsEarlier ? "by" : "not before")} {Readout.Time.Text(bound)}{frame}{Now(sign)}";
    }

    /// <summary>What to put back if it did not work.</summary>
    /// <param name="change">The change.</param>
    /// <param name="scenario">The set-up as it stands.</param>
    public static string PutBack(NextChange change, Scenario scenario)
    {
        ArgumentNullException.ThrowIfNull(change);
        ArgumentNullException.ThrowIfNull(scenario);
        return string.Join(" and ", change.Changes.Select(one =>
        {
            string path = one.Edit.Path;
            string now = scenario.FindText(path) ?? (scenario.Find(path) is { } number ? new Scenarios.Units.Quantity(number.Numbers, number.Unit).ToString() : "what it was");
            return $"{path} back to {now}";
        }));
    }

    private static string Now(VideoSign sign) => double.IsNaN(sign.Now) ? ""
        : !sign.IsLag ? $", now {Readout.Time.Text(sign.Now)}"
        : $", now {Readout.Time.Text(Math.Abs(sign.Now))} {(sign.Now >= 0 ? "after" : "before")}";

    private static string Off(SeenComparison fact) => $"{SeenText.Seen(fact)}, predicted {SeenText.Predicted(fact)}";

    private static string Short(FittedValue value) => value.BeforeInShort;

    private static string Lower(string text) => char.ToLowerInvariant(text[0]) + text[1..];
}
