namespace LaunchSim.Reports.Words;

/// <summary>
/// What each sentence of a launch states, without its numbers: a few words a key, so that the same sentence can be counted
/// over many cars and named.
/// </summary>
public static class SentenceStatements
{
    private const string InShift = ", in a shift";

    /// <summary>All statements in the order in which the sentences are said.</summary>
    public static IReadOnlyList<(string Key, string Statement)> All { get; } =
    [
        ("run.stopped", "the run stops before its end"),
        ("pitch.goes_over", "the car goes over"),
        ("rise.rear_first", "the rear comes up first, the front is late"),
        ("rise.front_first", "the front comes up first, the rear is late"),
        ("rise.together", "both ends come up together"),
        ("rise.only_rear", "only the rear comes up"),
        ("rise.only_front", "only the front comes up"),
        ("rise.neither", "neither end comes up"),
        ("gap.rear_first", "the rear gap moves first"),
        ("gap.front_first", "the front gap moves first"),
        ("gap.together", "both gaps move together"),
        ("gap.only_rear", "only the rear gap opens"),
        ("gap.only_front", "only the front gap opens"),
        ("gap.neither", "neither gap opens"),
        ("separation.apart", "the rear separates, short of the top stop"),
        ("separation.apart_at_stop", "the rear separates just to the top stop"),
        ("separation.apart_into_stop", "the rear separates into the top stop"),
        ("separation.squat", "the rear squats, short of the bottom stop"),
        ("separation.squat_at_stop", "the rear squats just to the bottom stop"),
        ("separation.squat_into_stop", "the rear squats into the bottom stop"),
        ("separation.neither", "the rear neither separates nor squats"),
        ("hit.above", "the hit is above the standing load"),
        ("hit.same", "the hit is as large as the standing load"),
        ("hit.below", "the hit is below the standing load"),
        ("hit.none", "there is no hit"),
        ("low.above", "the low after the hit is above standing"),
        ("low.same", "the low after the hit equals standing"),
        ("low.below", "the low after the hit is below standing"),
        ("low.nothing", "the rear tyres carry nothing after the hit"),
        ("low.above_in_shift", "the low after the hit is above standing" + InShift),
        ("low.same_in_shift", "the low after the hit equals standing" + InShift),
        ("low.below_in_shift", "the low after the hit is below standing" + InShift),
        ("low.nothing_in_shift", "the rear tyres carry nothing after the hit" + InShift),
        ("stop.rear_top", "the rear dampers top out"),
        ("stop.rear_bottom", "the rear dampers bottom"),
        ("stop.front_top", "the front dampers top out"),
        ("stop.front_bottom", "the front dampers bottom"),
        ("stop.none", "no damper reaches a stop"),
        ("spring.rear_loose", "the rear springs go loose"),
        ("spring.front_loose", "the front springs go loose"),
        ("tire.front_stays", "the front tyres stay on the ground"),
        ("tire.front_off", "the front tyres leave the ground and land"),
        ("tire.front_off_at_end", "the front tyres are in the air where the run ends"),
        ("tire.rear_off", "the rear tyres leave the ground and land"),
        ("tire.rear_off_at_end", "the rear tyres are in the air where the run ends"),
        ("wheelie_bar.on_ground", "the wheelie bar comes to the ground"),
        ("grip.spin", "the rear tyres spin"),
        ("grip.hold", "the rear tyres hold"),
        ("grip.run_away", "the tyres run away: the numbers are no guide"),
        ("driveline.clutch_locks", "the clutch locks"),
        ("driveline.shift", "the gearbox shifts"),
        ("mark.reached", "a mark is reached"),
        ("mark.not_reached", "a mark is not reached"),
    ];

    private static readonly Dictionary<string, string> ByKey = All.ToDictionary(one => one.Key, one => one.Statement, StringComparer.Ordinal);

    /// <summary>What a sentence states.</summary>
    /// <param name="key">The sentence's key.</param>
    /// <exception cref="KeyNotFoundException">There is no such sentence.</exception>
    public static string Of(string key) => ByKey[key];
}
