using System.Globalization;
using LaunchSim.Passes.Measured;

namespace LaunchSim.Passes.Aligning;

/// <summary>Finds the release on the clock of channels that are about one launch, and says how sure it is.</summary>
internal static class ReleaseSearch
{
    // What a torque, a spring or a tyre that is not well known does to the size of a movement, as a share.
    private const double GainDoubt = 0.3;

    // The onset: what comes later depends on more than the release.
    private const double OnsetBefore = -0.3, Onset = 0.35, Whole = 0.8, Reach = 0.06;

    private static readonly double[] Onsets = [0.2, Onset, 0.6];

    /// <summary>Lays channels over their predictions.</summary>
    /// <param name="channels">The channels: what was measured, and in SI with its instants on the log's clock.</param>
    /// <param name="rough">Roughly the release on that clock, s.</param>
    /// <param name="known">The release as it was entered, with its doubt (nineteen times in twenty), s; null when it was not.</param>
    /// <param name="spacing">Usual time from one value to the next, s.</param>
    public static Alignment Find(IReadOnlyList<(MeasuredQuantity Quantity, ShiftSignal Signal)> channels, double rough, (double At, double? Doubt)? known, double spacing)
    {
        Alignment? found = Fitted(channels, rough);
        if (known is not { } entered)
        {
            return found ?? new Alignment(rough, double.PositiveInfinity, "not found", "No channel tells where the release is.");
        }

        // Nobody said how well it is known: to the row before or after.
        double sd = entered.Doubt / 2 ?? spacing / Math.Sqrt(3);
        string words = $"t = 0 is where the release was entered, {Within(sd)}.";
        if (found is not null && Math.Abs(found.Shift - entered.At) > 3 * Math.Sqrt((sd * sd) + (found.Sd * found.Sd)))
        {
            double off = found.Shift - entered.At;
            words += string.Create(CultureInfo.InvariantCulture, $" By {found.Method} it would be {1e3 * Math.Abs(off):0} ms {(off > 0 ? "later" : "earlier")}: look which is right.");
        }

        return new Alignment(entered.At, sd, "as entered", words);
    }

    /// <summary>Gain's doubt of a channel: how far off the prediction's size may be.</summary>
    public static double GainSd => GainDoubt;

    private static Alignment? Fitted(IReadOnlyList<(MeasuredQuantity Quantity, ShiftSignal Signal)> channels, double rough)
    {
        (MeasuredQuantity Quantity, ShiftSignal Signal)[] turning = [.. channels.Where(channel => channel.Quantity.TellsRelease)];
        if (turning.Length > 0 && ByOnset(turning, rough) is { } onset)
        {
            return onset;
        }

        return channels.Count > 0 ? ByShape(channels, rough) : null;
    }

    // Shaft and wheel turn before anything else of the car moves, and by what is best known of it.
    private static Alignment? ByOnset((MeasuredQuantity Quantity, ShiftSignal Signal)[] turning, double rough)
    {
        ShiftSignal[] signals = [.. turning.Select(one => one.Signal)];
        ShiftEstimate fit = ShiftFit.Find(signals, rough, Reach, (OnsetBefore, Onset));
        return double.IsFinite(fit.Sd) && Enough(fit)
            ? Told(fit, Spread(signals, fit.Shift), $"the onset of {Names(turning)}", "fitted to the prediction's")
            : null;
    }

    private static Alignment ByShape(IReadOnlyList<(MeasuredQuantity Quantity, ShiftSignal Signal)> channels, double rough)
    {
        ShiftSignal[] signals = [.. channels.Select(one => one.Signal)];
        ShiftEstimate fit = ShiftFit.Find(signals, rough, Reach, (OnsetBefore, Whole));
        return Told(fit, Spread(signals, fit.Shift), $"the least-squares shift of {Names(channels)}", "onto the prediction");
    }

    private static bool Enough(ShiftEstimate fit) => fit.Counts.Sum() >= 5;

    // A prediction that is not quite right gives another release by each length of the onset: that is a doubt too.
    private static double Spread(ShiftSignal[] signals, double shift)
    {
        double[] all = [.. Onsets.Select(until => ShiftFit.Find(signals, shift, Reach / 2, (OnsetBefore, until))).Where(fit => double.IsFinite(fit.Sd) && Enough(fit)).Select(fit => fit.Shift)];
        return all.Length < 2 ? 0 : (all.Max() - all.Min()) / 2;
    }

    private static Alignment Told(ShiftEstimate fit, double spread, string method, string how)
    {
        double sd = Math.Sqrt((fit.Sd * fit.Sd) + (spread * spread));
        return new Alignment(fit.Shift, sd, method, $"t = 0 by {method}, {how}: {Within(sd)}.");
    }

    private static string Names(IEnumerable<(MeasuredQuantity Quantity, ShiftSignal Signal)> channels)
    {
        string[] names = [.. channels.Select(channel => channel.Quantity.Words).Distinct()];
        return names.Length switch
        {
            1 => names[0],
            <= 3 => $"{string.Join(", ", names[..^1])} and {names[^1]}",
            _ => string.Create(CultureInfo.InvariantCulture, $"{names.Length} channels"),
        };
    }

    private static string Within(double sd)
    {
        double half = 2 * sd;
        string words = half switch
        {
            <= 0.004 => "sure enough for every figure",
            <= 0.01 => "sure enough for the times of single figures",
            <= 0.025 => "about a frame of a video: lags between channels of this log are better known than times",
            _ => "too rough for times: only lags between channels of this log, and sizes, can be compared",
        };
        return double.IsFinite(half) ? string.Create(CultureInfo.InvariantCulture, $"±{1e3 * half:0.0} ms nineteen times in twenty, {words}") : "not known at all";
    }
}
