using LaunchSim.Figures;
using LaunchSim.Reports.Numbers;

namespace LaunchSim.Reports.Words;

/// <summary>What a launch does, in plain sentences: the register of sentence builders, one line a subject.</summary>
public static class Summary
{
    private const int Few = 3;

    private static readonly Action<FigureSet, Readout, List<Sentence>>[] Subjects =
    [
        PitchWords.Say,
        RiseWords.Say,
        GapWords.Say,
        SeparationWords.Say,
        RearLoadWords.Say,
        StopWords.Say,
        SpringWords.Say,
        TireWords.Front,
        TireWords.Rear,
        WheelieBarWords.Say,
        GripWords.Say,
        DrivelineWords.Say,
        MarkWords.Say,
    ];

    /// <summary>
    /// The figures that tell which sentences are said of a car that is driven by a given axle torque and does not spin, so
    /// long as their numbers do not matter: quickly read, by places and speeds alone.
    /// </summary>
    /// <param name="marks">How many places the launch times.</param>
    public static IReadOnlyList<string> QuickKeys(int marks) =>
    [
        "run_end_s", "pitch_nose_up_largest_rad", "pitch_nose_up_largest_time_s", "rear_rise_t50_s", "front_rise_t50_s", "rear_rise_peak_m", "front_rise_peak_m",
        "rear_gap_6_35mm_s", "front_gap_6_35mm_s", "separation_peak_m", "separation_peak_time_s", "separation_peak_travel_left_m", "squat_peak_m", "squat_peak_time_s", "squat_peak_travel_left_m",
        "rear_tire_load_static_n", "hit_n", "hit_time_s", "lowest_rear_load_after_hit_n", "lowest_rear_load_after_hit_time_s", "wheelie_bar_first_s", "wheelie_bar_time_s",
        "slip_beyond_peak_first_s", "slip_beyond_peak_time_s", "grip_margin_lowest_ratio", "grip_margin_lowest_time_s",
        .. Enumerable.Range(1, marks).SelectMany(mark => new[] { $"mark_{mark}_distance_m", $"mark_{mark}_time_s" }),
    ];

    /// <summary>All sentences in order.</summary>
    /// <param name="figures">The launch's figures.</param>
    /// <param name="readout">The units.</param>
    public static List<Sentence> Of(FigureSet figures, Readout readout)
    {
        var said = new List<Sentence>();
        if (figures["run_end_s"] is > 0)
        {
            foreach (Action<FigureSet, Readout, List<Sentence>> subject in Subjects)
            {
                subject(figures, readout, said);
            }
        }

        return said;
    }

    /// <summary>
    /// The sentences that matter most, three at the most, one a subject and without what stands behind a semicolon. What is alarming comes
    /// first: that the run stopped, that the car goes over, that the rear tyres leave the ground, that they spin, that
    /// the rear dampers reach a stop. The rest is who comes up first, how far body and axle move and what travel is left, and
    /// what grip there is to spare. The front's stops are left to the full report: they take nothing from the driven tyres.
    /// </summary>
    /// <param name="run">The launch.</param>
    /// <param name="readout">The units.</param>
    public static IReadOnlyList<Sentence> Foremost(LaunchOutcome run, Readout readout)
    {
        ArgumentNullException.ThrowIfNull(run);
        FigureSet figures = run.Figures;
        var said = new List<Sentence>();
        if (run.Failure is { } failure)
        {
            said.Add(new("run.stopped", FailureWords.Of(failure)));
        }

        if (figures["run_end_s"] is > 0)
        {
            bool spins = figures["slip_beyond_peak_time_s"] is > 0;
            bool stops = figures.Events.First(LaunchEventKind.RearTopStop) is not null || figures.Events.First(LaunchEventKind.RearBottomStop) is not null;
            Action<FigureSet, Readout, List<Sentence>>[] alarming = [PitchWords.Say, TireWords.Rear, .. Where(spins, GripWords.Say), .. Where(stops, StopWords.Rear)];
            Action<FigureSet, Readout, List<Sentence>>[] calm = [RiseWords.Say, .. Where(!stops, SeparationWords.Say), .. Where(!spins, GripWords.Say)];
            foreach (Action<FigureSet, Readout, List<Sentence>> subject in alarming.Concat(calm))
            {
                var all = new List<Sentence>();
                subject(figures, readout, all);
                said.AddRange(all.Take(1));
            }
        }

        return [.. said.Take(Few).Select(Main)];
    }

    private static Action<FigureSet, Readout, List<Sentence>>[] Where(bool holds, Action<FigureSet, Readout, List<Sentence>> subject) => holds ? [subject] : [];

    // What stands behind a semicolon says more about the same.
    private static Sentence Main(Sentence sentence) =>
        sentence.Text.IndexOf("; ", StringComparison.Ordinal) is > 0 and var end ? sentence with { Text = sentence.Text[..end] + "." } : sentence;
}
