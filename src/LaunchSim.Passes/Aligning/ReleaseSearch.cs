using System.Globalization;
using LaunchSim.Passes.Measured;

namespace LaunchSim.Passes.Aligning;

/// <summary>Finds the release on the clock of channels that are about one launch, and says how sure it is.</summary>
internal static class ReleaseSearch
{
    // What a torque, a spring or a tyre that is not well known does to the size of a movement, as a share.
    private const double GainDoubt = 0.3;

    // And how much faster or slower it comes, above all the torque, as a share.
    private const double PaceDoubt = 0.25;

    // From before the release to so long after it: what comes later depends on more than the release. Several lengths are
    // tried, since tyres that spin, or a damper that is not the model's, spoil a longer one.
    private const double Before = -0.3, Reach = 0.06;

    private static readonly double[] Onsets = [0.2, 0.27, 0.35], Shapes = [0.3, 0.45, 0.7];

    // By forty logs of other cars, laid over one car's prediction (docs/validation.md): what suspension and body do depends on
    // the model more than the turning of the shaft does, by about this much, s, one standard deviation.
    private const double ShapeDoubt = 4e-3;

    // Lengths that are that much worse than the best do not count.
    private const double Worse = 3;

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
    private static Alignment? ByOnset((MeasuredQuantity Quantity, ShiftSignal Signal)[] turning, double rough) =>
        Best([.. turning.Select(one => one.Signal)], rough, Onsets) is { } best && double.IsFinite(best.Sd)
            ? Told(best, $"the onset of {Names(turning)}", "fitted to the prediction's")
            : null;

    private static Alignment? ByShape(IReadOnlyList<(MeasuredQuantity Quantity, ShiftSignal Signal)> channels, double rough) =>
        Best([.. channels.Select(one => one.Signal)], rough, Shapes) is { } best
            ? Told((best.Shift, Math.Sqrt((best.Sd * best.Sd) + (ShapeDoubt * ShapeDoubt))), $"the least-squares shift of {Names(channels)}", "onto the prediction")
            : null;

    // A prediction that is not quite right gives another release by each length: that is a doubt too.
    private static (double Shift, double Sd)? Best(ShiftSignal[] signals, double rough, double[] lengths)
    {
        ShiftEstimate[] fits = [.. lengths.Select(until => ShiftFit.Find(signals, rough, Reach, (Before, until), PaceDoubt)).Where(Enough)];
        if (fits.Length == 0)
        {
            return null;
        }

        ShiftEstimate best = fits.MinBy(fit => fit.Sd)!;
        double[] near = [.. fits.Where(fit => fit.Sd <= Worse * best.Sd).Select(fit => fit.Shift)];
        double spread = (near.Max() - near.Min()) / 2;
        return (best.Shift, Math.Sqrt((best.Sd * best.Sd) + (spread * spread)));
    }

    private static bool Enough(ShiftEstimate fit) => fit.Counts.Sum() >= 5;

    private static Alignment Told((double Shift, double Sd) found, string method, string how) =>
        new(found.Shift, found.Sd, method, $"t = 0 by {method}, {how}: {Within(found.Sd)}.");

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
