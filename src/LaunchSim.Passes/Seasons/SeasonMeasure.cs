using LaunchSim.Passes.Seen;
using LaunchSim.Scenarios.Recorded;

namespace LaunchSim.Passes.Seasons;

/// <summary>A time that is followed over a season: as seen and as predicted.</summary>
/// <param name="Key">Its name in tables, such as <c>rear_moves_s</c>.</param>
/// <param name="Words">What it is called, such as <c>rear moves</c>.</param>
/// <param name="Mark">Where the beam is, m; null for what is no time at a beam.</param>
/// <param name="IsLag">Whether it is a difference of two times, better read in milliseconds.</param>
/// <param name="Seen">The time as seen or logged, whichever is better known, with its standard deviation, s; null where it was neither, or only as a bound.</param>
/// <param name="Predicted">The predicted time, s; not a number where it does not happen.</param>
public sealed record SeasonMeasure(string Key, string Words, double? Mark, bool IsLag, Func<SeasonEntry, (double Time, double Sd)?> Seen, Func<PassPrediction, double> Predicted)
{
    private static readonly SeasonMeasure[] Moments =
    [
        new("rise_lag_s", "rise lag", null, true, entry => entry.Logged("rise_lag_s", false), one => one.RiseLag),
        new("gap_lag_s", "front moves after rear", null, true, entry => Better(Between(entry.Pass.Seen.FrontMoves, entry.Pass.Seen.RearMoves), Opening(entry, "gap_lag_s", false)), one => one.Facts.FrontMoves - one.Facts.RearMoves),
        Moment("rear_moves_s", "rear moves", seen => seen.RearMoves, facts => facts.RearMoves, "rear_gap_6_35mm_s"),
        Moment("front_moves_s", "front moves", seen => seen.FrontMoves, facts => facts.FrontMoves, "front_gap_6_35mm_s"),
        Moment("rear_open_s", "rear fully open", seen => seen.RearOpen, facts => facts.RearOpen),
        Moment("front_tires_leave_s", "front tyres leave", seen => seen.FrontTiresLeave, facts => facts.FrontTiresLeave),
        Moment("front_tires_land_s", "front tyres land", seen => seen.FrontTiresLand, facts => facts.FrontTiresLand),
        Moment("spin_starts_s", "tyres spin", seen => seen.SpinStarts, facts => facts.SpinStarts),
    ];

    /// <summary>What is followed in a season: times at beams first, then the rise lag and what was seen at least once.</summary>
    /// <param name="course">The season.</param>
    public static IReadOnlyList<SeasonMeasure> Of(SeasonCourse course)
    {
        ArgumentNullException.ThrowIfNull(course);
        IEnumerable<double> places = course.Entries.SelectMany(entry => entry.Pass.Seen.Marks).Select(mark => Math.Round(mark.Distance, 6)).Distinct().Order();
        return
        [
            .. places.Select(Beam),
            .. Moments.Where(measure => measure.Key == "rise_lag_s" || course.Entries.Any(entry => measure.Seen(entry) is not null)),
        ];
    }

    /// <summary>Whether a pass has both, and then predicted less seen with the seen time's standard deviation.</summary>
    /// <param name="entry">The pass.</param>
    /// <param name="prediction">Its prediction, by its own car or the fitted one.</param>
    public (double Difference, double Sd)? Difference(SeasonEntry entry, PassPrediction prediction)
    {
        ArgumentNullException.ThrowIfNull(entry);
        ArgumentNullException.ThrowIfNull(prediction);
        return Seen(entry) is { } seen && Predicted(prediction) is var time && double.IsFinite(time) ? (time - seen.Time, seen.Sd) : null;
    }

    private static SeasonMeasure Beam(double place) => new(
        FormattableString.Invariant($"beam_{place:0.###}_m_s"), "time at the beam", place, false,
        entry => entry.Pass.Seen.Marks.FirstOrDefault(mark => Math.Abs(mark.Distance - place) < 1e-5) is { } mark ? (mark.Time, mark.Sd) : null,
        one => one.Comparisons.FirstOrDefault(fact => fact.Mark is { } at && Math.Abs(at - place) < 1e-5)?.Predicted ?? double.NaN);

    private static SeasonMeasure Moment(string key, string words, Func<SeenFacts, SeenMoment?> seen, Func<PredictedFacts, double> predicted, string? logged = null) => new(
        key, words, null, false,
        entry => Better(seen(entry.Pass.Seen) is { Bound: SeenBound.At } moment ? (moment.Time, moment.Sd) : null, logged is null ? null : Opening(entry, logged, true)),
        one => predicted(one.Facts));

    private static (double Time, double Sd)? Between(SeenMoment? one, SeenMoment? other) =>
        one is { Bound: SeenBound.At } && other is { Bound: SeenBound.At } ? (one.Time - other.Time, Math.Sqrt((one.Sd * one.Sd) + (other.Sd * other.Sd))) : null;

    // Figures of the gaps are read at their own opening, and stand for no other.
    private static (double Time, double Sd)? Opening(SeasonEntry entry, string figure, bool byTheClock) =>
        Math.Abs(entry.Pass.Seen.Visible - SeenDoubt.UsualVisible) < 1e-6 ? entry.Logged(figure, byTheClock) : null;

    private static (double Time, double Sd)? Better((double Time, double Sd)? one, (double Time, double Sd)? other) =>
        one is null || other?.Sd < one?.Sd ? other : one;
}
